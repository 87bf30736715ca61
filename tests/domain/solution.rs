//! Solutions from crystals: densities against the handbook, saturation, make-up, and what is refused.

use haulm::domain::chemistry::solute::{SolubilityError, Solute, saturation};
use haulm::domain::chemistry::solution::{MakeUpError, SolutionRequest, make_up};
use haulm::domain::chemistry::solution_density::{DensityError, density_at_20c, largest_fraction};
use haulm::domain::mixing::target_amount::Wanted;
use proptest::prelude::*;
use uom::si::f64::{Mass, MassDensity, Ratio, ThermodynamicTemperature, Volume};
use uom::si::mass::kilogram;
use uom::si::mass_density::{gram_per_cubic_centimeter, kilogram_per_cubic_meter};
use uom::si::ratio::{percent, ratio};
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use uom::si::volume::{cubic_meter, liter};

fn pct(value: f64) -> Ratio {
    Ratio::new::<percent>(value)
}

fn celsius(t: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(t)
}

fn kg(value: f64) -> Wanted {
    Wanted::Mass(Mass::new::<kilogram>(value))
}

fn litres(value: f64) -> Wanted {
    Wanted::Volume(Volume::new::<liter>(value))
}

fn order(solute: Solute, wanted: Wanted, fraction: f64, t: f64) -> SolutionRequest {
    SolutionRequest { solute, wanted, fraction: pct(fraction), temperature: celsius(t), density: None }
}

/// The density table: solute, mass percent, g/cm³.
fn table() -> Vec<(Solute, f64, f64)> {
    include_str!("../values/solution_density_crc_20c.csv")
        .lines()
        .skip(1)
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            let solute = match cells[0] {
                "ammonium sulfate" => Solute::AmmoniumSulfate,
                "ammonium chloride" => Solute::AmmoniumChloride,
                "urea" => Solute::Urea,
                other => panic!("unknown solute {other}"),
            };
            (solute, cells[1].parse().unwrap(), cells[2].parse().unwrap())
        })
        .collect()
}

fn check_density(solute: Solute, fraction: f64, expected: f64, tolerance: f64) {
    let got = density_at_20c(solute, pct(fraction)).unwrap().get::<gram_per_cubic_centimeter>();
    assert!(
        (got - expected).abs() <= tolerance,
        "{solute:?} at {fraction} %: {got}, expected {expected} ± {tolerance}"
    );
}

/// Source: CRC Handbook of Chemistry and Physics, 102nd ed., `values/solution_density_crc_20c.csv`.
#[test]
fn every_row_of_the_table() {
    let rows = table();
    assert_eq!(rows.len(), 83);
    for (solute, fraction, expected) in rows {
        check_density(solute, fraction, expected, 1e-9);
    }
}

/// Source: CRC Handbook of Chemistry and Physics, 102nd ed., as quoted one by one.
#[test]
fn quoted_densities() {
    check_density(Solute::AmmoniumSulfate, 20.0, 1.1154, 1e-9);
    check_density(Solute::AmmoniumSulfate, 40.0, 1.2277, 1e-9);
    check_density(Solute::AmmoniumChloride, 20.0, 1.0567, 1e-9);
    check_density(Solute::Urea, 40.0, 1.1106, 1e-9);
}

/// How far a straight line is off, from the table itself: leave a row out and draw the line over it.
///
/// Over twice the step the line errs four times as much, so that over the true step it errs by
/// less than 0.00003 g/cm³ (two times, where the step changes), for urea above 40 % by less than
/// 0.00008 g/cm³.
#[test]
fn straight_lines_are_good_enough() {
    for three in table().windows(3) {
        let [(s0, x0, y0), (s1, x1, y1), (s2, x2, y2)] = [three[0], three[1], three[2]];
        if s0 != s1 || s1 != s2 {
            continue;
        }
        let line = y0 + (y2 - y0) * (x1 - x0) / (x2 - x0);
        let steep = s1 == Solute::Urea && x1 >= 40.0;
        let limit = if steep { 0.000_31 } else { 0.000_11 };
        assert!((line - y1).abs() < limit, "{s1:?} at {x1} %: {line} for {y1}");
    }
}

/// Source: IAPWS-95, water at 20 °C 998.207 kg/m³; the half per cent rows of the CRC table join it.
#[test]
fn below_the_first_row_the_line_starts_from_water() {
    for solute in [Solute::AmmoniumSulfate, Solute::AmmoniumChloride, Solute::Urea] {
        check_density(solute, 0.0, 0.998_207, 1e-9);
    }
    check_density(Solute::AmmoniumSulfate, 0.25, (0.998_207 + 1.0012) / 2.0, 1e-9);
}

