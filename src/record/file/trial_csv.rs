//! Trials as tables: boards, readings and weigh sheets.
//!
//! Numbers have metric units whatever the app shows; the head of a column names its unit.

use crate::domain::Draft;
use crate::domain::recipe::check::read_entry;
use crate::domain::trial::boards::board::BoardDraft;
use crate::domain::trial::boards::field::{BendingField, BoardField, BondField, PieceField, SwellingField};
use crate::domain::trial::boards::measured::measure;
use crate::domain::trial::series::factor::{Factor, Level};
use crate::domain::trial::series::field::Of;
use crate::domain::trial::series::word::letter;
use crate::domain::trial::weigh_sheet::plan::plan;
use crate::domain::trial::weigh_sheet::sheet::{WeighSheet, make_out};
use crate::domain::trial::weigh_sheet::weighing::read_mass;
use crate::domain::trial::{LineId, Property};
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::kind::System;
use crate::quantity::{Amount, Kind, Unit};
use crate::record::content::trial::TrialContent;
use crate::record::table::csv::{Cell, Csv};
use crate::record::time::utc;

/// The unit that a kind of figure has here.
const fn metric(kind: Kind) -> Unit {
    kind.unit_in(System::Metric)
}

fn shown(amount: Amount) -> Cell {
    Cell::number(&editable(amount.get(metric(amount.kind)), DecimalMark::Point))
}

fn in_unit(name: &str, unit: Unit) -> Cell {
    match unit.symbol() {
        "" => Cell::text(name),
        symbol => Cell::text(format!("{name} [{symbol}]")),
    }
}

impl TrialContent {
    /// The sheet of a run, or the base sheet.
    fn made_out(&self, run: Option<u16>) -> Option<WeighSheet> {
        let (recipe, sheet) = self.basis_of(run);
        make_out(plan(&recipe, &sheet).plan?).sheet
    }
}

/// One row a board: its run with the levels of the factors, and the mean of each property that it gives.
#[must_use]
pub fn boards_csv(trial: &TrialContent, mark: DecimalMark) -> String {
    let series = trial.planned();
    let factors = series.as_ref().map_or(&[][..], |series| &series.factors);
    let mut head: Vec<Cell> =
        ["trial", "saved", "recipe", "revision", "board", "run", "standard", "block", "replicate"]
            .map(Cell::text)
            .into();
    for (at, factor) in factors.iter().enumerate() {
        head.push(factor_head(at, factor));
    }
    head.extend(Property::ALL.iter().map(|property| in_unit(property.key(), metric(property.kind()))));
    head.push(Cell::text("note"));
    let mut csv = Csv::new(mark);
    csv.row(head);
    for board in &trial.boards {
        let run = board.run.and_then(|place| series.as_ref()?.run(place));
        let from = trial.made_from(board);
        let mut cells = vec![
            Cell::text(&trial.name),
            saved(trial),
            Cell::text(&from.recipe_name),
            from.revision.map_or(Cell::Blank, |revision| Cell::text(revision.to_string())),
            board_name(board),
            Cell::whole(board.run),
            Cell::whole(run.map(|run| run.standard)),
            Cell::whole(run.map(|run| run.block)),
            Cell::whole(run.map(|run| run.replicate)),
        ];
        for at in 0..factors.len() {
            let level = run.and_then(|run| series.as_ref()?.level(run, at));
            cells.push(level.map_or(Cell::Blank, level_cell));
        }
        let measured = measure(board).board;
        for property in Property::ALL {
            let mean = measured.mean(*property).map(|mean| shown(Amount::from_base(property.kind(), mean)));
            cells.push(mean.unwrap_or(Cell::Blank));
        }
        cells.push(Cell::text(&board.note));
        csv.row(cells);
    }
    csv.finish()
}

/// The head of a factor's column: its letter, what it changes or its own name, and the unit.
fn factor_head(at: usize, factor: &Factor) -> Cell {
    let name = match factor.of {
        Of::Own(_) => format!("{} {}", letter(at), factor.own.name.trim()),
        of => format!("{} {}", letter(at), of.key()),
    };
    match factor.levels.first() {
        Some(Level::Value(amount)) => in_unit(&name, metric(amount.kind)),
        Some(Level::Number { unit, .. }) => Cell::text(format!("{name} [{unit}]")),
        _ => Cell::text(name),
    }
}

fn level_cell(level: &Level) -> Cell {
    match level {
        Level::Value(amount) => shown(*amount),
        Level::Number { value, .. } => Cell::number(&editable(*value, DecimalMark::Point)),
        Level::System(name) | Level::Text(name) => Cell::text(name),
    }
}

/// When the trial was saved, in UTC; blank for work that was not.
fn saved(trial: &TrialContent) -> Cell {
    if trial.saved_at == 0 { Cell::Blank } else { Cell::text(utc(trial.saved_at)) }
}

