//! What is in and around a box for a number. Pure: from the entry as typed to texts.

use crate::domain::recipe::finding::What;
use crate::domain::{Draft, Entry, Field};
use crate::quantity::format::DecimalMark;
use crate::quantity::number::{ReadError, Reading, read};
use crate::quantity::{Amount, Dimension, Kind, Unit, Units, format};

/// What the box shows: the text as typed while its unit is the one shown, else its number in the
/// unit shown. A text that cannot be read stays as it is. A typical value, which nobody typed, has the decimal mark chosen.
#[must_use]
pub fn in_box(entry: &Entry, kind: Kind, units: &Units) -> String {
    let shown = units.unit(kind);
    if entry.unit == shown || entry.is_blank() {
        let is_ours = entry.preset && units.mark == DecimalMark::Comma;
        return if is_ours { entry.text.replace('.', ",") } else { entry.text.clone() };
    }
    match read(&entry.text, kind, entry.unit) {
        Ok(reading) => format::editable(reading.amount(kind).get(shown), units.mark),
        Err(_) => entry.text.clone(),
    }
}

/// A number from a box for reading, on paper say: its digits as typed, the whole part grouped. What is more than a plain number stays.
#[must_use]
pub fn grouped(text: &str, mark: DecimalMark) -> String {
    let (whole, decimals) = text.split_once(mark.char()).unwrap_or((text, ""));
    let is_plain =
        !whole.is_empty() && [whole, decimals].iter().all(|part| part.bytes().all(|digit| digit.is_ascii_digit()));
    let value = text.replace(mark.char(), ".").parse().ok();
    match (is_plain, value, u8::try_from(decimals.len())) {
        (true, Some(value), Ok(decimals)) => format::fixed(value, decimals, mark),
        _ => text.to_owned(),
    }
}

/// The number of a field as read, if it can be.
#[must_use]
pub fn reading(draft: &Draft, field: Field) -> Option<Reading> {
    let entry = draft.entry(field)?;
    read(&entry.text, draft.kind(field), entry.unit).ok()
}

/// What a unit typed behind the number was read as, in the unit shown; `None` without such a unit,
/// or while the box shows the number converted.
#[must_use]
pub fn read_as(draft: &Draft, field: Field, units: &Units) -> Option<Amount> {
    entry_read_as(draft.entry(field)?, draft.kind(field), units)
}

/// As [`read_as`], of a box by itself.
#[must_use]
pub fn entry_read_as(entry: &Entry, kind: Kind, units: &Units) -> Option<Amount> {
    let reading = read(&entry.text, kind, entry.unit).ok()?;
    let as_typed = entry.unit == units.unit(kind);
    (as_typed && reading.unit_typed && reading.unit != units.unit(kind)).then(|| reading.amount(kind))
}

/// A moisture on the basis that the box does not show, with that basis as its unit.
#[must_use]
pub fn other_basis(draft: &Draft, field: Field, units: &Units) -> Option<(Amount, Unit)> {
    entry_other_basis(draft.entry(field)?, draft.kind(field), units)
}

/// As [`other_basis`], of a box by itself.
#[must_use]
pub fn entry_other_basis(entry: &Entry, kind: Kind, units: &Units) -> Option<(Amount, Unit)> {
    if kind.dimension() != Dimension::Moisture {
        return None;
    }
    let other = match units.unit(kind) {
        Unit::PercentWetBasis => Unit::PercentDryBasis,
        _ => Unit::PercentWetBasis,
    };
    let amount = read(&entry.text, kind, entry.unit).ok()?.amount(kind);
    // Below zero, or all water: the finding says so, and a second number would only confuse.
    (amount.base >= 0.0 && amount.get(other).is_finite()).then_some((amount, other))
}

/// An entry that may have been meant.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Suggestion {
    /// The text to put in.
    pub text: String,
    /// The unit beside the box that it is meant with.
    pub unit: Unit,
    /// Whether the text names a unit itself.
    pub has_unit: bool,
}

/// The entries that a finding about a field offers in place of what was typed.
#[must_use]
pub fn offers(draft: &Draft, field: Field, what: &What, units: &Units) -> Vec<Suggestion> {
    draft.entry(field).map_or_else(Vec::new, |entry| entry_offers(entry, what, units))
}

/// As [`offers`], of a box by itself.
#[must_use]
pub fn entry_offers(entry: &Entry, what: &What, units: &Units) -> Vec<Suggestion> {
    match what {
        What::LikelyFraction { meant, .. } | What::NotAllowed { meant: Some(meant), .. } => {
            let unit = units.unit(meant.kind);
            vec![Suggestion { text: format::editable(meant.get(unit), units.mark), unit, has_unit: false }]
        }
        What::Unreadable(ReadError::Ambiguous { decimal, grouped }) => {
            let unit = behind_number(&entry.text);
            let offer = |value: f64| {
                let number = format::editable(value, units.mark);
                let text = if unit.is_empty() { number } else { format!("{number} {unit}") };
                Suggestion { text, unit: entry.unit, has_unit: !unit.is_empty() }
            };
            vec![offer(*decimal), offer(*grouped)]
        }
        _ => Vec::new(),
    }
}

