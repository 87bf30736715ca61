//! Boxes for words.

use crate::browser::element::{Part, View, el};
use crate::ui::signal::Signal;
use crate::ui::state::{Session, state};
use leptos::prelude::*;

/// A box for a line of text, with its label above it.
pub fn line(id: String, label: &'static str, session: Session, now: Signal<String>, put: Callback<String>) -> View {
    let state = state();
    el("div")
        .class("field")
        .class_if("wide", matches!(session, Session::Note | Session::Tags))
        .child(el("label").set("for", id.clone()).child(label))
        .child(
            el("div").class("box").child(
                el("input")
                    .set("id", id)
                    .set("type", "text")
                    .set("autocomplete", "off")
                    .property("value", move || now.get())
                    .on("input", move |event| put.run(event_target_value(&event)))
                    .on("change", move |_| state.leave()),
            ),
        )
        .view()
}

/// A box for several lines of text, with its label above it.
pub fn lines(id: String, label: &'static str, now: Signal<String>, put: Callback<String>) -> View {
    let state = state();
    el("div")
        .class("field wide")
        .child(el("label").set("for", id.clone()).child(label))
        .child(
            el("div").class("box").child(
                el("textarea")
                    .set("id", id)
                    .set("rows", "2")
                    .property("value", move || now.get())
                    .on("input", move |event| put.run(event_target_value(&event)))
                    .on("change", move |_| state.leave()),
            ),
        )
        .view()
}
