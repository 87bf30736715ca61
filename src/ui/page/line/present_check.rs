//! The line check of the present readings.

use super::context::solved;
use crate::domain::line::{LineCheck, LineFinding, check_readings, read_running, stale};
use crate::ui::state::State;
use leptos::reactive::prelude::*;
/// The line check of the present readings, and what is wrong with them.
pub fn present_check(state: State) -> (Option<LineCheck>, Vec<LineFinding>) {
    let changed = state.line.record.with(|record| record.planned.as_ref().and_then(|planned| planned.started));
    let recipe = state.title.with(|title| title.name.clone());
    solved(state, |draft, case, line, book| {
        let (readings, mut said) = read_running(book);
        said.extend(stale(book, &recipe, changed));
        let running = readings
            .zip(line.tolerances)
            .and_then(|(readings, tolerances)| check_readings(draft, case, line, &tolerances, &readings));
        (running, said)
    })
    .unwrap_or((None, Vec::new()))
}
