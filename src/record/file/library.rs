//! The whole library as one file: every sealed record, to be kept elsewhere and merged into another
//! library.
//!
//! A record's name is made from its text, so merging is a union: nothing is ever overwritten, a file
//! taken in twice adds nothing, and the order of several files does not matter.

use crate::record::content::binder_system::SystemContent;
use crate::record::content::check_log::CheckContent;
use crate::record::content::kept_line::{KEPT_LINE, LineContent};
use crate::record::content::release::ReleaseContent;
use crate::record::content::revision::RevisionContent;
use crate::record::content::sealed::{Content, Sealed, canonical};
use crate::record::content::trial::TrialContent;
use crate::record::id::Id;
use crate::record::refusal::{self, Refusal};
use crate::record::store::library::{Library, SaveError};
use crate::record::store::{Store, StoreError};
use serde::Deserialize;
use serde_json::{Map, Value};
use std::collections::BTreeSet;

/// The format version that is written.
pub const VERSION: u32 = 1;
/// The largest file that is read, in bytes: some 8 000 revisions.
pub const LARGEST: usize = 50_000_000;
/// The key `haulm` of a library file.
pub const KIND: &str = "library";

/// A kind of sealed record: what it says it is, before which name it is kept, and how it is read.
type Known = (&'static str, &'static str, fn(Id, &str) -> Result<(), Refusal>);

fn sound<T: Content>(id: Id, text: &str) -> Result<(), Refusal> {
    Sealed::<T>::read(id, text).map(drop)
}

const KNOWN: [Known; 6] = [
    (RevisionContent::KIND, "haulm/revision/", sound::<RevisionContent>),
    (SystemContent::KIND, "haulm/system/", sound::<SystemContent>),
    (TrialContent::KIND, "haulm/trial/", sound::<TrialContent>),
    (CheckContent::KIND, "haulm/check/", sound::<CheckContent>),
    (LineContent::KIND, KEPT_LINE, sound::<LineContent>),
    (ReleaseContent::KIND, "haulm/release/", sound::<ReleaseContent>),
];

/// What a library file says.
#[derive(Deserialize)]
struct LibraryFile {
    /// Every record, as it is stored, in any order. Each says under `haulm` what it is.
    records: Vec<Value>,
}

/// What came of a file.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Merged {
    /// Records that were new here.
    pub added: usize,
    /// Records that were here already.
    pub known: usize,
    /// Records of the file that cannot be read, and are left out.
    pub refused: usize,
    /// Why the store took no more. What was added before is kept.
    pub stopped: Option<SaveError>,
}

/// Whether a sealed record is kept under this key.
#[must_use]
pub fn is_record(key: &str) -> bool {
    KNOWN.iter().any(|(_, prefix, _)| key.starts_with(prefix))
}

impl<S: Store> Library<S> {
    /// The text of a file with all sealed records of the store, and how many they are. What cannot be
    /// read is left out: it goes to a file by itself.
    ///
    /// # Errors
    /// When the store cannot be reached.
    pub fn library_file(&self) -> Result<(String, usize), StoreError> {
        self.everything_file(&[])
    }

    /// The same with open documents, each as its text under its key. What is no JSON is left out: it would
    /// spoil the whole file.
    ///
    /// # Errors
    /// When the store cannot be reached.
    pub fn everything_file(&self, documents: &[(String, String)]) -> Result<(String, usize), StoreError> {
        let mut text = format!(
            "{{\n  \"haulm\": \"{KIND}\",\n  \"version\": {VERSION},\n  \"app\": \"{}\",\n  \"records\": [",
            env!("CARGO_PKG_VERSION")
        );
        let mut open = Map::new();
        for (key, document) in documents {
            if let Ok(document) = serde_json::from_str(document) {
                open.insert(key.clone(), document);
            }
        }
        if !open.is_empty() {
            let rest = format!("\"open\": {},\n  \"records\": [", Value::Object(open));
            text.truncate(text.len() - "\"records\": [".len());
            text.push_str(&rest);
        }
        let mut count = 0;
        for key in self.store().keys()? {
            let name = KNOWN.iter().find_map(|(_, prefix, _)| key.strip_prefix(prefix)).and_then(Id::parse);
            let Some(id) = name else { continue };
            // A text that does not give its name was damaged.
            let Some(record) = self.store().read(&key)?.filter(|record| Id::of(record) == id) else { continue };
            text.push_str(if count == 0 { "\n" } else { ",\n" });
            text.push_str(&record);
            count += 1;
        }
        text.push_str("\n  ]\n}\n");
        Ok((text, count))
    }

    /// Takes in all records of a library file that are not here yet.
    ///
    /// # Errors
    /// Why the file is not taken; nothing was changed then.
    pub fn merge_file(&mut self, text: &str) -> Result<Merged, Refusal> {
        let file: LibraryFile = refusal::read(text, LARGEST, KIND, VERSION)?;
        let mut merged = Merged::default();
        let mut seen = BTreeSet::new();
        for record in file.records {
            let kind = record.get("haulm").and_then(Value::as_str).unwrap_or_default();
            let Some((_, prefix, sound)) = KNOWN.iter().find(|(known, ..)| *known == kind) else {
                merged.refused += 1;
                continue;
            };
            let text = canonical(record);
            let id = Id::of(&text);
            if sound(id, &text).is_err() {
                merged.refused += 1;
                continue;
            }
            let key = format!("{prefix}{id}");
            match self.store().read(&key) {
                Ok(Some(there)) if there == text => {
                    // Once, however often the file has it.
                    merged.known += usize::from(seen.insert(id));
                    continue;
                }
                _ => {}
            }
            if let Err(why) = self.put(&key, &text) {
                merged.stopped = Some(why);
                return Ok(merged);
            }
            merged.added += 1;
            seen.insert(id);
            self.take_in(key);
        }
        Ok(merged)
    }
}
