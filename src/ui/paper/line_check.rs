//! A line check: what was read, how far it is off, and what to set.

use super::context::{amount, line_words, shown, solved, symbol};
use super::end::End;
use super::not_valid::{LineNotValid, NothingPaper, line_lines};
use super::sheet::{Sheet, line_kind, recipe_line};
use super::warnings::{PaperLine, Warnings};
use crate::browser::clock;
use crate::domain::line::{
    Check, CheckRow, FormerCorrection, LineCheck, LineField, LineFinding, LineVerdict, PumpCorrection, PumpField,
    RunFigure, RunningField, Verdict, at_conditions, check_readings, check_rows, on_line, read_running, stale,
};
use crate::domain::{Caution, Grade, Work, cautions_at};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::field::number_text::in_box;
use crate::ui::page::line::lines::common_lines;
use crate::ui::page::line::settings_text::{pump_name, signed};
use crate::ui::page::line::{computed_outside, readings_outside};
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{Message, words};
use leptos::prelude::*;

/// The document.
#[component]
pub fn LineCheckPaper() -> impl IntoView {
    let state = expect_context::<State>();
    let off = state.outcome.with(|outcome| on_line(outcome.case.as_ref()).err());
    if let Some(off) = off {
        return view! { <LineNotValid title=t!("line-tab-check") lines=line_lines(state, &[off])/> }.into_any();
    }
    match check(state) {
        Some(read) => view! { <Checked read=read/> }.into_any(),
        None => view! { <NothingPaper kind=t!("line-tab-check") why=t!("paper-no-readings")/> }.into_any(),
    }
}

/// The check of the present readings.
struct ReadCheck {
    /// What it says.
    check: LineCheck,
    /// The readings beside their targets, as the page counts them.
    rows: Vec<CheckRow>,
    /// What is wrong with the readings.
    said: Vec<LineFinding>,
}

/// The check of the present readings; `None` until belt scale and fibre moisture are read.
fn check(state: State) -> Option<ReadCheck> {
    let changed = state.line.record.with(|record| record.planned.as_ref().and_then(|planned| planned.started));
    let recipe = state.title.with(|title| title.name.clone());
    solved(state, |draft, case, line, book| {
        let (readings, mut said) = read_running(book);
        said.extend(stale(book, &recipe, changed));
        let (readings, tolerances) = readings.zip(line.tolerances)?;
        let check = check_readings(draft, case, line, &tolerances, &readings)?;
        let set_for = at_conditions(case, book, &recipe).case.unwrap_or_else(|| case.clone());
        let rows = check_rows(draft, &set_for, line, book, Some(&readings), Some(&check));
        Some(ReadCheck { check, rows, said })
    })
    .flatten()
}

#[component]
fn Checked(
    /// The check.
    read: ReadCheck,
) -> impl IntoView {
    let state = expect_context::<State>();
    let lines = lines(state, &read);
    let check = read.check;
    let measured = check.actual.sample_moisture.unwrap_or(check.actual.mat_moisture);
    let mut cautions = state.draft.with(|draft| cautions_at(Work::LineCheck, draft, Some(measured)));
    cautions.push(Caution::Advice);
    let read_on =
        state.line.book(|book| book.read_on.as_ref().map(|on| t!("paper-read-at", time = clock::date_time(on.at))));
    let remark = state.line.book(|book| book.remark.trim().to_owned());
    let remark = (!remark.is_empty()).then(|| view! { <p class="print-note">{remark}</p> });
    let rows = check.checks.iter().map(|check| check_row(state, check)).collect_view();
    let pumps = check.corrections.iter().map(|correction| correction_row(state, correction)).collect_view();
    let former = check.former.map(|former| view! { <p class="print-former">{former_words(state, &former)}</p> });
    let about = [Some(recipe_line(state)), read_on].into_iter().flatten().collect::<Vec<_>>().join(" · ");
    view! {
        <Sheet title=t!("line-tab-check") about=about kind=line_kind(state)>
            <Warnings lines=lines/>
            <table class="print-table print-checks">
                <thead><tr>
                    <th scope="col" class="l">{t!("paper-figure")}</th>
                    <th scope="col">{t!("paper-target")}</th>
                    <th scope="col">{t!("paper-actual")}</th>
                    <th scope="col">{t!("paper-deviation")}</th>
                    <th scope="col">{t!("paper-tolerance")}</th>
                    <th scope="col" class="l">{t!("paper-status")}</th>
                </tr></thead>
                <tbody>{rows}</tbody>
            </table>
            <table class="print-table print-corrections">
                <thead><tr>
                    <th scope="col" class="l">{t!("line-pump")}</th>
                    <th scope="col">{t!("paper-target")}</th>
                    <th scope="col">{t!("paper-actual")}</th>
                    <th scope="col">{t!("paper-set-now")}</th>
                    <th scope="col" class="l">{t!("paper-do")}</th>
                </tr></thead>
                <tbody>{pumps}</tbody>
            </table>
            {former}
            <Readings/>
            {remark}
            <End cautions=cautions signature=[t!("paper-read-by"), t!("paper-checked-by"), t!("paper-date-time")]/>
        </Sheet>
    }
}

