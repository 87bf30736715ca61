//! Saving what is on the recipe page, and what has to be asked before.

use crate::domain::recipe::difference::other_binders;
use crate::record::content::revision::{Revision, Stamp, Standing};
use crate::record::document::open_draft::OpenDraft;
use crate::record::id::RevisionId;
use crate::record::store::Store;
use crate::record::store::library::{Library, SaveError};

/// Why a save has to be confirmed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SaveQuestion {
    /// The page was opened from an older revision than this one, which was saved or merged meanwhile.
    Behind(RevisionId),
    /// The page has other binders than the revision that it was opened from, as after another binder system was applied.
    OtherBinders(RevisionId),
}

impl SaveQuestion {
    /// The revision that the page is compared with.
    #[must_use]
    pub const fn revision(self) -> RevisionId {
        match self {
            Self::Behind(id) | Self::OtherBinders(id) => id,
        }
    }
}

/// What a save becomes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SaveAs {
    /// The revision that follows the one on the page, where nothing has to be asked.
    Next,
    /// The same, whatever there is to ask: it follows all that was saved after the one on the page.
    OnTop,
    /// The first revision of a new recipe of that name.
    NewRecipe(String),
}

/// What came of a save.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SaveOutcome {
    /// It is in the store.
    Saved(RevisionId),
    /// The page is just as it was saved: there is nothing to save.
    Unchanged,
    /// Nothing was saved.
    Ask(SaveQuestion),
}

impl<S: Store> Library<S> {
    /// Saves what is on the page.
    ///
    /// # Errors
    /// As [`save`](Self::save).
    pub fn save_page(&mut self, page: &OpenDraft, how: SaveAs, stamp: Stamp) -> Result<SaveOutcome, SaveError> {
        let base = page.from.and_then(|id| self.revision(id));
        let (title, draft) = (page.title.clone(), page.draft.clone());
        let revision = match (base, how) {
            (None, SaveAs::Next | SaveAs::OnTop) => Revision::first(title, draft, stamp)?,
            (None, SaveAs::NewRecipe(name)) => {
                let mut title = title;
                title.name = name;
                Revision::first(title, draft, stamp)?
            }
            (Some(base), SaveAs::NewRecipe(name)) => base.copy(name, stamp, title, draft)?,
            (Some(base), how) => {
                if how == SaveAs::Next {
                    if base.content().standing == Standing::Kept && page.says(&base) {
                        return Ok(SaveOutcome::Unchanged);
                    }
                    if let Some(question) = self.save_question(page, &base) {
                        return Ok(SaveOutcome::Ask(question));
                    }
                }
                let mut parents: Vec<RevisionId> =
                    self.heads_after(base.revision()).iter().map(|head| head.summary.id).collect();
                if parents.is_empty() {
                    parents.push(base.revision());
                }
                base.follow(stamp, |content| {
                    content.parents = parents;
                    (content.name, content.note, content.tags) = (title.name, title.note, title.tags);
                    content.draft = draft;
                    // A removed recipe that is saved again is kept again.
                    content.standing = Standing::Kept;
                })?
            }
        };
        self.save(revision).map(SaveOutcome::Saved)
    }

    /// What has to be asked before the page becomes the next revision after `base`.
    fn save_question(&self, page: &OpenDraft, base: &Revision) -> Option<SaveQuestion> {
        if let Some(head) = self.heads_after(base.revision()).first() {
            return Some(SaveQuestion::Behind(head.summary.id));
        }
        let other = other_binders(&base.content().draft, &page.draft);
        other.then(|| SaveQuestion::OtherBinders(base.revision()))
    }
}
