//! Places at the line in words: a field with what it belongs to, a pump, a catch.

use super::field::field;
use super::name::{liquid, period_liquid, pump_called, tank_called};
use crate::domain::line::{LineField, LinePlace};
use crate::t;
use crate::ui::text::{LineContext, lower_first};

/// A field by its full name, as messages call it: with the pump's or the tank's name.
#[must_use]
pub fn field_name(asked: LineField, context: &LineContext<'_>) -> String {
    let label = field(asked, context.book).label;
    let of = |place: String| t!("line-place-part", place = place, part = lower_first(label));
    match asked {
        LineField::Pump(id, _) => of(pump_called(id, context)),
        LineField::Calibration(id, test, _) => of(place(LinePlace::Calibration(id, test), context)),
        LineField::Row(pump, test, row, _) => of(place(LinePlace::Row(pump, test, row), context)),
        LineField::Tank(id, _) => of(tank_called(id, context)),
        LineField::PeriodLiquid(id, _) => of(period_liquid(id, context.book)),
        LineField::Transport(_)
        | LineField::Tolerance(_)
        | LineField::Running(_)
        | LineField::Uncertainty(_)
        | LineField::Condition(_)
        | LineField::Table(_)
        | LineField::Delivery(_)
        | LineField::Period(_) => label.to_owned(),
    }
}

/// What a place of the line is called, as messages begin.
#[must_use]
pub fn place(place: LinePlace, context: &LineContext<'_>) -> String {
    match place {
        LinePlace::Field(field) => field_name(field, context),
        LinePlace::Pump(pump) => pump_called(pump, context),
        LinePlace::Calibration(pump, _) => t!("line-place-catch-test", pump = pump_called(pump, context)),
        LinePlace::Row(pump, test, row) => {
            let rows = context.book.calibration(pump, test).map_or(&[][..], |test| &test.rows);
            // The spare row has no place of its own yet.
            let number = rows.iter().position(|other| other.id == row).unwrap_or(rows.len()) + 1;
            t!("line-place-catch", pump = pump_called(pump, context), number = number)
        }
        LinePlace::Tank(tank) => tank_called(tank, context),
        LinePlace::Liquid(id) => liquid(id, context.plain.draft),
        LinePlace::Water => t!("line-name-water"),
        LinePlace::Line => t!("line-place-line"),
    }
}
