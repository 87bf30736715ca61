//! Units: published factors, round trips, coherent sets, and the units chosen.

use approx::assert_relative_eq;
use haulm::quantity::format::DecimalMark;
use haulm::quantity::kind::UnitSystem;
use haulm::quantity::{Amount, Coherent, Dimension, Kind, Unit, Units, exact};
use haulm::record::Settings;
use proptest::prelude::*;
use std::collections::{BTreeMap, HashSet};

/// How many base units the app sees in one `conversion` of the table. `None`: the app has no such unit.
fn factor(conversion: &str) -> Option<f64> {
    Some(match conversion {
        "lb->kg" => Unit::Pound.to_base(1.0),
        "short ton->kg" => Unit::ShortTon.to_base(1.0),
        "US gal->m3" => Unit::Gallon.to_base(1.0),
        "ft->m" => Unit::Foot.to_base(1.0),
        "in->m" => Unit::Inch.to_base(1.0),
        "ft2->m2" => Unit::SquareFoot.to_base(1.0),
        "ft3->m3" => Unit::CubicFoot.to_base(1.0),
        "lb/ft3->kg/m3" => Unit::PoundPerCubicFoot.to_base(1.0),
        "lb/US gal->kg/m3" => Unit::PoundPerGallon.to_base(1.0),
        "lb/ft2->kg/m2" => Unit::PoundPerSquareFoot.to_base(1.0),
        "lb/1000ft2->kg/m2" => Unit::PoundPerThousandSquareFeet.to_base(1.0),
        "1000 ft2->m2" => Unit::SquareFoot.to_base(1_000.0),
        // A price per unit of volume: the volume is where the price per m³ is one.
        "1000ft2 x 3/4in ->m3" => 1.0 / Unit::PerThousandSquareFeetThreeQuarter.to_base(1.0),
        "US gal/min->m3/s" => Unit::GallonPerMinute.to_base(1.0),
        "US gal/min->L/h" => Unit::LitrePerHour.from_base(Unit::GallonPerMinute.to_base(1.0)),
        "ft/min->m/s" => Unit::FootPerMinute.to_base(1.0),
        "lb/h->kg/s" => Unit::PoundPerHour.to_base(1.0),
        "psi->Pa" => Unit::PoundForcePerSquareInch.to_base(1.0),
        "Btu_IT->J" => Unit::BtuPerPound.to_base(1.0) * exact::POUND,
        "oz->kg"
        | "long ton->kg"
        | "imp gal->m3"
        | "1000ft2 x 3/8in ->m3"
        | "1000ft2 x 1/8in ->m3"
        | "cP->Pa s"
        | "bar->Pa"
        | "kgf/cm2->Pa" => return None,
        other => panic!("{other}: not seen before"),
    })
}

/// Source: NIST SP 811 (2008), appendix B.8; exact values recomputed from the definitions.
#[test]
fn factors_are_the_published_ones() {
    let mut checked = 0;
    for line in include_str!("../values/units_sp811.csv").lines().skip(1) {
        let mut cells = line.split(',');
        let conversion = cells.next().unwrap();
        let Some(factor) = factor(conversion) else { continue };
        let exact: f64 = cells.next().unwrap().parse().unwrap();
        assert_relative_eq!(factor, exact, max_relative = 1e-12);
        if let Ok(seven_digits) = cells.next().unwrap().parse::<f64>() {
            assert_relative_eq!(factor, seven_digits, max_relative = 5e-7);
        }
        checked += 1;
    }
    assert_eq!(checked, 19);
}

