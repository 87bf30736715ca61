//! What is read out once a catch has changed the line: the gravest warning, the setting, and how much the catches scatter.

use super::context::CatchSheet;
use crate::domain::line::{LineFigure, examine};
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::page::line::parts::shown;
use crate::ui::page::line::settings_text::{pump_name, setting_text};
use crate::ui::state::State;
use leptos::prelude::*;
use std::time::Duration;

/// A result is read out when nothing was typed for so long.
const QUIET: Duration = Duration::from_millis(1_000);

/// A line that a screen reader follows, not in sight.
#[component]
pub fn AnnounceTest(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    let said = RwSignal::new(String::new());
    let sentence = move || {
        let (pump, _) = sheet.pump.get()?;
        let first = lines.with(|lines| lines.first().map(|line| format!("{} ", line.words))).unwrap_or_default();
        let set = sheet
            .row(pump)
            .map(|row| format!("{} {}. ", pump_name(state, pump), setting_text(state, &row)))
            .unwrap_or_default();
        let fit = state.line.book(|book| {
            let test = book.pump(pump)?.calibrations.last()?.id;
            examine(book, pump, test)?.fit
        });
        let scatter = fit.and_then(|fit| fit.residual_sd).map_or_else(String::new, |sd| {
            format!("{} {}", t!("catch-scatter"), shown(state, LineFigure::ResidualSd, sd))
        });
        Some(format!("{first}{set}{scatter}"))
    };
    let mut say = debounce(QUIET, move |()| said.set(untrack(sentence).unwrap_or_default()));
    Effect::new(move |before: Option<()>| {
        state.line.record.track();
        if before.is_some() {
            say(());
        }
    });
    view! { <p class="out-of-sight" role="status" aria-live="polite">{move || said.get()}</p> }
}
