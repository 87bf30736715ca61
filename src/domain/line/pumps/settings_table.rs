//! Pump settings over fibre flows (rows) and fibre moistures (columns).

use crate::domain::balance::outcome::Case;
use crate::domain::balance::solve::solve;
use crate::domain::line::book::LineBook;
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::entries::{TableField, TableRows};
use crate::domain::line::field::LineField;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::pumps::pump::{Pump, PumpId};
use crate::domain::line::pumps::pump_settings::bare;
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::pumps::setting::Setting;
use crate::domain::line::read::Reader;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::input::{Feed, Input};
use crate::quantity::{Moisture, Unit};
use std::ops::Range;
use uom::ConstZero;
use uom::si::f64::MassRate;

/// Most rows of a card.
pub const MOST_ROWS: usize = 60;
/// Most columns of a card.
pub const MOST_COLUMNS: usize = 30;

/// A rate card.
#[derive(Debug, Clone, PartialEq)]
pub struct SettingsTable {
    /// What the rows mean.
    pub rows: TableRows,
    /// The fibre flows, one a row.
    pub flows: Vec<MassRate>,
    /// The fibre moistures, one a column.
    pub moistures: Vec<Moisture>,
    /// The pumps on the card.
    pub pumps: Vec<PumpId>,
    /// Row and column of the recipe as it is, between those asked for; `None` where it lies outside the table.
    pub present: Option<(usize, usize)>,
    /// The cells, row by row; `None` where the recipe has no balance.
    pub cells: Vec<Vec<Option<SettingsCell>>>,
}

/// One cell of a card.
#[derive(Debug, Clone, PartialEq)]
pub struct SettingsCell {
    /// Oven-dry fibre flow.
    pub fibre: MassRate,
    /// What the belt scale reads.
    pub fibre_wet: MassRate,
    /// The furnish holds more water than the recipe wants; no water is dosed.
    pub too_wet: bool,
    /// What each pump of the card has to do.
    pub pumps: Vec<CellPump>,
}

/// One pump in a cell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CellPump {
    /// Flow wanted. Zero: the pump stands.
    pub mass: MassRate,
    /// Its setting as the drive takes it, beyond what was tested too: see the mark. `None` beyond what is allowed.
    pub setting: Option<Setting>,
    /// The mark: anything but [`RangeStatus::Within`] leaves the pump's range.
    pub range_status: RangeStatus,
}

/// A part of a table that fits on a page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TablePart {
    /// Its rows.
    pub rows: Range<usize>,
    /// Its pumps, by their places in the table, each with its columns.
    pub pumps: Vec<(usize, Range<usize>)>,
}

impl SettingsTable {
    /// The table cut into parts of at most so many columns and rows. A pump is cut only where its columns alone are too many.
    #[must_use]
    pub fn parts(&self, most_columns: usize, most_rows: usize) -> Vec<TablePart> {
        let mut across: Vec<Vec<(usize, Range<usize>)>> = vec![Vec::new()];
        for pump in 0..self.pumps.len() {
            for columns in cut(self.moistures.len(), most_columns) {
                let taken =
                    |part: &Vec<(usize, Range<usize>)>| part.iter().map(|(_, columns)| columns.len()).sum::<usize>();
                match across.last_mut() {
                    Some(last) if taken(last) + columns.len() <= most_columns => last.push((pump, columns)),
                    _ => across.push(vec![(pump, columns)]),
                }
            }
        }
        let across: Vec<_> = across.into_iter().filter(|part| !part.is_empty()).collect();
        let part =
            |rows: Range<usize>| across.iter().map(move |pumps| TablePart { rows: rows.clone(), pumps: pumps.clone() });
        cut(self.flows.len(), most_rows).into_iter().flat_map(part).collect()
    }
}

/// So many things in even pieces of at most `most`.
fn cut(count: usize, most: usize) -> Vec<Range<usize>> {
    let pieces = count.div_ceil(most.max(1)).max(1);
    (0..pieces)
        .map(|piece| piece * count / pieces..(piece + 1) * count / pieces)
        .filter(|piece| !piece.is_empty())
        .collect()
}

