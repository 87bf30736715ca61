//! The line of a file or of the library takes the place of the one on the page, which is set aside where it is not saved.

use super::library::Imported;
use crate::browser::hash;
use crate::domain::Draft;
use crate::record::content::kept_line::{KeptLine, LineContent};
use crate::record::content::revision::{Standing, Title};
use crate::record::document::open_draft::OpenDraft;
use crate::record::{KeptLineId, LineCheckFile, LineRecord};
use crate::t;
use crate::ui::route::Page;
use crate::ui::state::State;
use leptos::prelude::*;

impl State {
    /// Opens the line check of a file: its line, and the recipe that it is compared with.
    pub fn import_line(&self, text: &str) -> Imported {
        match LineCheckFile::read(text) {
            Ok(LineCheckFile { name, recipe, line, .. }) => {
                let line = LineRecord { book: line, ..LineRecord::default() };
                self.show_line(name, recipe, line);
                Imported::Opened(Page::Line)
            }
            Err(refusal) => Imported::Refused(refusal),
        }
    }

    /// Opens a line of the library.
    pub fn open_line(&self, id: KeptLineId) {
        if let Some(kept) = self.library.with_untracked(|library| library.line(id)) {
            let LineContent { name, recipe, line, .. } = kept.into_content();
            self.show_line(name, recipe, line);
            self.page.set(Page::Line);
            hash::go(Page::Line.key());
        }
    }

    /// Takes a line out of the library.
    pub fn delete_line(&self, id: KeptLineId) {
        if let Some(deleted) = self.stand_line(id, Standing::Removed) {
            let state = *self;
            let words = t!("record-line-deleted", name = self.called(&deleted.content().name));
            let id = deleted.line();
            self.tell_undo(words, move || _ = state.stand_line(id, Standing::Kept));
        }
    }

    fn stand_line(&self, id: KeptLineId, standing: Standing) -> Option<KeptLine> {
        let kept = self.library.with_untracked(|library| library.line(id))?;
        let stamp = self.stamp();
        self.change_library(|library| {
            let changed = kept.with_standing(standing, stamp)?;
            library.save_line(&changed)?;
            Ok(changed)
        })
    }

    /// Puts a line and its recipe on their pages; what was there and not saved goes into the library first.
    fn show_line(&self, name: String, recipe: Draft, line: LineRecord) {
        let before = self.line.record.get_untracked();
        if self.library.with_untracked(|library| library.is_line_unsaved(&before)) {
            let title = self.title.with_untracked(|title| title.name.clone());
            let draft = self.draft.get_untracked();
            let content = LineContent::new(self.unsaved_work(&title), draft, before, self.stamp());
            _ = self.change_library(|library| library.save_line(&KeptLine::new(content)?));
        }
        let shown = self.called(&name);
        // The same recipe stays as it is, with its revision.
        if self.draft.with_untracked(|draft| *draft != recipe) {
            let title = Title { name, ..Title::default() };
            self.open(OpenDraft { from: None, title, draft: recipe, remark: String::new(), example: false });
        }
        self.line.record.set(line);
        self.tell(t!("record-line-opened", name = shown));
    }
}
