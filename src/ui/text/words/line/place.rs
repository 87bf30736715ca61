//! Places at the line in words: a field with what it belongs to, a pump, a catch.

use super::field::field;
use super::name::{liquid, period_liquid, pump_called, tank_called};
use crate::domain::line::{LineField, LinePlace};
use crate::ui::text::LineContext;
use crate::ui::text::lower_first;

pub(super) fn field_name(asked: LineField, context: &LineContext<'_>) -> String {
    let label = field(asked, context.book).label;
    match asked {
        LineField::Pump(id, _) => format!("{}, {}", pump_called(id, context), lower_first(label)),
        LineField::Calibration(id, _, _) => format!("{}, catch test, {}", pump_called(id, context), lower_first(label)),
        LineField::Row(pump, test, row, _) => {
            format!("{}, {}", place(LinePlace::Row(pump, test, row), context), lower_first(label))
        }
        LineField::Tank(id, _) => format!("{}, {}", tank_called(id, context), lower_first(label)),
        LineField::Transport(_)
        | LineField::Tolerance(_)
        | LineField::Running(_)
        | LineField::Uncertainty(_)
        | LineField::Condition(_)
        | LineField::Table(_)
        | LineField::Delivery(_)
        | LineField::Period(_) => label.to_owned(),
        LineField::PeriodLiquid(id, _) => format!("{}, {}", period_liquid(id, context.book), lower_first(label)),
    }
}

pub(super) fn place(place: LinePlace, context: &LineContext<'_>) -> String {
    match place {
        LinePlace::Field(field) => field_name(field, context),
        LinePlace::Pump(pump) => pump_called(pump, context),
        LinePlace::Calibration(pump, _) => format!("{}, catch test", pump_called(pump, context)),
        LinePlace::Row(pump, test, row) => {
            let rows = context.book.calibration(pump, test).map_or(&[][..], |test| &test.rows);
            // The spare row has no place of its own yet.
            let number = rows.iter().position(|other| other.id == row).unwrap_or(rows.len()) + 1;
            format!("{}, catch {number}", pump_called(pump, context))
        }
        LinePlace::Tank(tank) => tank_called(tank, context),
        LinePlace::Liquid(id) => liquid(id, context.plain.draft),
        LinePlace::Water => "Water".to_owned(),
        LinePlace::Line => "Line".to_owned(),
    }
}
