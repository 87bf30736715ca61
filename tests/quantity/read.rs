//! Reading what was typed.

use haulm::quantity::number::{ReadError, Reading, read};
use haulm::quantity::{Kind, Unit};
use proptest::prelude::*;

/// Reads `text` as a figure of `kind`, the kind's usual metric unit beside the box.
fn check(kind: Kind, text: &str, expected: Result<(f64, Unit), ReadError>) {
    let unit_in_box = kind.units().next().unwrap();
    let read = read(text, kind, unit_in_box).map(|reading| (reading.value, reading.unit));
    assert_eq!(read, expected, "{text:?}");
}

#[test]
fn numbers() {
    for (text, value) in [
        ("12", 12.0),
        (" 12.5 ", 12.5),
        ("12,5", 12.5),
        ("0,655", 0.655),
        ("00,655", 0.655),
        ("1.234", 1.234),
        ("1234,567", 1234.567),
        ("1,23", 1.23),
        ("1,2345", 1.2345),
        (".5", 0.5),
        (",5", 0.5),
        (",500", 0.5),
        ("5.", 5.0),
        ("5,", 5.0),
        ("1 234", 1234.0),
        ("12 345.6", 12_345.6),
        ("1 234,567", 1234.567),
        ("1\u{a0}234\u{202f}567", 1_234_567.0),
        ("28\u{2009}000", 28_000.0),
        ("1'234.5", 1234.5),
        ("1’234,5", 1234.5),
        ("+3", 3.0),
        ("-3.5", -3.5),
        ("\u{2212}3,5", -3.5),
        ("– 3", -3.0),
        ("1e3", 1000.0),
        ("1.5E-3", 0.0015),
        ("1,5e\u{2212}3", 0.0015),
        ("1.23 × 10⁻⁷", 1.23e-7),
        ("2 x 10^3", 2000.0),
        ("1e-999", 0.0),
        ("\u{feff}7\u{200e}", 7.0),
        ("0000000000000000000000012", 12.0),
    ] {
        check(Kind::Ratio, text, Ok((value, Unit::One)));
    }
}

/// Arabic-Indic, Extended Arabic-Indic and full-width digits (Unicode, general category Nd), with the marks that are written with them.
#[test]
fn digits_of_other_keyboards() {
    for (text, value) in [
        ("١٢", 12.0),
        ("٠٫٦٥٥", 0.655),
        ("١٬٢٣٤٫٥", 1234.5),
        ("٩٨٧٦٥٤٣٢١٠", 9_876_543_210.0),
        ("۱۲٫۵", 12.5),
        ("۹۸۷۶۵۴۳۲۱۰", 9_876_543_210.0),
        ("１２．５", 12.5),
        ("９８７６５４３２１０", 9_876_543_210.0),
        ("－３，５", -3.5),
        ("＋１ｅ３", 1000.0),
        ("\u{3000}１２", 12.0),
        ("1٢３", 123.0),
    ] {
        check(Kind::Ratio, text, Ok((value, Unit::One)));
    }
    check(Kind::Ratio, "１，２３４", Err(ReadError::Ambiguous { decimal: 1.234, grouped: 1234.0 }));
    check(Kind::Moisture, "１２％", Ok((12.0, Kind::Moisture.units().next().unwrap())));
    check(Kind::FibreFlow, "٤٠٠٠ kg/h", Ok((4000.0, Unit::KilogramPerHour)));
    check(Kind::FibreFlow, "４ ｔ／ｈ", Ok((4.0, Unit::TonnePerHour)));
    // Digits of other scripts than these are no number.
    check(Kind::Ratio, "१२", Err(ReadError::NotANumber));
}

