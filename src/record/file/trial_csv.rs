//! Trials as tables: boards, readings and weigh sheets.
//!
//! Numbers have metric units whatever the app shows; the head of a column names its unit.

use crate::domain::Draft;
use crate::domain::recipe::check::read_entry;
use crate::domain::trial::boards::board::BoardDraft;
use crate::domain::trial::boards::field::{BendingField, BoardField, BondField, PieceField, SwellingField};
use crate::domain::trial::boards::measured::measure;
use crate::domain::trial::series::factor::Level;
use crate::domain::trial::series::word::letter;
use crate::domain::trial::weigh_sheet::plan::plan;
use crate::domain::trial::weigh_sheet::sheet::{WeighSheet, make_out};
use crate::domain::trial::weigh_sheet::weighing::read_mass;
use crate::domain::trial::{LineId, Property};
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::kind::UnitSystem;
use crate::quantity::{Amount, Kind, Unit};
use crate::record::content::trial::TrialContent;
use crate::record::table::csv::{Csv, CsvCell};
use crate::record::time::utc;

/// The unit that a kind of figure has here.
const fn metric(kind: Kind) -> Unit {
    kind.unit_in(UnitSystem::Metric)
}

fn shown(amount: Amount) -> CsvCell {
    CsvCell::number(&editable(amount.get(metric(amount.kind)), DecimalMark::Point))
}

fn in_unit(name: &str, unit: Unit) -> CsvCell {
    match unit.symbol() {
        "" => CsvCell::text(name),
        symbol => CsvCell::text(format!("{name} [{symbol}]")),
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
    let mut head: Vec<CsvCell> =
        ["trial", "saved", "recipe", "revision", "board", "run", "standard", "block", "replicate"]
            .map(CsvCell::text)
            .into();
    for (at, factor) in factors.iter().enumerate() {
        let name = format!("{} {}", letter(at), factor.of.key());
        head.push(match factor.levels.first() {
            Some(Level::Value(amount)) => in_unit(&name, metric(amount.kind)),
            _ => CsvCell::text(name),
        });
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
            board_name(board),
            CsvCell::whole(board.run),
            CsvCell::whole(run.map(|run| run.standard)),
            CsvCell::whole(run.map(|run| run.block)),
            CsvCell::whole(run.map(|run| run.replicate)),
        ];
        for at in 0..factors.len() {
            let level = run.and_then(|run| series.as_ref()?.level(run, at));
            cells.push(match level {
                Some(Level::Value(amount)) => shown(*amount),
                Some(Level::System(name)) => CsvCell::text(name),
                None => CsvCell::Blank,
            });
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

/// When the trial was saved, in UTC; blank for work that was not.
fn saved(trial: &TrialContent) -> CsvCell {
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
    let head = ["trial", "saved", "board", "run", "reading", "piece", "typed", "typed_unit", "value", "unit"];
    let mut csv = Csv::new(mark);
    csv.row(head.map(CsvCell::text));
    for board in &trial.boards {
        for (field, piece) in fields(board) {
            let Some(entry) = board.entry(field).filter(|entry| !entry.is_blank()) else { continue };
            let unit = metric(field.kind());
            let read = read_entry(entry, field.kind(), &field.limit()).ok().flatten();
            let value = read.map(|base| shown(Amount::from_base(field.kind(), base)));
            let key = field.key();
            let reading = key.split_once('.').map_or(key.as_str(), |(name, _)| name);
            csv.row([
                CsvCell::text(&trial.name),
                saved(trial),
                board_name(board),
                CsvCell::whole(board.run),
                CsvCell::text(reading),
                CsvCell::whole(piece.map(|at| u64::from(at) + 1)),
                CsvCell::number(entry.text.trim()),
                CsvCell::text(entry.unit.symbol()),
                value.unwrap_or(CsvCell::Blank),
                CsvCell::text(unit.symbol()),
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
        CsvCell::text("trial"),
        CsvCell::text("saved"),
        CsvCell::text("run"),
        CsvCell::text("batch"),
        CsvCell::text("line"),
        CsvCell::text("name"),
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
                    CsvCell::text(&trial.name),
                    saved(trial),
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
