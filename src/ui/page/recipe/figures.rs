//! What it takes, a group a station, in the material's order.

use crate::browser::element::{Part, View, each, el, many};
use crate::domain::balance::machine::Machine;
use crate::domain::{Figure, LiquidFigure, Station};
use crate::ui::part::figure::{self, FigureSize};
use crate::ui::part::fold::fold;
use crate::ui::part::strip;
use crate::ui::state::{State, state};

/// The figures of a station.
pub fn group(station: Station) -> View {
    let state = state();
    let title = format!("figures-{}", station.key());
    let labelled_by = title.clone();
    let none = state.cell(move || state.shown.with(|shown| shown.case.is_none()));
    el("section")
        .class("group figures-of")
        .set("data-station", station.key())
        .set("tabindex", "-1")
        .set("aria-labelledby", labelled_by)
        .set("hidden", move || none.get())
        .child(el("h2").set("id", title).child((state.words.station)(station)))
        .child(figure::list(plain(station), FigureSize::Plain))
        .child(particular(state, station))
        .view()
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
            Figure::WaterDoseOnFibre,
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
            Figure::SurfaceSprayVolume,
            Figure::PressVapour,
            Figure::HeatPerWater,
            Figure::PressHeat,
        ],
        Station::Board => {
            &[Figure::FinishedVolume, Figure::FinishedArea, Figure::FinishedMass, Figure::SanderDust, Figure::Offcuts]
        }
    }
}

fn particular(state: State, station: Station) -> View {
    match station {
        Station::Fibre | Station::Press => machines(state, station),
        Station::Blender => many([
            (machines(state, station)).view(),
            (each_liquid(
                state,
                state.words.recipe_page.each_liquid,
                &[
                    LiquidFigure::Solids,
                    LiquidFigure::Share,
                    LiquidFigure::SolidsOnFibre,
                    LiquidFigure::LiquidOnFibre,
                    LiquidFigure::ThinningOnFibre,
                    LiquidFigure::Water,
                    LiquidFigure::Thinning,
                    LiquidFigure::Spray,
                ],
                &[],
            ))
            .view(),
        ])
        .view(),
        Station::Mat => split(state),
        Station::Board => usage(state),
    }
}

/// A fold with some figures of the fibre, and each liquid by name with some of its own.
fn each_liquid(state: State, title: &'static str, parts: &'static [LiquidFigure], of_fibre: &'static [Figure]) -> View {
    fold(title, move || {
        let ids = state.cell(move || state.liquids_shown());
        let fibre = (!of_fibre.is_empty()).then(|| {
            many([
                el("h3").child(state.words.recipe_page.fibre).view(),
                (figure::list(of_fibre, FigureSize::Plain)).view(),
            ])
        });
        let liquid = move |id| {
            let name = state.cell(move || state.liquid_name(id));
            many([
                el("h3").child(move || name.get()).view(),
                el("dl")
                    .class("figures")
                    .child(
                        parts
                            .iter()
                            .map(|part| figure::figure(Figure::Liquid(id, *part), FigureSize::Plain))
                            .collect::<View>(),
                    )
                    .view(),
            ])
            .view()
        };
        many([fibre.view(), each(move || ids.get(), |id| id.0.to_string(), liquid).view()]).view()
    })
}

/// What the mat is made of: fibre, each liquid's solids, water.
fn split(state: State) -> View {
    let ids = state.cell(move || state.liquids_shown());
    many([
        el("h3").child(state.words.recipe_page.mat_split).view(),
        el("dl")
            .class("figures")
            .child(figure::figure(Figure::MatFibre, FigureSize::Plain))
            .child(each(
                move || ids.get(),
                |id| id.0.to_string(),
                move |id| {
                    figure::cell(
                        Figure::Liquid(id, LiquidFigure::InMat),
                        state.cell(move || state.liquid_name(id)),
                        (state.words.figure)(Figure::Liquid(id, LiquidFigure::InMat)).note,
                        FigureSize::Plain,
                    )
                },
            ))
            .child(figure::figure(Figure::MatWater, FigureSize::Plain))
            .view(),
    ])
    .view()
}

/// How far the machines of a station are used, and which one limits the line.
fn machines(state: State, station: Station) -> View {
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
        many([
            (figure::figure(Figure::Used(machine), FigureSize::Plain)).view(),
            (figure::figure(Figure::FibreAtLimit(machine), FigureSize::Plain)).view(),
            el("div")
                .class("limiting")
                .set("hidden", move || first.get() != Some(machine))
                .child(el("dt").child((state.words.machine)(machine)))
                .child(el("dd").child(words.limiting))
                .view(),
        ])
    };
    el("dl").class("figures machines").child(machines.iter().map(each).collect::<View>()).view()
}

/// Use and cost per finished board, and whether the mass closes.
fn usage(state: State) -> View {
    let words = &state.words.recipe_page;
    many([
        el("h3").child(words.use_and_cost).view(),
        (figure::list(
            &[Figure::Cost, Figure::FibreCost, Figure::FibrePerVolume, Figure::WaterPerVolume],
            FigureSize::Plain,
        ))
        .view(),
        (each_liquid(
            state,
            words.per_board,
            &[
                LiquidFigure::PerVolume,
                LiquidFigure::PerArea,
                LiquidFigure::PerBoardMass,
                LiquidFigure::PerShift,
                LiquidFigure::VolumePerShift,
                LiquidFigure::Cost,
            ],
            &[Figure::FibrePerArea, Figure::FibrePerBoardMass, Figure::FibrePerShift],
        ))
        .view(),
        (fold(words.closure, strip::table)).view(),
    ])
    .view()
}
