//! A weigh sheet: one page a batch, with its warnings and cautions, and a blank for each weighing.

use super::super::end::End;
use super::super::not_valid::Void;
use super::super::sheet::Sheet;
use super::super::warnings::Warnings;
use super::subject::{recipe_of_trial, said, trial_name};
use crate::domain::trial::weigh_sheet::sheet::WeighLine;
use crate::domain::trial::{WeighFigure, WeighLineFigure, WeighSheet};
use crate::domain::{Grade, Work, cautions_at, work_out};
use crate::quantity::Kind;
use crate::t;
use crate::ui::page::bench::desk::{Desk, Made};
use crate::ui::page::bench::selection::sheet_name;
use crate::ui::page::bench::sheet::figure::line_name;
use crate::ui::page::bench::sheet::rows::target_dose;
use crate::ui::page::bench::sheet::text::{value, value_parts};
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;

/// The sheets of all batches of what is selected: the base sheet, or a run.
#[component]
pub fn WeighSheets() -> impl IntoView {
    let desk = expect_context::<Desk>();
    batches(sheet_name(desk, desk.state.bench.run.get_untracked()), &desk.made.get_untracked())
}

/// The sheets of a run, whichever is selected.
#[component]
pub fn RunSheets(
    /// Its place in the order of making.
    run: u16,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let run = u32::from(run);
    batches(sheet_name(desk, run), &desk.made_of_run(run))
}

/// A page a batch, or that there is none.
fn batches(name: String, made: &Made) -> AnyView {
    match made.sheet.as_ref().filter(|_| !made.old) {
        Some(sheet) => (1..=sheet.batches)
            .map(|batch| view! { <Batch name=name.clone() made=made.clone() sheet=sheet.clone() batch=batch/> })
            .collect_view()
            .into_any(),
        None => view! { <NoSheet name=name made=made.clone()/> }.into_any(),
    }
}

/// That nothing can be weighed by these entries, and why.
#[component]
fn NoSheet(
    /// The base sheet, or the run with its levels.
    name: String,
    /// The entries.
    made: Made,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let state = desk.state;
    let stops = made.findings.iter().filter(|finding| finding.grade == Grade::Stop);
    let line = |finding| {
        let message = desk.message(finding, &made.recipe, &made.typed);
        view! { <li>{message.what} " " {message.fix}</li> }
    };
    let reasons = stops.map(line).collect_view();
    view! {
        <Sheet title=trial_name(state) about=recipe_of_trial(state) kind=t!("paper-weigh-sheet")>
            <p><b>{name}</b></p>
            <Void/>
            <ul class="print-reasons">{reasons}</ul>
        </Sheet>
    }
}

#[component]
fn Batch(
    /// The base sheet, or the run with its levels.
    name: String,
    /// What the sheet was made from.
    made: Made,
    /// The sheet.
    sheet: WeighSheet,
    /// Which of its batches.
    batch: u32,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let state = desk.state;
    let unit = symbol_shown(state.unit(Kind::BenchMass));
    let volume_unit = symbol_shown(state.unit(Kind::BenchVolume));
    let row = |(at, line): (usize, &WeighLine)| weigh_row(state, &made, &sheet, at + 1, line);
    let rows = sheet.lines.iter().enumerate().map(row).collect_view();
    let lines = said(desk, &made, &made.findings);
    let moisture = work_out(&made.recipe).case.map(|case| case.solved.water.mat);
    let cautions = cautions_at(Work::Bench, &made.recipe, moisture);
    let kind = t!("paper-batch", batch = batch, batches = sheet.batches);
    let figure = |figure: WeighFigure| value(state, &sheet, figure).unwrap_or_default();
    let mat = figure(WeighFigure::MatMoist);
    let [stops, press_time, raw_board] =
        [WeighFigure::Stops, WeighFigure::PressTime, WeighFigure::RawBoard].map(figure);
    let total = value_parts(state, &sheet, WeighFigure::Batch).0;
    let spray = value_parts(state, &sheet, WeighFigure::SprayTime).0;
    let pair = |name: String, text: String| view! { <div><span>{name}</span><b>{text}</b></div> };
    let blank = |name: String| view! { <div><span>{name}</span><i class="blank"></i></div> };
    view! {
        <Sheet title=trial_name(state) about=recipe_of_trial(state) kind=kind>
            <p><b>{name}</b></p>
            <Warnings lines=lines/>
            <table class="print-table print-weigh">
                <thead><tr>
                    <th scope="col">"#"</th>
                    <th scope="col" class="l">{t!("paper-add-in-order")}</th>
                    <th scope="col">{t!("paper-target-mass", unit = unit)}</th>
                    <th scope="col">{volume_unit}</th>
                    <th scope="col">{t!("paper-spray-time")}</th>
                    <th scope="col">{t!("paper-actual-mass", unit = unit)}</th>
                    <th scope="col">{t!("paper-time")}</th>
                </tr></thead>
                <tbody>{rows}</tbody>
                <tfoot><tr>
                    <td></td>
                    <td class="l">{t!("paper-batch-total")}</td>
                    <td>{total}</td>
                    <td></td>
                    <td>{spray}</td>
                    <td class="blank"></td>
                    <td></td>
                </tr></tfoot>
            </table>
            <div class="print-lab">
                <section>
                    <h2>{t!("paper-mat")}</h2>
                    {pair(t!("paper-furnish-for-mat"), mat)}
                    {blank(t!("paper-furnish-laid", unit = unit))}
                    {blank(t!("paper-mat-moisture"))}
                    {blank(t!("paper-mat-height"))}
                </section>
                <section>
                    <h2>{t!("paper-press")}</h2>
                    {pair(t!("paper-stops"), stops)}
                    {pair(t!("paper-press-time"), press_time)}
                    {blank(t!("paper-press-time-actual"))}
                    {blank(t!("paper-plate-temperature"))}
                </section>
                <section>
                    <h2>{t!("paper-board")}</h2>
                    {pair(t!("paper-raw-board"), raw_board)}
                    {blank(t!("paper-board-mass", unit = unit))}
                    {blank(t!("paper-board-thickness"))}
                    {blank(t!("paper-remarks"))}
                </section>
            </div>
            <End cautions=cautions signature=[t!("paper-weighed-by"), t!("paper-checked-by"), t!("paper-date")]/>
        </Sheet>
    }
}

fn weigh_row(state: State, made: &Made, sheet: &WeighSheet, at: usize, line: &WeighLine) -> impl IntoView + use<> {
    let part = |part| value_parts(state, sheet, WeighFigure::Line(line.id, part)).0;
    let (dose, basis) = target_dose(state, made, sheet, line.id);
    view! {
        <tr>
            <td>{at}</td>
            <th scope="row" class="l"><b>{line_name(made, line.id)}</b><span>{joined(&dose, &basis)}</span></th>
            <td class="mass">{part(WeighLineFigure::Rounded)}</td>
            <td>{part(WeighLineFigure::Volume)}</td>
            <td>{part(WeighLineFigure::SprayTime)}</td>
            <td class="blank"></td>
            <td class="blank"></td>
        </tr>
    }
}
