//! What several documents read.

use crate::domain::line::{CheckedLine, LineBook, on_line};
use crate::domain::{Case, Draft};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::t;
use crate::ui::part::amount::joined;
use crate::ui::part::figure;
use crate::ui::state::State;
use crate::ui::text::{LineContext, trimmed_to, unit_shown};
use leptos::prelude::*;
use uom::si::f64::Time;

/// What words of the line need.
pub fn line_words<T>(state: State, act: impl FnOnce(&LineContext<'_>) -> T) -> T {
    state.with_context(|plain| state.line.book(|book| act(&LineContext { plain: *plain, book })))
}

/// Something of the recipe as solved, with its line; `None` without a valid result or a fibre flow.
pub fn solved<T>(state: State, act: impl FnOnce(&Draft, &Case, &CheckedLine, &LineBook) -> T) -> Option<T> {
    state.outcome.with(|outcome| {
        let case = on_line(outcome.case.as_ref()).ok()?;
        Some(
            state
                .draft
                .with(|draft| state.line.checked.with(|line| state.line.book(|book| act(draft, case, line, book)))),
        )
    })
}

/// An amount with its unit, a basis of moistures in short.
pub fn shown(state: State, of: Amount) -> String {
    let units = state.units.get();
    let unit = units.unit(of.kind);
    joined(&format::amount(of, unit, units.mark), &symbol(state, unit))
}

/// The same of a number in the base unit.
pub fn amount(state: State, kind: Kind, base: f64) -> String {
    shown(state, Amount::from_base(kind, base))
}

/// The symbol of a unit, a basis of moistures in short.
pub fn symbol(state: State, unit: Unit) -> String {
    match unit {
        Unit::PercentDryBasis => t!("common-dry-basis"),
        Unit::PercentWetBasis => t!("common-wet-basis"),
        _ => state.currency.with(|currency| unit_shown(unit, currency).into_owned()),
    }
}

/// A span of time in hours, no finer than an order is made by.
pub fn hours(state: State, time: Time) -> String {
    let number = trimmed_to(Unit::Hour.from_base(time.value), 3, state.units.with(|units| units.mark));
    joined(&number, &symbol(state, Unit::Hour))
}

/// A moisture on a basis, as number and symbol, without zeros at its end.
fn moisture_on(state: State, base: f64, unit: Unit) -> (String, String) {
    let number = (unit.from_base(base) * 100.0).round() / 100.0;
    (format::editable(number, state.units.with(|units| units.mark)), symbol(state, unit))
}

/// A moisture on the basis that was chosen, and the same on the other one.
pub fn moistures(state: State, base: f64) -> [(String, String); 2] {
    let chosen = state.unit(Kind::Moisture);
    let other = match chosen {
        Unit::PercentWetBasis => Unit::PercentDryBasis,
        _ => Unit::PercentWetBasis,
    };
    [chosen, other].map(|unit| moisture_on(state, base, unit))
}

/// Both as text: "4.5 % db · 4.31 % wb".
pub fn moisture(state: State, base: f64) -> String {
    moistures(state, base).map(|(number, symbol)| joined(&number, &symbol)).join(" · ")
}

/// A figure of the recipe; blank where it does not give it.
pub fn number(state: State, of: crate::domain::Figure) -> (String, String) {
    figure::parts(state, of, None)
}
