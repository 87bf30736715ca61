//! What was just done, told for a while, with the way to take it back.

use super::{Notice, State};
use leptos::prelude::*;
use std::sync::Arc;

impl State {
    /// A notice offers to take back the one step it tells of, and no other.
    pub(super) fn drop_step_notice(&self) {
        if self.notice.with_untracked(|notice| notice.as_ref().is_some_and(|notice| notice.of_step)) {
            self.notice.set(None);
        }
    }

    /// Tells something for a while.
    pub fn tell(&self, words: impl Into<String>) {
        self.show_notice(Notice { words: words.into(), undo: None, stays: false, of_step: false });
    }

    /// Tells of a step just made, which can be taken back from there.
    pub fn tell_step(&self, words: impl Into<String>) {
        let state = *self;
        let undo = Arc::new(move || state.undo());
        self.show_notice(Notice { words: words.into(), undo: Some(undo), stays: false, of_step: true });
    }

    /// Tells of something done that `undo` takes back, whatever is done in between: it can wait.
    pub fn tell_undo(&self, words: impl Into<String>, undo: impl Fn() + Send + Sync + 'static) {
        self.show_notice(Notice { words: words.into(), undo: Some(Arc::new(undo)), stays: true, of_step: false });
    }

    /// While records are being written, it waits until they are on the disk.
    fn show_notice(&self, notice: Notice) {
        if self.writing.with_value(|state| state.writing) {
            self.held.set_value(Some(notice));
        } else {
            self.notice.set(Some(notice));
        }
    }
}
