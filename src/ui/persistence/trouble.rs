//! Telling what went wrong with keeping things.

use crate::record::store::library::{SaveError, Unread};
use crate::t;
use crate::ui::state::{About, State, StorageProblem, WayOut};
use crate::ui::text::{Message, library, words};
use leptos::prelude::*;

/// That something stored cannot be read; nothing where the store is not there at all.
pub fn unread(why: &Unread, fix: &str) -> Option<StorageProblem> {
    let message = Message { fix: fix.to_owned(), ..words::unread(why) };
    (!matches!(why, Unread::Store(_))).then_some(StorageProblem { message, way_out: None, about: About::Start })
}

pub fn tell_unread(state: State, why: &Unread, fix: &str) {
    if let Some(trouble) = unread(why, fix) {
        state.trouble.set(Some(trouble));
    }
}

pub fn tell_unsaved(state: State, why: &SaveError) {
    tell_message(state, About::Save, words::unsaved(why));
}

pub fn tell_not_exported(state: State, why: &SaveError) {
    tell_message(state, About::Export, words::unsaved(why));
}

pub fn tell_message(state: State, about: About, message: Message) {
    state.trouble.set(Some(StorageProblem { message, way_out: None, about }));
}

/// What this is about has gone well: what was told of it before is no longer true.
pub fn settled(state: State, about: About) {
    if state.trouble.with_untracked(|told| told.as_ref().is_some_and(|told| told.about == about)) {
        state.trouble.set(None);
        // What it was shown instead of is told again, if it is still true.
        tell(state);
    }
}

/// Tells what is wrong with keeping things, as long as it is, and no longer.
pub fn tell(state: State) {
    let (why, missing) = state.writing.with_value(|writing| (writing.why.clone(), writing.missing));
    let failing = state.documents.with_value(|documents| documents.failing.values().next().cloned());
    let trouble = match (why, failing) {
        (Some(why), _) => {
            Some(StorageProblem { message: words::store(&why), way_out: Some(WayOut::AllToFile), about: About::Stores })
        }
        (None, Some(why)) => {
            let message = library::only_in_database(&why);
            Some(StorageProblem { message, way_out: Some(WayOut::ToFile), about: About::Stores })
        }
        (None, None) if missing > 0 => {
            let message =
                Message { what: t!("record-missing", records = library::records(missing)), fix: String::new() };
            Some(StorageProblem { message, way_out: Some(WayOut::WriteBack), about: About::Stores })
        }
        (None, None) => None,
    };
    let before = state.trouble.with_untracked(Clone::clone);
    if trouble == before || trouble.is_none() && before.is_none_or(|before| before.about != About::Stores) {
        return;
    }
    state.trouble.set(trouble);
}
