//! How a revision is named: the same on the page, in the library, in the history and on paper.

pub mod differences;
pub mod save_question;

use crate::browser::clock;
use crate::record::content::lineage::Released;
use crate::record::content::revision::Standing;
use crate::record::{RevisionId, Version};
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::text::versions;
use crate::{label, t};
use leptos::prelude::*;

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
pub fn label(seen: &Seen) -> String {
    let label = t!("record-revision", number = seen.number);
    if seen.twin { versions::twin(&label, &seen.author, &exact(seen)) } else { label }
}

/// "Revision 3 · 10:42 · AB · drier straw"; time and initials tell it from another one with that number.
#[must_use]
pub fn line(seen: &Seen) -> String {
    format!("{} · {}", t!("record-revision", number = seen.number), saved(seen, &when(seen.saved_at)))
}

/// "Revision 3" and what the page says of it, as the head of the recipe and of a sheet of paper: a date is never left out.
#[must_use]
pub fn headline(seen: &Seen, is_saved: bool) -> String {
    let number = t!("record-revision", number = seen.number);
    let saved = saved(seen, &clock::date_time(seen.saved_at));
    if is_saved {
        format!("{number} · {}", t!("frame-saved-at", saved = saved))
    } else {
        format!("{number} · {saved} · {}", t!("frame-unsaved-changes"))
    }
}

/// Time, initials, change note and whether the recipe was removed by it: "10:42 · AB · drier straw".
fn saved(seen: &Seen, at: &str) -> String {
    let exact = seen.twin.then(|| exact(seen));
    let removed = if seen.standing == Standing::Removed { label!("record-deleted-mark") } else { "" };
    let parts = [exact.as_deref().unwrap_or(at), seen.author.as_str(), seen.remark.as_str(), removed];
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// To the second: two heads may have been saved within a minute.
fn exact(seen: &Seen) -> String {
    format!("{} {}", clock::date(seen.saved_at), clock::time_exact(seen.saved_at))
}

/// "released by AB, 2026-03-09", or by whom that was withdrawn; `None` where it never was released.
#[must_use]
pub fn release(seen: &Seen) -> Option<String> {
    let Released { by, withdrawn } = seen.released.as_ref()?;
    Some(match withdrawn {
        Some(by) => versions::withdrawn_by(&by.author, &clock::date(by.at)),
        None => versions::released_by(&by.author, &clock::date(by.at)),
    })
}

/// "Revision 3 released by AB, 2026-03-09"
#[must_use]
pub fn released(seen: &Seen) -> Option<String> {
    Some(format!("{} {}", label(seen), release(seen)?))
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
        Memo::new(move |_| state.seen(state.from.get()?))
    }

    /// The revision of the recipe on the page that is released for the line, whichever is open.
    #[must_use]
    pub fn released_of_page(&self) -> Memo<Option<Seen>> {
        let state = *self;
        Memo::new(move |_| {
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
        Memo::new(move |_| {
            let from = state.from.get()?;
            state.library.with(|library| library.heads_after(from).first().map(Seen::from))
        })
    }
}
