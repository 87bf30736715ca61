//! A choice among a few, as a select.

use crate::ui::erased::{attr, flag, live, on};
use leptos::prelude::*;

/// One thing to choose: what stands for it, and its words.
pub type Choice = (String, String);

/// The choices, and which of them is chosen; a value that is not offered shows the first one.
fn options(choices: Signal<Vec<Choice>>, now: Signal<String>) -> AnyView {
    let options = move || {
        let option = |(value, words): Choice| {
            let own = value.clone();
            view! { <option value=value prop:selected=flag(move || now.with(|now| *now == own))>{words}</option> }
        };
        choices.get().into_iter().map(option).collect_view()
    };
    options.into_any()
}

/// A select by itself, with a name that is not on the screen.
pub fn select(
    id: String,
    name: Signal<String>,
    choices: Signal<Vec<Choice>>,
    now: Signal<String>,
    choose: Callback<String>,
) -> AnyView {
    view! {
        <select id=id aria-label=attr(move || name.get()) on:change=on(move |event| choose.run(event_target_value(&event)))>
            {options(choices, now)}
        </select>
    }
    .into_any()
}

/// A select with its label above it.
pub fn labelled(
    id: String,
    label: Signal<String>,
    choices: Signal<Vec<Choice>>,
    now: Signal<String>,
    choose: Callback<String>,
) -> AnyView {
    view! {
        <div class="field">
            <label for=id.clone()>{live(move || label.get())}</label>
            <div class="box">
                <select id=id on:change=on(move |event| choose.run(event_target_value(&event)))>
                    {options(choices, now)}
                </select>
            </div>
        </div>
    }
    .into_any()
}
