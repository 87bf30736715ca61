//! The library: saved recipes, binder systems and trials, one sortable table each; beside the recipes what concerns all of it:
//! backup, the file on a shared drive, storage.

mod context;
mod details;
mod heads;
mod history;
mod import;
mod panels;
mod rename;
mod row;
mod rows;
mod stored;
mod systems;
mod table;
mod title;
mod trials;

pub use import::dropped;

use crate::record::content::search::SortOrder;
use crate::t;
use crate::ui::components::{Tabs, WarningSlot};
use crate::ui::route::Page;
use crate::ui::state::State;
use context::{IN_SIGHT, LibraryContext};
use leptos::prelude::*;
use panels::Panels;
use rows::Asked;
use std::time::Duration;
use stored::Stored;
use systems::SystemsTab;
use table::RecipesTab;
use title::LibraryTitle;
use trials::TrialsTab;

/// The tabs, each with an address of its own.
const TABS: [Page; 3] = [Page::Library, Page::Systems, Page::Trials];

/// The page.
#[component]
pub fn LibrarySheet() -> impl IntoView {
    let state = expect_context::<State>();
    let (query, only_released) = (RwSignal::new(String::new()), RwSignal::new(false));
    let most = RwSignal::new(IN_SIGHT);
    let order = Memo::new(move |_| state.settings.with(|settings| settings.order));
    let backup = Memo::new(move |_| state.settings.with(|settings| settings.copied_at));
    let found = Memo::new(move |_| find(state, query, only_released, order.get(), most.get(), backup.get()));
    let (open, trials) = (RwSignal::new(None), RwSignal::new(Vec::new()));
    let library = LibraryContext { query, only_released, most, found, open, trials };
    library.follow_rows();
    library.follow_trials(state);
    provide_context(library);
    state.refused.set(None);
    let lines = Memo::new(move |_| library.lines(state));
    let tab = Memo::new(move |_| state.page.get());
    let shown = Memo::new(move |_| TABS.iter().position(|page| *page == tab.get()).unwrap_or_default());
    let choose = Callback::new(move |at: usize| {
        if let Some(page) = TABS.get(at) {
            context::go(state, *page);
        }
    });
    // The table is in sight first.
    let is_painted = RwSignal::new(false);
    request_animation_frame(move || set_timeout(move || _ = is_painted.try_set(true), Duration::ZERO));
    view! {
        <div class="work-sheet library-sheet">
            <LibraryTitle/>
            <WarningSlot lines=lines/>
            <Tabs
                name=t!("library-tabs")
                tabs=vec![t!("library-recipes"), t!("library-systems"), t!("library-trials")]
                shown=shown
                on_choose=choose
            />
            <div class="beside">
                <div class="tab-content">
                    {move || match tab.get() {
                        Page::Systems => view! { <SystemsTab/> }.into_any(),
                        Page::Trials => view! { <TrialsTab/> }.into_any(),
                        _ => view! { <RecipesTab/> <Stored/> }.into_any(),
                    }}
                </div>
                <Show when=move || is_painted.get()><Panels/></Show>
            </div>
        </div>
    }
}

fn find(
    state: State,
    query: RwSignal<String>,
    only_released: RwSignal<bool>,
    order: SortOrder,
    most: usize,
    backup: Option<u64>,
) -> rows::Found {
    let only_released = only_released.get();
    query.with(|query| {
        let asked = Asked { query, only_released, order, most, backup };
        state.library.with(|library| rows::find(state, library, &asked))
    })
}
