//! Showing numbers, and reading back what is shown.

use haulm::quantity::format::{self, DecimalMark, editable, full, significant};
use haulm::quantity::number::{LARGEST, ReadError, read};
use haulm::quantity::{Amount, Dimension, Kind, Unit};
use proptest::prelude::*;

const POINT: DecimalMark = DecimalMark::Point;
const COMMA: DecimalMark = DecimalMark::Comma;

/// `_` stands for the narrow no-break space, `-` for the minus sign.
fn check(shown: &str, expected: &str) {
    assert_eq!(shown, expected.replace('_', "\u{202f}").replace('-', "\u{2212}"));
}

#[test]
fn as_many_decimals_as_the_step() {
    for (value, step, expected) in [
        (313.6, 1.0, "314"),
        (42.04, 0.1, "42.0"),
        (99.96, 0.1, "100.0"),
        (26.7, 0.05, "26.70"),
        (8.0, 0.5, "8.0"),
        (0.2, 1.0, "0"),
        (0.6, 1.0, "1"),
        (-0.2, 1.0, "0"),
        (0.0, 0.1, "0"),
        (1234.0, 10.0, "1234"),
        (f64::NAN, 1.0, "–"),
    ] {
        check(&format::in_steps(value, step, POINT), expected);
    }
    check(&format::in_steps(42.04, 0.1, COMMA), "42,0");
}

#[test]
fn significant_digits() {
    for (value, digits, expected) in [
        (12_345.6, 4, "12_346"),
        (0.012_345, 4, "0.01235"),
        (3.8, 3, "3.80"),
        (2.675, 3, "2.68"),
        (1.005, 3, "1.01"),
        (0.5, 3, "0.500"),
        (100.0, 4, "100.0"),
        (999.96, 4, "1000"),
        (99_999.6, 4, "100_000"),
        (9.996, 3, "10.0"),
        (0.099_96, 3, "0.100"),
        (1234.0, 3, "1234"),
        (1_234_567.8, 2, "1_234_568"),
        (-1234.5, 4, "-1235"),
        (-0.25, 1, "-0.3"),
        (0.0, 4, "0"),
        (-0.0, 4, "0"),
        (1.0, 0, "1"),
        (999_999_999.4, 4, "999_999_999"),
        (999_999_999.6, 4, "1.000 × 10⁹"),
        (1.234_5e9, 3, "1.23 × 10⁹"),
        (1e-5, 3, "0.0000100"),
        (1.234e-7, 3, "1.23 × 10⁻⁷".replace('-', "⁻").as_str()),
        (-6.022e23, 3, "-6.02 × 10²³"),
        (f64::NAN, 4, "–"),
        (f64::INFINITY, 4, "–"),
        (f64::NEG_INFINITY, 4, "–"),
    ] {
        check(&significant(value, digits, POINT), expected);
        check(&significant(value, digits, COMMA), &expected.replace('.', ","));
    }
}

#[test]
fn full_values() {
    for (value, expected) in [
        (0.1 + 0.2, "0.3"),
        (1.0 / 3.0, "0.333333333333"),
        (12_345.678_9, "12_345.6789"),
        (1_601.846_337_396_014, "1601.8463374"),
        (-28_000.0, "-28_000"),
        (123_456_789_012.0, "123_456_789_012"),
        (1e12, "1 × 10¹²"),
        (1.5e-6, "1.5 × 10⁻⁶"),
        (0.0, "0"),
        (f64::NAN, "–"),
    ] {
        check(&full(value, POINT), expected);
    }
    check(&full(12_345.678, COMMA), "12_345,678");
}

#[test]
fn values_for_a_box() {
    for (value, point, comma) in [
        (12.5, "12.5", "12,5"),
        (1.234, "1.234", "1,2340"),
        (-123.456, "-123.456", "-123,4560"),
        (0.655, "0.655", "0,655"),
        (1234.567, "1234.567", "1234,567"),
        (1.0 / 3.0, "0.3333333", "0,3333333"),
        (123_456_789.6, "123456790", "123456790"),
        (1e-6, "0.000001", "0,000001"),
        (1.234e-7, "1.234e-7", "1,2340e-7"),
        (999_999_999_999.0, "999999999999", "999999999999"),
        (2.5e12, "2.5e12", "2,5e12"),
        (0.0, "0", "0"),
        (-0.0, "0", "0"),
        (f64::NAN, "", ""),
        (f64::INFINITY, "", ""),
    ] {
        assert_eq!(editable(value, POINT), point);
        assert_eq!(editable(value, COMMA), comma);
    }
}

