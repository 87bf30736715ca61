//! The state of the comparison: what is entered, and the draws made last.

use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::uncertainty::study::Study;
use crate::statistics::draws::DrawSummary;
use crate::ui::history::History;
use leptos::prelude::RwSignal;
use leptos::prelude::*;

/// A tab of the page. One is shown at a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CompareSection {
    /// The systems side by side.
    Table,
    /// Solving for an input, and for the break-even price.
    Solve,
    /// One input over a range.
    Sensitivity,
    /// Two inputs at once.
    Map,
    /// How certain the figures are.
    Uncertainty,
    /// The comparison on paper.
    Report,
}

impl CompareSection {
    /// All of them, in the order of the page.
    pub const ALL: &'static [CompareSection] =
        &[Self::Table, Self::Solve, Self::Sensitivity, Self::Map, Self::Uncertainty, Self::Report];

    /// The tab at a place among all of them.
    #[must_use]
    pub fn at(place: usize) -> Self {
        Self::ALL.get(place).copied().unwrap_or(Self::Table)
    }
}

/// Where systems are compared.
#[derive(Clone, Copy)]
pub struct CompareState {
    /// What is chosen and entered.
    pub typed: RwSignal<CompareDraft>,
    /// How far the draws are. By itself, for it changes many times before anything is found.
    pub progress: RwSignal<RunProgress>,
    /// What the draws made last have found.
    pub found: RwSignal<DrawsFound>,
    /// The tab shown, by its place.
    pub section: RwSignal<usize>,
    history: RwSignal<History<CompareDraft, String>>,
}

impl CompareState {
    /// As it was left.
    #[must_use]
    pub fn new(typed: CompareDraft) -> Self {
        Self {
            typed: RwSignal::new(typed),
            progress: RwSignal::new(RunProgress::default()),
            found: RwSignal::new(DrawsFound::default()),
            section: RwSignal::new(0),
            history: RwSignal::new(History::default()),
        }
    }

    /// Changes what is entered, as a step that can be taken back. While something is typed into one box, which `session`
    /// names, all of it is one step.
    pub fn edit(&self, session: Option<String>, change: impl FnOnce(&mut CompareDraft)) {
        self.history.update(|history| history.before(session, || self.typed.get_untracked()));
        self.typed.update(change);
    }

    /// What is typed next is a step of its own.
    pub fn close_step(&self) {
        self.history.update_untracked(History::close);
    }

    /// Takes the last step back.
    pub fn undo(&self) {
        if let Some(before) = self.history.try_update(|history| history.undo(|| self.typed.get_untracked())).flatten() {
            self.typed.set(before);
        }
    }

    /// Goes a step forward again.
    pub fn redo(&self) {
        if let Some(after) = self.history.try_update(|history| history.redo(|| self.typed.get_untracked())).flatten() {
            self.typed.set(after);
        }
    }

    /// Whether there is a step to take back.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        self.history.with(History::can_undo)
    }

    /// Whether there is a step to go forward to.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        self.history.with(History::can_redo)
    }

    /// Shows a tab.
    pub fn show(&self, section: CompareSection) {
        self.section.set(CompareSection::ALL.iter().position(|other| *other == section).unwrap_or(0));
    }
}

/// The state of a run of draws.
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
    /// Its state.
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
