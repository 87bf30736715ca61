//! Lines that were set aside: opened again, or deleted.

use crate::browser::element::{Part, View, button, el};
use crate::record::content::kept_line::KeptLine;
use crate::ui::part::save::when;
use crate::ui::state::{State, state};
use leptos::reactive::prelude::*;

/// The section; nothing while no line is kept.
pub fn kept_lines() -> View {
    let state = state();
    let page = &state.words.library_page;
    let section = move || {
        let lines = state.library.with(|library| library.lines()).unwrap_or_default();
        (!lines.is_empty()).then(|| {
            el("section").class("strays").child(el("h2").child(page.lines)).child(el("p").child(page.lines_hint)).child(
                el("ul")
                    .class("revisions")
                    .set("aria-label", page.lines)
                    .child(lines.iter().map(|line| entry(state, line)).collect::<View>()),
            )
        })
    };
    el("div").child(section).view()
}

fn entry(state: State, kept: &KeptLine) -> View {
    let words = &state.words;
    let name = state.called(&kept.content().name);
    let id = kept.line();
    let (open, delete) = (format!("{} {name}", words.library_page.open), format!("{} {name}", words.tools.remove));
    el("li")
        .child(el("span").child(name))
        .child(el("span").class("note").child(when(kept.content().saved_at)))
        .child(button().set("aria-label", open).on_click(move || state.open_line(id)).child(words.library_page.open))
        .child(button().set("aria-label", delete).on_click(move || state.delete_line(id)).child(words.tools.remove))
        .view()
}
