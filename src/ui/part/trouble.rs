//! What went wrong with keeping things: told at once over every page, with what helps beside it.

use super::finding::mark;
use crate::domain::Grade;
use crate::ui::erased::{live, on};
use crate::ui::state::{Trouble, WayOut, state};
use leptos::prelude::*;

/// The trouble, until it is mended or closed.
pub fn trouble() -> AnyView {
    let state = state();
    let tools = &state.words.tools;
    let told = move |Trouble { message, way_out }: Trouble| {
        let button = way_out.map(|way| match way {
            WayOut::ToFile => {
                view! { <button type="button" on:click=on(move |_| state.give_out())>{tools.save_to_file_now}</button> }
                    .into_any()
            }
            WayOut::WriteBack => {
                let words = state.words.shelf_page.fill_again;
                view! { <button type="button" on:click=on(move |_| state.fill_again())>{words}</button> }.into_any()
            }
        });
        view! {
            <div class="finding stop">
                <p>{mark(Grade::Stop)} " " <strong>{message.what}</strong> " " {message.mend}</p>
                <div class="actions">
                    {button}
                    <button type="button" on:click=on(move |_| state.trouble.set(None))>{tools.close}</button>
                </div>
            </div>
        }
    };
    view! { <div class="trouble" role="alert">{live(move || state.trouble.get().map(told))}</div> }.into_any()
}
