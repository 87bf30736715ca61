//! Draws in slices, so that the page is never held up: a slice, then whatever waits, then the next one.

use super::desk::{Desk, Drawn, Stage};
use crate::browser::clock;
use crate::browser::graph::*;
use crate::domain::compare::budget::Budget;
use crate::domain::compare::monte_carlo::Run;
use crate::domain::compare::study::Study;
use std::time::Duration;

/// A slice takes about so many milliseconds; what is drawn after it takes a few more.
const SLICE: u64 = 16;
/// Draws between two looks at the clock.
const STRIDE: usize = 1024;

/// Starts a run in place of the one before.
pub fn start(desk: Desk, study: Study, budgets: Vec<Budget>, seed: u64, draws: usize) {
    let run = desk.drawn.with_untracked(|drawn| drawn.run.wrapping_add(1));
    let drawn =
        Drawn { run, stage: Stage::Running, made: 0, wanted: draws, seed, took: 0, budgets, summaries: Vec::new() };
    desk.drawn.set(drawn);
    let began = clock::now();
    set_timeout(move || slice(desk, Run::new(study, seed, draws), run, began), Duration::ZERO);
}

/// Stops the run, if one is on its way.
pub fn cancel(desk: Desk) {
    if desk.drawn.with_untracked(|drawn| drawn.stage == Stage::Running) {
        desk.drawn.update(|drawn| {
            drawn.run = drawn.run.wrapping_add(1);
            drawn.stage = Stage::Cancelled;
        });
    }
}

fn slice(desk: Desk, mut run: Run, number: u32, began: u64) {
    if desk.drawn.with_untracked(|drawn| drawn.run != number) {
        return;
    }
    let from = clock::now();
    let spent = || clock::now().saturating_sub(from) >= SLICE;
    while !run.progress().is_done() {
        run.step(STRIDE);
        if spent() {
            break;
        }
    }
    let made = run.progress().drawn;
    let figures = run.study().asked().len();
    let mut summaries = Vec::new();
    if run.progress().is_done() {
        let done = desk.drawn.with_untracked(|drawn| drawn.summaries.len());
        for asked in done..figures {
            if spent() {
                break;
            }
            summaries.push(run.summary(asked));
        }
    }
    desk.drawn.update(|drawn| {
        drawn.made = made;
        drawn.summaries.extend(summaries);
        if drawn.summaries.len() == figures {
            drawn.stage = Stage::Done;
            drawn.took = clock::now().saturating_sub(began);
        }
    });
    if desk.drawn.with_untracked(|drawn| drawn.stage == Stage::Running) {
        set_timeout(move || slice(desk, run, number, began), Duration::ZERO);
    }
}
