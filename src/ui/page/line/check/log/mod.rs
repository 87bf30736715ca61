//! The log of checks: saved, listed, charted with control limits, and exported as a table.

mod actions;
mod chart;
mod entries;

pub use actions::save_check;

use crate::t;
use crate::ui::state::State;
use actions::{export_check, export_log, read_log};
use chart::LogChart;
use entries::LogEntries;
use leptos::prelude::*;

/// The log with its chart.
#[component]
pub fn CheckLog() -> impl IntoView {
    let state = expect_context::<State>();
    Effect::new(move |_| {
        state.library.track();
        read_log(state);
    });
    let is_empty = Memo::new(move |_| state.line.log.with(Vec::is_empty));
    view! {
        <section class="panel check-log" aria-labelledby="check-log-title">
            <div class="check-log-head">
                <h2 id="check-log-title">{t!("check-log")}</h2>
                <Show when=move || is_empty.get()><p class="note">{t!("check-log-empty")}</p></Show>
            </div>
            <div class="check-log-parts">
                <Show when=move || !is_empty.get()><LogChart/></Show>
                <LogEntries/>
            </div>
            <p class="actions">
                <Show when=move || !is_empty.get()>
                    <button type="button" on:click=move |_| export_log(state)>{t!("check-export-log")}</button>
                </Show>
                <button type="button" on:click=move |_| export_check(state)>{t!("check-export")}</button>
            </p>
        </section>
    }
}
