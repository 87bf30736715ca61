//! The name of the recipe, its revision, and what can be done with it.

use super::share::Share;
use crate::browser::{clock, page, print};
use crate::domain::Grade;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Mark, Menu};
use crate::ui::part::save;
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
            <Revision/>
            <div class="title-actions">
                <button type="button" class="primary" on:click=move |_| state.save_and_tell()>{t!("common-save")}</button>
                <Share/>
                <button type="button" on:click=|_| _ = print::print()>{t!("common-print")}</button>
                <More/>
            </div>
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

/// Revision, when it was saved, and whether something has changed since.
#[component]
fn Revision() -> impl IntoView {
    let state = expect_context::<State>();
    let saved = state.saved();
    let is_saved = Memo::new(move |_| saved.get());
    let revision = Memo::new(move |_| {
        let id = state.from.get()?;
        state.library.with(|library| {
            let at = library.revision(id)?;
            let history = library.history(at.recipe());
            let number = history.iter().filter(|other| other.saved_at <= at.content().saved_at).count();
            Some((number, at.content().author.clone(), clock::date_time(at.content().saved_at)))
        })
    });
    let told = move || match (revision.get(), is_saved.get()) {
        _ if state.example.get() => t!("recipe-example"),
        (Some((number, author, at)), true) => t!("recipe-saved", number = number, author = by(&author), at = at),
        (Some((number, author, _)), false) => t!("recipe-changed", number = number, author = by(&author)),
        (None, _) => t!("recipe-not-saved"),
    };
    view! { <p class="note" id="save-state">{told}</p> }
}

/// Who saved it, as part of the line; nothing where nobody has entered initials.
fn by(author: &str) -> String {
    if author.is_empty() { String::new() } else { format!("{author} · ") }
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
