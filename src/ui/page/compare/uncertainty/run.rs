//! Draws in slices, so that the page is never held up: a slice, then whatever waits, then the next one.

use super::study::PageStudy;
use crate::browser::clock;
use crate::browser::graph::*;
use crate::domain::compare::uncertainty::monte_carlo::MonteCarloRun;
use crate::domain::compare::uncertainty::study::Study;
use crate::statistics::draws::DrawSummary;
use crate::ui::signal::Memo;
use crate::ui::state::compare::{CompareState, DrawsFound, RunProgress, Stage};
use std::time::Duration;

/// A slice takes about so many milliseconds; what is drawn after it takes a few more.
const SLICE: u64 = 24;
/// Draws between two looks at the clock, of one figure.
const STRIDE: usize = 16_384;

/// A run on its way.
struct Task {
    run: MonteCarloRun,
    /// Its number.
    number: u32,
    seed: u64,
    began: u64,
    summaries: Vec<Option<DrawSummary>>,
}

/// Starts a run in place of the one before.
pub fn start(compare: CompareState, study: Study, seed: u64, draws: usize) {
    let number = compare.progress.with_untracked(|progress| progress.run.wrapping_add(1));
    compare.progress.set(RunProgress { run: number, stage: Stage::Running, made: 0, wanted: draws });
    let began = clock::now();
    let task = move || Task { run: MonteCarloRun::new(study, seed, draws), number, seed, began, summaries: Vec::new() };
    set_timeout(move || slice(compare, task()), Duration::ZERO);
}

/// Makes draws that nobody sees, a little while after the page is there. A browser runs machine code of a quick
/// kind at first, three times slower, and makes better code of what has run for a while: without this, the first
/// run is that while.
pub fn warm_up(study: Memo<Option<PageStudy>>) {
    let begin = move || {
        let study = study.with_untracked(|known| known.as_ref().and_then(|known| known.study.clone().ok()));
        if let Some(study) = study {
            warm(MonteCarloRun::new(study, 0, WARM));
        }
    };
    let timer = set_timeout_with_handle(begin, Duration::from_millis(900));
    on_cleanup(move || {
        if let Ok(timer) = timer {
            timer.clear();
        }
    });
}

/// Draws that nobody sees, and the milliseconds of a slice of them: any key goes first.
const WARM: usize = 16_384;
const WARM_SLICE: u64 = 6;

fn warm(mut run: MonteCarloRun) {
    let from = clock::now();
    let stride = (STRIDE / run.study().asked().len().max(1)).max(64);
    while !run.progress().is_done() && clock::now().saturating_sub(from) < WARM_SLICE {
        run.step(stride);
    }
    if run.progress().is_done() {
        for asked in 0..run.study().asked().len().min(12) {
            std::hint::black_box(run.summary(asked));
        }
    } else {
        set_timeout(move || warm(run), Duration::from_millis(10));
    }
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

fn slice(compare: CompareState, mut task: Task) {
    if compare.progress.with_untracked(|progress| progress.run != task.number) {
        return;
    }
    let figures = task.run.study().asked().len();
    let progress = task.run.progress();
    if progress.is_done() && task.summaries.len() == figures {
        return done(compare, task);
    }
    let from = clock::now();
    let spent = || clock::now().saturating_sub(from) >= SLICE;
    // The more figures, the longer a draw takes.
    let stride = (STRIDE / figures.max(1)).max(64);
    while !task.run.progress().is_done() && !spent() {
        task.run.step(stride);
    }
    if task.run.progress().is_done() {
        while task.summaries.len() < figures && !spent() {
            task.summaries.push(task.run.summary(task.summaries.len()));
        }
    }
    compare.progress.update(|shown| shown.made = task.run.progress().drawn);
    set_timeout(move || slice(compare, task), Duration::ZERO);
}

/// Shows what was found. Not in the last slice: the table takes its own time.
fn done(compare: CompareState, task: Task) {
    compare.found.set(DrawsFound {
        seed: task.seed,
        draws: task.run.progress().drawn,
        took: clock::now().saturating_sub(task.began),
        summaries: task.summaries,
        study: Some(task.run.into_study()),
    });
    compare.progress.update(|shown| shown.stage = Stage::Done);
}
