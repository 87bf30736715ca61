//! Systems side by side, what was assumed, and how sure the figures are.

use super::without_conversion;
use crate::domain::compare::side::{ComparedSystem, SideBySide};
use crate::domain::compare::uncertainty::agreement::{compare, is_exact};
use crate::domain::compare::uncertainty::budget::Budget;
use crate::domain::compare::uncertainty::input_uncertainty::width_in;
use crate::domain::compare::uncertainty::study::{RequestedFigure, Study, UncertainInput};
use crate::domain::recipe::check::read_field;
use crate::domain::{Field, LiquidField};
use crate::quantity::format::column_decimals;
use crate::quantity::number::read;
use crate::quantity::{Kind, Unit};
use crate::record::table::{Cell, Table, cell_name};
use crate::statistics::draws::DrawSummary;
use crate::ui::text::{Context, unit_shown, words};
use crate::{label, t};

/// As many decimals as show the largest of the numbers with the digits of its kind.
pub(super) fn decimals(kind: Kind, numbers: impl Iterator<Item = f64>) -> u8 {
    column_decimals(kind.digits(), numbers)
}

fn labelled(label: &str, note: &str) -> String {
    if note.is_empty() { label.to_owned() } else { format!("{label} ({note})") }
}

/// The systems side by side in the units chosen, and what each has more than the reference as formulas.
#[must_use]
pub fn side_by_side(systems: &[ComparedSystem], side: &SideBySide, context: &Context<'_>) -> Table {
    let others: Vec<usize> = (0..systems.len()).filter(|at| *at != side.reference).collect();
    let mut head = vec![Cell::heading(label!("comparison-head-figure")), Cell::heading(label!("comparison-head-unit"))];
    head.extend(systems.iter().map(|system| Cell::heading(&system.name)));
    let more = |at: &usize| t!("comparison-head-more-than-reference", system = &systems[*at].name);
    head.extend(others.iter().map(|at| Cell::heading(more(at))));
    let mut rows = vec![head];
    // Values begin behind figure and unit.
    let column = |system: usize| system + 2;
    for row in &side.rows {
        let kind = row.output.kind();
        let unit = context.units.unit(kind);
        let label = words::compare::output(row.output);
        let value = |at: usize| row.values.get(at).copied().flatten().map(|amount| amount.get(unit));
        let decimals = decimals(kind, (0..systems.len()).filter_map(value));
        let mut cells =
            vec![Cell::text(labelled(label.label, label.note)), Cell::text(unit_shown(unit, context.currency))];
        let number = |at| value(at).map_or(Cell::Empty, |value| Cell::Number { value, decimals });
        cells.extend((0..systems.len()).map(number));
        let line = rows.len();
        cells.extend(others.iter().map(|at| {
            let formula = format!("{}-{}", cell_name(column(*at), line), cell_name(column(side.reference), line));
            let more = row.difference(*at, side.reference, unit);
            more.map_or(Cell::Empty, |value| Cell::Formula { formula, value, decimals })
        }));
        rows.push(cells);
    }
    Table { name: t!("comparison-sheet-side-by-side"), rows, frozen: 1 }
}

/// A number as entered, in `unit`: as it was typed where it was typed in that unit, else converted, without the digits
/// that the conversion alone brings in. `None` where it is blank or not allowed.
fn entered(system: &ComparedSystem, field: Field, unit: Unit) -> Option<f64> {
    let base = read_field(&system.draft, field).ok().flatten()?;
    let entry = system.draft.entry(field)?;
    let typed = read(&entry.text, system.draft.kind(field), entry.unit).ok()?;
    if typed.unit == unit {
        return Some(typed.value);
    }
    Some(without_conversion(unit.from_base(base)))
}

/// What was entered for each system, in the units chosen; empty where it is blank or not readable.
#[must_use]
pub fn assumptions(systems: &[ComparedSystem], context: &Context<'_>) -> Table {
    let mut head = vec![Cell::heading(label!("comparison-head-input")), Cell::heading(label!("comparison-head-unit"))];
    head.extend(systems.iter().map(|system| Cell::heading(&system.name)));
    let mut rows = vec![head];
    for field in Field::PLAIN {
        let unit = context.units.unit(field.kind());
        let values: Vec<_> = systems.iter().map(|system| entered(system, *field, unit)).collect();
        rows.extend(line(words::field_name(*field, context.draft), field.kind(), &values, context));
    }
    // The liquids of one system are in its column only.
    for (at, system) in systems.iter().enumerate() {
        for liquid in &system.draft.liquids {
            for part in LiquidField::ALL {
                let field = Field::Liquid(liquid.id, *part);
                let kind = system.draft.kind(field);
                let mut values = vec![None; systems.len()];
                values[at] = entered(system, field, context.units.unit(kind));
                rows.extend(line(words::field_name(field, &system.draft), kind, &values, context));
            }
        }
    }
    Table { name: t!("comparison-sheet-assumptions"), rows, frozen: 1 }
}

/// One line of values in the unit chosen for their kind; none where all are missing.
fn line(label: String, kind: Kind, values: &[Option<f64>], context: &Context<'_>) -> Option<Vec<Cell>> {
    values.iter().flatten().next()?;
    let decimals = decimals(kind, values.iter().flatten().copied());
    let unit = context.units.unit(kind);
    let mut cells = vec![Cell::text(label), Cell::text(unit_shown(unit, context.currency))];
    cells.extend(values.iter().map(|value| value.map_or(Cell::Empty, |value| Cell::Number { value, decimals })));
    Some(cells)
}

