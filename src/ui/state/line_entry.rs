//! What is typed into the boxes of the line, and in which unit.

use super::State;
use crate::browser::clock;
use crate::domain::Entry;
use crate::domain::line::{LineBook, LineField, PumpField, ReadOn, RowField, TankField};
use crate::quantity::{Dimension, Kind, Unit, Units};
use leptos::prelude::*;

impl State {
    /// Puts an entry into a box of the line. Nothing is said about it before a pause, or before the box is left.
    pub fn type_into_line(&self, field: LineField, text: &str, unit: Unit) {
        self.line.typed_last.set_value(Some(field));
        if !self.typing.get_untracked() {
            self.typing.set(true);
        }
        self.enter_line(field, text, unit);
    }

    /// Puts an entry into a box of the line, as one that is complete.
    pub fn enter_line(&self, field: LineField, text: &str, unit: Unit) {
        self.line.type_into(field.key(), |book| {
            book.open_row(field);
            if let Some(entry) = book.entry_mut(field) {
                *entry = Entry::typed(text, unit);
            }
            self.note_line_entry(book, field);
        });
    }

    /// A box of the line was left: what is typed into it next is a step of its own.
    pub fn leave_line(&self) {
        self.line.close_step();
        self.stop_typing();
    }

    /// What goes with a number that is entered: a level has its time, readings and conditions their recipe, and a row of a catch
    /// test passes its time and its vessel on to the blank rows below.
    pub fn note_line_entry(&self, book: &mut LineBook, field: LineField) {
        let at = clock::now();
        let on_recipe = || Some(ReadOn { recipe: self.title.with_untracked(|title| title.name.clone()), at });
        match field {
            LineField::Tank(id, TankField::Content) => {
                if let Some(tank) = book.tank_mut(id) {
                    tank.read_at = Some(at);
                }
            }
            LineField::Running(_) | LineField::Pump(_, PumpField::Reading | PumpField::PresentSetting) => {
                book.read_on = on_recipe();
            }
            LineField::Condition(_) => book.conditions_on = on_recipe(),
            LineField::Row(pump, test, row, part @ (RowField::Seconds | RowField::Tare)) => {
                if let Some(test) = book.pump_mut(pump).and_then(|pump| pump.calibration_mut(test)) {
                    test.carry_down(row, part);
                }
            }
            _ => {}
        }
    }

    /// The units as one box of the line has them: the basis of a moisture is chosen for the box alone.
    #[must_use]
    pub fn line_units_at(&self, field: LineField, kind: Kind) -> Units {
        let mut units = self.units.get();
        if kind.dimension() == Dimension::Moisture
            && let Some(unit) = self.settings.with(|settings| settings.bases.get(&field.key()).copied())
        {
            units.choose(kind, unit);
        }
        units
    }

    /// Chooses the unit of one box of the line. A number that was just typed there keeps its digits.
    pub fn choose_line_unit(&self, field: LineField, unit: Unit) {
        let (kind, typed) = self.line.record.with_untracked(|record| {
            let typed = record.book.entry(field).filter(|entry| !entry.preset).map(|entry| entry.text.clone());
            (record.book.kind(field), typed)
        });
        if self.line.typed_last.get_value() == Some(field)
            && let Some(text) = typed
        {
            self.enter_line(field, &text, unit);
            self.leave_line();
        }
        // Choosing once more is about the number that is there now.
        self.line.typed_last.set_value(None);
        self.settings.update(|settings| {
            if kind.dimension() == Dimension::Moisture {
                settings.bases.insert(field.key(), unit);
            } else {
                settings.units.choose(kind, unit);
            }
        });
    }
}
