//! Solutions and glue mixes: why one cannot be made up.

use super::name::solute;
use crate::domain::chemistry::solute::SolubilityError;
use crate::domain::chemistry::solution::MakeUpError;
use crate::domain::chemistry::solution_density::DensityError;
use crate::domain::mixing::glue_batch::{GlueError, MAX_PARTS};
use crate::domain::mixing::target_amount::Wanted;
use crate::quantity::{Amount, Kind};
use crate::ui::text::{Context, Message, shown};
use uom::si::f64::{MassDensity, Ratio, ThermodynamicTemperature};

fn message(what: impl Into<String>, fix: impl Into<String>) -> Message {
    Message { what: what.into(), fix: fix.into() }
}

fn share(share: Ratio, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::Solids, share.value), context)
}

fn degrees(temperature: ThermodynamicTemperature, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::Temperature, temperature.value), context)
}

fn density_shown(density: MassDensity, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::LiquidDensity, density.value), context)
}

fn amount(wanted: Wanted, context: &Context<'_>) -> Message {
    let (kind, value) = match wanted {
        Wanted::Mass(mass) => (Kind::BatchMass, mass.value),
        Wanted::Volume(volume) => (Kind::BatchVolume, volume.value),
    };
    let given = shown(Amount::from_base(kind, value), context);
    let example = shown(Amount::from_base(kind, if kind == Kind::BatchMass { 100.0 } else { 0.1 }), context);
    message(
        format!("Amount wanted: {given} cannot be made up."),
        format!("Type an amount above zero that a tank holds, such as {example}."),
    )
}

pub(super) fn make_up(error: &MakeUpError, context: &Context<'_>) -> Message {
    match *error {
        MakeUpError::AmountOutOfRange { given } => amount(given, context),
        MakeUpError::FractionOutOfRange { given } => message(
            format!("Concentration: {} cannot be.", share(given, context)),
            "Enter the salt per solution by mass, above 0 and below 100 %, such as 20 %.",
        ),
        MakeUpError::DensityOutOfRange { given } => message(
            format!("Measured density: {} cannot be.", density_shown(given, context)),
            "Enter a density above zero, or leave the box blank to take the table's.",
        ),
        MakeUpError::Solubility(SolubilityError::TemperatureOutOfRange { given, min, max }) => message(
            format!("Coldest temperature: how much dissolves at {} is not known here.", degrees(given, context)),
            format!("Enter a temperature from {} to {}.", degrees(min, context), degrees(max, context)),
        ),
        MakeUpError::AboveSaturation { solute: what, given, largest, temperature } => message(
            format!(
                "Concentration: {} does not dissolve to {} at {}; at most {} does.",
                solute(what).to_lowercase(),
                share(given, context),
                degrees(temperature, context),
                share(largest, context)
            ),
            format!(
                "Make it weaker, with some distance from {}, or keep tank and pipes warmer. The solubility is from \
                 memory: try it in a beaker.",
                share(largest, context)
            ),
        ),
        MakeUpError::VolumeWithoutDensity(why) => volume_without_density(why, context),
    }
}

fn volume_without_density(why: DensityError, context: &Context<'_>) -> Message {
    let fix = "Ask for the solution by mass, or measure its density and type it.";
    match why {
        DensityError::NoTable { solute: what } => message(
            format!(
                "Amount wanted: a volume needs the density, and there is no table for {}.",
                solute(what).to_lowercase()
            ),
            fix,
        ),
        DensityError::OutsideTable { solute: what, given, max } => message(
            format!(
                "Amount wanted: a volume needs the density, and the table for {} ends at {}, below {}.",
                solute(what).to_lowercase(),
                share(max, context),
                share(given, context)
            ),
            fix,
        ),
    }
}

pub(super) fn glue(error: &GlueError, names: &[&str], context: &Context<'_>) -> Message {
    let part = |at: usize| names.get(at).map_or_else(|| format!("Part {}", at + 1), |name| (*name).to_owned());
    match *error {
        GlueError::IsocyanateWithWater => message(
            "Glue: an isocyanate and a liquid with water cannot share a tank. They react, the gas builds pressure, and \
             the mix sets.",
            "Take the isocyanate out of the tank and emulsify it at the nozzle.",
        ),
        GlueError::NothingToMix => message(
            "Glue: there is nothing to mix.",
            "Give at least one part a share above zero, such as 100 parts of resin.",
        ),
        GlueError::TooManyParts { given } => {
            message(format!("Glue: {given} parts are more than the {MAX_PARTS} that a mix holds."), "Remove parts.")
        }
        GlueError::ShareOutOfRange { part: at, given } => message(
            format!("{}: {} parts by mass cannot be.", part(at), parts(given, context)),
            "Type zero or more, such as 100.",
        ),
        GlueError::SolidsOutOfRange { part: at, given } => message(
            format!("{}: solids of {} cannot be.", part(at), share(given, context)),
            "Type solids from 0 to 100 % by mass; water has 0 %.",
        ),
        GlueError::DensityOutOfRange { part: at, given } => message(
            format!("{}: a density of {} cannot be.", part(at), density_shown(given, context)),
            format!(
                "Enter a density above zero, such as {}.",
                shown(Amount::from_base(Kind::LiquidDensity, 1_280.0), context)
            ),
        ),
        GlueError::AmountOutOfRange { given } => amount(given, context),
        GlueError::NotFinite => message(
            "Glue: the parts differ too much in size to compute the mix.",
            "Check the shares for a slip in the decimal mark or the unit.",
        ),
    }
}

fn parts(share: Ratio, context: &Context<'_>) -> String {
    shown(Amount::from_base(Kind::Ratio, share.value), context)
}
