//! Boxes for words.

use crate::ui::erased::{on, prop};
use crate::ui::state::{Session, state};
use leptos::prelude::*;

/// A box for a line of text, with its label above it.
pub fn line(id: String, label: &'static str, session: Session, now: Signal<String>, put: Callback<String>) -> AnyView {
    let state = state();
    view! {
        <div class="field" class:wide=matches!(session, Session::Note | Session::Tags)>
            <label for=id.clone()>{label}</label>
            <div class="box">
                <input
                    id=id
                    type="text"
                    autocomplete="off"
                    prop:value=prop(move || now.get())
                    on:input=on(move |event| put.run(event_target_value(&event)))
                    on:change=on(move |_| state.leave())
                />
            </div>
        </div>
    }
    .into_any()
}

/// A box for several lines of text, with its label above it.
pub fn lines(id: String, label: &'static str, now: Signal<String>, put: Callback<String>) -> AnyView {
    let state = state();
    view! {
        <div class="field wide">
            <label for=id.clone()>{label}</label>
            <div class="box">
                <textarea
                    id=id
                    rows="2"
                    prop:value=prop(move || now.get())
                    on:input=on(move |event| put.run(event_target_value(&event)))
                    on:change=on(move |_| state.leave())
                ></textarea>
            </div>
        </div>
    }
    .into_any()
}
