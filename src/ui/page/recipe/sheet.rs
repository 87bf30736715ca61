//! The head of the sheet: what to dose, and what the mat weighs.

use crate::browser::element::{Part, View, each, el, many};
use crate::domain::recipe::finding::What;
use crate::domain::{Figure, LiquidFigure, LiquidId, Place, Station};
use crate::quantity::{Kind, Unit};
use crate::ui::part::figure::{self, FigureSize};
use crate::ui::part::finding::says;
use crate::ui::state::{State, state};

/// What has to be set, in the order of addition, and what the mat then weighs.
pub fn sheet() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let ids = state.first_cell(move || state.liquids_shown());
    let none = state.first_cell(move || state.shown.with(|shown| shown.case.is_none()));
    let nothing = move || none.get();
    el("section")
        .class("group to-dose")
        .set("aria-labelledby", "to-dose")
        .set("tabindex", "-1")
        .child(standing(state))
        .child(el("h2").set("id", "to-dose").child(words.to_dose))
        .child(el("p").class("note").set("hidden", nothing).child(words.to_dose_hint))
        .child(
            el("ol")
                .class("doses")
                .set("hidden", nothing)
                .child(each(move || ids.get(), |id| id.0.to_string(), move |id| liquid(state, id)))
                .child(water(state)),
        )
        .child(too_wet(state))
        .child(el("div").class("mat").set("hidden", nothing).child(el("h3").child(words.mat_weight)).child(
            el("dl").class("figures").child(short(state, Figure::MatWet)).child(short(state, Figure::MatOvenDry)),
        ))
        .view()
}

/// Whether the result is an old one, or none yet.
fn standing(state: State) -> View {
    let words = &state.words.recipe_page;
    let none = state.first_cell(move || state.shown.with(|shown| shown.case.is_none()));
    let old = state.first_cell(move || state.shown.with(|shown| shown.old));
    many([
        el("p")
            .class("standing nothing-yet")
            .set("hidden", move || !none.get())
            .child(el("strong").child(words.nothing_yet))
            .text(" ")
            .child(words.nothing_yet_hint)
            .view(),
        el("p")
            .class("standing stale")
            .set("hidden", move || !old.get())
            .child(el("strong").child(words.stale))
            .text(" ")
            .child(words.stale_hint)
            .view(),
    ])
    .view()
}

/// A liquid as delivered: by mass, by volume, and by volume per minute or hour.
fn liquid(state: State, id: LiquidId) -> View {
    let name = state.cell(move || state.liquid_name(id));
    let figures = [LiquidFigure::Liquid, LiquidFigure::Volume].map(|part| short(state, Figure::Liquid(id, part)));
    el("li")
        .class("dose")
        .set("data-liquid", id.0.to_string())
        .child(el("h3").child(move || name.get()))
        .child(
            el("dl").class("figures").child(figures).child(other_time(state, Figure::Liquid(id, LiquidFigure::Volume))),
        )
        .view()
}

/// A big figure whose label says all there is to say.
fn short(state: State, figure: Figure) -> View {
    figure::cell(figure, (state.words.figure)(figure).label.to_owned().into(), "", FigureSize::Big)
}

fn water(state: State) -> View {
    el("li")
        .class("dose water")
        .child(el("h3").child(state.words.recipe_page.water))
        .child(
            el("dl")
                .class("figures")
                .child(short(state, Figure::WaterDose))
                .child(short(state, Figure::WaterDoseVolume))
                .child(other_time(state, Figure::WaterDoseVolume)),
        )
        .view()
}

/// A pump's flow a second time, by the minute where it is shown by the hour and the other way round.
fn other_time(state: State, of: Figure) -> View {
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
    el("div")
        .class("figure big")
        .child(el("dt").child(move || label.get()))
        .child(el("dd").child(
            el("span").class("value").set("data-figure", format!("{}.other", of.key())).child(figure::value(
                state,
                of,
                Some(unit),
                FigureSize::Big,
            )),
        ))
        .view()
}

/// Too much water: how much, what comes of it, and the way out. Stands where the water dose would.
fn too_wet(state: State) -> View {
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
            el("div")
                .class("too-wet")
                .set("role", "group")
                .set("aria-label", state.words.recipe_page.too_wet)
                .child(says(finding))
                .child(figure::list(
                    &[Figure::WaterExcess, Figure::MatMoisture, Figure::FibreMoistureForNoWater],
                    FigureSize::Plain,
                ))
        })
    };
    told.view()
}
