//! The bar over all pages: where one can go, what can be found, and what is chosen for all of them.

use super::page_name::page_name;
use super::{find, preferences};
use crate::browser::element::{Part, View, el};
use crate::ui::route::Page;
use crate::ui::state::{State, state};

/// The bar.
pub fn bar() -> View {
    let state = state();
    let tools = &state.words.tools;
    el("header")
        .class("bar")
        .child(el("p").class("app").child(tools.app))
        .child(
            el("nav")
                .class("pages")
                .set("aria-label", tools.pages)
                .child(el("ul").child(Page::ALL.iter().map(|page| link(state, *page)).collect::<View>())),
        )
        .child(find::find())
        .child(preferences::preferences())
        .view()
}

fn link(state: State, page: Page) -> View {
    let current = move || (state.page.get() == page).then_some("page");
    el("li")
        .child(el("a").set("href", page.link()).set("aria-current", current).child(page_name(state.words, page)))
        .view()
}
