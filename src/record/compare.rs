//! The comparison as it is stored, and the saved revisions that it compares.

use super::id::RevisionId;
use super::refusal::{self, Refusal};
use super::sealed::Headed;
use super::shelf::{SaveError, Shelf, Unread};
use super::store::Store;
use crate::domain::Draft;
use crate::domain::compare::draft::CompareDraft;
use serde::{Deserialize, Serialize};

/// The key in the store.
pub const COMPARE: &str = "haulm/compare";
/// The format version.
const VERSION: u32 = 1;
/// The key `haulm` of the text.
const KIND: &str = "compare";
/// The longest text that is read, in bytes.
const LARGEST: usize = 400_000;

/// [`CompareDraft`] as it is stored.
#[derive(Serialize, Deserialize)]
struct Stored<T> {
    #[serde(default)]
    compare: T,
}

/// The text in the store.
///
/// # Errors
/// When it has no JSON form. None lacks one.
pub fn text(compare: &CompareDraft) -> Result<String, serde_json::Error> {
    Headed::new(KIND, VERSION, &Stored { compare }).text()
}

/// Reads a stored text.
///
/// # Errors
/// Every [`Refusal`] but [`Altered`](Refusal::Altered).
pub fn read(text: &str) -> Result<CompareDraft, Refusal> {
    refusal::read(text, LARGEST, KIND, VERSION).map(|stored: Stored<CompareDraft>| stored.compare)
}

/// A saved revision, to be compared.
#[derive(Debug, Clone, PartialEq)]
pub struct ComparedRevision {
    /// The recipe's name at that save.
    pub name: String,
    /// Its number within the recipe: 1 for the first save.
    pub number: usize,
    /// What was entered.
    pub draft: Draft,
}

impl<S: Store> Shelf<S> {
    /// A saved revision by its id as text; `None` where it is not there or cannot be read.
    #[must_use]
    pub fn compared_revision(&self, id: &str) -> Option<ComparedRevision> {
        let revision = self.revision(RevisionId::parse(id)?)?;
        let id = RevisionId::parse(id)?;
        let history = self.history(revision.recipe());
        let number = history.len() - history.iter().position(|summary| summary.id == id)?;
        let content = revision.content();
        Some(ComparedRevision { name: content.name.clone(), number, draft: content.draft.clone() })
    }

    /// Whether two revisions, by their ids as text, belong to one recipe.
    #[must_use]
    pub fn same_recipe(&self, one: &str, other: &str) -> bool {
        let recipe = |id: &str| Some(self.revision(RevisionId::parse(id)?)?.recipe());
        recipe(one).is_some_and(|one| recipe(other) == Some(one))
    }

    /// The comparison as it was left; an empty one where there is none.
    ///
    /// # Errors
    /// When it cannot be read.
    pub fn compare(&self) -> Result<CompareDraft, Unread> {
        match self.store().read(COMPARE).map_err(Unread::Store)? {
            Some(text) => read(&text).map_err(Unread::Refused),
            None => Ok(CompareDraft::default()),
        }
    }

    /// Stores it in place of what was there. What was there and cannot be read is set aside first.
    ///
    /// # Errors
    /// When it is not in the store.
    pub fn keep_compare(&self, typed: &CompareDraft) -> Result<(), SaveError> {
        self.overwrite(COMPARE, &text(typed)?, |text| read(text).is_ok())
    }
}
