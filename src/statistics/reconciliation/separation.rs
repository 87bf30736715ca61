//! Which extra reading would separate two suspects.

use super::result::{ErrorSpace, Reconciliation};
use super::subspace::{PARALLEL, sine_squared};
use nalgebra::DVector;

/// A reading that could be made in addition.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CandidateReading {
    /// The quantity. A second, independent reading of one that is measured already may be meant.
    pub quantity: usize,
    /// Standard uncertainty that the reading would have.
    pub uncertainty: f64,
}

/// How far an extra reading would separate suspects.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ExtraReading {
    /// Its place in the list of candidates.
    pub candidate: usize,
    /// The quantity.
    pub quantity: usize,
    /// By how much χ² would be lower without the reading that errs than without any other suspect, on average, if the
    /// first suspect errs as it seems to. Above four it decides, as a rule.
    pub expected_difference: f64,
}

/// The candidates that separate the reading at the first place from all `others`, the best first. `left_out` are
/// readings that are suspected besides.
pub(super) fn extra_readings(
    all: &Reconciliation,
    candidates: &[CandidateReading],
    first: usize,
    error: f64,
    others: &[usize],
    left_out: &[usize],
) -> Vec<ExtraReading> {
    let separates = |(at, candidate): (usize, &CandidateReading)| {
        let known = all.quantities.get(candidate.quantity)?.estimate.is_some();
        let usable = known && candidate.uncertainty.is_finite() && candidate.uncertainty > 0.0;
        let extended = Extended { basis: &all.basis, candidate, left_out };
        let signature = extended.signature(first)?;
        let strength = (error * signature.norm()).powi(2);
        let difference = others
            .iter()
            .filter_map(|other| Some(strength * sine_squared(&signature, &extended.signature(*other)?)))
            .fold(f64::INFINITY, f64::min);
        let expected_difference = difference;
        (usable && difference.is_finite() && difference > PARALLEL * strength).then_some(ExtraReading {
            candidate: at,
            quantity: candidate.quantity,
            expected_difference,
        })
    };
    let mut found: Vec<ExtraReading> = candidates.iter().enumerate().filter_map(separates).collect();
    found.sort_by(|a, b| b.expected_difference.total_cmp(&a.expected_difference));
    found
}

/// The scores with those of an extra reading.
struct Extended<'a> {
    basis: &'a ErrorSpace,
    candidate: &'a CandidateReading,
    left_out: &'a [usize],
}

impl Extended<'_> {
    /// What an error of one in the reading of a quantity adds to the scores, apart from what the readings left out
    /// would make up for.
    fn signature(&self, quantity: usize) -> Option<DVector<f64>> {
        let mut signature = self.raw(quantity)?;
        let mut directions: Vec<DVector<f64>> = Vec::new();
        for left_out in self.left_out {
            let mut direction = self.raw(*left_out)?;
            for earlier in &directions {
                direction.axpy(-direction.dot(earlier), earlier, 1.0);
            }
            directions.extend(direction.try_normalize(0.0));
        }
        for direction in &directions {
            signature.axpy(-signature.dot(direction), direction, 1.0);
        }
        (signature.norm() > 0.0).then_some(signature)
    }

    fn raw(&self, quantity: usize) -> Option<DVector<f64>> {
        let place = self.basis.measured.iter().position(|index| *index == quantity)?;
        let spread = self.basis.uncertainty(self.candidate.quantity).hypot(self.candidate.uncertainty);
        let last = -self.basis.sensitivities[(self.candidate.quantity, place)] / spread;
        let signature = self.basis.signatures.column(place).into_owned();
        let places = signature.len();
        Some(signature.insert_row(places, last))
    }
}