#[test]
fn densities_are_never_extrapolated() {
    for (solute, end) in [(Solute::AmmoniumSulfate, 40.0), (Solute::AmmoniumChloride, 24.0), (Solute::Urea, 46.0)] {
        assert_eq!(largest_fraction(solute), Some(pct(end)));
        assert!(density_at_20c(solute, pct(end)).is_ok());
        for beyond in [end + 0.01, 100.0, -0.01, f64::INFINITY] {
            let refused = DensityError::OutsideTable { solute, given: pct(beyond), max: pct(end) };
            assert_eq!(density_at_20c(solute, pct(beyond)), Err(refused));
        }
        assert!(density_at_20c(solute, pct(f64::NAN)).is_err());
    }
    let solute = Solute::AmmoniumNitrate;
    assert_eq!(density_at_20c(solute, pct(20.0)), Err(DensityError::NoTable { solute }));
    assert_eq!(largest_fraction(solute), None);
}

#[test]
fn make_up_by_mass() {
    let made = make_up(&order(Solute::AmmoniumSulfate, kg(100.0), 20.0, 20.0)).unwrap();
    assert!((made.salt.get::<kilogram>() - 20.0).abs() < 1e-12);
    assert!((made.water.get::<kilogram>() - 80.0).abs() < 1e-12);
    assert!((made.total.get::<kilogram>() - 100.0).abs() < 1e-12);
    // 100 kg at 1.1154 g/cm³ (CRC); 80 kg of water at 998.207 kg/m³ (IAPWS-95).
    assert!((made.volume.unwrap().get::<liter>() - 100.0 / 1.1154).abs() < 1e-9);
    assert!((made.water_volume.get::<liter>() - 80.0 / 0.998_207).abs() < 1e-9);
    assert_eq!(made.saturation, saturation(Solute::AmmoniumSulfate, celsius(20.0)).unwrap());
}

#[test]
fn make_up_by_volume() {
    let made = make_up(&order(Solute::Urea, litres(200.0), 40.0, 20.0)).unwrap();
    // 200 L at 1.1106 g/cm³ (CRC).
    assert!((made.total.get::<kilogram>() - 222.12).abs() < 1e-9);
    assert!((made.salt.get::<kilogram>() - 88.848).abs() < 1e-9);
    assert!((made.water.get::<kilogram>() - 133.272).abs() < 1e-9);
}

#[test]
fn a_measured_density_goes_before_the_table() {
    let measured = MassDensity::new::<kilogram_per_cubic_meter>(1230.0);
    for solute in Solute::ALL {
        let made =
            make_up(&SolutionRequest { density: Some(measured), ..order(solute, litres(100.0), 22.0, 20.0) }).unwrap();
        assert!((made.total.get::<kilogram>() - 123.0).abs() < 1e-9);
        assert_eq!(made.density, Some(measured));
    }
    for wrong in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let refused = make_up(&SolutionRequest {
            density: Some(MassDensity::new::<kilogram_per_cubic_meter>(wrong)),
            ..order(Solute::Urea, kg(1.0), 10.0, 20.0)
        });
        assert!(matches!(refused, Err(MakeUpError::DensityOutOfRange { .. })), "{wrong}");
    }
}

#[test]
fn beyond_the_density_table_mass_still_works_and_volume_does_not() {
    for (solute, fraction) in [
        (Solute::AmmoniumSulfate, 42.0),
        (Solute::AmmoniumChloride, 26.0),
        (Solute::AmmoniumNitrate, 50.0),
        (Solute::Urea, 50.0),
    ] {
        let made = make_up(&order(solute, kg(10.0), fraction, 20.0)).unwrap();
        assert!((made.salt.get::<kilogram>() - fraction / 10.0).abs() < 1e-12);
        assert_eq!((made.density, made.volume), (None, None));
        let why = density_at_20c(solute, pct(fraction)).unwrap_err();
        assert_eq!(make_up(&order(solute, litres(10.0), fraction, 20.0)), Err(MakeUpError::VolumeWithoutDensity(why)));
    }
}

#[test]
fn above_saturation_is_refused_with_the_largest_that_dissolves() {
    for solute in Solute::ALL {
        let temperature = celsius(15.0);
        let largest = saturation(solute, temperature).unwrap();
        let at = |fraction| make_up(&SolutionRequest { fraction, ..order(solute, kg(1.0), 0.0, 15.0) });
        assert!(at(largest).is_ok());
        let given = largest + pct(0.1);
        assert_eq!(at(given), Err(MakeUpError::AboveSaturation { solute, given, largest, temperature }));
    }
    // What dissolves warm may crystallise cold: 24 % ammonium chloride at 20 and at 0 °C.
    assert!(make_up(&order(Solute::AmmoniumChloride, kg(1.0), 24.0, 20.0)).is_ok());
    assert!(make_up(&order(Solute::AmmoniumChloride, kg(1.0), 24.0, 0.0)).is_err());
}

/// Source: Askenasy and Nessler 1930 (22.6 % at 0 °C), Volkov and Sosnina 1970 (27.1 % at 20 °C), as
/// compiled in the IUPAC-NIST Solubility Database, SRD 106. The rows are from memory: one point.
#[test]
fn ammonium_chloride_saturation_is_near_the_measured() {
    for (t, measured) in [(0.0, 22.6), (20.0, 27.1)] {
        let got = saturation(Solute::AmmoniumChloride, celsius(t)).unwrap().get::<percent>();
        assert!((got - measured).abs() < 1.0, "{got} for {measured} at {t} °C");
    }
}

