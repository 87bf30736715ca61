//! The row of a pump, and its details below it.

use super::context::{SettingsSheet, SheetFigure, beyond, interval, parts};
use super::figure::SheetValue;
use super::range_bar::range_bar;
use crate::browser::clock;
use crate::domain::Grade;
use crate::domain::line::{
    LineFigure, LineFinding, LineFindingKind, LinePlace, PumpId, PumpRow, RangeStatus, Setting, SettingUnit,
};
use crate::t;
use crate::ui::components::{Mark, Rank};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::lines::to_pump;
use crate::ui::page::line::parts::{setting, shown};
use crate::ui::page::line::settings_text::{pump_name, signed};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// Milliseconds of a day.
const DAY: u64 = 86_400_000;

/// The row.
#[component]
pub fn PumpSettingRow(
    /// The pump.
    id: PumpId,
    /// The scale of its drive.
    unit: SettingUnit,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let row = Memo::new(move |_| sheet.now.with(|now| now.row(id).cloned()));
    let name = Memo::new(move |_| pump_name(state, id));
    let fed = Memo::new(move |_| {
        row.get().map(|row| state.draft.with(|draft| words::line::fed(row.fed, draft))).unwrap_or_default()
    });
    let limits = Memo::new(move |_| limits(state, id));
    let is_open = Memo::new(move |_| sheet.open_pump.get() == Some(id));
    let toggle = move |_| sheet.open_pump.update(|open| *open = if *open == Some(id) { None } else { Some(id) });
    let warn =
        Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| row.range_status != RangeStatus::Within)));
    let is_set = Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| row.set_to.is_some())));
    let beyond_limit =
        Memo::new(move |_| row.with(|row| beyond(state, row.as_ref()?, passed(row.as_ref()?, limits.get()))));
    let nozzles_open = Memo::new(move |_| row.with(|row| Some(row.as_ref()?.nozzles?.open)));
    let tested = Memo::new(move |_| row.with(|row| row.as_ref().map(|row| tested(state, row))));
    let figure = move |figure| SheetFigure::Pump(id, figure);
    let set_to = move || {
        let rank = if is_set.get() { Rank::Act } else { Rank::Lead };
        let beyond = beyond_limit.get();
        let mark = beyond.is_some().then(|| view! { <Mark grade=Grade::Unusual/> " " });
        view! {
            {mark}
            <SheetValue figure=figure(LineFigure::Setting(unit)) rank=rank unit_in_head=true/>
            {beyond.map(|words| view! { <span class="sub flag">{words}</span> })}
        }
    };
    let nozzles = move || {
        let open = nozzles_open.get()?;
        Some(view! { {open} " × " <SheetValue figure=figure(LineFigure::NozzleFlow)/> })
    };
    view! {
        <tr class="pump" data-pump=id.0.to_string() class:warn=move || warn.get() class:open=move || is_open.get()>
            <th scope="row" class="l name"><b>{move || name.get()}</b> " " <span class="fed">{move || fed.get()}</span></th>
            <td class="set">{set_to}</td>
            <td class="setting-unit">{move || is_set.get().then(|| parts(state, Setting(0.0).amount(unit)).1)}</td>
            <td class="extra" data-label=t!("line-interval")>
                {move || row.with(|row| row.as_ref().map(|row| interval(state, row)))}
            </td>
            <td class="l extra range" data-label=t!("line-range")>{move || row.with(|row| range_bar(state, row.as_ref()?, limits.get()))}</td>
            <td class="edge mass"><SheetValue figure=figure(LineFigure::Wanted) unit_in_head=true/></td>
            <td class="extra" data-label=t!("line-by-volume")>
                <SheetValue figure=figure(LineFigure::WantedVolume) unit_in_head=true/>
            </td>
            <td class="extra" data-label=t!("line-nozzles")>{nozzles}</td>
            <td class="l extra last-test" data-label=t!("line-catch-test")>{move || tested.get().map(catch_test)}</td>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    aria-label=move || t!("line-details-of", name = name.get())
                    aria-expanded=move || if is_open.get() { "true" } else { "false" }
                    aria-controls=format!("pump-details-{}", id.0)
                    on:click=toggle
                >
                    "⋯"
                </button>
            </td>
        </tr>
        <Advice id=id row=row limits=limits/>
        <Show when=move || is_open.get()>
            <tr class="details" id=format!("pump-details-{}", id.0)>
                <td colspan="10"><Details id=id row=row/></td>
            </tr>
        </Show>
    }
}

/// The lowest and the highest setting allowed.
pub type Limits = (Option<Setting>, Option<Setting>);

