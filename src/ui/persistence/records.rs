//! Records and the database: all are read once, after the first paint; what is saved is told once it is on
//! the disk; what other tabs save comes in.

use super::copies::copied;
use super::documents;
use super::trouble::tell;
use crate::browser::database::{self, Durability, ObjectStore};
use crate::browser::{channel, clock, event, page};
use crate::record::{Library, StoreError};
use crate::ui::components::UNDO;
use crate::ui::state::{Notice, State};
use leptos::prelude::*;
use leptos::task::spawn_local;
use serde_json::{Value, json};
use std::time::Duration;
use wasm_bindgen::JsValue;

/// How many records are read whole in one go.
const SLICE_OF_WHOLE: usize = 20;
/// Records are read for so many milliseconds at a time: a key typed meanwhile waits no longer.
const SLICE: u64 = 8;
/// What the database did not take is tried again after so long.
const AGAIN: Duration = Duration::from_secs(5);

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
            state.writing.update_value(|writing| writing.loaded = true);
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
    let take = |found| _ = state.library.with_untracked(|library| library.store().load(found));
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
    if !state.writing.with_value(|writing| writing.loaded) {
        return;
    }
    let outcome = async {
        let keys = database::keys(ObjectStore::Records).await?;
        let (new, missing) =
            state.library.with_untracked(|library| (library.store().unknown(&keys), library.store().compare(&keys)));
        let texts = database::read(ObjectStore::Records, &new).await?;
        let found: Vec<(String, String)> =
            new.into_iter().zip(texts).filter_map(|(key, text)| Some((key, text?.as_string()?))).collect();
        let came = state.library.with_untracked(|library| library.store().load(found));
        Ok((came, missing))
    };
    match outcome.await {
        Ok((came, missing)) => {
            state.writing.update_value(|writing| writing.missing = missing);
            if state.library.with_untracked(|library| library.store().waiting().is_empty()) {
                state.writing.update_value(|writing| writing.why = None);
            } else {
                // The database answers again, and what it did not take is not saved before it is written.
                write(state);
            }
            if came > 0 {
                _ = state.library.try_update(Library::refresh);
            }
        }
        Err(why) => failed(state, why),
    }
    tell(state);
}

/// Reads the records a few at a time, so that nothing waits for them.
fn read_slice(state: State) {
    let began = clock::now();
    let left = state.library.try_update_untracked(|library| {
        let mut keys = library.waiting().unwrap_or_default();
        while clock::now().saturating_sub(began) < SLICE
            && let Some(key) = keys.pop()
        {
            library.take_in(key);
        }
        keys.len()
    });
    if left.is_some_and(|left| left > 0) {
        set_timeout(move || read_slice(state), Duration::ZERO);
    } else {
        state.all_read.set(true);
        state.library.notify();
        verify_slice(state);
    }
}

/// Reads whole what was only glanced at, a few at a time: a record that was damaged shows itself.
fn verify_slice(state: State) {
    let before = state.library.with_untracked(|library| library.unreadable().count());
    let left = state.library.try_update_untracked(|library| library.verify(SLICE_OF_WHOLE)).unwrap_or_default();
    if state.library.with_untracked(|library| library.unreadable().count()) != before {
        state.library.notify();
    }
    if left > 0 {
        set_timeout(move || verify_slice(state), Duration::ZERO);
    }
}

/// Writes all records that the database does not have yet. What is told meanwhile is shown when they are on
/// the disk, and not before.
pub fn write(state: State) {
    let waiting = state.library.with_untracked(|library| library.store().waiting());
    state.unwritten.set(waiting.len());
    let busy = state.writing.with_value(|writing| writing.writing);
    if waiting.is_empty() || busy {
        return;
    }
    state.writing.update_value(|writing| writing.writing = true);
    spawn_local(async move {
        let keys: Vec<String> = waiting.iter().map(|(key, _)| key.clone()).collect();
        let writes: Vec<database::Write> =
            waiting.into_iter().map(|(key, text)| (key, Some(JsValue::from(text)))).collect();
        let outcome = database::write(ObjectStore::Records, &writes, Durability::Strict).await;
        state.writing.update_value(|writing| writing.writing = false);
        match outcome {
            Ok(()) => {
                let left = state.library.with_untracked(|library| {
                    library.store().written(keys);
                    library.store().waiting().len()
                });
                state.unwritten.set(left);
                state.writing.update_value(|writing| writing.why = None);
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
    state.writing.with_value(|writing| writing.writing)
}

/// Shows what was told meanwhile.
fn release(state: State) {
    let mut notice = None::<Notice>;
    state.held.update_value(|held| notice = held.take());
    if notice.is_some() {
        state.notice.set(notice);
    }
    if state.writing.with_value(|writing| writing.focus_undo) {
        state.writing.update_value(|writing| writing.focus_undo = false);
        focus_undo(state);
    }
}

/// What the focus was on is gone: it goes to the button that takes that back.
pub fn focus_undo(state: State) {
    if is_writing(state) {
        state.writing.update_value(|writing| writing.focus_undo = true);
    } else {
        request_animation_frame(|| page::focus(UNDO));
    }
}

fn try_again(state: State) {
    if state.writing.with_value(|writing| writing.waiting) {
        return;
    }
    state.writing.update_value(|writing| writing.waiting = true);
    set_timeout(
        move || {
            state.writing.update_value(|writing| writing.waiting = false);
            if state.writing.with_value(|writing| writing.why.is_none()) {
                return;
            }
            write(state);
            if !state.writing.with_value(|writing| writing.loaded) {
                spawn_local(load(state));
            }
        },
        AGAIN,
    );
}

/// Has what the database has lost written again.
pub fn write_back(state: State) -> usize {
    let count = state.library.with_untracked(|library| library.store().write_back());
    state.writing.update_value(|writing| writing.missing = 0);
    write(state);
    tell(state);
    count
}

fn failed(state: State, why: StoreError) {
    state.writing.update_value(|writing| writing.why = Some(why));
    tell(state);
}
