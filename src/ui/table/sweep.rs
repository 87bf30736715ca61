//! A sweep as a table: the figure of each system over the input, and what limits it there.

use super::compare::decimals;
use super::without_conversion;
use crate::domain::compare::feasibility::Feasibility;
use crate::domain::compare::sweep::Sweep;
use crate::quantity::{Kind, Unit};
use crate::record::table::{Cell, Table};
use crate::ui::text::{Context, unit_shown, words};
use crate::{label, t};

/// What is swept over what: label and kind of the input, then of the figure.
#[derive(Debug, Clone, Copy)]
pub struct SweepHead<'a> {
    /// The input.
    pub input: (&'a str, Kind),
    /// The figure.
    pub output: (&'a str, Kind),
}

/// One row an input. Of each system its figure, and the limits that hold there; then a row for each limit with the range in which
/// it holds, narrowed down further than the rows. A system without the input has a sweep of none and a level value.
#[must_use]
pub fn sensitivity(
    head: SweepHead<'_>,
    inputs: &[f64],
    systems: &[(&str, Result<&Sweep, Option<f64>>)],
    context: &Context<'_>,
) -> Table {
    let (across, up) = (context.units.unit(head.input.1), context.units.unit(head.output.1));
    let named = |label: &str, unit: Unit| match unit_shown(unit, context.currency) {
        symbol if symbol.is_empty() => label.to_owned(),
        symbol => format!("{label}, {symbol}"),
    };
    let limited_by = label!("comparison-head-limited-by");
    let mut first = vec![Cell::heading(named(head.input.0, across))];
    for (name, _) in systems {
        first.push(Cell::heading(format!("{name}: {}", named(head.output.0, up))));
        first.push(Cell::heading(format!("{name}: {limited_by}")));
    }
    let mut rows = vec![first];
    let places = decimals(head.input.1, inputs.iter().map(|base| across.from_base(*base)));
    let input_cell = |base: f64| Cell::Number { value: without_conversion(across.from_base(base)), decimals: places };
    let all = systems.iter().flat_map(|(_, swept)| match swept {
        Ok(sweep) => sweep.outputs.iter().flatten().copied().collect::<Vec<_>>(),
        Err(level) => vec![*level],
    });
    let digits = decimals(head.output.1, all.flatten().map(|base| up.from_base(base)));
    let output_cell = |base: f64| Cell::Number { value: up.from_base(base), decimals: digits };
    for (at, input) in inputs.iter().enumerate() {
        let mut cells = vec![input_cell(*input)];
        for (_, swept) in systems {
            let (value, limits) = match swept {
                Ok(sweep) => (
                    sweep.outputs.first().and_then(|values| values.get(at).copied().flatten()),
                    sweep.feasibilities.get(at).map(|own| limits(*own)).unwrap_or_default(),
                ),
                Err(level) => (*level, String::new()),
            };
            cells.push(value.map_or(Cell::Empty, &output_cell));
            cells.push(if limits.is_empty() { Cell::Empty } else { Cell::text(limits) });
        }
        rows.push(cells);
    }
    for (name, swept) in systems {
        for span in swept.iter().flat_map(|sweep| &sweep.limits) {
            let label = format!("{name}: {limited_by} {}", words::compare::obstacle(span.obstacle));
            let ends = [span.from, span.to].map(&input_cell);
            rows.push(std::iter::once(Cell::text(label)).chain(ends).collect());
        }
    }
    Table { name: t!("comparison-sheet-sensitivity"), rows, frozen: 1 }
}

/// The limits that hold at one input; advice is none.
fn limits(feasibility: Feasibility) -> String {
    let held = feasibility.obstacles().filter(|obstacle| !obstacle.is_advice());
    held.map(words::compare::obstacle).collect::<Vec<_>>().join("; ")
}
