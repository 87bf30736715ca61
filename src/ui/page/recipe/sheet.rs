//! The head of the sheet: what to dose, and what the mat weighs.

use crate::domain::finding::What;
use crate::domain::{Figure, LiquidFigure, LiquidId, Place, Station};
use crate::quantity::{Kind, Unit};
use crate::ui::erased::{flag, live};
use crate::ui::part::figure::{self, Size};
use crate::ui::part::finding::says;
use crate::ui::state::{State, state};
use leptos::prelude::*;

/// What has to be set, in the order of addition, and what the mat then weighs.
pub fn sheet() -> AnyView {
    let state = state();
    let words = &state.words.recipe_page;
    let ids = state.first_cell(move || state.liquids_shown());
    let none = state.first_cell(move || state.shown.with(|shown| shown.case.is_none()));
    let nothing = move || none.get();
    view! {
        <section class="group to-dose" aria-labelledby="to-dose" tabindex="-1">
            {standing(state)}
            <h2 id="to-dose">{words.to_dose}</h2>
            <p class="note" hidden=nothing>{words.to_dose_hint}</p>
            <ol class="doses" hidden=nothing>
                <For each=move || ids.get() key=|id| *id let:id>
                    {liquid(state, id)}
                </For>
                {water(state)}
            </ol>
            {too_wet(state)}
            <div class="mat" hidden=nothing>
                <h3>{words.mat_weight}</h3>
                <dl class="figures">{short(state, Figure::MatWet)} {short(state, Figure::MatOvenDry)}</dl>
            </div>
        </section>
    }
    .into_any()
}

/// Whether the result is an old one, or none yet.
fn standing(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    let none = state.first_cell(move || state.shown.with(|shown| shown.case.is_none()));
    let old = state.first_cell(move || state.shown.with(|shown| shown.old));
    view! {
        <p class="standing nothing-yet" hidden=flag(move || !none.get())><strong>{words.nothing_yet}</strong> " " {words.nothing_yet_hint}</p>
        <p class="standing stale" hidden=flag(move || !old.get())><strong>{words.stale}</strong> " " {words.stale_hint}</p>
    }
    .into_any()
}

/// A liquid as delivered: by mass, by volume, and by volume per minute or hour.
fn liquid(state: State, id: LiquidId) -> AnyView {
    let name = state.cell(move || state.liquid_name(id));
    let figures = [LiquidFigure::Liquid, LiquidFigure::Volume].map(|part| short(state, Figure::Liquid(id, part)));
    view! {
        <li class="dose" data-liquid=id.0.to_string()>
            <h3>{live(move || name.get())}</h3>
            <dl class="figures">{figures} {other_time(state, Figure::Liquid(id, LiquidFigure::Volume))}</dl>
        </li>
    }
    .into_any()
}

/// A big figure whose label says all there is to say.
fn short(state: State, figure: Figure) -> AnyView {
    figure::cell(figure, (state.words.figure)(figure).label.to_owned().into(), "", Size::Big)
}

fn water(state: State) -> AnyView {
    view! {
        <li class="dose water">
            <h3>{state.words.recipe_page.water}</h3>
            <dl class="figures">
                {short(state, Figure::WaterDose)} {short(state, Figure::WaterDoseVolume)}
                {other_time(state, Figure::WaterDoseVolume)}
            </dl>
        </li>
    }
    .into_any()
}

/// A pump's flow a second time, by the minute where it is shown by the hour and the other way round.
fn other_time(state: State, of: Figure) -> AnyView {
    fn unit(state: State) -> Unit {
        match state.unit(Kind::PumpFlow) {
            Unit::LitrePerMinute => Unit::LitrePerHour,
            Unit::GallonPerMinute => Unit::GallonPerHour,
            Unit::GallonPerHour => Unit::GallonPerMinute,
            _ => Unit::LitrePerMinute,
        }
    }
    let words = &state.words.recipe_page;
    let label = state.cell(move || match unit(state) {
        Unit::LitrePerHour | Unit::GallonPerHour => words.the_same_per_hour,
        _ => words.the_same_per_minute,
    });
    view! {
        <div class="figure big">
            <dt>{live(move || label.get())}</dt>
            <dd>
                <span class="value" data-figure=format!("{}.other", of.key())>
                    {figure::value(state, of, Some(unit), Size::Big)}
                </span>
            </dd>
        </div>
    }
    .into_any()
}

/// Too much water: how much, what comes of it, and the way out. Stands where the water dose would.
fn too_wet(state: State) -> AnyView {
    let finding = state.first_cell(move || {
        state
            .said(|finding| {
                finding.place == Place::Station(Station::Blender) && matches!(finding.what, What::TooWet { .. })
            })
            .first()
            .cloned()
    });
    let told = move || {
        finding.get().map(|finding| {
            view! {
                <div class="too-wet" role="group" aria-label=state.words.recipe_page.too_wet>
                    {says(finding)}
                    {figure::list(
                        &[Figure::WaterExcess, Figure::MatMoisture, Figure::FibreMoistureForNoWater],
                        Size::Plain,
                    )}
                </div>
            }
        })
    };
    told.into_any()
}
