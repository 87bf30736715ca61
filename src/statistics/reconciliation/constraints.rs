//! What the quantities have to satisfy.

use super::error::ReconciliationError;
use nalgebra::{DMatrix, DVector};
use num_dual::Dual64;
use std::fmt;

/// Constraints f(x) = 0.
pub trait Constraints {
    /// How many there are.
    fn count(&self) -> usize;

    /// Whether they can be evaluated for this many quantities.
    fn fits(&self, quantities: usize) -> bool;

    /// Writes f(x) and the exact derivatives ∂f/∂x, a row a constraint. Every element is written.
    fn evaluate(&self, x: &[f64], residuals: &mut DVector<f64>, jacobian: &mut DMatrix<f64>);
}

/// Linear constraints M·x + c = 0.
#[derive(Debug, Clone, PartialEq)]
pub struct LinearConstraints {
    matrix: DMatrix<f64>,
    constants: DVector<f64>,
}

impl LinearConstraints {
    /// M·x + c = 0.
    ///
    /// # Errors
    /// [`ReconciliationError::Shape`] if there is not one constant a row.
    pub fn new(matrix: DMatrix<f64>, constants: DVector<f64>) -> Result<Self, ReconciliationError> {
        if matrix.nrows() == constants.len() { Ok(Self { matrix, constants }) } else { Err(ReconciliationError::Shape) }
    }

    /// M·x = 0, as balances are.
    #[must_use]
    pub fn homogeneous(matrix: DMatrix<f64>) -> Self {
        let constants = DVector::zeros(matrix.nrows());
        Self { matrix, constants }
    }
}

impl Constraints for LinearConstraints {
    fn count(&self) -> usize {
        self.matrix.nrows()
    }

    fn fits(&self, quantities: usize) -> bool {
        self.matrix.ncols() == quantities
    }

    fn evaluate(&self, x: &[f64], residuals: &mut DVector<f64>, jacobian: &mut DMatrix<f64>) {
        for (at, residual) in residuals.iter_mut().enumerate() {
            *residual = self.constants[at] + x.iter().enumerate().map(|(j, x)| self.matrix[(at, j)] * x).sum::<f64>();
        }
        jacobian.copy_from(&self.matrix);
    }
}

/// Constraints given as a function, whose derivatives are found exactly by dual numbers.
pub struct Equations<F> {
    count: usize,
    function: F,
}

impl<F: Fn(&[Dual64], &mut [Dual64])> Equations<F> {
    /// `function` writes `count` residuals for the quantities it is given. It has to index no further than there
    /// are quantities.
    #[must_use]
    pub const fn new(count: usize, function: F) -> Self {
        Self { count, function }
    }
}

impl<F> fmt::Debug for Equations<F> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Equations").field("count", &self.count).finish_non_exhaustive()
    }
}

impl<F: Fn(&[Dual64], &mut [Dual64])> Constraints for Equations<F> {
    fn count(&self) -> usize {
        self.count
    }

    fn fits(&self, _: usize) -> bool {
        true
    }

    fn evaluate(&self, x: &[f64], residuals: &mut DVector<f64>, jacobian: &mut DMatrix<f64>) {
        let mut point: Vec<Dual64> = x.iter().map(|x| Dual64::from_re(*x)).collect();
        let mut out = vec![Dual64::from_re(0.0); self.count];
        if point.is_empty() {
            (self.function)(&point, &mut out);
        }
        for at in 0..point.len() {
            point[at].eps = 1.0;
            (self.function)(&point, &mut out);
            point[at].eps = 0.0;
            for (row, residual) in out.iter().enumerate() {
                jacobian[(row, at)] = residual.eps;
            }
        }
        for (row, residual) in out.iter().enumerate() {
            residuals[row] = residual.re;
        }
    }
}
