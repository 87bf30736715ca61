//! The bar over all pages: where one can go, what can be found, and what is chosen for all of them.

use super::find::Find;
use super::preferences::{Preferences, SystemChoice};
use crate::t;
use crate::ui::components::Menu;
use crate::ui::part::page_name::page_name;
use crate::ui::route::Page;
use crate::ui::state::State;
use leptos::prelude::*;

/// The bar.
#[component]
pub fn Bar() -> impl IntoView {
    let state = expect_context::<State>();
    let link = move |page: &Page| {
        let page = *page;
        let current = move || (state.page.get().in_bar() == page).then_some("page");
        view! { <li><a href=page.link() aria-current=current>{page_name(page)}</a></li> }
    };
    view! {
        <header class="bar">
            <p class="app">{t!("frame-app")}</p>
            <nav class="pages" aria-label=t!("frame-pages")>
                <ul>{Page::ALL.iter().filter(|page| page.in_bar() == **page).map(link).collect_view()}</ul>
            </nav>
            <Find/>
            <div class="preferences">
                <SystemChoice/>
                <Menu id="settings" label=t!("common-settings")>
                    <Preferences/>
                </Menu>
            </div>
        </header>
    }
}
