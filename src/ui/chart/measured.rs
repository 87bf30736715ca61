//! A place for a drawing that is made for the width it has.

use crate::browser::width::watch_width;
use leptos::html::Div;
use leptos::prelude::*;

/// Draws again whenever its width changes. Nothing is drawn while it has none, as in a closed fold.
#[component]
pub fn Measured<F>(
    /// Draws for a width in pixels.
    draw: F,
) -> impl IntoView
where
    F: Fn(f64) -> AnyView + Send + Sync + 'static,
{
    let width = RwSignal::new(0.0_f64);
    let place = NodeRef::<Div>::new();
    let watch = StoredValue::new_local(None);
    place.on_load(move |place| {
        let tell = move |now: f64| {
            // Not while the browser measures, which it would call a loop.
            request_animation_frame(move || {
                if width.try_get_untracked().is_some_and(|before| before != now) {
                    width.set(now);
                }
            });
        };
        watch.set_value(watch_width(&place, tell));
    });
    let drawing = move || (width.get() > 0.0).then(|| draw(width.get()));
    view! { <div class="measured" node_ref=place>{drawing}</div> }
}
