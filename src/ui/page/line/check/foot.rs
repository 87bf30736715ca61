//! What goes with the table: read out when it changes, and at the foot of a phone's screen.

use super::now::{CheckSheet, read_at};
use crate::browser::clock;
use crate::domain::Grade;
use crate::t;
use crate::ui::components::{Mark, SlotLine};
use crate::ui::state::State;
use leptos::prelude::*;

/// When it was read, and how many readings are out of tolerance.
#[component]
pub fn CheckFoot(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CheckSheet>();
    let counts = Memo::new(move |_| sheet.now.with(|now| (now.outside().count(), now.read())));
    let at = Memo::new(move |_| clock::time(read_at(state)));
    // The line as it was when the page came is no news.
    let said = RwSignal::new(String::new());
    Effect::new(move |before: Option<String>| {
        let first = lines.with(|lines| lines.first().map(|line| line.words.clone())).unwrap_or_default();
        if before.is_some_and(|before| !before.is_empty() && before != first) {
            said.set(first.clone());
        }
        first
    });
    view! {
        <p class="out-of-sight" role="status" aria-live="polite">{move || said.get()}</p>
        <div class="phone-foot">
            <span>{t!("check-read-at")} " " <b>{move || at.get()}</b></span>
            <Show when=move || { counts.get().0 > 0 }>
                <span class="flag">
                    <Mark grade=Grade::Unusual/>
                    " "
                    {move || { let (out, read) = counts.get(); t!("check-out-of", out = out, read = read) }}
                </span>
            </Show>
        </div>
    }
}
