//! Tail of the F distribution of Fisher and Snedecor, for whole degrees of freedom.
//!
//! Own code beside [`student`](crate::domain::line::student), for the same reason: with whole degrees
//! the distribution is a finite sum, exact, and small in the download. A test compares it with `statrs`.

/// More degrees than this are taken as this many.
const MOST: u32 = 2_000;

/// P(F > f) at ν₁ and ν₂ degrees of freedom: how often chance alone gives so large a ratio. `None` without
/// degrees of freedom, for a negative f, and when not a number; 0 at infinity.
///
/// The tail is the incomplete beta function I_x(a, b) with a = ν₂/2, b = ν₁/2, x = ν₂/(ν₂ + ν₁·f). It
/// begins at a half or one, where it has a closed form, and is raised by one at a time:
/// I_x(a+1, b) = I_x(a, b) − x^a·(1−x)^b/(a·B(a, b)) and I_x(a, b+1) = I_x(a, b) + x^a·(1−x)^b/(b·B(a, b)).
/// Absolute error below 1e-12.
///
/// Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.5.15, 26.5.16 and 26.6.2.
#[must_use]
pub fn beyond(f: f64, above: u32, below: u32) -> Option<f64> {
    if above == 0 || below == 0 || f < 0.0 || f.is_nan() {
        return None;
    }
    let (above, below) = (above.min(MOST), below.min(MOST));
    if f.is_infinite() {
        return Some(0.0);
    }
    let ratio = f64::from(above) / f64::from(below) * f;
    let (x, rest) = (1.0 / (1.0 + ratio), ratio / (1.0 + ratio));
    let start = |freedom: u32| if freedom.is_multiple_of(2) { 1.0 } else { 0.5 };
    let (mut a, mut b): (f64, f64) = (start(below), start(above));
    // The closed form, and x^a·(1−x)^b/B(a, b) of it.
    let (mut tail, mut term) = match (a < 1.0, b < 1.0) {
        (true, true) => {
            let angle = x.sqrt().atan2(rest.sqrt());
            (std::f64::consts::FRAC_2_PI * angle, (x * rest).sqrt() / std::f64::consts::PI)
        }
        (true, false) => (x.sqrt(), x.sqrt() * rest / 2.0),
        (false, true) => (x / (1.0 + rest.sqrt()), x * rest.sqrt() / 2.0),
        (false, false) => (x, x * rest),
    };
    // The sum of b first: while a is small nothing cancels.
    while b < f64::from(above) / 2.0 {
        tail += term / b;
        term *= rest * (a + b) / b;
        b += 1.0;
    }
    while a < f64::from(below) / 2.0 {
        tail -= term / a;
        term *= x * (a + b) / a;
        a += 1.0;
    }
    Some(tail.clamp(0.0, 1.0))
}
