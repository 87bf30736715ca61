//! Everything that is kept, over a [`Store`]: one key a record, and none ever overwritten.

mod documents;
mod recipes;
mod releases;
pub mod save;
mod steps;

use crate::record::content::binder_system::SystemRevision;
use crate::record::content::release::Release;
use crate::record::content::revision::{Revision, Standing};
use crate::record::content::sealed::Sealed;
use crate::record::content::search::by_name;
use crate::record::content::settings::Settings;
use crate::record::content::summary::Summary;
use crate::record::id::{Id, RevisionId, SystemId};
use crate::record::refusal::Refusal;
use crate::record::store::{Store, StoreError};
use std::collections::{BTreeMap, BTreeSet};

/// All keys of ours begin so: pages that run from a file share one store with others.
pub const PREFIX: &str = "haulm/";
/// Followed by the id of a revision.
const REVISION: &str = "haulm/revision/";
/// Followed by the id of a binder system.
const SYSTEM: &str = "haulm/system/";
/// Followed by the id of a release.
const RELEASE: &str = "haulm/release/";
/// Followed by the id of a text that could not be read and had to make room.
const ASIDE: &str = "haulm/aside/";
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
    /// The library has no such record.
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

/// A record of ours.
#[derive(Debug, Clone)]
enum Record {
    /// What was typed is read from its text when it is asked for.
    Revision {
        summary: Summary,
        text: String,
        /// Whether it was read whole; see [`Library::verify`].
        whole: bool,
    },
    System(SystemRevision),
    Release(Release),
    Unreadable(Unreadable),
}

impl Record {
    /// The text of a record that can be read.
    fn text(&self) -> Option<&str> {
        match self {
            Self::Revision { text, .. } => Some(text),
            Self::System(system) => Some(system.text()),
            Self::Release(release) => Some(release.text()),
            Self::Unreadable(_) => None,
        }
    }
}

/// Everything that is kept.
#[derive(Debug, Clone)]
pub struct Library<S> {
    store: S,
    records: BTreeMap<String, Record>,
}

/// A revision at a glance; where that fails, what a whole reading says against it.
fn revision(id: Id, text: &str) -> Result<Record, Refusal> {
    if let Some(summary) = Summary::glance(RevisionId(id), text) {
        return Ok(Record::Revision { summary, text: text.to_owned(), whole: false });
    }
    let revision = Revision::read(id, text)?;
    // Sound, and no glance possible: it was not laid out as JSON without a byte order mark, or the
    // like. Its text proper is.
    let text = revision.text().to_owned();
    match Summary::glance(RevisionId(id), &text) {
        Some(summary) => Ok(Record::Revision { summary, text, whole: true }),
        None => Err(Refusal::Altered { found: id }),
    }
}

impl<S: Store> Library<S> {
    /// Reads all that the store has, revisions at a glance: see [`verify`](Self::verify).
    ///
    /// # Errors
    /// When the store does not list its keys. A single record that cannot be read is no error: see
    /// [`unreadable`](Self::unreadable).
    pub fn open(store: S) -> Result<Self, StoreError> {
        let mut library = Self::blank(store);
        library.refresh()?;
        Ok(library)
    }

    /// A library that has read no record: over a store that is new, or as long as only the open draft
    /// and the settings are asked for. [`refresh`](Self::refresh) reads the records, or
    /// [`take_in`](Self::take_in) one at a time those that are [`waiting`](Self::waiting).
    #[must_use]
    pub const fn blank(store: S) -> Self {
        Self { store, records: BTreeMap::new() }
    }

    /// Takes in what the store has and the library has not, as after another tab has saved; how many records were new.
    ///
    /// # Errors
    /// When the store does not list its keys.
    pub fn refresh(&mut self) -> Result<usize, StoreError> {
        let keys: BTreeSet<String> = self.store.keys()?.into_iter().collect();
        // What the store has lost stays here; what could not be read is shown only as long as it is there.
        self.records.retain(|key, record| keys.contains(key) || record.text().is_some());
        let mut added = 0;
        for key in keys {
            // A record that could not be read may have been repaired from outside since.
            if self.records.get(&key).is_none_or(|record| record.text().is_none()) {
                added += usize::from(self.take_in(key));
            }
        }
        Ok(added)
    }

    /// Bytes of all keys and texts in this library: about what they take of the store's room.
    #[must_use]
    pub fn size(&self) -> usize {
        self.records.iter().filter_map(|(key, record)| Some(key.len() + record.text()?.len())).sum()
    }

    /// Keys of the records that the store has and the library has not.
    ///
    /// # Errors
    /// When the store does not list its keys.
    pub fn waiting(&self) -> Result<Vec<String>, StoreError> {
        let mut keys = self.store.keys()?;
        let ours = |key: &String| [REVISION, SYSTEM, RELEASE].iter().any(|prefix| key.starts_with(prefix));
        keys.retain(|key| ours(key) && !self.records.contains_key(key));
        Ok(keys)
    }

