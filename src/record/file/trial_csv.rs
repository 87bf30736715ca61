//! Trials as tables: boards, readings and weigh sheets.
//!
//! Numbers have metric units whatever the app shows; the head of a column names its unit.

use crate::domain::Draft;
use crate::domain::recipe::check::read_entry;
use crate::domain::trial::boards::board::BoardDraft;
use crate::domain::trial::boards::measured::measure;
use crate::domain::trial::series::draft::LevelDraft;
use crate::domain::trial::series::factor::{Factor, Level};
use crate::domain::trial::series::field::Of;
use crate::domain::trial::series::run::Run;
use crate::domain::trial::series::word::letter;
use crate::domain::trial::weigh_sheet::weighing::read_mass;
use crate::domain::trial::{LineId, Property};
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::kind::UnitSystem;
use crate::quantity::{Amount, Kind, Unit};
use crate::record::content::trial::TrialContent;
use crate::record::table::csv::{Csv, CsvCell};
use crate::record::time::utc;
use std::collections::BTreeSet;

/// The unit that a kind of figure has here.
pub(super) const fn metric(kind: Kind) -> Unit {
    kind.unit_in(UnitSystem::Metric)
}

pub(super) fn shown(amount: Amount) -> CsvCell {
    CsvCell::number(&editable(amount.get(metric(amount.kind)), DecimalMark::Point))
}

fn in_unit(name: &str, unit: Unit) -> CsvCell {
    match unit.symbol() {
        "" => CsvCell::text(name),
        symbol => CsvCell::text(format!("{name} [{symbol}]")),
    }
}

/// One row a board: its run with the levels of the factors, and the mean of each property that it gives.
#[must_use]
pub fn boards_csv(trial: &TrialContent, mark: DecimalMark) -> String {
    let series = trial.planned();
    let factors = series.as_ref().map_or(&[][..], |series| &series.factors);
    let mut head: Vec<CsvCell> = [
        "trial",
        "saved",
        "recipe",
        "revision",
        "revision_number",
        "board",
        "run",
        "standard_order",
        "block",
        "replicate",
    ]
    .map(CsvCell::text)
    .into();
    for (at, factor) in factors.iter().enumerate() {
        head.push(factor_head(at, factor));
    }
    head.extend(Property::ALL.iter().map(|property| in_unit(property.key(), metric(property.kind()))));
    head.push(CsvCell::text("note"));
    let mut csv = Csv::new(mark);
    csv.row(head);
    for board in &trial.boards {
        let run = board.run.and_then(|place| series.as_ref()?.run(place));
        let from = trial.made_from(board);
        let mut cells = vec![
            CsvCell::text(&trial.name),
            saved(trial),
            CsvCell::text(&from.recipe_name),
            from.revision.map_or(CsvCell::Blank, |revision| CsvCell::text(revision.to_string())),
            CsvCell::whole(from.revision_number),
            board_name(board),
            CsvCell::whole(board.run),
            CsvCell::whole(run.map(|run| run.standard)),
            CsvCell::whole(run.map(|run| run.block)),
            CsvCell::whole(run.map(|run| run.replicate)),
        ];
        for at in 0..factors.len() {
            let level = run.and_then(|run| series.as_ref()?.level(run, at)).map(level_cell);
            let made = || made_cell(run?, factors.get(at)?);
            cells.push(level.or_else(made).unwrap_or(CsvCell::Blank));
        }
        let measured = measure(board).board;
        for property in Property::ALL {
            let mean = measured.mean(*property).map(|mean| shown(Amount::from_base(property.kind(), mean)));
            cells.push(mean.unwrap_or(CsvCell::Blank));
        }
        cells.push(CsvCell::text(&board.note));
        csv.row(cells);
    }
    csv.finish()
}

/// The head of a factor's column: its letter, what it changes or its own name, and the unit.
pub(super) fn factor_head(at: usize, factor: &Factor) -> CsvCell {
    let name = match factor.of {
        Of::Own(_) => format!("{} {}", letter(at), factor.own.name.trim()),
        of => format!("{} {}", letter(at), of.key()),
    };
    match factor.levels.first() {
        Some(Level::Value(amount)) => in_unit(&name, metric(amount.kind)),
        Some(Level::Number { unit, .. }) => CsvCell::text(format!("{name} [{unit}]")),
        _ => CsvCell::text(name),
    }
}

pub(super) fn level_cell(level: &Level) -> CsvCell {
    match level {
        Level::Value(amount) => shown(*amount),
        Level::Number { value, .. } => CsvCell::number(&editable(*value, DecimalMark::Point)),
        Level::System(name) | Level::Text(name) => CsvCell::text(name),
    }
}

/// The level that a run outside the design was made with, as it was typed.
fn made_cell(run: &Run, factor: &Factor) -> Option<CsvCell> {
    let own = run.made.as_ref()?.levels.iter().find(|own| own.of == factor.of)?;
    let LevelDraft { value, name, .. } = &own.level;
    Some(match factor.of {
        Of::System => CsvCell::text(name),
        Of::Own(_) => CsvCell::text(format!("{} {}", value.text.trim(), own.own.unit.trim()).trim()),
        _ => CsvCell::text(format!("{} {}", value.text.trim(), value.unit.symbol())),
    })
}

