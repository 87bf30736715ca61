//! Telling what went wrong with keeping things.

use crate::browser::graph::*;
use crate::record::store::library::{SaveError, Unread};
use crate::ui::state::{State, StorageProblem, WayOut};
use crate::ui::text::{ENGLISH, Message};
/// That something stored cannot be read; nothing where the store is not there at all.
pub fn unread(why: &Unread, fix: &str) -> Option<StorageProblem> {
    let message = Message { fix: fix.to_owned(), ..(ENGLISH.unread)(why) };
    (!matches!(why, Unread::Store(_))).then_some(StorageProblem { message, way_out: None })
}

pub fn tell_unread(state: State, why: &Unread, fix: &str) {
    if let Some(trouble) = unread(why, fix) {
        state.trouble.set(Some(trouble));
    }
}

pub fn tell_unsaved(state: State, why: &SaveError) {
    let message = (state.words.unsaved)(why);
    state.trouble.set(Some(StorageProblem { message, way_out: None }));
}

/// Tells what is wrong with keeping things, as long as it is, and no longer.
pub fn tell(state: State) {
    let words = state.words;
    let (why, missing) = state.writing.with_value(|writing| (writing.why.clone(), writing.missing));
    let failing = state.documents.with_value(|documents| documents.failing.values().next().cloned());
    let trouble = match (why, failing) {
        (Some(why), _) => Some(StorageProblem { message: (words.store)(&why), way_out: Some(WayOut::AllToFile) }),
        (None, Some(why)) => {
            let message = (words.library_page.draft_only_in_database)(&why);
            Some(StorageProblem { message, way_out: Some(WayOut::ToFile) })
        }
        (None, None) if missing > 0 => {
            let message = Message { what: (ENGLISH.library_page.missing)(missing), fix: String::new() };
            Some(StorageProblem { message, way_out: Some(WayOut::WriteBack) })
        }
        (None, None) => None,
    };
    let before = state.trouble.with_untracked(Clone::clone);
    if trouble == before || trouble.is_none() && before.is_none_or(|before| before.way_out.is_none()) {
        return;
    }
    state.trouble.set(trouble);
}
