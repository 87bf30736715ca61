//! What the parts of the page share.

use super::systems::{Compared, compared, conditions};
use crate::domain::Draft;
use crate::domain::compare::Output;
use crate::domain::compare::draft::CompareDraft;
use crate::ui::state::State;
use crate::ui::text::Context;
use leptos::prelude::*;
use std::sync::Arc;

/// A figure of a system whose working is open, and what the id of the working begins with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OpenOutput {
    /// The part of the page.
    pub scope: &'static str,
    /// The figure.
    pub output: Output,
    /// The system's place.
    pub at: usize,
}

/// The comparison as the parts of the page see it.
#[derive(Clone, Copy)]
pub struct CompareContext {
    /// The app.
    pub state: State,
    /// The systems, solved.
    pub shown: Memo<Arc<Compared>>,
    /// Hours a year; `None` where none are entered that count.
    pub hours: Memo<Option<u16>>,
    /// The recipe whose fibre, board and line the systems are put on.
    pub base: Memo<Draft>,
    /// The figure whose working is open.
    pub open: RwSignal<Option<OpenOutput>>,
    /// Whether a number is being typed, so that nothing is said about it yet.
    pub typing: RwSignal<bool>,
    /// The box that was typed into last, while its unit may still be to come.
    pub typed_last: RwSignal<Option<String>>,
}

impl CompareContext {
    /// Follows what is chosen and typed.
    pub fn new(state: State) -> Self {
        Self {
            state,
            shown: compared(state),
            hours: Memo::new(move |_| state.compare.typed.with(CompareDraft::hours)),
            base: conditions(state),
            open: RwSignal::new(None),
            typing: RwSignal::new(false),
            typed_last: RwSignal::new(None),
        }
    }

    /// One part of what is entered, followed by itself: a key elsewhere leaves it as it is.
    pub fn follow<T: Clone + PartialEq + Send + Sync + 'static>(self, part: fn(&CompareDraft) -> T) -> Memo<T> {
        Memo::new(move |_| self.state.compare.typed.with(part))
    }

    /// Changes what is entered, as a step that can be taken back; what is typed into one box is one step.
    pub fn enter(self, change: impl FnOnce(&mut CompareDraft)) {
        let session = if self.typing.get_untracked() { self.typed_last.get_untracked() } else { None };
        self.state.compare.edit(session, change);
    }

    /// Units, currency and the names of a system's own liquids.
    pub fn with_draft<T>(self, draft: &Draft, act: impl FnOnce(&Context<'_>) -> T) -> T {
        let units = self.state.units.get();
        self.state.currency.with(|currency| act(&Context { units: &units, draft, currency }))
    }
}
