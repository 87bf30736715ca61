//! What went wrong with the store, told at once over every page, with the way out beside it.

use super::finding::mark;
use crate::domain::Grade;
use crate::record::shelf::SaveError;
use crate::ui::keep::{Trouble, keep};
use crate::ui::state::state;
use crate::ui::text::Message;
use leptos::prelude::*;

/// The trouble, while there is any.
pub fn trouble() -> AnyView {
    let (state, keep) = (state(), keep());
    let tools = &state.words.tools;
    let page = &state.words.shelf_page;
    let message = move |trouble: &Trouble| match trouble {
        Trouble::Store(error) => (state.words.store)(error),
        Trouble::Unsaved(error) => (state.words.unsaved)(error),
        Trouble::Draft(unread) => Message { mend: page.draft_unread.to_owned(), ..(state.words.unread)(unread) },
        Trouble::Settings(unread) => Message { mend: page.settings_unread.to_owned(), ..(state.words.unread)(unread) },
        Trouble::Missing(count) => Message { what: (page.missing)(*count), mend: String::new() },
    };
    let shown = move || {
        keep.trouble.get().map(|trouble| {
            let Message { what, mend } = message(&trouble);
            let way_out = match trouble {
                Trouble::Store(_)
                | Trouble::Unsaved(
                    SaveError::Store(_) | SaveError::NotKept | SaveError::Occupied { .. } | SaveError::Unknown,
                ) => Some(
                    view! { <button type="button" on:click=move |_| keep.give_out()>{tools.save_to_file_now}</button> }
                        .into_any(),
                ),
                Trouble::Missing(_) => Some(
                    view! { <button type="button" on:click=move |_| keep.fill_again()>{page.fill_again}</button> }
                        .into_any(),
                ),
                Trouble::Unsaved(SaveError::NoJson(_)) | Trouble::Draft(_) | Trouble::Settings(_) => None,
            };
            view! {
                <div class="finding stop">
                    <p>{mark(Grade::Stop)} " " <strong>{what}</strong> " " {mend}</p>
                    <div class="actions">
                        {way_out}
                        <button type="button" on:click=move |_| keep.trouble.set(None)>{tools.close}</button>
                    </div>
                </div>
            }
        })
    };
    view! { <div class="trouble" role="alert">{shown}</div> }.into_any()
}
