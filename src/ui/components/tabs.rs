//! The parts of a page of which one is shown at a time.

use crate::browser::page::{matches, reveal};
use leptos::html::Button;
use leptos::prelude::*;

/// A button for each part; the one that is shown is marked.
#[component]
pub fn Tabs(
    /// What the parts are of.
    #[prop(into)]
    name: String,
    /// The parts by their names, in the order of the page.
    tabs: Vec<String>,
    /// The place of the one that is shown.
    #[prop(into)]
    shown: Signal<usize>,
    /// Hears of another choice.
    on_choose: Callback<usize>,
) -> impl IntoView {
    let tab = move |(at, name): (usize, String)| {
        let button = NodeRef::<Button>::new();
        Effect::new(move |_| {
            if let Some(button) = button.get().filter(|_| shown.get() == at) {
                // Asking where it is lays the page out once more, so only where the tabs are pushed aside (tabs.css), and within the frame.
                if matches("(max-width: 40em)") {
                    request_animation_frame(move || reveal(&button));
                }
            }
        });
        view! {
            <button
                node_ref=button
                type="button"
                aria-current=move || (shown.get() == at).then_some("true")
                on:click=move |_| on_choose.run(at)
            >
                {name}
            </button>
        }
    };
    view! { <nav class="sections tabs" aria-label=name>{tabs.into_iter().enumerate().map(tab).collect_view()}</nav> }
}
