//! The head of the page: how much there is, a new recipe, a file to import, and what is needed less often.

use super::context::LibraryContext;
use super::import::{ImportButton, LinkBox};
use super::rows;
use crate::browser::page;
use crate::domain::recipe::binder_system::SystemKey;
use crate::t;
use crate::ui::components::Menu;
use crate::ui::part::on_recipe::on_recipe;
use crate::ui::part::save;
use crate::ui::persistence;
use crate::ui::state::State;
use leptos::prelude::*;

/// The head.
#[component]
pub fn LibraryTitle() -> impl IntoView {
    let state = expect_context::<State>();
    let library = expect_context::<LibraryContext>();
    let counts = move || {
        let recipes = library.found.with(|found| found.all);
        let systems = SystemKey::ALL.len() + state.library.with(|library| library.systems().len());
        let trials = library.trials.with(Vec::len);
        let counts = [
            t!("library-recipe-count", count = recipes),
            t!("library-system-count", count = systems),
            t!("library-trial-count", count = trials),
        ];
        counts.join(" · ")
    };
    let blank = move |_| {
        state.open(persistence::blank());
        state.tell_step(t!("recipe-new-opened"));
        on_recipe(state, || page::focus(save::NAME));
    };
    let is_listed = Memo::new(move |_| library.found.with(|found| found.matching > 0));
    let export = move |_| {
        let order = state.settings.with_untracked(|settings| settings.order);
        let mark = state.units.get_untracked().mark;
        let text = state
            .library
            .with_untracked(|kept| library.query.with_untracked(|query| rows::csv(kept, query, order, mark)));
        state.hand_out(&format!("{}.csv", t!("record-library-file")), "text/csv", &text);
    };
    view! {
        <header class="title">
            <h1>{t!("library-title")}</h1>
            <p class="note">{counts}</p>
            <div class="title-actions">
                <button type="button" class="primary" on:click=blank>{t!("recipe-new")}</button>
                <ImportButton/>
                <Menu id="library-more" label=t!("common-more") sign="⋯">
                    <Show when=move || is_listed.get()>
                        <button type="button" on:click=export>{t!("library-export-list")}</button>
                    </Show>
                    <LinkBox/>
                </Menu>
            </div>
        </header>
    }
}
