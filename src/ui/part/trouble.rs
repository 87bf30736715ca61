//! What went wrong with keeping things: told at once over every page, with what helps beside it.

use super::finding::mark;
use crate::browser::element::{Part, View, button, el};
use crate::domain::Grade;
use crate::ui::state::{Trouble, WayOut, state};

/// The trouble, until it is mended or closed.
pub fn trouble() -> View {
    let state = state();
    let tools = &state.words.tools;
    let told = move |Trouble { message, way_out }: Trouble| {
        let mend = way_out.map(|way| match way {
            WayOut::ToFile => button().on_click(move || state.give_out()).child(tools.save_to_file_now).view(),
            WayOut::WriteBack => {
                let words = state.words.shelf_page.fill_again;
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
                    .child(message.mend),
            )
            .child(
                el("div")
                    .class("actions")
                    .child(mend)
                    .child(button().on_click(move || state.trouble.set(None)).child(tools.close)),
            )
    };
    el("div").class("trouble").set("role", "alert").child(move || state.trouble.get().map(told)).view()
}
