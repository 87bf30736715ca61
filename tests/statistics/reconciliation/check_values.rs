//! Published examples.

use super::network::measured;
use approx::assert_abs_diff_eq;
use haulm::statistics::reconciliation::{
    Correlation, LinearConstraints, Problem, Quantity, Reconciliation, Status, TestConclusion,
};
use nalgebra::DMatrix;

fn values(result: &Reconciliation) -> Vec<f64> {
    result.quantities.iter().map(|quantity| quantity.estimate.unwrap().value).collect()
}

/// Streams 1 = 2 + 3, 2 = 4, 3 = 5, 4 + 5 = 6.
fn exchanger() -> LinearConstraints {
    LinearConstraints::homogeneous(DMatrix::from_row_slice(
        4,
        6,
        &[
            1., -1., -1., 0., 0., 0., //
            0., 1., 0., -1., 0., 0., //
            0., 0., 1., 0., -1., 0., //
            0., 0., 0., 1., 1., -1.,
        ],
    ))
}

/// Source: Narasimhan and Jordache, *Data Reconciliation and Gross Error Detection* (2000), chapter 1: heat
/// exchanger with bypass. The data from memory, the results computed anew.
#[test]
fn heat_exchanger_with_bypass() {
    let problem = Problem::new(measured(&[101.91, 64.45, 34.65, 64.20, 36.44, 98.88], &[1.0; 6]));
    let result = problem.diagnose(&exchanger(), &[]).unwrap();
    for (found, expected) in values(&result.all).into_iter().zip([100.22, 64.50, 35.72, 64.50, 35.72, 100.22]) {
        assert_abs_diff_eq!(found, expected, epsilon = 0.005);
    }
    let global = result.all.global.unwrap();
    assert_abs_diff_eq!(global.chi_squared, 6.4075, epsilon = 5e-5);
    assert_eq!(global.degrees_of_freedom, 4);
    assert_eq!(result.verdict, TestConclusion::Consistent);
    assert!(result.all.quantities.iter().all(|quantity| quantity.status == Status::Checked));
}

/// Source: as above, chapter 7, the second stream with an error of 4. The critical value of the global test is
/// χ²(0.95, 4) = 9.488 of any table. The book's 2.638 for the measurement test is that of Bonferroni,
/// Φ⁻¹(1 − 0.05/12); after Šidák it is Φ⁻¹(1 − (1 − 0.95^(1/6))/2) = 2.6310.
#[test]
fn heat_exchanger_with_an_error_in_the_second_stream() {
    let problem = Problem::new(measured(&[101.91, 68.45, 34.65, 64.20, 36.44, 98.88], &[1.0; 6]));
    let result = problem.diagnose(&exchanger(), &[]).unwrap();
    for (found, expected) in values(&result.all).into_iter().zip([100.8867, 65.8333, 35.0533]) {
        assert_abs_diff_eq!(found, expected, epsilon = 5e-5);
    }
    let global = result.all.global.unwrap();
    assert_abs_diff_eq!(global.chi_squared, 16.674, epsilon = 5e-4);
    assert_abs_diff_eq!(global.critical, 9.488, epsilon = 5e-4);
    assert!(!global.passes());
    let second = result.all.quantities[1].reading.unwrap().test.unwrap();
    assert_abs_diff_eq!(second.statistic, 3.2047, epsilon = 5e-5);
    assert_abs_diff_eq!(second.critical, 2.6310, epsilon = 5e-5);
    assert!(second.statistic > 2.638);
    let TestConclusion::Suspects { errors, without } = result.verdict else { panic!("no suspect") };
    assert_eq!(errors.len(), 1);
    assert_eq!(errors[0].suspects.len(), 1);
    assert_eq!(errors[0].suspects[0].quantity, 1);
    // Linear: leaving it out takes the square of its statistic off χ².
    assert_abs_diff_eq!(without.global.unwrap().chi_squared, 16.674 - 3.2047 * 3.2047, epsilon = 1e-3);
}

/// The balances of a steam cycle: feed water, steam and condensate flows in kg/s; four of the sums are not measured.
fn steam_cycle() -> LinearConstraints {
    LinearConstraints::homogeneous(DMatrix::from_row_slice(
        7,
        15,
        &[
            1., 1., 0., 0., -0.2, 0., 0., 0., 0., 0., 0., -1., 0., 0., 0., //
            0., 0., 1., 1., -0.6, 0., 0., 0., 0., 0., 0., 0., -1., 0., 0., //
            0., 0., 0., 0., 0.4, 1., 1., 1., 1., 0., 0., 0., 0., -1., 0., //
            0., 0., 0., 0., 0., 0., 1., 1., 1., 0., 0., 0., 0., 0., -1., //
            0., 0., 0., 0., 0., 0., 0., 0., 0., 0., 0., 1., -1., 0., 0., //
            0., 0., 0., 0., 0., 0., 0., 0., 0., 0., 0., 0., 1., -1., 0., //
            0., 0., 0., 0., 0., 0., 0., 0., 0., -1., 0., 0., 0., 0., 1.,
        ],
    ))
}

