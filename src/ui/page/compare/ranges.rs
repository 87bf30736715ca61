//! The boxes for both ends of the range of an input.

use super::parts::{KeptBox, number_box};
use crate::browser::element::View;
use crate::domain::Entry;
use crate::domain::compare::draft::{CompareDraft, RangeDraft, RangeDrafts};
use crate::domain::compare::number_key::number_of;
use crate::domain::compare::range::end_limit;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::sweep::Axis;
use crate::domain::compare::variable;
use crate::quantity::format;
use crate::ui::state::State;
use crate::ui::text::FieldWords;
use leptos::reactive::prelude::*;

/// Where the ranges of a section are kept.
#[derive(Clone, Copy)]
pub struct RangeSlot {
    /// What is entered.
    pub get: fn(&CompareDraft) -> &RangeDrafts,
    /// The same, to be changed.
    pub get_mut: fn(&mut CompareDraft) -> &mut RangeDrafts,
}

/// An end of a range.
type End = (fn(&RangeDraft) -> Option<&Entry>, fn(&mut RangeDraft, Entry));

/// The boxes for both ends of the range of an input; `id` begins their names on the page.
pub fn range_boxes(state: State, system: &ComparedSystem, slot: RangeSlot, key: &str, id: &str) -> Option<View> {
    let page = &state.words.compare.page;
    let case = system.case()?;
    let field = number_of(&system.draft, case, key)?;
    let axis = Axis::around(case, field, 2)?;
    let (kind, limit) = (system.draft.kind(field), end_limit(&variable::limit(&case.input, field)));
    let from: End = (|range| range.from.as_ref(), |range, entry| range.from = Some(entry));
    let to: End = (|range| range.to.as_ref(), |range, entry| range.to = Some(entry));
    let ends = [("from", page.from, axis.from, from), ("to", page.to, axis.to, to)];
    let boxes = ends.map(|(end, label, base, (get, set))| {
        let start = move || {
            let units = state.units.get();
            let unit = units.unit(kind);
            // A few digits are enough for an end that nobody typed.
            let value = unit.from_base(base);
            let rounded = format::significant(value, 4, units.mark);
            Entry::preset(if value < 1e5 { rounded } else { format::editable(value, units.mark) }, unit)
        };
        let (own, put) = (key.to_owned(), key.to_owned());
        let kept = KeptBox {
            id: format!("{id}-{end}"),
            words: FieldWords { label, hint: "" },
            kind,
            limit,
            get: move |typed: &CompareDraft| {
                (slot.get)(typed).get(&own).and_then(|range| get(range).cloned()).unwrap_or_else(&start)
            },
            put: move |typed: &mut CompareDraft, entry: Entry| {
                set((slot.get_mut)(typed).entry(put.clone()).or_default(), entry);
            },
        };
        number_box(state, kept)
    });
    Some(boxes.into_iter().collect::<View>())
}
