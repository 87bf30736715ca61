//! The open draft: what is on the page and not yet saved.

use super::id::RevisionId;
use super::refusal::{self, Refusal};
use super::revision::Title;
use crate::domain::Draft;
use serde::{Deserialize, Serialize};

/// The format version of the open draft.
const VERSION: u32 = 1;
/// The key `haulm` of its text.
const KIND: &str = "draft";
/// The longest text that is read, in bytes.
const LARGEST: usize = 1_000_000;

/// What is on the page, and the revision that it started from. Kept after every change, so that a
/// crash or a reload costs nothing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenDraft {
    /// The revision that was opened; `None` for a new recipe.
    pub from: Option<RevisionId>,
    /// Name, note and tags.
    pub title: Title,
    /// What was typed.
    pub draft: Draft,
    /// Whether it is the example that a first start shows.
    pub example: bool,
}

/// [`OpenDraft`] as it is stored.
#[derive(Serialize, Deserialize)]
struct Stored {
    haulm: String,
    version: u32,
    from: Option<RevisionId>,
    name: String,
    note: String,
    tags: Vec<String>,
    #[serde(default)]
    example: bool,
    draft: Draft,
}

impl OpenDraft {
    /// Its text in the store.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        serde_json::to_string(&Stored {
            haulm: KIND.to_owned(),
            version: VERSION,
            from: self.from,
            name: self.title.name.clone(),
            note: self.title.note.clone(),
            tags: self.title.tags.clone(),
            example: self.example,
            draft: self.draft.clone(),
        })
    }

    /// Reads a stored text.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let stored: Stored = refusal::read(text, LARGEST, KIND, VERSION, |_, text| serde_json::from_str(text))?;
        Ok(Self {
            from: stored.from,
            title: Title { name: stored.name, note: stored.note, tags: stored.tags },
            draft: stored.draft,
            example: stored.example,
        })
    }
}
