//! The ways from a run to where it is weighed and tested.

use crate::record::content::trial::progress::RunProgress;
use crate::ui::page::bench::tab::{BOARDS, SHEET};
use crate::ui::state::State;
use leptos::prelude::*;

/// Goes to the weigh sheet of a run, at the batch that is next.
pub fn to_weigh_sheet(state: State, run: RunProgress) {
    state.bench.run.set(u32::from(run.place));
    state.bench.batch.set(u32::from(run.next_batch.unwrap_or(1)));
    state.bench.section.set(SHEET);
}

/// Goes to the boards of a run.
pub fn to_boards(state: State, run: RunProgress) {
    state.bench.run.set(u32::from(run.place));
    state.bench.section.set(BOARDS);
}
