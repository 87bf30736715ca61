//! The bar over all pages: where one can go, what can be found, and what is chosen for all of them.

use super::{find, preferences};
use crate::ui::route::Page;
use crate::ui::state::{State, state};
use crate::ui::text::Words;
use leptos::prelude::*;

/// The name of a page.
#[must_use]
pub const fn page_name(words: &Words, page: Page) -> &'static str {
    match page {
        Page::Recipe => words.tools.recipe,
        Page::Mix => words.tools.mix,
        Page::Systems => words.tools.systems,
        Page::Shelf => words.tools.shelf,
        Page::Help => words.tools.help,
    }
}

/// The bar.
pub fn bar() -> AnyView {
    let state = state();
    let tools = &state.words.tools;
    view! {
        <header class="bar">
            <p class="app">{tools.app}</p>
            <nav class="pages" aria-label=tools.pages>
                <ul>{Page::ALL.iter().map(|page| link(state, *page)).collect_view()}</ul>
            </nav>
            {find::find()}
            {preferences::preferences()}
        </header>
    }
    .into_any()
}

fn link(state: State, page: Page) -> AnyView {
    let current = move || (state.page.get() == page).then_some("page");
    view! { <li><a href=page.link() aria-current=current>{page_name(state.words, page)}</a></li> }.into_any()
}
