//! Control limits for single values that come one after the other.

/// 3/d₂ for ranges of two values: 3/1.128.
pub const FACTOR: f64 = 2.66;

/// Fewer values than this give limits that will still move a good deal. Common practice, no source.
pub const ENOUGH: usize = 20;

/// A control chart of individuals: mean ± 2.66 times the mean moving range.
///
/// Source: ISO 7870-2, Shewhart control charts, the chart for individuals and moving ranges (the factor from
/// memory, and no clause is named since nobody here had the standard open).
#[derive(Debug, Clone, PartialEq)]
pub struct ControlChart {
    /// Mean of the values.
    pub mean: f64,
    /// Mean of |xᵢ − xᵢ₋₁|.
    pub moving_range: f64,
    /// Lower limit.
    pub low: f64,
    /// Upper limit.
    pub high: f64,
    /// Places of the values outside the limits.
    pub outside: Vec<usize>,
    /// Whether there are [`ENOUGH`] values for limits to act on.
    pub settled: bool,
}

/// The chart of some values, the oldest first. `None` below two, or when one is not finite.
#[must_use]
pub fn control_chart(values: &[f64]) -> Option<ControlChart> {
    control_chart_from(values, values.len())
}

/// The same with the limits of the first values alone, up to `first` of them: what comes later and drifts does not widen the
/// limits that it is compared with.
#[must_use]
pub fn control_chart_from(values: &[f64], first: usize) -> Option<ControlChart> {
    let base = values.get(..first).unwrap_or(values);
    if base.len() < 2 || !values.iter().all(|value| value.is_finite()) {
        return None;
    }
    let mean = base.iter().sum::<f64>() / base.len() as f64;
    let ranges: f64 = base.windows(2).map(|pair| (pair[1] - pair[0]).abs()).sum();
    let moving_range = ranges / (base.len() - 1) as f64;
    let (low, high) = (mean - FACTOR * moving_range, mean + FACTOR * moving_range);
    // Values that are all alike up to rounding are not outside.
    let slack = 1e-12 * mean.abs();
    let outside = (0..values.len()).filter(|at| values[*at] < low - slack || values[*at] > high + slack).collect();
    Some(ControlChart { mean, moving_range, low, high, outside, settled: base.len() >= ENOUGH })
}
