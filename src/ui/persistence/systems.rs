//! Binder systems of the mill's own: saved, renamed, removed, each step to be taken back.

use crate::record::SystemId;
use crate::record::content::binder_system::{SystemContent, SystemRevision};
use crate::record::content::revision::Standing;
use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;

impl State {
    /// Saves the recipe's liquids as a system of that name. One that has the name already is saved
    /// over, which can be taken back.
    pub fn save_system(&self, name: &str, note: &str) -> Option<SystemId> {
        let liquids = self.draft.with_untracked(|draft| draft.liquids.clone());
        let same = |system: &&SystemRevision| system.content().name.trim().eq_ignore_ascii_case(name);
        let before = self.library.with_untracked(|library| library.systems().into_iter().find(same).cloned());
        match before {
            Some(before) => {
                let note = note.to_owned();
                self.change_system(&before, t!("systems-replaced", name = name), move |content| {
                    content.liquids = liquids;
                    if !note.is_empty() {
                        content.note = note;
                    }
                })
            }
            None => {
                let stamp = self.stamp();
                let (name_kept, note) = (name.to_owned(), note.to_owned());
                let saved = self.change_library(|library| {
                    let system = SystemRevision::first(name_kept, note, liquids, stamp)?;
                    library.save_system(system.clone())?;
                    Ok(system)
                })?;
                let state = *self;
                let id = saved.system();
                self.tell_undo(t!("systems-saved", name = name), move || state.remove_system(id));
                Some(id)
            }
        }
    }

    /// Gives a system of the mill's own another name.
    pub fn rename_system(&self, id: SystemId, name: &str) {
        let Some(before) = self.own_system(id) else { return };
        let words = t!("systems-renamed", before = &before.content().name, name = name);
        let name = name.to_owned();
        _ = self.change_system(&before, words, move |content| content.name = name);
    }

    /// Removes a system of the mill's own.
    pub fn remove_system(&self, id: SystemId) {
        let Some(before) = self.own_system(id) else { return };
        let words = t!("systems-deleted", name = &before.content().name);
        _ = self.change_system(&before, words, |content| content.standing = Standing::Removed);
    }

    fn own_system(&self, id: SystemId) -> Option<SystemRevision> {
        self.library.with_untracked(|library| library.system(id).cloned())
    }

    /// Saves a system that replaces `before`; to take it back, another one says what that one did.
    fn change_system(
        &self,
        before: &SystemRevision,
        words: String,
        change: impl FnOnce(&mut SystemContent),
    ) -> Option<SystemId> {
        let stamp = self.stamp();
        let after = self.change_library(|library| {
            let after = before.follow(stamp, change)?;
            library.save_system(after.clone())?;
            Ok(after)
        })?;
        let id = after.system();
        let (state, before) = (*self, before.clone());
        let take_back = move || {
            let stamp = state.stamp();
            _ = state.change_library(|library| {
                let again = after.follow(stamp, |content| {
                    let old = before.content().clone();
                    (content.name, content.note, content.liquids) = (old.name, old.note, old.liquids);
                    content.standing = old.standing;
                })?;
                library.save_system(again)
            });
        };
        self.tell_undo(words, take_back);
        Some(id)
    }
}
