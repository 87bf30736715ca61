//! From standard uncertainties to an interval: coverage factors, combined uncertainty, degrees of
//! freedom.

use crate::domain::line::student;

/// The share of its possible values that an interval is to hold.
pub const COVERAGE: f64 = 0.95;

/// The normal distribution's two-sided factor for 95 %.
///
/// Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.5.
const NORMAL_95: f64 = 1.959_963_984_540_054;

/// More degrees of freedom than the table of Student's distribution holds are taken as this many.
const MOST: f64 = 10_000.0;

/// The coverage factor k of a two-sided interval: Student's, or the normal distribution's without
/// degrees of freedom. A part of a degree is cut off, which is on the safe side (JCGM 100, G.4.1).
///
/// For a coverage other than 95 % and no degrees of freedom, Student's with 10 000 stands in for the
/// normal distribution; the difference is below 0.02 %.
#[must_use]
pub fn factor(coverage: f64, freedom: Option<f64>) -> f64 {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped just before")]
    let whole = freedom.map(|freedom| freedom.floor().clamp(1.0, MOST) as u32);
    match whole {
        None if (coverage - COVERAGE).abs() < 1e-12 => NORMAL_95,
        None => student::two_sided(coverage, MOST as u32).unwrap_or(f64::NAN),
        Some(freedom) => student::two_sided(coverage, freedom).unwrap_or(f64::NAN),
    }
}

/// One input's part in a combined uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Part {
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
pub fn combine(parts: &[Part]) -> Combined {
    let variance: f64 = parts.iter().map(|part| part.part * part.part).sum();
    let standard = variance.sqrt();
    // Shares first, so that nothing of the fourth power can leave the range of numbers.
    let share = |part: &Part| if standard > 0.0 { (part.part / standard).powi(2) } else { 0.0 };
    let unsure: f64 = parts.iter().filter_map(|part| part.freedom.map(|freedom| share(part).powi(2) / freedom)).sum();
    Combined { standard, freedom: (unsure > 0.0).then(|| 1.0 / unsure) }
}