/// The lowest and the highest setting allowed.
pub fn limits(state: State, id: PumpId) -> Limits {
    state.line.checked.with(|line| line.pump(id).map_or((None, None), |pump| (pump.least, pump.most)))
}

/// The limit that a setting passes.
pub fn passed(row: &PumpRow, (least, most): Limits) -> Option<Setting> {
    match row.range_status {
        RangeStatus::BelowLimit => least,
        RangeStatus::AboveLimit => most,
        _ => None,
    }
}

/// When a pump was last tested.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LastTest {
    /// The date; `None` without a test that counts.
    pub date: Option<String>,
    /// How many days ago.
    pub days: u64,
    /// By how much the flow has changed since the test before, where that is beyond its scatter.
    pub drift: Option<String>,
}

/// When the pump of a row was last tested.
pub fn tested(state: State, row: &PumpRow) -> LastTest {
    let at = state.line.checked.with(|line| Some(line.pump(row.pump)?.last()?.at));
    let days = at.map_or(0, |at| state.line.now.get().saturating_sub(at) / DAY);
    let drift = row.drift.filter(|drift| drift.certain == Some(true)).and_then(|drift| drift.change);
    LastTest { date: at.map(clock::date), days, drift: drift.map(|change| signed(state, change.value)) }
}

fn catch_test(test: LastTest) -> AnyView {
    let LastTest { date, days, drift } = test;
    let Some(date) = date else { return view! { <span class="flag">{t!("line-none")}</span> }.into_any() };
    let below = match drift {
        Some(change) => {
            view! { <span class="sub flag"><Mark grade=Grade::Unusual/> " " {t!("line-drift", change = change)}</span> }
                .into_any()
        }
        None => view! { <span class="sub">{t!("line-days-ago", days = days)}</span> }.into_any(),
    };
    view! { {date} {below} }.into_any()
}

/// What helps where the pump leaves its settings.
#[component]
fn Advice(
    /// The pump.
    id: PumpId,
    /// Its row.
    row: Memo<Option<PumpRow>>,
    /// The settings allowed.
    limits: Memo<Limits>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let words = Memo::new(move |_| {
        let of_pump = |found: &&LineFinding| {
            found.place == LinePlace::Pump(id) && matches!(found.what, LineFindingKind::OutOfReach { .. })
        };
        let found = sheet.now.with(|now| now.findings.iter().find(of_pump).cloned())?;
        let message = with_context(state, |context| words::line::finding(&found, context));
        Some(format!("{}{} {}", short_by(state, row.get().as_ref(), limits.get()), message.what, message.fix))
    });
    move || words.get().map(|words| view! { <tr class="warn advice"><td colspan="10" class="l">{words}</td></tr> })
}

/// By how much the pump misses its flow at its highest setting.
pub fn short_by(state: State, row: Option<&PumpRow>, (_, most): Limits) -> String {
    let found = row.filter(|row| row.range_status == RangeStatus::AboveLimit).and_then(|row| {
        let (curve, most) = row.curve.zip(most)?;
        let gives = curve.flow(most);
        let shown = |base| shown(state, LineFigure::Wanted, base);
        let at = setting(state, most, row.unit);
        Some(t!("line-delivers", flow = shown(gives.value), setting = at, short = shown((row.mass - gives).value)))
    });
    found.map_or_else(String::new, |words| format!("{words} "))
}

/// What is needed less often.
#[component]
fn Details(
    /// The pump.
    id: PumpId,
    /// Its row.
    row: Memo<Option<PumpRow>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let status = move || {
        let status = row.with(|row| row.as_ref().filter(|row| row.setting.is_some()).map(|row| row.range_status));
        status.map(|status| t!("line-setting-is", status = words::line::range_status(status)))
    };
    let drift = move || {
        row.with(|row| row.as_ref().and_then(|row| row.drift)).map(|drift| {
            let change = match drift.change {
                Some(change) => signed(state, change.value),
                None => t!("line-no-flow-then"),
            };
            let date = clock::date(drift.at);
            match drift.certain {
                Some(true) => t!("line-drift-certain", change = change, date = date),
                Some(false) => t!("line-drift-uncertain", change = change, date = date),
                None => t!("line-drift-unknown", change = change, date = date),
            }
        })
    };
    let spray = SheetFigure::Pump(id, LineFigure::Spray);
    let is_thinned = Memo::new(move |_| !sheet.text(state, spray).0.is_empty());
    view! {
        <p>{status}</p>
        <p>{drift}</p>
        <p hidden=move || !is_thinned.get()>{t!("line-spray")} " " <SheetValue figure=spray/></p>
        <p><button type="button" on:click=move |_| to_pump(state, id)>{t!("line-to-catch-tests")}</button></p>
    }
}
