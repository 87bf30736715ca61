//! What the page shares: what is typed, and the draws made last.

use crate::domain::compare::budget::Budget;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::summary::Summary;
use crate::ui::signal::RwSignal;

/// Where systems are compared.
#[derive(Clone, Copy)]
pub struct Desk {
    /// What is chosen and typed.
    pub typed: RwSignal<CompareDraft>,
    /// The draws made last.
    pub drawn: RwSignal<Drawn>,
}

impl Desk {
    /// As it was left.
    #[must_use]
    pub fn new(typed: CompareDraft) -> Self {
        Self { typed: RwSignal::new(typed), drawn: RwSignal::new(Drawn::default()) }
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

/// A run of draws and what came of it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Drawn {
    /// Counts the runs: one that is no longer the last one stops by itself.
    pub run: u32,
    /// How it stands.
    pub stage: Stage,
    /// Draws made.
    pub made: usize,
    /// Draws wanted.
    pub wanted: usize,
    /// What the draws began from.
    pub seed: u64,
    /// How long it took, in milliseconds.
    pub took: u64,
    /// The same figures to first order, as they were when it began: by them one knows whether it still
    /// belongs to what is on the page.
    pub budgets: Vec<Budget>,
    /// What the draws say, a figure each; `None` where there are too few.
    pub summaries: Vec<Option<Summary>>,
}
