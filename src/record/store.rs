//! Where records are kept: texts under keys.

pub mod cache;
pub mod library;
pub mod shared_file;
pub mod silence;

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// Why a store did not do what it was asked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum StoreError {
    /// No room is left.
    Full,
    /// The browser does not let the app store anything.
    Blocked,
    /// It does not answer.
    Silent,
    /// Anything else, in the store's own words.
    Other(String),
}

/// Texts under keys. Takes `&self` throughout, as two tabs share one store.
pub trait Store {
    /// All keys, of other apps too, in any order.
    ///
    /// # Errors
    /// When the store cannot be reached.
    fn keys(&self) -> Result<Vec<String>, StoreError>;

    /// The text under `key`.
    ///
    /// # Errors
    /// When the store cannot be reached.
    fn read(&self, key: &str) -> Result<Option<String>, StoreError>;

    /// Puts `text` under `key`, in place of what is there. On an error the old text is still there.
    ///
    /// # Errors
    /// When there is no room, or the store cannot be reached.
    fn write(&self, key: &str, text: &str) -> Result<(), StoreError>;

    /// Removes `key` and its text, if it is there.
    ///
    /// # Errors
    /// When the store cannot be reached.
    fn remove(&self, key: &str) -> Result<(), StoreError>;
}

impl<S: Store + ?Sized> Store for Box<S> {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        (**self).keys()
    }
    fn read(&self, key: &str) -> Result<Option<String>, StoreError> {
        (**self).read(key)
    }
    fn write(&self, key: &str, text: &str) -> Result<(), StoreError> {
        (**self).write(key, text)
    }
    fn remove(&self, key: &str) -> Result<(), StoreError> {
        (**self).remove(key)
    }
}

/// A store that lasts as long as the page: for tests, and where the browser blocks storage.
/// Clones share their texts.
#[derive(Debug, Clone, Default)]
pub struct MemoryStore(Arc<Mutex<BTreeMap<String, String>>>);

impl MemoryStore {
    fn texts(&self) -> MutexGuard<'_, BTreeMap<String, String>> {
        // No step on the map can leave it half done, so a panic elsewhere does not spoil it.
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Store for MemoryStore {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        Ok(self.texts().keys().cloned().collect())
    }
    fn read(&self, key: &str) -> Result<Option<String>, StoreError> {
        Ok(self.texts().get(key).cloned())
    }
    fn write(&self, key: &str, text: &str) -> Result<(), StoreError> {
        self.texts().insert(key.to_owned(), text.to_owned());
        Ok(())
    }
    fn remove(&self, key: &str) -> Result<(), StoreError> {
        self.texts().remove(key);
        Ok(())
    }
}
