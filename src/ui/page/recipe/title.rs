//! The name of the recipe, its revision, and what can be done with it.

use super::share::Share;
use crate::browser::{page, print};
use crate::domain::Grade;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Mark, Menu};
use crate::ui::part::version::save_question::SaveQuestionSlot;
use crate::ui::part::{save, version};
use crate::ui::persistence;
use crate::ui::state::{Session, State};
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The head of the page.
#[component]
pub fn Title() -> impl IntoView {
    let state = expect_context::<State>();
    view! {
        <header class="title">
            <h1 class="out-of-sight">{t!("recipe-title")}</h1>
            <Name/>
            <RevisionLine/>
            <div class="title-actions">
                <button type="button" class="primary" on:click=move |_| state.save_and_tell()>{t!("common-save")}</button>
                <Share/>
                <button type="button" on:click=|_| _ = print::print()>{t!("common-print")}</button>
                <More/>
            </div>
            <SaveQuestionSlot/>
        </header>
    }
}

/// The name, to type in. A save without one asks for it here.
#[component]
fn Name() -> impl IntoView {
    let state = expect_context::<State>();
    let name = Memo::new(move |_| state.title.with(|title| title.name.clone()));
    let is_missing = move || save::is_name_missing(state);
    let enter = move |event: KeyboardEvent| {
        if event.key() == "Enter" && state.naming.get_untracked() {
            state.save_and_tell();
        }
    };
    view! {
        <div class="recipe-name">
            <input
                id=save::NAME
                class="words"
                type="text"
                autocomplete="off"
                maxlength=LONGEST_NAME.to_string()
                placeholder=t!("recipe-untitled")
                aria-label=t!("recipe-name")
                aria-describedby=save::SAYS
                aria-invalid=move || is_missing().then_some("true")
                prop:value=move || name.get()
                on:input=move |event| {
                    let text = event_target_value(&event);
                    state.edit_title(Session::Name, |title| title.name.clone_from(&text));
                }
                on:change=move |_| state.leave()
                on:keydown=enter
            />
            <div id=save::SAYS>
                <Show when=is_missing>
                    <p class="name-missing"><Mark grade=Grade::Stop/> " " {t!("recipe-name-missing")}</p>
                </Show>
            </div>
        </div>
    }
}

/// Revision, when and by whom it was saved, whether something has changed since, and which one is released.
#[component]
fn RevisionLine() -> impl IntoView {
    let state = expect_context::<State>();
    let saved = state.saved();
    let is_saved = Memo::new(move |_| saved.get());
    let seen = state.seen_on_page();
    let told = move || match seen.get() {
        _ if state.example.get() => t!("recipe-example"),
        Some(seen) => version::headline(state, &seen, is_saved.get()),
        None => t!("recipe-not-saved"),
    };
    let released = state.released_of_page();
    let release = Memo::new(move |_| released.get().and_then(|seen| version::released(&seen)));
    view! {
        <p class="note" id="save-state">{told}</p>
        <p class="note" id="release-state" hidden=move || release.with(Option::is_none)>{move || release.get()}</p>
    }
}

/// What is needed less often.
#[component]
fn More() -> impl IntoView {
    let state = expect_context::<State>();
    let can_undo = Memo::new(move |_| state.can_undo());
    let can_redo = Memo::new(move |_| state.can_redo());
    let blank = move |_| {
        state.open(persistence::blank());
        state.tell_step(t!("recipe-new-opened"));
        page::focus(save::NAME);
    };
    let off = |can: bool| (!can).then_some("true");
    view! {
        <Menu id="recipe-more" label=t!("common-more") sign="⋯">
            <button type="button" on:click=move |_| state.save_as_new_and_tell()>{t!("record-save-as-new")}</button>
            <button type="button" on:click=blank>{t!("recipe-new")}</button>
            <button type="button" aria-disabled=move || off(can_undo.get()) on:click=move |_| state.undo()>
                {t!("common-undo")}
            </button>
            <button type="button" aria-disabled=move || off(can_redo.get()) on:click=move |_| state.redo()>
                {t!("common-redo")}
            </button>
            <button type="button" on:click=move |_| state.give_out()>{t!("common-export")}</button>
        </Menu>
    }
}
