//! The settings table on paper: settings over fibre flows and moistures.

use crate::browser::element::{Part, View, el, many};
use crate::domain::Grade;
use crate::domain::line::pumps::settings_table::SettingsCell;
use crate::domain::line::{PumpId, RangeStatus, SettingsTable, settings_table};
use crate::quantity::{Amount, Kind};
use crate::ui::page::line::context::solved;
use crate::ui::page::line::parts::{findings, off_line, setting};
use crate::ui::page::line::settings_now::settings_now;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::part::amount::with_unit;
use crate::ui::part::finding::mark;
use crate::ui::state::State;

/// A table a pump, and what stands in the way of one.
pub fn tables(state: State) -> View {
    let case = settings_now(state).case;
    solved(state, |draft, _, line, book| {
        let case = case.as_ref()?;
        let (card, said) = settings_table(draft, case, line, book);
        let tables = card.map(|card| {
            let of = |(at, pump): (usize, &PumpId)| {
                let unit = line.pump(*pump).map(|pump| pump.unit);
                table(state, &card, at, *pump, unit.unwrap_or(crate::domain::line::SettingUnit::Percent))
            };
            card.pumps.iter().enumerate().map(of).collect::<View>()
        });
        Some(many([findings(state, &said), tables.view()]))
    })
    .flatten()
    .unwrap_or_else(|| off_line(state))
}

fn table(state: State, card: &SettingsTable, at: usize, pump: PumpId, unit: crate::domain::line::SettingUnit) -> View {
    let page = &state.words.line_page;
    let caption = format!("{} · {}", pump_name(state, pump), (state.words.line.table_rows)(card.rows));
    let amount = |kind, base| with_unit(state, Amount::from_base(kind, base), None);
    let one = |here: bool, cell: &Option<SettingsCell>| {
        let Some((cell, of)) = cell.as_ref().and_then(|cell| Some((cell, cell.pumps.get(at)?))) else {
            return el("td").child(page.no_balance);
        };
        let outside = of.range_status != RangeStatus::Within;
        let words = match of.range_status {
            RangeStatus::Within if cell.too_wet => Some(page.too_wet),
            RangeStatus::Within => None,
            RangeStatus::AboveTested => Some(page.above_tested),
            RangeStatus::BelowTested => Some(page.below_tested),
            RangeStatus::AboveLimit => Some(page.above_limit),
            RangeStatus::BelowLimit => Some(page.below_limit),
        };
        let value = match of.setting {
            Some(found) => setting(state, found, unit),
            None if of.mass.value <= 0.0 => page.off.to_owned(),
            None if !of.range_status.is_allowed() => page.cannot.to_owned(),
            None => page.no_setting.to_owned(),
        };
        el("td")
            .class_if("outside", outside)
            .class_if("present", here)
            .child(value)
            .child(here.then(|| el("span").class("marked").text(" ").child(page.present)))
            .child(words.map(|words| el("span").class("marked").child(mark(Grade::Unusual)).text(" ").child(words)))
    };
    let row = |(at, (flow, cells)): (usize, (&uom::si::f64::MassRate, &Vec<Option<SettingsCell>>))| {
        let here = |column| card.present == Some((at, column));
        el("tr")
            .child(el("th").set("scope", "row").child(amount(Kind::FibreFlow, flow.value)))
            .child(cells.iter().enumerate().map(|(column, cell)| one(here(column), cell)).collect::<View>())
    };
    let head = card
        .moistures
        .iter()
        .map(|moisture| el("th").set("scope", "col").child(amount(Kind::Moisture, moisture.dry_basis().value)));
    el("div")
        .class("scroll rate")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", caption.clone())
        .child(
            el("table")
                .child(el("caption").child(caption))
                .child(
                    el("thead").child(
                        el("tr")
                            .child(el("th").set("scope", "col").child(page.flow_by_moisture))
                            .child(head.collect::<View>()),
                    ),
                )
                .child(el("tbody").child(card.flows.iter().zip(&card.cells).enumerate().map(row).collect::<View>())),
        )
        .view()
}
