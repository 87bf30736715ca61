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

pub(super) fn finding(finding: &Finding, context: &Context<'_>) -> Message {
    let place = place(finding.place, context);
    let asked = EntryBox::of(finding.place, context);
    let (what, fix) = match finding.what {
        What::NotAllowed { value, .. } if value.base < 1.0 && holds_isocyanate(finding.place, context) => {
            isocyanate(value, context)
        }
        What::NotUsual { value, window, unit } if asked.is_none() => entry::press_factor(value, window, unit, context),
        What::TooWet { excess, mat, way_out } => too_wet(excess, mat, way_out, context),
        What::OverLimit { machine, used, fibre_at_limit } => over_limit(machine, used, fibre_at_limit, context),
        other => of_entry(&other, asked, context).unwrap_or_else(|| plain(other, finding.place, context)),
    };
    Message { what: format!("{place}: {what}"), fix }
}

/// Whether it is about the solids of an isocyanate as delivered.
fn holds_isocyanate(place: Place, context: &Context<'_>) -> bool {
    let Place::Field(Field::Liquid(id, LiquidField::Solids)) = place else { return false };
    context.draft.liquid(id).is_some_and(|liquid| liquid.substance.is_isocyanate())
}

/// What an isocyanate held beside solids would be water.
fn isocyanate(solids: Amount, context: &Context<'_>) -> (String, String) {
    let rest = Amount::from_base(solids.kind, 1.0 - solids.base);
    let what = format!(
        "with {} solids the other {} would be water, which reacts with an isocyanate.",
        shown(solids, context),
        shown(rest, context)
    );
    let fix = "Enter 100 %. NCO content and purity on the certificate are not solids content. For an emulsion made at \
               the nozzle, enter its spray solids.";
    (what, fix.to_owned())
}

/// What is wrong or unusual with an entry outside the recipe.
pub(super) fn loose_entry(what: &What, loose: &Loose<'_>, context: &Context<'_>) -> Message {
    let asked = EntryBox { typed: loose.typed, kind: loose.kind, limit: loose.limit };
    let (what, fix) = of_entry(what, Some(asked), context).unwrap_or_default();
    Message { what: format!("{}: {what}", loose.name), fix }
}

/// What a box by itself can have wrong; `None` for what needs the recipe to be told.
fn of_entry(what: &What, asked: Option<EntryBox<'_>>, context: &Context<'_>) -> Option<(String, String)> {
    Some(match *what {
        What::Missing => entry::missing(asked, context),
        What::Unreadable(error) => entry::unreadable(asked, error, context),
        What::NotAllowed { value, limit, meant } => entry::not_allowed(asked, value, &limit, meant, context),
        What::LikelyFraction { value, meant } => entry::likely_fraction(value, meant, context),
        What::NotUsual { value, window, unit } => entry::not_usual(value, window, unit, context),
        _ => return None,
    })
}

/// What the message is about, as it begins.
fn place(place: Place, context: &Context<'_>) -> String {
    match place {
        Place::Field(field) => field_name(field, context.draft),
        Place::Liquid(id) => liquid_name(id, context),
        Place::Station(station) => name::station(station).to_owned(),
    }
}

fn liquid_name(id: LiquidId, context: &Context<'_>) -> String {
    context.draft.liquid(id).map_or_else(|| "A liquid".to_owned(), |liquid| name::liquid(liquid).into_owned())
}

