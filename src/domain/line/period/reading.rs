//! From what was typed about a period to readings with their uncertainties.

use super::balance::{PeriodLiquid, PeriodReadings, Uncertain};
use super::draft::{PeriodField, PeriodLiquidField, PeriodLiquidId};
use crate::domain::line::book::LineBook;
use crate::domain::line::field::LineField;
use crate::domain::line::finding::LineFinding;
use crate::domain::line::line_check::reconcile::uncertainty::{Uncertainties, usual};
use crate::domain::line::read::Reader;

/// Reads what was typed about the period; `None` while something is missing.
#[must_use]
pub fn read_period(book: &LineBook) -> (Option<PeriodReadings>, Vec<LineFinding>) {
    let mut reader = Reader::new(book);
    let readings = reader.period();
    (readings, reader.findings)
}

/// A reading of zero still is not exact: half a kilogram.
const LEAST: f64 = 0.5;

impl Reader<'_> {
    fn period(&mut self) -> Option<PeriodReadings> {
        let of = Uncertainties::of(self.book);
        let mut field = |field| self.number(LineField::Period(field));
        let belt = field(PeriodField::BeltTotal);
        let fibre_moisture = field(PeriodField::FibreMoisture);
        let count = field(PeriodField::Boards);
        let board = field(PeriodField::BoardMass);
        let board_moisture = field(PeriodField::BoardMoisture);
        let reject = field(PeriodField::Reject);
        let dip = field(PeriodField::Dip);
        let delivery = field(PeriodField::Delivery);
        let ids: Vec<PeriodLiquidId> = self.book.period.liquids.iter().map(|liquid| liquid.id).collect();
        let spread = (dip.unwrap_or_default(), delivery.unwrap_or_default());
        // Each is read, so that all that is wrong is said at once.
        let liquids: Vec<Option<PeriodLiquid>> =
            ids.into_iter().map(|id| self.period_liquid(id, spread, &of)).collect();
        (dip.is_some() && delivery.is_some()).then_some(())?;
        let moisture = |value| Uncertain { value, uncertainty: of.moisture.unwrap_or(usual::MOISTURE) };
        let share = |value: f64, of: f64| Uncertain { value, uncertainty: (of * value.abs()).max(LEAST) };
        Some(PeriodReadings {
            belt: share(belt?, of.belt_scale.unwrap_or_else(usual::belt_scale)),
            fibre_moisture: moisture(fibre_moisture?),
            liquids: liquids.into_iter().collect::<Option<Vec<_>>>()?,
            boards: share(count? * board?, of.board_mass.unwrap_or(usual::BOARD_MASS)),
            board_moisture: moisture(board_moisture?),
            reject: reject?,
        })
    }

    fn period_liquid(&mut self, id: PeriodLiquidId, spread: (f64, f64), of: &Uncertainties) -> Option<PeriodLiquid> {
        let (dip, delivery) = spread;
        let mut field = |field| self.number(LineField::PeriodLiquid(id, field));
        let start = field(PeriodLiquidField::Start);
        let delivered = field(PeriodLiquidField::Delivered);
        let end = field(PeriodLiquidField::End);
        let metered = field(PeriodLiquidField::Metered);
        let density = field(PeriodLiquidField::Density);
        let solids = field(PeriodLiquidField::Solids);
        let (density, solids) = (density?, solids?);
        let dipped = |volume: f64| Uncertain { value: volume * density, uncertainty: (dip * density).max(LEAST) };
        let share = |value: f64, of: f64| Uncertain { value, uncertainty: (of * value.abs()).max(LEAST) };
        // A liquid without water has no solids to test.
        let solids_known = if solids < 1.0 { of.solids.unwrap_or_else(usual::solids) } else { usual::NO_WATER };
        Some(PeriodLiquid {
            id,
            start: dipped(start?),
            delivered: share(delivered?, delivery),
            end: dipped(end?),
            metered: share(metered?, of.flow_meter.unwrap_or_else(usual::flow_meter)),
            solids: Uncertain { value: solids, uncertainty: solids_known },
        })
    }
}
