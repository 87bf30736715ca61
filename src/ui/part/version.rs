//! How a revision is named: the same on the page, in the library, in the history and on paper.

use crate::browser::clock;
use crate::record::content::lineage::Released;
use crate::record::content::revision::Standing;
use crate::record::{RevisionId, Version};
use crate::ui::part::save::when;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;

/// A revision as it is shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Seen {
    /// The revision.
    pub id: RevisionId,
    /// Its number within the recipe.
    pub number: u32,
    /// Whether another revision of the recipe has the number too.
    pub twin: bool,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub saved_at: u64,
    /// The author's initials.
    pub author: String,
    /// Why it was saved, in the author's words.
    pub remark: String,
    /// Whether it keeps the recipe or removes it.
    pub standing: Standing,
    /// Its last release.
    pub released: Option<Released>,
}

impl From<&Version<'_>> for Seen {
    fn from(version: &Version<'_>) -> Self {
        let summary = version.summary;
        Self {
            id: summary.id,
            number: version.number,
            twin: version.twin,
            saved_at: summary.saved_at,
            author: summary.author.clone(),
            remark: summary.remark.clone(),
            standing: summary.standing,
            released: version.released.clone(),
        }
    }
}

/// "Revision 3"; where another one has that number, with initials and time.
#[must_use]
pub fn label(state: State, seen: &Seen) -> String {
    let words = &state.words.versions;
    let label = (words.revision)(seen.number);
    if seen.twin {
        let at = format!("{} {}", clock::date(seen.saved_at), clock::time_exact(seen.saved_at));
        (words.twin)(&label, &seen.author, &at)
    } else {
        label
    }
}

/// "Revision 3 · 10:42 · JK · drier straw"
#[must_use]
pub fn line(state: State, seen: &Seen) -> String {
    format!("{} · {}", label(state, seen), saved(state, seen, &when(seen.saved_at)))
}

/// Time, initials, change note and whether the recipe was removed by it: "10:42 · JK · drier straw".
#[must_use]
pub fn saved(state: State, seen: &Seen, at: &str) -> String {
    let removed = if seen.standing == Standing::Removed { state.words.library_page.removed_mark } else { "" };
    let parts = [at, seen.author.as_str(), seen.remark.as_str(), removed];
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// "released by JK, 2026-03-09", or by whom that was withdrawn; `None` where it never was released.
#[must_use]
pub fn release(state: State, seen: &Seen) -> Option<String> {
    let words = &state.words.versions;
    let Released { by, withdrawn } = seen.released.as_ref()?;
    Some(match withdrawn {
        Some(by) => (words.withdrawn_by)(&by.author, &clock::date(by.at)),
        None => (words.released_by)(&by.author, &clock::date(by.at)),
    })
}

/// "Revision 3 released by JK, 2026-03-09"
#[must_use]
pub fn released(state: State, seen: &Seen) -> Option<String> {
    Some(format!("{} {}", label(state, seen), release(state, seen)?))
}

impl State {
    /// A revision of the library; `None` where it is not there. Follows the library.
    #[must_use]
    pub fn seen(&self, id: RevisionId) -> Option<Seen> {
        self.library.with(|library| library.version(id).as_ref().map(Seen::from))
    }

    /// The revision that the recipe on the page came from.
    #[must_use]
    pub fn seen_on_page(&self) -> Memo<Option<Seen>> {
        let state = *self;
        memo(move || state.seen(state.from.get()?))
    }

    /// The revision of the recipe on the page that is released for the line, whichever is open.
    #[must_use]
    pub fn released_of_page(&self) -> Memo<Option<Seen>> {
        let state = *self;
        memo(move || {
            let from = state.from.get()?;
            state.library.with(|library| {
                let recipe = library.version(from)?.summary.recipe;
                library.recipe(recipe)?.released.as_ref().map(Seen::from)
            })
        })
    }

    /// The latest revision that was saved after the one on the page; `None` where the page is not behind.
    #[must_use]
    pub fn newer_than_page(&self) -> Memo<Option<Seen>> {
        let state = *self;
        memo(move || {
            let from = state.from.get()?;
            state.library.with(|library| library.heads_after(from).first().map(Seen::from))
        })
    }
}
