//! What can be done with the recipes in the library. Each step is told, and can be taken back from
//! there.

use super::records;
use super::trouble;
use crate::browser::{clock, file, page};
use crate::domain::Draft;
use crate::domain::recipe::difference::{Difference, differences, take_over};
use crate::record::content::revision::{Standing, Title};
use crate::record::content::sealed::Content;
use crate::record::content::trial::TrialContent;
use crate::record::document::open_draft::OpenDraft;
use crate::record::file::recipe::RecipeFile;
use crate::record::file::{library, line_check};
use crate::record::limits::clipped_name;
use crate::record::store::library::SaveError;
use crate::record::{RecipeId, Refusal, Revision, RevisionId, StoreError};
use crate::t;
use crate::ui::part::on_recipe::on_recipe;
use crate::ui::part::version::{Seen, label};
use crate::ui::route::Page;
use crate::ui::state::{About, State};
use crate::ui::text::{self, isolated};
use leptos::prelude::*;

/// What became of a file that was imported.
pub enum Imported {
    /// It is in the library.
    Kept,
    /// It cannot be taken; why.
    Refused(Refusal),
    /// It is open on this page.
    Opened(Page),
    /// The store did not take it, which is told elsewhere.
    NotKept,
}

impl State {
    /// Texts that could not be read and had to make room: key and text of each.
    #[must_use]
    pub fn aside(&self) -> Vec<(String, String)> {
        self.library.with(|library| library.aside()).unwrap_or_default()
    }

    /// The name that a recipe is called by, within a sentence.
    #[must_use]
    pub fn called(&self, name: &str) -> String {
        isolated(&self.name_or_none(name))
    }

    /// The name of a recipe, or that it has none.
    #[must_use]
    pub fn name_or_none(&self, name: &str) -> String {
        let name = name.trim();
        if name.is_empty() { t!("recipe-untitled") } else { name.to_owned() }
    }

    /// Opens a revision on the recipe page, goes there, and tells what it took the place of.
    pub fn take_from_library(&self, id: RevisionId) {
        let unsaved = !self.saved().get_untracked() && !self.example.get_untracked();
        let before = unsaved.then(|| self.called(&self.title.with_untracked(|title| title.name.clone())));
        if !self.open_revision(id) {
            return;
        }
        let name = self.called(&self.title.with_untracked(|title| title.name.clone()));
        self.tell_step(match before {
            Some(before) => t!("record-opened-over", name = name, before = before),
            None => t!("record-opened", name = name),
        });
        on_recipe(*self, || page::focus("content"));
    }

    /// Gives a recipe another name.
    pub fn rename(&self, head: RevisionId, name: &str) {
        let Some(before) = self.library.with_untracked(|library| library.revision(head)) else { return };
        let stamp = self.stamp();
        let Some(new) = self.change_library(|library| library.rename(head, name.to_owned(), stamp)) else { return };
        self.follow(before.recipe());
        let (state, old) = (*self, before.content().name.clone());
        let words = t!("record-renamed", before = self.called(&old), name = name);
        self.tell_undo(words, move || state.rename(new, &old));
    }

    /// Begins a new recipe as a copy.
    pub fn duplicate(&self, of: RevisionId) {
        let Some(revision) = self.library.with_untracked(|library| library.revision(of)) else { return };
        let name = &revision.content().name;
        let name = clipped_name(&t!("frame-copy-of", name = self.name_or_none(name)));
        let stamp = self.stamp();
        let Some(copy) = self.change_library(|library| library.duplicate(of, name.clone(), stamp)) else { return };
        let recipe = RecipeId(copy.0);
        let state = *self;
        let words = t!("record-duplicated", name = name);
        self.tell_undo(words, move || state.remove(recipe));
    }

    /// Takes a recipe out of the library.
    pub fn remove(&self, recipe: RecipeId) {
        let stamp = self.stamp();
        if self.change_library(|library| library.remove(recipe, &stamp)).is_some() {
            self.follow(recipe);
            let state = *self;
            let words = t!("record-deleted", name = self.name_of(recipe));
            self.tell_undo(words, move || state.put_back(recipe));
        }
    }

    /// Puts a removed recipe back.
    pub fn put_back(&self, recipe: RecipeId) {
        let stamp = self.stamp();
        if self.change_library(|library| library.put_back(recipe, &stamp)).is_some() {
            self.follow(recipe);
            self.tell(t!("record-restored", name = self.name_of(recipe)));
        }
    }

    /// Makes an older revision what the recipe says now.
    pub fn restore(&self, old: RevisionId, head: RevisionId) {
        let stamp = self.stamp();
        let Some(new) = self.change_library(|library| library.restore(old, head, stamp)) else { return };
        let Some(revision) = self.library.with_untracked(|library| library.revision(new)) else { return };
        self.follow(revision.recipe());
        let state = *self;
        let words = t!("record-revision-restored", name = self.called(&revision.content().name));
        self.tell_undo(words, move || state.restore(head, new));
    }

