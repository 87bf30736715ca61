//! The liquids in order of addition, each on a card of its own.

use super::liquid::{card, substance_id};
use crate::browser::page;
use crate::domain::library::{SystemKey, add_liquids};
use crate::domain::{LiquidDraft, Role};
use crate::ui::erased::{flag, on, prop};
use crate::ui::state::{State, state};
use leptos::prelude::*;

/// The cards, and the ways to get another one.
pub fn liquids() -> AnyView {
    let state = state();
    let words = &state.words.recipe_page;
    let ids = state
        .first_cell(move || state.draft.with(|draft| draft.liquids.iter().map(|liquid| liquid.id).collect::<Vec<_>>()));
    view! {
        <div class="liquids">
            <h3>{words.liquids}</h3>
            <p class="empty" hidden=flag(move || !ids.with(Vec::is_empty))>{words.no_liquids}</p>
            <ol class="cards">
                <For each=move || ids.get() key=|id| *id let:id>
                    {card(id)}
                </For>
            </ol>
            <div class="actions">
                <button type="button" id="add-liquid" on:click=on(move |_| add(state))>{words.add_liquid}</button>
                {systems(state)}
            </div>
        </div>
    }
    .into_any()
}

fn add(state: State) {
    let id = state.draft.with_untracked(crate::domain::Draft::free_id);
    state.edit(None, &mut |draft| {
        let role = if draft.liquids.is_empty() { Role::Binder } else { Role::Other };
        draft.liquids.push(LiquidDraft::blank(id, role));
    });
    request_animation_frame(move || page::focus(&substance_id(id)));
}

/// A whole binder system of the library: chosen, it is there.
fn systems(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    let chosen = RwSignal::new(String::new());
    let take = move |key: String| {
        let Some(system) = SystemKey::ALL.iter().find(|system| system.key() == key) else { return };
        let liquids = system.system().liquids;
        state.edit(None, &mut |draft| add_liquids(draft, &liquids));
        state.tell_step((state.words.binder_system)(*system).name);
        // The select goes back to its heading, ready for another system.
        chosen.set(key);
        chosen.set(String::new());
    };
    let options = SystemKey::ALL
        .iter()
        .map(|system| view! { <option value=system.key()>{(state.words.binder_system)(*system).name}</option> })
        .collect_view();
    view! {
        <select
            id="add-system"
            aria-label=words.add_system
            prop:value=prop(move || chosen.get())
            on:change=on(move |event| take(event_target_value(&event)))
        >
            <option value="">{words.add_system}</option>
            {options}
        </select>
    }
    .into_any()
}
