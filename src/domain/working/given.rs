//! What a field held when the recipe was solved.

use super::Constant;
use crate::domain::chemistry::water;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::input::Input;
use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::degree_celsius;

/// The number of a field in the base unit of its kind; `None` where the recipe does not use it.
pub(in crate::domain) fn field(input: &Input, field: Field) -> Option<f64> {
    input.get(field)
}

/// A number from a table, in the base unit.
pub(in crate::domain) fn constant(input: &Input, constant: Constant) -> Option<f64> {
    match constant {
        Constant::WaterDensity => {
            water::density(ThermodynamicTemperature::new::<degree_celsius>(20.0)).ok().map(|density| density.value)
        }
        Constant::SensibleHeat => water::sensible_heat(input.line.mat_temperature).ok().map(|heat| heat.value),
        Constant::LatentHeat => Some(water::latent_heat().value),
        Constant::DryerHeat => {
            let cold = ThermodynamicTemperature::new::<degree_celsius>(20.0);
            water::heat_to_evaporate(cold).ok().map(|heat| heat.value)
        }
        // No recipe says so; who compares does.
        Constant::HoursPerYear => None,
    }
}
