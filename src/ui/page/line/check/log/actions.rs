//! What is done with the log: a check is saved, struck out, restored; the log is read and exported.

use crate::browser::clock;
use crate::domain::line::RunFigure;
use crate::record::content::check_log::{CheckContent, LoggedFigure};
use crate::record::file::log_csv::log_csv;
use crate::record::{CheckId, CheckRecord, LineCheckFile};
use crate::t;
use crate::ui::page::line::check::now::{check_now, read_at};
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// Puts what runs now into the log.
pub fn save_check(state: State) {
    let now = untrack(|| check_now(state));
    let Some(check) = now.check.as_ref() else {
        state.tell(t!("check-nothing-to-save"));
        return;
    };
    let read = now.rows.iter().filter_map(|row| row.check.as_ref());
    let computed = check.checks.iter().filter(|check| now.row(check.figure).is_none_or(|row| row.check.is_none()));
    let name = |figure| match figure {
        RunFigure::Dose(id) => Some(state.liquid_name(id)),
        RunFigure::Flow(id) => Some(pump_name(state, id)),
        _ => None,
    };
    let figures = untrack(|| read.chain(computed).filter_map(|check| LoggedFigure::from_check(check, name)).collect());
    let content = CheckContent {
        at: untrack(|| read_at(state)),
        author: state.stamp().author,
        recipe: state.title.with_untracked(|title| title.name.clone()),
        revision: state.from.get_untracked(),
        remark: state.line.record.with_untracked(|record| record.book.remark.trim().to_owned()),
        figures,
        strikes: None,
    };
    if state.change_library(|library| library.log_check_once(content)).is_some() {
        state.line.edit(|book| book.remark.clear());
        read_log(state);
        state.tell(t!("check-saved"));
    }
}

/// Strikes a check out of the log.
pub fn strike(state: State, check: &CheckRecord) {
    let stamp = state.stamp();
    if state.change_library(|library| library.strike_check(check, stamp.at, stamp.author)).is_some() {
        read_log(state);
        let own = check.clone();
        state.tell_undo(t!("check-struck"), move || restore(state, &own));
    }
}

/// Makes a check that was struck out count again.
pub fn restore(state: State, check: &CheckRecord) {
    let stamp = state.stamp();
    if state.change_library(|library| library.restore_check(check, stamp.at, &stamp.author)).is_some() {
        read_log(state);
        state.tell(t!("check-restored"));
    }
}

/// Reads the log from the store.
pub fn read_log(state: State) {
    if let Ok(log) = state.library.with_untracked(|library| library.log()) {
        state.line.struck.set(log.struck);
        state.line.log.set(log.checks);
    }
}

/// The log as a table.
pub fn export_log(state: State) {
    let name = format!("line-log-{}.csv", clock::date(clock::now()));
    let mark = state.units.get_untracked().mark;
    let number = |id| state.library.with_untracked(|library| library.version(id).map(|version| version.number));
    let text = state.line.log.with_untracked(|log| log_csv(log, mark, number));
    state.hand_out(&name, "text/csv", &text);
}

/// The line check as a file, with the recipe it is compared with.
pub fn export_check(state: State) {
    let at = clock::now();
    let name = state.title.with_untracked(|title| title.name.clone());
    let draft = state.draft.with_untracked(Clone::clone);
    let book = state.line.record.with_untracked(|record| record.book.clone());
    if let Ok(text) = LineCheckFile::new(name, at, draft, book).text() {
        state.hand_out(&format!("line-check-{}.json", clock::date(at)), "application/json", &text);
    }
}

/// What a logged figure is called.
pub fn logged_name(figure: &LoggedFigure) -> String {
    let plain = [
        RunFigure::Water,
        RunFigure::FurnishMoisture,
        RunFigure::MatMoisture,
        RunFigure::MatWeight,
        RunFigure::Density,
        RunFigure::BeltScale,
        RunFigure::FibreMoisture,
        RunFigure::LineSpeed,
        RunFigure::MatWidth,
        RunFigure::RawDensity,
        RunFigure::Thickness,
        RunFigure::BoardMoisture,
    ];
    match (&figure.of, plain.into_iter().find(|plain| plain.key() == figure.figure)) {
        (Some(of), _) if figure.figure == "flow" => t!("check-flow-of", pump = of.clone()),
        (Some(of), _) => t!("check-dose-of", liquid = of.clone()),
        (None, Some(plain)) => words::line::run_figure(plain).label.to_owned(),
        (None, None) => figure.figure.clone(),
    }
}

/// The checks that count.
pub fn counting(state: State) -> Vec<CheckRecord> {
    state.line.struck.with(|struck| {
        state.line.log.with(|log| log.iter().filter(|check| !struck.contains(&CheckId(check.id()))).cloned().collect())
    })
}
