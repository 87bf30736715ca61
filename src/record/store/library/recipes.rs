//! The recipes of the library: their revisions by descent, read and saved.

use crate::record::content::lineage::{Lineage, Listed, Version};
use crate::record::content::release::Release;
use crate::record::content::revision::{Revision, Standing};
use crate::record::content::summary::Summary;
use crate::record::id::{RecipeId, RevisionId};
use crate::record::store::Store;
use crate::record::store::library::{Library, REVISION, Record, SaveError};

impl<S: Store> Library<S> {
    fn summaries(&self) -> impl Iterator<Item = &Summary> {
        self.records.values().filter_map(|record| match record {
            Record::Revision { summary, .. } => Some(summary),
            _ => None,
        })
    }

    pub(super) fn releases(&self) -> impl Iterator<Item = &Release> {
        self.records.values().filter_map(|record| match record {
            Record::Release(release) => Some(release),
            _ => None,
        })
    }

    /// All revisions by descent.
    #[must_use]
    pub fn lineage(&self) -> Lineage<'_> {
        Lineage::of(self.summaries(), self.releases())
    }

    /// The revisions of one recipe by descent.
    fn lineage_of(&self, recipe: RecipeId) -> Lineage<'_> {
        Lineage::of(self.summaries().filter(|summary| summary.recipe == recipe), self.releases())
    }

    /// All recipes, kept and removed, with their heads.
    #[must_use]
    pub fn recipes(&self) -> Vec<Listed<'_>> {
        self.lineage().recipes()
    }

    /// Whether any revision says that its recipe was removed: much quicker than all recipes with their heads.
    #[must_use]
    pub fn has_removed(&self) -> bool {
        self.summaries().any(|summary| summary.standing == Standing::Removed)
    }

    /// One recipe with its heads.
    #[must_use]
    pub fn recipe(&self, recipe: RecipeId) -> Option<Listed<'_>> {
        self.lineage_of(recipe).recipes().into_iter().next()
    }

    /// All revisions of a recipe, the latest first: each is before everything that it descends from.
    #[must_use]
    pub fn history(&self, recipe: RecipeId) -> Vec<Version<'_>> {
        self.lineage_of(recipe).into_history()
    }

    fn summary(&self, id: RevisionId) -> Option<&Summary> {
        match self.records.get(&format!("{REVISION}{id}"))? {
            Record::Revision { summary, .. } => Some(summary),
            _ => None,
        }
    }

    /// A revision in its place within the recipe.
    #[must_use]
    pub fn version(&self, id: RevisionId) -> Option<Version<'_>> {
        self.lineage_of(self.summary(id)?.recipe).version(id).cloned()
    }

    /// The heads that descend from a revision, the latest first; none where nothing follows it.
    #[must_use]
    pub fn heads_after(&self, id: RevisionId) -> Vec<Version<'_>> {
        self.summary(id).map(|summary| self.lineage_of(summary.recipe).heads_after(id)).unwrap_or_default()
    }

    /// A revision with all that it says; `None` when there is none, or when it turns out now that it
    /// cannot be read, which [`verify`](Self::verify) then lists.
    #[must_use]
    pub fn revision(&self, id: RevisionId) -> Option<Revision> {
        match self.records.get(&format!("{REVISION}{id}"))? {
            Record::Revision { text, .. } => Revision::read(id.0, text).ok(),
            _ => None,
        }
    }

    /// A revision, read from the store alone when the records were not read yet.
    #[must_use]
    pub fn look_up(&mut self, id: RevisionId) -> Option<Revision> {
        let key = format!("{REVISION}{id}");
        if !self.records.contains_key(&key) {
            self.take_in(key);
        }
        self.revision(id)
    }

    pub(super) fn known(&self, id: RevisionId) -> Result<Revision, SaveError> {
        self.revision(id).ok_or(SaveError::Unknown)
    }

    /// Saves a revision. Once this is `Ok`, the store has it.
    ///
    /// # Errors
    /// When it is not in the store; nothing else has changed then.
    pub fn save(&mut self, revision: Revision) -> Result<RevisionId, SaveError> {
        let id = revision.revision();
        let key = format!("{REVISION}{id}");
        let summary = Summary::of(&revision).ok_or_else(|| SaveError::NoJson(String::new()))?;
        let text = revision.text().to_owned();
        self.put(&key, &text)?;
        self.records.insert(key, Record::Revision { summary, text, whole: true });
        Ok(id)
    }
}
