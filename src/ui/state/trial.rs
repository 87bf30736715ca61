//! The state of the bench: the trial as typed, and what is shown of it.

use crate::browser::page;
use crate::domain::Draft;
use crate::record::content::trial::{OpenTrial, TrialContent};
use crate::ui::history::History;
use leptos::prelude::*;

/// The bench's signals, in one piece for the app's state.
#[derive(Clone, Copy)]
pub struct Bench {
    /// The trial on the page.
    pub open: RwSignal<OpenTrial>,
    /// The run whose sheet is shown, from 1; 0 outside a series.
    pub run: RwSignal<u32>,
    /// The batch that is weighed, from 1.
    pub batch: RwSignal<u32>,
    /// Names one trial on the page from the next.
    pub opening: RwSignal<u32>,
    /// The section shown, by its place.
    pub section: RwSignal<usize>,
    /// Whether the trial that was left open was brought.
    pub begun: RwSignal<bool>,
    history: RwSignal<History<TrialContent, String>>,
}

impl Default for Bench {
    fn default() -> Self {
        let trial = TrialContent::of(String::new(), Draft::default(), None);
        Self {
            open: RwSignal::new(OpenTrial { from: None, trial }),
            run: RwSignal::new(0),
            batch: RwSignal::new(1),
            opening: RwSignal::new(0),
            section: RwSignal::new(0),
            begun: RwSignal::new(false),
            history: RwSignal::new(History::default()),
        }
    }
}

impl Bench {
    /// Changes the trial, as a step that can be taken back. All that is typed into one box in a row is one step.
    pub fn edit(&self, change: impl FnOnce(&mut TrialContent)) {
        let before = self.trial();
        self.open.update(|open| {
            change(&mut open.trial);
            open.trial.keep_made();
        });
        // A box that is left enters again what it holds.
        if self.open.with_untracked(|open| open.trial != before) {
            self.history.update(|history| history.before(page::box_in_use(), || before));
        }
    }

    fn trial(&self) -> TrialContent {
        self.open.with_untracked(|open| open.trial.clone())
    }

    /// Takes the last step back.
    pub fn undo(&self) {
        self.step(|history| history.undo(|| self.trial()));
    }

    /// Goes a step forward again.
    pub fn redo(&self) {
        self.step(|history| history.redo(|| self.trial()));
    }

    fn step(&self, way: impl FnOnce(&mut History<TrialContent, String>) -> Option<TrialContent>) {
        if let Some(trial) = self.history.try_update(way).flatten() {
            // What is typed is taken back, and not that it was saved meanwhile.
            self.open.update(|open| open.trial = trial);
        }
    }

    /// Puts another trial on the page.
    pub fn load(&self, mut open: OpenTrial) {
        // A file may bring boards that nothing says what they were made with; from now on their plan must not move them.
        open.trial.keep_made();
        self.run.set(0);
        self.batch.set(1);
        self.opening.update(|opening| *opening += 1);
        self.history.update(History::clear);
        self.open.set(open);
    }

    /// What another tab has typed into the trial.
    pub fn follow_tab(&self, open: OpenTrial) {
        if self.open.with_untracked(|before| before.from != open.from) {
            self.history.update(History::clear);
            self.opening.update(|opening| *opening += 1);
        }
        self.open.set(open);
    }

    /// The run and the batch that are weighed.
    pub fn place(&self) -> (Option<u16>, u16) {
        let small = |number: u32| u16::try_from(number).unwrap_or(u16::MAX);
        let run = small(self.run.get());
        ((run > 0).then_some(run), small(self.batch.get()))
    }
}
