//! What the head of the page has for this tab: when the line was read, and the way into the log.

use super::log::save_check;
use super::now::read_at;
use crate::browser::clock;
use crate::domain::line::ReadOn;
use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;

/// Milliseconds of a minute, and minutes of a day.
const MINUTE: u64 = 60_000;
const DAY: u64 = 24 * 60;

/// Minutes since midnight of a time such as "10:42".
fn minutes(text: &str) -> Option<u64> {
    let (hours, minutes) = text.split_once(':')?;
    Some(hours.parse::<u64>().ok()? * 60 + minutes.get(..2)?.parse::<u64>().ok()?)
}

/// The last moment at which the clock showed a time of day.
fn last_at(text: &str, now: u64) -> Option<u64> {
    let (then, present) = (minutes(text)?, minutes(&clock::time(now))?);
    let ago = (present + DAY).checked_sub(then)? % DAY;
    Some((now / MINUTE).saturating_sub(ago) * MINUTE)
}

/// Box and button.
#[component]
pub fn CheckActions() -> impl IntoView {
    let state = expect_context::<State>();
    let shown = Memo::new(move |_| clock::time(read_at(state)));
    let put = move |event| {
        if let Some(at) = last_at(&event_target_value(&event), clock::now()) {
            let recipe = state.title.with_untracked(|title| title.name.clone());
            state.line.edit(|book| book.read_on = Some(ReadOn { recipe, at }));
        }
    };
    view! {
        <label class="note read-at">
            {t!("check-read-at")}
            " "
            <span class="entry-box"><input type="time" id="check-read-at" prop:value=move || shown.get() on:change=put/></span>
        </label>
        <button type="button" class="primary" on:click=move |_| save_check(state)>{t!("check-save")}</button>
    }
}