#[test]
fn texts_that_are_no_number() {
    use ReadError::{Empty, NotANumber, SecondDecimalMark, TooLarge, UnknownUnit};
    for (text, error) in [
        ("", Empty),
        (" \u{a0}\u{202f}\t", Empty),
        ("\u{200b}", Empty),
        ("abc", NotANumber),
        ("-", NotANumber),
        ("–", NotANumber),
        (".", NotANumber),
        (",", NotANumber),
        ("t/h", NotANumber),
        ("nan", NotANumber),
        ("inf", NotANumber),
        ("1 2", NotANumber),
        ("1 23", NotANumber),
        ("1234 567", NotANumber),
        ("0 500", NotANumber),
        ("1  234", NotANumber),
        ("1 234 56", NotANumber),
        ("1.234 567", NotANumber),
        ("12'6", NotANumber),
        ("1\t234", NotANumber),
        ("12. 5", NotANumber),
        ("4-5", NotANumber),
        ("--4", NotANumber),
        ("3/4", NotANumber),
        ("3/4 in", NotANumber),
        ("1½", NotANumber),
        ("<5", NotANumber),
        ("$5", NotANumber),
        ("1.2.3", SecondDecimalMark),
        ("1,2,3", SecondDecimalMark),
        ("12,5.0", SecondDecimalMark),
        ("0,500.1", SecondDecimalMark),
        ("1.234.5", SecondDecimalMark),
        ("1,234.567,8", SecondDecimalMark),
        ("1 234.567,8", SecondDecimalMark),
        ("..5", SecondDecimalMark),
        ("5..", SecondDecimalMark),
        ("12 apples", UnknownUnit),
        ("12e", UnknownUnit),
        ("0x10", UnknownUnit),
        ("5 x 10", UnknownUnit),
        ("1e16", TooLarge),
        ("-1e400", TooLarge),
        ("1,234e999", TooLarge),
        ("1e99999999999999999999", TooLarge),
    ] {
        check(Kind::FibreFlow, text, Err(error));
    }
}

#[test]
fn two_readings_are_asked_about() {
    for (text, decimal, grouped) in [
        ("1,234", 1.234, 1234.0),
        ("-12,345", -12.345, -12_345.0),
        ("120,000 kg/h", 120.0, 120_000.0),
        ("1,234e1", 12.34, 12_340.0),
        ("1.234,5", 1.2345, 1234.5),
        ("1,234.5", 1.2345, 1234.5),
        ("1.234,567", 1.234_567, 1234.567),
        ("1,234,567", 1.234_567, 1_234_567.0),
        ("1.234.567", 1.234_567, 1_234_567.0),
        ("1,234,567.8", 1.234_567_8, 1_234_567.8),
        ("1.234.567,8", 1.234_567_8, 1_234_567.8),
    ] {
        check(Kind::FibreFlow, text, Err(ReadError::Ambiguous { decimal, grouped }));
    }
}

