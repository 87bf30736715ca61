//! Boxes for words.

use crate::browser::element::{El, Part, View, el};
use crate::browser::graph::*;
use crate::record::limits::{LONGEST_NAME, LONGEST_NOTE, LONGEST_TEXT};
use crate::ui::signal::Signal;
use crate::ui::state::{Session, state};

/// A box for a name or the like, with its label above it.
pub fn plain(
    id: String,
    label: &'static str,
    now: impl Fn() -> String + 'static,
    put: impl FnMut(String) + 'static,
) -> El {
    limited(id, label, LONGEST_NAME, now, put)
}

fn limited(
    id: String,
    label: &'static str,
    longest: usize,
    now: impl Fn() -> String + 'static,
    mut put: impl FnMut(String) + 'static,
) -> El {
    let input = el("input")
        .set("id", id.clone())
        .set("type", "text")
        .set("autocomplete", "off")
        .set("maxlength", longest.to_string())
        .property("value", now)
        .on("input", move |event| put(event_target_value(&event)));
    el("div").class("field").child(el("label").set("for", id).child(label)).child(el("div").class("box").child(input))
}

/// As [`plain`], for a text of the recipe: leaving the box ends the step that Undo takes back.
pub fn line(id: String, label: &'static str, session: Session, now: Signal<String>, put: Callback<String>) -> View {
    let state = state();
    let longest = match session {
        Session::LiquidSource(_) | Session::Tags => LONGEST_TEXT,
        _ => LONGEST_NAME,
    };
    limited(id, label, longest, move || now.get(), move |text| put.run(text))
        .class_if("wide", matches!(session, Session::Note | Session::Tags))
        .on("change", move |_| state.leave())
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
                    .set("maxlength", LONGEST_NOTE.to_string())
                    .property("value", move || now.get())
                    .on("input", move |event| put.run(event_target_value(&event)))
                    .on("change", move |_| state.leave()),
            ),
        )
        .view()
}
