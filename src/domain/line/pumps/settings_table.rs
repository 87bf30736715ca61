//! Pump settings over fibre flows (rows) and fibre moistures (columns).

use crate::domain::balance::outcome::Case;
use crate::domain::balance::solve::solve;
use crate::domain::line::book::{CardField, CardRows, LineBook};
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::field::LineField;
use crate::domain::line::finding::{LineFinding, LinePlace, LineWhat, Standing};
use crate::domain::line::pumps::pump::{Pump, PumpId};
use crate::domain::line::pumps::pump_settings::bare;
use crate::domain::line::pumps::setting::Setting;
use crate::domain::line::read::Reader;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::input::{Feed, Input};
use crate::quantity::Moisture;
use uom::ConstZero;
use uom::si::f64::MassRate;

/// Most rows of a card.
pub const MOST_ROWS: usize = 60;
/// Most columns of a card.
pub const MOST_COLUMNS: usize = 30;

/// A rate card.
#[derive(Debug, Clone, PartialEq)]
pub struct RateCard {
    /// What the rows mean.
    pub rows: CardRows,
    /// The fibre flows, one a row.
    pub flows: Vec<MassRate>,
    /// The fibre moistures, one a column.
    pub moistures: Vec<Moisture>,
    /// The pumps on the card.
    pub pumps: Vec<PumpId>,
    /// The cells, row by row; `None` where the recipe has no balance.
    pub cells: Vec<Vec<Option<Cell>>>,
}

/// One cell of a card.
#[derive(Debug, Clone, PartialEq)]
pub struct Cell {
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
    /// Its setting, beyond what was tested too: see the mark.
    pub setting: Option<Setting>,
    /// The mark: anything but [`Standing::Within`] leaves the pump's range.
    pub standing: Standing,
}

/// The card of a recipe over what the book asks for, or what is wrong with that.
#[must_use]
pub fn rate_card(
    draft: &Draft,
    case: &Case,
    line: &CheckedLine,
    book: &LineBook,
) -> (Option<RateCard>, Vec<LineFinding>) {
    let mut reader = Reader::new(book);
    let flows =
        reader.steps([CardField::FlowFrom, CardField::FlowTo, CardField::FlowStep], MOST_ROWS).unwrap_or_default();
    let moistures = reader
        .steps([CardField::MoistureFrom, CardField::MoistureTo, CardField::MoistureStep], MOST_COLUMNS)
        .unwrap_or_default();
    if flows.is_empty() || moistures.is_empty() {
        return (None, reader.findings);
    }
    let flows: Vec<MassRate> = flows.into_iter().map(|flow| si!(MassRate, flow)).collect();
    let moistures: Vec<Moisture> = moistures.into_iter().filter_map(Moisture::from_dry_basis).collect();
    let pumps: Vec<(&Pump, Fed)> = line
        .pumps
        .iter()
        .filter(|pump| pump.last().is_some())
        .filter_map(|pump| pump.feeds.within(draft).map(|fed| (pump, fed)))
        .collect();
    let one = |flow: MassRate, moisture: Moisture| cell(case, book.card_rows, flow, moisture, &pumps);
    let cells = flows.iter().map(|flow| moistures.iter().map(|moisture| one(*flow, *moisture)).collect()).collect();
    let pumps = pumps.iter().map(|(pump, _)| pump.id).collect();
    (Some(RateCard { rows: book.card_rows, flows, moistures, pumps, cells }), reader.findings)
}

/// The recipe at another fibre flow and moisture, solved; `None` where it has no balance.
#[must_use]
pub fn at(case: &Case, rows: CardRows, flow: MassRate, moisture: Moisture) -> Option<Case> {
    let feed = match rows {
        CardRows::OvenDry => Feed::OvenDry(flow),
        CardRows::Belt => Feed::Belt(flow),
    };
    let input = Input { feed, fibre_moisture: moisture, ..case.input.clone() };
    let solved = solve(&input).ok()?;
    Some(Case { input, solved })
}

fn cell(case: &Case, rows: CardRows, flow: MassRate, moisture: Moisture, pumps: &[(&Pump, Fed)]) -> Option<Cell> {
    let case = at(case, rows, flow, moisture)?;
    let one = |(pump, fed): &(&Pump, Fed)| {
        let bare = bare(pump, *fed, &case)?;
        Some(CellPump { mass: bare.mass, setting: bare.setting, standing: bare.standing })
    };
    Some(Cell {
        fibre: case.solved.fibre,
        fibre_wet: case.solved.fibre_wet,
        too_wet: case.solved.water.excess > MassRate::ZERO,
        pumps: pumps.iter().filter_map(one).collect(),
    })
}

impl Reader<'_> {
    /// From, to and step as numbers in the base unit; the last step may end short of `to`.
    fn steps(&mut self, fields: [CardField; 3], most: usize) -> Option<Vec<f64>> {
        let [from_field, to_field, step_field] = fields;
        let mut read = |field| self.number(LineField::Card(field));
        let (from, to, step) = (read(from_field), read(to_field), read(step_field));
        let (from, to, step) = (from?, to?, step?);
        if to < from {
            self.stop(LinePlace::Field(LineField::Card(to_field)), LineWhat::RangeCrossed);
            return None;
        }
        let count = ((to - from) / step + 1e-9).floor();
        if count >= most as f64 {
            self.stop(LinePlace::Field(LineField::Card(step_field)), LineWhat::TooManySteps { most });
            return None;
        }
        // Bounded just above.
        Some((0..=count as u32).map(|at| from + f64::from(at) * step).collect())
    }
}
