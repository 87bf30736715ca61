//! What can be done with the recipes on the shelf. Each step is told, and can be taken back from
//! there.

use super::{Keep, Trouble};
use crate::browser::{LocalStore, file, page};
use crate::record::file::RecipeFile;
use crate::record::revision::{Revision, Standing};
use crate::record::{RecipeId, Refusal, RevisionId, Shelf};
use crate::ui::part::find::on_recipe;
use crate::ui::state::State;
use leptos::prelude::*;

/// What became of a file that was taken in.
pub enum Imported {
    /// It stands on the shelf.
    Kept,
    /// It cannot be taken; why.
    Refused(Refusal),
    /// The store did not take it, which is told elsewhere.
    NotKept,
}

impl Keep {
    /// Reads the records, if nobody has asked for them yet.
    pub fn read_records(&self) {
        if self.records_read.get_value() {
            return;
        }
        match self.shelf.try_update_value(Shelf::refresh) {
            Some(Ok(_)) => self.records_read.set_value(true),
            Some(Err(error)) => self.trouble.set(Some(Trouble::Store(error))),
            None => {}
        }
    }

    /// Looks at the shelf with all its records, and again each time that something there changes.
    pub fn with_shelf<T>(&self, look: impl FnOnce(&Shelf<LocalStore>) -> T) -> T {
        self.changed.track();
        self.read_records();
        self.shelf.with_value(look)
    }

    /// Texts that could not be read and had to make room: key and text of each.
    #[must_use]
    pub fn aside(&self) -> Vec<(String, String)> {
        self.with_shelf(Shelf::aside).unwrap_or_default()
    }

    /// The name that a recipe is called by.
    #[must_use]
    pub fn called(&self, name: &str) -> String {
        called(self.state, name)
    }

    /// Puts a revision on the recipe page.
    pub fn open(&self, id: RevisionId) {
        let Some(revision) = self.shelf.try_update_value(|shelf| shelf.look_up(id)).flatten() else { return };
        let state = self.state;
        let unsaved = !self.saved.get_untracked().is_as_it_is() && !state.example.get_untracked();
        let before = unsaved.then(|| self.called(&state.title.with_untracked(|title| title.name.clone())));
        let name = self.called(&revision.content().name);
        let words = &state.words.shelf_page;
        state.open(revision.content().draft.clone(), revision.title(), false);
        self.set_origin(&revision);
        self.naming.set(false);
        state.tell_step(match before {
            Some(before) => (words.opened_over)(&name, &before),
            None => (words.opened)(&name),
        });
        on_recipe(state, || page::focus("content"));
    }

    /// Gives a recipe another name.
    pub fn rename(&self, head: RevisionId, name: &str) {
        let Some(before) = self.shelf.with_value(|shelf| shelf.revision(head)) else { return };
        let stamp = self.stamp();
        let Some(new) = self.act(|shelf| shelf.rename(head, name.to_owned(), stamp)) else { return };
        self.follow(before.recipe());
        let (keep, old) = (*self, before.content().name.clone());
        let words = (self.state.words.shelf_page.renamed)(&self.called(&old), name);
        self.state.tell_undo(words, Callback::new(move |()| keep.rename(new, &old)));
    }

    /// Begins a new recipe as a copy.
    pub fn duplicate(&self, of: RevisionId) {
        let Some(revision) = self.shelf.with_value(|shelf| shelf.revision(of)) else { return };
        let name = &revision.content().name;
        let name = format!("{} {}", self.state.words.tools.copy_of, self.called(name));
        let stamp = self.stamp();
        let Some(copy) = self.act(|shelf| shelf.duplicate(of, name.clone(), stamp)) else { return };
        let recipe = RecipeId(copy.0);
        let keep = *self;
        let words = (self.state.words.shelf_page.duplicated)(&name);
        self.state.tell_undo(words, Callback::new(move |()| keep.remove(recipe)));
    }

    /// Takes a recipe off the shelf.
    pub fn remove(&self, recipe: RecipeId) {
        let stamp = self.stamp();
        if self.act(|shelf| shelf.remove(recipe, &stamp)).is_some() {
            self.follow(recipe);
            let keep = *self;
            let words = (self.state.words.shelf_page.removed)(&self.name_of(recipe));
            self.state.tell_undo(words, Callback::new(move |()| keep.put_back(recipe)));
        }
    }

    /// Puts a removed recipe back.
    pub fn put_back(&self, recipe: RecipeId) {
        let stamp = self.stamp();
        if self.act(|shelf| shelf.put_back(recipe, &stamp)).is_some() {
            self.follow(recipe);
            self.state.tell((self.state.words.shelf_page.returned)(&self.name_of(recipe)));
        }
    }

