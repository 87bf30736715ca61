//! Least squares of a straight line, with and without an intercept, and what can be told from it.
//!
//! Source: Draper and Smith (1998), chapters 1 to 3 and 8 (from memory). Checked
//! against the certified values of NIST StRD Norris.

use super::distribution::{CONFIDENCE, two_sided_t};
use crate::quantity::number::finite;
use serde::{Deserialize, Serialize};

/// Which line is fitted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Model {
    /// y = a + b·x.
    WithIntercept,
    /// y = b·x: no flow at a setting of zero.
    ThroughOrigin,
}

impl Model {
    /// Both, in the order in which they are offered.
    pub const ALL: &'static [Model] = &[Self::WithIntercept, Self::ThroughOrigin];

    /// How many coefficients the line has.
    #[must_use]
    pub const fn coefficients(self) -> usize {
        match self {
            Self::WithIntercept => 2,
            Self::ThroughOrigin => 1,
        }
    }
}

/// A measured point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DataPoint {
    /// What was set.
    pub x: f64,
    /// What was measured.
    pub y: f64,
}

/// Share of the variation that the line explains. The two cannot be compared with each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RSquared {
    /// With intercept: 1 − Σe²/Σ(y−ȳ)², about the mean.
    Centred(f64),
    /// Through the origin: 1 − Σe²/Σy², about zero; always looks better than the centred one.
    Uncentred(f64),
}

impl RSquared {
    /// The number.
    #[must_use]
    pub const fn value(self) -> f64 {
        match self {
            Self::Centred(value) | Self::Uncentred(value) => value,
        }
    }
}

/// From one value to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// Why no line can be fitted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FitError {
    /// Fewer points than the line has coefficients.
    TooFew,
    /// All points are at one x (with intercept), or at x = 0 (through the origin).
    NoSpread,
    /// A number is not finite, or too large to calculate with.
    NotFinite,
}

/// A line through points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fit {
    /// Which line.
    pub model: Model,
    /// How many points n.
    pub count: usize,
    /// Slope b.
    pub slope: f64,
    /// Intercept a; 0 through the origin.
    pub intercept: f64,
    /// Residual standard deviation s = √(Σe²/(n−p)); `None` without degrees of freedom.
    pub residual_sd: Option<f64>,
    /// Coefficient of determination; `None` when y does not vary.
    pub r_squared: Option<RSquared>,
    /// What x is centred on: its mean, 0 through the origin.
    pub centre: f64,
    /// Σ(x−centre)².
    pub spread: f64,
    /// Least and greatest x.
    pub tested: Interval,
    /// Mean of y, 0 through the origin.
    level: f64,
    /// t of the two-sided interval, kept since every interval takes it.
    t: Option<f64>,
}

/// How far one point lies off the line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Residual {
    /// e = y − ŷ.
    pub residual: f64,
    /// Leverage h, from 0 to 1: how much the point pulls the line to itself.
    pub leverage: f64,
    /// Externally studentised residual, e/(s₍ᵢ₎·√(1−h)), with the residual SD of the line through the other
    /// points. `None` where the others leave no degrees of freedom or lie on a line exactly while this one
    /// does too.
    pub studentised: Option<f64>,
}

impl Fit {
    /// Lays the line by least squares. Two passes, about the means, so that points far from zero
    /// lose no digits.
    ///
    /// # Errors
    /// [`FitError`].
    pub fn through(points: &[DataPoint], model: Model) -> Result<Self, FitError> {
        if points.len() < model.coefficients() {
            return Err(FitError::TooFew);
        }
        let weight = points.len() as f64;
        let mean = |of: fn(&DataPoint) -> f64| points.iter().map(of).sum::<f64>() / weight;
        let (centre, level) = match model {
            Model::WithIntercept => (mean(|p| p.x), mean(|p| p.y)),
            Model::ThroughOrigin => (0.0, 0.0),
        };
        let spread: f64 = points.iter().map(|p| (p.x - centre).powi(2)).sum();
        let product: f64 = points.iter().map(|p| (p.x - centre) * (p.y - level)).sum();
        let variation: f64 = points.iter().map(|p| (p.y - level).powi(2)).sum();
        let tested = Interval {
            low: points.iter().map(|p| p.x).fold(f64::INFINITY, f64::min),
            high: points.iter().map(|p| p.x).fold(f64::NEG_INFINITY, f64::max),
        };
        if ![spread, product, variation].iter().all(|sum| sum.is_finite()) {
            return Err(FitError::NotFinite);
        }
        let one_place = match model {
            Model::WithIntercept => tested.low >= tested.high,
            Model::ThroughOrigin => false,
        };
        if one_place || !spread.is_normal() {
            return Err(FitError::NoSpread);
        }
        let slope = product / spread;
        let intercept = match model {
            Model::WithIntercept => level - slope * centre,
            Model::ThroughOrigin => 0.0,
        };
        let off = |p: &DataPoint| (p.y - level) - slope * (p.x - centre);
        let unexplained: f64 = points.iter().map(|p| off(p).powi(2)).sum();
        if ![slope, intercept, unexplained].iter().all(|x| x.is_finite()) {
            return Err(FitError::NotFinite);
        }
        let freedom = points.len() - model.coefficients();
        let residual_sd = (freedom > 0).then(|| (unexplained / freedom as f64).sqrt());
        let explained = finite(1.0 - unexplained / variation);
        let r_squared = explained.map(match model {
            Model::WithIntercept => RSquared::Centred,
            Model::ThroughOrigin => RSquared::Uncentred,
        });
        let t = two_sided_t(CONFIDENCE, freedom as f64);
        let count = points.len();
        Ok(Self { model, count, slope, intercept, residual_sd, r_squared, centre, spread, tested, level, t })
    }

