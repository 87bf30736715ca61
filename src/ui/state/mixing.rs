//! Changes where solutions and glue are made up, each to be taken back.

use super::State;
use crate::domain::mixing::MixDraft;
use crate::ui::history::History;
use leptos::prelude::*;

impl State {
    /// Changes what is made up, as a step that can be taken back. Steps of one session, a box by its key, are one step.
    pub fn edit_mix(&self, session: Option<String>, change: impl FnOnce(&mut MixDraft)) {
        self.mix_history.update(|history| history.before(session, || self.mix.get_untracked()));
        self.mix.update(change);
    }

    /// A box was left: what is typed into it next is a step of its own.
    pub fn leave_mix(&self) {
        self.mix_history.update_untracked(History::close);
    }

    /// Takes the last step back.
    pub fn undo_mix(&self) {
        self.step_mix(|history| history.undo(|| self.mix.get_untracked()));
    }

    /// Goes a step forward again.
    pub fn redo_mix(&self) {
        self.step_mix(|history| history.redo(|| self.mix.get_untracked()));
    }

    fn step_mix(&self, way: impl FnOnce(&mut History<MixDraft, String>) -> Option<MixDraft>) {
        if let Some(mix) = self.mix_history.try_update(way).flatten() {
            self.mix.set(mix);
        }
    }

    /// Whether there is a step to take back, and one to go forward to.
    #[must_use]
    pub fn mix_steps(&self) -> (bool, bool) {
        self.mix_history.with(|history| (history.can_undo(), history.can_redo()))
    }
}
