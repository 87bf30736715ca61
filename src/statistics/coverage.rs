//! From standard uncertainties to an interval: coverage factors, combined uncertainty, degrees of
//! freedom.

use super::distribution::{two_sided_normal, two_sided_t};

/// The coverage factor k of a two-sided interval: Student's t, or the normal distribution's without degrees of
/// freedom. A part of a degree is cut off, which is on the safe side (JCGM 100, G.4.1), and one degree is the
/// least. NaN for a coverage outside 0 to 1.
#[must_use]
pub fn factor(coverage: f64, freedom: Option<f64>) -> f64 {
    let factor = match freedom {
        None => two_sided_normal(coverage),
        Some(freedom) => two_sided_t(coverage, freedom.floor().max(1.0)),
    };
    factor.unwrap_or(f64::NAN)
}

/// One input's part in a combined uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contribution {
    /// c·u: sensitivity times standard uncertainty, with its sign.
    pub part: f64,
    /// Degrees of freedom of u; `None` where it is taken to be exactly known.
    pub freedom: Option<f64>,
}

/// A combined uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Combined {
    /// Combined standard uncertainty, u_c = √Σ(c·u)².
    pub standard: f64,
    /// Effective degrees of freedom ν_eff = u_c⁴/Σ((c·u)⁴/ν); `None` where they are without limit.
    pub freedom: Option<f64>,
}

/// Combines the parts of inputs that are independent of each other.
///
/// Source: JCGM 100, equations 11a and G.2b (Welch-Satterthwaite).
#[must_use]
pub fn combine(parts: &[Contribution]) -> Combined {
    let variance: f64 = parts.iter().map(|part| part.part * part.part).sum();
    let standard = variance.sqrt();
    // Shares first, so that nothing of the fourth power can leave the range of numbers.
    let share = |part: &Contribution| if standard > 0.0 { (part.part / standard).powi(2) } else { 0.0 };
    let unsure: f64 = parts.iter().filter_map(|part| part.freedom.map(|freedom| share(part).powi(2) / freedom)).sum();
    Combined { standard, freedom: (unsure > 0.0).then(|| 1.0 / unsure) }
}
