//! Copies of the open documents in the database.

use crate::browser::database::{self, Durability, ObjectStore};
use leptos::task::spawn_local;
use std::cell::RefCell;
use std::collections::BTreeMap;
use wasm_bindgen::JsValue;

thread_local! {
    /// Texts of documents on their way to the database; the last one of each.
    static COPIES: RefCell<Copies> = RefCell::default();
}

#[derive(Default)]
struct Copies {
    texts: BTreeMap<&'static str, String>,
    writing: bool,
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
                // Told where it matters: with the small store full, by the warning that is shown already.
                _ = database::write(ObjectStore::Drafts, &writes, Durability::Relaxed).await;
            }
        });
    }
}

/// Waits until all texts of documents are in the database, or have failed to get there.
pub async fn copied() {
    while COPIES.with_borrow(|copies| copies.writing) {
        gloo_timers::future::TimeoutFuture::new(1).await;
    }
}