/// What was typed behind the number: a unit, or nothing.
fn behind_number(text: &str) -> &str {
    let number = |c: char| c.is_ascii_digit() || c.is_whitespace() || ".,'’+-−–".contains(c);
    let rest = text.trim_start_matches(number);
    // A power of ten is part of the number.
    match rest.strip_prefix(['e', 'E']).map(|power| power.trim_start_matches(['+', '-'])) {
        Some(power) if power.starts_with(|c: char| c.is_ascii_digit()) => power.trim_start_matches(number),
        _ => rest,
    }
    .trim()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::domain::recipe::check::read_field;
    use crate::domain::{LiquidDraft, LiquidField, Role};
    use crate::quantity::format::DecimalMark;
    use crate::quantity::kind::UnitSystem;

    fn us() -> Units {
        let mut units = Units::default();
        units.set_system(UnitSystem::Us);
        units
    }

    fn draft(field: Field, text: &str, unit: Unit) -> Draft {
        let mut draft = Draft::default();
        *draft.entry_mut(field).unwrap() = Entry::typed(text, unit);
        draft
    }

    #[test]
    fn the_box_shows_what_was_typed_until_the_unit_changes() {
        let metric = Units::default();
        let cases = [
            ("4000", metric, "4000"),
            ("4 t/h", metric, "4 t/h"),
            (" 4,5 ", metric, " 4,5 "),
            ("4000", us(), "8818.49"),
            ("1000 lb/h", us(), "1000"),
            ("abc", us(), "abc"),
            ("", us(), ""),
        ];
        for (text, units, shown) in cases {
            let entry = Entry::typed(text, Unit::KilogramPerHour);
            assert_eq!(in_box(&entry, Kind::FibreFlow, &units), shown, "{text}");
        }
    }

    #[test]
    fn a_unit_typed_behind_is_told_in_the_unit_shown() {
        let typed = draft(Field::FibreFlow, "4 t/h", Unit::KilogramPerHour);
        let read = read_as(&typed, Field::FibreFlow, &Units::default()).unwrap();
        assert!((read.get(Unit::KilogramPerHour) - 4000.0).abs() < 1e-9);
        assert_eq!(read_as(&typed, Field::FibreFlow, &us()), None);
        let plain = draft(Field::FibreFlow, "4000 kg/h", Unit::KilogramPerHour);
        assert_eq!(read_as(&plain, Field::FibreFlow, &Units::default()), None);
    }

    #[test]
    fn a_moisture_is_told_on_the_other_basis() {
        let units = Units::default();
        let dry = draft(Field::FibreMoisture, "25", Unit::PercentDryBasis);
        let (amount, unit) = other_basis(&dry, Field::FibreMoisture, &units).unwrap();
        assert_eq!(unit, Unit::PercentWetBasis);
        assert!((amount.get(unit) - 20.0).abs() < 1e-9);
        let negative = draft(Field::FibreMoisture, "-3", Unit::PercentDryBasis);
        assert_eq!(other_basis(&negative, Field::FibreMoisture, &units), None);
        let flow = draft(Field::FibreFlow, "25", Unit::KilogramPerHour);
        assert_eq!(other_basis(&flow, Field::FibreFlow, &units), None);
    }

    /// Every offer reads without a question, as one of the two numbers asked about.
    #[test]
    fn what_is_offered_reads_as_offered() {
        let mut comma = Units::default();
        comma.mark = DecimalMark::Comma;
        let cases = [
            ("1,234", [1.234, 1234.0]),
            ("1.234,5", [1.2345, 1234.5]),
            ("1,234 t/h", [1234.0, 1_234_000.0]),
            ("2,500e3", [2500.0, 2_500_000.0]),
        ];
        for units in [Units::default(), comma] {
            for (text, expected) in cases {
                let typed = draft(Field::FibreFlow, text, Unit::KilogramPerHour);
                let what = What::Unreadable(read(text, Kind::FibreFlow, Unit::KilogramPerHour).unwrap_err());
                let offers = offers(&typed, Field::FibreFlow, &what, &units);
                assert_eq!(offers.len(), expected.len(), "{text}");
                for (offer, expected) in offers.iter().zip(expected) {
                    let read = read(&offer.text, Kind::FibreFlow, offer.unit).unwrap().amount(Kind::FibreFlow);
                    let value = read.get(Unit::KilogramPerHour);
                    assert!((value / expected - 1.0).abs() < 1e-9, "{text}: {} is {value}", offer.text);
                }
            }
        }
    }

    #[test]
    fn a_fraction_is_offered_as_what_was_meant() {
        let mut typed = Draft::default();
        let id = typed.free_id();
        typed.liquids.push(LiquidDraft::blank(id, Role::Binder));
        let field = Field::Liquid(id, LiquidField::Solids);
        *typed.entry_mut(field).unwrap() = Entry::typed("65", Unit::PerUnit);
        let what = read_field(&typed, field).unwrap_err();
        let offers = offers(&typed, field, &what, &Units::default());
        assert_eq!(offers, [Suggestion { text: "65".to_owned(), unit: Unit::Percent, has_unit: false }]);
    }
}
