//! Whether the first-order method and Monte Carlo agree, and why not (JCGM 101, clause 8).

use crate::domain::compare::uncertainty::budget::Budget;
use crate::domain::compare::uncertainty::input_uncertainty::Shape;
use crate::domain::compare::uncertainty::study::Study;
use crate::statistics::draws::DrawSummary;

/// Why both methods differ.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DisagreementCause {
    /// So large a share of the draws is at the figure's bound, such as a water dose that cannot be below
    /// zero: there the figure no longer follows its inputs.
    AtBound(f64),
    /// So many draws were left out, for a number would have been outside what physics allows.
    LeftOut(usize),
    /// The figure does not change in proportion to its inputs over so wide a range: mean or standard
    /// deviation of the draws differ from the first-order value.
    Curved,
    /// Mean and standard deviation agree, but the draws are not distributed normally: one source with a
    /// rectangular distribution outweighs the others.
    Rectangular,
    /// Few degrees of freedom: the two methods treat them in different ways, and neither is the better.
    FewDegrees,
}

/// Both methods compared.
#[derive(Debug, Clone, PartialEq)]
pub struct Agreement {
    /// The numerical tolerance δ: half of the last of the digits that u_c is stated with.
    pub tolerance: f64,
    /// |y − U − low|: what lies between the lower ends of both intervals.
    pub low: f64,
    /// |y + U − high|: what lies between the upper ends.
    pub high: f64,
    /// Whether both are within the tolerance.
    pub agree: bool,
    /// Whether the draws are too few to judge: their own noise is larger than a third of the tolerance.
    pub noisy: bool,
    /// Why not, the likeliest reason first; empty where they agree.
    pub why: Vec<DisagreementCause>,
}

/// δ = ½·10^l where u = c·10^l and c has `digits` whole digits (JCGM 101, 7.9.2). Zero for an u of zero.
///
/// 32 nm with two digits: ½ nm; with one (3·10¹ nm): 5 nm.
#[must_use]
pub fn tolerance(standard: f64, digits: u8) -> f64 {
    if !(standard > 0.0 && standard.is_finite()) {
        return 0.0;
    }
    let digits = i32::from(digits.max(1));
    // Rounding may carry: 9.97 with two digits is 10, and so 10 with l = 0.
    let first = standard.log10().floor();
    let last = first as i32 - (digits - 1);
    let carried = (standard / 10.0_f64.powi(last)).round() >= 10.0_f64.powi(digits);
    0.5 * 10.0_f64.powi(if carried { last + 1 } else { last })
}

/// Compares the intervals of both methods, with u_c stated to `digits` significant digits: one as a
/// rule, for two take a million draws (JCGM 101, 8.2).
#[must_use]
pub fn compare(study: &Study, budget: &Budget, summary: &DrawSummary, digits: u8) -> Agreement {
    // A figure at its bound has no first-order uncertainty: its draws say how wide it is.
    let tolerance = tolerance(if budget.standard > 0.0 { budget.standard } else { summary.standard }, digits);
    let low = (budget.value - budget.expanded - summary.low).abs();
    let high = (budget.value + budget.expanded - summary.high).abs();
    let agree = low <= tolerance && high <= tolerance;
    let noisy = summary.low_error.max(summary.high_error) > tolerance / 3.0;
    let why = if agree { Vec::new() } else { reasons(study, budget, summary) };
    Agreement { tolerance, low, high, agree, noisy, why }
}

/// Whether a figure is exact: by either method nothing that is uncertain acts on it. A figure at a bound, such as a water
/// dose of zero, is not: first order gives ± 0 there, and the draws do not.
#[must_use]
pub fn is_exact(budget: &Budget, summary: Option<&DrawSummary>, size: f64) -> bool {
    let nothing = |standard: f64| standard <= 1e-9 * size.abs();
    nothing(budget.standard) && summary.is_none_or(|summary| nothing(summary.standard))
}

/// Whether a figure is at a bound for so many of its draws that its distribution is one-sided there.
#[must_use]
pub fn is_at_bound(summary: &DrawSummary) -> bool {
    summary.held > HELD && summary.standard > 0.0
}

/// Less than this share of the draws held at the lowest changes no end of an interval.
const HELD: f64 = 1e-3;

fn reasons(study: &Study, budget: &Budget, summary: &DrawSummary) -> Vec<DisagreementCause> {
    let mut why = Vec::new();
    if summary.held > HELD {
        why.push(DisagreementCause::AtBound(summary.held));
    }
    if summary.left_out > 0 {
        why.push(DisagreementCause::LeftOut(summary.left_out));
    }
    let few = budget.freedom.is_some_and(|freedom| freedom < 50.0);
    // The mean of the draws wavers with u/√n; its standard deviation by 1/√(2n).
    let noise = 1.0 / (summary.draws as f64).sqrt();
    if budget.standard <= 0.0 {
        return if why.is_empty() { vec![DisagreementCause::Curved] } else { why };
    }
    let shifted = (summary.mean - budget.value).abs() > budget.standard * (4.0 * noise).max(0.02);
    let wider = (summary.standard / budget.standard - 1.0).abs() > (4.0 * noise).max(0.02);
    // With few degrees of freedom Student's distribution itself is wider than its scale.
    if shifted || (wider && !few) {
        why.push(DisagreementCause::Curved);
    }
    let rectangular = budget.shares.first().is_some_and(|share| {
        share.share > 0.3 && study.sources.get(share.source).is_some_and(|(shape, _)| *shape == Shape::Rectangular)
    });
    if rectangular {
        why.push(DisagreementCause::Rectangular);
    }
    if few {
        why.push(DisagreementCause::FewDegrees);
    }
    if why.is_empty() {
        why.push(DisagreementCause::Curved);
    }
    why
}
