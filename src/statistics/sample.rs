//! Mean, standard deviation, confidence interval and quantiles of a sample.

use super::distribution::{CONFIDENCE, one_sided_t, two_sided_t};

/// What several values come to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SampleSummary {
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
    /// Upper 95 % quantile x̄ + t·s; `None` for one value.
    pub upper: Option<f64>,
}

impl SampleSummary {
    /// Summary of the values; `None` for none, and when a figure leaves the range of numbers.
    ///
    /// The quantiles are formed as EN 326-1 forms them of the means of boards, with s the standard deviation
    /// between boards. **From memory**: nobody here had the standard open.
    #[must_use]
    pub fn of(values: &[f64]) -> Option<Self> {
        let count = values.len();
        let n = count as f64;
        let mean = values.iter().sum::<f64>() / n;
        if count == 0 || !mean.is_finite() {
            return None;
        }
        if count == 1 {
            return Some(Self { count, mean, deviation: None, half_width: None, lower: None, upper: None });
        }
        let deviation = (values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt();
        let half_width = two_sided_t(CONFIDENCE, n - 1.0)? * deviation / n.sqrt();
        let to_quantile = one_sided_t(CONFIDENCE, n - 1.0)? * deviation;
        deviation.is_finite().then_some(Self {
            count,
            mean,
            deviation: Some(deviation),
            half_width: Some(half_width),
            lower: Some(mean - to_quantile),
            upper: Some(mean + to_quantile),
        })
    }
}
