//! The state of the comparison: what is entered, and the draws made last.

use crate::browser::page;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::uncertainty::study::Study;
use crate::statistics::draws::DrawSummary;
use leptos::prelude::RwSignal;
use leptos::prelude::*;

/// Where systems are compared.
#[derive(Clone, Copy)]
pub struct CompareState {
    /// What is chosen and entered.
    pub typed: RwSignal<CompareDraft>,
    /// How far the draws are. By itself, for it changes many times before anything is found.
    pub progress: RwSignal<RunProgress>,
    /// What the draws made last have found.
    pub found: RwSignal<DrawsFound>,
    /// Whether drawings have little room.
    pub narrow: RwSignal<bool>,
}

/// Below this width of the window drawings are made for a phone; paper is never narrow.
const NARROW: &str = "screen and (max-width: 46em)";

impl CompareState {
    /// As it was left.
    #[must_use]
    pub fn new(typed: CompareDraft) -> Self {
        let narrow = RwSignal::new(page::matches(NARROW));
        page::watch(NARROW, move |now| narrow.set(now));
        Self {
            typed: RwSignal::new(typed),
            progress: RwSignal::new(RunProgress::default()),
            found: RwSignal::new(DrawsFound::default()),
            narrow,
        }
    }
}

/// How a run of draws stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Stage {
    /// None was made yet.
    #[default]
    None,
    /// Draws are being made.
    Running,
    /// All are made.
    Done,
    /// It was cancelled.
    Cancelled,
}

/// How far a run of draws is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct RunProgress {
    /// Counts the runs: one that is no longer the last one stops by itself.
    pub run: u32,
    /// How it stands.
    pub stage: Stage,
    /// Draws made.
    pub made: usize,
    /// Draws wanted.
    pub wanted: usize,
}

/// What a run of draws has found.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct DrawsFound {
    /// What it was about: by this one knows whether it still belongs to what is on the page.
    pub study: Option<Study>,
    /// What the draws began from.
    pub seed: u64,
    /// How many were made.
    pub draws: usize,
    /// How long it took, in milliseconds.
    pub took: u64,
    /// What the draws say, a figure each; `None` where there are too few.
    pub summaries: Vec<Option<DrawSummary>>,
}