    /// Makes two heads of a recipe one: what `head` says, but where `taken` the other.
    pub fn merge_heads(&self, head: RevisionId, other: RevisionId, taken: &[bool]) {
        let stamp = self.stamp();
        let merged = self.change_library(|library| {
            library.merge_heads(head, other, stamp, |draft, other| {
                let found = differences(other, draft).into_iter().zip(taken);
                let chosen: Vec<Difference> = found.filter(|(_, taken)| **taken).map(|(found, _)| found).collect();
                take_over(draft, other, &chosen);
            })
        });
        let Some(revision) = merged.and_then(|id| self.library.with_untracked(|library| library.revision(id))) else {
            return;
        };
        self.follow(revision.recipe());
        self.tell(t!("record-heads-merged", name = self.called(&revision.content().name)));
    }

    /// Releases a revision for the line.
    pub fn release(&self, id: RevisionId) {
        let stamp = self.stamp();
        if self.change_library(|library| library.release(id, stamp)).is_some() {
            let words = |revision, name| t!("record-released", revision = revision, name = name);
            self.tell_released(id, words, move |state| state.withdraw(id));
        }
    }

    /// Withdraws the release of a revision.
    pub fn withdraw(&self, id: RevisionId) {
        let stamp = self.stamp();
        if self.change_library(|library| library.withdraw(id, &stamp)).is_some_and(|withdrawn| withdrawn > 0) {
            let words = |revision, name| t!("record-withdrawn", revision = revision, name = name);
            self.tell_released(id, words, move |state| state.release(id));
        }
    }

    fn tell_released(
        &self,
        id: RevisionId,
        words: fn(String, String) -> String,
        undo: impl Fn(State) + Send + Sync + 'static,
    ) {
        let seen = self.library.with_untracked(|library| {
            let version = library.version(id)?;
            Some((Seen::from(&version), version.summary.name.clone()))
        });
        let Some((seen, name)) = seen else { return };
        let state = *self;
        self.tell_undo(words(label(&seen), self.called(&name)), move || undo(state));
    }

    /// Saves a revision to a file.
    pub fn give_out_revision(&self, id: RevisionId) {
        if let Some(revision) = self.library.with_untracked(|library| library.revision(id)) {
            self.give_out_file(&RecipeFile::of(&revision));
        }
    }

    /// Saves the text of a record that cannot be read to a file, just as it is stored.
    pub fn give_out_text(&self, key: &str, text: &str) {
        self.hand_out(&file::file_name(key, "txt"), "text/plain", text);
    }

    /// Saves a text to a file of that name, and tells so.
    pub fn hand_out(&self, name: &str, media: &str, text: &str) {
        match file::give_out(name, media, text) {
            Ok(()) => {
                trouble::settled(*self, About::Export);
                self.tell(t!("record-exported", file = name));
            }
            Err(own) => trouble::tell_not_exported(*self, &SaveError::Store(StoreError::Other(own))),
        }
    }

    /// Puts the recipe or the library of a file in the library, or opens its trial or line check. `fallback` names a recipe if the file does not.
    pub fn import(&self, text: &str, fallback: &str) -> Imported {
        let imported = self.import_as_it_is(text, fallback);
        if !matches!(imported, Imported::Refused(_)) {
            // That another file was refused is over.
            self.refused.set(None);
            trouble::settled(*self, About::Import);
        }
        imported
    }

    fn import_trial(&self, text: &str) -> Imported {
        match self.take_in_trial(text) {
            Ok(()) => Imported::Opened(Page::Bench),
            Err(refusal) => Imported::Refused(refusal),
        }
    }

