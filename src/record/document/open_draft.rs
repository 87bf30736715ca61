//! The open draft: what is on the page and not yet saved.

use crate::domain::Draft;
use crate::record::content::revision::{Revision, Title};
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

impl OpenDraft {
    /// Whether it is just what a revision says.
    #[must_use]
    pub fn says(&self, revision: &Revision) -> bool {
        self.draft == revision.content().draft && self.title == revision.title()
    }

    /// The page gone on from the revision `base` that it was opened from to a later one. What is typed on the page stays.
    /// `None` where both changed the same part of it: then the page stays behind, and a save has to be confirmed.
    #[must_use]
    pub fn advanced(&self, base: &Revision, later: &Revision) -> Option<Self> {
        let draft = later_of(&base.content().draft, &self.draft, &later.content().draft)?;
        let (before, title) = (base.title(), later.title());
        let title = Title {
            name: later_of(&before.name, &self.title.name, &title.name)?,
            note: later_of(&before.note, &self.title.note, &title.note)?,
            tags: later_of(&before.tags, &self.title.tags, &title.tags)?,
        };
        Some(Self { from: Some(later.revision()), title, draft, ..self.clone() })
    }
}

/// The one of two versions that was changed; `None` where both were, in different ways.
fn later_of<T: Clone + PartialEq>(base: &T, mine: &T, theirs: &T) -> Option<T> {
    if mine == base { Some(theirs.clone()) } else { (theirs == base || theirs == mine).then(|| mine.clone()) }
}
