//! A run of draws, a slice at a time, so that a million of them hold up no key.

use crate::browser::clock;
use crate::domain::compare::uncertainty::monte_carlo::MonteCarloRun;
use crate::domain::compare::uncertainty::study::Study;
use crate::ui::state::compare::{CompareState, DrawsFound, RunProgress, Stage};
use leptos::prelude::*;
use std::time::Duration;

/// Draws of a slice.
const SLICE: usize = 16_384;

/// Starts a run in place of the one before.
pub fn start(compare: CompareState, study: Study, seed: u64, draws: usize) {
    let number = compare.progress.with_untracked(|progress| progress.run.wrapping_add(1));
    compare.progress.set(RunProgress { run: number, stage: Stage::Running, made: 0, wanted: draws });
    let began = clock::now();
    // The button is shown as pressed first.
    set_timeout(move || slice(compare, MonteCarloRun::new(study, seed, draws), (number, seed, began)), Duration::ZERO);
}

/// Stops the run, if one is on its way.
pub fn cancel(compare: CompareState) {
    if compare.progress.with_untracked(|progress| progress.stage == Stage::Running) {
        compare.progress.update(|progress| {
            progress.run = progress.run.wrapping_add(1);
            progress.stage = Stage::Cancelled;
        });
    }
}

fn slice(compare: CompareState, mut run: MonteCarloRun, (number, seed, began): (u32, u64, u64)) {
    if compare.progress.with_untracked(|progress| progress.run != number) {
        return;
    }
    let progress = run.step(SLICE);
    compare.progress.update(|shown| shown.made = progress.drawn);
    if !progress.is_done() {
        set_timeout(move || slice(compare, run, (number, seed, began)), Duration::ZERO);
        return;
    }
    let figures = run.study().asked().len();
    compare.found.set(DrawsFound {
        seed,
        draws: progress.drawn,
        took: clock::now().saturating_sub(began),
        summaries: (0..figures).map(|at| run.summary(at)).collect(),
        study: Some(run.into_study()),
    });
    compare.progress.update(|shown| shown.stage = Stage::Done);
}
