//! A choice among a few, as a select.

use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::ui::signal::Signal;

/// One thing to choose: what stands for it, and its words.
pub type Choice = (String, String);

/// The choices, and which of them is chosen; a value that is not offered shows the first one.
fn options(choices: Signal<Vec<Choice>>, now: Signal<String>) -> View {
    let options = move || {
        let option = |(value, words): Choice| {
            let own = value.clone();
            el("option").set("value", value).property("selected", move || now.with(|now| *now == own)).child(words)
        };
        choices.get().into_iter().map(option).collect::<View>()
    };
    options.view()
}

/// A select by itself, with a name that is not on the screen.
pub fn select(
    id: String,
    name: Signal<String>,
    choices: Signal<Vec<Choice>>,
    now: Signal<String>,
    choose: Callback<String>,
) -> View {
    el("select")
        .set("id", id)
        .set("aria-label", move || name.get())
        .on("change", move |event| choose.run(event_target_value(&event)))
        .child(options(choices, now))
        .view()
}

/// A select with its label above it.
pub fn labelled(
    id: String,
    label: Signal<String>,
    choices: Signal<Vec<Choice>>,
    now: Signal<String>,
    choose: Callback<String>,
) -> View {
    el("div")
        .class("field")
        .child(el("label").set("for", id.clone()).child(move || label.get()))
        .child(
            el("div").class("box").child(
                el("select")
                    .set("id", id)
                    .on("change", move |event| choose.run(event_target_value(&event)))
                    .child(options(choices, now)),
            ),
        )
        .view()
}
