//! Saving the recipe on the page, and how it stands to the shelf.

use super::finding::mark;
use crate::browser::clock;
use crate::domain::Grade;
use crate::ui::keep::{Saved, keep};
use crate::ui::state::state;
use leptos::prelude::*;

/// The box for the recipe's name.
pub const NAME: &str = "recipe-name";
/// What is said about the name while a save waits for it.
pub const SAYS: &str = "save-says";

/// The buttons, and how it stands.
pub fn save() -> AnyView {
    let (state, keep) = (state(), keep());
    let tools = &state.words.tools;
    let stands = move || match keep.saved.get() {
        Saved::Not => tools.not_saved.to_owned(),
        Saved::AsItIs(at) => format!("{} {}", tools.saved_at, when(at)),
        Saved::Before(at) => format!("{} {}", tools.changed_since, when(at)),
    };
    view! {
        <div class="saving">
            <button
                type="button"
                class:primary=move || !matches!(keep.saved.get(), Saved::AsItIs(_))
                aria-keyshortcuts="Control+S"
                on:click=move |_| keep.save()
            >
                {tools.save}
            </button>
            <button type="button" on:click=move |_| keep.give_out()>{tools.export}</button>
            <p class="note" role="status" data-saved>{stands}</p>
        </div>
    }
    .into_any()
}

/// What is said at the name's box while a save waits for it.
pub fn says() -> AnyView {
    let (state, keep) = (state(), keep());
    let missing = move || {
        keep.naming.get().then(|| {
            view! { <p class="finding stop">{mark(Grade::Stop)} " " {state.words.tools.name_missing}</p> }
        })
    };
    view! { <div id=SAYS class="says">{missing}</div> }.into_any()
}

/// The time of today, or the day with its time.
#[must_use]
pub fn when(at: u64) -> String {
    if clock::date(at) == clock::date(clock::now()) { clock::time(at) } else { clock::date_time(at) }
}
