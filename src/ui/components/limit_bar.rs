//! How much of a limit is in use, as a bar with its number.

use leptos::prelude::*;

/// A bar from nothing to the limit. Over the limit it is full and hatched; the number says by how much.
#[component]
pub fn LimitBar(
    /// The share of the limit in use, 1 at the limit.
    #[prop(into)]
    used: Signal<f64>,
) -> impl IntoView {
    let is_over = move || used.get() > 1.0;
    let width = move || format!("{:.1}", used.get().clamp(0.0, 1.0) * 100.0);
    view! {
        <svg class="limit-bar" class:over=is_over viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
            <rect class="all" width="100" height="8"></rect>
            <rect class="used" width=width height="8"></rect>
        </svg>
    }
}
