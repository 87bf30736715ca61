//! An amount as text, in the units chosen.

use crate::quantity::{Amount, Unit, format};
use crate::ui::state::State;
use crate::ui::text::unit_shown;
use leptos::reactive::prelude::*;

/// An amount in a unit, or else in the one chosen for its kind.
#[must_use]
pub fn with_unit(state: State, amount: Amount, unit: Option<Unit>) -> String {
    let units = state.units.get();
    let unit = unit.unwrap_or_else(|| units.unit(amount.kind));
    let number = format::amount(amount, unit, units.mark);
    state.currency.with(|currency| joined(&number, &unit_shown(unit, currency)))
}

/// Number and unit with a space that does not break.
#[must_use]
pub fn joined(number: &str, unit: &str) -> String {
    if unit.is_empty() { number.to_owned() } else { format!("{number}\u{a0}{unit}") }
}
