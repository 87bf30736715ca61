//! The liquids in order of addition, each on a card of its own.

use super::liquid::{card, substance_id};
use crate::browser::element::{Part, View, button, each, el};
use crate::browser::graph::*;
use crate::browser::page;
use crate::domain::recipe::binder_system::{SystemKey, add_liquids};
use crate::domain::{LiquidDraft, Role};
use crate::ui::signal::RwSignal;
use crate::ui::state::{State, state};

/// The cards, and the ways to get another one.
pub fn liquids() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let ids = state
        .first_cell(move || state.draft.with(|draft| draft.liquids.iter().map(|liquid| liquid.id).collect::<Vec<_>>()));
    el("div")
        .class("liquids")
        .child(el("h3").child(words.liquids))
        .child(el("p").class("empty").set("hidden", move || !ids.with(Vec::is_empty)).child(words.no_liquids))
        .child(el("ol").class("cards").child(each(move || ids.get(), |id| id.0.to_string(), card)))
        .child(
            el("div")
                .class("actions")
                .child(button().set("id", "add-liquid").on_click(move || add(state)).child(words.add_liquid))
                .child(systems(state)),
        )
        .view()
}

fn add(state: State) {
    if !state.has_room_for(1) {
        return;
    }
    let id = state.draft.with_untracked(crate::domain::Draft::free_id);
    state.edit(None, |draft| {
        let role = if draft.liquids.is_empty() { Role::Binder } else { Role::Other };
        draft.liquids.push(LiquidDraft::blank(id, role));
    });
    request_animation_frame(move || page::focus(&substance_id(id)));
}

/// A whole binder system of the library: chosen, it is there.
fn systems(state: State) -> View {
    let words = &state.words.recipe_page;
    let chosen = RwSignal::new(String::new());
    let take = move |key: String| {
        let Some(system) = SystemKey::ALL.iter().find(|system| system.key() == key) else { return };
        let liquids = system.system().liquids;
        if state.has_room_for(liquids.len()) {
            state.edit(None, |draft| add_liquids(draft, &liquids));
            state.tell_step((state.words.binder_system)(*system).name);
        }
        // The select goes back to its heading, ready for another system.
        chosen.set(key);
        chosen.set(String::new());
    };
    let options = SystemKey::ALL
        .iter()
        .map(|system| el("option").set("value", system.key()).child((state.words.binder_system)(*system).name))
        .collect::<View>();
    el("select")
        .set("id", "add-system")
        .set("aria-label", words.add_system)
        .property("value", move || chosen.get())
        .on("change", move |event| take(event_target_value(&event)))
        .child(el("option").set("value", "").child(words.add_system))
        .child(options)
        .view()
}
