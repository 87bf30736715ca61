//! What the head of the page has for this tab: when the line was read, and the way into the log.

use super::log::save_check;
use super::now::read_at;
use crate::browser::clock;
use crate::domain::line::ReadOn;
use crate::record::time::last_at;
use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;

/// Box and button.
#[component]
pub fn CheckActions() -> impl IntoView {
    let state = expect_context::<State>();
    let shown = Memo::new(move |_| clock::time(read_at(state)));
    let put = move |event| {
        if let Some(at) = last_at(&event_target_value(&event), &clock::time(clock::now()), clock::now()) {
            let recipe = state.title.with_untracked(|title| title.name.clone());
            state.line.edit(|book| book.read_on = Some(ReadOn { recipe, at }));
        }
    };
    view! {
        <label class="note read-at">
            {t!("check-read-at")}
            " "
            <span class="entry-box"><input type="time" id="check-read-at" prop:value=move || shown.get() on:change=put/></span>
        </label>
        <button type="button" class="primary" on:click=move |_| save_check(state)>{t!("check-save")}</button>
    }
}