/// Source: NIST SP 811 (2008), appendix B.8: t/°C = (t/°F − 32)/1.8, T/K = t/°C + 273.15.
#[test]
fn temperatures_convert_at_the_fixed_points() {
    for (fahrenheit, celsius, kelvin) in
        [(32.0, 0.0, 273.15), (212.0, 100.0, 373.15), (-40.0, -40.0, 233.15), (356.0, 180.0, 453.15)]
    {
        let amount = Amount::new(Kind::Temperature, fahrenheit, Unit::Fahrenheit);
        assert_relative_eq!(amount.base, kelvin, max_relative = 1e-15);
        assert_relative_eq!(amount.get(Unit::Celsius), celsius, max_relative = 1e-14);
        assert_relative_eq!(amount.get(Unit::Fahrenheit), fahrenheit, max_relative = 1e-14);
    }
    assert_eq!(Unit::Fahrenheit.from_base(Unit::Fahrenheit.to_base(0.0)).to_bits(), 0, "no dust at zero");
}

/// What is read with a unit becomes a typed quantity by its number in the base unit: that unit is uom's.
#[test]
fn base_units_are_those_of_the_typed_quantities() {
    use uom::si::f64::{
        ArealMassDensity, AvailableEnergy, Frequency, Length, LinearMassDensity, Mass, MassDensity, MassRate, Power,
        ThermodynamicTemperature, Time, Velocity, Volume, VolumeRate,
    };
    use uom::si::{
        areal_mass_density, available_energy, frequency, length, linear_mass_density, mass, mass_density, mass_rate,
        power, thermodynamic_temperature, time, velocity, volume, volume_rate,
    };
    let typed = [
        (Unit::Tonne, Mass::new::<mass::ton>(1.0).value),
        (Unit::Gram, Mass::new::<mass::gram>(1.0).value),
        (Unit::KilogramPerHour, MassRate::new::<mass_rate::kilogram_per_hour>(1.0).value),
        (Unit::Litre, Volume::new::<volume::liter>(1.0).value),
        (Unit::LitrePerMinute, VolumeRate::new::<volume_rate::liter_per_minute>(1.0).value),
        (Unit::KilogramPerCubicMetre, MassDensity::new::<mass_density::kilogram_per_cubic_meter>(1.0).value),
        (
            Unit::KilogramPerSquareMetre,
            ArealMassDensity::new::<areal_mass_density::kilogram_per_square_meter>(1.0).value,
        ),
        (Unit::KilogramPerMetre, LinearMassDensity::new::<linear_mass_density::kilogram_per_meter>(1.0).value),
        (Unit::Millimetre, Length::new::<length::millimeter>(1.0).value),
        (Unit::MillimetrePerSecond, Velocity::new::<velocity::millimeter_per_second>(1.0).value),
        (Unit::Minute, Time::new::<time::minute>(1.0).value),
        (Unit::Celsius, ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(1.0).value),
        (Unit::KilojoulePerKilogram, AvailableEnergy::new::<available_energy::kilojoule_per_kilogram>(1.0).value),
        (Unit::Kilowatt, Power::new::<power::kilowatt>(1.0).value),
        (Unit::Hertz, Frequency::new::<frequency::hertz>(1.0).value),
    ];
    for (unit, value) in typed {
        assert_relative_eq!(unit.to_base(1.0), value, max_relative = 1e-15);
    }
}

/// Source: EN 322 defines the dry basis. By hand: 20, 50 and 100 % on the dry basis are 16.667, 33.333 and 50 % on the
/// wet one.
#[test]
fn wet_basis_is_not_a_factor() {
    for (dry, wet) in [(20.0, 100.0 / 6.0), (50.0, 100.0 / 3.0), (100.0, 50.0)] {
        let amount = Amount::new(Kind::Moisture, dry, Unit::PercentDryBasis);
        assert_relative_eq!(amount.get(Unit::PercentWetBasis), wet, max_relative = 1e-14);
    }
}

/// The factor of `unit` to the base, percent read as 0.01.
fn scale(unit: Unit) -> f64 {
    match unit.dimension() {
        Dimension::Fraction | Dimension::Moisture => 100.0 * unit.to_base(1.0),
        _ => unit.to_base(1.0),
    }
}

