//! Two stores as one: a quick one that answers at once and has little room, and a large one that
//! answers later.
//!
//! Every sealed record goes to both. When the quick one is full, or fuller than it should be, the
//! records that the large one is known to have stay there alone. What is written over again and
//! again, such as the open draft, stands in the quick one, with a copy in the large one.

use super::library::is_record;
use super::store::{Store, StoreError};

/// How full the quick store may be when the app starts, in bytes of keys and texts: half of what
/// browsers give to local storage, so that a session's saves fit on top.
pub const ROOM: usize = 2_500_000;

/// When something was last written over in the quick store, for the large one to compare (src/start.js).
pub const LAST: &str = "haulm/last";

/// A store of sealed records with room for all of them. It takes a text at once and tells only later
/// that it has reached the disk; texts that no other store has are at hand in memory.
pub trait Large {
    /// Whether there is such a store. Private windows often have none.
    fn is_there(&self) -> bool;

    /// Begins to keep a text, beside its copy in the quick store.
    fn put(&self, key: &str, text: &str);

    /// Begins to keep what is written over again and again, for the case that the browser ends before the
    /// quick store is on the disk.
    fn put_open(&self, key: &str, text: &str);

    /// Whether the record under `key` is known to be on the disk.
    fn holds(&self, key: &str) -> bool;

    /// Gives out `text` under `key` from now on, as the quick store does not have it.
    fn stand_in(&self, key: &str, text: &str);

    /// The quick store has the record under `key`, or nobody has.
    fn stand_back(&self, key: &str);

    /// The text that stands here alone.
    fn alone(&self, key: &str) -> Option<String>;

    /// Keys of all texts that stand here alone.
    fn keys_alone(&self) -> Vec<String>;

    /// Bytes of the texts that stand here alone, about.
    fn size_alone(&self) -> usize;
}

/// A quick store and a large one.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct TwoStores<Q, L> {
    quick: Q,
    large: L,
}

impl<Q: Store, L: Large> TwoStores<Q, L> {
    /// Both as one.
    pub const fn new(quick: Q, large: L) -> Self {
        Self { quick, large }
    }

    /// Bytes of our keys and texts in the quick store.
    ///
    /// # Errors
    /// When it cannot be reached.
    pub fn quick_size(&self) -> Result<usize, StoreError> {
        let mut size = 0;
        for key in self.quick.keys()?.iter().filter(|key| key.starts_with("haulm/")) {
            size += key.len() + self.quick.read(key)?.map_or(0, |text| text.len());
        }
        Ok(size)
    }

    /// Puts each record where it belongs, for a quick store of so much `room`: written back to it when
    /// all of them fit, or out of it when they do not. How many were written back.
    ///
    /// # Errors
    /// When the quick store cannot be reached, or takes nothing.
    pub fn level(&self, room: usize) -> Result<usize, StoreError> {
        let quick = self.quick_size()?;
        if quick > room {
            self.ease(quick - room / 2)?;
            return Ok(0);
        }
        if quick + self.large.size_alone() > room {
            return Ok(0);
        }
        let mut written = 0;
        for key in self.large.keys_alone() {
            let Some(text) = self.large.alone(&key) else { continue };
            let outcome = self.quick.write(&key, &text);
            // A store may say that it has written and not have done so, or have written half.
            match self.quick.read(&key)? {
                Some(there) if there == text => {
                    self.large.stand_back(&key);
                    written += 1;
                }
                Some(_) => self.quick.remove(&key)?,
                None => {}
            }
            outcome?;
        }
        Ok(written)
    }

    /// Takes records out of the quick store until at least so many `bytes` are free that were not
    /// before, or no more can go; how many bytes that gave.
    fn ease(&self, bytes: usize) -> Result<usize, StoreError> {
        let mut freed = 0;
        for key in self.quick.keys()? {
            if freed >= bytes {
                break;
            }
            if !is_record(&key) || !self.large.holds(&key) {
                continue;
            }
            let Some(text) = self.quick.read(&key)? else { continue };
            self.large.stand_in(&key, &text);
            self.quick.remove(&key)?;
            freed += key.len() + text.len();
        }
        Ok(freed)
    }

    /// Whether a record stands in the large store alone and is not known to be on the disk.
    #[must_use]
    pub fn is_unsure(&self) -> bool {
        self.large.keys_alone().iter().any(|key| !self.large.holds(key))
    }
}

impl<Q: Store, L: Large> Store for TwoStores<Q, L> {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        let mut keys = self.quick.keys()?;
        for key in self.large.keys_alone() {
            // Another tab may have written it to the quick one since.
            if self.quick.read(&key)?.is_none() {
                keys.push(key);
            }
        }
        Ok(keys)
    }

    fn read(&self, key: &str) -> Result<Option<String>, StoreError> {
        match self.quick.read(key) {
            Ok(Some(text)) => Ok(Some(text)),
            other => self.large.alone(key).map_or(other, |text| Ok(Some(text))),
        }
    }

    fn write(&self, key: &str, text: &str) -> Result<(), StoreError> {
        let mut outcome = self.quick.write(key, text);
        if outcome == Err(StoreError::Full) && self.ease(ROOM / 2)? > 0 {
            outcome = self.quick.write(key, text);
        }
        if !is_record(key) {
            outcome?;
            self.large.put_open(key, text);
            return Ok(());
        }
        match outcome {
            Ok(()) => self.large.put(key, text),
            Err(StoreError::Full | StoreError::Blocked) if self.large.is_there() => {
                self.large.put(key, text);
                self.large.stand_in(key, text);
            }
            Err(why) => return Err(why),
        }
        Ok(())
    }

    fn remove(&self, key: &str) -> Result<(), StoreError> {
        self.large.stand_back(key);
        self.quick.remove(key)
    }
}
