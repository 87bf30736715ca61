//! Whether the trial on the page holds work that the library does not have.

use crate::domain::trial::SheetDraft;
use crate::domain::trial::weigh_sheet::example::example_sheet;
use crate::record::content::revision::Standing;
use crate::record::content::trial::{OpenTrial, TrialContent};
use crate::record::store::Store;
use crate::record::store::library::Library;

impl TrialContent {
    /// The same without who saved it, when, and over what.
    fn work(&self) -> Self {
        Self { replaces: None, saved_at: 0, author: String::new(), standing: Standing::Kept, ..self.clone() }
    }

    /// A new trial of the same recipe with the same weigh sheet.
    fn begun_anew(&self) -> Self {
        let blank = Self::of(self.recipe_name.clone(), self.draft.clone(), None);
        Self { recipe: self.recipe, revision: self.revision, sheet: self.sheet.clone(), ..blank }
    }
}

/// Whether a weigh sheet is as at first: blank or the example, whatever the laboratory, which is kept by itself.
fn says_nothing(sheet: &SheetDraft) -> bool {
    [SheetDraft::default(), example_sheet()].into_iter().any(|first| {
        let mut own = sheet.clone();
        own.use_lab(&first);
        own == first
    })
}

impl<S: Store> Library<S> {
    /// Whether a trial would lose something if another one took its place: what was typed is in no trial of the library, and is more
    /// than a recipe and a weigh sheet that is as at first or as in a saved trial. Where the library cannot be read, it would.
    #[must_use]
    pub fn is_unsaved(&self, open: &OpenTrial) -> bool {
        let work = open.trial.work();
        let opened = open.from.and_then(|id| self.trial(id).ok().flatten());
        if opened.is_some_and(|saved| saved.content().work() == work) {
            return false;
        }
        let blank = work == work.begun_anew();
        if blank && says_nothing(&work.sheet) {
            return false;
        }
        let there = |saved: &TrialContent| if blank { saved.sheet == work.sheet } else { saved.work() == work };
        !self.trials().is_ok_and(|trials| trials.kept().any(|saved| there(saved.content())))
    }
}
