//! What went wrong with keeping things: told at once over every page, with what helps beside it.

use super::finding::mark;
use crate::browser::element::{Part, View, button, el, many};
use crate::domain::Grade;
use crate::ui::persistence;
use crate::ui::state::{StorageProblem, WayOut, state};
use leptos::reactive::prelude::*;

/// The trouble, until it is mended or closed.
pub fn trouble() -> View {
    let state = state();
    let tools = &state.words.tools;
    let told = move |StorageProblem { message, way_out, .. }: StorageProblem| {
        let fix = way_out.map(|way| match way {
            WayOut::ToFile => button().on_click(move || state.give_out()).child(tools.save_to_file_now).view(),
            WayOut::AllToFile => {
                let words = state.words.library_page.save_library;
                button().on_click(move || state.give_out_library()).child(words).view()
            }
            WayOut::WriteBack => {
                let words = state.words.library_page.fill_again;
                button().on_click(move || state.fill_again()).child(words).view()
            }
        });
        el("div")
            .class("finding stop")
            .child(
                el("p")
                    .child(mark(Grade::Stop))
                    .text(" ")
                    .child(el("strong").child(message.what))
                    .text(" ")
                    .child(message.fix),
            )
            .child(
                el("div")
                    .class("actions")
                    .child(fix)
                    .child(button().on_click(move || state.trouble.set(None)).child(tools.close)),
            )
    };
    let newer = move || {
        state.newer.get().then(|| {
            let use_it = button().on_click(move || persistence::use_newer(state)).child(tools.use_newer);
            el("div").class("finding note").child(el("p").child(mark(Grade::Note)).text(" ").child(tools.newer)).child(
                el("div")
                    .class("actions")
                    .child(use_it)
                    .child(button().on_click(move || state.newer.set(false)).child(tools.not_now)),
            )
        })
    };
    many([
        el("div").class("trouble").set("role", "alert").child(move || state.trouble.get().map(told)).view(),
        el("div").class("trouble").set("role", "status").child(newer).view(),
    ])
}