/// Findings that carry few numbers or none.
fn plain(what: What, place: Place, context: &Context<'_>) -> (String, String) {
    let (what, fix) = match what {
        What::SprayThicker => {
            let as_delivered = match place {
                Place::Field(Field::Liquid(id, _)) => field_shown(Field::Liquid(id, LiquidField::Solids), context),
                _ => String::new(),
            };
            (
                format!("above the solids as delivered{as_delivered}. Water can only thin a liquid."),
                "Enter a smaller value, or leave the box blank to spray it as delivered.".to_owned(),
            )
        }
        What::BaseLoop => (
            "it leads back to itself, by way of the liquids that it is dosed on.".to_owned(),
            "Dose one liquid of the loop on oven-dry fibre.".to_owned(),
        ),
        What::BaseMissing => (
            "it is meant on the solids of a liquid that is not in this recipe.".to_owned(),
            "Choose another base for the dose, or add the liquid it was dosed on.".to_owned(),
        ),
        What::BaseOnFaces => (
            "its base is sprayed on the faces of the mat, not into the furnish.".to_owned(),
            "Select another base for the dose.".to_owned(),
        ),
        What::NeedsFibreFlow => (
            "the recipe has no fibre flow for it.".to_owned(),
            "Select a water dose on oven-dry fibre or to a mat moisture, or enter a fibre flow.".to_owned(),
        ),
        What::TooManyLiquids { most } => {
            (format!("one liquid more than the {most} that a recipe holds."), "Remove a liquid.".to_owned())
        }
        What::SpreadNarrower => (
            format!("smaller than the trimmed mat width{}.", field_shown(Field::MatWidth, context)),
            "The mat is cut from what the former spreads: type a spread width at least as large, or leave it blank."
                .to_owned(),
        ),
        What::NeededForFeed => (
            "still empty, and the fibre flow cannot be found without it.".to_owned(),
            format!(
                "Enter it, such as {}, or fix the fibre flow in another way.",
                match place {
                    Place::Field(field) => {
                        let asked = EntryBox::at(field, context);
                        range::example(&asked.limit, asked.kind, context)
                    }
                    Place::Liquid(_) | Place::Station(_) => "2.5 m".to_owned(),
                }
            ),
        ),
        What::DosesFillBoard { share } => (
            format!(
                "the doses per volume of board, or per area of face, add up to {} of the oven-dry board, which leaves no \
                 room for fibre.",
                shown(share, context)
            ),
            "Lower the doses, or check their unit.".to_owned(),
        ),
        What::DriesBelowZero { blender_out } => (
            format!(
                "more than the furnish holds. It leaves the blender with a moisture of {}.",
                shown(blender_out, context)
            ),
            "Enter a smaller loss, or bring more water into the blender.".to_owned(),
        ),
        What::OutOfRange => (
            "the figures became too large or too small to compute with.".to_owned(),
            "Check this entry and the doses for a slip in the decimal mark or the unit.".to_owned(),
        ),
        What::PressAddsWater => (
            "the board would leave the press moister than the mat goes in.".to_owned(),
            "Check the mat moisture against the board moisture leaving the press; a hot press dries.".to_owned(),
        ),
        What::MatThinnerThanBoard => (
            "the loose mat would be thinner than the board pressed from it.".to_owned(),
            "Check the bulk density of the loose mat: a loose mat is far lighter than board.".to_owned(),
        ),
        What::NoHardener => (
            "a UF or MUF resin, and no hardener beside it.".to_owned(),
            "Add the hardener, unless the resin comes with one mixed in.".to_owned(),
        ),
        What::HardenerNotOnBinder => (
            "a hardener that is not dosed on the solids of a binder.".to_owned(),
            "Hardener doses are usually meant on resin solids. Choose the binder as the base if yours is.".to_owned(),
        ),
        What::NoBinder => (
            "no binder among the liquids.".to_owned(),
            "Insert a binder system, or add a liquid with the role of binder.".to_owned(),
        ),
        What::SameName => (
            "two liquids of this name.".to_owned(),
            "Rename one, so that nobody at the line takes one for the other.".to_owned(),
        ),
        // The others have functions of their own.
        What::Missing
        | What::Unreadable(_)
        | What::NotAllowed { .. }
        | What::LikelyFraction { .. }
        | What::NotUsual { .. }
        | What::TooWet { .. }
        | What::OverLimit { .. } => (String::new(), String::new()),
    };
    (what, fix)
}

/// ", 65 %": what a field holds, where it can be read.
fn field_shown(field: Field, context: &Context<'_>) -> String {
    match crate::domain::recipe::check::read_field(context.draft, field) {
        Ok(Some(base)) => format!(", {}", shown(Amount::from_base(context.draft.kind(field), base), context)),
        Ok(None) | Err(_) => String::new(),
    }
}

fn too_wet(excess: Amount, mat: Amount, way_out: Option<Amount>, context: &Context<'_>) -> (String, String) {
    let what = format!(
        "the furnish is too wet. It holds {} more water than the mat moisture wanted needs; no water is dosed, and the \
         mat comes out at {}.",
        excess_shown(excess, context),
        shown(mat, context)
    );
    let fix = match way_out {
        Some(fibre) => format!(
            "Dry the fibre to {}, at which the water dose is exactly zero; or take liquids with more \
             solids, smaller doses, or a higher mat moisture.",
            shown(fibre, context)
        ),
        None => "No fibre is dry enough: the liquids alone bring more water than is needed. Take liquids with more \
                 solids, thin them less, lower their doses, or accept a higher mat moisture."
            .to_owned(),
    };
    (what, fix)
}

/// As a flow, or per 100 kg of fibre where there is no flow.
fn excess_shown(excess: Amount, context: &Context<'_>) -> String {
    match excess.kind {
        Kind::Dose => format!("{} (of oven-dry fibre)", shown(excess, context)),
        _ => shown(excess, context),
    }
}

fn over_limit(machine: Machine, used: Amount, fibre: Amount, context: &Context<'_>) -> (String, String) {
    let used = shown(used, context);
    let what = match machine {
        Machine::FibreSupply => format!("the fibre flow is {used} of what the dryer supplies."),
        Machine::Blender => format!("the furnish is {used} of what the blender takes."),
        Machine::Press => {
            format!("the press is at {used} of its limit; the press factor is below the least that cures.")
        }
        Machine::LineSpeed => format!("the line speed is {used} of the top speed."),
    };
    (what, format!("Lower the fibre flow to {} oven-dry at most, or check the limit.", shown(fibre, context)))
}