/// When the trial was saved, in UTC; blank for work that was not.
pub(super) fn saved(trial: &TrialContent) -> CsvCell {
    if trial.saved_at == 0 { CsvCell::Blank } else { CsvCell::text(utc(trial.saved_at)) }
}

fn board_name(board: &BoardDraft) -> CsvCell {
    match board.name.trim() {
        "" => CsvCell::whole(Some(board.id.0)),
        name => CsvCell::text(name),
    }
}

/// One row a reading, as typed and as a number: for those who work the formulas themselves.
#[must_use]
pub fn readings_csv(trial: &TrialContent, mark: DecimalMark) -> String {
    let head = [
        "trial",
        "saved",
        "recipe",
        "revision_number",
        "board",
        "run",
        "reading",
        "piece",
        "typed",
        "typed_unit",
        "value",
        "unit",
    ];
    let mut csv = Csv::new(mark);
    csv.row(head.map(CsvCell::text));
    for board in &trial.boards {
        let from = trial.made_from(board);
        for field in board.fields() {
            let Some(entry) = board.entry(field).filter(|entry| !entry.is_blank()) else { continue };
            let unit = metric(field.kind());
            let read = read_entry(entry, field.kind(), &field.limit()).ok().flatten();
            let value = read.map(|base| shown(Amount::from_base(field.kind(), base)));
            let key = field.key();
            let reading = key.split_once('.').map_or(key.as_str(), |(name, _)| name);
            csv.row([
                CsvCell::text(&trial.name),
                saved(trial),
                CsvCell::text(&from.recipe_name),
                CsvCell::whole(from.revision_number),
                board_name(board),
                CsvCell::whole(board.run),
                CsvCell::text(reading),
                CsvCell::whole(field.piece().map(|at| u64::from(at) + 1)),
                CsvCell::number(entry.text.trim()),
                CsvCell::text(entry.unit.symbol()),
                value.unwrap_or(CsvCell::Blank),
                CsvCell::text(unit.symbol()),
            ]);
        }
    }
    csv.finish()
}

/// One row a line of each sheet and batch, the base sheet's and the runs': planned, and weighed where it was. `name` names a line in the
/// recipe of its run.
#[must_use]
pub fn sheets_csv(trial: &TrialContent, mark: DecimalMark, name: impl Fn(LineId, &Draft) -> String) -> String {
    let mass = metric(Kind::BenchMass);
    let mut csv = Csv::new(mark);
    csv.row([
        CsvCell::text("trial"),
        CsvCell::text("saved"),
        CsvCell::text("recipe"),
        CsvCell::text("revision_number"),
        CsvCell::text("run"),
        CsvCell::text("batch"),
        CsvCell::text("line"),
        CsvCell::text("name"),
        in_unit("exact", mass),
        in_unit("to_weigh", mass),
        in_unit("volume", metric(Kind::BenchVolume)),
        in_unit("weighed", mass),
    ]);
    for run in runs(trial) {
        let (recipe, _) = trial.basis_of(run);
        let from = trial.run_from(run);
        let Some(sheet) = trial.sheet_of(run) else { continue };
        for batch in (1..=u16::MAX).take(sheet.batches as usize) {
            for line in &sheet.lines {
                let grams = |mass: f64| shown(Amount::from_base(Kind::BenchMass, mass));
                let weighed = trial.batch(run, batch).and_then(|lines| lines.entry(line.id));
                let weighed = weighed.and_then(|entry| read_mass(entry).ok().flatten());
                csv.row([
                    CsvCell::text(&trial.name),
                    saved(trial),
                    CsvCell::text(&from.recipe_name),
                    CsvCell::whole(from.revision_number),
                    CsvCell::whole(run),
                    CsvCell::whole(Some(batch)),
                    CsvCell::text(line.id.key()),
                    CsvCell::text(name(line.id, &recipe)),
                    grams(line.mass.value),
                    grams(line.rounded.value),
                    line.volume
                        .map(|volume| shown(Amount::from_base(Kind::BenchVolume, volume.value)))
                        .unwrap_or(CsvCell::Blank),
                    weighed.map_or(CsvCell::Blank, grams),
                ]);
            }
        }
    }
    csv.finish()
}

/// The base sheet, alone or where it was weighed beside a series, then the runs in their order: planned, made or weighed. What was
/// weighed goes out while the plan has a slip in it, too.
fn runs(trial: &TrialContent) -> Vec<Option<u16>> {
    let series = trial.planned();
    let begun = || trial.weighed.iter().filter(|weighed| weighed.is_begun());
    let planned = series.iter().flat_map(|series| series.runs.iter().map(|run| run.place));
    let made = trial.made_runs.iter().map(|record| record.run.place);
    let all: BTreeSet<u16> = planned.chain(made).chain(begun().filter_map(|weighed| weighed.run)).collect();
    let base = all.is_empty() || begun().any(|weighed| weighed.run.is_none());
    base.then_some(None).into_iter().chain(all.into_iter().map(Some)).collect()
}
