//! Which saved recipes a delivery is entered into.

use crate::browser::element::{Part, View, each, el, many};
use crate::browser::graph::*;
use crate::domain::line::Tie;
use crate::record::{RecipeId, RevisionId};
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;

/// A saved recipe that uses the liquid: its head, itself, its name.
pub type Using = (RevisionId, RecipeId, String);

/// The saved recipes that use the liquid delivered.
pub fn using(state: State) -> Memo<Vec<Using>> {
    let tie = memo(move || {
        let liquid = state.line.book(|book| book.delivered)?;
        state.draft.with(|draft| draft.liquid(liquid).map(Tie::to))
    });
    memo(move || tie.get().map(|tie| state.library.with(|library| library.recipes_with(&tie))).unwrap_or_default())
}

/// The heads of those that are selected.
pub fn selected(state: State, using: Memo<Vec<Using>>) -> Vec<RevisionId> {
    let except = state.line.record.with(|record| record.delivery_not_for.clone());
    let heads = using.get().into_iter().filter(|(_, recipe, _)| !except.contains(recipe));
    heads.map(|(head, ..)| head).collect()
}

/// All of them, each to select.
pub fn list(state: State, using: Memo<Vec<Using>>) -> View {
    let page = &state.words.line_page;
    let none = move || using.with(Vec::is_empty);
    let chosen = move || state.line.book(|book| book.delivered.is_some());
    let keys = move || using.get().into_iter().map(|(_, recipe, name)| (recipe, name)).collect::<Vec<_>>();
    el("fieldset")
        .class("test delivery-recipes")
        .set("hidden", move || !chosen())
        .child(el("legend").child(page.apply_to))
        .child(el("p").class("empty").set("hidden", move || !none()).child(page.none_uses))
        .child(el("p").class("note").set("hidden", none).child(page.apply_hint))
        .child(many([each(
            keys,
            |(recipe, name)| format!("{recipe} {name}"),
            move |(recipe, name)| one(state, recipe, name),
        )]))
        .view()
}

fn one(state: State, recipe: RecipeId, name: String) -> View {
    let on = move || state.line.record.with(|record| !record.delivery_not_for.contains(&recipe));
    el("label")
        .class("tick")
        .child(el("input").set("type", "checkbox").property("checked", on).on("change", move |event| {
            let on = event_target_checked(&event);
            state.line.change(|record| {
                if on {
                    record.delivery_not_for.remove(&recipe);
                } else {
                    record.delivery_not_for.insert(recipe);
                }
            });
        }))
        .text(" ")
        .child(state.name_or_none(&name))
        .view()
}
