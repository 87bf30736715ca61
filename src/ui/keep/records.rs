//! Records and the database: all are read once, after the first paint; what is saved is told once it is on
//! the disk; what other tabs save comes in.

use super::documents;
use crate::browser::database::{self, Durability, ObjectStore};
use crate::browser::graph::*;
use crate::browser::{channel, clock, event, page};
use crate::record::{Shelf, StoreError};
use crate::ui::part::announce::UNDO;
use crate::ui::state::{Notice, State, Trouble, WayOut};
use crate::ui::text::{ENGLISH, Message};
use serde_json::{Value, json};
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::time::Duration;
use wasm_bindgen::JsValue;

/// How many records are read whole in one go.
const SLICE_OF_WHOLE: usize = 20;
/// Records are read for so many milliseconds at a time: a key typed meanwhile waits no longer.
const SLICE: u64 = 8;
/// What the database did not take is tried again after so long.
const AGAIN: Duration = Duration::from_secs(5);

/// How the records in memory and the database stand to each other.
#[derive(Debug, Clone, Default)]
pub struct Standing {
    /// Being written.
    writing: bool,
    /// All that the database had at the start is in memory.
    loaded: bool,
    /// Records that the database has lost.
    missing: usize,
    /// The button that takes back what is told gets the focus as soon as it is there.
    focus_undo: bool,
    /// Something will be tried again.
    waiting: bool,
    /// Why it took or gave nothing the last time.
    why: Option<StoreError>,
}

thread_local! {
    /// Texts of documents on their way to the database; the last one of each.
    static COPIES: RefCell<Copies> = RefCell::default();
}

#[derive(Default)]
struct Copies {
    texts: BTreeMap<&'static str, String>,
    writing: bool,
}

/// Reads all records, and keeps memory and database the same from now on.
pub fn follow(state: State) {
    spawn_local(load(state));
    channel::on_message(move |text| {
        let Ok(message) = serde_json::from_str::<Value>(&text) else { return };
        if message["records"] == true {
            spawn_local(refresh(state));
        } else {
            documents::hear(state, &message);
        }
    });
    if let Some(listener) = event::on_return(move || {
        write(state);
        spawn_local(refresh(state));
    }) {
        listener.forget();
    }
}

/// Waits until all records are in memory, or the database has failed to give them.
pub async fn loaded(state: State) {
    while state.all_read.try_with_untracked(|read| !read) == Some(true) {
        gloo_timers::future::TimeoutFuture::new(10).await;
    }
}

async fn load(state: State) {
    match fetch(state).await {
        Ok(()) => {
            state.standing.update_value(|standing| standing.loaded = true);
            read_slice(state);
        }
        Err(why) => {
            failed(state, why);
            state.all_read.set(true);
            try_again(state);
        }
    }
}

/// Everything that the database has. First the documents: what was typed in the seconds before the browser was
/// killed never reached the small store.
async fn fetch(state: State) -> Result<(), StoreError> {
    for (key, text) in database::texts(ObjectStore::Drafts, None).await? {
        documents::bring_back(state, &key, &text);
    }
    let take = |found| _ = state.shelf.with_untracked(|shelf| shelf.store().load(found));
    fetch_records(take).await
}

async fn fetch_records(mut take: impl FnMut(Vec<Text>)) -> Result<(), StoreError> {
    let mut last = None::<String>;
    loop {
        let found = database::texts(ObjectStore::Records, last.as_deref()).await?;
        let Some((key, _)) = found.last() else { return Ok(()) };
        last = Some(key.clone());
        take(found);
    }
}

/// A text with its key.
type Text = (String, String);

/// The documents that the database has, and its records.
///
/// # Errors
/// When it is not there, or does not answer.
pub async fn all() -> Result<(Vec<Text>, Vec<Text>), StoreError> {
    let documents = database::texts(ObjectStore::Drafts, None).await?;
    let mut records = Vec::new();
    fetch_records(|found| records.extend(found)).await?;
    Ok((documents, records))
}

