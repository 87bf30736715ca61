//! The settings table: settings over belt scale and fibre moisture, pumps side by side.

use super::context::{SettingsSheet, parts, setting_parts};
use super::range::TableRange;
use crate::domain::Case;
use crate::domain::line::pumps::settings_table::{CellPump, SettingsCell};
use crate::domain::line::{LineFinding, PumpId, RangeStatus, SettingUnit, SettingsTable, settings_table};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::components::{Fold, Mark};
use crate::ui::page::line::context::{solved, with_context};
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::paper::next_print::NextPrint;
use crate::ui::part::amount::with_unit;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The table with the scale of each pump, and what is wrong with its range.
pub type FoundTable = (Option<(SettingsTable, Vec<SettingUnit>)>, Vec<LineFinding>);

/// The table of a recipe, with the scale of each pump.
pub fn found(state: State, case: Option<Case>) -> FoundTable {
    let table = solved(state, |draft, _, line, book| {
        let (table, said) = settings_table(draft, case.as_ref()?, line, book);
        let with_units = table.map(|table| {
            let unit = |id: &PumpId| line.pump(*id).map_or(SettingUnit::Percent, |pump| pump.unit);
            let units = table.pumps.iter().map(unit).collect();
            (table, units)
        });
        Some((with_units, said))
    });
    table.flatten().unwrap_or_default()
}

/// The fold with the table, its key and its range.
#[component]
pub fn SettingsMatrix() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let found = Memo::new(move |_| found(state, sheet.now.with(|now| now.case.clone())));
    let next = expect_context::<NextPrint>();
    let picked = RwSignal::new(0_usize);
    let said = move || {
        let say = |finding: &LineFinding| {
            let message = with_context(state, |context| words::line::finding(finding, context));
            view! { <p><Mark grade=finding.grade/> " " {message.what} " " {message.fix}</p> }
        };
        found.with(|(_, said)| said.iter().map(say).collect_view())
    };
    let note = Memo::new(move |_| {
        found.with(|(table, _)| table.as_ref().map(|(table, _)| range_words(state, table))).unwrap_or_default()
    });
    let print = move |_| {
        if !next.settings_table() {
            state.tell(t!("line-no-printer"));
        }
    };
    view! {
        <section class="panel" aria-label=t!("line-settings-table")>
            <Fold id="settings-table" title=t!("line-settings-table") note=note>
                {said}
                {move || found.with(|(table, _)| table.as_ref().map(|(table, units)| matrix(state, table, units, picked)))}
                <p class="key">
                    <span><span class="swatch present"></span>{t!("line-present-point")}</span>
                    <span><span class="swatch untested"></span>"▲ " {t!("line-above-tested")} " · ▼ " {t!("line-below-tested")}</span>
                    <span>"✕ " {t!("line-cell-cannot")}</span>
                    <span>"° " {t!("line-cell-too-wet")}</span>
                </p>
                <p><button type="button" on:click=print>{t!("line-print-table")}</button></p>
                <TableRange/>
            </Fold>
        </section>
    }
}

/// Number and unit of a fibre flow.
pub fn flow(state: State, base: f64) -> (String, String) {
    parts(state, Amount::from_base(Kind::FibreFlow, base))
}

/// A moisture as it was stepped to, without digits that say nothing.
pub fn moisture(state: State, base: f64) -> (String, String) {
    let (_, symbol) = parts(state, Amount::from_base(Kind::Moisture, base));
    let units = state.units.get();
    let number = (units.unit(Kind::Moisture).from_base(base) * 100.0).round() / 100.0;
    (format::editable(number, units.mark), symbol)
}

fn range_words(state: State, table: &SettingsTable) -> String {
    let ends = table.flows.first().zip(table.flows.last()).zip(table.moistures.first().zip(table.moistures.last()));
    let Some(((low, high), (dry, wet))) = ends else { return String::new() };
    let (wettest, symbol) = moisture(state, wet.dry_basis().value);
    t!(
        "line-table-range",
        low = flow(state, low.value).0,
        high = with_unit(state, Amount::from_base(Kind::FibreFlow, high.value), None),
        dry = moisture(state, dry.dry_basis().value).0,
        wet = format!("{wettest}\u{a0}{symbol}")
    )
}

