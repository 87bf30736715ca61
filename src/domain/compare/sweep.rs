//! One input over a range, and two over a grid.

use super::feasibility::{Feasibility, FeasibilityGrade, Obstacle};
use super::output::Output;
use super::variation::Variation;
use crate::domain::balance::outcome::Case;
use crate::domain::compare::rounding::without_noise;
use crate::domain::compare::variable;
use crate::domain::recipe::field::Field;

/// The most points of one axis.
pub const MOST_POINTS: usize = 401;

/// A usual window whose upper end is more than so many times the lower one is of all mills.
const WIDE: f64 = 20.0;

/// A range of one input, in the base unit of its kind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis {
    /// The input.
    pub field: Field,
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// How many points, both ends with them; taken as from 2 to [`MOST_POINTS`].
    pub points: usize,
}

impl Axis {
    /// A range around what the recipe holds, to start from: the usual window, widened to hold the
    /// value; without one, or where it spans so much that it says nothing about one mill, half the value to
    /// one and a half times it. Always within what physics allows.
    #[must_use]
    pub fn around(case: &Case, field: Field, points: usize) -> Option<Self> {
        let at = variable::get(&case.input, field)?;
        let limit = variable::limit(&case.input, field);
        let (least, most) = (limit.unit.to_base(limit.least), limit.unit.to_base(limit.most));
        let (from, to) = match limit.usual {
            Some(window) => {
                let (low, high) = (limit.unit.to_base(window.low), limit.unit.to_base(window.high));
                if at > 0.0 && low > 0.0 && high > WIDE * low {
                    (at * 0.5, at * 1.5)
                } else {
                    (low.min(at), high.max(at))
                }
            }
            None => (at * 0.5, at * 1.5),
        };
        // A window of one value, or a value of zero, has no width.
        let (from, to) = if to > from { (from, to) } else { (at * 0.9, at * 1.1) };
        let to = if to > from { to } else { least + (most - least) / 100.0 };
        // An end that is itself refused is not swept up to.
        let gap = (to - from) * 1e-3;
        let from = if limit.above_least && from <= least { least + gap } else { from.max(least) };
        let to = if limit.below_most && to >= most { most - gap } else { to.min(most) };
        (to > from).then_some(Self { field, from, to, points })
    }

    /// The values, evenly spaced.
    #[must_use]
    pub fn values(&self) -> Vec<f64> {
        let last = self.points.clamp(2, MOST_POINTS) - 1;
        let at = |step: usize| {
            if step == last { self.to } else { self.from + (self.to - self.from) * step as f64 / last as f64 }
        };
        (0..=last).map(at).collect()
    }
}

/// Figures over a range of one input. All numbers in base units.
#[derive(Debug, Clone, PartialEq)]
pub struct Sweep {
    /// The input's values.
    pub inputs: Vec<f64>,
    /// For each figure its value at each input; `None` where there is none.
    pub outputs: Vec<Vec<Option<f64>>>,
    /// What prevents it at each input.
    pub feasibilities: Vec<Feasibility>,
    /// Where each limit holds, narrowed down to [`EDGE`] of the range.
    pub limits: Vec<LimitSpan>,
}

/// A part of a range in which something stands in the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimitSpan {
    /// What it is; never advice.
    pub obstacle: Obstacle,
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
}

/// Edges of what can be run are narrowed down to this share of the axis.
pub const EDGE: f64 = 1e-3;

/// The place between `inside`, where `holds`, and `outside`, where it does not, to within `width`; `holds` there.
fn narrowed(mut inside: f64, mut outside: f64, width: f64, mut holds: impl FnMut(f64) -> bool) -> f64 {
    while (outside - inside).abs() > width {
        let middle = f64::midpoint(inside, outside);
        if holds(middle) { inside = middle } else { outside = middle }
    }
    inside
}

/// Where each limit holds along a range.
fn limit_spans(variation: &mut Variation, axis: &Axis, inputs: &[f64], found: &[Feasibility]) -> Vec<LimitSpan> {
    let width = EDGE * (axis.to - axis.from);
    let mut spans = Vec::new();
    for obstacle in Obstacle::ALL.into_iter().filter(|obstacle| !obstacle.is_advice()) {
        let mut at = 0;
        while let Some(first) = found.iter().skip(at).position(|one| one.has(obstacle)).map(|place| place + at) {
            let length = found.iter().skip(first).take_while(|one| one.has(obstacle)).count();
            let last = first + length - 1;
            let mut edge = |inside: usize, outside: Option<usize>| {
                let inside = inputs.get(inside).copied().unwrap_or(axis.from);
                let Some(outside) = outside.and_then(|at| inputs.get(at).copied()) else { return inside };
                narrowed(inside, outside, width, |at| variation.feasibility(&[(axis.field, at)]).has(obstacle))
            };
            let (from, to) = (edge(first, first.checked_sub(1)), edge(last, Some(last + 1)));
            spans.push(LimitSpan { obstacle, from, to });
            at = last + 1;
        }
    }
    spans
}

