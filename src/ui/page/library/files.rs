//! Files taken in, how much room there is, and when something last went to a file.

use crate::browser::element::{El, Part, View, button, el, many};
use crate::browser::file::{self, ChosenFile, ReadFileError};
use crate::browser::graph::spawn_local;
use crate::browser::graph::*;
use crate::browser::{database, hash, shared, storage};
use crate::domain::Grade;
use crate::record::file::library::LARGEST;
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::persistence::trouble::tell_message;
use crate::ui::persistence::{self, Imported};
use crate::ui::route::Page;
use crate::ui::signal::{RwSignal, memo};
use crate::ui::state::{About, State, state};
use crate::ui::text::{Carrier, Message};

/// The section.
pub fn files() -> View {
    let state = state();
    let page = &state.words.library_page;
    let refused = state.refused;
    refused.set(None);
    let take = move |event: Event| {
        let Some(chosen) = file::chosen(&event_target(&event)) else { return };
        refused.set(None);
        spawn_local(async move {
            match taken(state, chosen).await {
                Ok(Page::Library) => {}
                Ok(page) => go(state, page),
                Err(message) => refused.set(Some(message)),
            }
        });
    };
    let says = move || refused.get().map(stop);
    let copied = move || match state.settings.with(|settings| settings.copied_at) {
        Some(at) => format!("{} {}.", page.last_copy, when(at)),
        None => page.never_copied.to_owned(),
    };
    let most = RwSignal::new(page.room_usual.to_owned());
    spawn_local(async move {
        if let Some(bytes) = database::room().await {
            _ = most.try_set((page.room_given)(bytes));
        }
    });
    let room = move || format!("{} {}", (page.room)(state.library.with(|library| library.size())), most.get());
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
        .child(shared::can().then(|| shared_file(state)))
        .child(paste_link(state))
        .child(el("p").child(page.copy_hint).text(" ").child(copied))
        .child(el("p").child(room))
        .view()
}

/// A library file on a shared drive.
fn shared_file(state: State) -> View {
    let page = &state.words.library_page;
    let act = move |words: &'static str, act: fn(State)| button().on_click(move || act(state)).child(words).view();
    let chosen = memo(move || state.shared.with(|file| file.name.clone()));
    let actions = move || {
        let actions = if chosen.with(String::is_empty) {
            [
                act(page.take_up_file, |state| persistence::shared::choose(state, false)),
                act(page.begin_file, |state| persistence::shared::choose(state, true)),
            ]
        } else {
            [
                act(page.level_now, |state| persistence::shared::level(state, true)),
                act(page.let_go, persistence::shared::let_go),
            ]
        };
        el("div").class("actions").child(many(actions))
    };
    let says = move || {
        let file = state.shared.get();
        let name = (!file.name.is_empty()).then(|| el("strong").child(file.name));
        el("p").child(name).text(" ").child(file.says)
    };
    el("div")
        .class("shared")
        .child(el("p").child(page.shared_hint))
        .child(actions)
        .child(el("div").set("role", "status").child(says))
        .child(el("div").set("role", "alert").child(move || state.shared.with(|file| file.wrong.clone()).map(stop)))
        .view()
}

/// Why something was not done.
fn stop(Message { what, fix }: Message) -> El {
    let line = el("p").class("finding stop").child(mark(Grade::Stop)).text(" ");
    line.child(el("strong").child(what)).text(" ").child(fix)
}

/// A link that came by mail or was read by a camera.
fn paste_link(state: State) -> View {
    let page = &state.words.library_page;
    let text = RwSignal::new(String::new());
    let open = move || {
        let link = text.get_untracked();
        if !link.trim().is_empty() {
            persistence::link::open(state, link);
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

/// Shows a page, also after a reload.
fn go(state: State, page: Page) {
    state.page.set(page);
    hash::go(page.key());
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
    let page = &state.words.library_page;
    let text = file::read_text(&file, LARGEST as u64).await;
    let file_name = file.name();
    let text = match text {
        Ok(text) => text,
        Err(ReadFileError::TooLarge { bytes, limit }) => return Err((page.file_too_large)(bytes, limit)),
        Err(ReadFileError::Unreadable(own)) => return Err((page.file_unreadable)(&own)),
    };
    // "straw-15.haulm.json" is called "straw-15".
    let stem = file_name.split('.').next().unwrap_or_default();
    persistence::records::loaded(state).await;
    match state.import(&text, stem) {
        Imported::Refused(refusal) => Err((state.words.refusal)(&refusal, Carrier::File)),
        Imported::Opened(page) => Ok(page),
        Imported::Kept | Imported::NotKept => Ok(Page::Library),
    }
}