#[test]
fn units_behind_the_number() {
    use Unit as U;
    for (kind, text, value, unit) in [
        (Kind::FibreFlow, "4 t/h", 4.0, U::TonnePerHour),
        (Kind::FibreFlow, "4t/h", 4.0, U::TonnePerHour),
        (Kind::FibreFlow, "4 T / H", 4.0, U::TonnePerHour),
        (Kind::FibreFlow, "4 tonnes per hour", 4.0, U::TonnePerHour),
        (Kind::FibreFlow, "4 tph", 4.0, U::TonnePerHour),
        (Kind::FibreFlow, "8 800 lbs/hr", 8800.0, U::PoundPerHour),
        (Kind::FibreFlow, "4 short tons/h", 4.0, U::ShortTonPerHour),
        (Kind::FibreFlow, "1e3 kg/h", 1000.0, U::KilogramPerHour),
        (Kind::PumpFlow, "2.5 gal/min", 2.5, U::GallonPerMinute),
        (Kind::PumpFlow, "2.5 US gallons per minute", 2.5, U::GallonPerMinute),
        (Kind::PumpFlow, "2,5 gpm", 2.5, U::GallonPerMinute),
        (Kind::PumpFlow, "3 litres/min", 3.0, U::LitrePerMinute),
        (Kind::PumpFlow, "0.5 m^3/h", 0.5, U::CubicMetrePerHour),
        (Kind::PumpFlow, "0.5 m³/h", 0.5, U::CubicMetrePerHour),
        (Kind::Thickness, "12mm", 12.0, U::Millimetre),
        (Kind::Thickness, "0.5 in.", 0.5, U::Inch),
        (Kind::Thickness, ".75\"", 0.75, U::Inch),
        (Kind::Thickness, ".75″", 0.75, U::Inch),
        (Kind::Thickness, "1.2 cm", 1.2, U::Centimetre),
        (Kind::Extent, "10'", 10.0, U::Foot),
        (Kind::Extent, "10 FEET", 10.0, U::Foot),
        (Kind::MatWeight, "2800 lb/1000 ft²", 2800.0, U::PoundPerThousandSquareFeet),
        (Kind::MatWeight, "2800lb/1000ft2", 2800.0, U::PoundPerThousandSquareFeet),
        (Kind::MatWeight, "2800 lbs per 1000 sq ft", 2800.0, U::PoundPerThousandSquareFeet),
        (Kind::LiquidDensity, "1.28 g/cm³", 1.28, U::KilogramPerLitre),
        (Kind::LiquidDensity, "10.7 lb/gal", 10.7, U::PoundPerGallon),
        (Kind::Temperature, "180°", 180.0, U::Celsius),
        (Kind::Temperature, "356 °F", 356.0, U::Fahrenheit),
        (Kind::Temperature, "356 degrees F", 356.0, U::Fahrenheit),
        (Kind::Temperature, "20c", 20.0, U::Celsius),
        (Kind::PressFactor, "8 s/mm", 8.0, U::SecondPerMillimetre),
        (Kind::PressTime, "2 min", 2.0, U::Minute),
        (Kind::Moisture, "6.5 % wb", 6.5, U::PercentWetBasis),
        (Kind::Moisture, "6.5%wb", 6.5, U::PercentWetBasis),
        (Kind::Moisture, "6.5 % (wet basis)", 6.5, U::PercentWetBasis),
        (Kind::Moisture, "6.5 W.B.", 6.5, U::PercentWetBasis),
        (Kind::Moisture, "7 % d.b.", 7.0, U::PercentDryBasis),
        (Kind::Solids, "65 %", 65.0, U::Percent),
        (Kind::Solids, "0.65 kg/kg", 0.65, U::PerUnit),
        (Kind::SpecificHeat, "1100 BTU/lb", 1100.0, U::BtuPerPound),
        (Kind::Price, "400 €/t", 400.0, U::PerTonne),
        (Kind::Price, "EUR 400 / t", 400.0, U::PerTonne),
        (Kind::Price, "€400", 400.0, U::PerTonne),
        (Kind::Price, "US$ 0.25 per lb", 0.25, U::PerPound),
        (Kind::Price, "0.25 usd/lb", 0.25, U::PerPound),
        (Kind::Price, "400 CHF", 400.0, U::PerTonne),
        (Kind::Price, "400 CHF per tonne", 400.0, U::PerTonne),
        (Kind::Price, "0.4/kg", 0.4, U::PerKilogram),
        (Kind::Cost, "95 /1000 ft² of ¾ in", 95.0, U::PerThousandSquareFeetThreeQuarter),
    ] {
        check(kind, text, Ok((value, unit)));
    }
}

#[test]
fn units_that_do_not_belong() {
    use ReadError::{OtherUnit, UnknownUnit};
    for (kind, text, error) in [
        (Kind::FibreFlow, "4 kg", OtherUnit { unit: Unit::Kilogram }),
        (Kind::FibreFlow, "4 L/h", OtherUnit { unit: Unit::LitrePerHour }),
        (Kind::FibreFlow, "4 %", OtherUnit { unit: Unit::Percent }),
        (Kind::Dose, "4 % dry", OtherUnit { unit: Unit::PercentDryBasis }),
        (Kind::Moisture, "0.07 kg/kg", OtherUnit { unit: Unit::PerUnit }),
        (Kind::Price, "400 gal", OtherUnit { unit: Unit::Gallon }),
        (Kind::Price, "400 kg", OtherUnit { unit: Unit::Kilogram }),
        (Kind::Price, "45 ¢/lb", UnknownUnit),
        (Kind::Price, "400 per", UnknownUnit),
        // A bare ton is 907, 1000 or 1016 kg.
        (Kind::FibreFlow, "4 ton/h", UnknownUnit),
        (Kind::FibreFlow, "400 €/t", UnknownUnit),
        (Kind::Extent, "6 ft 2 in", UnknownUnit),
        (Kind::Extent, "6' 2\"", UnknownUnit),
    ] {
        check(kind, text, Err(error));
    }
}

