//! Binder systems compared: side by side, solved for a wanted value, swept, and with their uncertainty.

mod answered;
mod break_even;
mod choices;
mod comparison;
mod economy;
mod emission;
mod map;
pub mod parts;
mod ranges;
mod report;
mod side;
mod solve;
mod sweep;
mod systems;
mod table;
mod uncertainty;

use crate::browser::element::{Part, View, el};
use crate::domain::compare::draft::CompareDraft;
use crate::ui::signal::memo;
use crate::ui::state::{State, state};
use comparison::Comparison;
use leptos::reactive::prelude::*;

/// Id and name of each section, in the order of the page.
pub const fn sections(state: State) -> [(&'static str, &'static str); 6] {
    let (page, sheet) = (&state.words.compare.page, &state.words.compare.sheet);
    [
        ("side", sheet.side_by_side),
        ("solve", page.solve),
        ("sweep", page.sweep),
        ("map", page.map),
        ("sure", sheet.uncertainty),
        ("report", page.report),
    ]
}

/// The page.
pub fn compare() -> View {
    let state = state();
    systems::follow_open(state);
    let hours = memo(move || state.compare.typed.with(CompareDraft::hours));
    let comparison = Comparison { state, shown: systems::compared(state), hours };
    let swept = sweep::swept(comparison);
    let mapped = map::mapped(comparison);
    let study = uncertainty::study::study(comparison);
    uncertainty::run::warm_up(study);
    let report = report::ReportParts { comparison, swept, mapped, study };
    el("div")
        .class("compare page")
        .child(el("h1").child(state.words.tools.compare))
        .child(side::side(comparison, study, swept))
        .child(solve::solve(comparison))
        .child(sweep::sweep(comparison, swept))
        .child(map::map(comparison, mapped))
        .child(uncertainty::section(comparison, study))
        .child(report::section(report))
        .view()
}
