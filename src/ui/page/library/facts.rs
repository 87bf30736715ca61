//! What one line says of a saved recipe.

use super::list::Head;
use crate::domain::Entry;
use crate::quantity::Kind;
use crate::ui::field::number_text::in_box;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use leptos::reactive::prelude::*;

/// "UF resin · 15 mm · 680 kg/m³", in the units chosen.
pub fn facts(state: State, head: &Head) -> String {
    let binders: Vec<&str> =
        head.substances.iter().filter(|each| each.is_binder()).map(|each| (state.words.substance)(*each)).collect();
    let entry = |entry: &Entry, kind: Kind| {
        let units = state.units.get();
        if entry.is_blank() {
            String::new()
        } else if entry.unit.dimension() == kind.dimension() {
            joined(&in_box(entry, kind, &units), units.unit(kind).symbol())
        } else {
            joined(&entry.text, entry.unit.symbol())
        }
    };
    let parts =
        [binders.join(" + "), entry(&head.thickness, Kind::Thickness), entry(&head.density, Kind::BoardDensity)];
    parts.iter().filter(|part| !part.is_empty()).map(String::as_str).collect::<Vec<_>>().join(" · ")
}
