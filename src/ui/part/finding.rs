//! A finding in words, with the mark of its grade.

use crate::browser::element::{Part, View, el, svg};
use crate::domain::Grade;
use crate::ui::state::{Said, state};
use crate::ui::text::Message;

/// The class of a grade.
#[must_use]
pub const fn class(grade: Grade) -> &'static str {
    match grade {
        Grade::Stop => "stop",
        Grade::Unusual => "unusual",
        Grade::Note => "note",
    }
}

/// The mark of a grade: its shape differs as well as its colour.
pub fn mark(grade: Grade) -> View {
    let outline = match grade {
        Grade::Stop => "M5,1H11L15,5V11L11,15H5L1,11V5Z",
        Grade::Unusual => "M8,1.5L15.5,14.5H0.5Z",
        Grade::Note => "M8,1A7,7 0 1 1 8,15A7,7 0 1 1 8,1Z",
    };
    let sign = match grade {
        Grade::Stop => "M5,7H11V9H5Z",
        Grade::Unusual => "M7,6H9V10H7ZM7,11.2H9V13H7Z",
        Grade::Note => "M7,7H9V12H7ZM7,4H9V6H7Z",
    };
    svg("svg")
        .class(format!("mark {}", class(grade)))
        .set("viewBox", "0 0 16 16")
        .set("aria-hidden", "true")
        .child(svg("path").class("outline").set("d", outline))
        .child(svg("path").class("sign").set("d", sign))
        .view()
}

/// How grave, what happened, and how to fix it.
pub fn says(said: Said) -> View {
    told(said.finding.grade, said.message)
}

/// A message with its grade.
pub fn told(grade: Grade, message: Message) -> View {
    let state = state();
    el("p")
        .class(format!("finding {}", class(grade)))
        .child(mark(grade))
        .text(" ")
        .child(el("strong").child((state.words.grade)(grade)))
        .text(" ")
        .child(message.what)
        .text(" ")
        .child(message.fix)
        .view()
}