/// Sweeps one input. Each point is a full solve of the recipe.
#[must_use]
pub fn sweep(case: &Case, axis: &Axis, outputs: &[Output]) -> Sweep {
    let inputs = axis.values();
    let mut variation = Variation::new(case);
    let mut found = Sweep {
        outputs: vec![Vec::with_capacity(inputs.len()); outputs.len()],
        inputs,
        feasibilities: Vec::new(),
        limits: Vec::new(),
    };
    for base in &found.inputs {
        let numbers = [(axis.field, *base)];
        let feasibility = variation.feasibility(&numbers);
        let solved = has_balance(feasibility);
        for (values, output) in found.outputs.iter_mut().zip(outputs) {
            values.push(if solved { output.value(variation.case()).map(|amount| amount.base) } else { None });
        }
        found.feasibilities.push(feasibility);
    }
    found.limits = limit_spans(&mut variation, axis, &found.inputs, &found.feasibilities);
    found
}

/// By how much a figure changes with its input at `at`: the slope between the points on either side. `None` where it has no
/// values there.
#[must_use]
pub fn slope(inputs: &[f64], values: &[Option<f64>], at: f64) -> Option<f64> {
    let above = inputs.iter().position(|input| *input > at).unwrap_or(inputs.len().saturating_sub(1)).max(1);
    let (from, to) = (inputs.get(above - 1)?, inputs.get(above)?);
    let (low, high) = (values.get(above - 1).copied()??, values.get(above).copied()??);
    let slope = (high - low) / (to - from);
    slope.is_finite().then_some(slope)
}

/// The share by which each input is moved to see its effect.
const NUDGE: f64 = 0.01;

/// The inputs of a recipe by their effect on a figure: how much it changes for 1 % more of the input, the largest first.
/// Inputs without an effect are left out.
#[must_use]
pub fn ranked_effects(case: &Case, output: Output) -> Vec<(Field, f64)> {
    let mut variation = Variation::new(case);
    let mut found: Vec<(Field, f64)> = Vec::new();
    for field in variable::used(&case.input) {
        let Some(at) = variable::get(&case.input, field).filter(|at| *at != 0.0) else { continue };
        let step = at * NUDGE / 2.0;
        let ends = (variation.value(&[(field, at + step)], output), variation.value(&[(field, at - step)], output));
        // The next input is moved from the recipe as it is.
        let _ = variation.vary(&[(field, at)]);
        if let (Some(high), Some(low)) = ends {
            let effect = without_noise(high - low, high.abs() + low.abs());
            if effect != 0.0 {
                found.push((field, effect));
            }
        }
    }
    found.sort_by(|one, other| other.1.abs().total_cmp(&one.1.abs()));
    found
}

/// Stretches of one input over which a recipe can run, narrowed down to [`EDGE`] of the range.
#[must_use]
pub fn feasible_stretches(case: &Case, axis: &Axis) -> Vec<(f64, f64)> {
    let swept = sweep(case, axis, &[]);
    let mut stretches = vec![(axis.from, axis.to)];
    for limit in &swept.limits {
        stretches = stretches
            .into_iter()
            .flat_map(|(from, to)| [(from, to.min(limit.from)), (from.max(limit.to), to)])
            .filter(|(from, to)| to - from > EDGE * (axis.to - axis.from))
            .collect();
    }
    stretches
}

/// A figure over a grid of two inputs. All numbers in base units; cells row by row, the first input
/// along the row, the second from row to row.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    /// Values of the first input.
    pub across: Vec<f64>,
    /// Values of the second input.
    pub up: Vec<f64>,
    /// The figure in each cell; `None` where there is none.
    pub values: Vec<Option<f64>>,
    /// What prevents it in each cell.
    pub feasibilities: Vec<Feasibility>,
    /// Behind each cell, where the state changes before the next one along its row, narrowed down to [`EDGE`] of the axis;
    /// `None` where it does not.
    pub level: Vec<Option<f64>>,
    /// The same before the next cell up its column.
    pub upright: Vec<Option<f64>>,
    /// Edges between what can be run, what can be run with advice, and what cannot, narrowed down to [`EDGE`] of each
    /// axis: pieces of line through one square of the grid each.
    pub edges: Vec<[(f64, f64); 2]>,
}

