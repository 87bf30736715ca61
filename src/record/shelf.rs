//! Everything that is kept, over a [`Store`]: one key a record, and none ever overwritten.

use super::id::{Id, RecipeId, RevisionId, SystemId};
use super::open_draft::OpenDraft;
use super::refusal::Refusal;
use super::revision::{Revision, RevisionContent, Stamp, Standing};
use super::sealed::{Content, Sealed};
use super::settings::Settings;
use super::store::{Store, StoreError};
use super::summary::{Listed, Summary};
use super::system::{BinderSystem, SystemContent};
use std::collections::{BTreeMap, BTreeSet};

/// All keys of ours begin so: pages that run from a file share one store with others.
pub const PREFIX: &str = "haulm/";
/// Followed by the id of a revision.
const REVISION: &str = "haulm/revision/";
/// Followed by the id of a binder system.
const SYSTEM: &str = "haulm/system/";
/// Followed by the id of a text that could not be read and had to make room.
const ASIDE: &str = "haulm/aside/";
/// The open draft.
pub const DRAFT: &str = "haulm/draft";
/// The settings.
pub const SETTINGS: &str = "haulm/settings";

/// Why a record is not shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Unread {
    /// Its text is not taken.
    Refused(Refusal),
    /// Its key names no record: the part behind the prefix is no id.
    BadKey,
    /// The store did not give it out.
    Store(StoreError),
}

/// A record of ours that cannot be read. It stays as it is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unreadable {
    /// Its key in the store.
    pub key: String,
    /// Its text, to be saved to a file; `None` when the store did not give it out.
    pub text: Option<String>,
    /// Why.
    pub why: Unread,
}

/// Why something was not saved. Whatever was kept before is kept still.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SaveError {
    /// The store refused.
    Store(StoreError),
    /// The store took it, and gave back something else.
    NotKept,
    /// A record that cannot be read has this key. It is not overwritten.
    Occupied {
        /// The key.
        key: String,
    },
    /// The shelf has no such record.
    Unknown,
    /// It has no JSON form.
    NoJson(String),
}

impl From<StoreError> for SaveError {
    fn from(error: StoreError) -> Self {
        Self::Store(error)
    }
}

impl From<serde_json::Error> for SaveError {
    fn from(error: serde_json::Error) -> Self {
        Self::NoJson(error.to_string())
    }
}

/// A revision on the shelf. Its text stays in memory, so that a store cleared behind the app's back
/// can be filled again; the draft is read from it when it is asked for.
#[derive(Debug, Clone)]
struct Kept {
    summary: Summary,
    text: String,
}

/// Everything that is kept.
#[derive(Debug, Clone)]
pub struct Shelf<S> {
    store: S,
    revisions: BTreeMap<RevisionId, Kept>,
    systems: BTreeMap<SystemId, BinderSystem>,
    unreadable: BTreeMap<String, Unreadable>,
}

/// What changed when the shelf was compared with its store.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Changes {
    /// Records that another tab saved.
    pub added: usize,
    /// Records on this shelf that the store no longer has.
    pub missing: usize,
}

impl<S: Store> Shelf<S> {
    /// Reads all that the store has.
    ///
    /// # Errors
    /// When the store does not list its keys. A single record that cannot be read is no error: see
    /// [`unreadable`](Self::unreadable).
    pub fn open(store: S) -> Result<Self, StoreError> {
        let mut shelf = Self::blank(store);
        shelf.refresh()?;
        Ok(shelf)
    }

    /// A shelf that has read nothing, as over a store that is new.
    pub const fn blank(store: S) -> Self {
        Self { store, revisions: BTreeMap::new(), systems: BTreeMap::new(), unreadable: BTreeMap::new() }
    }

    /// Takes in what the store has and the shelf has not, as after another tab has saved.
    ///
    /// # Errors
    /// When the store does not list its keys.
    pub fn refresh(&mut self) -> Result<Changes, StoreError> {
        let keys: BTreeSet<String> = self.store.keys()?.into_iter().filter(|key| key.starts_with(PREFIX)).collect();
        let before = self.count();
        // A record can have been mended or taken away from outside since.
        self.unreadable.clear();
        for key in &keys {
            self.take_in(key);
        }
        let missing = self.texts().filter(|(key, _)| !keys.contains(key)).count();
        Ok(Changes { added: self.count() - before, missing })
    }

