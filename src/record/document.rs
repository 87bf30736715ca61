//! An open document: what is typed on one page, kept after every change.
//!
//! Its text says how often it was written, so that a tab knows whether another one has written since.

pub mod merge;
pub mod open_draft;
pub mod step;

use super::limits;
use super::refusal::{self, Refusal};
use crate::record::content::sealed::Extra;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use std::marker::PhantomData;

/// The key of how often the document was written.
const EDITION: &str = "edition";

/// A kind of open document, with where and how it is kept.
#[derive(Debug)]
pub struct Document<T> {
    /// Its key in the store.
    pub key: &'static str,
    /// What its text says it is, under the key `haulm`.
    pub kind: &'static str,
    /// The format version that is written.
    pub version: u32,
    /// The longest text that is read, in bytes.
    pub limit: usize,
    content: PhantomData<fn() -> T>,
}

/// A document as it was read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stored<T> {
    /// What was typed.
    pub content: T,
    /// How often it was written.
    pub edition: u64,
    /// Keys that this app does not know. They are written back as they were.
    pub extra: Extra,
}

impl<T> Stored<T> {
    /// A document that was never written.
    #[must_use]
    pub fn new(content: T) -> Self {
        Self { content, edition: 0, extra: Extra::new() }
    }
}

impl<T: Serialize + DeserializeOwned> Document<T> {
    /// A kind of document.
    #[must_use]
    pub const fn new(key: &'static str, kind: &'static str, version: u32, limit: usize) -> Self {
        Self { key, kind, version, limit, content: PhantomData }
    }

    /// What was typed, as a tree that can be merged.
    #[must_use]
    pub fn tree(&self, content: &T) -> Value {
        serde_json::to_value(content).unwrap_or_default()
    }

    /// What a tree says; `None` when it says nothing that can be typed.
    #[must_use]
    pub fn content(&self, tree: &Value) -> Option<T> {
        limits::check(tree).ok()?;
        // By way of its text: read from trees as well, the code that reads each type would be in the program twice.
        serde_json::from_str(&tree.to_string()).ok()
    }

    /// Its text.
    #[must_use]
    pub fn text(&self, stored: &Stored<T>) -> String {
        let mut fields = stored.extra.clone();
        if let Value::Object(content) = self.tree(&stored.content) {
            fields.extend(content);
        }
        fields.insert("haulm".to_owned(), self.kind.into());
        fields.insert("version".to_owned(), self.version.into());
        fields.insert(EDITION.to_owned(), stored.edition.into());
        Value::from(fields).to_string()
    }

    /// Reads a text.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(&self, text: &str) -> Result<Stored<T>, Refusal> {
        let content = limits::read_limited(text, self.limit, self.kind, self.version)?;
        let mut extra = refusal::fields(text);
        let edition = extra.remove(EDITION).and_then(|edition| edition.as_u64()).unwrap_or_default();
        if let Value::Object(known) = self.tree(&content) {
            extra.retain(|key, _| !known.contains_key(key) && !matches!(key.as_str(), "haulm" | "version"));
        }
        Ok(Stored { content, edition, extra })
    }
}
