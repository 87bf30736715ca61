//! A part of the page that is built with `browser::element`, in the place of a component.

use crate::browser::element::View;
use leptos::html::Div;
use leptos::prelude::*;

/// Builds `part` in its place. The box around it takes no part in the layout.
#[component]
pub fn Mounted<F>(
    /// Builds the part.
    part: F,
) -> impl IntoView
where
    F: FnOnce() -> View + 'static,
{
    let place = NodeRef::<Div>::new();
    // Where another part comes to the same place, leptos keeps the element and calls this again.
    place.on_load(move |place| part().fill(&place));
    view! { <div class="mounted" node_ref=place></div> }
}