impl Grid {
    /// The place of a cell.
    #[must_use]
    pub fn place(&self, column: usize, row: usize) -> usize {
        row * self.across.len() + column
    }
}

/// Sweeps two inputs. Each cell is a full solve of the recipe.
#[must_use]
pub fn grid(case: &Case, across: &Axis, up: &Axis, output: Output) -> Grid {
    let (columns, rows) = (across.values(), up.values());
    let mut variation = Variation::new(case);
    let mut values = Vec::with_capacity(columns.len() * rows.len());
    let mut feasibilities = Vec::with_capacity(columns.len() * rows.len());
    for second in &rows {
        for first in &columns {
            let feasibility = variation.feasibility(&[(across.field, *first), (up.field, *second)]);
            let value = if has_balance(feasibility) { output.value(variation.case()) } else { None };
            values.push(value.map(|amount| amount.base));
            feasibilities.push(feasibility);
        }
    }
    let (level, upright) = crossings(&mut variation, (across.field, &columns), (up.field, &rows), &feasibilities);
    let edges = edges(&columns, &rows, &level, &upright);
    Grid { across: columns, up: rows, values, feasibilities, level, upright, edges }
}

/// Where the state changes along the rows and up the columns of a grid.
fn crossings(
    variation: &mut Variation,
    (across, columns): (Field, &[f64]),
    (up, rows): (Field, &[f64]),
    found: &[Feasibility],
) -> (Vec<Option<f64>>, Vec<Option<f64>>) {
    let ends = |all: &[f64]| EDGE * (all.last().unwrap_or(&0.0) - all.first().unwrap_or(&0.0)).abs();
    let (wide, high) = (ends(columns), ends(rows));
    let standing = |column: usize, row: usize| {
        columns.get(column)?;
        found.get(row * columns.len() + column).map(|one| one.standing())
    };
    let (mut level, mut upright) = (Vec::with_capacity(found.len()), Vec::with_capacity(found.len()));
    for (row, y) in rows.iter().enumerate() {
        for (column, x) in columns.iter().enumerate() {
            let here = standing(column, row);
            let changes = |there: Option<FeasibilityGrade>| here.zip(there).is_some_and(|(here, there)| here != there);
            let along = columns.get(column + 1).filter(|_| changes(standing(column + 1, row)));
            level.push(along.map(|next| {
                narrowed(*x, *next, wide, |at| {
                    Some(variation.feasibility(&[(across, at), (up, *y)]).standing()) == here
                })
            }));
            let above = rows.get(row + 1).filter(|_| changes(standing(column, row + 1)));
            upright.push(above.map(|next| {
                narrowed(*y, *next, high, |at| {
                    Some(variation.feasibility(&[(across, *x), (up, at)]).standing()) == here
                })
            }));
        }
    }
    (level, upright)
}

/// The crossings joined within each square of the grid.
fn edges(columns: &[f64], rows: &[f64], level: &[Option<f64>], upright: &[Option<f64>]) -> Vec<[(f64, f64); 2]> {
    let number = |column: usize, row: usize| row * columns.len() + column;
    let along = |column: usize, row: usize| Some((level.get(number(column, row)).copied()??, *rows.get(row)?));
    let up = |column: usize, row: usize| Some((*columns.get(column)?, upright.get(number(column, row)).copied()??));
    let mut pieces = Vec::new();
    for row in 0..rows.len().saturating_sub(1) {
        for column in 0..columns.len().saturating_sub(1) {
            let sides = [along(column, row), up(column + 1, row), along(column, row + 1), up(column, row)];
            let points: Vec<(f64, f64)> = sides.into_iter().flatten().collect();
            match points.as_slice() {
                [one, other] => pieces.push([*one, *other]),
                // Three or four: the edges meet in the square.
                all if all.len() > 2 => {
                    let count = all.len() as f64;
                    let sum = all.iter().fold((0.0, 0.0), |sum, point| (sum.0 + point.0, sum.1 + point.1));
                    pieces.extend(all.iter().map(|point| [*point, (sum.0 / count, sum.1 / count)]));
                }
                _ => {}
            }
        }
    }
    pieces
}

fn has_balance(feasibility: Feasibility) -> bool {
    !feasibility.obstacles().any(|obstacle| matches!(obstacle, Obstacle::NotAllowed | Obstacle::NoBalance))
}