/// What the readings say together, then what there is to say about each.
fn lines(state: State, ReadCheck { check, rows, said }: &ReadCheck) -> Vec<PaperLine> {
    let mut lines: Vec<PaperLine> = common_lines(state).into_iter().map(PaperLine::from).collect();
    let outside = [readings_outside(state, rows), computed_outside(state, rows, check)];
    lines.extend(outside.into_iter().flatten().map(|words| PaperLine { grade: Grade::Unusual, words }));
    lines.extend(line_lines(state, said));
    lines.extend(line_lines(state, &check.findings));
    let mut add =
        |grade, message: Message| lines.push(PaperLine { grade, words: format!("{} {}", message.what, message.fix) });
    if let Some(found) = &check.reconciliation {
        let grade = match found.verdict {
            LineVerdict::Consistent | LineVerdict::NothingChecked => Grade::Note,
            LineVerdict::Distrust(_) | LineVerdict::Unexplained => Grade::Unusual,
        };
        add(grade, line_words(state, |context| words::line::verdict(found, context)));
    }
    if let Some(split) = &check.density_split {
        add(Grade::Note, line_words(state, |context| words::line::split(split, context)));
    }
    lines
}

/// A figure by its name, a dose with its liquid's.
fn name(state: State, figure: RunFigure) -> String {
    let label = words::line::run_figure(figure).label;
    match figure {
        RunFigure::Dose(id) => format!("{label}, {}", state.liquid_name(id)),
        _ => label.to_owned(),
    }
}

fn check_row(state: State, check: &Check) -> impl IntoView + use<> {
    let (words, name) = (words::line::run_figure(check.figure), name(state, check.figure));
    let verdict = check.verdict();
    let status = match verdict {
        Verdict::Within => t!("paper-within").into_any(),
        Verdict::Outside => view! { <b><Mark grade=Grade::Unusual/> " " {t!("paper-outside")}</b> }.into_any(),
        Verdict::NotRead => t!("paper-not-read").into_any(),
    };
    let deviation = line_words(state, |context| words::line::deviation(check, context));
    let deviation = if verdict == Verdict::NotRead { "–".to_owned() } else { deviation };
    view! {
        <tr class:warn=verdict == Verdict::Outside>
            <th scope="row" class="l"><b>{name}</b><span>{words.note}</span></th>
            <td>{shown(state, check.target)}</td>
            <td>{shown(state, check.actual)}</td>
            <td><b>{deviation}</b></td>
            <td>"± " {amount(state, Kind::Share, check.tolerance.value)}</td>
            <td class="l">{status}</td>
        </tr>
    }
}

fn correction_row(state: State, correction: &PumpCorrection) -> impl IntoView + use<> {
    let action = line_words(state, |context| words::line::action(correction, context));
    let now = correction.setting_now.map(|now| shown(state, now.amount(correction.unit)));
    view! {
        <tr>
            <th scope="row" class="l"><b>{pump_name(state, correction.pump)}</b><span>{words::line::source(correction.source)}</span></th>
            <td>{amount(state, Kind::LiquidFlow, correction.target.value)}</td>
            <td>{amount(state, Kind::LiquidFlow, correction.now.value)}</td>
            <td>{now}</td>
            <td class="l do"><b>{action}</b></td>
        </tr>
    }
}

fn former_words(state: State, former: &FormerCorrection) -> String {
    let change = signed(state, former.factor.value - 1.0);
    match former.line_speed_now.zip(former.line_speed) {
        Some((now, then)) => t!(
            "paper-former-or-speed",
            change = change,
            now = amount(state, Kind::LineSpeed, now.value),
            then = amount(state, Kind::LineSpeed, then.value)
        ),
        None => t!("paper-former", change = change),
    }
}

/// What was read, as it was typed.
#[component]
fn Readings() -> impl IntoView {
    let state = expect_context::<State>();
    let pairs = state.line.book(|book| {
        let one = |field: LineField| {
            let entry = book.entry(field).filter(|entry| !entry.is_blank())?;
            let kind = book.kind(field);
            let units = state.line_units_at(field, kind);
            let value = joined(&in_box(entry, kind, &units), &symbol(state, units.unit(kind)));
            let name = line_words(state, |context| words::line::field_name(field, context));
            Some((name, value))
        };
        let pumps = book.pumps.iter().flat_map(|pump| {
            [PumpField::Reading, PumpField::PresentSetting].map(|part| LineField::Pump(pump.id, part))
        });
        let running = RunningField::ALL.iter().map(|part| LineField::Running(*part));
        running.chain(pumps).filter_map(one).collect::<Vec<_>>()
    });
    let all = pairs.into_iter().map(|(name, value)| format!("{name}\u{a0}{value}")).collect::<Vec<_>>().join("; ");
    view! { <p class="print-small"><b>{t!("paper-readings")}</b> " " {all} "."</p> }
}
