//! The reconciled quantities.

use super::error::ReconciliationError;
use super::hypothesis::{GlobalTest, MeasurementTest, critical_value};
use super::linearisation::Linearisation;
use super::problem::{Measurements, Problem, Quantity};
use nalgebra::{DMatrix, DVector};

/// What the constraints say of a quantity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Status {
    /// Measured, and the other readings check it.
    Checked,
    /// Measured, and nothing checks it: its error would not show.
    Unchecked,
    /// Not measured, but determined by the readings.
    Inferred,
    /// Neither measured nor determined.
    NotObservable,
}

/// The best estimate of a quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    /// Its value.
    pub value: f64,
    /// Its standard uncertainty, never above that of the reading.
    pub uncertainty: f64,
}

/// What became of a reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ReadingResult {
    /// As read.
    pub value: f64,
    /// Its standard uncertainty.
    pub uncertainty: f64,
    /// Reconciled value less reading.
    pub adjustment: f64,
    /// The same in standard uncertainties of the reading.
    pub adjustment_in_uncertainties: f64,
    /// By how many of its own standard deviations the test statistic moves when the reading errs by one standard
    /// uncertainty, between 0 and 1; 0 for an unchecked reading. An error of three over this shows as three.
    pub detectability: f64,
    /// The test of the reading; `None` where nothing checks it.
    pub test: Option<MeasurementTest>,
}

/// One quantity after reconciliation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reconciled {
    /// What the constraints say of it.
    pub status: Status,
    /// Its best estimate; `None` where it is not observable.
    pub estimate: Option<Estimate>,
    /// Its reading; `None` where it was not measured.
    pub reading: Option<ReadingResult>,
}

/// The reconciled state.
#[derive(Debug, Clone, PartialEq)]
pub struct Reconciliation {
    /// The quantities, in the order of the problem.
    pub quantities: Vec<Reconciled>,
    /// The global test; `None` where nothing is checked.
    pub global: Option<GlobalTest>,
    /// Linearisations that it took.
    pub iterations: usize,
    pub(super) basis: ErrorSpace,
}

/// What the diagnosis goes on from: the readings' errors in the space of the independent constraints.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct ErrorSpace {
    /// Quantity of each reading.
    pub measured: Vec<usize>,
    /// Whether anything checks it.
    pub checked: Vec<bool>,
    /// What an error of one in a reading adds to the scores, a column a reading.
    pub signatures: DMatrix<f64>,
    /// Independent and of unit variance where only chance is at work.
    pub scores: DVector<f64>,
    /// Change of each reconciled quantity per independent error of unit variance, a row a quantity.
    pub deviations: DMatrix<f64>,
    /// Change of each reconciled quantity per change of each reading.
    pub sensitivities: DMatrix<f64>,
}

impl ErrorSpace {
    fn new(problem: &Problem, readings: &Measurements, linear: &Linearisation) -> Self {
        let whitened = &linear.whitened;
        let kept = DMatrix::identity(whitened.ncols(), whitened.ncols()) - whitened.tr_mul(whitened);
        let mut deviations = DMatrix::zeros(problem.quantities.len(), whitened.ncols());
        for (row, index) in (&readings.factor * &kept).row_iter().zip(&readings.measured) {
            deviations.row_mut(*index).copy_from(&row);
        }
        for (row, index) in (linear.unmeasured_response(readings) * &kept).row_iter().zip(&readings.unmeasured) {
            deviations.row_mut(*index).copy_from(&row);
        }
        Self {
            measured: readings.measured.clone(),
            checked: linear.checked.clone(),
            signatures: -readings.per_reading(whitened.clone()),
            scores: linear.scores.clone(),
            sensitivities: readings.per_reading(deviations.clone()),
            deviations,
        }
    }

    /// Standard uncertainty of a reconciled quantity.
    pub(super) fn uncertainty(&self, quantity: usize) -> f64 {
        self.deviations.row(quantity).norm()
    }
}

impl Reconciliation {
    pub(super) fn new(
        problem: &Problem,
        readings: &Measurements,
        linear: &Linearisation,
        x: &[f64],
        iterations: usize,
    ) -> Result<Self, ReconciliationError> {
        let basis = ErrorSpace::new(problem, readings, linear);
        let critical = critical_value(problem.level, basis.checked.iter().filter(|checked| **checked).count());
        let mut quantities: Vec<Reconciled> = x
            .iter()
            .enumerate()
            .map(|(index, value)| {
                let estimate = Some(Estimate { value: *value, uncertainty: basis.uncertainty(index) });
                Reconciled { status: Status::Inferred, estimate, reading: None }
            })
            .collect();
        for (index, observable) in readings.unmeasured.iter().zip(linear.observable()) {
            if !observable {
                quantities[*index] = Reconciled { status: Status::NotObservable, estimate: None, reading: None };
            }
        }
        for (place, index) in readings.measured.iter().enumerate() {
            let Quantity::Measured { value, uncertainty } = problem.quantities[*index] else { continue };
            let signature = basis.signatures.column(place);
            let strength = signature.norm();
            let checked = basis.checked[place] && strength > 0.0;
            let test = checked
                .then(|| MeasurementTest { statistic: (signature.dot(&basis.scores) / strength).abs(), critical });
            let adjustment = x[*index] - value;
            quantities[*index].status = if checked { Status::Checked } else { Status::Unchecked };
            quantities[*index].reading = Some(ReadingResult {
                value,
                uncertainty,
                adjustment,
                adjustment_in_uncertainties: adjustment / uncertainty,
                detectability: if checked { strength * uncertainty } else { 0.0 },
                test,
            });
        }
        let chi_squared = basis.scores.norm_squared();
        let global = GlobalTest::new(chi_squared, basis.scores.len(), problem.level);
        let result = Self { quantities, global, iterations, basis };
        match result.overflow() {
            Some(quantity) => Err(ReconciliationError::NotFinite { quantity }),
            None => Ok(result),
        }
    }

    /// The first quantity whose result has left the range of numbers.
    fn overflow(&self) -> Option<usize> {
        self.quantities.iter().position(|quantity| {
            let estimate = quantity.estimate.map_or([0.0; 2], |estimate| [estimate.value, estimate.uncertainty]);
            let reading = quantity.reading.map_or([0.0; 3], |reading| {
                let statistic = reading.test.map_or(0.0, |test| test.statistic);
                [reading.adjustment_in_uncertainties, reading.detectability, statistic]
            });
            !estimate.iter().chain(&reading).all(|figure| figure.is_finite())
        })
    }

    /// Standard uncertainty of a figure whose derivatives by the quantities are `gradient`, with all correlations
    /// that reconciliation brings about. `None` where it needs a quantity that is not observable, or where there is
    /// not one derivative a quantity.
    #[must_use]
    pub fn uncertainty_of(&self, gradient: &[f64]) -> Option<f64> {
        let known =
            self.quantities.iter().zip(gradient).all(|(found, slope)| found.estimate.is_some() || *slope == 0.0);
        (known && gradient.len() == self.quantities.len())
            .then(|| self.basis.deviations.tr_mul(&DVector::from_column_slice(gradient)).norm())
    }

    /// Whether the global test passes, or there is nothing to test.
    #[must_use]
    pub fn is_consistent(&self) -> bool {
        self.global.is_none_or(|test| test.passes())
    }

    pub(super) fn degrees_of_freedom(&self) -> usize {
        self.basis.scores.len()
    }
}