fn matrix(state: State, table: &SettingsTable, units: &[SettingUnit], picked: RwSignal<usize>) -> AnyView {
    let columns = table.moistures.len();
    let present_row = table.present.map(|(row, _)| row);
    let present_column = table.present.map(|(_, column)| column);
    let pumps: Vec<(usize, PumpId, SettingUnit)> =
        table.pumps.iter().zip(units).enumerate().map(|(at, (id, unit))| (at, *id, *unit)).collect();
    let pick = |&(at, id, _): &(usize, PumpId, SettingUnit)| {
        view! {
            <button type="button" aria-pressed=move || if picked.get() == at { "true" } else { "false" } on:click=move |_| picked.set(at)>
                {pump_name(state, id)}
            </button>
        }
    };
    let group = |&(at, id, unit): &(usize, PumpId, SettingUnit)| {
        let symbol = parts(state, crate::domain::line::Setting(0.0).amount(unit)).1;
        view! {
            <th scope="colgroup" class="l edge" class:off=move || picked.get() != at colspan=columns.to_string()>
                <b>{pump_name(state, id)}</b> ", " {symbol}
            </th>
        }
    };
    let heads = |&(at, ..): &(usize, PumpId, SettingUnit)| {
        let head = |(column, of): (usize, &crate::quantity::Moisture)| {
            let (number, unit) = moisture(state, of.dry_basis().value);
            view! {
                <th scope="col" class:edge=column == 0 class:now-at=present_column == Some(column) class:off=move || picked.get() != at>
                    {number}<span class="out-of-sight">{unit}</span>
                </th>
            }
        };
        table.moistures.iter().enumerate().map(head).collect_view()
    };
    let row = |(at, flow_of): (usize, &uom::si::f64::MassRate)| {
        let cells = |&(pump, id, unit): &(usize, PumpId, SettingUnit)| {
            let cells = table.cells.get(at).map_or(&[][..], Vec::as_slice);
            let cell = |(column, cell): (usize, &Option<SettingsCell>)| {
                let is_present = table.present == Some((at, column));
                let (words, hidden, class) = cell_text(state, cell.as_ref(), (pump, id), unit);
                view! {
                    <td class=class class:edge=column == 0 class:here=is_present class:off=move || picked.get() != pump>
                        {words}
                        <span class="out-of-sight">{hidden} {is_present.then(|| t!("line-present-point"))}</span>
                    </td>
                }
            };
            cells.iter().enumerate().map(cell).collect_view()
        };
        view! {
            <tr>
                <th scope="row" class="l" class:now-at=present_row == Some(at)>{flow(state, flow_of.value).0}</th>
                {pumps.iter().map(cells).collect_view()}
            </tr>
        }
    };
    let unit = flow(state, 0.0).1;
    let moisture_unit = moisture(state, 0.0).1;
    view! {
        <div class="pick" role="group" aria-label=t!("line-pump")>{pumps.iter().map(pick).collect_view()}</div>
        <div class="scroll" tabindex="0" role="region" aria-label=t!("line-settings-table")>
            <table class="matrix" aria-label=t!("line-settings-table")>
                <thead>
                    <tr>
                        <th scope="col" class="l" rowspan="2">{words::line::table_rows(table.rows)} ", " {unit}</th>
                        {pumps.iter().map(group).collect_view()}
                    </tr>
                    <tr>{pumps.iter().map(heads).collect_view()}</tr>
                </thead>
                <tbody>{table.flows.iter().enumerate().map(row).collect_view()}</tbody>
            </table>
        </div>
        <p class="note">{t!("line-columns-are", unit = moisture_unit)}</p>
    }
    .into_any()
}

/// What a cell shows, what is only read out, and its class.
fn cell_text(
    state: State,
    cell: Option<&SettingsCell>,
    (pump, id): (usize, PumpId),
    unit: SettingUnit,
) -> (String, String, &'static str) {
    let Some((cell, of)) = cell.and_then(|cell| Some((cell, cell.pumps.get(pump)?))) else {
        return ("–".to_owned(), t!("line-no-balance"), "cannot");
    };
    let CellPump { mass, setting, range_status } = *of;
    let number = setting.map(|setting| setting_parts(state, id, setting, unit).0);
    match (range_status, number) {
        (RangeStatus::AboveLimit, _) => ("✕".to_owned(), t!("line-cell-above-limit"), "cannot"),
        (RangeStatus::BelowLimit, _) => ("✕".to_owned(), t!("line-cell-below-limit"), "cannot"),
        (RangeStatus::AboveTested, Some(number)) => (format!("{number} ▲"), t!("line-above-tested"), "untested"),
        (RangeStatus::BelowTested, Some(number)) => (format!("{number} ▼"), t!("line-below-tested"), "untested"),
        (_, Some(number)) if cell.too_wet => (format!("{number} °"), t!("line-cell-too-wet"), ""),
        (_, Some(number)) => (number, String::new(), ""),
        (_, None) if mass.value <= 0.0 && cell.too_wet => {
            (format!("{} °", t!("line-off")), t!("line-cell-too-wet"), "")
        }
        (_, None) if mass.value <= 0.0 => (t!("line-off"), String::new(), ""),
        (_, None) => ("–".to_owned(), t!("line-no-setting"), "cannot"),
    }
}
