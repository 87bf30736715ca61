//! Analysis of covariance: groups that share one slope over a covariate, such as strength over density in several
//! combinations of a series.
//!
//! The model is y = a_g + b·x with an intercept a_g of each group. Source: Draper and Smith (1998),
//! chapter on dummy variables (from memory). Checked against a general statistics library.

use super::distribution::{CONFIDENCE, f_tail, two_sided_t};
use super::regression::{DataPoint, Interval};
use crate::quantity::number::finite;

/// What the points of one group come to.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Group {
    count: f64,
    x: f64,
    y: f64,
    spread: f64,
    product: f64,
    variation: f64,
}

/// Groups with one slope.
#[derive(Debug, Clone, PartialEq)]
pub struct Covariance {
    groups: Vec<Option<Group>>,
    /// The slope b that all groups share.
    pub slope: f64,
    /// Degrees of freedom of the residuals.
    pub freedom: u32,
    /// Residual variance.
    pub variance: f64,
    /// Least and greatest x of all points.
    pub tested: Interval,
    /// P that slopes differ so much by chance; `None` where too few points tell.
    pub slopes_alike: Option<f64>,
    spread: f64,
}

/// The mean of a group at one x.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AdjustedMean {
    /// The mean a_g + b·x.
    pub value: f64,
    /// Half the width of its 95 % confidence interval.
    pub half_width: f64,
}

impl Group {
    fn of(points: &[DataPoint]) -> Option<Self> {
        if points.is_empty() {
            return None;
        }
        let count = points.len() as f64;
        let mean = |of: fn(&DataPoint) -> f64| points.iter().map(of).sum::<f64>() / count;
        let (x, y) = (mean(|p| p.x), mean(|p| p.y));
        let sum = |of: &dyn Fn(&DataPoint) -> f64| points.iter().map(of).sum::<f64>();
        Some(Self {
            count,
            x,
            y,
            spread: sum(&|p| (p.x - x).powi(2)),
            product: sum(&|p| (p.x - x) * (p.y - y)),
            variation: sum(&|p| (p.y - y).powi(2)),
        })
    }
}

impl Covariance {
    /// Fits the groups; one without points stays in its place and has no mean. `None` without two groups, without a spread
    /// of x within them, or without degrees of freedom.
    #[must_use]
    pub fn of(groups: &[Vec<DataPoint>]) -> Option<Self> {
        let all: Vec<Option<Group>> = groups.iter().map(|points| Group::of(points)).collect();
        let with_points: Vec<Group> = all.iter().flatten().copied().collect();
        let count: usize = groups.iter().map(Vec::len).sum();
        let sum = |of: fn(&Group) -> f64| with_points.iter().map(of).sum::<f64>();
        let (spread, product, variation) = (sum(|g| g.spread), sum(|g| g.product), sum(|g| g.variation));
        let freedom = count.checked_sub(with_points.len() + 1).filter(|freedom| *freedom > 0)?;
        if with_points.len() < 2 || spread <= 0.0 {
            return None;
        }
        let slope = finite(product / spread)?;
        let residual = finite(slope.mul_add(-product, variation))?.max(0.0);
        let x = || groups.iter().flatten().map(|point| point.x);
        let tested = Interval { low: x().fold(f64::INFINITY, f64::min), high: x().fold(f64::NEG_INFINITY, f64::max) };
        let freedom = u32::try_from(freedom).ok()?;
        Some(Self {
            slope,
            freedom,
            variance: residual / f64::from(freedom),
            tested,
            slopes_alike: slopes_alike(&with_points, residual, freedom),
            spread,
            groups: all,
        })
    }

    /// The mean of a group, by its place, at an x; `None` for a group without points.
    ///
    /// Its variance is s²·(1/n_g + (x − x̄_g)²/Σ(x − x̄_g)²), with the sum over all groups.
    #[must_use]
    pub fn at(&self, group: usize, x: f64) -> Option<AdjustedMean> {
        let own = self.groups.get(group)?.as_ref()?;
        let off = x - own.x;
        let variance = self.variance * (1.0 / own.count + off * off / self.spread);
        let half_width = two_sided_t(CONFIDENCE, f64::from(self.freedom))? * variance.sqrt();
        Some(AdjustedMean { value: finite(self.slope.mul_add(off, own.y))?, half_width: finite(half_width)? })
    }
}

/// P of the F test that a slope of each group's own explains no more than one for all.
fn slopes_alike(groups: &[Group], residual: f64, freedom: u32) -> Option<f64> {
    let with_slope: Vec<&Group> = groups.iter().filter(|group| group.spread > 0.0).collect();
    let more = u32::try_from(with_slope.len()).ok()?.checked_sub(1).filter(|more| *more > 0)?;
    let left = freedom.checked_sub(more).filter(|left| *left > 0)?;
    let explained: f64 = with_slope.iter().map(|group| group.product.powi(2) / group.spread).sum();
    let apart = (groups.iter().map(|group| group.variation).sum::<f64>() - explained).max(0.0);
    // What is left of a perfect fit is rounding: it tells nothing, unless slopes of their own fit perfectly where one does not.
    let noise = 1e-12 * groups.iter().map(|group| group.variation).sum::<f64>();
    if apart <= noise {
        return (residual > noise).then_some(0.0);
    }
    let f = finite((residual - apart).max(0.0) / f64::from(more) / (apart / f64::from(left)))?;
    f_tail(f, more, left)
}
