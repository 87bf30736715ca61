//! What a field held when the recipe was solved.

use super::Constant;
use crate::domain::chemistry::water;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::input::{Dosing, Feed, Input, WaterPlan};
use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::degree_celsius;

/// The number of a field in the base unit of its kind; `None` where the recipe does not use it.
pub(in crate::domain) fn field(input: &Input, field: Field) -> Option<f64> {
    let Input { board, line, limits, .. } = input;
    Some(match field {
        Field::FibreFlow => match input.feed {
            Feed::OvenDry(flow) | Feed::Belt(flow) => flow.value,
            _ => return None,
        },
        Field::WantedLineSpeed => match input.feed {
            Feed::LineSpeed(speed, _) => speed.value,
            _ => return None,
        },
        Field::WantedPressFactor => match input.feed {
            Feed::PressFactor(factor, _) => factor.value,
            _ => return None,
        },
        Field::FibreMoisture => input.fibre_moisture.dry_basis().value,
        Field::FibrePrice => input.fibre_price?.get(),
        Field::MatMoisture => match input.water {
            WaterPlan::ToMatMoisture(moisture) => moisture.dry_basis().value,
            _ => return None,
        },
        Field::WaterOnFibre => match input.water {
            WaterPlan::OnFibre(dose) => dose.ratio().value,
            _ => return None,
        },
        Field::WaterFlow => match input.water {
            WaterPlan::Flow(flow) => flow.value,
            _ => return None,
        },
        Field::DryingLoss => input.drying_loss.value,
        Field::BoardDensity => board.density.value,
        Field::BoardMoisture => board.moisture.dry_basis().value,
        Field::Thickness => board.thickness.value,
        Field::SandTop => board.sand_top.value,
        Field::SandBottom => board.sand_bottom.value,
        Field::SurfaceRatio => board.surface_ratio.value,
        Field::MatWidth => line.width?.value,
        Field::SpreadWidth => line.spread_width?.value,
        Field::PressLength => line.press_length?.value,
        Field::Reject => line.reject.value,
        Field::AreaYield => line.area_yield.value,
        Field::ExitMoisture => input.exit_moisture().dry_basis().value,
        Field::MatBulkDensity => line.bulk_density?.value,
        Field::MatTemperature => line.mat_temperature.value,
        Field::SurfaceSpray => line.surface_spray.value,
        Field::ShiftHours => line.shift.value,
        Field::FibreSupply => limits.fibre_supply?.value,
        Field::BlenderCapacity => limits.blender?.value,
        Field::LeastPressFactor => limits.press_factor?.value,
        Field::TopLineSpeed => limits.line_speed?.value,
        Field::Liquid(id, part) => {
            let liquid = input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?;
            match part {
                LiquidField::Dose => match liquid.dosing {
                    Dosing::SolidsOnFibre(dose) | Dosing::SolidsOnLiquid(dose, _) | Dosing::LiquidOnFibre(dose) => {
                        dose.ratio().value
                    }
                    Dosing::LiquidPerBoard(dose) => dose.value,
                },
                LiquidField::Solids => liquid.solids.ratio().value,
                LiquidField::Density => liquid.density.value,
                LiquidField::SpraySolids => liquid.spray_solids?.ratio().value,
                LiquidField::Price => liquid.price?.get(),
            }
        }
    })
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
