//! What the parts of the page share beside the app's state.

use super::rows::Found;
use crate::browser::{hash, page};
use crate::domain::Grade;
use crate::record::RecipeId;
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::route::Page;
use crate::ui::state::State;
use crate::ui::text::Message;
use leptos::prelude::*;
use std::time::Duration;

/// So many recipes are shown at first, and so many more each time that more are asked for. A
/// thousand rows nobody looks at would cost more than finding them.
pub const AT_ONCE: usize = 25;
/// Of them, those made before the first paint: a desk's screen has room for so many. The others come with what takes time.
pub const IN_SIGHT: usize = 18;
/// A backup older than this is warned of, in days, where something has changed since.
pub const OLD_BACKUP: u64 = 30;

/// What takes time begins so long after the page is shown.
const SHOWN: Duration = Duration::from_millis(300);

/// What is open below the row of a recipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RowPanel {
    /// What can be done with the recipe.
    Actions,
    /// The box for another name.
    Rename,
    /// All its saves.
    History,
}

/// What the parts of the page share.
#[derive(Clone, Copy)]
pub struct LibraryContext {
    /// What is searched for.
    pub query: RwSignal<String>,
    /// Whether only recipes are listed of which a revision is released.
    pub only_released: RwSignal<bool>,
    /// So many rows are shown.
    pub most: RwSignal<usize>,
    /// What was found.
    pub found: Memo<Found>,
    /// The recipe whose row is open, and what is open below it.
    pub open: RwSignal<Option<(RecipeId, RowPanel)>>,
    /// When each trial was saved; known a moment after the page is shown, as each has to be read.
    pub trials: RwSignal<Vec<u64>>,
}

impl LibraryContext {
    /// Adds the rows that were not in sight, once the page is shown.
    pub fn follow_rows(self) {
        set_timeout(move || _ = self.most.try_update(|most| *most = (*most).max(AT_ONCE)), SHOWN);
    }

    /// Reads the trials once the page is shown, and whenever the library has changed.
    pub fn follow_trials(self, state: State) {
        Effect::new(move |_| {
            state.library.track();
            let read = move || {
                let trials = state.library.with_untracked(|library| library.trials());
                let times =
                    trials.map(|trials| trials.kept().map(|trial| trial.content().saved_at).collect::<Vec<_>>());
                _ = self.trials.try_set(times.unwrap_or_default());
            };
            set_timeout(read, SHOWN);
        });
    }

    /// The lines of the warning slot, the gravest first.
    pub fn lines(self, state: State) -> Vec<SlotLine> {
        let line = |grade: Grade, words: String, show: Option<Callback<()>>| SlotLine {
            grade,
            word: if grade == Grade::Stop { t!("common-error") } else { t!("common-warning") },
            words,
            show,
        };
        let unreadable = state.library.with(|library| library.unreadable().count());
        let aside = state.aside().len();
        let show_stored = Callback::new(move |()| to_stored(state));
        let mut lines = Vec::new();
        if let Some(Message { what, fix }) = state.refused.get() {
            lines.push(line(Grade::Stop, format!("{what} {fix}"), None));
        }
        if unreadable > 0 {
            lines.push(line(Grade::Stop, t!("library-some-unreadable", count = unreadable), Some(show_stored)));
        }
        if aside > 0 {
            lines.push(line(Grade::Unusual, t!("library-some-aside", count = aside), Some(show_stored)));
        }
        let (conflicts, changed, days) = self.found.with(|found| {
            let days = state.settings.with(|settings| settings.copied_at).map(days_ago);
            (found.conflicts.clone(), found.changed, days)
        });
        for (recipe, name) in conflicts {
            let show = Callback::new(move |()| self.show_row(state, recipe));
            let name = state.called(&name);
            lines.push(line(Grade::Unusual, t!("library-conflict-of", name = name), Some(show)));
        }
        if changed > 0
            && let Some(days) = days.filter(|days| *days >= OLD_BACKUP)
        {
            lines.push(line(Grade::Unusual, t!("library-backup-old", days = days), None));
        }
        lines
    }

    /// Shows the row of a recipe with what can be done about it.
    fn show_row(self, state: State, recipe: RecipeId) {
        go(state, Page::Library);
        self.query.set(String::new());
        self.only_released.set(false);
        self.most.set(usize::MAX);
        self.open.set(Some((recipe, RowPanel::Actions)));
        request_animation_frame(move || page::focus(&more_button(recipe)));
    }
}

/// Whole days since a time.
pub fn days_ago(at: u64) -> u64 {
    crate::browser::clock::now().saturating_sub(at) / 86_400_000
}

/// The id of the button that opens what can be done with a recipe.
pub fn more_button(recipe: RecipeId) -> String {
    format!("more-{recipe}")
}

/// Shows a page, also after a reload.
pub fn go(state: State, to: Page) {
    state.page.set(to);
    hash::go(to.key());
}

fn to_stored(state: State) {
    go(state, Page::Library);
    request_animation_frame(|| page::show("#stored"));
}
