//! Files taken in, how much room there is, and when something last went to a file.

use crate::browser::file::{self, ReadFileError};
use crate::browser::storage;
use crate::domain::Grade;
use crate::record::file::LARGEST;
use crate::ui::keep::Imported;
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::state::{State, state};
use crate::ui::text::{Carrier, Message};
use leptos::prelude::*;
use leptos::task::spawn_local;

/// The section.
pub fn files() -> AnyView {
    let state = state();
    let page = &state.words.shelf_page;
    let refused = RwSignal::new(None::<Message>);
    let take = move |event: leptos::ev::Event| {
        let Some(chosen) = file::chosen(&event_target(&event)) else { return };
        refused.set(None);
        spawn_local(async move {
            let name = chosen.name();
            let text = file::read_text(&chosen, LARGEST as u64).await;
            refused.set(taken(state, text, &name));
        });
    };
    let says = move || {
        refused.get().map(|Message { what, mend }| {
            view! { <p class="finding stop">{mark(Grade::Stop)} " " <strong>{what}</strong> " " {mend}</p> }
        })
    };
    let copied = move || match state.settings.with(|settings| settings.copied_at) {
        Some(at) => format!("{} {}.", page.last_copy, when(at)),
        None => page.never_copied.to_owned(),
    };
    let room = move || (page.room)(state.shelf.with(|shelf| shelf.size()));
    let ask = move |_| {
        spawn_local(async move {
            let kept = storage::ask_for_persistence().await == Some(true);
            state.tell(if kept { page.persisted } else { page.not_persisted });
        });
    };
    view! {
        <section class="files" aria-label=page.files>
            <h2>{page.files}</h2>
            <div class="actions">
                <input id="import" class="out-of-sight" type="file" accept=".json,application/json" aria-describedby="import-says" on:change=take/>
                <label class="button" for="import">{page.choose_file}</label>
                <button type="button" on:click=ask>{page.persist}</button>
            </div>
            <div id="import-says" role="alert">{says}</div>
            <p>{page.copy_hint} " " {copied}</p>
            <p>{room}</p>
        </section>
    }
    .into_any()
}

/// Puts a file on the shelf; why not, if it does not go there.
fn taken(state: State, text: Result<String, ReadFileError>, file_name: &str) -> Option<Message> {
    let page = &state.words.shelf_page;
    let text = match text {
        Ok(text) => text,
        Err(ReadFileError::TooLarge { bytes, limit }) => return Some((page.file_too_large)(bytes, limit)),
        Err(ReadFileError::Unreadable(own)) => return Some((page.file_unreadable)(&own)),
    };
    // "straw-15.haulm.json" is called "straw-15".
    let stem = file_name.split('.').next().unwrap_or_default();
    match state.import(&text, stem) {
        Imported::Refused(refusal) => Some((state.words.refusal)(&refusal, Carrier::File)),
        Imported::Kept | Imported::NotKept => None,
    }
}
