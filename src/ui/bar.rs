//! The bar over all pages: where one can go, what can be found, and what is chosen for all of them.

use super::part::page_name::page_name;
use super::part::{find, preferences};
use crate::t;
use crate::ui::components::{Menu, Mounted};
use crate::ui::route::Page;
use crate::ui::state::State;
use leptos::prelude::*;

/// The bar.
#[component]
pub fn Bar() -> impl IntoView {
    let state = expect_context::<State>();
    let tools = &state.words.tools;
    let link = move |page: &Page| {
        let page = *page;
        let current = move || (state.page.get().in_bar() == page).then_some("page");
        view! { <li><a href=page.link() aria-current=current>{page_name(state.words, page)}</a></li> }
    };
    view! {
        <header class="bar">
            <p class="app">{tools.app}</p>
            <nav class="pages" aria-label=tools.pages>
                <ul>{Page::ALL.iter().filter(|page| page.in_bar() == **page).map(link).collect_view()}</ul>
            </nav>
            <Mounted part=find::find/>
            <div class="preferences">
                <Mounted part=preferences::system/>
                <Menu id="settings" label=t!("common-settings")>
                    <Mounted part=preferences::others/>
                </Menu>
            </div>
        </header>
    }
}
