//! Files taken in, how much room there is, and when something last went to a file.

use crate::browser::element::{Part, View, button, el};
use crate::browser::file::{self, ReadFileError};
use crate::browser::graph::spawn_local;
use crate::browser::graph::*;
use crate::browser::{records, storage};
use crate::domain::Grade;
use crate::record::library::LARGEST;
use crate::ui::keep::{self, Imported};
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::signal::RwSignal;
use crate::ui::state::{State, state};
use crate::ui::text::{Carrier, Message};

/// The section.
pub fn files() -> View {
    let state = state();
    let page = &state.words.shelf_page;
    let refused = RwSignal::new(None::<Message>);
    let take = move |event: Event| {
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
            el("p")
                .class("finding stop")
                .child(mark(Grade::Stop))
                .text(" ")
                .child(el("strong").child(what))
                .text(" ")
                .child(mend)
        })
    };
    let copied = move || match state.settings.with(|settings| settings.copied_at) {
        Some(at) => format!("{} {}.", page.last_copy, when(at)),
        None => page.never_copied.to_owned(),
    };
    let most = RwSignal::new(page.room_usual.to_owned());
    spawn_local(async move {
        if let Some(bytes) = records::room().await {
            _ = most.try_set((page.room_given)(bytes));
        }
    });
    let room = move || format!("{} {}", (page.room)(state.shelf.with(|shelf| shelf.size())), most.get());
    let ask = move |_| {
        spawn_local(async move {
            let kept = storage::ask_for_persistence().await == Some(true);
            state.tell(if kept { page.persisted } else { page.not_persisted });
        });
    };
    el("section")
        .class("files")
        .set("aria-label", page.files)
        .child(el("h2").child(page.files))
        .child(
            el("div")
                .class("actions")
                .child(
                    el("input")
                        .set("id", "import")
                        .class("out-of-sight")
                        .set("type", "file")
                        .set("accept", ".json,application/json")
                        .set("aria-describedby", "import-says")
                        .on("change", take),
                )
                .child(el("label").class("button").set("for", "import").child(page.choose_file))
                .child(button().on_click(move || state.give_out_library()).child(page.save_library))
                .child(button().on("click", ask).child(page.persist)),
        )
        .child(el("div").set("id", "import-says").set("role", "alert").child(says))
        .child(paste_link(state))
        .child(el("p").child(page.copy_hint).text(" ").child(copied))
        .child(el("p").child(room))
        .view()
}

/// A link that came by mail or was read by a camera.
fn paste_link(state: State) -> View {
    let page = &state.words.shelf_page;
    let text = RwSignal::new(String::new());
    let open = move || {
        let link = text.get_untracked();
        if !link.trim().is_empty() {
            keep::link::open(state, link);
        }
    };
    let input = el("input")
        .set("id", "paste-link")
        .set("type", "text")
        .set("autocomplete", "off")
        .set("spellcheck", "false")
        .on("input", move |event| text.set(event_target_value(&event)))
        .on_key(move |event| {
            if event.key() == "Enter" {
                open();
            }
        });
    el("div")
        .class("field")
        .child(el("label").set("for", "paste-link").child(page.paste_link))
        .child(el("div").class("box").child(input).child(button().on_click(open).child(page.open_link)))
        .view()
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
