//! All records in memory, in front of the database: they are read once, and looked up at once from then on.
//! What the database does not have yet waits here. Everything else goes to the small store.

use crate::record::file::library::is_record;
use crate::record::store::{Store, StoreError};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// The records in memory, and a small store for what is no record.
#[derive(Debug, Default)]
pub struct Cache<S> {
    small: S,
    records: Mutex<Records>,
}

#[derive(Debug, Default)]
struct Records {
    texts: BTreeMap<String, String>,
    /// Keys of records that the database does not have yet.
    waiting: BTreeSet<String>,
    /// Keys of records that the database had, and has no more.
    missing: BTreeSet<String>,
}

impl<S: Store> Cache<S> {
    /// No records yet.
    pub fn new(small: S) -> Self {
        Self { small, records: Mutex::default() }
    }

    fn records(&self) -> MutexGuard<'_, Records> {
        // No step can leave it half done, so a panic elsewhere does not spoil it.
        self.records.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Takes in what the database has; what is no record is left out. How many were new.
    pub fn load(&self, found: impl IntoIterator<Item = (String, String)>) -> usize {
        let mut records = self.records();
        let before = records.texts.len();
        for (key, text) in found.into_iter().filter(|(key, _)| is_record(key)) {
            records.missing.remove(&key);
            if records.texts.get(&key) == Some(&text) {
                records.waiting.remove(&key);
            }
            records.texts.entry(key).or_insert(text);
        }
        records.texts.len() - before
    }

    /// Keys of records that the database has and the memory has not.
    #[must_use]
    pub fn unknown(&self, in_database: &[String]) -> Vec<String> {
        let records = self.records();
        in_database.iter().filter(|key| is_record(key) && !records.texts.contains_key(*key)).cloned().collect()
    }

    /// Compares the memory with all keys of the database; how many records it has lost.
    pub fn compare(&self, in_database: &[String]) -> usize {
        let there: BTreeSet<&String> = in_database.iter().collect();
        let mut records = self.records();
        let lost = |key: &&String| !there.contains(key) && !records.waiting.contains(*key);
        let missing = records.texts.keys().filter(lost).cloned().collect();
        records.missing = missing;
        records.missing.len()
    }

    /// Has all records that the database has lost written again; how many they are.
    pub fn write_back(&self) -> usize {
        let mut records = self.records();
        let missing = std::mem::take(&mut records.missing);
        let count = missing.len();
        records.waiting.extend(missing);
        count
    }

    /// The records that the database does not have yet, with their texts.
    #[must_use]
    pub fn waiting(&self) -> Vec<(String, String)> {
        let records = self.records();
        let text = |key: &String| Some((key.clone(), records.texts.get(key)?.clone()));
        records.waiting.iter().filter_map(text).collect()
    }

    /// Whether the database has this record, as far as is known.
    #[must_use]
    pub fn is_written(&self, key: &str) -> bool {
        let records = self.records();
        records.texts.contains_key(key) && !records.waiting.contains(key) && !records.missing.contains(key)
    }

    /// These have reached the disk.
    pub fn written(&self, keys: impl IntoIterator<Item = String>) {
        let mut records = self.records();
        for key in keys {
            records.waiting.remove(&key);
        }
    }
}

impl<S: Store> Store for Cache<S> {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        let mut keys: Vec<String> = self.records().texts.keys().cloned().collect();
        // A browser that blocks its small store has its records all the same.
        keys.extend(self.small.keys().unwrap_or_default().into_iter().filter(|key| !is_record(key)));
        Ok(keys)
    }

    fn read(&self, key: &str) -> Result<Option<String>, StoreError> {
        if is_record(key) { Ok(self.records().texts.get(key).cloned()) } else { self.small.read(key) }
    }

    fn write(&self, key: &str, text: &str) -> Result<(), StoreError> {
        if !is_record(key) {
            return self.small.write(key, text);
        }
        let mut records = self.records();
        records.texts.insert(key.to_owned(), text.to_owned());
        records.waiting.insert(key.to_owned());
        Ok(())
    }

    fn remove(&self, key: &str) -> Result<(), StoreError> {
        if !is_record(key) {
            return self.small.remove(key);
        }
        let mut records = self.records();
        records.texts.remove(key);
        records.waiting.remove(key);
        Ok(())
    }
}
