//! Findings: what happened, and how to fix it. Every message begins with the name of what it is
//! about, so that it can be read away from its field.

mod entry;
mod range;

use self::entry::EntryBox;
use super::field::field_name;
use super::name;
use crate::domain::balance::machine::Machine;
use crate::domain::recipe::field::LiquidField;
use crate::domain::{Field, Finding, LiquidId, Place, What};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{Context, Loose, Message, shown};
use crate::{t, told};

/// What was found, and how to fix it.
#[must_use]
pub fn finding(finding: &Finding, context: &Context<'_>) -> Message {
    let name = place_name(finding.place, context);
    let asked = EntryBox::of(finding.place, context);
    match finding.what {
        What::NotAllowed { value, .. } if value.base < 1.0 && holds_isocyanate(finding.place, context) => {
            isocyanate(&name, value, context)
        }
        What::NotUsual { value, window, unit } if asked.is_none() => {
            entry::press_factor(&name, value, window, unit, context)
        }
        What::TooWet { excess, mat, way_out } => too_wet(&name, excess, mat, way_out, context),
        What::OverLimit { machine, used, fibre_at_limit } => over_limit(&name, machine, used, fibre_at_limit, context),
        other => of_entry(&other, &name, asked, context).unwrap_or_else(|| plain(other, &name, finding.place, context)),
    }
}

/// Whether it is about the solids of an isocyanate as delivered.
fn holds_isocyanate(place: Place, context: &Context<'_>) -> bool {
    let Place::Field(Field::Liquid(id, LiquidField::Solids)) = place else { return false };
    context.draft.liquid(id).is_some_and(|liquid| liquid.substance.is_isocyanate())
}

/// What an isocyanate held beside solids would be water.
fn isocyanate(place: &str, solids: Amount, context: &Context<'_>) -> Message {
    let rest = Amount::from_base(solids.kind, 1.0 - solids.base);
    told!("finding-isocyanate", place = place, solids = shown(solids, context), rest = shown(rest, context))
}

/// What is wrong or unusual with an entry outside the recipe.
#[must_use]
pub fn loose_entry(what: &What, loose: &Loose<'_>, context: &Context<'_>) -> Message {
    let asked = EntryBox { typed: loose.typed, kind: loose.kind, limit: loose.limit };
    of_entry(what, loose.name, Some(asked), context).unwrap_or_else(|| nothing_said(loose.name))
}

/// What a box by itself can have wrong; `None` for what needs the recipe to be told.
fn of_entry(what: &What, place: &str, asked: Option<EntryBox<'_>>, context: &Context<'_>) -> Option<Message> {
    Some(match *what {
        What::Missing => entry::missing(place, asked, context),
        What::Unreadable(error) => entry::unreadable(place, asked, error, context),
        What::NotAllowed { value, limit, meant } => entry::not_allowed(place, asked, value, &limit, meant, context),
        What::LikelyFraction { value, meant } => entry::likely_fraction(place, value, meant, context),
        What::NotUsual { value, window, unit } => entry::not_usual(place, value, window, unit, context),
        _ => return None,
    })
}

/// What the message is about, as it begins.
fn place_name(place: Place, context: &Context<'_>) -> String {
    match place {
        Place::Field(field) => field_name(field, context.draft),
        Place::Liquid(id) => liquid_name(id, context),
        Place::Station(station) => name::station(station).to_owned(),
    }
}

fn liquid_name(id: LiquidId, context: &Context<'_>) -> String {
    context.draft.liquid(id).map_or_else(|| t!("finding-a-liquid"), |liquid| name::liquid(liquid).into_owned())
}

