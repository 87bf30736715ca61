//! A record that never changes, under a name made from its own text.

use super::id::Id;
use super::refusal::{self, Refusal};
use super::shape::{self, Shape};
use serde_json::{Map, Value};

/// Keys that this app does not know: kept, and written back as they were.
pub type Extra = Map<String, Value>;

/// A kind of record that is kept sealed.
///
/// Numbers in it are whole; whatever was typed is text. So its text is the same on every machine.
pub trait Content: Shape + Clone {
    /// What the record says it is, under the key `haulm`.
    const KIND: &'static str;
    /// The format version that is written. See [`read_version`](Self::read_version) for older ones.
    const VERSION: u32;
    /// The largest text that is taken, in bytes.
    const LARGEST: usize = 1_000_000;

    /// Reads what a `version` from 1 to [`VERSION`](Self::VERSION) wrote.
    ///
    /// # Errors
    /// What is wrong in `text`, and where.
    fn read_version(version: u32, text: &str) -> serde_json::Result<Self> {
        let _ = version; // There is but one so far.
        shape::read(text)
    }
}

/// A record with its text and the name made from it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sealed<T> {
    id: Id,
    text: String,
    content: T,
}

impl<T: Content> Sealed<T> {
    /// Seals `content`: its text is JSON without spaces and with sorted keys, its name the hash of
    /// that text.
    ///
    /// # Errors
    /// When `content` has no JSON form. No content of this crate lacks one.
    pub fn new(content: T) -> Result<Self, serde_json::Error> {
        Self::with(content, Extra::new())
    }

    /// Seals `content` and keys that this app does not know. One of those that has the name of a key
    /// of `content` is left out: it came from another kind of record.
    ///
    /// # Errors
    /// As [`new`](Self::new).
    pub fn with(content: T, extra: Extra) -> Result<Self, serde_json::Error> {
        let mut fields = extra;
        own_keys(&mut fields, T::KIND, T::VERSION, shape::value(&content));
        let text = canonical(fields.into());
        Ok(Self { id: Id::of(&text), text, content })
    }

    /// Reads a record that is stored under the name `id`.
    ///
    /// # Errors
    /// Every [`Refusal`].
    pub fn read(id: Id, text: &str) -> Result<Self, Refusal> {
        let content = refusal::read(text, T::LARGEST, T::KIND, T::VERSION, T::read_version)?;
        Ok(Self { id, text: matching(id, text)?, content })
    }

    /// The keys that this app does not know.
    #[must_use]
    pub fn extra(&self) -> Extra {
        let mut extra = refusal::fields(&self.text);
        if let Value::Object(known) = shape::value(&self.content) {
            extra.retain(|key, _| !known.contains_key(key) && !matches!(key.as_str(), "haulm" | "version"));
        }
        extra
    }

    /// The name.
    #[must_use]
    pub const fn id(&self) -> Id {
        self.id
    }

    /// The text as it is stored.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// What it says.
    #[must_use]
    pub const fn content(&self) -> &T {
        &self.content
    }

    /// What it says, to build another one from.
    #[must_use]
    pub fn into_content(self) -> T {
        self.content
    }
}

/// Puts kind, version and the keys of `content` among `fields`, in place of any of their names.
pub(super) fn own_keys(fields: &mut Extra, kind: &str, version: u32, content: Value) {
    if let Value::Object(content) = content {
        fields.extend(content);
    }
    fields.insert("haulm".to_owned(), kind.into());
    fields.insert("version".to_owned(), version.into());
}

/// JSON without spaces and with sorted keys.
pub(super) fn canonical(mut value: Value) -> String {
    value.sort_all_objects();
    value.to_string()
}

/// The text that has the name `id`: this one, or this one as it was before something on the way laid
/// the same JSON out differently.
fn matching(id: Id, text: &str) -> Result<String, Refusal> {
    let found = Id::of(text);
    if found == id {
        return Ok(text.to_owned());
    }
    let text = canonical(refusal::fields(text).into());
    if Id::of(&text) == id { Ok(text) } else { Err(Refusal::Altered { found }) }
}
