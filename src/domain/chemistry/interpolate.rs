//! Straight lines between the rows of a published table, and no guess beyond its ends.

/// What a rounded unit conversion may add at the end of a table, relative to the end's value:
/// 212 °F must still find the row for 100 °C.
const SLACK: f64 = 1e-12;

/// The value at `x` on the straight line between the two rows of `table` that enclose it.
///
/// The rows are `(x, y)` in rising order of `x`. `None` for an `x` outside the table (never an
/// extrapolation), for one that is not a number, and for a table of fewer than two rows.
pub(crate) fn linear(table: &[(f64, f64)], x: f64) -> Option<f64> {
    let (first, last) = (table.first()?.0, table.last()?.0);
    if !within(x, first, last) {
        return None;
    }
    let upper = table.partition_point(|row| row.0 < x).max(1);
    let (x1, y1) = *table.get(upper.min(table.len() - 1))?;
    let (x0, y0) = *table.get(upper.min(table.len() - 1).checked_sub(1)?)?;
    Some(y0 + (y1 - y0) * (x - x0) / (x1 - x0))
}

/// Whether `x` lies from `min` to `max`, ends included, with the slack of a unit conversion.
///
/// False for an `x` that is not a number.
pub(crate) fn within(x: f64, min: f64, max: f64) -> bool {
    let slack = SLACK * min.abs().max(max.abs());
    x >= min - slack && x <= max + slack
}

#[cfg(test)]
mod tests {
    use super::{linear, within};

    const TABLE: [(f64, f64); 3] = [(0.0, 1.0), (2.0, 5.0), (10.0, 9.0)];

    #[test]
    fn rows_and_the_lines_between_them() {
        for (x, y) in [(0.0, 1.0), (1.0, 3.0), (2.0, 5.0), (6.0, 7.0), (10.0, 9.0)] {
            assert_eq!(linear(&TABLE, x), Some(y), "at {x}");
        }
    }

    #[test]
    fn nothing_beyond_the_ends() {
        for x in [-0.001, 10.001, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(linear(&TABLE, x), None, "at {x}");
        }
        assert_eq!(linear(&[], 1.0), None);
        assert_eq!(linear(&[(1.0, 1.0)], 1.0), None);
    }

    #[test]
    fn a_rounded_end_still_counts() {
        assert!(within(10.0 + 4e-15, 0.0, 10.0));
        assert!(!within(10.0 + 1e-9, 0.0, 10.0));
        assert!(linear(&TABLE, 10.0 + 4e-15).is_some());
    }
}
