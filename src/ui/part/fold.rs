//! What is folded away until somebody asks for it, and not made before.

use crate::ui::erased::{live, on};
use leptos::prelude::*;

/// A fold. What is in it is made when it is first opened, and stays.
pub fn fold(title: &'static str, inside: impl Fn() -> AnyView + Send + 'static) -> AnyView {
    let opened = RwSignal::new(false);
    view! {
        <details class="more" on:toggle=on(move |_| {
            if !opened.get_untracked() {
                opened.set(true);
            }
        })>
            <summary>{title}</summary>
            {live(move || opened.get().then(&inside))}
        </details>
    }
    .into_any()
}
