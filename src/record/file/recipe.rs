//! A recipe as a file of its own: to pass on, to keep elsewhere, to read with a script.

use crate::domain::Draft;
use crate::record::content::revision::{Revision, Stamp, Title};
use crate::record::content::sealed::Extra;
use crate::record::id::RevisionId;
use crate::record::limits;
use crate::record::refusal::Refusal;
use serde::{Deserialize, Serialize};

/// The format version that is written.
pub const VERSION: u32 = 1;
/// The largest file that is read, in bytes. A recipe with a dozen liquids has 6 000.
pub const LARGEST: usize = 1_000_000;
/// The key `haulm` of a recipe file.
const KIND: &str = "recipe";

/// What a file of ours says it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FileKind {
    /// One recipe.
    Recipe,
}

/// A recipe file, its keys in the order in which they are written. Every number in its draft is text
/// as typed, beside its unit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct RecipeFile {
    /// What the file is.
    pub haulm: FileKind,
    /// The format version, from 1.
    pub version: u32,
    /// The version of the app that wrote it.
    #[serde(default)]
    pub app: String,
    /// The recipe's name.
    #[serde(default)]
    pub name: String,
    /// The note.
    #[serde(default)]
    pub note: String,
    /// The tags.
    #[serde(default)]
    pub tags: Vec<String>,
    /// The id of the revision that was written; none for work not saved yet.
    #[serde(default)]
    pub revision: Option<RevisionId>,
    /// What was typed.
    pub draft: Draft,
    /// Keys that this app does not know.
    #[serde(flatten)]
    pub extra: Extra,
}

impl RecipeFile {
    /// The file of what is on the page.
    #[must_use]
    pub fn new(title: Title, draft: Draft, revision: Option<RevisionId>) -> Self {
        Self {
            haulm: FileKind::Recipe,
            version: VERSION,
            app: env!("CARGO_PKG_VERSION").to_owned(),
            name: title.name,
            note: title.note,
            tags: title.tags,
            revision,
            draft,
            extra: Extra::new(),
        }
    }

    /// The file of a revision.
    #[must_use]
    pub fn of(revision: &Revision) -> Self {
        let mut file = Self::new(revision.title(), revision.content().draft.clone(), Some(revision.revision()));
        file.extra = revision.extra();
        // Keys that a revision does not have and a file does.
        file.extra.retain(|key, _| !["app", "revision"].contains(&key.as_str()));
        file
    }

    /// The text of the file, laid out to be read.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        Ok(serde_json::to_string_pretty(self)? + "\n")
    }

    /// Reads the text of a file.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        limits::read_limited(text, LARGEST, KIND, VERSION)
    }

    /// Name, note and tags.
    #[must_use]
    pub fn title(&self) -> Title {
        Title { name: self.name.clone(), note: self.note.clone(), tags: self.tags.clone() }
    }

    /// The first revision of a new recipe that says what the file says, unknown keys too.
    ///
    /// # Errors
    /// As [`Revision::new`](crate::record::content::sealed::Sealed::new).
    pub fn into_revision(self, stamp: Stamp) -> Result<Revision, serde_json::Error> {
        let first = Revision::first(self.title(), self.draft, stamp)?;
        Revision::with(first.into_content(), self.extra)
    }
}
