//! The dosing grid: one row a liquid, its doses on the left, what it takes on the right.

use super::context::{OpenWorking, SheetContext, is_laboratory, other_time, substance_id};
use super::field_box::BoxMessages;
use super::row::LiquidRow;
use super::water_row::WaterRow;
use crate::browser::page;
use crate::domain::balance::total::dosed;
use crate::domain::recipe::binder_system::{SystemKey, add_liquids};
use crate::domain::{Field, LiquidDraft, LiquidField, LiquidFigure, Role, Station};
use crate::quantity::{Kind, Unit, format};
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Grid, UnitChoice, WorkingPanel};
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, typical_liquids, unit_shown, words};
use leptos::context::Provider;
use leptos::prelude::*;

/// The grid with its liquids, the water and the totals.
#[component]
pub fn Dosing() -> impl IntoView {
    let state = expect_context::<State>();
    let open = OpenWorking::new("");
    let ids =
        Memo::new(move |_| state.draft.with(|draft| draft.liquids.iter().map(|liquid| liquid.id).collect::<Vec<_>>()));
    let paste = Callback::new(move |cells: Vec<(String, String)>| paste(state, cells));
    let is_empty = Memo::new(move |_| ids.with(Vec::is_empty));
    view! {
        <Provider value=open>
            <section class="panel dosing" aria-label=t!("recipe-dosing") data-station=Station::Blender.key() tabindex="-1">
                <Grid name=t!("recipe-dosing") class="doses" head=head(state).into_any() foot=foot().into_any() on_paste=paste>
                    <Show when=move || is_empty.get()>
                        <tr class="empty"><td colspan="11">{t!("recipe-no-liquids")}</td></tr>
                    </Show>
                    <For each=move || ids.get() key=|id| id.0 let:id><LiquidRow id=id/></For>
                    <WaterRow/>
                </Grid>
                <BoxMessages belongs=|field| matches!(field, Field::Liquid(..) | Field::WaterFlow | Field::WaterOnFibre)/>
                <WorkingPanel open=open.figure scope=open.scope/>
            </section>
        </Provider>
    }
}

/// A column pasted from a spreadsheet is one step, which can be taken back as one.
fn paste(state: State, cells: Vec<(String, String)>) {
    let fields = state.draft.with_untracked(|draft| {
        let of_liquid = |id| LiquidField::ALL.iter().map(move |part| Field::Liquid(id, *part));
        let all = draft.liquids.iter().flat_map(|liquid| of_liquid(liquid.id)).chain(Field::PLAIN.iter().copied());
        all.map(|field| (field.key(), field, draft.kind(field))).collect::<Vec<_>>()
    });
    let entry = |(key, text): (String, String)| {
        let (_, field, kind) = fields.iter().find(|(other, ..)| *other == key)?;
        Some((*field, text, state.units_at(*field, *kind).unit(*kind)))
    };
    let entries: Vec<_> = cells.into_iter().filter_map(entry).collect();
    let count = entries.len();
    state.enter_column(entries);
    state.tell_step(t!("recipe-pasted", count = count));
}

fn head(state: State) -> impl IntoView {
    view! {
        <th class="l">{t!("recipe-dosing")} <Stale/></th>
        <th>{t!("recipe-dose")}</th>
        <th class="l">{t!("recipe-basis")}</th>
        <th>{t!("recipe-solids")} <HeadChoice kind=Kind::Solids name=t!("recipe-solids")/></th>
        <th>{t!("recipe-density")} <HeadChoice kind=Kind::LiquidDensity name=t!("recipe-liquid-density")/></th>
        <th class="edge"><FlowHead/></th>
        <th><HeadUnit kind=Kind::PumpFlow/></th>
        <th class="second">{move || unit_shown(other_time(state), "").into_owned()}</th>
        <th class="roomy"><HeadUnit kind=Kind::UsePerVolume/> " " {t!("recipe-per-board")}</th>
        <th class="roomy"><HeadUnit kind=Kind::Cost/></th>
        <th><span class="out-of-sight">{t!("recipe-details")}</span></th>
    }
}

