//! The mark by which a system is known in heads and drawings.

use crate::ui::chart::series::mark_path;
use leptos::prelude::*;

/// The mark of a system; the reference's is hollow.
#[component]
pub fn SystemGlyph(
    /// The system's place.
    at: usize,
    /// Whether it is the reference.
    is_reference: bool,
) -> impl IntoView {
    let (path, is_filled) = mark_path(at, (8.0, 8.0));
    let class = if is_reference || !is_filled { "mk hollow" } else { "mk" };
    view! { <svg class="glyph" viewBox="0 0 16 16" aria-hidden="true"><path class=class d=path></path></svg> }
}