/// Looks at what the database has, such as what another tab has saved.
async fn refresh(state: State) {
    if !state.standing.with_value(|standing| standing.loaded) {
        return;
    }
    let outcome = async {
        let keys = database::keys(ObjectStore::Records).await?;
        let (new, missing) =
            state.shelf.with_untracked(|shelf| (shelf.store().unknown(&keys), shelf.store().compare(&keys)));
        let texts = database::read(ObjectStore::Records, &new).await?;
        let found: Vec<(String, String)> =
            new.into_iter().zip(texts).filter_map(|(key, text)| Some((key, text?.as_string()?))).collect();
        let came = state.shelf.with_untracked(|shelf| shelf.store().load(found));
        Ok((came, missing))
    };
    match outcome.await {
        Ok((came, missing)) => {
            state.standing.update_value(|standing| (standing.why, standing.missing) = (None, missing));
            if came > 0 {
                _ = state.shelf.try_update(Shelf::refresh);
            }
        }
        Err(why) => failed(state, why),
    }
    tell(state);
}

/// Reads the records a few at a time, so that nothing waits for them.
fn read_slice(state: State) {
    let began = clock::now();
    let left = state.shelf.try_update_untracked(|shelf| {
        let mut keys = shelf.waiting().unwrap_or_default();
        while clock::now().saturating_sub(began) < SLICE
            && let Some(key) = keys.pop()
        {
            shelf.take_in(key);
        }
        keys.len()
    });
    if left.is_some_and(|left| left > 0) {
        set_timeout(move || read_slice(state), Duration::ZERO);
    } else {
        state.all_read.set(true);
        state.shelf.notify();
        verify_slice(state);
    }
}

/// Reads whole what was only glanced at, a few at a time: a record that was damaged shows itself.
fn verify_slice(state: State) {
    let before = state.shelf.with_untracked(|shelf| shelf.unreadable().count());
    let left = state.shelf.try_update_untracked(|shelf| shelf.verify(SLICE_OF_WHOLE)).unwrap_or_default();
    if state.shelf.with_untracked(|shelf| shelf.unreadable().count()) != before {
        state.shelf.notify();
    }
    if left > 0 {
        set_timeout(move || verify_slice(state), Duration::ZERO);
    }
}

/// Writes all records that the database does not have yet. What is told meanwhile is shown when they are on
/// the disk, and not before.
pub fn write(state: State) {
    let waiting = state.shelf.with_untracked(|shelf| shelf.store().waiting());
    state.unwritten.set(waiting.len());
    let busy = state.standing.with_value(|standing| standing.writing);
    if waiting.is_empty() || busy {
        return;
    }
    state.standing.update_value(|standing| standing.writing = true);
    spawn_local(async move {
        let keys: Vec<String> = waiting.iter().map(|(key, _)| key.clone()).collect();
        let writes: Vec<database::Write> =
            waiting.into_iter().map(|(key, text)| (key, Some(JsValue::from(text)))).collect();
        let outcome = database::write(ObjectStore::Records, &writes, Durability::Strict).await;
        state.standing.update_value(|standing| standing.writing = false);
        match outcome {
            Ok(()) => {
                let left = state.shelf.with_untracked(|shelf| {
                    shelf.store().written(keys);
                    shelf.store().waiting().len()
                });
                state.unwritten.set(left);
                state.standing.update_value(|standing| standing.why = None);
                channel::post(&json!({ "records": true }).to_string());
                tell(state);
                if left > 0 {
                    write(state);
                } else {
                    copied().await;
                    release(state);
                    // The database may be a new one.
                    refresh(state).await;
                }
            }
            Err(why) => {
                state.held.set_value(None);
                failed(state, why);
                try_again(state);
            }
        }
    });
}

/// Whether records are being written just now.
pub fn is_writing(state: State) -> bool {
    state.standing.with_value(|standing| standing.writing)
}

