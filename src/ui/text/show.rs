//! Amounts in running text. The view formats figures itself; this is for sentences.

use super::Context;
use crate::quantity::format::DecimalMark;
use crate::quantity::{Amount, Dimension, Unit, format};
use crate::{label, t};
use std::borrow::Cow;

/// A unit's symbol as shown in the language that is spoken. Those of the SI, and the customary ones, are the same in all.
#[must_use]
pub fn symbol_shown(unit: Unit) -> &'static str {
    match unit {
        Unit::PercentDryBasis => label!("unit-percent-dry-basis"),
        Unit::PercentWetBasis => label!("unit-percent-wet-basis"),
        Unit::TurnPerMinute => label!("unit-turn-per-minute"),
        Unit::KilogramPerHourPerHertz => label!("unit-kilogram-per-hour-per-hertz"),
        Unit::PoundPerHourPerHertz => label!("unit-pound-per-hour-per-hertz"),
        Unit::KilogramPerHourPerTurn => label!("unit-kilogram-per-hour-per-turn"),
        Unit::PoundPerHourPerTurn => label!("unit-pound-per-hour-per-turn"),
        Unit::PerYear => label!("unit-per-year"),
        unit => unit.symbol(),
    }
}

/// A unit's symbol as shown, money with the currency before the stroke: "€/t".
#[must_use]
pub fn unit_shown(unit: Unit, currency: &str) -> Cow<'static, str> {
    match unit.dimension() {
        Dimension::Price | Dimension::Cost | Dimension::YearCost => {
            Cow::Owned(format!("{currency}{}", symbol_shown(unit)))
        }
        _ => Cow::Borrowed(symbol_shown(unit)),
    }
}

/// A unit as it fits into a box or a head: a basis by its letters.
#[must_use]
pub fn unit_short(unit: Unit, currency: &str) -> String {
    match unit {
        Unit::PercentDryBasis => t!("common-dry-basis"),
        Unit::PercentWetBasis => t!("common-wet-basis"),
        _ => unit_shown(unit, currency).into_owned(),
    }
}

/// The number of an amount in the unit chosen for its kind, rounded as its kind is, zeros at the end
/// left out, without the unit.
#[must_use]
pub fn trimmed(amount: Amount, context: &Context<'_>) -> String {
    let unit = context.units.unit(amount.kind);
    let text = format::amount(amount, unit, context.units.mark);
    without_zeros(&text, context.units.mark.char())
}

/// A number with so many significant digits, zeros at the end left out.
#[must_use]
pub fn trimmed_to(value: f64, digits: u8, mark: DecimalMark) -> String {
    without_zeros(&format::significant(value, digits, mark), mark.char())
}

/// A name within a phrase: with a small letter for its first one, unless the language writes nouns large.
#[must_use]
pub fn lower_first(name: &str) -> String {
    if label!("common-nouns") == "large" {
        return name.to_owned();
    }
    let mut chars = name.chars();
    chars.next().into_iter().flat_map(char::to_lowercase).chain(chars).collect()
}

/// An amount with its unit, for a sentence.
#[must_use]
pub fn shown(amount: Amount, context: &Context<'_>) -> String {
    with_unit(&trimmed(amount, context), context.units.unit(amount.kind), context.currency)
}

/// A number and its unit with a space that does not break; a bare number without one.
pub(super) fn with_unit(number: &str, unit: Unit, currency: &str) -> String {
    match unit_shown(unit, currency) {
        symbol if symbol.is_empty() => number.to_owned(),
        symbol => format!("{number}\u{a0}{symbol}"),
    }
}

/// Without the zeros at the end of the decimals; a power of ten behind them stays.
pub(super) fn without_zeros(text: &str, mark: char) -> String {
    let (digits, power) = text.split_at(text.find(" × ").unwrap_or(text.len()));
    if !digits.contains(mark) {
        return text.to_owned();
    }
    format!("{}{power}", digits.trim_end_matches('0').trim_end_matches(mark))
}

#[cfg(test)]
mod tests {
    use super::lower_first;

    #[test]
    fn a_name_within_a_phrase() {
        for (name, expected) in [("Wood fibre", "wood fibre"), ("Östlich", "östlich"), ("", "")] {
            assert_eq!(lower_first(name), expected);
        }
    }
}
