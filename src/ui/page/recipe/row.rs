//! A liquid's row, and its details below it.

use super::context::{SheetContext, details_button, is_laboratory, other_time, word};
use super::details::Details;
use super::enum_choice::EnumChoice;
use super::field_box::FieldBox;
use super::figure_of::FigureOf;
use crate::domain::{DoseWay, Draft, Entry, Faces, Field, Figure, Grade, LiquidField, LiquidFigure, LiquidId, Place};
use crate::quantity::format;
use crate::t;
use crate::ui::components::{Mark, Rank};
use crate::ui::state::State;
use crate::ui::text::{lower_first, words};
use leptos::prelude::*;

/// The row.
#[component]
pub fn LiquidRow(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let name = sheet.memo(move || state.liquid_name(id));
    let role = sheet.memo(move || {
        state
            .draft
            .with(|draft| draft.liquid(id).map(|liquid| lower_first(words::role(liquid.role))))
            .unwrap_or_default()
    });
    let grade = sheet.memo(move || sheet.said_at(Place::Liquid(id)).map(|said| said.finding.grade));
    let is_open = Memo::new(move |_| sheet.open_liquid.get() == Some(id));
    let toggle = move |_| sheet.open_liquid.update(|open| *open = if *open == Some(id) { None } else { Some(id) });
    let field = move |part| Field::Liquid(id, part);
    let figure = move |part| Figure::Liquid(id, part);
    // Without a fibre flow there is no flow to set: the dose is given per 100 kg of oven-dry fibre.
    let on_fibre = Memo::new(move |_| is_laboratory(state));
    let result = move || {
        if on_fibre.get() {
            view! { <FigureOf figure=figure(LiquidFigure::LiquidOnFibre) rank=Rank::Act/> }
        } else {
            view! { <FigureOf figure=figure(LiquidFigure::Liquid) rank=Rank::Act unit_in_head=true/> }
        }
    };
    let flag = move || {
        let grade = grade.get().filter(|grade| *grade != Grade::Note);
        grade.map(|grade| view! { <span class="flag"><Mark grade=grade/> " " {word(grade)}</span> })
    };
    view! {
        <tr
            class="liquid"
            data-liquid=id.0.to_string()
            class:warn=move || grade.get().is_some_and(|grade| grade != Grade::Note)
            class:open=move || is_open.get()
        >
            <th scope="row" class="l name">
                <b>{move || name.get()}</b>
                " "
                <span class="note">{move || role.get()}</span>
                {flag}
            </th>
            <td class="dose"><FieldBox field=field(LiquidField::Dose) column="dose"/></td>
            <td class="l basis"><DoseBasis id=id/></td>
            <td class="extra" data-label=t!("recipe-solids")>
                <FieldBox field=field(LiquidField::Solids) column="solids" unit_in_head=true/>
            </td>
            <td class="extra" data-label=t!("recipe-density")>
                <FieldBox field=field(LiquidField::Density) column="density" unit_in_head=true/>
            </td>
            <td class="edge result">{result}</td>
            <td class="extra"><FigureOf figure=figure(LiquidFigure::Volume) unit_in_head=true/></td>
            <td class="extra second"><FigureOf figure=figure(LiquidFigure::Volume) unit=other_time unit_in_head=true/></td>
            <td class="extra roomy"><FigureOf figure=figure(LiquidFigure::PerVolume) unit_in_head=true/></td>
            <td class="extra roomy"><FigureOf figure=figure(LiquidFigure::Cost) unit_in_head=true/></td>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    id=details_button(id)
                    aria-label=move || t!("recipe-details-of", name = name.get())
                    aria-expanded=move || if is_open.get() { "true" } else { "false" }
                    aria-controls=format!("liquid-details-{}", id.0)
                    on:click=toggle
                >
                    "⋯"
                </button>
            </td>
        </tr>
        <Show when=move || is_open.get()>
            <tr class="details" id=format!("liquid-details-{}", id.0)>
                <td colspan="11"><Details id=id/></td>
            </tr>
        </Show>
    }
}

/// What the dose is meant on.
#[component]
fn DoseBasis(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let all = Memo::new(move |_| {
        state
            .draft
            .with(|draft| draft.dose_ways(id).into_iter().map(|way| (way, way_words(draft, way))).collect::<Vec<_>>())
    });
    let value = Memo::new(move |_| state.draft.with(|draft| draft.liquid(id).map(|liquid| liquid.dose_way)));
    let name = Memo::new(move |_| t!("recipe-basis-of", name = state.liquid_name(id)));
    let choose = Callback::new(move |way: DoseWay| change_way(state, id, way));
    view! { <EnumChoice id=format!("dose-way-{}", id.0) name=name all=all value=value on_choose=choose/> }
}

/// What a dose is meant on.
pub fn way_words(draft: &Draft, way: DoseWay) -> String {
    match way {
        DoseWay::SolidsOnFibre => t!("recipe-solids-on-fibre"),
        DoseWay::LiquidOnFibre => t!("recipe-liquid-on-fibre"),
        DoseWay::LiquidPerBoard => t!("recipe-liquid-per-board"),
        DoseWay::LiquidOnFaces(Faces::Both) => t!("recipe-on-both-faces"),
        DoseWay::LiquidOnFaces(Faces::Top) => t!("recipe-on-top-face"),
        DoseWay::LiquidOnFaces(Faces::Bottom) => t!("recipe-on-bottom-face"),
        DoseWay::SolidsOnLiquid(base) => match draft.liquid(base) {
            Some(base) => t!("recipe-solids-on-liquid", name = words::liquid(base).into_owned()),
            None => t!("recipe-solids-on-missing"),
        },
    }
}

/// Chooses another way to enter the dose. The dose itself stays, where it is known.
fn change_way(state: State, id: LiquidId, way: DoseWay) {
    let units = state.units.get_untracked();
    let unit = units.unit(LiquidField::Dose.kind(way));
    let same = state.outcome.with_untracked(|outcome| {
        let dose = outcome.case.as_ref().and_then(|case| case.dose_in(id, way));
        dose.map(|dose| format::editable(dose.get(unit), units.mark))
    });
    state.edit(None, |draft| {
        let Some(liquid) = draft.liquid_mut(id) else { return };
        let is_of_kind = LiquidField::Dose.kind(liquid.dose_way) == LiquidField::Dose.kind(way);
        liquid.dose_way = way;
        match &same {
            Some(text) => liquid.dose = Entry::typed(text.as_str(), unit),
            None if is_of_kind => {}
            None => liquid.dose = Entry::empty(unit),
        }
    });
}