#[test]
fn amounts_have_the_digits_of_their_kind() {
    for (kind, value, unit, shown_in, expected) in [
        (Kind::FibreFlow, 28.0, Unit::TonnePerHour, Unit::KilogramPerHour, "28_000"),
        (Kind::Thickness, 0.75, Unit::Inch, Unit::Millimetre, "19.05"),
        (Kind::Moisture, 50.0, Unit::PercentDryBasis, Unit::PercentWetBasis, "33.3"),
        (Kind::Temperature, 32.0, Unit::Fahrenheit, Unit::Celsius, "0"),
        (Kind::Temperature, 0.123, Unit::Celsius, Unit::Celsius, "0.1"),
        (Kind::Temperature, 0.04, Unit::Celsius, Unit::Celsius, "0"),
        (Kind::Temperature, 5.26, Unit::Celsius, Unit::Celsius, "5.3"),
        (Kind::Temperature, 68.0, Unit::Fahrenheit, Unit::Celsius, "20.0"),
        (Kind::Temperature, 356.0, Unit::Fahrenheit, Unit::Celsius, "180"),
        (Kind::Temperature, -17.8, Unit::Celsius, Unit::Celsius, "-17.8"),
    ] {
        check(&format::amount(Amount::new(kind, value, unit), shown_in, POINT), expected);
    }
    check(&format::amount(Amount::from_base(Kind::Temperature, f64::NAN), Unit::Celsius, POINT), "–");
}

/// A kind, one of its units, and a number that can be read in it.
fn typed() -> impl Strategy<Value = (Kind, Unit, f64)> {
    (proptest::sample::select(Kind::ALL), any::<prop::sample::Index>(), 1.0..10.0_f64, -8..12_i32, any::<bool>())
        .prop_map(|(kind, at, mantissa, power, minus)| {
            let units: Vec<Unit> = kind.units().collect();
            let size = mantissa * 10.0_f64.powi(power);
            let value = match kind.dimension() {
                Dimension::Moisture => size.min(98.0),
                _ if minus => -size,
                _ => size,
            };
            (kind, units[at.index(units.len())], value)
        })
        .prop_filter("within the limit", |(_, unit, value)| unit.to_base(*value).abs() < 0.99 * LARGEST)
}

/// Reads `text` and asks for `value` to `digits` digits. A shown comma may be asked about; then the
/// decimal reading must be the value.
fn reads_as(text: &str, kind: Kind, unit: Unit, value: f64, digits: i32, may_ask: bool) -> Result<(), TestCaseError> {
    let got = match read(text, kind, unit) {
        Ok(reading) => {
            prop_assert_eq!(reading.unit, unit);
            reading.value
        }
        Err(ReadError::Ambiguous { decimal, .. }) if may_ask => decimal,
        Err(error) => return Err(TestCaseError::fail(format!("{text}: {error:?}"))),
    };
    let step = 10.0_f64.powi(value.abs().log10().floor() as i32 + 1 - digits);
    // Half a step, and what two numbers of that size are stored with: at twelve digits no longer nothing beside a step.
    let stored = 2.0 * f64::EPSILON * value.abs();
    prop_assert!((got - value).abs() <= 0.500_001 * step + stored, "{value} shown as {text}, read as {got}");
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1_024))]

    #[test]
    fn what_is_shown_reads_back((kind, unit, value) in typed(), comma: bool) {
        let mark = if comma { COMMA } else { POINT };
        let digits = kind.digits();
        reads_as(&editable(value, mark), kind, unit, value, 7, false)?;
        reads_as(&significant(value, digits, mark), kind, unit, value, digits.into(), comma)?;
        reads_as(&full(value, mark), kind, unit, value, 12, comma)?;
    }

    #[test]
    fn what_is_shown_reads_back_with_its_unit((kind, unit, value) in typed(), comma: bool) {
        let mark = if comma { COMMA } else { POINT };
        // The box shows another unit: the typed one must win.
        let other = kind.units().last().unwrap();
        let text = format!("{} {}", editable(value, mark), unit.symbol());
        let reading = read(&text, kind, other);
        prop_assert_eq!(reading.map(|r| (r.unit, r.unit_typed)), Ok((unit, !unit.symbol().is_empty())));
        reads_as(&text, kind, unit, value, 7, false)?;
    }

    #[test]
    fn nothing_is_shown_that_is_no_number(value in any::<f64>(), digits: u8, comma: bool) {
        let mark = if comma { COMMA } else { POINT };
        for text in [significant(value, digits, mark), full(value, mark), editable(value, mark)] {
            prop_assert!(!text.to_lowercase().contains("nan") && !text.contains("inf"), "{}", text);
            prop_assert!(value.is_finite() == text.contains(|c: char| c.is_ascii_digit()), "{}", text);
        }
    }
}

#[test]
fn a_time_is_minutes_and_seconds() {
    for (seconds, shown) in [(160.0, "2:40"), (6.6, "0:07"), (59.6, "1:00"), (3_725.0, "62:05"), (f64::NAN, "–")] {
        assert_eq!(format::minutes(seconds), shown, "{seconds}");
    }
}
