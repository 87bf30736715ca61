//! Areas of a grid in one state, bounded by the refined places at which the state changes, and strokes over them.

use super::contour::runs;
use super::drawing::place;
use std::fmt::Write as _;

/// The state of a cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CellStatus {
    /// It can be run, and nothing is unusual.
    Free,
    /// It can be run, but something is outside its usual window.
    Unusual,
    /// It cannot be run.
    Barred,
}

/// What is drawn, in the units shown; cells row by row, the first input along the row.
#[derive(Debug, Clone, PartialEq)]
pub struct MapCells {
    /// Values of the first input.
    pub across: Vec<f64>,
    /// Values of the second input.
    pub up: Vec<f64>,
    /// The figure; `None` where there is none.
    pub values: Vec<Option<f64>>,
    /// The state of each cell.
    pub grounds: Vec<CellStatus>,
    /// Behind each cell, where the state changes before the next one along its row; `None` where it does not.
    pub level: Vec<Option<f64>>,
    /// The same before the next cell up its column.
    pub upright: Vec<Option<f64>>,
    /// Edges between the states, as pieces of line.
    pub edges: Vec<[(f64, f64); 2]>,
    /// Where the recipe is.
    pub now: Option<(f64, f64)>,
}

/// A polygon, corner by corner.
pub type Polygon = Vec<(f64, f64)>;

/// The areas of the cells with this state, in the units of the axes. Squares of the grid that lie wholly in it are joined along
/// their row; one that an edge goes through is cut where the state changes, not half way.
#[must_use]
pub fn areas(cells: &MapCells, ground: CellStatus) -> Vec<Polygon> {
    let columns = cells.across.len();
    let (wide, high) = (columns.saturating_sub(1), cells.up.len().saturating_sub(1));
    let inside = |column: usize, row: usize| cells.grounds.get(row * columns + column) == Some(&ground);
    let corners =
        |column: usize, row: usize| [(column, row), (column + 1, row), (column + 1, row + 1), (column, row + 1)];
    let squares: Vec<usize> = (0..wide * high)
        .map(|at| corners(at % wide.max(1), at / wide.max(1)).iter().filter(|(c, r)| inside(*c, *r)).count())
        .collect();
    let at = |column: usize, row: usize| Some((*cells.across.get(column)?, *cells.up.get(row)?));
    let mut all = Vec::new();
    for run in runs(&squares, wide, |count| *count == 4) {
        let ends = at(run.column, run.row).zip(at(run.column + run.length, run.row + 1));
        all.extend(ends.map(|((left, low), (right, top))| vec![(left, low), (right, low), (right, top), (left, top)]));
    }
    for (number, _) in squares.iter().enumerate().filter(|(_, count)| (1..4).contains(*count)) {
        let around = corners(number % wide, number / wide);
        let mut polygon = Polygon::new();
        for (side, (column, row)) in around.into_iter().enumerate() {
            let (next_column, next_row) = around[(side + 1) % 4];
            if inside(column, row) {
                polygon.extend(at(column, row));
            }
            if inside(column, row) != inside(next_column, next_row) {
                polygon.extend(crossing(cells, (column, row), (next_column, next_row)));
            }
        }
        all.push(polygon);
    }
    all
}

/// Where the state changes between two neighbours; half way where it was not refined.
fn crossing(cells: &MapCells, one: (usize, usize), other: (usize, usize)) -> Option<(f64, f64)> {
    let (column, row) = (one.0.min(other.0), one.1.min(other.1));
    let number = row * cells.across.len() + column;
    let (x, y) = (*cells.across.get(column)?, *cells.up.get(row)?);
    if one.1 == other.1 {
        let half = || cells.across.get(column + 1).map(|next| f64::midpoint(x, *next));
        Some((cells.level.get(number).copied().flatten().or_else(half)?, y))
    } else {
        let half = || cells.up.get(row + 1).map(|next| f64::midpoint(y, *next));
        Some((x, cells.upright.get(number).copied().flatten().or_else(half)?))
    }
}

/// Rising strokes over some areas in the places of the drawing, in line from one to the next, as a path.
#[must_use]
pub fn strokes(areas: &[Polygon], step: f64) -> String {
    let mut path = String::new();
    for area in areas {
        // Strokes lie on x + y = n·step.
        let sums = || area.iter().map(|(x, y)| x + y);
        let (least, most) = sums().fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), sum| (a.min(sum), b.max(sum)));
        let mut number = (least / step).ceil();
        while number * step <= most {
            let mut cuts = cuts(area, number * step);
            cuts.sort_by(|one, other| one.0.total_cmp(&other.0));
            for pair in cuts.chunks_exact(2) {
                if let [(from, above), (to, below)] = pair
                    && to > from
                {
                    let _ = write!(path, "M{} {}L{} {}", place(*from), place(*above), place(*to), place(*below));
                }
            }
            number += 1.0;
        }
    }
    path
}

/// Where the line x + y = `sum` cuts the sides of an area. A side belongs to the line with its first corner and not its second,
/// so that a corner counts once.
fn cuts(area: &[(f64, f64)], sum: f64) -> Vec<(f64, f64)> {
    let next = area.iter().cycle().skip(1);
    let cut = |((x, y), (next_x, next_y)): (&(f64, f64), &(f64, f64))| {
        let (here, there) = (x + y - sum, next_x + next_y - sum);
        ((here <= 0.0) != (there <= 0.0)).then(|| {
            let share = here / (here - there);
            (x + share * (next_x - x), y + share * (next_y - y))
        })
    };
    area.iter().zip(next).filter_map(cut).collect()
}
