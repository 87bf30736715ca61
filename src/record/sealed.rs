//! A record that never changes, under a name made from its own text.

use super::id::Id;
use super::refusal::{self, Refusal};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

/// Keys that this app does not know: kept, and written back as they were.
pub type Extra = Map<String, Value>;

/// A kind of record that is kept sealed.
///
/// Numbers in it are whole; whatever was typed is text. So its text is the same on every machine.
pub trait Content: Serialize + DeserializeOwned {
    /// What the record says it is, under the key `haulm`.
    const KIND: &'static str;
    /// The format version that is written. See [`read_version`](Self::read_version) for older ones.
    const VERSION: u32;
    /// The largest text that is taken, in bytes.
    const LARGEST: usize = 1_000_000;

    /// The keys that this app does not know.
    fn extra_mut(&mut self) -> &mut Extra;

    /// Reads what a `version` from 1 to [`VERSION`](Self::VERSION) wrote.
    ///
    /// # Errors
    /// What is wrong in `text`, and where.
    fn read_version(version: u32, text: &str) -> serde_json::Result<Self> {
        let _ = version; // There is but one so far.
        serde_json::from_str(text)
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
    pub fn new(mut content: T) -> Result<Self, serde_json::Error> {
        let mut extra = std::mem::take(content.extra_mut());
        let mut value = serde_json::to_value(&content)?;
        if let Value::Object(fields) = &mut value {
            fields.insert("haulm".to_owned(), T::KIND.into());
            fields.insert("version".to_owned(), T::VERSION.into());
            // An unknown key can come from another kind of record; it never stands in for one of ours.
            extra.retain(|key, _| !fields.contains_key(key));
            fields.extend(extra.iter().map(|(key, value)| (key.clone(), value.clone())));
        }
        *content.extra_mut() = extra;
        value.sort_all_objects();
        let text = value.to_string();
        Ok(Self { id: Id::of(&text), text, content })
    }

    /// Reads a record that is stored under the name `id`.
    ///
    /// # Errors
    /// Every [`Refusal`].
    pub fn read(id: Id, text: &str) -> Result<Self, Refusal> {
        let mut content: T = refusal::read(text, T::LARGEST, T::KIND, T::VERSION, T::read_version)?;
        content.extra_mut().retain(|key, _| !matches!(key.as_str(), "haulm" | "version"));
        let found = Id::of(text);
        if found == id {
            return Ok(Self { id, text: text.to_owned(), content });
        }
        // Something on the way may have laid the same JSON out differently.
        let mut value: Value = refusal::whole(text)?;
        value.sort_all_objects();
        let text = value.to_string();
        if Id::of(&text) == id { Ok(Self { id, text, content }) } else { Err(Refusal::Altered { found }) }
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
