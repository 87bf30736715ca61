//! Machines and streams of the balance, and what workings rest on.

use crate::domain::working::{Constant, Ground};

pub(super) fn constant(constant: Constant) -> &'static str {
    match constant {
        Constant::WaterDensity => "Density of water at 20 °C",
        Constant::SensibleHeat => "Heat to warm the water from the mat's temperature to boiling",
        Constant::LatentHeat => "Heat to evaporate water at 101.325 kPa",
        Constant::DryerHeat => "Heat to warm water from 20 °C and to evaporate it at 101.325 kPa",
        Constant::HoursPerYear => "Hours per year, as chosen",
    }
}

pub(super) fn ground(ground: Ground) -> &'static str {
    match ground {
        Ground::Entered => "as entered",
        Ground::MassBalance => "mass in equals mass out",
        Ground::Definition => "by definition",
        Ground::Published(source) => source,
    }
}