/// That the results are older than the inputs, or that there are none yet.
#[component]
fn Stale() -> impl IntoView {
    let state = expect_context::<State>();
    let is_old = Memo::new(move |_| state.shown.with(|shown| shown.old));
    let is_none = Memo::new(move |_| state.shown.with(|shown| shown.case.is_none()));
    move || match (is_none.get(), is_old.get()) {
        (true, _) => Some(view! { <strong class="flag">{t!("recipe-no-result")}</strong> }),
        (_, true) => Some(view! { <strong class="flag">{t!("recipe-old-result")}</strong> }),
        _ => None,
    }
}

/// The unit of a column of results.
#[component]
fn HeadUnit(
    /// What the column measures.
    kind: Kind,
) -> impl IntoView {
    let state = expect_context::<State>();
    move || unit_shown(state.unit(kind), &state.currency.get()).into_owned()
}

/// The unit of the flows; for a laboratory recipe what the doses are on.
#[component]
fn FlowHead() -> impl IntoView {
    let state = expect_context::<State>();
    move || match is_laboratory(state) {
        true => t!("recipe-on-od-fibre").into_any(),
        false => view! { <HeadUnit kind=Kind::LiquidFlow/> }.into_any(),
    }
}

/// The unit of a column of boxes, to choose.
#[component]
fn HeadChoice(
    /// What the column measures.
    kind: Kind,
    /// What the column is.
    #[prop(into)]
    name: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = Memo::new(move |_| state.unit(kind));
    let symbol = Callback::new(|unit: Unit| symbol_shown(unit).to_owned());
    let choose = Callback::new(move |unit: Unit| state.choose_unit(kind, unit));
    view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }
}

fn foot() -> impl IntoView {
    view! {
        <td class="l add" colspan="4"><AddLiquid/></td>
        <td class="l total-word">{t!("recipe-total")}</td>
        <td class="edge"><Total part=LiquidFigure::Liquid/></td>
        <td><Total part=LiquidFigure::Volume/></td>
        <td class="second"><Total part=LiquidFigure::Volume unit=other_time/></td>
        <td class="roomy"><Total part=LiquidFigure::PerVolume/></td>
        <td class="roomy"><Total part=LiquidFigure::Cost/></td>
        <td></td>
    }
}

/// All that is dosed, in one column.
#[component]
fn Total(
    /// The column.
    part: LiquidFigure,
    /// Another unit than the one chosen for its kind.
    #[prop(optional)]
    unit: Option<fn(State) -> Unit>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let text = Memo::new(move |_| {
        let total = state.shown.with(|shown| shown.case.as_ref().and_then(|case| dosed(case, part)));
        total.map(|amount| {
            let units = state.units.get();
            format::amount(amount, unit.map_or_else(|| units.unit(amount.kind), |unit| unit(state)), units.mark)
        })
    });
    view! { <span class="figure-total">{move || text.get()}</span> }
}

/// The ways to get another liquid.
#[component]
fn AddLiquid() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let add = move |_| {
        if !state.has_room_for(1) {
            return;
        }
        let id = state.draft.with_untracked(crate::domain::Draft::free_id);
        state.edit(None, |draft| {
            let role = if draft.liquids.is_empty() { Role::Binder } else { Role::Other };
            draft.liquids.push(LiquidDraft::blank(id, role));
        });
        sheet.open_liquid.set(Some(id));
        request_animation_frame(move || page::focus(&substance_id(id)));
    };
    // The select goes back to its heading, ready for another system.
    let chosen = RwSignal::new(String::new());
    let add_system = Callback::new(move |key: String| {
        let Some(system) = SystemKey::ALL.iter().find(|system| system.key() == key) else { return };
        let liquids = typical_liquids(*system);
        if state.has_room_for(liquids.len()) {
            state.edit(None, |draft| add_liquids(draft, &liquids));
            state.tell_step(t!("recipe-system-added", name = words::binder_system(*system).name));
        }
        chosen.set(key);
        chosen.set(String::new());
    });
    let mut systems = vec![ChoiceOption::new("", t!("recipe-add-system"))];
    let words = |system: &SystemKey| ChoiceOption::new(system.key(), words::binder_system(*system).name);
    systems.extend(SystemKey::ALL.iter().map(words));
    view! {
        <button type="button" class="bare" id="add-liquid" on:click=add>{t!("recipe-add-liquid")}</button>
        <Choice id="add-system" name=t!("recipe-add-system") options=systems value=chosen on_choose=add_system/>
    }
}
