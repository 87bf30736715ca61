//! The economy of each system, the machine limits, and every answer that was asked for, as tables to take away.

use super::without_conversion;
use crate::domain::compare::capacity::exceeded;
use crate::domain::compare::economy::costs::{Economy, Switch, SystemEconomy};
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::unpriced::missing;
use crate::quantity::{Amount, Kind, Unit};
use crate::record::table::{Cell, Table};
use crate::ui::text::{Context, Message, unit_shown, words};
use crate::{label, t};

/// A number with so many decimals; empty where it is not known.
fn number(value: Option<f64>, decimals: u8) -> Cell {
    value.map_or(Cell::Empty, |value| Cell::Number { value: without_conversion(value), decimals })
}

/// The economy of each system, and what changing from the reference to it brings.
#[must_use]
pub fn economy(
    systems: &[ComparedSystem],
    economies: &[SystemEconomy],
    (economy, reference): (&Economy, usize),
    context: &Context<'_>,
) -> Table {
    let mut head = vec![Cell::heading(label!("comparison-head-figure")), Cell::heading(label!("comparison-head-unit"))];
    head.extend(systems.iter().map(|system| Cell::heading(&system.name)));
    let mut rows = vec![head];
    let money = context.currency;
    let cost = context.units.unit(Kind::Cost);
    let in_cost = |base: Option<f64>| base.map(|base| cost.from_base(base));
    let cost_unit = unit_shown(cost, money).into_owned();
    let (volume_unit, a_year) = ("m³/a".to_owned(), format!("{money}/a"));
    let mut row = |label: &str, unit: &str, values: Vec<Option<f64>>, decimals: u8| {
        let mut cells = vec![Cell::text(label), Cell::text(unit)];
        cells.extend(values.into_iter().map(|value| number(value, decimals)));
        rows.push(cells);
    };
    type Part = fn(&SystemEconomy) -> Option<f64>;
    let costs: [(&str, Part); 7] = [
        (label!("comparison-economy-materials"), |of| of.materials),
        (label!("comparison-economy-dryer-energy"), |of| of.dryer_energy),
        (label!("comparison-economy-press-energy"), |of| of.press_energy),
        (label!("comparison-economy-release-agent"), |of| of.release_agent),
        (label!("comparison-economy-freight"), |of| of.freight),
        (label!("comparison-economy-total"), |of| of.total),
        (label!("comparison-economy-margin"), |of| of.margin),
    ];
    for (label, part) in costs {
        row(label, &cost_unit, economies.iter().map(|of| in_cost(part(of))).collect(), 2);
    }
    let per_kilogram = format!("{money}/kg");
    row(
        label!("comparison-economy-freight-per-solids"),
        &per_kilogram,
        economies.iter().map(|of| of.freight_per_solids).collect(),
        3,
    );
    let per_hour = format!("{money}/h");
    row(
        label!("comparison-economy-margin-per-press-hour"),
        &per_hour,
        economies.iter().map(|of| of.margin_per_press_hour).collect(),
        0,
    );
    row(
        label!("comparison-economy-volume-per-year"),
        &volume_unit,
        economies.iter().map(|of| of.volume_per_year).collect(),
        0,
    );
    row(
        label!("comparison-economy-capacity-per-year"),
        &volume_unit,
        economies.iter().map(|of| of.capacity_per_year).collect(),
        0,
    );
    let switches: Vec<Option<Switch>> = economies
        .iter()
        .enumerate()
        .map(|(at, to)| economies.get(reference).filter(|_| at != reference).map(|from| economy.switch(from, to)))
        .collect();
    type Change = fn(&Switch) -> Option<f64>;
    let changes: [(&str, &str, Change); 5] = [
        (label!("comparison-economy-more-cost"), &cost_unit, |of| of.per_volume),
        (label!("comparison-economy-scrap"), &volume_unit, |of| of.scrap_per_year),
        (label!("comparison-economy-scrap-cost"), &a_year, |of| of.scrap_cost),
        (label!("comparison-economy-more-capacity"), &volume_unit, |of| of.capacity),
        (label!("comparison-economy-more-margin"), &a_year, |of| of.margin_per_year),
    ];
    for (label, unit, change) in changes {
        let values = switches.iter().map(|switch| switch.as_ref().and_then(change));
        let in_unit = |value: Option<f64>| if unit == cost_unit { in_cost(value) } else { value };
        row(label, unit, values.map(in_unit).collect(), if unit == cost_unit { 2 } else { 0 });
    }
    Table { name: t!("comparison-sheet-economy"), rows, frozen: 1 }
}

/// What limits each system, and the prices that it lacks: system, what, asked, limit, unit.
#[must_use]
pub fn limits(systems: &[ComparedSystem], context: &Context<'_>) -> Table {
    let head = [
        label!("comparison-head-system"),
        label!("comparison-head-limited-by"),
        label!("comparison-head-asked"),
        label!("comparison-head-limit"),
        label!("comparison-head-unit"),
    ];
    let mut rows = vec![head.map(Cell::heading).to_vec()];
    for system in systems {
        let Some(case) = system.case() else {
            rows.push(vec![Cell::text(&system.name), Cell::text(label!("comparison-no-result"))]);
            continue;
        };
        for one in exceeded(case) {
            let unit: Unit = context.units.unit(one.limit.kind);
            let shown = |amount: Amount| Cell::Number { value: without_conversion(amount.get(unit)), decimals: 2 };
            rows.push(vec![
                Cell::text(&system.name),
                Cell::text(words::machine(one.machine)),
                shown(one.asked),
                shown(one.limit),
                Cell::text(unit_shown(unit, context.currency)),
            ]);
        }
        for price in missing(case, None) {
            let name = words::field_name(price, &system.draft);
            rows.push(vec![Cell::text(&system.name), Cell::text(t!("comparison-missing-price", price = name))]);
        }
    }
    Table { name: t!("comparison-sheet-limits"), rows, frozen: 1 }
}

/// Every question that was asked, with its answer.
#[must_use]
pub fn answers(asked: &[(String, Message)]) -> Table {
    let mut rows =
        vec![[label!("comparison-head-question"), label!("comparison-head-answer")].map(Cell::heading).to_vec()];
    rows.extend(asked.iter().map(|(question, Message { what, fix })| {
        vec![Cell::text(question), Cell::text(format!("{what} {fix}").trim())]
    }));
    Table { name: t!("comparison-sheet-answers"), rows, frozen: 1 }
}
