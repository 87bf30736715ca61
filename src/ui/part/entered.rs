//! What was entered in a field, as it is read outside of its box.

use crate::domain::{Draft, Field};
use crate::quantity::{Unit, format};
use crate::ui::field::number_text::{grouped, in_box, reading};
use crate::ui::state::State;

/// The number in the unit chosen for the field, its whole part grouped, and that unit; one that was typed behind the number is converted.
/// `None` for a blank box.
#[must_use]
pub fn entered_number(state: State, draft: &Draft, field: Field) -> Option<(String, Unit)> {
    let entry = draft.entry(field).filter(|entry| !entry.is_blank())?;
    let kind = draft.kind(field);
    let units = state.units_at(field, kind);
    let unit = units.unit(kind);
    let number = match reading(draft, field) {
        Some(reading) if reading.unit_typed => format::amount(reading.amount(kind), unit, units.mark),
        _ => grouped(&in_box(entry, kind, &units), units.mark),
    };
    Some((number, unit))
}