    /// Reads up to `most` more revisions whole and holds each against its name; how many are left.
    /// Opening a library takes only a glance at each, so that thousands open at once; this is for the
    /// moments after it, a few at a time. What turns out damaged is listed as unreadable.
    pub fn verify(&mut self, most: usize) -> usize {
        let mut left = 0;
        let mut looked = 0;
        for (key, record) in &mut self.records {
            let Record::Revision { summary, text, whole } = record else { continue };
            if *whole {
                continue;
            }
            if looked == most {
                left += 1;
                continue;
            }
            looked += 1;
            match Revision::read(summary.id.0, text) {
                Ok(_) => *whole = true,
                Err(refusal) => {
                    let text = Some(std::mem::take(text));
                    *record = Record::Unreadable(Unreadable { key: key.clone(), text, why: Unread::Refused(refusal) });
                }
            }
        }
        left
    }

    /// Reads the record under `key`, if it is one of ours; whether it can be read.
    pub fn take_in(&mut self, key: String) -> bool {
        let Some((prefix, hex)) =
            [REVISION, SYSTEM, RELEASE].into_iter().find_map(|prefix| Some((prefix, key.strip_prefix(prefix)?)))
        else {
            return false;
        };
        let text = self.store.read(&key);
        let outcome = match (Id::parse(hex), &text) {
            (None, _) => Err(Unread::BadKey),
            (_, Err(error)) => Err(Unread::Store(error.clone())),
            (Some(id), Ok(text)) => {
                let text = text.as_deref().unwrap_or_default();
                match prefix {
                    REVISION => revision(id, text),
                    SYSTEM => Sealed::read(id, text).map(Record::System),
                    _ => Sealed::read(id, text).map(Record::Release),
                }
                .map_err(Unread::Refused)
            }
        };
        let readable = outcome.is_ok();
        let text = text.ok().flatten();
        let record = outcome.unwrap_or_else(|why| Record::Unreadable(Unreadable { key: key.clone(), text, why }));
        self.records.insert(key, record);
        readable
    }

    /// Writes a sealed record and reads it back. Never overwrites.
    pub(in crate::record) fn put(&self, key: &str, text: &str) -> Result<(), SaveError> {
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

    /// The store below, for what the library does not do.
    #[must_use]
    pub const fn store(&self) -> &S {
        &self.store
    }

    /// Records that cannot be read, by key.
    pub fn unreadable(&self) -> impl Iterator<Item = &Unreadable> {
        self.records.values().filter_map(|record| match record {
            Record::Unreadable(unreadable) => Some(unreadable),
            _ => None,
        })
    }

    // --- binder systems of the mill's own ------------------------------------------------------

    fn all_systems(&self) -> impl Iterator<Item = &SystemRevision> {
        self.records.values().filter_map(|record| match record {
            Record::System(system) => Some(system),
            _ => None,
        })
    }

    /// The binder systems that are kept, by name; of each its last save.
    #[must_use]
    pub fn systems(&self) -> Vec<&SystemRevision> {
        let mut replaced: BTreeSet<Id> = BTreeSet::new();
        replaced.extend(self.all_systems().filter_map(|system| system.content().replaces.map(|id| id.0)));
        let mut systems: Vec<&SystemRevision> = self
            .all_systems()
            .filter(|system| !replaced.contains(&system.id()) && system.content().standing == Standing::Kept)
            .collect();
        systems.sort_by(|a, b| by_name(&a.content().name, &b.content().name).then(a.id().cmp(&b.id())));
        systems
    }

    /// A save of a binder system.
    #[must_use]
    pub fn system(&self, id: SystemId) -> Option<&SystemRevision> {
        match self.records.get(&format!("{SYSTEM}{id}"))? {
            Record::System(system) => Some(system),
            _ => None,
        }
    }

    /// Saves a binder system. Once this is `Ok`, the store has it.
    ///
    /// # Errors
    /// When it is not in the store; nothing else has changed then.
    pub fn save_system(&mut self, system: SystemRevision) -> Result<SystemId, SaveError> {
        let id = system.system();
        let key = format!("{SYSTEM}{id}");
        self.put(&key, system.text())?;
        self.records.insert(key, Record::System(system));
        Ok(id)
    }

    // --- open documents and settings: one text each, overwritten -------------------------------

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

    pub(in crate::record) fn overwrite(
        &self,
        key: &str,
        text: &str,
        readable: impl FnOnce(&str) -> bool,
    ) -> Result<(), SaveError> {
        self.make_room(key, readable)?;
        self.store.write(key, text)?;
        if self.store.read(key)?.as_deref() == Some(text) { Ok(()) } else { Err(SaveError::NotKept) }
    }

    /// Moves what is under `key` and cannot be read to a key of its own.
    ///
    /// # Errors
    /// When there is no room for it; it stays where it is then.
    pub fn set_aside(&self, key: &str) -> Result<(), SaveError> {
        self.make_room(key, |_| false)?;
        Ok(self.store.remove(key)?)
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
