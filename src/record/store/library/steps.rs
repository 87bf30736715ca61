//! What can be done with a recipe in the library. Each step is a revision that follows.

use crate::domain::Draft;
use crate::domain::line::{Delivered, Tie};
use crate::record::content::revision::{Stamp, Standing};
use crate::record::id::{RecipeId, RevisionId};
use crate::record::store::Store;
use crate::record::store::library::{Library, SaveError};

impl<S: Store> Library<S> {
    /// Gives the recipe of `head` another name.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there is no such revision.
    pub fn rename(&mut self, head: RevisionId, name: String, stamp: Stamp) -> Result<RevisionId, SaveError> {
        let renamed = self.known(head)?.follow(stamp, |content| content.name = name)?;
        self.save(renamed)
    }

    /// Begins a new recipe as a copy of a revision.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there is no such revision.
    pub fn duplicate(&mut self, of: RevisionId, name: String, stamp: Stamp) -> Result<RevisionId, SaveError> {
        let of = self.known(of)?;
        let copy = of.copy(name, stamp, of.title(), of.content().draft.clone())?;
        self.save(copy)
    }

    /// Makes `old` what the recipe says now, as a revision that follows `head`.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there are no such revisions of one recipe.
    pub fn restore(&mut self, old: RevisionId, head: RevisionId, stamp: Stamp) -> Result<RevisionId, SaveError> {
        let (old, head) = (self.known(old)?, self.known(head)?);
        if old.recipe() != head.recipe() {
            return Err(SaveError::Unknown);
        }
        let parents = vec![head.revision()];
        let restored = old.follow(stamp, |content| {
            content.parents = parents;
            content.standing = Standing::Kept;
        })?;
        self.save(restored)
    }

    /// The saved recipes that use a liquid: of each the head that counts, and its name.
    #[must_use]
    pub fn recipes_with(&self, tie: &Tie) -> Vec<(RevisionId, RecipeId, String)> {
        let kept = self.recipes().into_iter().filter(|listed| listed.standing() == Standing::Kept);
        let uses =
            |id| self.revision(id).is_some_and(|head| head.content().draft.liquids.iter().any(|own| tie.is(own)));
        kept.filter(|listed| uses(listed.head.summary.id))
            .map(|listed| (listed.head.summary.id, listed.recipe, listed.head.summary.name.clone()))
            .collect()
    }

    /// Enters an accepted delivery into saved recipes: each gets a revision of its own that follows its head. Of each that
    /// changes, the head before and the new one. `own` is the recipe that the delivery was computed for.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there is no such revision; those before it are saved then.
    pub fn enter_delivery(
        &mut self,
        heads: &[RevisionId],
        delivered: &Delivered,
        own: &Draft,
        stamp: &Stamp,
    ) -> Result<Vec<(RevisionId, RevisionId)>, SaveError> {
        let mut entered = Vec::new();
        for head in heads {
            let before = self.known(*head)?;
            if let Some(draft) = delivered.applied_to(own, &before.content().draft) {
                let next = before.follow(stamp.clone(), |content| content.draft = draft)?;
                entered.push((*head, self.save(next)?));
            }
        }
        Ok(entered)
    }

    /// Makes two heads one: what `head` says, with what `change` takes over from the other.
    ///
    /// # Errors
    /// As [`save`](Self::save), or when there are no such revisions of one recipe.
    pub fn merge_heads(
        &mut self,
        head: RevisionId,
        other: RevisionId,
        stamp: Stamp,
        change: impl FnOnce(&mut Draft, &Draft),
    ) -> Result<RevisionId, SaveError> {
        let (head, other) = (self.known(head)?, self.known(other)?);
        if head.recipe() != other.recipe() {
            return Err(SaveError::Unknown);
        }
        let parents = vec![head.revision(), other.revision()];
        let merged = head.follow(stamp, |content| {
            content.parents = parents;
            content.standing = Standing::Kept;
            change(&mut content.draft, &other.content().draft);
        })?;
        self.save(merged)
    }

    /// Removes a recipe from the library: every head gets a revision that says so.
    ///
    /// # Errors
    /// As [`save`](Self::save). A recipe with a head that is left is still in the library.
    pub fn remove(&mut self, recipe: RecipeId, stamp: &Stamp) -> Result<(), SaveError> {
        self.set_standing(recipe, Standing::Removed, stamp)
    }

    /// Puts a removed recipe back in the library.
    ///
    /// # Errors
    /// As [`save`](Self::save).
    pub fn put_back(&mut self, recipe: RecipeId, stamp: &Stamp) -> Result<(), SaveError> {
        self.set_standing(recipe, Standing::Kept, stamp)
    }

    fn set_standing(&mut self, recipe: RecipeId, standing: Standing, stamp: &Stamp) -> Result<(), SaveError> {
        let listed = self.recipe(recipe).ok_or(SaveError::Unknown)?;
        let heads: Vec<RevisionId> = listed
            .heads()
            .map(|head| head.summary)
            .filter(|head| head.standing != standing)
            .map(|head| head.id)
            .collect();
        for head in heads {
            let next = self.known(head)?.follow(stamp.clone(), |content| content.standing = standing)?;
            self.save(next)?;
        }
        Ok(())
    }
}