/// Findings that carry few numbers or none. `name` is what the place is called.
fn plain(what: What, name: &str, place: Place, context: &Context<'_>) -> Message {
    match what {
        What::SprayThicker => told!("finding-spray-thicker", place = name, solids = solids_of(place, context)),
        What::BaseLoop => told!("finding-base-loop", place = name),
        What::BaseMissing => told!("finding-base-missing", place = name),
        What::BaseOnFaces => told!("finding-base-on-faces", place = name),
        What::NeedsFibreFlow => told!("finding-needs-fibre-flow", place = name),
        What::TooManyLiquids { most } => told!("finding-too-many-liquids", place = name, most = most),
        What::SpreadNarrower => {
            told!("finding-spread-narrower", place = name, width = field_shown(Field::MatWidth, context))
        }
        What::NeededForFeed => {
            let example = EntryBox::of(place, context)
                .map_or_else(String::new, |asked| range::example(&asked.limit, asked.kind, context));
            told!("finding-needed-for-feed", place = name, example = example)
        }
        What::DosesFillBoard { share } => {
            told!("finding-doses-fill-board", place = name, share = shown(share, context))
        }
        What::DriesBelowZero { blender_out } => {
            told!("finding-dries-below-zero", place = name, moisture = shown(blender_out, context))
        }
        What::OutOfRange => told!("finding-out-of-range", place = name),
        What::PressAddsWater => told!("finding-press-adds-water", place = name),
        What::MatThinnerThanBoard => told!("finding-mat-thinner-than-board", place = name),
        What::NoHardener => told!("finding-no-hardener", place = name),
        What::HardenerNotOnBinder => told!("finding-hardener-not-on-binder", place = name),
        What::NoBinder => told!("finding-no-binder", place = name),
        What::SameName => told!("finding-same-name", place = name),
        // The others have functions of their own.
        What::Missing
        | What::Unreadable(_)
        | What::NotAllowed { .. }
        | What::LikelyFraction { .. }
        | What::NotUsual { .. }
        | What::TooWet { .. }
        | What::OverLimit { .. } => nothing_said(name),
    }
}

/// For what cannot come: the place alone.
fn nothing_said(place: &str) -> Message {
    Message { what: place.to_owned(), fix: String::new() }
}

/// The solids as delivered of the liquid that a place is about.
fn solids_of(place: Place, context: &Context<'_>) -> String {
    match place {
        Place::Field(Field::Liquid(id, _)) => field_shown(Field::Liquid(id, LiquidField::Solids), context),
        _ => String::new(),
    }
}

/// "65 %": what a field holds. Nothing is said of a field that cannot be read.
fn field_shown(field: Field, context: &Context<'_>) -> String {
    match crate::domain::recipe::check::read_field(context.draft, field) {
        Ok(Some(base)) => shown(Amount::from_base(context.draft.kind(field), base), context),
        Ok(None) | Err(_) => String::new(),
    }
}

fn too_wet(place: &str, excess: Amount, mat: Amount, way_out: Option<Amount>, context: &Context<'_>) -> Message {
    let excess = match excess.kind {
        // Per 100 kg of fibre where there is no flow.
        Kind::Dose => t!("finding-excess-on-fibre", excess = shown(excess, context)),
        _ => shown(excess, context),
    };
    let what = t!("finding-too-wet", place = place, excess = excess, mat = shown(mat, context));
    let fix = match way_out {
        Some(fibre) => t!("finding-dry-the-fibre", fibre = shown(fibre, context)),
        None => t!("finding-no-fibre-dry-enough"),
    };
    Message { what, fix }
}

fn over_limit(place: &str, machine: Machine, used: Amount, fibre: Amount, context: &Context<'_>) -> Message {
    let used = shown(used, context);
    let what = match machine {
        Machine::FibreSupply => t!("finding-over-fibre-supply", place = place, used = used),
        Machine::Blender => t!("finding-over-blender", place = place, used = used),
        Machine::Press => t!("finding-over-press", place = place, used = used),
        Machine::LineSpeed => t!("finding-over-line-speed", place = place, used = used),
    };
    Message { what, fix: t!("finding-lower-fibre-flow", fibre = shown(fibre, context)) }
}
