//! The frame around all pages.

use super::components::{Announce, UndoNotice};
use super::frame::{Bar, Trouble, rescue};
use super::page;
use super::page::lazy::{self, LazyPage};
use super::page::recipe::RecipeSheet;
use super::paper;
use super::persistence;
use super::route::Page;
use super::state::{About, State, StorageProblem, provide};
use super::text::{Message, fluent};
use crate::browser::{event, hash, link, page as browser, resource, theme};
use crate::{t, told};
use leptos::ev::{self, MouseEvent};
use leptos::prelude::*;

/// Puts the app into the page's body, once it has the words of the language chosen.
pub fn mount() {
    let language = persistence::language();
    let (Some(code), Some(name)) = (language.code(), language.own_name()) else { return mount_app(None) };
    if code == fluent::code() {
        return mount_app(None);
    }
    resource::text(format!("./{code}.ftl"), move |words| match words {
        Ok(words) => {
            fluent::choose(code, words);
            mount_app(None);
        }
        Err(_) => mount_app(Some(told!("common-language-missing", language = name))),
    });
}

fn mount_app(missing: Option<Message>) {
    browser::set_language(&fluent::code());
    if hash::read() == rescue::HASH {
        rescue::mount();
    } else {
        mount_to_body(move || view! { <App missing=missing/> });
    }
    browser::remove_first_paint();
}

/// The frame.
#[component]
fn App(
    /// That the words of the language chosen are missing.
    missing: Option<Message>,
) -> impl IntoView {
    let state = persistence::start();
    if let Some(message) = missing {
        state.trouble.set(Some(StorageProblem { message, way_out: None, about: About::Start }));
    }
    provide(state);
    persistence::autosave(state);
    state.follow_typing();
    follow_address(state);
    listen_to_keys(state);
    follow_theme(state);
    paper::on_print(state);
    if let Some(listeners) = event::on_drop(move |file| page::library::dropped(state, file)) {
        listeners.into_iter().for_each(event::Listener::forget);
    }
    lazy::fetch_all();
    window_event_listener(ev::online, |_| lazy::fetch_all());
    // The address and a press both say where to go: a page is made anew only for another one.
    let page = Memo::new(move |_| state.page.get().in_bar());
    let skip = |event: MouseEvent| {
        // The hash is the page's; only the focus moves.
        event.prevent_default();
        browser::focus("content");
    };
    view! {
        <a class="skip" href="#content" on:click=skip>{t!("frame-skip-to-content")}</a>
        <Bar/>
        <Trouble/>
        <UndoNotice/>
        <main id="content" tabindex="-1">
            {move || match page.get() {
                Page::Recipe => {
                    paper::prints(paper::recipe_documents);
                    view! { <RecipeSheet/> }.into_any()
                }
                page => view! { <LazyPage page=page/> }.into_any(),
            }}
        </main>
        <Announce/>
    }
}

/// The page follows the address, and the window's title the page.
fn follow_address(state: State) {
    let read = move || {
        let hash = hash::read();
        if link::is_one(&hash) {
            persistence::link::open(state, hash);
        } else {
            // By the browser's own Back the focus may still be in a box of the page that goes.
            if state.page.get_untracked() != Page::of(&hash) {
                browser::leave_box();
            }
            state.page.set(Page::of(&hash));
        }
    };
    read();
    window_event_listener(ev::hashchange, move |_| read());
    Effect::new(move |_| {
        let page = match state.page.get() {
            Page::Recipe => state.title.with(|title| title.name.clone()),
            page => crate::ui::part::page_name::page_name(page),
        };
        browser::set_title(&if page.is_empty() { t!("frame-app") } else { format!("{page} – {}", t!("frame-app")) });
    });
}

/// Keys that work all over the app, outside boxes that take text.
fn listen_to_keys(state: State) {
    window_event_listener(ev::keydown, move |event| {
        let command = event.ctrl_key() || event.meta_key();
        let key = event.key();
        let act: fn(State) = match (command, key.as_str()) {
            (true, "s" | "S") => |state| state.save_and_tell(),
            (true, "k") => |_| browser::focus("find"),
            (false, "/") if !browser::in_text(&event) => |_| browser::focus("find"),
            (true, "z") if !event.shift_key() && !browser::in_text(&event) => |state| state.undo_on_page(),
            (true, "y" | "Z" | "z") if !browser::in_text(&event) => |state| state.redo_on_page(),
            _ => return,
        };
        event.prevent_default();
        act(state);
    });
}

/// The scheme chosen, for the sheet to follow; without a choice the device's.
fn follow_theme(state: State) {
    let chosen = Memo::new(move |_| state.settings.with(|settings| settings.theme));
    Effect::new(move |_| theme::apply(chosen.get()));
}
