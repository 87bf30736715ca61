//! Mean, scatter, interval and quantile of a property over boards, or over the pieces of one.

use crate::domain::line::student::two_sided;

/// The confidence of every interval here.
pub const CONFIDENCE: f64 = 0.95;

/// What several values come to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Summary {
    /// How many values n.
    pub count: usize,
    /// Mean x̄.
    pub mean: f64,
    /// Standard deviation s = √(Σ(x−x̄)²/(n−1)); `None` for one value.
    pub deviation: Option<f64>,
    /// Half the width of the 95 % interval of the mean, t₀.₉₇₅(n−1)·s/√n; `None` for one value.
    pub half_width: Option<f64>,
    /// Lower 5 % quantile x̄ − t·s, with the one-sided t₀.₉₅(n−1); `None` for one value.
    pub lower: Option<f64>,
    /// Upper 5 % quantile x̄ + t·s; `None` for one value.
    pub upper: Option<f64>,
}

/// Sums values up; `None` for none, and when a figure leaves the range of numbers.
///
/// The quantiles are formed as EN 326-1 forms them of the means of boards, with s the standard deviation
/// between boards. **From memory**: nobody here had the standard open.
#[must_use]
pub fn summary(values: &[f64]) -> Option<Summary> {
    let count = values.len();
    let n = count as f64;
    let mean = values.iter().sum::<f64>() / n;
    if count == 0 || !mean.is_finite() {
        return None;
    }
    if count == 1 {
        return Some(Summary { count, mean, deviation: None, half_width: None, lower: None, upper: None });
    }
    let freedom = u32::try_from(count - 1).unwrap_or(u32::MAX);
    let deviation = (values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt();
    let both = two_sided(CONFIDENCE, freedom)?;
    let half_width = both * deviation / n.sqrt();
    let one_sided = one_sided_t(freedom)?;
    let summary = Summary {
        count,
        mean,
        deviation: Some(deviation),
        half_width: Some(half_width),
        lower: Some(mean - one_sided * deviation),
        upper: Some(mean + one_sided * deviation),
    };
    deviation.is_finite().then_some(summary)
}

/// t that 5 % lie beyond on one side.
#[must_use]
pub fn one_sided_t(freedom: u32) -> Option<f64> {
    // Beyond ± t lies twice what lies beyond + t.
    two_sided(1.0 - 2.0 * (1.0 - CONFIDENCE), freedom)
}
