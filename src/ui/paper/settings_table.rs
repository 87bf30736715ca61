//! The settings table on pages that lie on their sides: pumps side by side, the head and the recipe on each page.

use super::context::symbol;
use super::end::End;
use super::not_valid::{LineNotValid, line_lines};
use super::pump_settings::settings_warnings;
use super::sheet::{Sheet, line_kind, recipe_line};
use super::warnings::{PaperLine, Warnings};
use crate::domain::Grade;
use crate::domain::line::pumps::settings_table::{CellPump, SettingsCell, TablePart};
use crate::domain::line::{RangeStatus, Setting, SettingUnit, SettingsTable, TableRows};
use crate::quantity::Kind;
use crate::t;
use crate::ui::page::line::settings::context::{parts, setting_parts};
use crate::ui::page::line::settings::matrix::{flow, found, moisture};
use crate::ui::page::line::settings::row::tested;
use crate::ui::page::line::settings_now::{SettingsNow, settings_now};
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// What a page has room for.
const MOST_COLUMNS: usize = 24;
const MOST_ROWS: usize = 12;
/// Each warning takes the place of a row.
const LEAST_ROWS: usize = 6;

/// The document.
#[component]
pub fn SettingsTablePaper(
    /// Whether a document before it says why there is none.
    #[prop(optional)]
    follows: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let now = settings_now(state);
    let (table, said) = if now.old { (None, Vec::new()) } else { found(state, now.case.clone()) };
    match table.filter(|(table, _)| !table.pumps.is_empty()) {
        Some((table, units)) => {
            let lines: Vec<PaperLine> =
                settings_warnings(state, &now).into_iter().filter(|line| line.grade != Grade::Note).collect();
            let page = |part: TablePart| {
                view! { <TablePage table=table.clone() units=units.clone() part=part lines=lines.clone() now=now.clone()/> }
            };
            table
                .parts(MOST_COLUMNS, MOST_ROWS.saturating_sub(lines.len()).max(LEAST_ROWS))
                .into_iter()
                .map(page)
                .collect_view()
                .into_any()
        }
        None if follows => ().into_any(),
        None => {
            let lines = line_lines(state, &[said, now.findings].concat());
            view! { <LineNotValid title=t!("line-settings-table") lines=lines/> }.into_any()
        }
    }
}

