//! How far a reading is off, drawn between the limits of its tolerance.

use crate::t;
use leptos::prelude::*;

/// Half of the width that the tolerance takes.
const HALF: f64 = 32.0;
/// The middle of the drawing.
const MIDDLE: f64 = 58.0;
/// The last place of the point on either side.
const END: f64 = 52.0;

/// The drawing, always as wide. `offset` is the deviation in tolerances; none for what was not read.
#[component]
pub fn ToleranceStrip(
    /// Deviation per tolerance.
    offset: Option<f64>,
    /// The deviation in words.
    deviation: String,
    /// The tolerance in words.
    tolerance: String,
) -> impl IntoView {
    let name = offset.map(|_| t!("check-of-tolerance", deviation = deviation, tolerance = tolerance));
    let role = if name.is_some() { "img" } else { "presentation" };
    let point = offset.map(|offset| {
        let at = offset * HALF;
        if at < -END {
            view! { <path class="hot" d="M13 4V20L0 12Z"></path> }.into_any()
        } else if at > END {
            view! { <path class="hot" d="M103 4V20L116 12Z"></path> }.into_any()
        } else if offset.abs() > 1.0 + 1e-9 {
            let x = MIDDLE + at;
            view! { <path class="hot" d=format!("M{x:.1} 5l7 7l-7 7l-7-7z")></path> }.into_any()
        } else {
            view! { <circle class="point" cx=format!("{:.1}", MIDDLE + at) cy="12" r="5"></circle> }.into_any()
        }
    });
    view! {
        <svg class="tolerance-strip" width="116" height="24" viewBox="0 0 116 24" role=role aria-label=name>
            <path class="axis" d="M0 12H116"></path>
            <rect class="band" x="26" y="5" width="64" height="14"></rect>
            <path class="limit" d="M26 3V21M90 3V21"></path>
            <path class="axis" d="M58 6V18"></path>
            {point}
        </svg>
    }
}
