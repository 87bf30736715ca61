//! Files and links that come in.

use super::context::go;
use crate::browser::file::{self, ChosenFile, ReadFileError};
use crate::record::file::library::LARGEST;
use crate::t;
use crate::ui::persistence::trouble::tell_message;
use crate::ui::persistence::{self, Imported};
use crate::ui::route::Page;
use crate::ui::state::{About, State};
use crate::ui::text::library::{file_too_large, file_unreadable};
use crate::ui::text::{Carrier, Message, words};
use leptos::ev::{Event, KeyboardEvent};
use leptos::prelude::*;
use leptos::task::spawn_local;

/// The button that opens the browser's dialog. Why a file was refused is in the warning slot.
#[component]
pub fn ImportButton() -> impl IntoView {
    let state = expect_context::<State>();
    let take = move |event: Event| {
        let Some(chosen) = file::chosen(&event_target(&event)) else { return };
        state.refused.set(None);
        spawn_local(async move {
            match taken(state, chosen).await {
                Ok(Page::Library) => {}
                Ok(page) => go(state, page),
                Err(message) => state.refused.set(Some(message)),
            }
        });
    };
    let says = move || state.refused.get().map(|Message { what, fix }| format!("{what} {fix}"));
    view! {
        <input
            id="import"
            class="out-of-sight"
            type="file"
            accept=".json,application/json"
            aria-describedby="import-says"
            on:change=take
        />
        <label class="button" for="import">{t!("library-import")}</label>
        <p class="out-of-sight" id="import-says" role="alert">{says}</p>
    }
}

/// The box for a link that came by mail or was read by a camera.
#[component]
pub fn LinkBox() -> impl IntoView {
    let state = expect_context::<State>();
    let text = RwSignal::new(String::new());
    let open = move || {
        let link = text.get_untracked();
        if !link.trim().is_empty() {
            persistence::link::open(state, link);
        }
    };
    let enter = move |event: KeyboardEvent| {
        if event.key() == "Enter" {
            open();
        }
    };
    view! {
        <div class="labelled">
            <label for="paste-link">{t!("library-link")}</label>
            <span class="entry-box">
                <input
                    id="paste-link"
                    class="words"
                    type="text"
                    autocomplete="off"
                    spellcheck="false"
                    on:input=move |event| text.set(event_target_value(&event))
                    on:keydown=enter
                />
            </span>
        </div>
        <button type="button" on:click=move |_| open()>{t!("library-open-link")}</button>
    }
}

/// A file was dropped on the page: it goes where one goes that is chosen here.
pub fn dropped(state: State, file: ChosenFile) {
    spawn_local(async move {
        match taken(state, file).await {
            Err(message) => tell_message(state, About::Import, message),
            Ok(page) => go(state, page),
        }
    });
}

/// Puts a file in the library or opens it; the page that has it now.
///
/// # Errors
/// Why not.
async fn taken(state: State, file: ChosenFile) -> Result<Page, Message> {
    let text = file::read_text(&file, LARGEST as u64).await;
    let file_name = file.name();
    let text = match text {
        Ok(text) => text,
        Err(ReadFileError::TooLarge { bytes, limit }) => return Err(file_too_large(bytes, limit)),
        Err(ReadFileError::Unreadable(own)) => return Err(file_unreadable(&own)),
    };
    // "straw-15.haulm.json" is called "straw-15".
    let stem = file_name.split('.').next().unwrap_or_default();
    persistence::records::loaded(state).await;
    match state.import(&text, stem) {
        Imported::Refused(refusal) => Err(words::refusal(&refusal, Carrier::File)),
        Imported::Opened(page) => Ok(page),
        Imported::Kept | Imported::NotKept => Ok(Page::Library),
    }
}
