//! What depends on where a person is typing: the unit of one box, and when there is something to say.

use super::{Session, State};
use crate::domain::{Entry, Field};
use crate::quantity::{Dimension, Kind, Unit, Units};
use crate::ui::state::settled::when_settled;
use leptos::prelude::*;
use std::time::Duration;

/// A number is taken as typed to its end when no key came for so long.
const PAUSE: Duration = Duration::from_millis(800);

impl State {
    /// Between two keys nothing is said: until a pause, or until the box is left.
    pub fn follow_typing(&self) {
        let state = *self;
        let track = move || {
            state.draft.track();
            state.line.record.track();
        };
        when_settled(PAUSE, track, move || state.stop_typing());
    }

    pub(super) fn start_typing(&self, field: Field) {
        self.typed_last.set_value(Some(field));
        if !self.typing.get_untracked() {
            self.typing.set(true);
        }
    }

    pub(super) fn stop_typing(&self) {
        if self.typing.get_untracked() {
            self.typing.set(false);
        }
    }

    /// The units as one box has them: the basis of a moisture is chosen for the box alone.
    #[must_use]
    pub fn units_at(&self, field: Field, kind: Kind) -> Units {
        let mut units = self.units.get();
        if kind.dimension() == Dimension::Moisture
            && let Some(unit) = self.settings.with(|settings| settings.bases.get(&field.key()).copied())
        {
            units.choose(kind, unit);
        }
        units
    }

    /// Chooses the unit of one box. A number that was just typed there keeps its digits: the unit is what was still
    /// to be said. Any other number stays what it is and is shown converted.
    pub fn choose_unit_at(&self, field: Field, unit: Unit) {
        let kind = self.draft.with_untracked(|draft| draft.kind(field));
        self.keep_typed(|last| last == field, unit);
        self.settings.update(|settings| {
            if kind.dimension() == Dimension::Moisture {
                settings.bases.insert(field.key(), unit);
            } else {
                settings.units.choose(kind, unit);
            }
        });
    }

    /// Chooses the unit of a whole kind, at the head of a column. What was just typed in the column keeps its digits.
    pub fn choose_unit(&self, kind: Kind, unit: Unit) {
        let in_column = |last| self.draft.with_untracked(|draft| draft.kind(last) == kind);
        self.keep_typed(in_column, unit);
        self.settings.update(|settings| settings.units.choose(kind, unit));
    }

    fn keep_typed(&self, is_meant: impl Fn(Field) -> bool, unit: Unit) {
        let Some(last) = self.typed_last.get_value().filter(|last| is_meant(*last)) else { return };
        let typed = self.draft.with_untracked(|draft| draft.entry(last).filter(|entry| !entry.preset).cloned());
        if let Some(Entry { text, .. }) = typed {
            self.enter(Some(Session::Field(last)), last, &text, unit);
            self.leave();
        }
        // Choosing once more is about the number that is in the box by then.
        self.typed_last.set_value(None);
    }

    /// Enters a column of texts, from a spreadsheet, as one step.
    pub fn enter_column(&self, entries: Vec<(Field, String, Unit)>) {
        self.edit(None, |draft| {
            for (field, text, unit) in entries {
                if let Some(entry) = draft.entry_mut(field) {
                    *entry = Entry::typed(text, unit);
                }
            }
        });
    }
}
