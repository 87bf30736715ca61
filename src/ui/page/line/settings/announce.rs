//! What is read out once a new belt scale or moisture has given new settings: the gravest warning and the settings, together.

use super::context::SettingsSheet;
use crate::domain::line::PumpRow;
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::page::line::settings_text::{pump_name, setting_text};
use crate::ui::state::State;
use leptos::prelude::*;
use std::time::Duration;

/// A result is read out when nothing was typed for so long.
const QUIET: Duration = Duration::from_millis(1_000);

/// A line that a screen reader follows, not in sight.
#[component]
pub fn AnnounceSettings(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let said = RwSignal::new(String::new());
    let sentence = move || {
        let first = lines.with_untracked(|lines| lines.first().map(|line| format!("{} ", line.words)));
        let settings = sheet.now.with_untracked(|now| {
            if now.old {
                return t!("line-no-new-settings");
            }
            let rows = now.settings.iter().flat_map(|settings| &settings.rows);
            let row = |row: &PumpRow| format!("{} {}.", pump_name(state, row.pump), setting_text(state, row));
            rows.map(row).collect::<Vec<_>>().join(" ")
        });
        format!("{}{settings}", first.unwrap_or_default())
    };
    let mut say = debounce(QUIET, move |()| said.set(untrack(sentence)));
    Effect::new(move |before: Option<()>| {
        sheet.now.track();
        if before.is_some() {
            say(());
        }
    });
    view! { <p class="out-of-sight" role="status" aria-live="polite">{move || said.get()}</p> }
}