    fn import_as_it_is(&self, text: &str, fallback: &str) -> Imported {
        let mut recipe = match RecipeFile::read(text) {
            Ok(recipe) => recipe,
            Err(Refusal::OtherKind { kind }) if kind == library::KIND => return self.merge(text),
            Err(Refusal::OtherKind { kind }) if kind == TrialContent::KIND => return self.import_trial(text),
            Err(Refusal::OtherKind { kind }) if kind == line_check::KIND => return self.import_line(text),
            // Too large for a recipe, but a library or a trial may be.
            Err(large @ Refusal::TooLarge { .. }) => {
                return match self.merge(text) {
                    Imported::Refused(Refusal::OtherKind { kind }) if kind == TrialContent::KIND => {
                        self.import_trial(text)
                    }
                    Imported::Refused(Refusal::OtherKind { kind }) if kind == line_check::KIND => {
                        self.import_line(text)
                    }
                    Imported::Refused(
                        Refusal::Empty
                        | Refusal::NotJson { .. }
                        | Refusal::Foreign
                        | Refusal::OtherKind { .. }
                        | Refusal::TooLarge { .. },
                    ) => Imported::Refused(large),
                    merged => merged,
                };
            }
            Err(refusal) => return Imported::Refused(refusal),
        };
        if let Some(there) = recipe.revision.and_then(|id| self.library.with_untracked(|library| library.revision(id)))
            && there.content().draft == recipe.draft
            && there.title() == recipe.title()
        {
            let stands = self.library.with_untracked(|library| {
                library.recipe(there.recipe()).is_some_and(|listed| {
                    let mut heads = listed.heads().map(|head| head.summary);
                    heads.any(|head| head.id == there.revision() && head.standing == Standing::Kept)
                })
            });
            if stands {
                self.tell(t!("record-already-there", name = self.called(&recipe.name)));
                return Imported::Kept;
            }
        }
        if recipe.name.trim().is_empty() {
            fallback.clone_into(&mut recipe.name);
        }
        let name = recipe.name.clone();
        let stamp = self.stamp();
        let saved = self.change_library(|library| {
            let revision = recipe.into_revision(stamp)?;
            library.save(revision.clone()).map(|_| revision.recipe())
        });
        let Some(recipe) = saved else { return Imported::NotKept };
        let state = *self;
        self.tell_undo(t!("record-imported", name = name), move || state.remove(recipe));
        Imported::Kept
    }

    /// Saves everything that is kept to a file.
    pub fn give_out_library(&self) {
        let name = format!("{}.json", t!("record-library-file"));
        let made = self.library.with_untracked(|library| library.library_file());
        let given = made.and_then(|(text, count)| {
            file::give_out(&name, "application/json", &text).map(|()| count).map_err(StoreError::Other)
        });
        match given {
            Ok(count) => {
                trouble::settled(*self, About::Export);
                self.settings.update(|settings| settings.copied_at = Some(clock::now()));
                self.tell(t!("record-library-exported", records = text::library::records(count), file = name));
            }
            Err(why) => trouble::tell_not_exported(*self, &SaveError::Store(why)),
        }
    }

    /// Takes in all of a library file that is not here yet.
    fn merge(&self, text: &str) -> Imported {
        match self.library.try_update(|library| library.merge_file(text)) {
            Some(Ok(merged)) => {
                records::write(*self);
                self.tell(text::library::merged(merged.added, merged.known, merged.refused));
                if let Some(why) = merged.stopped {
                    trouble::tell_unsaved(*self, &why);
                }
                Imported::Kept
            }
            Some(Err(refusal)) => Imported::Refused(refusal),
            None => Imported::NotKept,
        }
    }

    /// Writes back what the database has lost and this tab still has.
    pub fn fill_again(&self) {
        let count = records::write_back(*self);
        self.tell(t!("record-written-back", records = text::library::records(count)));
    }

    /// What work is called that is set aside now.
    pub(super) fn unsaved_work(&self, name: &str) -> String {
        clipped_name(&text::library::unsaved_work(&clock::time(clock::now()), name.trim()))
    }

    /// What is on the recipe page and not saved goes into the library before something else takes its place.
    pub fn set_aside_unsaved(&self) {
        let OpenDraft { from, mut title, draft, example, .. } = self.current_recipe();
        let saved = from.and_then(|id| self.library.with_untracked(|library| library.revision(id)));
        let same = |saved: Revision| saved.content().draft == draft && saved.title() == title;
        let own_example = super::example_recipe(self.units.get_untracked().mark);
        let untouched = |of: &Draft, named: &Title| draft == *of && title == *named;
        if example && untouched(&own_example.draft, &own_example.title)
            || saved.is_some_and(same)
            || untouched(&Draft::default(), &Title::default())
        {
            return;
        }
        title.name = self.unsaved_work(&title.name);
        let stamp = self.stamp();
        _ = self.change_library(|library| library.save(Revision::first(title, draft, stamp)?));
    }

    /// A recipe went on by a revision made in the library: the page goes along if it came from what that follows, as far as
    /// what is typed there allows. Else it says that it is behind.
    pub(super) fn follow(&self, recipe: RecipeId) {
        let page = self.current_recipe();
        let advanced = page.from.and_then(|from| {
            self.library.with_untracked(|library| {
                let base = library.revision(from)?;
                let listed = library.recipe(recipe)?;
                let next = listed.heads().find(|head| head.summary.parents.contains(&from))?;
                page.advanced(&base, &library.revision(next.summary.id)?)
            })
        });
        if let Some(page) = advanced {
            self.advance(page);
        }
    }

    fn name_of(&self, recipe: RecipeId) -> String {
        let name = self
            .library
            .with_untracked(|library| library.recipe(recipe).map(|listed| listed.head.summary.name.clone()));
        self.called(&name.unwrap_or_default())
    }
}