fn board_name(board: &BoardDraft) -> Cell {
    match board.name.trim() {
        "" => Cell::whole(Some(board.id.0)),
        name => Cell::text(name),
    }
}

/// One row a reading, as typed and as a number: for those who work the formulas themselves.
#[must_use]
pub fn readings_csv(trial: &TrialContent, mark: DecimalMark) -> String {
    let head = ["trial", "saved", "board", "run", "reading", "piece", "typed", "typed_unit", "value", "unit"];
    let mut csv = Csv::new(mark);
    csv.row(head.map(Cell::text));
    for board in &trial.boards {
        for (field, piece) in fields(board) {
            let Some(entry) = board.entry(field).filter(|entry| !entry.is_blank()) else { continue };
            let unit = metric(field.kind());
            let read = read_entry(entry, field.kind(), &field.limit()).ok().flatten();
            let value = read.map(|base| shown(Amount::from_base(field.kind(), base)));
            let key = field.key();
            let reading = key.split_once('.').map_or(key.as_str(), |(name, _)| name);
            csv.row([
                Cell::text(&trial.name),
                saved(trial),
                board_name(board),
                Cell::whole(board.run),
                Cell::text(reading),
                Cell::whole(piece.map(|at| u64::from(at) + 1)),
                Cell::number(entry.text.trim()),
                Cell::text(entry.unit.symbol()),
                value.unwrap_or(Cell::Blank),
                Cell::text(unit.symbol()),
            ]);
        }
    }
    csv.finish()
}

/// Every box of a board, with the place of its piece.
fn fields(board: &BoardDraft) -> Vec<(BoardField, Option<u8>)> {
    let places = |count: usize| (0..=u8::MAX).take(count);
    let mut all =
        vec![(BoardField::Laid, None), (BoardField::Mass, None), (BoardField::Length, None), (BoardField::Width, None)];
    all.extend(places(board.thickness.len()).map(|at| (BoardField::Thickness(at), Some(at))));
    all.push((BoardField::Moisture, None));
    for at in places(board.pieces.len()) {
        all.extend(PieceField::ALL.iter().map(|field| (BoardField::Piece(at, *field), Some(at))));
    }
    for at in places(board.bending.len()) {
        all.extend(BendingField::ALL.iter().map(|field| (BoardField::Bending(at, *field), Some(at))));
    }
    for at in places(board.bond.len()) {
        all.extend(BondField::ALL.iter().map(|field| (BoardField::Bond(at, *field), Some(at))));
    }
    for at in places(board.swelling.len()) {
        all.extend(SwellingField::ALL.iter().map(|field| (BoardField::Swelling(at, *field), Some(at))));
    }
    all
}

/// One row a line of each sheet and batch, the base sheet's and the runs': planned, and weighed where it was. `name` names a line in the
/// recipe of its run.
#[must_use]
pub fn sheets_csv(trial: &TrialContent, mark: DecimalMark, name: impl Fn(LineId, &Draft) -> String) -> String {
    let mass = metric(Kind::BenchMass);
    let mut csv = Csv::new(mark);
    csv.row([
        Cell::text("trial"),
        Cell::text("saved"),
        Cell::text("run"),
        Cell::text("batch"),
        Cell::text("line"),
        Cell::text("name"),
        in_unit("exact", mass),
        in_unit("to_weigh", mass),
        in_unit("volume", metric(Kind::BenchVolume)),
        in_unit("weighed", mass),
    ]);
    let series = trial.planned();
    // The base sheet comes first: alone, or where it was weighed beside a series.
    let base = series.is_none() || trial.weighed.iter().any(|weighed| weighed.run.is_none() && weighed.is_begun());
    let planned = series.iter().flat_map(|series| series.runs.iter().map(|run| Some(run.place)));
    let runs: Vec<Option<u16>> = base.then_some(None).into_iter().chain(planned).collect();
    for run in runs {
        let (recipe, _) = trial.basis_of(run);
        let Some(sheet) = trial.made_out(run) else { continue };
        for batch in (1..=u16::MAX).take(sheet.batches as usize) {
            for line in &sheet.lines {
                let grams = |mass: f64| shown(Amount::from_base(Kind::BenchMass, mass));
                let weighed = trial.batch(run, batch).and_then(|lines| lines.entry(line.id));
                let weighed = weighed.and_then(|entry| read_mass(entry).ok().flatten());
                csv.row([
                    Cell::text(&trial.name),
                    saved(trial),
                    Cell::whole(run),
                    Cell::whole(Some(batch)),
                    Cell::text(line.id.key()),
                    Cell::text(name(line.id, &recipe)),
                    grams(line.mass.value),
                    grams(line.rounded.value),
                    line.volume
                        .map(|volume| shown(Amount::from_base(Kind::BenchVolume, volume.value)))
                        .unwrap_or(Cell::Blank),
                    weighed.map_or(Cell::Blank, grams),
                ]);
            }
        }
    }
    csv.finish()
}
