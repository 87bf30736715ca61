//! Binder systems compared: side by side, solved for a wanted value, swept, and with honest uncertainty.

pub mod desk;
mod draws;
mod equal;
mod map;
pub mod parts;
mod report;
mod results;
mod run;
mod shares;
mod side;
mod solve;
mod sources;
mod sure;
mod sweep;
mod systems;
mod table;

use crate::browser::element::{Part, View, el};
use crate::ui::signal::{Memo, memo};
use crate::ui::state::{State, state};
use std::sync::Arc;
use systems::Compared;

/// What the sections share.
#[derive(Clone, Copy)]
struct Bench {
    state: State,
    /// The systems, worked out.
    shown: Memo<Arc<Compared>>,
    /// Hours a year.
    hours: Memo<u16>,
}

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
    let hours = memo(move || state.compare.typed.with(parts::hours));
    let bench = Bench { state, shown: systems::compared(state), hours };
    let swept = sweep::swept(bench);
    let mapped = map::mapped(bench);
    let sure = sure::sure(bench);
    run::warm_up(sure);
    let report = report::Sheet { bench, swept, mapped, sure };
    el("div")
        .class("compare page")
        .child(el("h1").child(state.words.tools.compare))
        .child(side::side(bench, sure))
        .child(solve::solve(bench))
        .child(sweep::sweep(bench, swept))
        .child(map::map(bench, mapped))
        .child(sure::section(bench, sure))
        .child(report::section(report))
        .view()
}
