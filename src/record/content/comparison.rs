//! The comparison as it is stored, and the saved revisions that it compares.

use crate::domain::Draft;
use crate::domain::compare::draft::CompareDraft;
use crate::record::document::Document;
use crate::record::id::RevisionId;
use crate::record::store::Store;
use crate::record::store::library::Library;

/// The comparison.
pub const COMPARISON: Document<CompareDraft> = Document::new("haulm/compare", "compare", 1, 400_000);

/// A saved revision, to be compared.
#[derive(Debug, Clone, PartialEq)]
pub struct ComparedRevision {
    /// The recipe's name at that save.
    pub name: String,
    /// Its number within the recipe: 1 for the first save.
    pub number: u32,
    /// What was entered.
    pub draft: Draft,
}

impl<S: Store> Library<S> {
    /// A saved revision by its id as text; `None` where it is not there or cannot be read.
    #[must_use]
    pub fn compared_revision(&self, id: &str) -> Option<ComparedRevision> {
        let revision = self.revision(RevisionId::parse(id)?)?;
        let number = self.version(revision.revision())?.number;
        let content = revision.content();
        Some(ComparedRevision { name: content.name.clone(), number, draft: content.draft.clone() })
    }

    /// Whether two revisions, by their ids as text, belong to one recipe.
    #[must_use]
    pub fn same_recipe(&self, one: &str, other: &str) -> bool {
        let recipe = |id: &str| Some(self.revision(RevisionId::parse(id)?)?.recipe());
        recipe(one).is_some_and(|one| recipe(other) == Some(one))
    }
}