/// A figure with its uncertainty by both methods.
#[derive(Debug, Clone, Copy)]
pub struct FigureUncertainty<'a> {
    /// First order.
    pub budget: &'a Budget,
    /// Monte Carlo, once it is done.
    pub summary: Option<&'a DrawSummary>,
    /// The value of the reference's figure near which a difference lies, in the base unit.
    pub around: Option<f64>,
}

/// The figures with their uncertainty in the units chosen, by both methods, and whether these agree. Figures and
/// their differences are as the study has them.
#[must_use]
pub fn uncertainty(
    figures: &[FigureUncertainty<'_>],
    study: &Study,
    systems: &[ComparedSystem],
    seed: u64,
    context: &Context<'_>,
) -> Table {
    let head = [
        label!("comparison-head-figure"),
        label!("comparison-head-unit"),
        label!("comparison-head-value"),
        label!("comparison-head-standard"),
        label!("comparison-head-freedom"),
        label!("comparison-head-factor"),
        label!("comparison-head-expanded"),
        label!("comparison-head-standard-drawn"),
        label!("comparison-head-low"),
        label!("comparison-head-high"),
        label!("comparison-head-both"),
        label!("comparison-head-draws"),
        label!("comparison-head-seed"),
    ];
    let mut rows = vec![head.map(Cell::heading).to_vec()];
    for figure in figures {
        let (budget, kind) = (figure.budget, figure.budget.asked.kind());
        let unit = context.units.unit(kind);
        let at = figure.around.unwrap_or(budget.value);
        let width = |width: f64| width_in(unit, width, at).abs();
        let shown = |value: f64| match figure.around {
            None => unit.from_base(value),
            Some(at) => 2.0 * width_in(unit, value / 2.0, at + value / 2.0),
        };
        // Two digits of the standard uncertainty, and the value to the same place (JCGM 100, 7.2.6).
        let standard = width(budget.standard);
        let decimals = if standard > 0.0 { (1 - standard.log10().floor() as i32).clamp(0, 9) } else { 0 };
        let number = |value: f64| Cell::Number { value, decimals: u8::try_from(decimals).unwrap_or(0) };
        let mut cells = vec![Cell::text(asked(budget.asked, systems)), Cell::text(unit_shown(unit, context.currency))];
        cells.extend([number(shown(budget.value)), number(standard)]);
        cells.push(budget.freedom.map_or_else(|| Cell::text("∞"), |value| Cell::Number { value, decimals: 1 }));
        cells.push(Cell::Number { value: budget.factor, decimals: 2 });
        cells.push(number(width(budget.expanded)));
        if let Some(summary) = figure.summary {
            cells.extend([number(width(summary.standard)), number(shown(summary.low)), number(shown(summary.high))]);
            let exact = is_exact(budget, Some(summary), figure.around.unwrap_or(budget.value));
            let agreement = compare(study, budget, summary, 1);
            let note = if exact { t!("comparison-exact") } else { words::compare::agreement_note(&agreement, context) };
            cells.push(Cell::text(note));
            cells.push(Cell::Number { value: summary.draws as f64, decimals: 0 });
            // A seed may have more digits than a spreadsheet's numbers.
            cells.push(Cell::text(seed.to_string()));
        }
        rows.push(cells);
    }
    Table { name: t!("comparison-sheet-uncertainty"), rows, frozen: 1 }
}

/// The share of each source in the variance of each figure, in %: a row a figure, a column a source.
#[must_use]
pub fn shares(figures: &[FigureUncertainty<'_>], sources: &[UncertainInput], systems: &[ComparedSystem]) -> Table {
    let mut head = vec![Cell::heading(label!("comparison-head-share"))];
    head.extend(sources.iter().map(|source| Cell::heading(words::compare::uncertain(source, systems))));
    let mut rows = vec![head];
    for figure in figures {
        let share =
            |at: usize| figure.budget.shares.iter().find(|share| share.source == at).map_or(0.0, |share| share.share);
        let mut cells = vec![Cell::text(asked(figure.budget.asked, systems))];
        cells.extend((0..sources.len()).map(|at| Cell::Number { value: share(at) * 100.0, decimals: 1 }));
        rows.push(cells);
    }
    Table { name: t!("comparison-sheet-shares"), rows, frozen: 1 }
}

/// Several tables in one, each below its name, a blank row between: for a file that has no sheets. The first one
/// is without its name, so that its headings are the file's first row.
#[must_use]
pub fn stacked(tables: Vec<Table>) -> Table {
    let mut all = Table::default();
    for table in tables {
        if all.rows.is_empty() {
            all.frozen = table.frozen;
        } else {
            all.rows.extend([Vec::new(), vec![Cell::heading(&table.name)]]);
        }
        all.rows.extend(table.rows);
    }
    all
}

/// "Water dose: UF", "Water dose: UF − pMDI".
fn asked(asked: RequestedFigure, systems: &[ComparedSystem]) -> String {
    let label = words::compare::output(asked.output()).label;
    let name = |at: usize| systems.get(at).map_or("", |system| system.name.as_str());
    match asked {
        RequestedFigure::Of { system, .. } => format!("{label}: {}", name(system)),
        RequestedFigure::Difference { system, reference, .. } => {
            format!("{label}: {} − {}", name(system), name(reference))
        }
    }
}
