//! A box that says how wide it is, so that a drawing in it can be made for its width instead of being scaled.

use crate::browser::width::watch_width;
use leptos::html::Div;
use leptos::prelude::*;

/// A box whose width is kept in a signal, whenever it changes.
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
    // It goes with the part of the page.
    let watch = StoredValue::new_local(None);
    place.on_load(move |element| {
        let told = move |now: f64| {
            // Not while the browser measures, which it would call a loop.
            request_animation_frame(move || {
                if now > 0.0 && width.try_get_untracked().is_some_and(|before| (before - now).abs() > 0.5) {
                    width.set(now);
                }
            });
        };
        watch.set_value(watch_width(&element, told));
    });
    view! { <div class=class node_ref=place>{children()}</div> }
}