    /// Makes an older revision what the recipe says now.
    pub fn restore(&self, old: RevisionId, head: RevisionId) {
        let stamp = self.stamp();
        let Some(new) = self.act(|shelf| shelf.restore(old, head, stamp)) else { return };
        let Some(revision) = self.shelf.with_value(|shelf| shelf.revision(new)) else { return };
        self.follow(revision.recipe());
        let keep = *self;
        let words = (self.state.words.shelf_page.restored)(&self.called(&revision.content().name));
        self.state.tell_undo(words, Callback::new(move |()| keep.restore(head, new)));
    }

    /// Saves a revision to a file.
    pub fn give_out_revision(&self, id: RevisionId) {
        if let Some(revision) = self.shelf.with_value(|shelf| shelf.revision(id)) {
            self.give_out_file(&RecipeFile::of(&revision));
        }
    }

    /// Saves the text of a record that cannot be read to a file, just as it is stored.
    pub fn give_out_text(&self, key: &str, text: &str) {
        let name = file::file_name(key, "txt");
        match file::give_out(&name, "text/plain", text) {
            Ok(()) => self.state.tell((self.state.words.shelf_page.given_out)(&name)),
            Err(own) => self.trouble.set(Some(Trouble::Store(crate::record::StoreError::Other(own)))),
        }
    }

    /// Puts the recipe of a file on the shelf. `fallback` names it if the file does not.
    pub fn import(&self, text: &str, fallback: &str) -> Imported {
        let mut recipe = match RecipeFile::read(text) {
            Ok(recipe) => recipe,
            Err(refusal) => return Imported::Refused(refusal),
        };
        self.read_records();
        if let Some(there) = recipe.revision.and_then(|id| self.shelf.with_value(|shelf| shelf.revision(id)))
            && there.content().draft == recipe.draft
            && there.title() == recipe.title()
        {
            let on_shelf = self.shelf.with_value(|shelf| {
                shelf.recipe(there.recipe()).is_some_and(|listed| listed.standing() == Standing::Kept)
            });
            if on_shelf {
                self.state.tell((self.state.words.shelf_page.already_there)(&self.called(&recipe.name)));
                return Imported::Kept;
            }
        }
        if recipe.name.trim().is_empty() {
            fallback.clone_into(&mut recipe.name);
        }
        let name = recipe.name.clone();
        let stamp = self.stamp();
        let saved = self.act(|shelf| {
            let revision = recipe.into_revision(stamp)?;
            shelf.save(revision.clone()).map(|_| revision.recipe())
        });
        let Some(recipe) = saved else { return Imported::NotKept };
        let keep = *self;
        self.state
            .tell_undo((self.state.words.shelf_page.imported)(&name), Callback::new(move |()| keep.remove(recipe)));
        Imported::Kept
    }

    /// Writes back what the store has lost and this tab still has.
    pub fn fill_again(&self) {
        if let Some(count) = self.act(|shelf| shelf.fill_again()) {
            self.state.tell((self.state.words.shelf_page.filled_again)(count));
        }
    }

    /// A recipe went on by a revision made on the shelf: what was opened from its head goes along.
    fn follow(&self, recipe: RecipeId) {
        let opened = self.state.opened.get_untracked();
        let next = |revision: RevisionId| -> Option<Revision> {
            self.shelf.with_value(|shelf| {
                let heads = shelf.recipe(recipe)?;
                let mut heads = std::iter::once(heads.head).chain(heads.others);
                let next = heads.find(|head| head.parents.contains(&revision))?;
                shelf.revision(next.id)
            })
        };
        let mut renamed = None;
        self.origins.update(|origins| {
            for (name, origin) in origins.iter_mut() {
                let Some(revision) = next(origin.revision) else { continue };
                let before = std::mem::replace(origin, super::Origin::of(&revision));
                if *name == opened && before.title != origin.title {
                    renamed = Some((before.title, origin.title.clone()));
                }
            }
        });
        if let Some((before, now)) = renamed
            && self.state.title.with_untracked(|title| *title == before)
        {
            self.state.title.set(now);
        }
    }

    fn name_of(&self, recipe: RecipeId) -> String {
        let name = self.shelf.with_value(|shelf| shelf.recipe(recipe).map(|listed| listed.head.name.clone()));
        self.called(&name.unwrap_or_default())
    }
}

fn called(state: State, name: &str) -> String {
    let name = name.trim();
    if name.is_empty() { state.words.recipe_page.untitled.to_owned() } else { name.to_owned() }
}
