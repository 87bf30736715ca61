//! What is read out once an entry has changed a tank or the delivery: the gravest warning, and what comes of it.

use super::context::{TankNow, TankSheet, hours};
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use leptos::prelude::*;
use std::time::Duration;

/// A result is read out when nothing was typed for so long.
const QUIET: Duration = Duration::from_millis(1_000);

/// A line that a screen reader follows, not in sight.
#[component]
pub fn AnnounceTanks(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let said = RwSignal::new(String::new());
    let sentence = move || {
        let first = lines.with_untracked(|lines| lines.first().map(|line| format!("{} ", line.words)));
        let tank = |tank: &TankNow| {
            let (number, unit) = hours(state, tank.state?.lasts?.value);
            Some(t!("tank-lasts", name = tank.name.clone(), time = joined(&number, &unit)))
        };
        let tanks = sheet.tanks.with_untracked(|tanks| tanks.iter().filter_map(tank).collect::<Vec<_>>().join(" "));
        format!("{}{tanks}", first.unwrap_or_default())
    };
    let mut say = debounce(QUIET, move |()| said.set(untrack(sentence)));
    let typed = Memo::new(move |_| state.line.book(|book| book.tanks.clone()));
    Effect::new(move |before: Option<()>| {
        typed.track();
        if before.is_some() {
            say(());
        }
    });
    view! { <p class="out-of-sight" role="status" aria-live="polite">{move || said.get()}</p> }
}