/// Shows what was told meanwhile.
fn release(state: State) {
    let mut notice = None::<Notice>;
    state.held.update_value(|held| notice = held.take());
    if notice.is_some() {
        state.notice.set(notice);
    }
    if state.standing.with_value(|standing| standing.focus_undo) {
        state.standing.update_value(|standing| standing.focus_undo = false);
        focus_undo(state);
    }
}

/// What the focus was on is gone: it goes to the button that takes that back.
pub fn focus_undo(state: State) {
    if is_writing(state) {
        state.standing.update_value(|standing| standing.focus_undo = true);
    } else {
        request_animation_frame(|| page::focus(UNDO));
    }
}

/// Waits until all texts of documents are in the database, or have failed to get there.
async fn copied() {
    while COPIES.with_borrow(|copies| copies.writing) {
        gloo_timers::future::TimeoutFuture::new(1).await;
    }
}

fn try_again(state: State) {
    if state.standing.with_value(|standing| standing.waiting) {
        return;
    }
    state.standing.update_value(|standing| standing.waiting = true);
    set_timeout(
        move || {
            state.standing.update_value(|standing| standing.waiting = false);
            if state.standing.with_value(|standing| standing.why.is_none()) {
                return;
            }
            write(state);
            if !state.standing.with_value(|standing| standing.loaded) {
                spawn_local(load(state));
            }
        },
        AGAIN,
    );
}

/// Has what the database has lost written again.
pub fn write_back(state: State) -> usize {
    let count = state.shelf.with_untracked(|shelf| shelf.store().write_back());
    state.standing.update_value(|standing| standing.missing = 0);
    write(state);
    tell(state);
    count
}

fn failed(state: State, why: StoreError) {
    state.standing.update_value(|standing| standing.why = Some(why));
    tell(state);
}

/// Tells what is wrong with keeping things, as long as it is, and no longer.
pub fn tell(state: State) {
    let words = state.words;
    let (why, missing) = state.standing.with_value(|standing| (standing.why.clone(), standing.missing));
    let failing = state.documents.with_value(|documents| documents.failing.values().next().cloned());
    let trouble = match (why, failing) {
        (Some(why), _) => Some(Trouble { message: (words.store)(&why), way_out: Some(WayOut::AllToFile) }),
        (None, Some(why)) => {
            let message = (words.shelf_page.draft_only_in_database)(&why);
            Some(Trouble { message, way_out: Some(WayOut::ToFile) })
        }
        (None, None) if missing > 0 => {
            let message = Message { what: (ENGLISH.shelf_page.missing)(missing), mend: String::new() };
            Some(Trouble { message, way_out: Some(WayOut::WriteBack) })
        }
        (None, None) => None,
    };
    let before = state.trouble.with_untracked(Clone::clone);
    if trouble == before || trouble.is_none() && before.is_none_or(|before| before.way_out.is_none()) {
        return;
    }
    state.trouble.set(trouble);
}

/// Puts a document into the database as well, soon: local storage has little room, and is on the disk only
/// seconds later.
pub fn copy(key: &'static str, text: String) {
    let begun = COPIES.with_borrow_mut(|copies| {
        copies.texts.insert(key, text);
        !std::mem::replace(&mut copies.writing, true)
    });
    if begun {
        spawn_local(async {
            loop {
                let texts = COPIES.with_borrow_mut(|copies| {
                    let texts = std::mem::take(&mut copies.texts);
                    copies.writing = !texts.is_empty();
                    texts
                });
                if texts.is_empty() {
                    return;
                }
                let writes: Vec<database::Write> =
                    texts.into_iter().map(|(key, text)| (key.to_owned(), Some(JsValue::from(text)))).collect();
                // Told where it matters: with the small store full, by the warning that stands already.
                _ = database::write(ObjectStore::Drafts, &writes, Durability::Relaxed).await;
            }
        });
    }
}
