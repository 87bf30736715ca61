//! Solutions and glue mixes that cannot be made up.

use super::{Context, Units, example, words, written};
use haulm::domain::chemistry::solute::Solute;
use haulm::domain::chemistry::solution::{MakeUpError, SolutionRequest, make_up};
use haulm::domain::mixing::glue_batch::{GlueComponent, GlueError, MAX_PARTS, batch, mix};
use haulm::domain::mixing::target_amount::Wanted;
use std::fmt::Write;
use uom::si::f64::{Mass, MassDensity, Ratio, ThermodynamicTemperature, Volume};
use uom::si::mass::kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::ratio::{percent, ratio};
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::volume::liter;

fn order(solute: Solute, wanted: Wanted, salt: f64, celsius: f64) -> SolutionRequest {
    SolutionRequest {
        solute,
        wanted,
        fraction: Ratio::new::<percent>(salt),
        temperature: ThermodynamicTemperature::new::<degree_celsius>(celsius),
        density: None,
    }
}

fn kilograms(mass: f64) -> Wanted {
    Wanted::Mass(Mass::new::<kilogram>(mass))
}

fn litres(volume: f64) -> Wanted {
    Wanted::Volume(Volume::new::<liter>(volume))
}

fn density(value: f64) -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(value)
}

fn part(share: f64, solids: f64, rho: f64) -> GlueComponent {
    GlueComponent { share: Ratio::new::<ratio>(share), solids: Ratio::new::<percent>(solids), density: density(rho) }
}

/// Runs `say` with a context of the example.
fn in_context(say: impl FnOnce(&Context<'_>) -> String) -> String {
    let (units, draft) = (Units::default(), example());
    say(&Context { units: &units, draft: &draft, currency: "€" })
}

#[test]
fn solutions() {
    let sulfate = Solute::AmmoniumSulfate;
    let measured = SolutionRequest { density: Some(density(-1.0)), ..order(sulfate, kilograms(100.0), 20.0, 20.0) };
    let orders = [
        order(sulfate, kilograms(0.0), 20.0, 20.0),
        order(sulfate, litres(-5.0), 20.0, 20.0),
        order(sulfate, kilograms(f64::NAN), 20.0, 20.0),
        order(sulfate, kilograms(100.0), 0.0, 20.0),
        order(sulfate, kilograms(100.0), f64::INFINITY, 20.0),
        measured,
        order(sulfate, kilograms(100.0), 20.0, 75.0),
        order(Solute::AmmoniumChloride, kilograms(100.0), 30.0, 5.0),
        order(Solute::AmmoniumNitrate, litres(100.0), 30.0, 20.0),
        order(Solute::Urea, litres(100.0), 48.0, 20.0),
    ];
    let variant = |error: &MakeUpError| match error {
        MakeUpError::AmountOutOfRange { .. } => 0,
        MakeUpError::FractionOutOfRange { .. } => 1,
        MakeUpError::DensityOutOfRange { .. } => 2,
        MakeUpError::Solubility(_) => 3,
        MakeUpError::AboveSaturation { .. } => 4,
        MakeUpError::VolumeWithoutDensity(_) => 5,
    };
    let errors: Vec<_> = orders.iter().map(|order| make_up(order).unwrap_err()).collect();
    assert!((0..6).all(|number| errors.iter().any(|error| variant(error) == number)));
    let text = in_context(|context| errors.iter().map(|error| written(&words::make_up(error, context))).collect());
    snapshot!("messages", "make_up_solutions", text);
}

#[test]
fn glues() {
    let resin = part(100.0, 66.0, 1_280.0);
    let errors = [
        mix(&[]).unwrap_err(),
        mix(&[resin; MAX_PARTS + 1]).unwrap_err(),
        mix(&[resin, part(-3.0, 20.0, 1_115.0)]).unwrap_err(),
        mix(&[resin, part(3.0, 120.0, 1_115.0)]).unwrap_err(),
        mix(&[resin, part(3.0, 20.0, 0.0)]).unwrap_err(),
        batch(&[resin], kilograms(-1.0)).unwrap_err(),
        batch(&[resin], litres(0.0)).unwrap_err(),
        GlueError::NotFinite,
        GlueError::IsocyanateWithWater,
        mix(&[resin, resin, part(f64::NAN, 20.0, 1_115.0)]).unwrap_err(),
    ];
    let variant = |error: &GlueError| match error {
        GlueError::NothingToMix => 0,
        GlueError::TooManyParts { .. } => 1,
        GlueError::ShareOutOfRange { .. } => 2,
        GlueError::SolidsOutOfRange { .. } => 3,
        GlueError::DensityOutOfRange { .. } => 4,
        GlueError::AmountOutOfRange { .. } => 5,
        GlueError::NotFinite => 6,
        GlueError::IsocyanateWithWater => 7,
    };
    assert!((0..8).all(|number| errors.iter().any(|error| variant(error) == number)));
    let names = ["UF resin", "Hardener"];
    let text = in_context(|context| {
        errors.iter().fold(String::new(), |mut text, error| {
            write!(text, "{}", written(&words::glue(error, &names, context))).unwrap();
            text
        })
    });
    snapshot!("messages", "make_up_glues", text);
}
