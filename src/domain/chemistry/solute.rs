//! The substances that a mill dissolves in water, and how much of each dissolves.

use serde::{Deserialize, Serialize};
use uom::si::f64::{Ratio, ThermodynamicTemperature};
use uom::si::ratio::percent;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

use crate::domain::chemistry::interpolate::{linear, within};

/// Lowest temperature of the solubility rows, K (0 °C).
const MIN_K: f64 = 273.15;
/// Highest temperature of the solubility rows, K (60 °C).
const MAX_K: f64 = 333.15;

/// A substance that is dissolved in water at the mill: hardener salts, and urea as a scavenger.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Solute {
    /// (NH₄)₂SO₄
    AmmoniumSulfate,
    /// NH₄Cl
    AmmoniumChloride,
    /// NH₄NO₃, an oxidiser
    AmmoniumNitrate,
    /// CO(NH₂)₂
    Urea,
}

impl Solute {
    /// All of them, in the order of the enum.
    pub const ALL: [Solute; 4] =
        [Solute::AmmoniumSulfate, Solute::AmmoniumChloride, Solute::AmmoniumNitrate, Solute::Urea];

    /// Solubility, °C and mass percent of the saturated solution. From memory, see [`saturation`].
    #[rustfmt::skip]
    fn solubility(self) -> [(f64, f64); 7] {
        match self {
            Solute::AmmoniumSulfate =>
                [(0.0, 41.3), (10.0, 42.1), (20.0, 42.9), (30.0, 43.8), (40.0, 44.7), (50.0, 45.6), (60.0, 46.6)],
            Solute::AmmoniumChloride =>
                [(0.0, 22.9), (10.0, 25.1), (20.0, 27.3), (30.0, 29.4), (40.0, 31.5), (50.0, 33.5), (60.0, 35.5)],
            Solute::AmmoniumNitrate =>
                [(0.0, 54.0), (10.0, 60.1), (20.0, 65.5), (30.0, 70.3), (40.0, 74.3), (50.0, 77.7), (60.0, 80.8)],
            Solute::Urea =>
                [(0.0, 40.1), (10.0, 45.8), (20.0, 51.8), (30.0, 57.2), (40.0, 62.4), (50.0, 67.2), (60.0, 71.5)],
        }
    }
}

/// Why a saturation cannot be given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SolubilityError {
    /// The temperature is outside the solubility rows, or not a number.
    TemperatureOutOfRange {
        /// What was asked for.
        given: ThermodynamicTemperature,
        /// Lowest temperature of the rows.
        min: ThermodynamicTemperature,
        /// Highest temperature of the rows.
        max: ThermodynamicTemperature,
    },
}

/// Largest mass fraction of `solute` that stays dissolved in water at `temperature`.
///
/// Straight lines between rows 10 K apart, from 0 to 60 °C. The rows are **from memory**, of
/// handbook values for pure salts, and good to about one point of mass percent: near saturation,
/// try it in a beaker.
///
/// # Errors
/// [`SolubilityError::TemperatureOutOfRange`] outside 0 to 60 °C.
pub fn saturation(solute: Solute, temperature: ThermodynamicTemperature) -> Result<Ratio, SolubilityError> {
    let refused = SolubilityError::TemperatureOutOfRange {
        given: temperature,
        min: ThermodynamicTemperature::new::<kelvin>(MIN_K),
        max: ThermodynamicTemperature::new::<kelvin>(MAX_K),
    };
    if !within(temperature.get::<kelvin>(), MIN_K, MAX_K) {
        return Err(refused);
    }
    // The check above is in kelvin, where a conversion from °F rounds; the row search must not see it.
    let t = temperature.get::<degree_celsius>().clamp(0.0, 60.0);
    linear(&solute.solubility(), t).map(Ratio::new::<percent>).ok_or(refused)
}
