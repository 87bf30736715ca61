//! What is folded away until somebody asks for it, and not made before.

use crate::browser::element::{Part, View, el};
use crate::ui::signal::RwSignal;
use leptos::reactive::prelude::*;

/// A fold. What is in it is made when it is first opened, and stays.
pub fn fold(title: &'static str, inside: impl Fn() -> View + Send + 'static) -> View {
    let opened = RwSignal::new(false);
    el("details")
        .class("more")
        .on("toggle", move |_| {
            if !opened.get_untracked() {
                opened.set(true);
            }
        })
        .child(el("summary").child(title))
        .child(move || opened.get().then(&inside))
        .view()
}
