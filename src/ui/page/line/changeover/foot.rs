//! The next step, at the foot of a phone's screen.

use super::context::{ChangeSheet, clock_of, until};
use super::row_words::row_words;
use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;

/// The foot.
#[component]
pub fn ChangeFoot() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<ChangeSheet>();
    let next = Memo::new(move |_| {
        sheet.plan.with(|plan| {
            let plan = plan.as_ref()?;
            let solved = plan.solved.as_ref()?;
            let first = solved.schedule.iter().find(|scheduled| solved.next.contains(&scheduled.key()))?;
            Some((row_words(state, solved, first).in_short(), first.at, plan.started.is_some()))
        })
    });
    let when = move || match next.get() {
        Some((_, Some(at), true)) => until(at, state.line.now.get()),
        Some((_, Some(at), false)) => clock_of(false, at),
        _ => String::new(),
    };
    view! {
        <Show when=move || next.with(Option::is_some)>
            <div class="phone-foot">
                <span>{t!("change-next")} " " <b>{when}</b></span>
                <span>{move || next.get().map(|(what, ..)| what)}</span>
            </div>
        </Show>
    }
}
