//! The values of a row on one axis, drawn for the width of their column.

use crate::domain::compare::overview::key_figures::KeyRow;
use crate::ui::chart::dots::{AXIS, DotStrip, DotValues, HEIGHT, dot_strip};
use crate::ui::chart::series::mark_path;
use crate::ui::state::State;
use leptos::prelude::*;

/// Where the labels are.
const LABEL: f64 = 16.0;

/// The drawing of a row; nothing with fewer than two values.
pub fn strip(state: State, row: &KeyRow, reference: usize, width: f64) -> Option<AnyView> {
    let unit = state.unit(row.figure.kind());
    let width = width.floor();
    let of = DotValues {
        values: row.values.iter().map(|value| value.map(|value| value.get(unit))).collect(),
        now: row.now.map(|now| now.get(unit)),
        typical: row.typical.map(|(low, high)| (low.get(unit), high.get(unit))),
    };
    let DotStrip { axis: (left, right), ends, marks, labels, now, typical } =
        dot_strip(width, &of, state.units.get().mark)?;
    let mark = |(at, x): (usize, f64)| {
        let (path, is_filled) = mark_path(at, (x, AXIS));
        let class = if at == reference || !is_filled { "mk hollow" } else { "mk" };
        view! { <path class=class d=path></path> }
    };
    let label = |(x, words): (f64, String)| {
        view! { <text x=format!("{x:.1}") y=LABEL.to_string() text-anchor="middle">{words}</text> }
    };
    let typical = typical.map(|(from, to)| {
        let (x, wide) = (format!("{from:.1}"), format!("{:.1}", to - from));
        view! { <rect class="typical" x=x y=(AXIS - 7.0).to_string() width=wide height="14"></rect> }
    });
    let now = now.map(|x| view! { <path class="now" d=format!("M{x:.1} {}v22", AXIS - 11.0)></path> });
    Some(
        view! {
            // The numbers are in the same row.
            <svg class="strip" viewBox=format!("0 0 {width:.0} {HEIGHT}") width=format!("{width:.0}") height=HEIGHT.to_string() aria-hidden="true">
                {typical}
                <path class="axis" d=format!("M{left:.1} {AXIS}H{right:.1}M{left:.1} {}v8M{right:.1} {}v8", AXIS - 4.0, AXIS - 4.0)></path>
                <text class="end" x=format!("{:.1}", left - 12.0) y=(AXIS + 5.0).to_string() text-anchor="end">{ends.0}</text>
                <text class="end" x=format!("{:.1}", right + 12.0) y=(AXIS + 5.0).to_string()>{ends.1}</text>
                {now}
                {marks.into_iter().map(mark).collect_view()}
                {labels.into_iter().map(label).collect_view()}
            </svg>
        }
        .into_any(),
    )
}