/// A page of it.
#[component]
fn TablePage(
    /// The whole table.
    table: SettingsTable,
    /// The scale of each of its pumps.
    units: Vec<SettingUnit>,
    /// The part on this page.
    part: TablePart,
    /// What there is to say.
    lines: Vec<PaperLine>,
    /// The settings at the present point.
    now: SettingsNow,
) -> impl IntoView {
    let state = expect_context::<State>();
    let present = table.present;
    let unit_of = |pump: usize| units.get(pump).copied().unwrap_or(SettingUnit::Percent);
    let id_of = |pump: usize| table.pumps.get(pump).copied();
    let fed = |pump: usize| {
        let row = now.row(id_of(pump)?)?;
        Some(state.draft.with(|draft| words::line::fed(row.fed, draft)))
    };
    let groups = part.pumps.iter().map(|(pump, columns)| {
        let name = id_of(*pump).map(|id| pump_name(state, id)).unwrap_or_default();
        let symbol = parts(state, Setting(0.0).amount(unit_of(*pump))).1;
        let fed = fed(*pump).filter(|fed| !name.to_lowercase().contains(&fed.to_lowercase())).map_or_else(String::new, |fed| format!(" · {fed}"));
        view! { <th scope="colgroup" class="first" colspan=columns.len().to_string()><b>{name}{fed} ", " {symbol}</b></th> }
    });
    let heads =
        part.pumps.iter().flat_map(|(_, columns)| columns.clone().map(move |column| (column, column == columns.start)));
    let heads = heads.map(|(column, is_first)| {
        let number = table.moistures.get(column).map(|at| moisture(state, at.dry_basis().value).0);
        let is_present = present.is_some_and(|(_, at)| at == column);
        view! { <th scope="col" class:first=is_first class:now=is_present>{number}</th> }
    });
    let row = |at: usize| {
        let cells = part
            .pumps
            .iter()
            .flat_map(|(pump, columns)| columns.clone().map(move |column| (*pump, column, column == columns.start)));
        let cells = cells.map(|(pump, column, is_first)| {
            let cell = table.cells.get(at).and_then(|row| row.get(column)).and_then(Option::as_ref);
            let (text, class) = cell_text(state, cell, pump, &table, unit_of(pump));
            let is_present = present == Some((at, column));
            let in_column = present.is_some_and(|(_, own)| own == column);
            view! { <td class=class class:first=is_first class:now=in_column class:present=is_present><span>{text}</span></td> }
        });
        let number = table.flows.get(at).map(|of| flow(state, of.value).0);
        let is_now = present.is_some_and(|(own, _)| own == at);
        view! { <tr class:now=is_now><th scope="row">{number}</th>{cells.collect_view()}</tr> }
    };
    let moisture_unit = symbol(state, state.unit(Kind::Moisture));
    let flow_unit = flow(state, 0.0).1;
    let present_words = present.filter(|(row, _)| part.rows.contains(row)).and_then(|(row, column)| {
        let (number, unit) = flow(state, table.flows.get(row)?.value);
        let wet = moisture(state, table.moistures.get(column)?.dry_basis().value).0;
        Some(t!(
            "paper-present-point",
            flow = format!("{number}\u{a0}{unit}"),
            moisture = format!("{wet}\u{a0}{moisture_unit}")
        ))
    });
    let tests = part.pumps.iter().filter_map(|(pump, _)| {
        let id = id_of(*pump)?;
        let row = now.row(id)?;
        let range = row.curve?.tested();
        let number = |at| setting_parts(state, id, at, row.unit).0;
        let symbol = parts(state, Setting(0.0).amount(row.unit)).1;
        let range = format!("{}–{}\u{a0}{symbol}", number(range.low), number(range.high));
        let date = tested(state, row).date.unwrap_or_default();
        Some(t!("paper-tested-on", pump = pump_name(state, id), range = range, date = date))
    });
    let tests = tests.collect::<Vec<_>>().join(" · ");
    let rows_are = match table.rows {
        TableRows::Belt => t!("paper-belt-wet"),
        TableRows::OvenDry => t!("paper-oven-dry"),
    };
    let (groups, heads) = (groups.collect_view(), heads.collect_view());
    let body = part.rows.clone().map(row).collect_view();
    view! {
        <Sheet title=t!("line-settings-table") about=recipe_line(state) kind=line_kind(state) wide=true>
            <Warnings lines=lines/>
            <table class="print-matrix">
                <thead>
                    <tr><th scope="col" rowspan="2">{rows_are} ", " {flow_unit}</th>{groups}</tr>
                    <tr>{heads}</tr>
                </thead>
                <tbody>{body}</tbody>
            </table>
            <div class="print-key">
                <span>{t!("line-columns-are", unit = moisture_unit)}</span>
                {present_words.map(|words| view! { <span><i class="present"></i>{words}</span> })}
                <span><i class="untested"></i>{t!("paper-untested")}</span>
                <span>"✕ " {t!("paper-outside-allowed")}</span>
                <span>"° " {t!("line-cell-too-wet")}</span>
            </div>
            <p class="print-small">{tests}</p>
            <End cautions=Vec::new() signature=[t!("paper-set-by"), t!("paper-checked-by"), t!("paper-date-time")]/>
        </Sheet>
    }
}

/// What a cell shows, and its class.
fn cell_text(
    state: State,
    cell: Option<&SettingsCell>,
    pump: usize,
    table: &SettingsTable,
    unit: SettingUnit,
) -> (String, &'static str) {
    let found = cell.and_then(|cell| Some((cell, cell.pumps.get(pump)?, table.pumps.get(pump)?)));
    let Some((cell, CellPump { mass, setting, range_status }, id)) = found else { return ("–".to_owned(), "cannot") };
    let wet = if cell.too_wet { "°" } else { "" };
    match (range_status, setting.map(|setting| setting_parts(state, *id, setting, unit).0)) {
        (RangeStatus::AboveLimit | RangeStatus::BelowLimit, _) => ("✕".to_owned(), "cannot"),
        (RangeStatus::Within, Some(number)) => (format!("{number}{wet}"), ""),
        (_, Some(number)) => (format!("{number}{wet}"), "untested"),
        (_, None) if mass.value <= 0.0 => (format!("{}{wet}", t!("line-off")), ""),
        (_, None) => ("–".to_owned(), "cannot"),
    }
}
