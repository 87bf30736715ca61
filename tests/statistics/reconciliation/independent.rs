//! Nonlinear and partly unmeasured systems against an independent computation.

use super::kkt;
use super::network::{CONSTRAINTS, SOME_ERRORS, TRUTH, balances, measured, problem};
use approx::assert_relative_eq;
use haulm::statistics::reconciliation::{Equations, LinearConstraints, Problem, Quantity, Status};
use nalgebra::DMatrix;

/// Source: Newton's method on the Lagrange conditions and its finite differences (`kkt.rs`).
fn agrees(problem: &Problem) {
    let equations = Equations::new(CONSTRAINTS, balances);
    let result = problem.reconcile(&equations).unwrap();
    let values = kkt::solve(&problem.quantities, &equations);
    let uncertainties = kkt::uncertainties(&problem.quantities, &equations);
    for ((found, value), uncertainty) in result.quantities.iter().zip(values).zip(uncertainties) {
        let found = found.estimate.unwrap();
        assert_relative_eq!(found.value, value, max_relative = 1e-8);
        // The estimate is linear in the readings only nearly: curvature moves the differences a little.
        assert_relative_eq!(found.uncertainty, uncertainty, max_relative = 0.02);
    }
}

#[test]
fn bilinear_balances() {
    agrees(&problem(&SOME_ERRORS));
}

#[test]
fn bilinear_balances_without_some_readings() {
    let mut problem = problem(&SOME_ERRORS);
    // A flow, a fraction and the density, each from a start that is well off.
    problem.quantities[1] = Quantity::Unmeasured { start: 2500.0 };
    problem.quantities[8] = Quantity::Unmeasured { start: 0.5 };
    problem.quantities[14] = Quantity::Unmeasured { start: 900.0 };
    agrees(&problem);
    let result = problem.reconcile(&Equations::new(CONSTRAINTS, balances)).unwrap();
    assert_eq!(result.global.unwrap().degrees_of_freedom, CONSTRAINTS - 3);
    assert!([1, 8, 14].iter().all(|at| result.quantities[*at].status == Status::Inferred));
    // Volume and density are in one constraint only: without the density nothing checks the volume.
    assert_eq!(result.quantities[15].status, Status::Unchecked);
    assert_eq!(result.quantities[15].reading.unwrap().test, None);
}

/// The linearised uncertainty is that of the estimates: 400 simulated sets.
#[test]
fn uncertainty_is_the_scatter_of_the_estimates() {
    use super::simulation::normal_errors;
    let equations = Equations::new(CONSTRAINTS, balances);
    let result = problem(&[0.0; 16]).reconcile(&equations).unwrap();
    let mut squares = [0.0; 16];
    const SETS: usize = 400;
    for errors in normal_errors(7).take(SETS) {
        let found = problem(&errors).reconcile(&equations).unwrap();
        for ((square, found), truth) in squares.iter_mut().zip(&found.quantities).zip(TRUTH) {
            *square += (found.estimate.unwrap().value - truth).powi(2);
        }
    }
    for (square, quantity) in squares.into_iter().zip(&result.quantities) {
        let scatter = (square / SETS as f64).sqrt();
        // 1/√(2·400) is 3.5 %; four times that.
        assert_relative_eq!(scatter, quantity.estimate.unwrap().uncertainty, max_relative = 0.14);
    }
}

/// A figure of several quantities: the correlations that the balances bring about count. By hand: a + b = c, each
/// read with an uncertainty of one; the reconciled sum a + b is c, whose variance is 2/3.
#[test]
fn uncertainty_of_a_derived_figure() {
    let balance = LinearConstraints::homogeneous(DMatrix::from_row_slice(1, 3, &[1.0, 1.0, -1.0]));
    let result = Problem::new(measured(&[1.0, 2.0, 3.3], &[1.0; 3])).reconcile(&balance).unwrap();
    assert_relative_eq!(result.uncertainty_of(&[1.0, 1.0, 0.0]).unwrap(), (2.0_f64 / 3.0).sqrt(), epsilon = 1e-12);
    assert!(result.uncertainty_of(&[1.0, 1.0, -1.0]).unwrap() < 1e-12);
    assert_eq!(result.uncertainty_of(&[1.0]), None);
}

/// Strong curvature: a side from an area, from a start fifty times too large.
#[test]
fn step_control_brings_a_bad_start_home() {
    let square = Equations::new(1, |x, residuals| residuals[0] = x[0] * x[0] * x[0] - x[1]);
    let problem =
        Problem::new(vec![Quantity::Unmeasured { start: 100.0 }, Quantity::Measured { value: 8.0, uncertainty: 0.1 }]);
    let result = problem.reconcile(&square).unwrap();
    assert_relative_eq!(result.quantities[0].estimate.unwrap().value, 2.0, max_relative = 1e-9);
    // d(∛y)/dy = 1/12 at 8.
    assert_relative_eq!(result.quantities[0].estimate.unwrap().uncertainty, 0.1 / 12.0, max_relative = 1e-9);
    assert_eq!(result.global, None);
}

/// What is not observable is said to be so, and what a constraint alone fixes has no uncertainty.
#[test]
fn observability() {
    // x₀ + x₁ = x₂ and x₃ = 5, x₀ and x₁ not measured.
    let constraints = Equations::new(2, |x, residuals| {
        residuals[0] = x[0] + x[1] - x[2];
        residuals[1] = x[3] - 5.0;
    });
    let start = Quantity::Unmeasured { start: 1.0 };
    let reading = Quantity::Measured { value: 3.0, uncertainty: 0.1 };
    let result = Problem::new(vec![start, start, reading, start]).reconcile(&constraints).unwrap();
    let status: Vec<Status> = result.quantities.iter().map(|quantity| quantity.status).collect();
    assert_eq!(status, [Status::NotObservable, Status::NotObservable, Status::Unchecked, Status::Inferred]);
    assert_eq!(result.quantities[0].estimate, None);
    let fixed = result.quantities[3].estimate.unwrap();
    assert_relative_eq!(fixed.value, 5.0, max_relative = 1e-12);
    assert!(fixed.uncertainty < 1e-12);
    assert_eq!(result.uncertainty_of(&[1.0, 0.0, 0.0, 0.0]), None);
}
