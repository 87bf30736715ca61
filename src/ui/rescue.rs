//! After a fault of the program: everything that is kept goes to a file, and nothing else is started.

use super::persistence::records;
use super::text::ENGLISH;
use crate::browser::element::{self, Part, View, button, el};
use crate::browser::graph::*;
use crate::browser::{LocalStore, file, hash};
use crate::record::store::library::PREFIX;
use crate::record::{Cache, Library, Store};
use crate::ui::signal::RwSignal;

/// The part of the address behind `#` that asks for it.
pub const HASH: &str = "rescue";

/// Puts the page into the body.
pub fn mount() {
    element::mount(page);
}

fn page() -> View {
    let words = &ENGLISH.rescue;
    let said = RwSignal::new(words.reading.to_owned());
    let save = move || {
        spawn_local(async move {
            let told = match gathered().await {
                Ok((text, count)) => {
                    let name = format!("{}.json", ENGLISH.library_page.library_name);
                    match file::give_out(&name, "application/json", &text) {
                        Ok(()) => (words.saved)(count, &name),
                        Err(own) => own,
                    }
                }
                Err(own) => own,
            };
            said.set(told);
        });
    };
    save();
    let again = || {
        hash::replace("recipe");
        _ = window().location().reload();
    };
    el("main")
        .set("id", "stopped")
        .child(el("h1").child(words.title))
        .child(el("p").set("role", "status").child(move || said.get()))
        .child(button().on_click(save).child(ENGLISH.library_page.save_library))
        .child(button().on_click(again).child(words.again))
        .view()
}

/// A library file of all records and open documents, and how many records they are.
async fn gathered() -> Result<(String, usize), String> {
    let cache = Cache::new(LocalStore);
    let mut documents = Vec::new();
    for key in LocalStore.keys().unwrap_or_default().into_iter().filter(|key| key.starts_with(PREFIX)) {
        if let Ok(Some(text)) = LocalStore.read(&key) {
            documents.push((key, text));
        }
    }
    let found = records::all().await;
    let wrong = found.as_ref().err().map(|why| (ENGLISH.store)(why).what);
    let (copies, texts) = found.unwrap_or_default();
    cache.load(texts);
    documents.extend(copies);
    let (text, count) = Library::blank(cache).everything_file(&documents).map_err(|why| (ENGLISH.store)(&why).what)?;
    // What there is goes to the file all the same.
    match wrong {
        Some(wrong) if documents.is_empty() => Err(wrong),
        _ => Ok((text, count)),
    }
}
