//! Liquid water from 0 to 100 °C under one atmosphere: density, heat capacity, heat to evaporate.

use uom::si::available_energy::kilojoule_per_kilogram;
use uom::si::f64::{AvailableEnergy, MassDensity, SpecificHeatCapacity, TemperatureInterval, ThermodynamicTemperature};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::specific_heat_capacity::kilojoule_per_kilogram_kelvin;
use uom::si::temperature_interval::kelvin as kelvin_step;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

use crate::domain::chemistry::interpolate::within;

/// Lowest temperature of the range, K (0 °C).
const MIN_K: f64 = 273.15;
/// Highest temperature of the range, K (100 °C).
const MAX_K: f64 = 373.15;

/// Normal boiling point at 101.325 kPa, °C on ITS-90 (IAPWS-95).
const BOILING_C: f64 = 99.9743;

/// Latent heat of evaporation at 101.325 kPa, kJ/kg (IAPWS-95).
const LATENT_KJ_KG: f64 = 2256.472;

/// Isobaric heat capacity of liquid water at 101.325 kPa: °C, kJ/(kg·K).
///
/// Source: IAPWS-95; the last row is the saturated liquid at the normal boiling point.
#[rustfmt::skip]
const HEAT_CAPACITY: [(f64, f64); 22] = [
    (0.01, 4.219410), (4.0, 4.207503), (5.0, 4.205038), (10.0, 4.195159), (15.0, 4.188461),
    (20.0, 4.184051), (25.0, 4.181315), (30.0, 4.179820), (35.0, 4.179258), (40.0, 4.179415),
    (45.0, 4.180142), (50.0, 4.181342), (55.0, 4.182957), (60.0, 4.184953), (65.0, 4.187322),
    (70.0, 4.190067), (75.0, 4.193203), (80.0, 4.196753), (85.0, 4.200744), (90.0, 4.205206),
    (95.0, 4.210171), (BOILING_C, 4.215644),
];

/// Why a property of water cannot be given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WaterError {
    /// The temperature is outside the range of the formulation, or not a number.
    TemperatureOutOfRange {
        /// What was asked for.
        given: ThermodynamicTemperature,
        /// Lowest temperature of the range.
        min: ThermodynamicTemperature,
        /// Highest temperature of the range.
        max: ThermodynamicTemperature,
    },
}

/// Density of air-free liquid water at 101.325 kPa.
///
/// ρ = (a₀ + a₁t + a₂t² + a₃t³ + a₄t⁴ + a₅t⁵)/(1 + bt), kg/m³, with t in °C on IPTS-68, for which
/// 1.00024 times the ITS-90 temperature is put in. Valid from 0 to 100 °C; within 5·10⁻⁶
/// (relative) of IAPWS-95 over that range.
///
/// # Errors
/// [`WaterError::TemperatureOutOfRange`] below 0 °C, above 100 °C, or for a temperature that is
/// not a number.
///
/// Source: Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16; temperature scales after
/// Saunders, WOCE Newsletter 10 (1990).
///
/// ```
/// use haulm::domain::chemistry::water;
/// use uom::si::f64::ThermodynamicTemperature;
/// use uom::si::mass_density::kilogram_per_cubic_meter;
/// use uom::si::thermodynamic_temperature::degree_celsius;
///
/// let at_20 = water::density(ThermodynamicTemperature::new::<degree_celsius>(20.0))?;
/// assert!((at_20.get::<kilogram_per_cubic_meter>() - 998.207).abs() < 0.005);
/// # Ok::<(), water::WaterError>(())
/// ```
pub fn density(temperature: ThermodynamicTemperature) -> Result<MassDensity, WaterError> {
    let t = celsius(temperature)? * 1.00024;
    let numerator = 999.83952
        + t * (16.945_176 + t * (-7.987_040_1e-3 + t * (-46.170_461e-6 + t * (105.563_02e-9 - t * 280.542_53e-12))));
    Ok(MassDensity::new::<kilogram_per_cubic_meter>(numerator / (1.0 + 16.879_850e-3 * t)))
}

