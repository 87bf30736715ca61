//! After a fault of the program: everything that is kept goes to a file, and nothing else is started.

use crate::browser::{LocalStore, file, hash, page};
use crate::record::store::library::PREFIX;
use crate::record::{Cache, Library, Store};
use crate::t;
use crate::ui::persistence::records;
use crate::ui::text::{library, words};
use leptos::prelude::*;
use leptos::task::spawn_local;

/// The part of the address behind `#` that asks for it.
pub const HASH: &str = "rescue";

/// Puts the page into the body.
pub fn mount() {
    mount_to_body(Rescue);
}

#[component]
fn Rescue() -> impl IntoView {
    let said = RwSignal::new(t!("record-rescue-reading"));
    let save = move || {
        spawn_local(async move {
            let told = match gathered().await {
                Ok((text, count)) => {
                    let name = format!("{}.json", t!("record-library-file"));
                    match file::give_out(&name, "application/json", &text) {
                        Ok(()) => t!("record-rescue-exported", records = library::records(count), file = name),
                        Err(own) => own,
                    }
                }
                Err(own) => own,
            };
            said.set(told);
        });
    };
    save();
    let again = |_| {
        hash::replace("recipe");
        page::reload();
    };
    view! {
        <main id="stopped">
            <h1>{t!("record-rescue-title")}</h1>
            <p role="status">{move || said.get()}</p>
            <button type="button" on:click=move |_| save()>{t!("record-export-library")}</button>
            <button type="button" on:click=again>{t!("record-rescue-again")}</button>
        </main>
    }
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
    let wrong = found.as_ref().err().map(|why| words::store(why).what);
    let (copies, texts) = found.unwrap_or_default();
    cache.load(texts);
    documents.extend(copies);
    let (text, count) = Library::blank(cache).everything_file(&documents).map_err(|why| words::store(&why).what)?;
    // What there is goes to the file all the same.
    match wrong {
        Some(wrong) if documents.is_empty() => Err(wrong),
        _ => Ok((text, count)),
    }
}
