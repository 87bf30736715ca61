//! The same least squares by another way: Newton's method on the Lagrange conditions, with the whole matrix of
//! weights, derivatives and multipliers solved by LU decomposition. No projection, no scaling, no step control.

use haulm::statistics::reconciliation::{Constraints, Quantity};
use nalgebra::{DMatrix, DVector};

/// Reconciled values; unmeasured quantities must be observable.
pub fn solve(quantities: &[Quantity], constraints: &impl Constraints) -> Vec<f64> {
    let (n, m) = (quantities.len(), constraints.count());
    let start = |quantity: &Quantity| match *quantity {
        Quantity::Measured { value, .. } => value,
        Quantity::Unmeasured { start } => start,
    };
    let readings: Vec<f64> = quantities.iter().map(start).collect();
    let mut x = readings.clone();
    for _ in 0..40 {
        let mut residuals = DVector::zeros(m);
        let mut jacobian = DMatrix::zeros(m, n);
        constraints.evaluate(&x, &mut residuals, &mut jacobian);
        let mut matrix = DMatrix::zeros(n + m, n + m);
        let mut right = DVector::zeros(n + m);
        for (at, quantity) in quantities.iter().enumerate() {
            if let Quantity::Measured { value, uncertainty } = *quantity {
                matrix[(at, at)] = 1.0 / (uncertainty * uncertainty);
                right[at] = (value - x[at]) / (uncertainty * uncertainty);
            }
        }
        matrix.view_mut((n, 0), (m, n)).copy_from(&jacobian);
        matrix.view_mut((0, n), (n, m)).copy_from(&jacobian.transpose());
        right.rows_mut(n, m).copy_from(&-residuals);
        let step = matrix.full_piv_lu().solve(&right).expect("the network determines every quantity");
        for (x, step) in x.iter_mut().zip(step.iter()) {
            *x += step;
        }
    }
    x
}

/// Standard uncertainties by central differences of [`solve`] in each reading.
pub fn uncertainties(quantities: &[Quantity], constraints: &impl Constraints) -> Vec<f64> {
    let mut squares = vec![0.0; quantities.len()];
    for at in 0..quantities.len() {
        let Quantity::Measured { value, uncertainty } = quantities[at] else { continue };
        let moved = |by: f64| {
            let mut quantities = quantities.to_vec();
            quantities[at] = Quantity::Measured { value: value + by * uncertainty, uncertainty };
            solve(&quantities, constraints)
        };
        const STEP: f64 = 1e-3;
        for ((square, up), down) in squares.iter_mut().zip(moved(STEP)).zip(moved(-STEP)) {
            *square += ((up - down) / (2.0 * STEP)).powi(2);
        }
    }
    squares.into_iter().map(f64::sqrt).collect()
}
