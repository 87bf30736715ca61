//! Solutions and glue mixes: why one cannot be made up.

use super::name;
use crate::domain::chemistry::solute::{SolubilityError, Solute};
use crate::domain::chemistry::solution::MakeUpError;
use crate::domain::chemistry::solution_density::DensityError;
use crate::domain::mixing::glue_batch::{GlueError, MAX_PARTS};
use crate::domain::mixing::target_amount::Wanted;
use crate::quantity::{Amount, Kind};
use crate::ui::text::{Context, Message, lower_first, shown};
use crate::{t, told};
use uom::si::f64::{MassDensity, Ratio, ThermodynamicTemperature};

fn share(share: Ratio, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::Solids, share.value), context)
}

fn parts(share: Ratio, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::Ratio, share.value), context)
}

fn degrees(temperature: ThermodynamicTemperature, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::Temperature, temperature.value), context)
}

fn density_shown(density: MassDensity, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::LiquidDensity, density.value), context)
}

/// Within a sentence.
fn solute(solute: Solute) -> String {
    lower_first(name::solute(solute))
}

fn amount(wanted: Wanted, context: &Context<'_>) -> Message {
    let (kind, value) = match wanted {
        Wanted::Mass(mass) => (Kind::BatchMass, mass.value),
        Wanted::Volume(volume) => (Kind::BatchVolume, volume.value),
    };
    let given = shown(Amount::from_base(kind, value), context);
    let example = shown(Amount::from_base(kind, if kind == Kind::BatchMass { 100.0 } else { 0.1 }), context);
    told!("make-up-amount", given = given, example = example)
}

/// Why a solution cannot be made up. Amounts of liquid are named by mass or volume as asked for.
#[must_use]
pub fn make_up(error: &MakeUpError, context: &Context<'_>) -> Message {
    match *error {
        MakeUpError::AmountOutOfRange { given } => amount(given, context),
        MakeUpError::FractionOutOfRange { given } => told!("make-up-concentration", given = share(given, context)),
        MakeUpError::DensityOutOfRange { given } => told!("make-up-density", given = density_shown(given, context)),
        MakeUpError::Solubility(SolubilityError::TemperatureOutOfRange { given, min, max }) => {
            let [given, least, most] = [given, min, max].map(|temperature| degrees(temperature, context));
            told!("make-up-temperature", given = given, least = least, most = most)
        }
        MakeUpError::AboveSaturation { solute: what, given, largest, temperature } => told!(
            "make-up-saturation",
            solute = solute(what),
            given = share(given, context),
            temperature = degrees(temperature, context),
            largest = share(largest, context)
        ),
        MakeUpError::VolumeWithoutDensity(why) => volume_without_density(why, context),
    }
}

fn volume_without_density(why: DensityError, context: &Context<'_>) -> Message {
    match why {
        DensityError::NoTable { solute: what } => told!("make-up-no-table", solute = solute(what)),
        DensityError::OutsideTable { solute: what, given, max } => told!(
            "make-up-outside-table",
            solute = solute(what),
            most = share(max, context),
            given = share(given, context)
        ),
    }
}

/// Why a glue cannot be mixed. The parts are named in their order.
#[must_use]
pub fn glue(error: &GlueError, names: &[&str], context: &Context<'_>) -> Message {
    let part = |at: usize| match names.get(at) {
        Some(name) => (*name).to_owned(),
        None => t!("make-up-part", number = at + 1),
    };
    match *error {
        GlueError::IsocyanateWithWater => told!("make-up-isocyanate-with-water"),
        GlueError::NothingToMix => told!("make-up-nothing-to-mix"),
        GlueError::TooManyParts { given } => told!("make-up-too-many-parts", given = given, most = MAX_PARTS),
        GlueError::ShareOutOfRange { part: at, given } => {
            told!("make-up-part-share", part = part(at), given = parts(given, context))
        }
        GlueError::SolidsOutOfRange { part: at, given } => {
            told!("make-up-part-solids", part = part(at), given = share(given, context))
        }
        GlueError::DensityOutOfRange { part: at, given } => {
            let example = shown(Amount::from_base(Kind::LiquidDensity, 1_280.0), context);
            told!("make-up-part-density", part = part(at), given = density_shown(given, context), example = example)
        }
        GlueError::AmountOutOfRange { given } => amount(given, context),
        GlueError::NotFinite => told!("make-up-parts-differ"),
    }
}
