//! What holds for all readings.

use super::network::{CONSTRAINTS, TRUTH, UNCERTAINTIES, balances, measured, problem};
use haulm::statistics::reconciliation::{Constraints, Equations, LinearConstraints, Problem, Quantity, Reconciliation};
use nalgebra::{DMatrix, DVector};
use proptest::prelude::*;

fn reconcile(problem: &Problem) -> Reconciliation {
    problem.reconcile(&Equations::new(CONSTRAINTS, balances)).unwrap()
}

fn values(result: &Reconciliation) -> Vec<f64> {
    result.quantities.iter().map(|quantity| quantity.estimate.unwrap().value).collect()
}

/// Errors of a few standard uncertainties, now and then a gross one.
fn errors() -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec(prop_oneof![9 => -3.0..3.0_f64, 1 => -15.0..15.0_f64], 16)
}

/// Which readings are left out: without any two of these the network is determined.
fn left_out() -> impl Strategy<Value = Vec<usize>> {
    prop::sample::subsequence(vec![0, 1, 2, 3, 5, 8, 9, 12, 14], 0..=2)
}

fn leave_out(problem: &mut Problem, left_out: &[usize]) {
    for index in left_out {
        problem.quantities[*index] = Quantity::Unmeasured { start: TRUTH[*index] * 1.2 };
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn constraints_hold_to_1e_9(errors in errors(), left_out in left_out()) {
        let mut problem = problem(&errors);
        leave_out(&mut problem, &left_out);
        let x = values(&reconcile(&problem));
        let mut residuals = DVector::zeros(CONSTRAINTS);
        let mut jacobian = DMatrix::zeros(CONSTRAINTS, x.len());
        Equations::new(CONSTRAINTS, balances).evaluate(&x, &mut residuals, &mut jacobian);
        for row in 0..CONSTRAINTS {
            let terms: f64 = x.iter().enumerate().map(|(at, x)| (x * jacobian[(row, at)]).abs()).sum();
            prop_assert!(residuals[row].abs() <= 1e-9 * terms, "constraint {row}: {}", residuals[row]);
        }
    }

    #[test]
    fn no_uncertainty_grows(errors in errors(), left_out in left_out()) {
        let mut problem = problem(&errors);
        leave_out(&mut problem, &left_out);
        for quantity in reconcile(&problem).quantities {
            if let Some(reading) = quantity.reading {
                prop_assert!(quantity.estimate.unwrap().uncertainty <= reading.uncertainty * (1.0 + 1e-12));
                prop_assert!((0.0..=1.0 + 1e-12).contains(&reading.detectability));
            }
        }
    }

    #[test]
    fn perfect_data_is_unchanged(scale in 0.1..10.0_f64, share in 0.2..0.8_f64, left_out in left_out()) {
        // Any state that satisfies the balances: scaled, and split differently.
        let (a, b, g) = (6000.0 * scale, 4000.0 * scale, 2000.0 * scale);
        let c = a + b;
        let (d, e) = (c * share, c - c * share);
        let f = d + g;
        let mixed = (a * 0.1 + b * 0.3) / c;
        let product = (d * mixed + g * 0.6) / f;
        let state = [a, b, c, d, e, f, g, 0.1, 0.3, mixed, mixed, mixed, product, 0.6, 1200.0, f / 1200.0];
        let mut problem = Problem::new(measured(&state, &UNCERTAINTIES));
        leave_out(&mut problem, &left_out);
        let result = reconcile(&problem);
        for (found, expected) in values(&result).into_iter().zip(state) {
            prop_assert!((found - expected).abs() <= 1e-9 * expected, "{found} for {expected}");
        }
        prop_assert!(result.global.unwrap().chi_squared < 1e-12);
    }

    #[test]
    fn a_reading_of_great_weight_stays(errors in errors(), at in 0_usize..16) {
        let mut problem = problem(&errors);
        let Quantity::Measured { value, .. } = problem.quantities[at] else { unreachable!() };
        problem.quantities[at] = Quantity::Measured { value, uncertainty: UNCERTAINTIES[at] * 1e-7 };
        let result = reconcile(&problem);
        let found = result.quantities[at];
        prop_assert!((found.estimate.unwrap().value - value).abs() <= 1e-5 * UNCERTAINTIES[at]);
        // It is as well checked as before.
        prop_assert!(found.reading.unwrap().test.is_some());
    }

    #[test]
    fn order_changes_nothing(errors in errors(), order in Just((0..16).collect::<Vec<usize>>()).prop_shuffle()) {
        let plain = problem(&errors);
        let shuffled = Problem::new(order.iter().map(|index| plain.quantities[*index]).collect());
        let place: Vec<usize> = (0..16).map(|index| order.iter().position(|at| *at == index).unwrap()).collect();
        let equations = Equations::new(CONSTRAINTS, |x, residuals| {
            let x: Vec<_> = place.iter().map(|at| x[*at]).collect();
            balances(&x, residuals);
        });
        let (one, other) = (reconcile(&plain), shuffled.reconcile(&equations).unwrap());
        for (at, index) in order.iter().enumerate() {
            let (one, other) = (one.quantities[*index], other.quantities[at]);
            let (a, b) = (one.estimate.unwrap(), other.estimate.unwrap());
            prop_assert!((a.value - b.value).abs() <= 1e-9 * a.value);
            prop_assert!((a.uncertainty - b.uncertainty).abs() <= 1e-7 * a.uncertainty);
            let (a, b) = (one.reading.unwrap().test.unwrap(), other.reading.unwrap().test.unwrap());
            prop_assert!((a.statistic - b.statistic).abs() <= 1e-6 * (1.0 + a.statistic));
        }
    }

    /// Nothing a caller brings may panic.
    #[test]
    fn any_numbers_give_an_answer(
        quantities in prop::collection::vec((any::<f64>(), any::<f64>(), any::<bool>()), 0..6),
        matrix in prop::collection::vec(prop_oneof![4 => -2.0..2.0_f64, 1 => any::<f64>(), 2 => Just(0.0)], 36),
        rows in 0_usize..6,
    ) {
        let problem = Problem::new(quantities.iter().map(|(value, uncertainty, measured)| match measured {
            true => Quantity::Measured { value: *value, uncertainty: uncertainty.abs() },
            false => Quantity::Unmeasured { start: *value },
        }).collect());
        let columns = quantities.len();
        let matrix = DMatrix::from_iterator(rows, columns, matrix.into_iter().cycle().take(rows * columns));
        if let Ok(found) = problem.diagnose(&LinearConstraints::homogeneous(matrix), &[]) {
            for quantity in found.all.quantities {
                prop_assert!(quantity.estimate.is_none_or(|e| e.value.is_finite() && e.uncertainty.is_finite()));
            }
        }
    }
}
