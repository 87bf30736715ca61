//! What is read out once the result has changed: the gravest warning and the figures to act on, together.

use crate::domain::{Figure, Grade};
use crate::t;
use crate::ui::part::figure::text;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;
use std::time::Duration;

/// A result is read out when nothing was typed for so long.
const QUIET: Duration = Duration::from_millis(1_000);

/// A line that a screen reader follows, not in sight.
#[component]
pub fn Announce() -> impl IntoView {
    let state = expect_context::<State>();
    let said = RwSignal::new(String::new());
    let mut say = debounce(QUIET, move |()| said.set(untrack(move || sentence(state))));
    Effect::new(move |before: Option<()>| {
        state.draft.track();
        state.units.track();
        if before.is_some() {
            say(());
        }
    });
    view! { <p class="out-of-sight" role="status" aria-live="polite">{move || said.get()}</p> }
}

fn sentence(state: State) -> String {
    let found = state.said(|finding| finding.grade != Grade::Note);
    let gravest = found.iter().min_by_key(|said| said.finding.weight());
    if let Some(error) = gravest.filter(|said| said.finding.grade == Grade::Stop) {
        return t!("common-announce-error", error = error.message.what.clone());
    }
    let figure = |figure: Figure| {
        text(state, figure).map_or_else(String::new, |text| format!("{} {text}. ", words::figure(figure).label))
    };
    let warning = gravest.map_or_else(String::new, |said| format!("{} ", said.message.what));
    format!("{warning}{}{}", figure(Figure::WaterDose), figure(Figure::MatWet)).trim_end().to_owned()
}
