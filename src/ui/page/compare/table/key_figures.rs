//! The key figures of all systems, and which of them tell the systems apart.

use crate::domain::compare::economy::costs::release_agent;
use crate::domain::compare::overview::key_figures::{KeyFigure, KeyRow, key_rows};
use crate::quantity::{Unit, format};
use crate::ui::page::compare::context::CompareContext;
use leptos::prelude::*;

/// Where the key figures' workings open.
pub const KEY: &str = "key-";

/// The key figures of all systems, as they are whenever something changes.
pub fn key_figures(context: CompareContext) -> Memo<Vec<KeyRow>> {
    Memo::new(move |_| {
        let agents = context.shown.with(|shown| {
            let keys = &shown.keys;
            context
                .state
                .compare
                .typed
                .with(|typed| keys.iter().map(|key| release_agent(typed, key)).collect::<Vec<_>>())
        });
        context.shown.with(|shown| key_rows(&shown.systems, &agents, shown.reference))
    })
}

/// Whether all systems have the same value of a figure, so that it is no matter of choice.
pub fn is_equal(row: &KeyRow) -> bool {
    let mut values = row.values.iter().map(|value| value.map(|value| value.base));
    let Some(Some(first)) = values.next() else { return false };
    values.all(|value| value.is_some_and(|value| (value - first).abs() <= 1e-9 * first.abs().max(value.abs())))
}

/// The decimals of a row: those that show its largest value with the digits of its kind. A moisture has one more, as it is
/// compared with that of the fibre; an excess has no more than the dose.
pub fn decimals(row: &KeyRow, unit: Unit) -> u8 {
    let digits = row.figure.kind().digits() + u8::from(row.figure == KeyFigure::FibreMoisture);
    let decimals = format::column_decimals(digits, row.values.iter().flatten().map(|value| value.get(unit)));
    if row.figure == KeyFigure::WaterExcess { decimals.min(1) } else { decimals }
}
