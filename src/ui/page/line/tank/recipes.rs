//! Which saved recipes a delivery is entered into, and what it changes there.

use super::context::{TankSheet, amount, number};
use super::effect::setting_change;
use crate::domain::line::tanks::delivery::Moved;
use crate::domain::line::{Fed, Tie};
use crate::quantity::Kind;
use crate::record::{RecipeId, RevisionId};
use crate::t;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::state::State;
use leptos::prelude::*;

/// For so many recipes the new settings are computed: each takes a balance before and after.
const MOST_EFFECTS: usize = 30;

/// A saved recipe that uses the liquid: its head, itself, its name.
pub type Using = (RevisionId, RecipeId, String);

/// What the parts of the section share.
#[derive(Clone, Copy)]
pub struct DeliveryRecipes {
    /// The saved recipes that use the liquid.
    pub using: Memo<Vec<Using>>,
    /// What the delivery moves in each, in the same order; blank for those past [`MOST_EFFECTS`].
    pub effects: Memo<Vec<Vec<Moved>>>,
}

/// The saved recipes that use the liquid delivered.
pub fn using(state: State) -> Memo<Vec<Using>> {
    let tie = Memo::new(move |_| {
        let liquid = state.line.book(|book| book.delivered)?;
        state.draft.with(|draft| draft.liquid(liquid).map(Tie::to))
    });
    Memo::new(move |_| {
        tie.get().map(|tie| state.library.with(|library| library.recipes_with(&tie))).unwrap_or_default()
    })
}

/// What the delivery moves in each of them.
pub fn effects(state: State, sheet: TankSheet, using: Memo<Vec<Using>>) -> Vec<Vec<Moved>> {
    let heads: Vec<RevisionId> = using.with(|using| using.iter().take(MOST_EFFECTS).map(|(head, ..)| *head).collect());
    sheet.delivery.with(|now| {
        let Some(delivered) = &now.result else { return Vec::new() };
        state.draft.with(|own| {
            state.library.with(|library| {
                state.line.checked.with(|line| {
                    let of = |head: RevisionId| {
                        let revision = library.revision(head);
                        revision.map(|saved| delivered.moves_in(own, &saved.content().draft, line)).unwrap_or_default()
                    };
                    heads.into_iter().map(of).collect()
                })
            })
        })
    })
}

/// The heads of those that are selected.
pub fn selected(state: State, using: Memo<Vec<Using>>) -> Vec<RevisionId> {
    let except = state.line.record.with(|record| record.delivery_not_for.clone());
    let heads = using.get().into_iter().filter(|(_, recipe, _)| !except.contains(recipe));
    heads.map(|(head, ..)| head).collect()
}

/// All of them, each to select, with its new settings.
#[component]
pub fn RecipesThatUseIt() -> impl IntoView {
    let recipes = expect_context::<DeliveryRecipes>();
    let none = Memo::new(move |_| recipes.using.with(Vec::is_empty));
    view! {
        <h3>{t!("delivery-recipes")}</h3>
        <Show when=move || !none.get() fallback=|| view! { <p class="note">{t!("delivery-no-recipes")}</p> }>
            <table class="results delivery-recipes" aria-label=t!("delivery-recipes")>
                <thead><tr>
                    <th scope="col" class="l">{t!("delivery-recipe")}</th>
                    <th scope="col">{t!("delivery-flow-head")}</th>
                    <th scope="col">{t!("delivery-settings-head")}</th>
                </tr></thead>
                <tbody>
                    <For each=move || recipes.using.get() key=|(_, recipe, name)| (*recipe, name.clone()) let((_, recipe, name))>
                        <RecipeRow recipe=recipe name=name/>
                    </For>
                </tbody>
            </table>
            <p class="note">{t!("delivery-recipes-hint")}</p>
        </Show>
    }
}

#[component]
fn RecipeRow(
    /// The recipe.
    recipe: RecipeId,
    /// Its name.
    name: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let recipes = expect_context::<DeliveryRecipes>();
    let is_on = move || state.line.record.with(|record| !record.delivery_not_for.contains(&recipe));
    let choose = move |event| {
        let on = event_target_checked(&event);
        state.line.change(|record| {
            if on {
                record.delivery_not_for.remove(&recipe);
            } else {
                record.delivery_not_for.insert(recipe);
            }
        });
    };
    let moved = Memo::new(move |_| {
        let at = recipes.using.with(|using| using.iter().position(|(_, other, _)| *other == recipe))?;
        recipes.effects.with(|effects| effects.get(at).cloned())
    });
    let flow = move || {
        let own = sheet.delivery.with(|now| now.liquid)?;
        // Recipes number their liquids apart: the pump says which liquid it is.
        let pumps = sheet.delivery.with(|now| {
            let delivered = now.result.as_ref()?;
            Some(
                delivered
                    .before
                    .rows
                    .iter()
                    .filter(|row| row.fed == Fed::Liquid(own))
                    .map(|row| row.pump)
                    .collect::<Vec<_>>(),
            )
        })?;
        let of: Vec<Moved> = moved.get()?.into_iter().filter(|moved| pumps.contains(&moved.pump)).collect();
        let before: f64 = of.iter().map(|moved| moved.mass_before.value).sum();
        let after: f64 = of.iter().map(|moved| moved.mass_after.value).sum();
        let (from, to) = (number(state, Kind::LiquidFlow, before), amount(state, Kind::LiquidFlow, after));
        (before > 0.0 && number(state, Kind::LiquidFlow, after) != from).then(|| format!("{from} → {to}"))
    };
    let settings = move || {
        let one = |moved: &Moved| {
            let (from, to) = setting_change(state, moved);
            view! { <span class="setting-change">{pump_name(state, moved.pump)} " " {from} " → " <b>{to}</b></span> }
        };
        moved.get().map(|all| all.iter().map(one).collect_view())
    };
    let shown_name = state.name_or_none(&name);
    view! {
        <tr>
            <th scope="row" class="l">
                <label class="tick"><input type="checkbox" prop:checked=is_on on:change=choose/> " " {shown_name}</label>
            </th>
            <td>{flow}</td>
            <td>{settings}</td>
        </tr>
    }
}
