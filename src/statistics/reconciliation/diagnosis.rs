//! Which readings explain an inconsistency.
//!
//! Where the global test fails, the reading is left out without which χ² is least; if no single one makes the rest
//! consistent, the best pair, and after that one at a time (serial elimination). Each step is confirmed by
//! reconciling anew, so that nonlinear constraints and large errors are treated exactly. A reading that turns out to
//! be needless on the list is put back. Readings whose errors show alike are named together.

use super::constraints::Constraints;
use super::error::ReconciliationError;
use super::hypothesis::{GlobalTest, chi_squared_limit};
use super::problem::{Problem, Quantity};
use super::result::Reconciliation;
use super::separation::{CandidateReading, ExtraReading, extra_readings};
use super::subspace::Signatures;

/// Most gross errors that are named. Where more readings have to be left out, the uncertainties or the constraints are
/// in doubt rather than the readings.
const MOST_ERRORS: usize = 3;

/// What the readings say together.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnosis {
    /// All readings reconciled.
    pub all: Reconciliation,
    /// What follows.
    pub verdict: TestConclusion,
}

/// What follows from the global test.
#[derive(Debug, Clone, PartialEq)]
pub enum TestConclusion {
    /// No constraint checks any reading.
    NothingChecked,
    /// The readings agree within their uncertainties.
    Consistent,
    /// The readings agree once some of them are left out.
    Suspects {
        /// One entry for each gross error.
        errors: Vec<GrossError>,
        /// The rest, reconciled without the first suspect of each.
        without: Box<Reconciliation>,
    },
    /// The readings disagree, and no few of them explain it: an uncertainty or a constraint is wrong, or the rest
    /// does not check itself any more.
    Unexplained {
        /// The quantities whose readings were left out in vain.
        tried: Vec<usize>,
    },
}

/// One gross error and the readings that may have it.
#[derive(Debug, Clone, PartialEq)]
pub struct GrossError {
    /// The likeliest reading, then those that no data of these instruments can tell from it, in the order of their
    /// errors in uncertainties. All explain the data equally well.
    pub suspects: Vec<SuspectReading>,
    /// Readings that explain these data nearly as well: χ² without them is higher by less than chance would
    /// make it.
    pub rivals: Vec<SuspectReading>,
    /// Candidates that would separate the first from all other suspects and rivals, the best first; empty where it
    /// stands alone.
    pub extra_readings: Vec<ExtraReading>,
}

/// A reading that may be wrong.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SuspectReading {
    /// The quantity that it reads.
    pub quantity: usize,
    /// Reading less the value that the rest gives.
    pub error: f64,
    /// The same in standard uncertainties of the reading. Where it is far larger than any instrument errs, or leads to
    /// a value that cannot be, the caller can rule the suspect out.
    pub error_in_uncertainties: f64,
    /// Standard uncertainty of the error.
    pub uncertainty: f64,
    /// The global test without it; `None` where nothing is checked any more.
    pub without: Option<GlobalTest>,
}

impl Problem {
    /// Reconciles, and where the global test fails looks for the readings whose removal makes the rest consistent.
    /// `candidates` are extra readings that could be made; those that separate the suspects come back with the result.
    ///
    /// # Errors
    /// As for [`Self::reconcile`] with all readings.
    pub fn diagnose<C: Constraints>(
        &self,
        constraints: &C,
        candidates: &[CandidateReading],
    ) -> Result<Diagnosis, ReconciliationError> {
        diagnose(self, constraints, candidates)
    }

    /// The same without some readings, whose quantities start from `at`.
    fn without(&self, removed: &[usize], at: &Reconciliation) -> Self {
        let mut problem = self.clone();
        for index in removed {
            if let (Some(quantity), Some(found)) = (problem.quantities.get_mut(*index), at.quantities.get(*index))
                && let (Quantity::Measured { value, .. }, estimate) = (*quantity, found.estimate)
            {
                *quantity = Quantity::Unmeasured { start: estimate.map_or(value, |estimate| estimate.value) };
            }
        }
        problem.correlations.retain(|pair| !removed.contains(&pair.first) && !removed.contains(&pair.second));
        problem
    }
}

fn diagnose<C: Constraints>(
    problem: &Problem,
    constraints: &C,
    candidates: &[CandidateReading],
) -> Result<Diagnosis, ReconciliationError> {
    let all = problem.reconcile(constraints)?;
    let verdict = match all.global {
        None => TestConclusion::NothingChecked,
        Some(test) if test.passes() => TestConclusion::Consistent,
        Some(_) => Search { problem, constraints, all: &all }.verdict(candidates),
    };
    Ok(Diagnosis { all, verdict })
}

struct Search<'a, C> {
    problem: &'a Problem,
    constraints: &'a C,
    all: &'a Reconciliation,
}

