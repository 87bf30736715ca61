//! What several documents read.

use crate::domain::line::{CheckedLine, LineBook, on_line};
use crate::domain::{Case, Draft};
use crate::quantity::{Amount, Kind, Unit};
use crate::t;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::part::figure;
use crate::ui::state::State;
use crate::ui::text::{LineContext, unit_shown};

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

/// An amount with its unit.
pub fn amount(state: State, kind: Kind, base: f64) -> String {
    with_unit(state, Amount::from_base(kind, base), None)
}

/// The symbol of a unit, a basis of moistures in short.
pub fn symbol(state: State, unit: Unit) -> String {
    match unit {
        Unit::PercentDryBasis => t!("common-dry-basis"),
        Unit::PercentWetBasis => t!("common-wet-basis"),
        _ => state.currency.with(|currency| unit_shown(unit, currency).into_owned()),
    }
}

/// A moisture on both bases, the one that was chosen first: "4.5 % db · 4.31 % wb".
pub fn moisture(state: State, base: f64) -> String {
    let of = Amount::from_base(Kind::Moisture, base);
    let chosen = state.unit(Kind::Moisture);
    let other = match chosen {
        Unit::PercentWetBasis => Unit::PercentDryBasis,
        _ => Unit::PercentWetBasis,
    };
    let mark = state.units.with(|units| units.mark);
    let one = |unit| joined(&crate::quantity::format::amount(of, unit, mark), &symbol(state, unit));
    format!("{} · {}", one(chosen), one(other))
}

/// A figure of the recipe; blank where it does not give it.
pub fn number(state: State, of: crate::domain::Figure) -> (String, String) {
    figure::parts(state, of, None)
}
