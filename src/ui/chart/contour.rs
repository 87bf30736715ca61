//! Lines of equal value over a grid, and regions of it.
//!
//! Own code: the `contour` crate would add 7.7 kB (brotli), closes its lines along the border, and knows
//! no cells without a value.

/// A point on the grid: column and row, with fractions between them.
pub type GridPoint = (f64, f64);

/// The lines along which a grid's values are `level`, each a run of points; the first and the last are the
/// same where a line closes. Cells with a corner without a value have none.
///
/// `values` row by row, `columns` a row. Marching squares, straight between two corners; where a cell has
/// its corners above the level across from each other, its mean decides how they join.
///
/// Source: the plane case of Lorensen and Cline, Marching cubes, Computer Graphics 21 (1987) 163.
#[must_use]
pub fn lines(values: &[Option<f64>], columns: usize, level: f64) -> Vec<Vec<GridPoint>> {
    let rows = values.len().checked_div(columns).unwrap_or(0);
    let mut pieces: Vec<(Edge, Edge)> = Vec::new();
    for row in 0..rows.saturating_sub(1) {
        for column in 0..columns.saturating_sub(1) {
            cell(values, columns, (column, row), level, &mut pieces);
        }
    }
    join(pieces)
        .into_iter()
        .map(|line| line.iter().map(|edge| edge.crossing(values, columns, level)).collect())
        .collect()
}

/// An edge of the grid: from a corner to the next one to the right, or to the one above.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Edge {
    column: usize,
    row: usize,
    upward: bool,
}

impl Edge {
    fn crossing(self, values: &[Option<f64>], columns: usize, level: f64) -> GridPoint {
        let value = |column: usize, row: usize| values.get(row * columns + column).copied().flatten().unwrap_or(level);
        let (column, row) = (self.column as f64, self.row as f64);
        let start = value(self.column, self.row);
        let end = if self.upward { value(self.column, self.row + 1) } else { value(self.column + 1, self.row) };
        let share = if (end - start).abs() > 0.0 { ((level - start) / (end - start)).clamp(0.0, 1.0) } else { 0.5 };
        if self.upward { (column, row + share) } else { (column + share, row) }
    }
}

/// The pieces of line within one cell.
fn cell(
    values: &[Option<f64>],
    columns: usize,
    (column, row): (usize, usize),
    level: f64,
    pieces: &mut Vec<(Edge, Edge)>,
) {
    let value = |column: usize, row: usize| values.get(row * columns + column).copied().flatten();
    let corners = [value(column, row), value(column + 1, row), value(column + 1, row + 1), value(column, row + 1)];
    let [Some(a), Some(b), Some(c), Some(d)] = corners else { return };
    let bottom = Edge { column, row, upward: false };
    let top = Edge { column, row: row + 1, upward: false };
    let left = Edge { column, row, upward: true };
    let right = Edge { column: column + 1, row, upward: true };
    let above = |value: f64| value >= level;
    let high = above((a + b + c + d) / 4.0);
    match (above(a), above(b), above(c), above(d)) {
        (true, true, true, true) | (false, false, false, false) => {}
        (true, false, false, false) | (false, true, true, true) => pieces.push((left, bottom)),
        (false, true, false, false) | (true, false, true, true) => pieces.push((bottom, right)),
        (false, false, true, false) | (true, true, false, true) => pieces.push((right, top)),
        (false, false, false, true) | (true, true, true, false) => pieces.push((top, left)),
        (true, true, false, false) | (false, false, true, true) => pieces.push((left, right)),
        (true, false, false, true) | (false, true, true, false) => pieces.push((bottom, top)),
        (true, false, true, false) if high => pieces.extend([(left, top), (bottom, right)]),
        (true, false, true, false) => pieces.extend([(left, bottom), (right, top)]),
        (false, true, false, true) if high => pieces.extend([(left, bottom), (right, top)]),
        (false, true, false, true) => pieces.extend([(left, top), (bottom, right)]),
    }
}

/// Joins pieces end to end.
fn join(mut pieces: Vec<(Edge, Edge)>) -> Vec<Vec<Edge>> {
    let mut lines = Vec::new();
    while let Some((start, end)) = pieces.pop() {
        let mut line = vec![start, end];
        // On from the end, then, with the line turned round, on from its start.
        for _ in 0..2 {
            while let Some(last) = line.last().copied()
                && let Some(at) = pieces.iter().position(|(a, b)| *a == last || *b == last)
            {
                let (a, b) = pieces.swap_remove(at);
                line.push(if a == last { b } else { a });
            }
            line.reverse();
        }
        lines.push(line);
    }
    lines
}

/// A run of cells in one row: from this column, so many.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CellRun {
    /// The row.
    pub row: usize,
    /// The first column.
    pub column: usize,
    /// How many cells.
    pub length: usize,
}

/// The cells of a grid for which `inside` holds, as runs along the rows: few shapes to draw.
#[must_use]
pub fn runs<T>(cells: &[T], columns: usize, inside: impl Fn(&T) -> bool) -> Vec<CellRun> {
    let mut runs: Vec<CellRun> = Vec::new();
    for (row, cells) in cells.chunks(columns.max(1)).enumerate() {
        for (column, _) in cells.iter().enumerate().filter(|(_, cell)| inside(cell)) {
            match runs.last_mut() {
                Some(run) if run.row == row && run.column + run.length == column => run.length += 1,
                _ => runs.push(CellRun { row, column, length: 1 }),
            }
        }
    }
    runs
}
