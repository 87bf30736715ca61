//! What cannot be reconciled says why.

use super::network::measured;
use haulm::statistics::reconciliation::{
    Correlation, Equations, LinearConstraints, Problem, Quantity, ReconciliationError, TestConclusion,
};
use nalgebra::{DMatrix, DVector};

fn sum() -> LinearConstraints {
    LinearConstraints::homogeneous(DMatrix::from_row_slice(1, 3, &[1.0, 1.0, -1.0]))
}

#[test]
fn readings_that_are_no_numbers() {
    for (value, uncertainty) in [(f64::NAN, 1.0), (1.0, f64::NAN), (f64::INFINITY, 1.0), (1.0, f64::INFINITY)] {
        let mut quantities = measured(&[1.0, 2.0, 3.0], &[1.0; 3]);
        quantities[1] = Quantity::Measured { value, uncertainty };
        let error = Problem::new(quantities).reconcile(&sum()).unwrap_err();
        assert_eq!(error, ReconciliationError::NotFinite { quantity: 1 });
    }
    let mut quantities = measured(&[1.0, 2.0, 3.0], &[1.0; 3]);
    quantities[2] = Quantity::Unmeasured { start: f64::NAN };
    let error = Problem::new(quantities).reconcile(&sum()).unwrap_err();
    assert_eq!(error, ReconciliationError::NotFinite { quantity: 2 });
}

#[test]
fn uncertainties_of_zero() {
    for uncertainty in [0.0, -1.0] {
        let error = Problem::new(measured(&[1.0, 2.0, 3.0], &[1.0, uncertainty, 1.0])).reconcile(&sum()).unwrap_err();
        assert_eq!(error, ReconciliationError::NoUncertainty { quantity: 1 });
    }
}

#[test]
fn levels_and_shapes() {
    let mut problem = Problem::new(measured(&[1.0, 2.0, 3.0], &[1.0; 3]));
    for level in [0.0, 1.0, f64::NAN] {
        problem.level = level;
        assert_eq!(problem.reconcile(&sum()).unwrap_err(), ReconciliationError::Level);
    }
    let problem = Problem::new(measured(&[1.0, 2.0], &[1.0; 2]));
    assert_eq!(problem.reconcile(&sum()).unwrap_err(), ReconciliationError::Shape);
    let one_row = LinearConstraints::new(DMatrix::zeros(1, 2), DVector::zeros(2));
    assert_eq!(one_row.unwrap_err(), ReconciliationError::Shape);
}

#[test]
fn correlations_that_no_readings_have() {
    let mut quantities = measured(&[1.0, 2.0, 3.0], &[1.0; 3]);
    quantities.push(Quantity::Unmeasured { start: 0.0 });
    let sum = LinearConstraints::homogeneous(DMatrix::from_row_slice(1, 4, &[1.0, 1.0, -1.0, 0.0]));
    let pair = |first, second, coefficient| Correlation { first, second, coefficient };
    let wrong = [
        vec![pair(0, 3, 0.5)],
        vec![pair(0, 9, 0.5)],
        vec![pair(1, 1, 0.5)],
        vec![pair(0, 1, 1.5)],
        vec![pair(0, 1, f64::NAN)],
        // Each possible, all together not.
        vec![pair(0, 1, 0.9), pair(1, 2, 0.9), pair(0, 2, -0.9)],
    ];
    for correlations in wrong {
        let mut problem = Problem::new(quantities.clone());
        problem.correlations = correlations;
        assert_eq!(problem.reconcile(&sum).unwrap_err(), ReconciliationError::Correlation);
    }
}

#[test]
fn constraints_that_contradict_each_other() {
    // x₀ = 1 and x₀ = 2.
    let both =
        LinearConstraints::new(DMatrix::from_row_slice(2, 1, &[1.0, 1.0]), DVector::from_row_slice(&[-1.0, -2.0]));
    let error = Problem::new(measured(&[1.5], &[1.0])).reconcile(&both.unwrap()).unwrap_err();
    assert!(matches!(error, ReconciliationError::Inconsistent { .. }), "{error}");
    // The same of a quantity that is not measured.
    let both =
        LinearConstraints::new(DMatrix::from_row_slice(2, 1, &[1.0, 1.0]), DVector::from_row_slice(&[-1.0, -2.0]));
    let error = Problem::new(vec![Quantity::Unmeasured { start: 0.0 }]).reconcile(&both.unwrap()).unwrap_err();
    assert!(matches!(error, ReconciliationError::Inconsistent { .. }), "{error}");
    // A constraint without quantities.
    let empty = LinearConstraints::new(DMatrix::zeros(1, 1), DVector::from_row_slice(&[1.0])).unwrap();
    let error = Problem::new(measured(&[1.5], &[1.0])).reconcile(&empty).unwrap_err();
    assert!(matches!(error, ReconciliationError::Inconsistent { constraint: 0 }), "{error}");
}

#[test]
fn constraints_that_say_the_same_twice() {
    let twice = LinearConstraints::homogeneous(DMatrix::from_row_slice(2, 3, &[1.0, 1.0, -1.0, 2.0, 2.0, -2.0]));
    let problem = Problem::new(measured(&[1.0, 2.0, 3.3], &[1.0; 3]));
    let (once, twice) = (problem.reconcile(&sum()).unwrap(), problem.reconcile(&twice).unwrap());
    assert_eq!(twice.global.unwrap().degrees_of_freedom, 1);
    for (one, two) in once.quantities.iter().zip(&twice.quantities) {
        approx::assert_relative_eq!(one.estimate.unwrap().value, two.estimate.unwrap().value, max_relative = 1e-12);
    }
}

#[test]
fn constraints_that_no_numbers_satisfy() {
    // x² = −1.
    let never = Equations::new(1, |x, residuals| residuals[0] = x[0] * x[0] + 1.0);
    let error = Problem::new(measured(&[3.0], &[1.0])).reconcile(&never).unwrap_err();
    let known = matches!(error, ReconciliationError::NotConverged { .. } | ReconciliationError::Inconsistent { .. });
    assert!(known, "{error}");
    // 1/x at zero.
    let inverse = Equations::new(1, |x, residuals| residuals[0] = x[1] / x[0] - 1.0);
    let error = Problem::new(measured(&[0.0, 1.0], &[1.0; 2])).reconcile(&inverse).unwrap_err();
    assert_eq!(error, ReconciliationError::ConstraintNotFinite { constraint: 0 });
}

#[test]
fn nothing_to_check() {
    let none = LinearConstraints::homogeneous(DMatrix::zeros(0, 2));
    let result = Problem::new(measured(&[1.0, 2.0], &[1.0; 2])).diagnose(&none, &[]).unwrap();
    assert_eq!(result.verdict, TestConclusion::NothingChecked);
    approx::assert_relative_eq!(result.all.quantities[0].estimate.unwrap().value, 1.0);
    let empty = Problem::new(Vec::new()).reconcile(&LinearConstraints::homogeneous(DMatrix::zeros(0, 0))).unwrap();
    assert!(empty.quantities.is_empty());
}

#[test]
fn every_error_says_what_it_is() {
    let errors = [
        ReconciliationError::NotFinite { quantity: 3 },
        ReconciliationError::NoUncertainty { quantity: 3 },
        ReconciliationError::ConstraintNotFinite { constraint: 3 },
        ReconciliationError::Inconsistent { constraint: 3 },
        ReconciliationError::NotConverged { iterations: 3, residual: 0.5 },
    ];
    for error in errors {
        assert!(error.to_string().contains('3'), "{error}");
    }
}
