//! The open draft: what is on the page and not yet saved.

use super::id::RevisionId;
use super::refusal::{self, Refusal};
use super::revision::Title;
use super::sealed::Headed;
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
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OpenDraft {
    /// The revision that was opened; `None` for a new recipe.
    pub from: Option<RevisionId>,
    /// Name, note and tags.
    pub title: Title,
    /// What was typed.
    pub draft: Draft,
    /// What will be remarked on the next save.
    #[serde(default)]
    pub remark: String,
    /// Whether it is the example that a first start shows.
    #[serde(default)]
    pub example: bool,
}

impl OpenDraft {
    /// Its text in the store.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        Headed::new(KIND, VERSION, self).text()
    }

    /// Reads a stored text.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        refusal::read(text, LARGEST, KIND, VERSION)
    }
}