/// Formulas of the trade, as products of dimensions on both sides.
const LAWS: &[(&[Dimension], &[Dimension])] = {
    use Dimension as D;
    &[
        (&[D::MassFlow, D::Time], &[D::Mass]),
        (&[D::VolumeFlow, D::Time], &[D::Volume]),
        (&[D::AreaFlow, D::Time], &[D::Area]),
        (&[D::Speed, D::Time], &[D::Length]),
        (&[D::Slowness, D::Length], &[D::Time]),
        (&[D::Slowness, D::Speed], &[D::Number]),
        (&[D::Density, D::Volume], &[D::Mass]),
        (&[D::Density, D::VolumeFlow], &[D::MassFlow]),
        (&[D::Density, D::Length], &[D::ArealMass]),
        (&[D::ArealMass, D::Length], &[D::LinearMass]),
        (&[D::ArealMass, D::Area], &[D::Mass]),
        (&[D::LinearMass, D::Speed], &[D::MassFlow]),
        (&[D::ArealMass, D::Speed, D::Length], &[D::MassFlow]),
        (&[D::Length, D::Length], &[D::Area]),
        (&[D::Area, D::Length], &[D::Volume]),
        (&[D::AreaFlow, D::Length], &[D::VolumeFlow]),
        (&[D::SpecificEnergy, D::MassFlow], &[D::HeatFlow]),
        (&[D::Price, D::Mass], &[D::Cost, D::Volume]),
        (&[D::Price, D::Density], &[D::Cost]),
        (&[D::Fraction, D::Mass], &[D::Mass]),
        (&[D::Moisture, D::MassFlow], &[D::MassFlow]),
        (&[D::Stress, D::Area], &[D::Force]),
        (&[D::Stiffness, D::Length], &[D::Force]),
        (&[D::Stress, D::Length], &[D::Stiffness]),
        (&[D::FlowPerFrequency, D::Frequency], &[D::MassFlow]),
        (&[D::FlowPerRotation, D::Rotation], &[D::MassFlow]),
        (&[D::SpecificVolume, D::MassFlow], &[D::VolumeFlow]),
        (&[D::SpecificVolume, D::Density], &[D::Number]),
    ]
};

#[test]
fn formulas_hold_between_bare_numbers_of_a_coherent_set() {
    for set in [Coherent::Metric, Coherent::Us] {
        for (left, right) in LAWS {
            let product = |side: &[Dimension]| side.iter().map(|d| scale(set.unit(*d))).product::<f64>();
            // Energy alone is not in SI's own unit: kJ for J on both sides.
            assert_relative_eq!(product(left), product(right), max_relative = 1e-14);
        }
        for unit in Unit::ALL {
            assert_eq!(set.unit(unit.dimension()).dimension(), unit.dimension());
        }
    }
}

#[test]
fn symbols_and_keys_are_unique_and_kinds_are_whole() {
    let symbols: HashSet<_> = Unit::ALL.iter().map(|unit| unit.symbol()).collect();
    assert_eq!(symbols.len(), Unit::ALL.len());
    let keys: HashSet<_> = Kind::ALL.iter().map(|kind| serde_json::to_string(kind).unwrap()).collect();
    assert_eq!(keys.len(), Kind::ALL.len());
    for (at, kind) in Kind::ALL.iter().enumerate() {
        assert_eq!(*kind as usize, at, "{kind:?}: out of order in Kind::ALL");
        for unit in kind.units() {
            assert_eq!(unit.dimension(), kind.dimension(), "{}", unit.symbol());
            assert_eq!(Unit::from_symbol(unit.symbol()), Some(unit));
        }
    }
}