impl<C: Constraints> Search<'_, C> {
    fn verdict(&self, candidates: &[CandidateReading]) -> TestConclusion {
        let mut left_out = Vec::new();
        let mut present = self.all.clone();
        while !present.is_consistent() {
            let next = next_to_leave_out(&present, self.problem.level);
            let freedom = present.degrees_of_freedom();
            left_out.extend(&next);
            // Several errors are explained by a rest that still checks itself only.
            let few = left_out.len() <= MOST_ERRORS;
            let enough = freedom > next.len() || (freedom == 1 && left_out.len() == 1);
            let reconciled = self.without(&left_out).filter(|_| few && enough && !next.is_empty());
            match reconciled {
                Some(reconciled) => present = reconciled,
                None => return TestConclusion::Unexplained { tried: left_out },
            }
        }
        self.put_back(&mut left_out, &mut present);
        let errors = left_out.iter().map(|quantity| self.gross_error(*quantity, &left_out, candidates)).collect();
        TestConclusion::Suspects { errors, without: Box::new(present) }
    }

    fn without(&self, left_out: &[usize]) -> Option<Reconciliation> {
        self.problem.without(left_out, self.all).reconcile(self.constraints).ok()
    }

    /// Puts readings back that the rest is consistent with.
    fn put_back(&self, left_out: &mut Vec<usize>, present: &mut Reconciliation) {
        for quantity in left_out.clone() {
            let fewer: Vec<usize> = left_out.iter().copied().filter(|other| *other != quantity).collect();
            if fewer.is_empty() {
                return;
            }
            if let Some(consistent) = self.without(&fewer).filter(Reconciliation::is_consistent) {
                *present = consistent;
                *left_out = fewer;
            }
        }
    }

    fn gross_error(&self, quantity: usize, left_out: &[usize], candidates: &[CandidateReading]) -> GrossError {
        let signatures = Signatures::new(&self.all.basis);
        let place_of = |quantity: &usize| signatures.quantities.iter().position(|index| index == quantity);
        let besides: Vec<usize> = left_out.iter().copied().filter(|other| *other != quantity).collect();
        let places: Vec<usize> = besides.iter().filter_map(place_of).collect();
        let signatures = signatures.without(&places);
        let mut found = GrossError {
            suspects: self.suspect(quantity, &besides).into_iter().collect(),
            rivals: Vec::new(),
            extra_readings: Vec::new(),
        };
        let Some(first) = place_of(&quantity) else { return found };
        let nearly = chi_squared_limit(self.problem.level, 1);
        for (place, other) in signatures.quantities.iter().enumerate() {
            if *other == quantity || besides.contains(other) {
                continue;
            }
            if signatures.parallel(first, place) {
                found.suspects.extend(self.suspect(*other, &besides));
            } else if signatures.statistic(first).powi(2) - signatures.statistic(place).powi(2) <= nearly {
                let consistent = |rival: &SuspectReading| rival.without.is_none_or(|test| test.passes());
                found.rivals.extend(self.suspect(*other, &besides).filter(consistent));
            }
        }
        let smaller = |a: &SuspectReading, b: &SuspectReading| {
            a.error_in_uncertainties.abs().total_cmp(&b.error_in_uncertainties.abs())
        };
        if let Some((_, others)) = found.suspects.split_first_mut() {
            others.sort_by(smaller);
        }
        found.rivals.sort_by(smaller);
        let others: Vec<usize> =
            found.suspects.iter().skip(1).chain(&found.rivals).map(|suspect| suspect.quantity).collect();
        if let Some(suspect) = found.suspects.first() {
            found.extra_readings = extra_readings(self.all, candidates, quantity, suspect.error, &others, &besides);
        }
        found
    }

    /// What is wrong with a reading if it is this one, besides those that are left out anyway.
    fn suspect(&self, quantity: usize, besides: &[usize]) -> Option<SuspectReading> {
        let left_out: Vec<usize> = besides.iter().copied().chain([quantity]).collect();
        let rest = self.without(&left_out)?;
        let reading = self.all.quantities.get(quantity)?.reading?;
        let estimate = rest.quantities.get(quantity)?.estimate?;
        let error = reading.value - estimate.value;
        Some(SuspectReading {
            quantity,
            error,
            error_in_uncertainties: error / reading.uncertainty,
            uncertainty: reading.uncertainty.hypot(estimate.uncertainty),
            without: rest.global,
        })
    }
}

/// The reading, or the two, without which the rest should be consistent; otherwise the one that helps most.
fn next_to_leave_out(present: &Reconciliation, level: f64) -> Vec<usize> {
    let signatures = Signatures::new(&present.basis);
    let places = signatures.quantities.len();
    let freedom = present.degrees_of_freedom();
    let total = signatures.scores.norm_squared();
    // Equal statistics differ by rounding. Of readings that explain the data alike the one is taken whose error is the
    // smallest part of its uncertainty.
    let better = |new: f64, old: f64| new > old * (1.0 + 1e-9);
    let shows = |place: usize| {
        let reading = present.quantities.get(signatures.quantities[place]).and_then(|quantity| quantity.reading);
        reading.map_or(0.0, |reading| reading.detectability)
    };
    let best = |signatures: &Signatures, from: usize| {
        (from..places).map(|place| (place, signatures.statistic(place))).fold(
            None,
            |best: Option<(usize, f64)>, next| {
                let keeps = |best: &(usize, f64)| {
                    better(best.1, next.1) || (!better(next.1, best.1) && !better(shows(next.0), shows(best.0)))
                };
                best.filter(keeps).or(Some(next))
            },
        )
    };
    let Some((single, statistic)) = best(&signatures, 0) else { return Vec::new() };
    let quantity = |place: usize| signatures.quantities[place];
    if total - statistic.powi(2) <= chi_squared_limit(level, freedom - 1) || freedom < 3 {
        return vec![quantity(single)];
    }
    let pair = (0..places)
        .filter_map(|first| {
            let rest = signatures.without(&[first]);
            let (second, statistic) = best(&rest, first + 1)?;
            Some((first, second, rest.scores.norm_squared() - statistic.powi(2)))
        })
        .fold(None, |best: Option<(usize, usize, f64)>, next| {
            best.filter(|best| !better(best.2, next.2)).or(Some(next))
        });
    match pair {
        Some((first, second, rest)) if rest <= chi_squared_limit(level, freedom - 2) => {
            vec![quantity(first), quantity(second)]
        }
        _ => vec![quantity(single)],
    }
}
