//! The open draft: what is on the page and not yet saved.

use crate::domain::Draft;
use crate::record::content::revision::Title;
use crate::record::document::Document;
use crate::record::id::RevisionId;
use serde::{Deserialize, Serialize};

/// The recipe on the page. A dozen liquids have 6 000 bytes.
pub const RECIPE: Document<OpenDraft> = Document::new("haulm/draft", "draft", 1, 1_000_000);

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
