//! What a box at the line may hold: that of its table, or that of the scale or the meter chosen.

use super::book::LineBook;
use super::field::LineField;
use crate::domain::limit::Limit;
use crate::domain::line::pumps::pump::ReadingWay;
use crate::domain::line::pumps::setting::SettingUnit;
use crate::domain::line::tanks::tank::TankWay;

/// The limit of a field of this book.
#[must_use]
pub fn limit(field: LineField, book: &LineBook) -> Limit {
    let drive = |pump| book.pump(pump).map_or(SettingUnit::Percent, |pump| pump.unit);
    match field {
        LineField::Pump(id, part) => {
            let way = book.pump(id).map_or(ReadingWay::MassMeter, |pump| pump.reading_way);
            part.limit_on(drive(id), way)
        }
        LineField::Calibration(_, _, part) => part.limit(),
        LineField::Row(pump, _, _, part) => part.limit_on(drive(pump)),
        LineField::Tank(id, part) => part.limit_by(book.tank(id).map_or(TankWay::Level, |tank| tank.way)),
        LineField::Transport(part) => part.limit(),
        LineField::Tolerance(part) => part.limit(),
        LineField::Uncertainty(part) => part.limit(),
        LineField::Running(part) => part.limit(),
        LineField::Condition(part) => part.limit(),
        LineField::Table(part) => part.limit(),
        LineField::Delivery(part) => part.limit(),
        LineField::Period(part) => part.limit(),
        LineField::PeriodLiquid(_, part) => part.limit(),
    }
}
