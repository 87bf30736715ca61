//! One pump of the settings: what to set it to, or that it cannot.

use super::context::amount;
use crate::domain::Grade;
use crate::domain::line::{LineFindingKind, LinePlace, PumpRow, RangeStatus, Setting};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::page::line::settings::context::{beyond, interval, parts, setting_parts};
use crate::ui::page::line::settings::range_bar::range_bar;
use crate::ui::page::line::settings::row::{limits, passed, short_by, tested};
use crate::ui::page::line::settings_now::SettingsNow;
use crate::ui::page::line::settings_text::{no_setting, pump_name, signed};
use crate::ui::paper::context::line_words;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The pump.
#[component]
pub fn PumpOnPaper(
    /// What it has to do.
    row: PumpRow,
    /// What helps where it cannot.
    help: Option<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let limits = limits(state, row.pump);
    let name = pump_name(state, row.pump);
    let fed = state.draft.with(|draft| words::line::fed(row.fed, draft));
    let unit = parts(state, Setting(0.0).amount(row.unit)).1;
    let set = match row.set_to {
        Some(at) => {
            let number = setting_parts(state, row.pump, at, row.unit).0;
            let status = (row.range_status != RangeStatus::Within).then(|| {
                let words = words::line::range_status(row.range_status);
                view! { <p class="status"><Mark grade=Grade::Unusual/> " " {words} ". " {help.clone()}</p> }
            });
            view! { <div class="set"><b>{number} <span class="u">"\u{a0}" {unit}</span></b>{status}</div> }.into_any()
        }
        None => {
            let why = match beyond(state, &row, passed(&row, limits)) {
                Some(beyond) => t!("paper-cannot", beyond = beyond),
                None => no_setting(&row).to_owned(),
            };
            let short = short_by(state, Some(&row), limits);
            view! { <div class="cannot"><b>"✕ " {why}</b><p>{short} {help}</p></div> }.into_any()
        }
    };
    let nozzles = row.nozzles.map(|opened| {
        t!("paper-nozzles", count = opened.open.to_string(), flow = amount(state, Kind::PumpFlow, opened.each.value))
    });
    let spray = (row.spray.value > row.volume.value * (1.0 + 1e-9))
        .then(|| t!("paper-with-thinning", flow = amount(state, Kind::PumpFlow, row.spray.value)));
    let between = interval(state, &row);
    let between = (row.set_to.is_some() && !between.is_empty()).then(|| t!("paper-interval", interval = between));
    let test = tested(state, &row);
    let date = test.date.map_or_else(|| t!("paper-no-catch-test"), |date| t!("paper-catch-test", date = date));
    let drift = row.drift.and_then(|drift| Some((drift, signed(state, drift.change?.value)))).map(|(drift, change)| {
        let date = crate::browser::clock::date(drift.at);
        match drift.certain {
            Some(true) => {
                view! { <b><Mark grade=Grade::Unusual/> " " {t!("paper-drift", change = change, date = date)}</b> }
                    .into_any()
            }
            Some(false) => t!("paper-drift-within", change = change, date = date).into_any(),
            None => t!("paper-drift-unknown", change = change, date = date).into_any(),
        }
    });
    let flow = format!(
        "{} · {}",
        amount(state, Kind::LiquidFlow, row.mass.value),
        amount(state, Kind::PumpFlow, row.volume.value)
    );
    view! {
        <section class="print-pump">
            <div class="who"><b>{name}</b><span>{fed}</span></div>
            {set}
            <div class="more">
                <span class="range">{range_bar(state, &row, limits)}</span>
                <span><b>{flow}</b></span>
                <span>{nozzles} " " {spray}</span>
                <span>{date}</span>
                <span>{between}</span>
                <span>{drift}</span>
            </div>
        </section>
    }
}

/// What helps a pump that leaves its settings, without what the row says already.
pub fn help_of(state: State, now: &SettingsNow, row: &PumpRow) -> Option<String> {
    let found = now.findings.iter().find(|found| {
        found.place == LinePlace::Pump(row.pump) && matches!(found.what, LineFindingKind::OutOfReach { .. })
    })?;
    Some(line_words(state, |context| words::line::finding(found, context)).fix)
}