const STEAM_READINGS: [f64; 11] = [46.241, 45.668, 44.575, 44.319, 0.525, 69.978, 10.364, 3.744, 4.391, 18.498, 2.092];

/// The guideline's uncertainties are half widths of 95 % intervals; what is asserted scales with them.
fn steam_problem(half_widths: &[f64]) -> Problem {
    let mut quantities = measured(&STEAM_READINGS, half_widths);
    quantities.extend([Quantity::Unmeasured { start: 0.0 }; 4]);
    Problem::new(quantities)
}

/// Example after VDI 2048 part 1 (2000); the guideline itself was not at hand. Expected values computed independently, to
/// 40 digits: the sums that are not measured put in by their definitions, then x − V·Aᵀ·(A·V·Aᵀ)⁻¹·A·x for independent readings.
#[test]
fn steam_cycle_with_independent_readings() {
    let half_widths = [2.5, 2.5, 0.535, 0.532, 0.105, 0.854, 0.168, 0.058, 0.058, 0.205, 0.272];
    let result = steam_problem(&half_widths).reconcile(&steam_cycle()).unwrap();
    let expected = [
        (44.691_789_620_715_0, 1.789_914_865_236_142),
        (44.118_789_620_715_0, 1.789_914_865_236_142),
        (44.638_483_482_051_0, 0.471_702_154_572_810),
        (44.381_773_513_927_8, 0.469_807_647_622_300),
        (0.524_194_386_371_8, 0.104_563_414_416_259),
        (69.997_019_054_053_5, 0.566_796_107_844_524),
        (10.364_035_171_433_4, 0.133_016_477_672_196),
        (3.744_004_192_060_0, 0.056_695_687_785_580),
        (4.391_004_192_060_0, 0.056_695_687_785_580),
        (18.499_043_555_553_5, 0.137_121_983_224_189),
        (2.092, 0.272),
    ];
    for (quantity, (value, uncertainty)) in result.quantities.iter().zip(expected) {
        let found = quantity.estimate.unwrap();
        approx::assert_relative_eq!(found.value, value, max_relative = 1e-10);
        approx::assert_relative_eq!(found.uncertainty, uncertainty, max_relative = 1e-10);
    }
    assert_eq!(result.global.unwrap().degrees_of_freedom, 3);
    // The last reading is in no balance.
    assert_eq!(result.quantities[10].status, Status::Unchecked);
    assert!(result.quantities[11..].iter().all(|sum| sum.status == Status::Inferred));
}

/// As above, feed water known better and with correlations of 0.2 and 0.4. Expected values computed in the same way, V with
/// the covariances.
#[test]
fn steam_cycle_with_correlated_readings() {
    let half_widths = [0.8, 0.79, 0.535, 0.532, 0.105, 0.854, 0.168, 0.058, 0.058, 0.205, 0.272];
    let mut problem = steam_problem(&half_widths);
    problem.correlations = vec![
        Correlation { first: 0, second: 1, coefficient: 0.2 },
        Correlation { first: 2, second: 3, coefficient: 0.4 },
    ];
    let result = problem.reconcile(&steam_cycle()).unwrap();
    let values = [
        44.9644892064291,
        44.4179721417342,
        44.9259040471917,
        44.6670964499405,
        0.526347872422335,
        70.553060829315,
        10.3757829833265,
        3.74540440603423,
        4.39240440603423,
        18.5135917953949,
        2.092,
        89.2771917736789,
        89.2771917736789,
        89.2771917736788,
        18.5135917953949,
    ];
    let uncertainties = [
        0.575626570589129,
        0.572817587480311,
        0.404463177421466,
        0.402919370199657,
        0.104623410451298,
        0.559872848891984,
        0.133003389109488,
        0.056695251568643,
        0.056695251568643,
        0.137102511396334,
        0.272,
    ];
    for (quantity, value) in result.quantities.iter().zip(values) {
        approx::assert_relative_eq!(quantity.estimate.unwrap().value, value, max_relative = 1e-10);
    }
    for (quantity, uncertainty) in result.quantities.iter().zip(uncertainties) {
        approx::assert_relative_eq!(quantity.estimate.unwrap().uncertainty, uncertainty, max_relative = 1e-10);
    }
}
