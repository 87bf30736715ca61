//! What went wrong with keeping things: told at once over every page, with what helps beside it.

use super::finding::mark;
use crate::browser::element::{Part, View, el};
use crate::domain::Grade;
use crate::ui::state::{Trouble, WayOut, state};
use leptos::prelude::*;

/// The trouble, until it is mended or closed.
pub fn trouble() -> View {
    let state = state();
    let tools = &state.words.tools;
    let told = move |Trouble { message, way_out }: Trouble| {
        let button = way_out.map(|way| match way {
            WayOut::ToFile => {
                el("button").set("type", "button").on_click(move || state.give_out()).add(tools.save_to_file_now).view()
            }
            WayOut::WriteBack => {
                let words = state.words.shelf_page.fill_again;
                el("button").set("type", "button").on_click(move || state.fill_again()).add(words).view()
            }
        });
        el("div")
            .class("finding stop")
            .add(
                el("p")
                    .add(mark(Grade::Stop))
                    .text(" ")
                    .add(el("strong").add(message.what))
                    .text(" ")
                    .add(message.mend),
            )
            .add(
                el("div")
                    .class("actions")
                    .add(button)
                    .add(el("button").set("type", "button").on_click(move || state.trouble.set(None)).add(tools.close)),
            )
    };
    el("div").class("trouble").set("role", "alert").add(move || state.trouble.get().map(told)).view()
}
