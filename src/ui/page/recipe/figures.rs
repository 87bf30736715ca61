//! What it takes, a group a station, in the material's order.

use crate::domain::machine::Machine;
use crate::domain::{Figure, LiquidFigure, Station};
use crate::ui::erased::{flag, live};
use crate::ui::part::figure::{self, Size};
use crate::ui::part::fold::fold;
use crate::ui::part::strip;
use crate::ui::state::{State, state};
use leptos::prelude::*;

/// The figures of a station.
pub fn group(station: Station) -> AnyView {
    let state = state();
    let title = format!("figures-{}", station.key());
    let labelled_by = title.clone();
    let none = state.cell(move || state.shown.with(|shown| shown.case.is_none()));
    view! {
        <section
            class="group figures-of"
            data-station=station.key()
            tabindex="-1"
            aria-labelledby=labelled_by
            hidden=flag(move || none.get())
        >
            <h2 id=title>{(state.words.station)(station)}</h2>
            {figure::list(plain(station), Size::Plain)}
            {particular(state, station)}
        </section>
    }
    .into_any()
}

/// The figures of a station that stand by themselves. Those at the head of the sheet, and those that
/// stand in a table, are left out.
const fn plain(station: Station) -> &'static [Figure] {
    match station {
        Station::Fibre => &[Figure::Fibre, Figure::FibreWet, Figure::FibreWater],
        Station::Blender => &[
            Figure::Solids,
            Figure::FurnishPerFibre,
            Figure::FurnishWet,
            Figure::BlenderMoisture,
            Figure::WaterNeeded,
            Figure::WaterOnHand,
        ],
        Station::Mat => &[
            Figure::MatMoisture,
            Figure::MatRunning,
            Figure::MatHeight,
            Figure::Compaction,
            Figure::Reject,
            Figure::NetSolids,
            Figure::TransportVapour,
            Figure::Trim,
        ],
        Station::Press => &[
            Figure::LineSpeed,
            Figure::PressTime,
            Figure::PressFactor,
            Figure::PressedThickness,
            Figure::RawBoard,
            Figure::SurfaceSpray,
            Figure::PressVapour,
            Figure::HeatPerWater,
            Figure::PressHeat,
        ],
        Station::Board => {
            &[Figure::FinishedVolume, Figure::FinishedArea, Figure::FinishedMass, Figure::SanderDust, Figure::Offcuts]
        }
    }
}

fn particular(state: State, station: Station) -> AnyView {
    match station {
        Station::Fibre | Station::Press => machines(state, station),
        Station::Blender => view! {
            {machines(state, station)}
            {each_liquid(state, state.words.recipe_page.each_liquid, &[
                LiquidFigure::Solids,
                LiquidFigure::Share,
                LiquidFigure::SolidsOnFibre,
                LiquidFigure::LiquidOnFibre,
                LiquidFigure::Water,
                LiquidFigure::Thinning,
                LiquidFigure::Spray,
            ], &[])}
        }
        .into_any(),
        Station::Mat => split(state),
        Station::Board => usage(state),
    }
}

/// A fold with some figures of the fibre, and each liquid by name with some of its own.
fn each_liquid(
    state: State,
    title: &'static str,
    parts: &'static [LiquidFigure],
    of_fibre: &'static [Figure],
) -> AnyView {
    fold(title, move || {
        let ids = state.cell(move || state.liquids_shown());
        let fibre = (!of_fibre.is_empty())
            .then(|| view! { <h3>{state.words.recipe_page.fibre}</h3> {figure::list(of_fibre, Size::Plain)} });
        let liquid = move |id| {
            let name = state.cell(move || state.liquid_name(id));
            view! {
                <h3>{live(move || name.get())}</h3>
                <dl class="figures">
                    {parts.iter().map(|part| figure::figure(Figure::Liquid(id, *part), Size::Plain)).collect_view()}
                </dl>
            }
            .into_any()
        };
        view! {
            {fibre}
            <For each=move || ids.get() key=|id| *id children=liquid />
        }
        .into_any()
    })
}

/// What the mat is made of: fibre, each liquid's solids, water.
fn split(state: State) -> AnyView {
    let ids = state.cell(move || state.liquids_shown());
    view! {
        <h3>{state.words.recipe_page.mat_split}</h3>
        <dl class="figures">
            {figure::figure(Figure::MatFibre, Size::Plain)}
            <For each=move || ids.get() key=|id| *id let:id>
                {figure::cell(
                    Figure::Liquid(id, LiquidFigure::InMat),
                    state.cell(move || state.liquid_name(id)),
                    (state.words.figure)(Figure::Liquid(id, LiquidFigure::InMat)).note,
                    Size::Plain,
                )}
            </For>
            {figure::figure(Figure::MatWater, Size::Plain)}
        </dl>
    }
    .into_any()
}

/// How far the machines of a station are used, and which one limits the line.
fn machines(state: State, station: Station) -> AnyView {
    let machines: &[Machine] = match station {
        Station::Fibre => &[Machine::FibreSupply],
        Station::Blender => &[Machine::Blender],
        Station::Press => &[Machine::Press, Machine::LineSpeed],
        Station::Mat | Station::Board => &[],
    };
    let first = state.cell(move || {
        state.shown.with(|shown| shown.case.as_ref()?.solved.capacities.first().map(|first| first.machine))
    });
    let words = &state.words.recipe_page;
    let each = |machine: &Machine| {
        let machine = *machine;
        view! {
            {figure::figure(Figure::Used(machine), Size::Plain)}
            {figure::figure(Figure::FibreAtLimit(machine), Size::Plain)}
            <div class="limiting" hidden=flag(move || first.get() != Some(machine))>
                <dt>{(state.words.machine)(machine)}</dt>
                <dd>{words.limiting}</dd>
            </div>
        }
    };
    view! { <dl class="figures machines">{machines.iter().map(each).collect_view()}</dl> }.into_any()
}

/// Use and cost per finished board, and whether the mass closes.
fn usage(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    view! {
        <h3>{words.use_and_cost}</h3>
        {figure::list(&[Figure::Cost, Figure::FibreCost, Figure::FibrePerVolume, Figure::WaterPerVolume], Size::Plain)}
        {each_liquid(state, words.per_board, &[
            LiquidFigure::PerVolume,
            LiquidFigure::PerArea,
            LiquidFigure::PerBoardMass,
            LiquidFigure::PerShift,
            LiquidFigure::VolumePerShift,
            LiquidFigure::Cost,
        ], &[Figure::FibrePerArea, Figure::FibrePerBoardMass, Figure::FibrePerShift])}
        {fold(words.closure, strip::table)}
    }
    .into_any()
}
