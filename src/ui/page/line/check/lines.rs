//! What there is to say about the line check, as lines of the warning slot.

use super::now::CheckNow;
use super::row_text::{deviation_line, row_name};
use crate::browser::page;
use crate::domain::line::{
    CheckRow, LineCheck, LineField, LineFinding, LineFindingKind, LineVerdict, PumpAction, PumpCorrection, RunFigure,
    RunningField, Verdict,
};
use crate::domain::{Grade, Work, cautions_at};
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::lines::{common_lines, go_to_field, slot_line, to_pump, way_to};
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The fold with the reconciliation.
pub const RECONCILIATION: &str = "reconciliation";

/// The lines of the warning slot.
pub fn check_lines(state: State, now: &CheckNow) -> Vec<SlotLine> {
    let is_stale = |found: &&LineFinding| matches!(found.what, LineFindingKind::StaleReadings { .. });
    let (stale, others): (Vec<_>, Vec<_>) = now.findings.iter().partition(is_stale);
    let say = |found: &LineFinding| {
        let message = with_context(state, |context| words::line::finding(found, context));
        slot_line(found.grade, format!("{} {}", message.what, message.fix), way_to(state, found))
    };
    // Readings of another recipe come before what they deviate by: that says nothing of what runs.
    let mut lines: Vec<SlotLine> = stale.into_iter().map(say).collect();
    match &now.check {
        Some(check) => lines.push(summary(state, now, check)),
        None if now.findings.is_empty() && !now.rows.is_empty() => {
            let belt = LineField::Running(RunningField::Belt);
            let show = Callback::new(move |()| go_to_field(state, belt));
            lines.push(slot_line(Grade::Note, t!("check-nothing-read"), Some(show)));
        }
        None => {}
    }
    lines.extend(common_lines(state));
    lines.extend(others.into_iter().map(say));
    if let Some(check) = &now.check {
        lines.extend(check.corrections.iter().filter_map(|correction| of_pump(state, correction)));
        let computed = computed_outside(state, &now.rows, check);
        lines.extend(computed.map(|words| slot_line(Grade::Unusual, words, None)));
        lines.extend(hazards(state, now));
        if let Some(split) = &check.density_split {
            let message = with_context(state, |context| words::line::split(split, context));
            lines.push(slot_line(Grade::Note, format!("{} {}", message.what, message.fix), None));
        }
    }
    lines
}

/// How many readings are out of tolerance and which; `None` where none is.
pub fn readings_outside(state: State, rows: &[CheckRow]) -> Option<String> {
    let outside: Vec<&CheckRow> = rows.iter().filter(|row| row.verdict() == Verdict::Outside).collect();
    let name = |row: &&CheckRow| format!("{} {}", row_name(state, row.figure).0, deviation_line(state, row));
    let which = outside.iter().map(name).collect::<Vec<_>>().join(", ");
    let read = rows.iter().filter(|row| row.verdict() != Verdict::NotRead).count();
    let out = outside.len();
    (out > 0).then(|| t!("check-outside", out = out, read = read, which = which))
}

/// How many readings are out of tolerance and which, and which reading to distrust.
fn summary(state: State, now: &CheckNow, check: &LineCheck) -> SlotLine {
    let outside = readings_outside(state, &now.rows);
    let is_out = outside.is_some();
    let counted = outside.unwrap_or_else(|| t!("check-all-within", read = now.read()));
    let verdict = check.reconciliation.as_ref().map(|found| {
        let message = with_context(state, |context| words::line::verdict(found, context));
        let is_doubted = matches!(found.verdict, LineVerdict::Distrust(_) | LineVerdict::Unexplained);
        (is_doubted, format!("{} {}", message.what, message.fix))
    });
    let is_doubted = verdict.as_ref().is_some_and(|(is_doubted, _)| *is_doubted);
    let grade = if is_out || is_doubted { Grade::Unusual } else { Grade::Note };
    let words = verdict.map_or_else(|| counted.clone(), |(_, verdict)| format!("{counted} {verdict}"));
    let why = Callback::new(|()| page::open_fold(RECONCILIATION));
    slot_line(grade, words, Some(why))
}

/// What has to be done before a pump gets its new setting.
fn of_pump(state: State, correction: &PumpCorrection) -> Option<SlotLine> {
    let is_said = matches!(
        correction.action,
        PumpAction::Stop
            | PumpAction::CatchTestFirst { .. }
            | PumpAction::NoCatchTest
            | PumpAction::Distrusted
            | PumpAction::Cannot { .. }
            | PumpAction::Unsettled
    );
    is_said.then(|| {
        let action = with_context(state, |context| words::line::action(correction, context));
        let pump = correction.pump;
        let words = t!("check-of-pump", pump = pump_name(state, pump), action = action);
        slot_line(Grade::Unusual, words, Some(Callback::new(move |()| to_pump(state, pump))))
    })
}

/// What the moisture of the mat adds to the cautions of the recipe.
fn hazards(state: State, now: &CheckNow) -> Vec<SlotLine> {
    let (always, read) = state.draft.with(|draft| {
        (cautions_at(Work::LineCheck, draft, None), cautions_at(Work::LineCheck, draft, now.mat_moisture()))
    });
    let added = read.into_iter().filter(|caution| !always.contains(caution));
    let line = |caution| {
        let words = words::caution(caution, state.units.with(|units| units.mark));
        slot_line(Grade::Unusual, format!("{}: {}", words.title, words.text), None)
    };
    added.map(line).collect()
}

/// What is computed from the readings and out of tolerance, where no row of the table says so.
pub fn computed_outside(state: State, rows: &[CheckRow], check: &LineCheck) -> Option<String> {
    let is_row = |figure: RunFigure| rows.iter().any(|row| row.figure == figure && row.verdict() != Verdict::NotRead);
    let is_said = |figure: RunFigure| match figure {
        // A dose is off as its pumps are.
        RunFigure::Dose(_) | RunFigure::Water => false,
        _ => !is_row(figure),
    };
    let outside = check.checks.iter().filter(|check| check.verdict() == Verdict::Outside && is_said(check.figure));
    let each = outside.map(|check| {
        let label = words::line::run_figure(check.figure).label;
        format!("{label} {}", with_context(state, |context| words::line::deviation(check, context)))
    });
    let all: Vec<String> = each.collect();
    (!all.is_empty()).then(|| t!("check-computed-outside", which = all.join(", ")))
}