    /// Writes back every record on this shelf that the store no longer has; how many they were.
    ///
    /// # Errors
    /// On the first one that cannot be written; those before it are.
    pub fn fill_again(&mut self) -> Result<usize, SaveError> {
        let mut written = 0;
        for (key, text) in self.texts() {
            if self.store.read(&key)?.is_none() {
                self.put(&key, text)?;
                written += 1;
            }
        }
        Ok(written)
    }

    fn count(&self) -> usize {
        self.revisions.len() + self.systems.len()
    }

    /// Key and text of every record on the shelf.
    fn texts(&self) -> impl Iterator<Item = (String, &str)> {
        let revisions = self.revisions.iter().map(|(id, kept)| (format!("{REVISION}{id}"), kept.text.as_str()));
        let systems = self.systems.iter().map(|(id, system)| (format!("{SYSTEM}{id}"), system.text()));
        revisions.chain(systems)
    }

    /// Reads the record under `key`, if it is one and not on the shelf yet.
    fn take_in(&mut self, key: &str) {
        let outcome = if let Some(hex) = key.strip_prefix(REVISION) {
            match RevisionId::parse(hex) {
                Some(id) if self.revisions.contains_key(&id) => return,
                Some(id) => self.sealed::<RevisionContent>(key, id.0).map(|revision| self.shelve(revision)),
                None => Err(Unread::BadKey),
            }
        } else if let Some(hex) = key.strip_prefix(SYSTEM) {
            match SystemId::parse(hex) {
                Some(id) if self.systems.contains_key(&id) => return,
                Some(id) => self.sealed::<SystemContent>(key, id.0).map(|system| {
                    self.systems.insert(id, system);
                }),
                None => Err(Unread::BadKey),
            }
        } else {
            return;
        };
        if let Err(why) = outcome {
            let text = self.store.read(key).ok().flatten();
            self.unreadable.insert(key.to_owned(), Unreadable { key: key.to_owned(), text, why });
        }
    }

    pub(super) fn sealed<T: Content>(&self, key: &str, id: Id) -> Result<Sealed<T>, Unread> {
        match self.store.read(key) {
            Ok(text) => Sealed::read(id, &text.unwrap_or_default()).map_err(Unread::Refused),
            Err(error) => Err(Unread::Store(error)),
        }
    }

    fn shelve(&mut self, revision: Revision) {
        let kept = Kept { summary: Summary::of(&revision), text: revision.text().to_owned() };
        self.revisions.insert(revision.revision(), kept);
    }

    /// Writes a sealed record and reads it back. Never overwrites.
    pub(super) fn put(&self, key: &str, text: &str) -> Result<(), SaveError> {
        match self.store.read(key)? {
            Some(there) if there == text => return Ok(()),
            Some(_) => return Err(SaveError::Occupied { key: key.to_owned() }),
            None => {}
        }
        let outcome = self.store.write(key, text);
        match self.store.read(key)? {
            // It is there, whatever the store said of it.
            Some(there) if there == text => return Ok(()),
            // Half a record: ours, as there was nothing before. Room for the next attempt; and if it
            // cannot be removed, it is shown as a record that cannot be read.
            Some(_) => drop(self.store.remove(key)),
            None => {}
        }
        outcome?;
        Err(SaveError::NotKept)
    }

    /// The store below, for what the shelf does not do.
    #[must_use]
    pub const fn store(&self) -> &S {
        &self.store
    }

    /// Records that cannot be read, by key.
    pub fn unreadable(&self) -> impl Iterator<Item = &Unreadable> {
        self.unreadable.values()
    }

    // --- recipes -------------------------------------------------------------------------------

