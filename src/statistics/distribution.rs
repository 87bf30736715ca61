//! Quantiles of the normal distribution and of Student's t, and the tail of Fisher's F, from `statrs`.
//!
//! Arguments without a meaning give `None`; nothing here panics.

use statrs::distribution::{ContinuousCDF, Normal, StudentsT};
use statrs::function::beta::checked_beta_reg;

/// The confidence of every interval.
pub const CONFIDENCE: f64 = 0.95;

/// From so many degrees of freedom on Student's t is the normal distribution: the quantiles for 95 % differ by
/// a share of 1.2·10⁻⁶ there, and by less beyond.
const NORMAL_FROM: f64 = 1e6;

/// More degrees of freedom of F than this count as this many, the most for which the tail was checked.
const MOST_FREEDOM: u32 = 10_000;

fn is_share(confidence: f64) -> bool {
    confidence > 0.0 && confidence < 1.0
}

/// z with P(|Z| ≤ z) = `confidence`: 0.95 gives 1.96. `None` outside 0 < confidence < 1.
#[must_use]
pub fn two_sided_normal(confidence: f64) -> Option<f64> {
    is_share(confidence).then(|| -Normal::standard().inverse_cdf((1.0 - confidence) / 2.0))
}

/// t with P(|T| ≤ t) = `confidence` at `freedom` degrees of freedom, whole or not: 0.95 gives the t of a
/// two-sided 95 % interval. `None` below one degree and outside 0 < confidence < 1.
///
/// Bisection of the tail of `statrs` between the quantiles of the normal distribution (infinite degrees) and of
/// Cauchy's (one degree), in at most 64 steps. The inverse of `statrs` 0.19 itself is not used: it loses digits
/// above 1 000 degrees (10⁻⁸ at 10⁴, 10⁻⁵ at 10⁵) and never returns at 10⁸. Relative error below 10⁻¹¹ for a
/// confidence from 0.1 to 0.9999 up to 1 000 degrees, below 10⁻⁸ beyond.
#[must_use]
pub fn two_sided_t(confidence: f64, freedom: f64) -> Option<f64> {
    let normal = two_sided_normal(confidence)?;
    if freedom >= NORMAL_FROM {
        return Some(normal);
    }
    if freedom.is_nan() || freedom < 1.0 {
        return None;
    }
    let distribution = StudentsT::new(0.0, 1.0, freedom).ok()?;
    let cauchy = (std::f64::consts::FRAC_PI_2 * confidence).tan();
    // A little wider, for both ends are rounded.
    let (mut low, mut high) = (normal * (1.0 - 1e-9), cauchy * (1.0 + 1e-9));
    let tail = (1.0 - confidence) / 2.0;
    for _ in 0..64 {
        let middle = f64::midpoint(low, high);
        if distribution.sf(middle) > tail {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(f64::midpoint(low, high))
}

/// t with P(T ≤ t) = `confidence`, above 0.5: 0.95 gives the t that 5 % exceed. `None` as for
/// [`two_sided_t`].
#[must_use]
pub fn one_sided_t(confidence: f64, freedom: f64) -> Option<f64> {
    // Beyond ± t lies twice what lies beyond + t.
    two_sided_t(1.0 - 2.0 * (1.0 - confidence), freedom)
}

/// P(F > f) with `numerator` and `denominator` degrees of freedom: how often chance alone gives so large a
/// ratio. `None` without degrees of freedom, for a negative f, and when not a number; 0 at infinity.
///
/// The incomplete beta function I_x(ν₂/2, ν₁/2) at x = ν₂/(ν₂ + ν₁·f), which has no digits to lose where f is
/// large.
///
/// Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.6.2.
#[must_use]
pub fn f_tail(f: f64, numerator: u32, denominator: u32) -> Option<f64> {
    if numerator == 0 || denominator == 0 || f.is_nan() || f < 0.0 {
        return None;
    }
    let [above, below] = [numerator, denominator].map(|freedom| f64::from(freedom.min(MOST_FREEDOM)));
    checked_beta_reg(below / 2.0, above / 2.0, below / (below + above * f)).ok()
}