/// Isobaric heat capacity of liquid water at 101.325 kPa, by straight lines between the rows of
/// an IAPWS-95 table in steps of 5 K.
///
/// Valid from 0 to 100 °C.
///
/// # Errors
/// [`WaterError::TemperatureOutOfRange`] as for [`density`].
///
/// Source: IAPWS-95.
pub fn heat_capacity(temperature: ThermodynamicTemperature) -> Result<SpecificHeatCapacity, WaterError> {
    Ok(SpecificHeatCapacity::new::<kilojoule_per_kilogram_kelvin>(heat_capacity_at(celsius(temperature)?)))
}

/// Temperature at which water boils under 101.325 kPa: 99.9743 °C (IAPWS-95, ITS-90).
pub fn boiling_point() -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(BOILING_C)
}

/// Latent heat of evaporation at the normal boiling point: 2256.472 kJ/kg (IAPWS-95).
pub fn latent_heat() -> AvailableEnergy {
    AvailableEnergy::new::<kilojoule_per_kilogram>(LATENT_KJ_KG)
}

/// Sensible heat: what a kilogram of liquid water takes up on its way from `temperature` to the
/// normal boiling point at constant pressure.
///
/// The integral of [`heat_capacity`] (trapezoids). Valid from 0 to 100 °C; within 0.01 kJ/kg of the
/// IAPWS-95 enthalpies. Between 99.9743 and 100 °C it is below zero, by at most 0.11 kJ/kg, for
/// such water holds more heat than it needs to boil.
///
/// # Errors
/// [`WaterError::TemperatureOutOfRange`] as for [`density`].
///
/// Source: IAPWS-95.
pub fn sensible_heat(temperature: ThermodynamicTemperature) -> Result<AvailableEnergy, WaterError> {
    let t = celsius(temperature)?;
    let mut from = (t, heat_capacity_at(t));
    let mut rise =
        SpecificHeatCapacity::new::<kilojoule_per_kilogram_kelvin>(0.0) * TemperatureInterval::new::<kelvin_step>(0.0);
    let last = HEAT_CAPACITY.len() - 1;
    for (i, &row) in HEAT_CAPACITY.iter().enumerate() {
        if row.0 > t || i == last {
            rise += SpecificHeatCapacity::new::<kilojoule_per_kilogram_kelvin>((from.1 + row.1) / 2.0)
                * TemperatureInterval::new::<kelvin_step>(row.0 - from.0);
            from = row;
        }
    }
    Ok(rise)
}

/// Heat that turns a kilogram of liquid water at `temperature` into saturated steam at
/// 101.325 kPa: [`sensible_heat`] + [`latent_heat`].
///
/// Valid from 0 to 100 °C. Heat for the steam beyond saturation, and for driving water out of the
/// cell wall, is not in it.
///
/// # Errors
/// [`WaterError::TemperatureOutOfRange`] as for [`density`].
///
/// Source: IAPWS-95.
pub fn heat_to_evaporate(from_temperature: ThermodynamicTemperature) -> Result<AvailableEnergy, WaterError> {
    Ok(sensible_heat(from_temperature)? + latent_heat())
}

/// The temperature in °C, if it is in the range.
fn celsius(temperature: ThermodynamicTemperature) -> Result<f64, WaterError> {
    if within(temperature.get::<kelvin>(), MIN_K, MAX_K) {
        Ok(temperature.get::<degree_celsius>())
    } else {
        Err(WaterError::TemperatureOutOfRange {
            given: temperature,
            min: ThermodynamicTemperature::new::<kelvin>(MIN_K),
            max: ThermodynamicTemperature::new::<kelvin>(MAX_K),
        })
    }
}

/// Heat capacity, kJ/(kg·K), at `t` °C from 0 to 100.
///
/// The first and the last line are drawn out by the 0.01 K and 0.03 K to the ends of the range.
fn heat_capacity_at(t: f64) -> f64 {
    let i = HEAT_CAPACITY.partition_point(|row| row.0 < t).clamp(1, HEAT_CAPACITY.len() - 1);
    let (t0, c0) = HEAT_CAPACITY[i - 1];
    let (t1, c1) = HEAT_CAPACITY[i];
    c0 + (c1 - c0) * (t - t0) / (t1 - t0)
}