    /// All recipes, kept and removed, with their heads.
    #[must_use]
    pub fn recipes(&self) -> Vec<Listed<'_>> {
        let followed: BTreeSet<RevisionId> =
            self.revisions.values().flat_map(|kept| kept.summary.parents.iter().copied()).collect();
        let mut heads: BTreeMap<RecipeId, Vec<&Summary>> = BTreeMap::new();
        for (id, kept) in &self.revisions {
            if !followed.contains(id) {
                heads.entry(kept.summary.recipe).or_default().push(&kept.summary);
            }
        }
        heads.into_iter().filter_map(|(recipe, heads)| Listed::of(recipe, heads)).collect()
    }

    /// One recipe with its heads.
    #[must_use]
    pub fn recipe(&self, recipe: RecipeId) -> Option<Listed<'_>> {
        self.recipes().into_iter().find(|listed| listed.recipe == recipe)
    }

    /// All revisions of a recipe, newest first.
    #[must_use]
    pub fn history(&self, recipe: RecipeId) -> Vec<&Summary> {
        let mut history: Vec<&Summary> =
            self.revisions.values().map(|kept| &kept.summary).filter(|summary| summary.recipe == recipe).collect();
        history.sort_by_key(|summary| (std::cmp::Reverse(summary.saved_at), summary.id));
        history
    }

    /// A revision with all that it says.
    #[must_use]
    pub fn revision(&self, id: RevisionId) -> Option<Revision> {
        // What is on the shelf was read once; it cannot have changed since.
        self.revisions.get(&id).and_then(|kept| Revision::read(id.0, &kept.text).ok())
    }

    fn known(&self, id: RevisionId) -> Result<Revision, SaveError> {
        self.revision(id).ok_or(SaveError::Unknown)
    }

    /// Saves a revision. Once this is `Ok`, the store has it.
    ///
    /// # Errors
    /// When it is not in the store; nothing else has changed then.
    pub fn save(&mut self, revision: Revision) -> Result<RevisionId, SaveError> {
        let id = revision.revision();
        self.put(&format!("{REVISION}{id}"), revision.text())?;
        self.shelve(revision);
        Ok(id)
    }

    /// Gives the recipe of `head` another name.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there is no such revision.
    pub fn rename(&mut self, head: RevisionId, name: String, stamp: Stamp) -> Result<RevisionId, SaveError> {
        let renamed = self.known(head)?.follow(stamp, |content| content.name = name)?;
        self.save(renamed)
    }

    /// Begins a new recipe as a copy of a revision.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there is no such revision.
    pub fn duplicate(&mut self, of: RevisionId, name: String, stamp: Stamp) -> Result<RevisionId, SaveError> {
        let copy = self.known(of)?.copy(name, stamp)?;
        self.save(copy)
    }

    /// Makes `old` what the recipe says now, as a revision that follows `head`.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there are no such revisions of one recipe.
    pub fn restore(&mut self, old: RevisionId, head: RevisionId, stamp: Stamp) -> Result<RevisionId, SaveError> {
        let (old, head) = (self.known(old)?, self.known(head)?);
        if old.recipe() != head.recipe() {
            return Err(SaveError::Unknown);
        }
        let parents = vec![head.revision()];
        let restored = old.follow(stamp, |content| {
            content.parents = parents;
            content.standing = Standing::Kept;
        })?;
        self.save(restored)
    }

    /// Removes a recipe from the shelf: every head gets a revision that says so.
    ///
    /// # Errors
    /// As [`save`](Self::save). A recipe with a head that is left is still on the shelf.
    pub fn remove(&mut self, recipe: RecipeId, stamp: &Stamp) -> Result<(), SaveError> {
        self.stand(recipe, Standing::Removed, stamp)
    }

    /// Puts a removed recipe back on the shelf.
    ///
    /// # Errors
    /// As [`save`](Self::save).
    pub fn put_back(&mut self, recipe: RecipeId, stamp: &Stamp) -> Result<(), SaveError> {
        self.stand(recipe, Standing::Kept, stamp)
    }

    fn stand(&mut self, recipe: RecipeId, standing: Standing, stamp: &Stamp) -> Result<(), SaveError> {
        let listed = self.recipe(recipe).ok_or(SaveError::Unknown)?;
        let heads: Vec<RevisionId> = std::iter::once(listed.head)
            .chain(listed.others)
            .filter(|head| head.standing != standing)
            .map(|head| head.id)
            .collect();
        for head in heads {
            let next = self.known(head)?.follow(stamp.clone(), |content| content.standing = standing)?;
            self.save(next)?;
        }
        Ok(())
    }

    // --- binder systems of the mill's own ------------------------------------------------------

    /// The binder systems that are kept, by name; of each its last save.
    #[must_use]
    pub fn systems(&self) -> Vec<&BinderSystem> {
        let replaced: BTreeSet<SystemId> =
            self.systems.values().filter_map(|system| system.content().replaces).collect();
        let mut systems: Vec<&BinderSystem> = self
            .systems
            .iter()
            .filter(|(id, system)| !replaced.contains(id) && system.content().standing == Standing::Kept)
            .map(|(_, system)| system)
            .collect();
        systems.sort_by_key(|system| (system.content().name.to_lowercase(), system.system()));
        systems
    }

    /// A save of a binder system.
    #[must_use]
    pub fn system(&self, id: SystemId) -> Option<&BinderSystem> {
        self.systems.get(&id)
    }

    /// Saves a binder system. Once this is `Ok`, the store has it.
    ///
    /// # Errors
    /// When it is not in the store; nothing else has changed then.
    pub fn save_system(&mut self, system: BinderSystem) -> Result<SystemId, SaveError> {
        let id = system.system();
        self.put(&format!("{SYSTEM}{id}"), system.text())?;
        self.systems.insert(id, system);
        Ok(id)
    }

    // --- the open draft and the settings: one text each, overwritten ---------------------------

    /// The open draft, if there is any.
    ///
    /// # Errors
    /// When it cannot be read.
    pub fn open_draft(&self) -> Result<Option<OpenDraft>, Unread> {
        match self.store.read(DRAFT).map_err(Unread::Store)? {
            Some(text) => OpenDraft::read(&text).map(Some).map_err(Unread::Refused),
            None => Ok(None),
        }
    }

    /// Keeps the open draft in place of what was there. What was there and cannot be read is set
    /// aside first.
    ///
    /// # Errors
    /// When it is not in the store.
    pub fn keep_draft(&self, draft: &OpenDraft) -> Result<(), SaveError> {
        self.overwrite(DRAFT, &draft.text()?, |text| OpenDraft::read(text).is_ok())
    }

    /// Forgets the open draft.
    ///
    /// # Errors
    /// When the store cannot be reached, or what cannot be read cannot be set aside.
    pub fn drop_draft(&self) -> Result<(), SaveError> {
        self.make_room(DRAFT, |text| OpenDraft::read(text).is_ok())?;
        Ok(self.store.remove(DRAFT)?)
    }

    /// The settings; the usual ones where there are none.
    ///
    /// # Errors
    /// When they cannot be read.
    pub fn settings(&self) -> Result<Settings, Unread> {
        match self.store.read(SETTINGS).map_err(Unread::Store)? {
            Some(text) => Settings::read(&text).map_err(Unread::Refused),
            None => Ok(Settings::default()),
        }
    }

    /// Keeps the settings in place of those that were there. What was there and cannot be read is
    /// set aside first.
    ///
    /// # Errors
    /// When they are not in the store.
    pub fn keep_settings(&self, settings: &Settings) -> Result<(), SaveError> {
        self.overwrite(SETTINGS, &settings.text()?, |text| Settings::read(text).is_ok())
    }

    pub(super) fn overwrite(
        &self,
        key: &str,
        text: &str,
        readable: impl FnOnce(&str) -> bool,
    ) -> Result<(), SaveError> {
        self.make_room(key, readable)?;
        self.store.write(key, text)?;
        if self.store.read(key)?.as_deref() == Some(text) { Ok(()) } else { Err(SaveError::NotKept) }
    }

    /// Copies what is under `key` and cannot be read to a key of its own.
    fn make_room(&self, key: &str, readable: impl FnOnce(&str) -> bool) -> Result<(), SaveError> {
        match self.store.read(key)? {
            Some(text) if !readable(&text) => self.put(&format!("{ASIDE}{}", Id::of(&text)), &text),
            _ => Ok(()),
        }
    }

    /// Texts that could not be read and were set aside, with their keys.
    ///
    /// # Errors
    /// When the store cannot be reached.
    pub fn aside(&self) -> Result<Vec<(String, String)>, StoreError> {
        let mut aside = Vec::new();
        for key in self.store.keys()?.into_iter().filter(|key| key.starts_with(ASIDE)) {
            if let Some(text) = self.store.read(&key)? {
                aside.push((key, text));
            }
        }
        Ok(aside)
    }
}
