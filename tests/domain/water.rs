//! Water against IAPWS-95, and what is refused.

use haulm::domain::chemistry::water::{
    WaterError, boiling_point, density, heat_capacity, heat_to_evaporate, latent_heat, sensible_heat,
};
use proptest::prelude::*;
use uom::si::available_energy::kilojoule_per_kilogram;
use uom::si::f64::ThermodynamicTemperature;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::specific_heat_capacity::kilojoule_per_kilogram_kelvin;
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit, kelvin};

fn celsius(t: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(t)
}

/// Rows of numbers of a table under `tests/values`.
fn rows<const N: usize>(text: &str) -> Vec<[f64; N]> {
    text.lines()
        .skip(1)
        .map(|line| {
            let cells: Vec<f64> = line.split(',').map(|c| c.parse().unwrap()).collect();
            cells.try_into().unwrap()
        })
        .collect()
}

fn check(what: &str, at: f64, got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{what} at {at} °C: {got}, expected {expected} ± {tolerance}");
}

/// Source: IAPWS-95, `values/water_iapws95_101325pa.csv`. Kell's formula lies up to 4.8e-6 below.
#[test]
fn density_agrees_with_iapws_95() {
    let table = rows::<3>(include_str!("../values/water_iapws95_101325pa.csv"));
    assert_eq!(table.len(), 21);
    for [t, expected, _] in table {
        let got = density(celsius(t)).unwrap().get::<kilogram_per_cubic_meter>();
        check("density", t, got, expected, 5e-6 * expected);
    }
}

/// Source: IAPWS-95, saturated liquid at 101.325 kPa: 958.36750 kg/m³ at 99.9743 °C.
#[test]
fn density_at_the_upper_end() {
    let got = density(boiling_point()).unwrap().get::<kilogram_per_cubic_meter>();
    check("density", 99.9743, got, 958.367_50, 5e-6 * 958.0);
}

/// Source: IAPWS-95, `values/water_iapws95_101325pa.csv`.
#[test]
fn heat_capacity_agrees_with_iapws_95() {
    for [t, _, expected] in rows::<3>(include_str!("../values/water_iapws95_101325pa.csv")) {
        let got = heat_capacity(celsius(t)).unwrap().get::<kilojoule_per_kilogram_kelvin>();
        check("heat capacity", t, got, expected, 1e-9);
    }
}

/// Source: IAPWS-95, `values/water_enthalpy_iapws95_101325pa.csv`.
#[test]
fn sensible_heat_agrees_with_iapws_95() {
    let table = rows::<2>(include_str!("../values/water_enthalpy_iapws95_101325pa.csv"));
    assert_eq!(table.len(), 24);
    for [t, expected] in table {
        let got = sensible_heat(celsius(t)).unwrap().get::<kilojoule_per_kilogram>();
        check("sensible heat", t, got, expected, 0.01);
    }
}

/// Source: IAPWS-95, latent heat at 101.325 kPa 2256.472 kJ/kg.
#[test]
fn heat_to_evaporate_is_sensible_and_latent() {
    check("latent heat", 100.0, latent_heat().get::<kilojoule_per_kilogram>(), 2256.472, 1e-9);
    for t in [0.0, 20.0, 60.0, 99.9743, 100.0] {
        let sum = sensible_heat(celsius(t)).unwrap() + latent_heat();
        assert_eq!(heat_to_evaporate(celsius(t)), Ok(sum));
    }
    let at_20 = heat_to_evaporate(celsius(20.0)).unwrap().get::<kilojoule_per_kilogram>();
    check("heat to evaporate", 20.0, at_20, 335.0504 + 2256.472, 0.01);
    let boiling = sensible_heat(boiling_point()).unwrap().get::<kilojoule_per_kilogram>();
    check("sensible heat", 99.9743, boiling, 0.0, 1e-9);
}

#[test]
fn both_ends_count_whatever_the_unit() {
    for t in [
        celsius(0.0),
        celsius(100.0),
        ThermodynamicTemperature::new::<degree_fahrenheit>(32.0),
        ThermodynamicTemperature::new::<degree_fahrenheit>(212.0),
    ] {
        assert!(density(t).is_ok(), "{t:?}");
        assert!(heat_to_evaporate(t).is_ok(), "{t:?}");
    }
}

#[test]
fn outside_the_range_is_refused_with_the_range() {
    for t in [-0.01, 100.01, -300.0, 1e300, f64::INFINITY] {
        let given = celsius(t);
        let refused = WaterError::TemperatureOutOfRange { given, min: celsius(0.0), max: celsius(100.0) };
        assert_eq!(density(given), Err(refused));
        assert_eq!(heat_capacity(given), Err(refused));
        assert_eq!(sensible_heat(given), Err(refused));
        assert_eq!(heat_to_evaporate(given), Err(refused));
    }
    assert!(density(celsius(f64::NAN)).is_err());
}

proptest! {
    #[test]
    fn any_number_gives_a_sane_value_or_an_error(bits in any::<u64>()) {
        let t = ThermodynamicTemperature::new::<kelvin>(f64::from_bits(bits));
        if let Ok(rho) = density(t) {
            prop_assert!((958.0..1000.0).contains(&rho.value));
        }
        let _ = heat_to_evaporate(t);
    }

    #[test]
    fn in_range_all_is_finite_and_falls_with_temperature(a in 0.0..100.0f64, b in 0.0..100.0f64) {
        let (cold, hot) = (a.min(b), a.max(b));
        prop_assume!(hot - cold > 1e-6);
        let heat = |t| heat_to_evaporate(celsius(t)).unwrap().value;
        prop_assert!(heat(cold) > heat(hot));
        // Water is densest at 4 °C; the step keeps the fall clear of rounding.
        if cold > 5.0 && hot - cold > 1e-3 {
            prop_assert!(density(celsius(cold)).unwrap() > density(celsius(hot)).unwrap());
        }
        let rho = density(celsius(a)).unwrap().value;
        prop_assert!((958.0..1000.0).contains(&rho));
    }
}
