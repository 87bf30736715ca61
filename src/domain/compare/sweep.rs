//! One input over a range, and two over a grid.

use super::output::Output;
use super::probe::Probe;
use super::verdict::Verdict;
use crate::domain::balance::outcome::Case;
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
    /// What stands in the way at each input.
    pub verdicts: Vec<Verdict>,
}

/// Sweeps one input. Each point is a full solve of the recipe.
#[must_use]
pub fn sweep(case: &Case, axis: &Axis, outputs: &[Output]) -> Sweep {
    let inputs = axis.values();
    let mut probe = Probe::new(case);
    let mut found =
        Sweep { outputs: vec![Vec::with_capacity(inputs.len()); outputs.len()], inputs, verdicts: Vec::new() };
    for base in &found.inputs {
        let numbers = [(axis.field, *base)];
        let verdict = probe.verdict(&numbers);
        let solved = has_balance(verdict);
        for (values, output) in found.outputs.iter_mut().zip(outputs) {
            values.push(if solved { output.value(probe.case()).map(|amount| amount.base) } else { None });
        }
        found.verdicts.push(verdict);
    }
    found
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
    /// What stands in the way in each cell.
    pub verdicts: Vec<Verdict>,
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
    let mut probe = Probe::new(case);
    let mut values = Vec::with_capacity(columns.len() * rows.len());
    let mut verdicts = Vec::with_capacity(columns.len() * rows.len());
    for second in &rows {
        for first in &columns {
            let verdict = probe.verdict(&[(across.field, *first), (up.field, *second)]);
            let value = if has_balance(verdict) { output.value(probe.case()) } else { None };
            values.push(value.map(|amount| amount.base));
            verdicts.push(verdict);
        }
    }
    Grid { across: columns, up: rows, values, verdicts }
}

fn has_balance(verdict: Verdict) -> bool {
    use super::verdict::Obstacle;
    !verdict.obstacles().any(|obstacle| matches!(obstacle, Obstacle::NotAllowed | Obstacle::NoBalance))
}
