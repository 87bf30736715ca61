//! A box that says how wide it is, so that a drawing in it can be made for its width instead of being scaled.

use leptos::ev;
use leptos::html::Div;
use leptos::prelude::*;

/// A box whose width is kept in a signal: from when it is shown, and as the window changes.
#[component]
pub fn Measured(
    /// Takes the width, in pixels.
    width: RwSignal<f64>,
    /// A class of the box.
    #[prop(optional)]
    class: &'static str,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    let place = NodeRef::<Div>::new();
    let measure = move || {
        let Some(element) = place.try_get_untracked().flatten() else { return };
        let now = f64::from(element.client_width());
        if now > 0.0 && width.try_get_untracked().is_some_and(|before| (before - now).abs() > 0.5) {
            width.set(now);
        }
    };
    place.on_load(move |_| request_animation_frame(measure));
    let resized = window_event_listener(ev::resize, move |_| measure());
    on_cleanup(move || resized.remove());
    view! { <div class=class node_ref=place>{children()}</div> }
}
