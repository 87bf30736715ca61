//! Readings and what is asked of them.

use super::error::ReconciliationError;
use nalgebra::{Cholesky, DMatrix};

/// One quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Quantity {
    /// It was read.
    Measured {
        /// The reading.
        value: f64,
        /// Its standard uncertainty, above zero.
        uncertainty: f64,
    },
    /// It was not read.
    Unmeasured {
        /// Where the iteration starts. Nonlinear constraints need a plausible one.
        start: f64,
    },
}

/// Two readings whose errors go together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Correlation {
    /// One quantity.
    pub first: usize,
    /// The other.
    pub second: usize,
    /// The coefficient of correlation, between −1 and 1.
    pub coefficient: f64,
}

/// Readings to be reconciled.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// The quantities, named by their index.
    pub quantities: Vec<Quantity>,
    /// Readings that are not independent; all others are.
    pub correlations: Vec<Correlation>,
    /// Level of the tests, 0.95 as a rule: one consistent set in twenty fails the global test.
    pub level: f64,
}

/// The measured quantities with the factor of their covariance.
#[derive(Debug)]
pub(super) struct Measurements {
    /// Which quantities are measured.
    pub measured: Vec<usize>,
    /// Which are not.
    pub unmeasured: Vec<usize>,
    /// L with L·Lᵀ = covariance of the readings.
    pub factor: DMatrix<f64>,
    /// Whether L is diagonal.
    pub independent: bool,
}

impl Measurements {
    /// M·L: derivatives by the readings as derivatives by adjustments of unit variance.
    pub(super) fn in_unit_variance(&self, mut matrix: DMatrix<f64>) -> DMatrix<f64> {
        if !self.independent {
            return matrix * &self.factor;
        }
        for (at, mut column) in matrix.column_iter_mut().enumerate() {
            column *= self.factor[(at, at)];
        }
        matrix
    }

    /// M·L⁻¹, the reverse.
    pub(super) fn per_reading(&self, mut matrix: DMatrix<f64>) -> DMatrix<f64> {
        if self.independent {
            for (at, mut column) in matrix.column_iter_mut().enumerate() {
                column /= self.factor[(at, at)];
            }
            return matrix;
        }
        // The diagonal of the factor has no zeros.
        let solved = self.factor.tr_solve_lower_triangular(&matrix.transpose());
        solved.map_or_else(|| DMatrix::zeros(matrix.nrows(), matrix.ncols()), |solved| solved.transpose())
    }
}

impl Problem {
    /// Independent readings, tested at 95 %.
    #[must_use]
    pub const fn new(quantities: Vec<Quantity>) -> Self {
        Self { quantities, correlations: Vec::new(), level: 0.95 }
    }

    pub(super) fn readings(&self) -> Result<Measurements, ReconciliationError> {
        if !(self.level > 0.0 && self.level < 1.0) {
            return Err(ReconciliationError::Level);
        }
        let (mut measured, mut unmeasured, mut sd) = (Vec::new(), Vec::new(), Vec::new());
        for (index, quantity) in self.quantities.iter().enumerate() {
            match *quantity {
                Quantity::Measured { value, uncertainty } if value.is_finite() && uncertainty.is_finite() => {
                    if uncertainty <= 0.0 {
                        return Err(ReconciliationError::NoUncertainty { quantity: index });
                    }
                    measured.push(index);
                    sd.push(uncertainty);
                }
                Quantity::Unmeasured { start } if start.is_finite() => unmeasured.push(index),
                _ => return Err(ReconciliationError::NotFinite { quantity: index }),
            }
        }
        let factor = self.factor(&measured, &sd)?;
        Ok(Measurements { measured, unmeasured, factor, independent: self.correlations.is_empty() })
    }

    fn factor(&self, measured: &[usize], sd: &[f64]) -> Result<DMatrix<f64>, ReconciliationError> {
        let mut factor = DMatrix::identity(sd.len(), sd.len());
        if !self.correlations.is_empty() {
            for pair in &self.correlations {
                let place = |quantity| measured.iter().position(|index| *index == quantity);
                let (Some(first), Some(second)) = (place(pair.first), place(pair.second)) else {
                    return Err(ReconciliationError::Correlation);
                };
                if first == second || !pair.coefficient.is_finite() {
                    return Err(ReconciliationError::Correlation);
                }
                factor[(first, second)] = pair.coefficient;
                factor[(second, first)] = pair.coefficient;
            }
            factor = Cholesky::new(factor).ok_or(ReconciliationError::Correlation)?.l();
        }
        for (row, sd) in sd.iter().enumerate() {
            factor.row_mut(row).scale_mut(*sd);
        }
        Ok(factor)
    }
}
