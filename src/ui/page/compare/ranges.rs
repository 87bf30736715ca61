//! The boxes for both ends of the range of an input.

use super::context::CompareContext;
use super::entry_box::CompareBox;
use crate::domain::Entry;
use crate::domain::compare::draft::{CompareDraft, RangeDraft, RangeDrafts};
use crate::domain::compare::number_key::number_of;
use crate::domain::compare::range::end_limit;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::sweep::Axis;
use crate::domain::compare::variable;
use crate::domain::limit::Limit;
use crate::quantity::{Kind, format};
use crate::t;
use crate::ui::text::trimmed_to;
use leptos::prelude::*;

/// Where the ranges of a tab are kept.
#[derive(Clone, Copy)]
pub struct RangeSlot {
    /// What is entered.
    pub get: fn(&CompareDraft) -> &RangeDrafts,
    /// The same, to be changed.
    pub get_mut: fn(&mut CompareDraft) -> &mut RangeDrafts,
}

/// Which range is entered, and around which values it starts.
#[derive(Debug, Clone, PartialEq)]
pub struct RangeOf {
    /// The input's number key.
    pub key: String,
    kind: Kind,
    limit: Limit,
    start: [f64; 2],
}

impl RangeOf {
    /// The range of the number of that key; `None` where the system does not use it.
    pub fn new(system: &ComparedSystem, key: &str) -> Option<Self> {
        let case = system.case()?;
        let field = number_of(&system.draft, case, key)?;
        let axis = Axis::around(case, field, 2)?;
        let limit = end_limit(&variable::limit(&case.input, field));
        Some(Self { key: key.to_owned(), kind: system.draft.kind(field), limit, start: [axis.from, axis.to] })
    }
}

/// Both boxes; `id` begins their names on the page.
#[component]
pub fn RangeBoxes(
    /// Which range.
    range: RangeOf,
    /// Where it is kept.
    kept: RangeSlot,
    /// What their ids begin with.
    id: &'static str,
) -> impl IntoView {
    let RangeOf { key, kind, limit, start: [from, to] } = range;
    view! {
        <RangeEnd key=key.clone() kind=kind limit=limit start=from kept=kept id=id is_from=true/>
        <RangeEnd key=key kind=kind limit=limit start=to kept=kept id=id is_from=false/>
    }
}

#[component]
fn RangeEnd(
    key: String,
    kind: Kind,
    limit: Limit,
    start: f64,
    kept: RangeSlot,
    id: &'static str,
    is_from: bool,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let (own, put) = (key.clone(), key);
    let entry = Memo::new(move |_| {
        let end = |range: &RangeDraft| if is_from { range.from.clone() } else { range.to.clone() };
        let entered = state.compare.typed.with(|typed| (kept.get)(typed).get(&own).and_then(end));
        entered.unwrap_or_else(|| {
            let units = state.units.get();
            let unit = units.unit(kind);
            // A few digits are enough for an end that nobody typed.
            let value = unit.from_base(start);
            let rounded = trimmed_to(value, 4, units.mark);
            Entry::preset(if value < 1e5 { rounded } else { format::editable(value, units.mark) }, unit)
        })
    });
    let enter = Callback::new(move |entry: Entry| {
        context.enter(|typed| {
            let range = (kept.get_mut)(typed).entry(put.clone()).or_default();
            *(if is_from { &mut range.from } else { &mut range.to }) = Some(entry);
        });
    });
    let label = if is_from { t!("compare-from") } else { t!("compare-to") };
    view! {
        <CompareBox
            key=format!("{id}-{}", if is_from { "from" } else { "to" })
            label=Signal::stored(label.clone())
            name=Signal::stored(label)
            kind=kind
            limit=limit
            entry=entry
            on_enter=enter
        />
    }
}
