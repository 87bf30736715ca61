//! What was just done, for a while, with the way to take it back.

use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;
use std::time::Duration;

/// The button that takes back what a notice tells of.
pub const UNDO: &str = "notice-undo";
/// A notice without Undo is shown so long. One with Undo stays until the next step or until it is closed: nobody has to
/// be quick.
const SEEN: Duration = Duration::from_secs(10);

/// The notice. It comes before the page's content, so that Tab reaches it from the bar; its Undo takes back the one act
/// that it tells of.
#[component]
pub fn UndoNotice() -> impl IntoView {
    let state = expect_context::<State>();
    let words = move || state.notice.with(|notice| notice.as_ref().map(|notice| notice.words.clone()));
    let undo = move || {
        state.notice.with(|notice| notice.as_ref().and_then(|notice| notice.undo.clone())).map(|undo| {
            let take_back = move |_| {
                // What taking back has to tell comes after.
                state.notice.set(None);
                undo();
            };
            view! { <button type="button" id=UNDO on:click=take_back>{t!("common-undo")}</button> }
        })
    };
    let mut soon_gone = debounce(SEEN, move |()| {
        if state
            .notice
            .with_untracked(|notice| notice.as_ref().is_some_and(|notice| notice.undo.is_none() && !notice.stays))
        {
            state.notice.set(None);
        }
    });
    Effect::new(move |_| {
        if state.notice.with(Option::is_some) {
            soon_gone(());
        }
    });
    let is_there = Memo::new(move |_| state.notice.with(Option::is_some));
    view! {
        <div class="notice" role="status" class:shown=move || is_there.get()>
            <p>{words}</p>
            {undo}
            <Show when=move || is_there.get()>
                <button type="button" on:click=move |_| state.notice.set(None)>{t!("common-close")}</button>
            </Show>
        </div>
    }
}