    /// Degrees of freedom n − p.
    #[must_use]
    pub fn freedom(&self) -> u32 {
        u32::try_from(self.count - self.model.coefficients()).unwrap_or(u32::MAX)
    }

    /// Standard deviation of the slope, s/√Σ(x−x̄)².
    #[must_use]
    pub fn slope_sd(&self) -> Option<f64> {
        self.residual_sd.map(|sd| sd / self.spread.sqrt())
    }

    /// Standard deviation of the intercept, s·√(1/n + x̄²/Σ(x−x̄)²); `None` through the origin.
    #[must_use]
    pub fn intercept_sd(&self) -> Option<f64> {
        match self.model {
            Model::WithIntercept => self.residual_sd.map(|sd| sd * self.leverage(0.0).sqrt()),
            Model::ThroughOrigin => None,
        }
    }

    /// The line at x.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        self.level + self.slope * (x - self.centre)
    }

    /// 1/n, the share of the mean in a variance; 0 through the origin.
    #[must_use]
    pub fn of_mean(&self) -> f64 {
        match self.model {
            Model::WithIntercept => 1.0 / self.count as f64,
            Model::ThroughOrigin => 0.0,
        }
    }

    fn leverage(&self, x: f64) -> f64 {
        self.of_mean() + (x - self.centre).powi(2) / self.spread
    }

    /// Standard deviation of the line itself at x, s·√(1/n + (x−x̄)²/Σ(x−x̄)²).
    #[must_use]
    pub fn sd_of_mean(&self, x: f64) -> Option<f64> {
        self.residual_sd.map(|sd| sd * self.leverage(x).sqrt())
    }

    /// t of the two-sided interval with the line's degrees of freedom.
    #[must_use]
    pub const fn t(&self) -> Option<f64> {
        self.t
    }

    /// Where one more measurement at x is expected, with [`CONFIDENCE`]:
    /// ŷ ± t·s·√(1 + 1/n + (x−x̄)²/Σ(x−x̄)²). `None` without degrees of freedom.
    #[must_use]
    pub fn prediction(&self, x: f64) -> Option<Interval> {
        let half = self.t()? * self.residual_sd? * (1.0 + self.leverage(x)).sqrt();
        let middle = self.at(x);
        Some(Interval { low: finite(middle - half)?, high: finite(middle + half)? })
    }

    /// x at which the line reaches y, (y−a)/b. `None` when the line is level.
    #[must_use]
    pub fn inverse(&self, y: f64) -> Option<f64> {
        finite(self.centre + (y - self.level) / self.slope)
    }

    /// All x at which y lies within the [`prediction`](Self::prediction) interval (inverse prediction for
    /// one measurement). With g = t²s²/(b²·Σ(x−x̄)²) and d = y − ȳ:
    /// x̄ + [d/b ± (t·s/b)·√((1−g)(1+1/n) + d²/(b²·Σ(x−x̄)²))]/(1−g).
    ///
    /// `None` without degrees of freedom, and where the slope cannot be told from zero (g ≥ 1): then no x
    /// is ruled out.
    ///
    /// Source: Draper and Smith (1998), section 3.2; the root follows from the prediction interval, and a test
    /// holds it against it.
    #[must_use]
    pub fn inverse_interval(&self, y: f64) -> Option<Interval> {
        let width = self.t()? * self.residual_sd? / self.slope;
        let g = width.powi(2) / self.spread;
        // Not a number counts as no slope.
        if g.is_nan() || g >= 1.0 {
            return None;
        }
        let away = (y - self.level) / self.slope;
        let half = (width * ((1.0 - g) * (1.0 + self.of_mean()) + away.powi(2) / self.spread).sqrt()).abs();
        let end = |sign: f64| finite(self.centre + (away + sign * half) / (1.0 - g));
        Some(Interval { low: end(-1.0)?, high: end(1.0)? })
    }

    /// How far each point lies off the line.
    #[must_use]
    pub fn residuals(&self, points: &[DataPoint]) -> Vec<Residual> {
        let unexplained = self.residual_sd.map_or(0.0, |sd| sd.powi(2) * f64::from(self.freedom()));
        let studentised = |residual: f64, leverage: f64| {
            let rest = 1.0 - leverage;
            // A point that alone fixes the line has no residual to judge.
            if self.freedom() < 2 || rest < 1e-9 {
                return None;
            }
            let without = (unexplained - residual.powi(2) / rest) / f64::from(self.freedom() - 1);
            // What is left of an exact line after rounding is no scatter.
            let noise = 1e-12 * self.level.abs().max(self.slope.abs() * self.spread.sqrt());
            let sd = without.max(0.0).sqrt().max(noise);
            finite(residual / (sd * rest.sqrt()))
        };
        let one = |point: &DataPoint| {
            let residual = point.y - self.at(point.x);
            let leverage = self.leverage(point.x);
            Residual { residual, leverage, studentised: studentised(residual, leverage) }
        };
        points.iter().map(one).collect()
    }

    /// The size of an externally studentised residual that only one line in twenty has anywhere, by
    /// Bonferroni: t at 1 − 0.05/(2n) with n − p − 1 degrees. `None` where the other points leave fewer than
    /// two degrees: of four points three lie on a line exactly now and then, by the rounding of a scale.
    #[must_use]
    pub fn suspicious_from(&self) -> Option<f64> {
        let freedom = self.freedom().checked_sub(1).filter(|freedom| *freedom >= 2)?;
        two_sided_t(1.0 - (1.0 - CONFIDENCE) / self.count as f64, f64::from(freedom))
    }
}