#[test]
fn saturation_rises_with_temperature_and_is_refused_outside() {
    for solute in Solute::ALL {
        let rows: Vec<f64> = (0..=60).map(|t| saturation(solute, celsius(f64::from(t))).unwrap().value).collect();
        assert!(rows.windows(2).all(|two| two[0] < two[1]), "{solute:?}");
        for t in [-0.1, 60.1, f64::INFINITY] {
            let refused =
                SolubilityError::TemperatureOutOfRange { given: celsius(t), min: celsius(0.0), max: celsius(60.0) };
            assert_eq!(saturation(solute, celsius(t)), Err(refused));
            assert_eq!(make_up(&order(solute, kg(1.0), 10.0, t)), Err(MakeUpError::Solubility(refused)));
        }
        assert!(saturation(solute, celsius(f64::NAN)).is_err());
    }
}

#[test]
fn amounts_and_fractions_out_of_range_are_refused() {
    for wrong in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        for wanted in [kg(wrong), litres(wrong)] {
            let refused = make_up(&order(Solute::Urea, wanted, 10.0, 20.0));
            assert!(matches!(refused, Err(MakeUpError::AmountOutOfRange { .. })), "{wanted:?}");
        }
    }
    for wrong in [0.0, -5.0, 100.0, 6500.0, f64::NAN] {
        let refused = make_up(&order(Solute::Urea, kg(1.0), wrong, 20.0));
        assert!(matches!(refused, Err(MakeUpError::FractionOutOfRange { .. })), "{wrong}");
    }
}

fn any_solute() -> impl Strategy<Value = Solute> {
    (0..Solute::ALL.len()).prop_map(|i| Solute::ALL[i])
}

fn with_density() -> impl Strategy<Value = Solute> {
    prop_oneof![Just(Solute::AmmoniumSulfate), Just(Solute::AmmoniumChloride), Just(Solute::Urea)]
}

proptest! {
    #[test]
    fn salt_and_water_make_the_total(
        solute in any_solute(), mass in 1e-6..1e6f64, w in 0.001..0.4f64, t in 0.0..60.0f64,
    ) {
        let order = SolutionRequest { fraction: Ratio::new::<ratio>(w), ..order(solute, kg(mass), 0.0, t) };
        if let Ok(made) = make_up(&order) {
            let total = made.total.get::<kilogram>();
            prop_assert!(((made.salt + made.water).get::<kilogram>() - total).abs() <= 1e-12 * total);
            prop_assert!((made.salt.get::<kilogram>() - w * mass).abs() <= 1e-12 * mass);
            prop_assert!(w <= made.saturation.value);
        } else {
            prop_assert!(w > saturation(solute, celsius(t)).unwrap().value);
        }
    }

    #[test]
    fn volume_and_mass_round_trip(
        solute in with_density(), volume in 1e-6..1e3f64, w in 0.001..0.22f64, t in 20.0..60.0f64,
    ) {
        let fraction = Ratio::new::<ratio>(w);
        let wanted = Wanted::Volume(Volume::new::<cubic_meter>(volume));
        let by_volume = make_up(&SolutionRequest { fraction, ..order(solute, wanted, 0.0, t) }).unwrap();
        let again = Wanted::Mass(by_volume.total);
        let by_mass = make_up(&SolutionRequest { fraction, ..order(solute, again, 0.0, t) }).unwrap();
        let back = by_mass.volume.unwrap().get::<cubic_meter>();
        prop_assert!((back - volume).abs() <= 1e-12 * volume);
        prop_assert_eq!(by_mass.salt, by_volume.salt);
    }

    #[test]
    fn any_numbers_give_finite_figures_or_an_error(
        solute in any_solute(), bits in any::<[u64; 4]>(), how in 0..4u8,
        w in 0.0..1.0f64, t in 270.0..335.0f64,
    ) {
        let [amount, fraction, temperature, density] = bits.map(f64::from_bits);
        // Half of the cases with a fraction and a temperature that can hold, so that the amounts matter.
        let (fraction, temperature) = if how < 2 { (w, t) } else { (fraction, temperature) };
        let wanted = if how % 2 == 0 {
            Wanted::Mass(Mass::new::<kilogram>(amount))
        } else {
            Wanted::Volume(Volume::new::<cubic_meter>(amount))
        };
        for density in [None, Some(MassDensity::new::<kilogram_per_cubic_meter>(density))] {
            let made = make_up(&SolutionRequest {
                solute,
                wanted,
                fraction: Ratio::new::<ratio>(fraction),
                temperature: ThermodynamicTemperature::new::<kelvin>(temperature),
                density,
            });
            if let Ok(made) = made {
                for value in [made.salt.value, made.water.value, made.water_volume.value, made.total.value] {
                    prop_assert!(value.is_finite() && value >= 0.0);
                }
                prop_assert!(made.density.is_none_or(|d| d.is_finite() && d.value > 0.0));
                prop_assert!(made.volume.is_none_or(|v| v.is_finite() && v.value > 0.0));
            }
        }
    }
}
