//! The frame of a panel: grid lines, numbers at the axes, and the axes' names.

use super::panel::{ChartPanel, TickMark};
use leptos::prelude::*;

/// Grid and numbers of a panel, within a `<svg class="chart">`.
#[component]
pub fn ChartFrame(
    /// The panel.
    panel: ChartPanel,
    /// What is upward, with its unit; above the panel at the left.
    #[prop(into)]
    up: String,
    /// What is to the right, with its unit. Without it the numbers of that axis are left out, as where another panel is below.
    #[prop(optional_no_strip)]
    across: Option<String>,
) -> impl IntoView {
    let (left, right) = panel.x.range;
    let (bottom, top) = panel.y.range;
    let has_numbers = across.is_some();
    let row = |tick: &TickMark| {
        view! {
            <path class="grid" d=format!("M{left} {:.1}H{right}", tick.at)></path>
            <text x=format!("{}", left - 8.0) y=format!("{:.1}", tick.at + 5.0) text-anchor="end">{tick.label.clone()}</text>
        }
    };
    let column = |tick: &TickMark| {
        let number = has_numbers.then(|| {
            view! {
                <text x=format!("{:.1}", tick.at) y=format!("{}", bottom + 20.0) text-anchor="middle">{tick.label.clone()}</text>
            }
        });
        view! {
            <path class="grid" d=format!("M{:.1} {top}V{bottom}", tick.at)></path>
            {number}
        }
    };
    view! {
        <text class="strong" x="0" y=format!("{}", top - 14.0)>{up}</text>
        {panel.up.iter().map(row).collect_view()}
        {panel.across.iter().map(column).collect_view()}
        {across.map(|across| view! { <text x=format!("{right}") y=format!("{}", bottom + 40.0) text-anchor="end">{across}</text> })}
    }
}
