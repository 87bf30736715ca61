//! A record that never changes, under a name made from its own text.

use crate::record::id::Id;
use crate::record::limits;
use crate::record::refusal::{self, Refusal};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

/// Keys that this app does not know: kept, and written back as they were.
pub type Extra = Map<String, Value>;

/// A kind of record that is kept sealed.
///
/// Numbers in it are whole; whatever was typed is text. So its text is the same on every machine.
pub trait Content: Serialize + DeserializeOwned + Clone {
    /// What the record says it is, under the key `haulm`.
    const KIND: &'static str;
    /// The format version that is written.
    const VERSION: u32;
    /// The largest text that is taken, in bytes.
    const LARGEST: usize = 1_000_000;
}

/// A text as it is written: what it is, its format version, then what it says.
#[derive(Serialize)]
pub(in crate::record) struct Headed<'a, T> {
    haulm: &'a str,
    version: u32,
    #[serde(flatten)]
    content: &'a T,
}

impl<'a, T: Serialize> Headed<'a, T> {
    pub(in crate::record) const fn new(haulm: &'a str, version: u32, content: &'a T) -> Self {
        Self { haulm, version, content }
    }

    /// As JSON without spaces.
    pub(in crate::record) fn text(&self) -> serde_json::Result<String> {
        serde_json::to_string(self)
    }

    /// As JSON that is easy to read.
    pub(in crate::record) fn pretty(&self) -> serde_json::Result<String> {
        Ok(serde_json::to_string_pretty(self)? + "\n")
    }
}

/// Unknown keys, then those of a text. In a [`Value`] a later key replaces an earlier one of the same name.
#[derive(Serialize)]
struct WithExtra<'a, T: Serialize> {
    #[serde(flatten)]
    extra: Extra,
    #[serde(flatten)]
    text: Headed<'a, T>,
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
        let fields = WithExtra { extra, text: Headed::new(T::KIND, T::VERSION, &content) };
        let text = canonical(serde_json::to_value(fields)?);
        Ok(Self { id: Id::of(&text), text, content })
    }

    /// Reads a record that is stored under the name `id`.
    ///
    /// # Errors
    /// Every [`Refusal`].
    pub fn read(id: Id, text: &str) -> Result<Self, Refusal> {
        let content = limits::read_limited(text, T::LARGEST, T::KIND, T::VERSION)?;
        Ok(Self { id, text: matching(id, text)?, content })
    }

    /// The keys that this app does not know.
    #[must_use]
    pub fn extra(&self) -> Extra {
        let mut extra = refusal::fields(&self.text);
        if let Ok(Value::Object(known)) = serde_json::to_value(Headed::new(T::KIND, T::VERSION, &self.content)) {
            extra.retain(|key, _| !known.contains_key(key));
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

/// JSON without spaces and with sorted keys.
pub(in crate::record) fn canonical(mut value: Value) -> String {
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
