//! What comes of the sheet beside the masses: mat, stops, press time, board; and everything else, folded.

use super::context::WeighContext;
use super::figure::{SheetValue, SheetWorking, line_name};
use super::text::{parts, shown};
use crate::domain::balance::figure::Figure;
use crate::domain::trial::{LineId, WeighFigure, WeighLineFigure};
use crate::domain::{Caution, Work, cautions_at, work_out};
use crate::quantity::{Amount, Kind};
use crate::t;
use crate::ui::components::Rank;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

const KEY: &[WeighFigure] =
    &[WeighFigure::MatMoist, WeighFigure::Stops, WeighFigure::PressTime, WeighFigure::FinishedBoard];
const REST: &[WeighFigure] = &[
    WeighFigure::MatOvenDry,
    WeighFigure::RawBoard,
    WeighFigure::Batch,
    WeighFigure::SprayTime,
    WeighFigure::ActualMoisture,
    WeighFigure::FibreFactor,
    WeighFigure::LiquidFactor,
    WeighFigure::MatArea,
];
const PER_LINE: &[WeighLineFigure] =
    &[WeighLineFigure::Mass, WeighLineFigure::Target, WeighLineFigure::Actual, WeighLineFigure::Deviation];

/// The figures to lay and press by.
#[component]
pub fn KeyFigures() -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let is_there = Memo::new(move |_| sheet.desk.made.with(|made| made.sheet.is_some()));
    let notes = Memo::new(move |_| notes(sheet));
    let fig = move |(at, figure): (usize, WeighFigure), label: String| {
        let rank = if figure == WeighFigure::FinishedBoard { Rank::Body } else { Rank::Lead };
        view! {
            <div class="fig">
                <span class="label">{label}</span>
                <SheetValue figure=figure rank=rank/>
                <span class="note">{move || notes.with(|notes| notes.get(at).cloned())}</span>
            </div>
        }
    };
    let labels =
        || [t!("bench-furnish-one-mat"), t!("bench-stops"), t!("bench-press-time"), t!("bench-board-untrimmed")];
    view! {
        <section class="panel results-of-sheet" aria-label=t!("bench-results") hidden=move || !is_there.get()>
            <div class="figs">
                {KEY.iter().copied().enumerate().zip(labels()).map(|(own, label)| fig(own, label)).collect_view()}
            </div>
            <SheetWorking belongs=|figure| KEY.contains(&figure)/>
        </section>
    }
}

/// What is below each key figure.
fn notes(context: WeighContext) -> Vec<String> {
    let state = context.desk.state;
    context.desk.made.with(|made| {
        let Some(sheet) = &made.sheet else { return Vec::new() };
        let case = &sheet.plan.case;
        let of_case =
            |figure| case.figure(figure).map(|amount| joined(&parts(state, amount).0, &parts(state, amount).1));
        let wet = of_case(Figure::MatWet).unwrap_or_default();
        let dry = of_case(Figure::MatOvenDry).unwrap_or_default();
        let input = &case.input;
        let sanded = sheet.stops - input.board.thickness;
        let stops = if sanded.value < 1e-9 {
            t!("bench-no-sanding")
        } else {
            t!("bench-sanding", thickness = shown(state, Kind::Thickness, sanded.value))
        };
        let press = sheet.plan.press_factor.map_or_else(
            || t!("bench-no-press-factor"),
            |factor| joined_amount(state, Amount::from_base(Kind::PressFactor, factor.value)),
        );
        let board = t!(
            "bench-board-at",
            moisture = shown(state, Kind::Moisture, input.board.moisture.dry_basis().value),
            density = shown(state, Kind::BoardDensity, input.board.density.value)
        );
        vec![t!("bench-mat-weight", wet = wet, dry = dry), stops, press, board]
    })
}

fn joined_amount(state: State, amount: Amount) -> String {
    let (number, unit) = parts(state, amount);
    joined(&number, &unit)
}

/// Everything that is not among the key figures.
#[component]
pub fn AllResults() -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let lines = Memo::new(move |_| {
        sheet.desk.made.with(|made| {
            let own = made.sheet.as_ref();
            own.map_or_else(Vec::new, |own| own.lines.iter().map(|line| (line.id, line_name(made, line.id))).collect())
        })
    });
    let plain = |figure: &WeighFigure| {
        let words = words::bench::figure(*figure);
        view! { <tr><th scope="row" class="l">{words.label} " " <span class="note">{words.note}</span></th><td><SheetValue figure=*figure/></td></tr> }
    };
    let head = |part: &WeighLineFigure| {
        let label = words::bench::figure(WeighFigure::Line(LineId::Fibre, *part)).label;
        view! { <th scope="col">{label}</th> }
    };
    let row = |(id, name): (LineId, String)| {
        let cell = |part: &WeighLineFigure| view! { <td><SheetValue figure=WeighFigure::Line(id, *part)/></td> };
        view! { <tr><th scope="row" class="l">{name}</th>{PER_LINE.iter().map(cell).collect_view()}</tr> }
    };
    let of_line = |figure: WeighFigure| match figure {
        WeighFigure::Line(_, part) => PER_LINE.contains(&part),
        other => REST.contains(&other),
    };
    view! {
        <div class="all-of-sheet">
            <table class="results" aria-label=t!("bench-all-results")><tbody>{REST.iter().map(plain).collect_view()}</tbody></table>
            <div class="scroll" tabindex="0" role="region" aria-label=t!("bench-rounding")>
                <table class="results" aria-label=t!("bench-rounding")>
                    <thead><tr><th scope="col" class="l">{t!("bench-line")}</th>{PER_LINE.iter().map(head).collect_view()}</tr></thead>
                    <tbody><For each=move || lines.get() key=|line| line.clone() let:line>{row(line)}</For></tbody>
                </table>
            </div>
            <SheetWorking belongs=of_line/>
        </div>
    }
}

/// The cautions that apply at the bench to the recipe that is weighed.
pub fn cautions_of(sheet: WeighContext) -> Vec<Caution> {
    let recipe = sheet.desk.made.with(|made| made.recipe.clone());
    let mat = work_out(&recipe).case.map(|case| case.solved.water.mat);
    cautions_at(Work::Bench, &recipe, mat)
}