#[test]
fn a_choice_of_unit_holds_until_the_system_changes() {
    let mut units = Units::default();
    assert_eq!(units.unit(Kind::PumpFlow), Unit::LitrePerHour);
    units.choose(Kind::PumpFlow, Unit::LitrePerMinute);
    units.choose(Kind::Moisture, Unit::PercentWetBasis);
    units.choose(Kind::Thickness, Unit::Kilogram);
    units.choose(Kind::Thickness, Unit::Foot);
    assert_eq!(units.unit(Kind::PumpFlow), Unit::LitrePerMinute);
    assert_eq!(units.unit(Kind::Thickness), Unit::Millimetre, "not offered, not taken");

    units.set_system(UnitSystem::Metric);
    assert_eq!(units.unit(Kind::PumpFlow), Unit::LitrePerMinute, "no change of system, no change");
    units.set_system(UnitSystem::Us);
    assert_eq!(units.unit(Kind::PumpFlow), Unit::GallonPerMinute);
    assert_eq!(units.unit(Kind::Moisture), Unit::PercentWetBasis, "a basis belongs to no system");
    units.choose(Kind::Moisture, Unit::PercentDryBasis);
    units.set_system(UnitSystem::Metric);
    assert_eq!(units, Units::default(), "the usual unit is no choice of its own");
}

/// Units as the settings have them.
fn stored(units: Units) -> String {
    let text = Settings { units, ..Settings::default() }.text().unwrap();
    serde_json::from_str::<serde_json::Value>(&text).unwrap()["units"].to_string()
}

fn read_units(stored: &str) -> Units {
    let text = format!(r#"{{"haulm":"settings","version":1,"units":{stored}}}"#);
    Settings::read(&text).unwrap().units
}

#[test]
fn units_are_stored_in_words() {
    let mut units = Units::default();
    units.mark = DecimalMark::Comma;
    units.set_system(UnitSystem::Us);
    units.choose(Kind::MatWeight, Unit::PoundPerSquareFoot);
    let text = stored(units);
    assert_eq!(text, r#"{"mark":"comma","system":"us","units":{"mat_weight":"lb/ft²"}}"#);
    assert_eq!(read_units(&text), units);
}

#[test]
fn stored_words_that_are_not_known_are_passed_over() {
    let text = r#"{"system":"cgs","colour":3,"units":
        {"mat_weight":"g/m²","thickness":"furlong","width":"m","pump_flow":"kg/h"}}"#;
    let mut expected = Units::default();
    expected.choose(Kind::MatWeight, Unit::GramPerSquareMetre);
    assert_eq!(read_units(text), expected);
    for nothing in ["{}", "[1]", "null", r#"{"system":5,"units":["m"]}"#] {
        assert_eq!(read_units(nothing), Units::default(), "{nothing}");
    }
}

/// Any unit.
fn unit() -> impl Strategy<Value = Unit> {
    proptest::sample::select(Unit::ALL)
}

proptest! {
    #[test]
    fn to_base_and_back_is_the_same_number(unit in unit(), mantissa in 1.0..10.0_f64, power in -9..9_i32, minus: bool) {
        let size = mantissa * 10.0_f64.powi(power);
        let value = match unit.dimension() {
            Dimension::Moisture => size.min(99.0),
            _ if minus => -size,
            _ => size,
        };
        let back = unit.from_base(unit.to_base(value));
        // A temperature loses to the offset what its zero is away from absolute zero.
        let absolute = if unit.dimension() == Dimension::Temperature { 1e-12 } else { 0.0 };
        let error = (back - value).abs();
        prop_assert!(error <= 2e-14 * value.abs() + absolute, "{value} {} came back as {back}", unit.symbol());
    }

    #[test]
    fn stored_units_come_back(us: bool, comma: bool, choices in proptest::collection::vec((0..Kind::ALL.len(), unit()), 0..60)) {
        let mut units = Units::default();
        units.mark = if comma { DecimalMark::Comma } else { DecimalMark::Point };
        units.set_system(if us { UnitSystem::Us } else { UnitSystem::Metric });
        for (kind, unit) in choices {
            units.choose(Kind::ALL[kind], unit);
        }
        let text = stored(units);
        prop_assert_eq!(read_units(&text), units);
        let value: BTreeMap<String, serde_json::Value> = serde_json::from_str(&text).unwrap();
        prop_assert_eq!(value.len(), 3);
    }
}