/// The card of a recipe over what the book asks for, or what is wrong with that.
#[must_use]
pub fn settings_table(
    draft: &Draft,
    case: &Case,
    line: &CheckedLine,
    book: &LineBook,
) -> (Option<SettingsTable>, Vec<LineFinding>) {
    let mut reader = Reader::new(book);
    let flows = reader
        .steps([TableField::FlowFrom, TableField::FlowTo, TableField::FlowStep], MOST_ROWS, None)
        .unwrap_or_default();
    // In the basis in which they are entered.
    let basis = Some(book.table.moisture_from.unit);
    let moistures = reader
        .steps([TableField::MoistureFrom, TableField::MoistureTo, TableField::MoistureStep], MOST_COLUMNS, basis)
        .unwrap_or_default();
    if flows.is_empty() || moistures.is_empty() {
        return (None, reader.findings);
    }
    let flow = match book.table_rows {
        TableRows::OvenDry => case.solved.fibre,
        TableRows::Belt => case.solved.fibre_wet,
    };
    let (flows, row) = with_present(flows, flow.value);
    let (moistures, column) = with_present(moistures, case.input.fibre_moisture.dry_basis().value);
    // A recipe without a fibre flow is at none of them.
    let present = row.zip(column).filter(|_| case.has_flow());
    // Without the one the other says nothing.
    let without = |mut all: Vec<f64>, at: Option<(usize, bool)>| {
        if let Some((at, true)) = at.filter(|_| present.is_none()) {
            all.remove(at);
        }
        all
    };
    let (flows, moistures) = (without(flows, row), without(moistures, column));
    let present = present.map(|((row, _), (column, _))| (row, column));
    let flows: Vec<MassRate> = flows.into_iter().map(|flow| si!(MassRate, flow)).collect();
    let moistures: Vec<Moisture> = moistures.into_iter().filter_map(Moisture::from_dry_basis).collect();
    let pumps: Vec<(&Pump, Fed)> = line
        .pumps
        .iter()
        .filter(|pump| pump.last().is_some())
        .filter_map(|pump| pump.feeds.within(draft).map(|fed| (pump, fed)))
        .collect();
    let one = |flow: MassRate, moisture: Moisture| cell(case, book.table_rows, flow, moisture, &pumps);
    let cells = flows.iter().map(|flow| moistures.iter().map(|moisture| one(*flow, *moisture)).collect()).collect();
    let pumps = pumps.iter().map(|(pump, _)| pump.id).collect();
    (Some(SettingsTable { rows: book.table_rows, flows, moistures, pumps, present, cells }), reader.findings)
}

/// The recipe at another fibre flow and moisture, solved; `None` where it has no balance.
#[must_use]
pub fn at(case: &Case, rows: TableRows, flow: MassRate, moisture: Moisture) -> Option<Case> {
    let feed = match rows {
        TableRows::OvenDry => Feed::OvenDry(flow),
        TableRows::Belt => Feed::Belt(flow),
    };
    let input = Input { feed, fibre_moisture: moisture, ..case.input.clone() };
    let solved = solve(&input).ok()?;
    Some(Case { input, solved })
}

fn cell(
    case: &Case,
    rows: TableRows,
    flow: MassRate,
    moisture: Moisture,
    pumps: &[(&Pump, Fed)],
) -> Option<SettingsCell> {
    let case = at(case, rows, flow, moisture)?;
    let one = |(pump, fed): &(&Pump, Fed)| {
        let bare = bare(pump, *fed, &case)?;
        Some(CellPump { mass: bare.mass, setting: bare.set_to, range_status: bare.range_status })
    };
    Some(SettingsCell {
        fibre: case.solved.fibre,
        fibre_wet: case.solved.fibre_wet,
        too_wet: case.solved.water.excess > MassRate::ZERO,
        pumps: pumps.iter().filter_map(one).collect(),
    })
}

/// The rising values with `at` among them, its place, and whether it was put there; without it where it lies outside of all.
fn with_present(mut values: Vec<f64>, at: f64) -> (Vec<f64>, Option<(usize, bool)>) {
    let slack = 1e-9 * at.abs();
    if let Some(same) = values.iter().position(|value| (value - at).abs() <= slack) {
        return (values, Some((same, false)));
    }
    let place = values.iter().position(|value| *value > at).filter(|place| *place > 0);
    if let Some(place) = place {
        values.insert(place, at);
    }
    (values, place.map(|place| (place, true)))
}

impl Reader<'_> {
    /// From, to and step as numbers in the base unit. The last is always `to`, the step before it may be short. With a
    /// basis the steps are even in that unit, and the step is in its percent.
    fn steps(&mut self, fields: [TableField; 3], most: usize, basis: Option<Unit>) -> Option<Vec<f64>> {
        let [from_field, to_field, step_field] = fields;
        let mut read = |field| self.number(LineField::Table(field));
        let (from, to, step) = (read(from_field), read(to_field), read(step_field));
        let (from, to, step) = (from?, to?, step?);
        let (from, to, step) = match basis {
            Some(unit) => (unit.from_base(from), unit.from_base(to), Unit::Percent.from_base(step)),
            None => (from, to, step),
        };
        if to < from {
            self.stop(LinePlace::Field(LineField::Table(to_field)), LineFindingKind::RangeCrossed);
            return None;
        }
        let whole = ((to - from) / step + 1e-9).floor();
        if whole >= most as f64 {
            self.stop(LinePlace::Field(LineField::Table(step_field)), LineFindingKind::TooManySteps { most });
            return None;
        }
        // Bounded just above.
        let mut steps: Vec<f64> = (0..=whole as u32).map(|at| from + f64::from(at) * step).collect();
        if steps.last().is_some_and(|last| to - last > 1e-9 * step) {
            if steps.len() >= most {
                self.stop(LinePlace::Field(LineField::Table(step_field)), LineFindingKind::TooManySteps { most });
                return None;
            }
            steps.push(to);
        }
        Some(steps.into_iter().map(|value| basis.map_or(value, |unit| unit.to_base(value))).collect())
    }
}
