//! Which reading is named, and with which others.

use super::network::{CONSTRAINTS, SOME_ERRORS, balances, measured, problem};
use super::simulation::named;
use approx::assert_relative_eq;
use haulm::statistics::reconciliation::{
    CandidateReading, Diagnosis, Equations, LinearConstraints, Problem, Quantity, TestConclusion,
};
use nalgebra::DMatrix;

fn diagnose(problem: &Problem) -> Diagnosis {
    problem.diagnose(&Equations::new(CONSTRAINTS, balances), &[]).unwrap()
}

/// a + b = c and c = d: an error of c shows in both balances, errors of a and b show alike.
fn chain() -> LinearConstraints {
    LinearConstraints::homogeneous(DMatrix::from_row_slice(2, 4, &[1., 1., -1., 0., 0., 0., 1., -1.]))
}

#[test]
fn readings_that_show_alike_are_named_together() {
    let problem = Problem::new(measured(&[10.0, 28.0, 30.0, 30.0], &[1.0; 4]));
    let candidates = [
        // The balances say that already.
        CandidateReading { quantity: 3, uncertainty: 0.5 },
        CandidateReading { quantity: 0, uncertainty: 1.0 },
        CandidateReading { quantity: 0, uncertainty: 0.1 },
        // Nothing to go by.
        CandidateReading { quantity: 0, uncertainty: f64::NAN },
        CandidateReading { quantity: 17, uncertainty: 1.0 },
    ];
    let TestConclusion::Suspects { errors, without } = problem.diagnose(&chain(), &candidates).unwrap().verdict else {
        panic!("no suspect")
    };
    assert_eq!(errors.len(), 1);
    let suspects: Vec<usize> = errors[0].suspects.iter().map(|suspect| suspect.quantity).collect();
    assert_eq!(suspects, [0, 1]);
    // Either reads 8 more than the rest says: 30 from c and d with ½ variance, less the other one.
    for suspect in &errors[0].suspects {
        assert_relative_eq!(suspect.error, 8.0, max_relative = 1e-9);
        assert_relative_eq!(suspect.uncertainty, 2.5_f64.sqrt(), max_relative = 1e-9);
        assert_eq!(suspect.without.unwrap().degrees_of_freedom, 1);
    }
    assert!(without.is_consistent());
    let extra: Vec<usize> = errors[0].extra_readings.iter().map(|extra| extra.candidate).collect();
    assert_eq!(extra, [2, 1], "a second reading of one of the two, the better one first");
    // By hand, for the reading of 0.1: without a the rest has a = 2 ± √1.5 and reads 2 ± 0.1; without b it has a = 10 ± 1
    // against 2 ± 0.1, if a is the one that errs by 8.
    assert_relative_eq!(errors[0].extra_readings[0].expected_difference, 64.0 / 1.01, max_relative = 1e-9);
}

#[test]
fn one_constraint_alone_accuses_all_its_readings() {
    let sum = LinearConstraints::homogeneous(DMatrix::from_row_slice(1, 3, &[1.0, 1.0, -1.0]));
    let problem = Problem::new(measured(&[10.0, 20.0, 40.0], &[1.0; 3]));
    let TestConclusion::Suspects { errors, .. } = problem.diagnose(&sum, &[]).unwrap().verdict else {
        panic!("no suspect")
    };
    let suspects: Vec<usize> = errors[0].suspects.iter().map(|suspect| suspect.quantity).collect();
    assert_eq!(suspects, [0, 1, 2]);
    assert!(errors[0].suspects.iter().all(|suspect| suspect.without.is_none()));
}

#[test]
fn a_large_error_is_measured() {
    let mut errors = SOME_ERRORS;
    errors[5] = 25.0;
    let TestConclusion::Suspects { errors, .. } = diagnose(&problem(&errors)).verdict else { panic!("no suspect") };
    assert_eq!(errors.len(), 1);
    let suspect = errors[0].suspects[0];
    assert_eq!(suspect.quantity, 5);
    assert!((suspect.error - 25.0 * 90.0).abs() < 3.0 * suspect.uncertainty, "{suspect:?}");
    assert!(errors[0].rivals.is_empty(), "{:?}", errors[0].rivals);
}

#[test]
fn two_and_three_errors_are_found_together() {
    for wrong in [&[0, 12][..], &[5, 9], &[2, 12, 15]] {
        let mut errors = SOME_ERRORS;
        for (at, index) in wrong.iter().enumerate() {
            errors[*index] = if at % 2 == 0 { 18.0 } else { -18.0 };
        }
        let diagnosis = diagnose(&problem(&errors));
        let (suspects, all) = named(&diagnosis);
        let TestConclusion::Suspects { errors, without } = &diagnosis.verdict else { panic!("no suspect: {wrong:?}") };
        assert!(wrong.iter().all(|index| all.contains(index)), "{wrong:?}: {suspects:?}, with rivals {all:?}");
        assert_eq!(errors.len(), wrong.len(), "{wrong:?}: {suspects:?}");
        assert!(without.is_consistent());
    }
}

#[test]
fn errors_everywhere_stay_unexplained() {
    let errors: [f64; 16] = std::array::from_fn(|at| if at % 2 == 0 { 30.0 } else { -30.0 });
    let diagnosis = diagnose(&problem(&errors));
    let TestConclusion::Unexplained { tried } = diagnosis.verdict else { panic!("{:?}", diagnosis.verdict) };
    assert!(!tried.is_empty());
}

#[test]
fn an_unchecked_reading_is_never_accused() {
    let mut problem = problem(&SOME_ERRORS);
    problem.quantities[14] = Quantity::Unmeasured { start: 1200.0 };
    // The volume stands alone now: an error of it cannot show.
    problem.quantities[15] = Quantity::Measured { value: 20.0, uncertainty: 0.075 };
    assert_eq!(diagnose(&problem).verdict, TestConclusion::Consistent);
}

/// Of two readings that explain the data alike the one is named first that has to err by less of its uncertainty: the
/// coarser one.
#[test]
fn the_coarser_of_two_alike_is_named_first() {
    for (first, uncertainties) in [(0, [3.0, 1.0, 1.0, 1.0]), (1, [1.0, 3.0, 1.0, 1.0])] {
        let problem = Problem::new(measured(&[10.0, 40.0, 30.0, 30.0], &uncertainties));
        let TestConclusion::Suspects { errors, without } = problem.diagnose(&chain(), &[]).unwrap().verdict else {
            panic!("no suspect")
        };
        let suspects: Vec<usize> = errors[0].suspects.iter().map(|suspect| suspect.quantity).collect();
        assert_eq!(suspects, [first, 1 - first]);
        assert_relative_eq!(errors[0].suspects[0].error_in_uncertainties, 20.0 / 3.0, max_relative = 1e-9);
        assert_eq!(without.quantities[first].reading, None);
    }
}
