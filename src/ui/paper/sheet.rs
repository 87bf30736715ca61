//! One document: its head, what is in it, and when it was printed.

use crate::browser::clock;
use crate::t;
use crate::ui::part::version;
use crate::ui::state::State;
use leptos::prelude::*;

/// A document. It begins on a page of its own.
#[component]
pub fn Sheet(
    /// What it is about, in the largest letters.
    #[prop(into)]
    title: String,
    /// Which revision, by whom and when.
    #[prop(into)]
    about: String,
    /// What kind of document it is, or of which line.
    #[prop(into)]
    kind: String,
    /// Whether it lies on its side.
    #[prop(optional)]
    wide: bool,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    let printed = t!("paper-printed", time = clock::date_time(clock::now()), version = env!("CARGO_PKG_VERSION"));
    view! {
        <article class="print-sheet" class:wide=wide>
            <header class="print-head">
                <div><h1>{title}</h1><p>{about}</p></div>
                <p class="print-kind">{kind}</p>
            </header>
            {children()}
            <p class="print-foot">{printed}</p>
        </article>
    }
}

/// The recipe's name.
pub fn recipe_name(state: State) -> String {
    let name = state.title.with_untracked(|title| title.name.clone());
    if name.trim().is_empty() { t!("recipe-untitled") } else { name }
}

/// The revision of the recipe, when and by whom it was saved, and whether it is released.
pub fn revision(state: State) -> String {
    let is_saved = state.saved().get_untracked();
    let seen = state.seen_on_page().get_untracked();
    let saved = seen.map_or_else(|| t!("recipe-not-saved"), |seen| version::headline(state, &seen, is_saved));
    let released = state.released_of_page().get_untracked().and_then(|seen| version::released(&seen));
    let example = state.example.get_untracked().then(|| t!("recipe-example"));
    let parts = [Some(saved), released, example];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// The recipe and its revision, below the title of a document of the line.
pub fn recipe_line(state: State) -> String {
    t!("line-recipe", name = recipe_name(state), revision = revision(state))
}

/// What is said of the line itself, beside the title.
pub fn line_kind(state: State) -> String {
    if state.line.record.with_untracked(|record| record.example) { t!("line-example") } else { t!("line-title") }
}
