//! Solving for one input from a target value of one figure, and for the break-even price.

mod answered;
mod asked;
mod break_even;
mod input;

pub use asked::asked;

use break_even::BreakEvenPanel;
use input::SolvePanel;
use leptos::prelude::*;

/// The tab.
#[component]
pub fn SolveTab() -> impl IntoView {
    view! {
        <SolvePanel/>
        <BreakEvenPanel/>
    }
}