#[test]
fn the_box_decides_what_the_text_leaves_open() {
    let wet = Unit::PercentWetBasis;
    for (text, typed) in [("6.5", false), ("6.5 %", false), ("6,5%", false), ("6.5 % wet", true)] {
        let expected = Reading { value: 6.5, unit: wet, unit_typed: typed };
        assert_eq!(read(text, Kind::Moisture, wet), Ok(expected), "{text}");
    }
    for text in ["100 %", "120", "1e300"] {
        assert_eq!(read(text, Kind::Moisture, wet), Err(ReadError::TooLarge), "no fibre left to relate {text} to");
    }
    let reading = read("$ 250", Kind::Price, Unit::PerShortTon).unwrap();
    assert_eq!((reading.unit, reading.unit_typed), (Unit::PerShortTon, false));
}

#[test]
fn a_reading_becomes_an_amount() {
    let amount = read("3.6 t/h", Kind::FibreFlow, Unit::PoundPerHour).unwrap().amount(Kind::FibreFlow);
    assert_eq!(amount.kind, Kind::FibreFlow);
    approx::assert_relative_eq!(amount.base, 1.0, max_relative = 1e-15);
}

/// Every spelling of every unit is understood as that unit by every kind of its dimension, and in
/// capitals as well: no two units of a dimension share one.
#[test]
fn every_spelling_is_understood() {
    for unit in Unit::ALL {
        for kind in Kind::ALL.iter().filter(|kind| kind.dimension() == unit.dimension()) {
            for spelling in std::iter::once(unit.symbol()).chain(unit.aliases().iter().copied()) {
                check(*kind, &format!("1 {spelling}"), Ok((1.0, *unit)));
                check(*kind, &format!("1{}", spelling.to_uppercase()), Ok((1.0, *unit)));
            }
        }
    }
}

/// Text made of what numbers and units are made of, so that much of it gets far into the reader.
fn nearly_a_number() -> impl Strategy<Value = String> {
    let parts = prop::sample::select(vec![
        "0", "1", "12", "345", ".", ",", " ", "'", "\u{202f}", "-", "\u{2212}", "e", "E", "×", "10", "⁻", "³", "^",
        "/", "%", "°", "¾", "€", "$", "EUR", "per", "t", "h", "kg", "m", "ft", "gal", "in", "wb", "ß", "İ", "\u{0}",
        "\u{301}", "🌾",
    ]);
    prop::collection::vec(parts, 0..12).prop_map(|parts| parts.concat())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4_096))]

    #[test]
    fn no_text_panics_or_reads_as_no_number(
        text in prop_oneof![any::<String>(), nearly_a_number()],
        kind in prop::sample::select(Kind::ALL),
    ) {
        for unit in kind.units() {
            match read(&text, kind, unit) {
                Ok(reading) => {
                    prop_assert!(reading.value.is_finite());
                    prop_assert!(reading.amount(kind).base.is_finite());
                    prop_assert_eq!(reading.unit.dimension(), kind.dimension());
                }
                Err(ReadError::Ambiguous { decimal, grouped }) => {
                    prop_assert!(decimal.is_finite() && grouped.is_finite());
                    prop_assert!(decimal.abs() <= grouped.abs());
                }
                Err(_) => {}
            }
        }
    }
}

proptest! {
    /// Source: the standard library's own parser, which is exact.
    #[test]
    fn decimals_are_read_exactly(whole in 0_u64..1_000_000_000, fraction in "[0-9]{0,17}", exponent in -9_i32..3) {
        let text = format!("{whole}.{fraction}e{exponent}");
        let expected: f64 = text.parse().unwrap();
        let read = read(&text, Kind::Ratio, Unit::One).unwrap().value;
        prop_assert_eq!(read.to_bits(), expected.to_bits(), "{}", text);
    }
}
