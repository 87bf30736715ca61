//! Quantiles and tails against published tables, closed forms and computed values of many digits.

use approx::assert_relative_eq;
use haulm::statistics::distribution::{f_tail, one_sided_t, two_sided_normal, two_sided_t};
use proptest::prelude::*;

fn rows<const COLUMNS: usize>(table: &str) -> Vec<[f64; COLUMNS]> {
    let row = |line: &str| {
        let cells: Vec<f64> = line.split(',').map(|cell| cell.parse().unwrap()).collect();
        cells.try_into().unwrap()
    };
    table.lines().skip(1).map(row).collect()
}

/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t, to
/// three decimals. (Single cells of the table differ from the exact value by a unit of the third decimal.)
#[test]
fn published_table_of_t() {
    let levels = [0.9, 0.95, 0.975, 0.99, 0.995];
    let table = [
        (1.0, [3.078, 6.314, 12.706, 31.821, 63.657]),
        (2.0, [1.886, 2.920, 4.303, 6.965, 9.925]),
        (3.0, [1.638, 2.353, 3.182, 4.541, 5.841]),
        (4.0, [1.533, 2.132, 2.776, 3.747, 4.604]),
        (5.0, [1.476, 2.015, 2.571, 3.365, 4.032]),
        (10.0, [1.372, 1.812, 2.228, 2.764, 3.169]),
        (30.0, [1.310, 1.697, 2.042, 2.457, 2.750]),
        (100.0, [1.290, 1.660, 1.984, 2.364, 2.626]),
        (f64::INFINITY, [1.282, 1.645, 1.960, 2.326, 2.576]),
    ];
    for (freedom, printed) in table {
        for (level, printed) in levels.into_iter().zip(printed) {
            let t = one_sided_t(level, freedom).unwrap();
            assert!((t - printed).abs() < 6e-4, "{level}, {freedom}: {t} for {printed}");
        }
    }
}

/// Source: `tests/values/student_t_quantiles.csv`.
#[test]
fn t_to_many_digits() {
    let table = rows::<3>(include_str!("../values/student_t_quantiles.csv"));
    assert_eq!(table.len(), 17 * 7);
    for [confidence, freedom, t] in table {
        let tolerance = if freedom <= 1_000.0 { 1e-11 } else { 1e-8 };
        assert_relative_eq!(two_sided_t(confidence, freedom).unwrap(), t, max_relative = tolerance);
    }
}

/// Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.5: the normal quantile of
/// 97.5 %, 1.959 963 984 540 054. Towards infinite degrees of freedom t goes over into it without a step, and
/// comes to an end even at degrees where the inverse of the library does not.
#[test]
fn many_degrees_of_freedom_are_the_normal_distribution() {
    let normal = two_sided_normal(0.95).unwrap();
    assert_relative_eq!(normal, 1.959_963_984_540_054, max_relative = 1e-14);
    let mut before = f64::INFINITY;
    for freedom in [1e3, 1e4, 1e5, 9.99e5, 1e6, 1e8, f64::from(u32::MAX), 1e15, f64::MAX, f64::INFINITY] {
        let t = two_sided_t(0.95, freedom).unwrap();
        assert!(normal <= t && t <= before, "{freedom}: {t}");
        // The first term of the expansion in 1/ν (the same handbook, 26.7.5).
        assert_relative_eq!(t, normal * (1.0 + (normal.powi(2) + 1.0) / (4.0 * freedom)), max_relative = 2e-6);
        before = t;
    }
}

#[test]
fn quantiles_without_a_meaning() {
    for freedom in [0.0, 0.99, -1.0, f64::NAN, f64::NEG_INFINITY] {
        assert_eq!(two_sided_t(0.95, freedom), None, "{freedom}");
    }
    for confidence in [0.0, 1.0, -1.0, 2.0, f64::NAN] {
        assert_eq!((two_sided_t(confidence, 5.0), two_sided_normal(confidence)), (None, None), "{confidence}");
    }
    assert_eq!((one_sided_t(0.5, 5.0), one_sided_t(1.0, 5.0)), (None, None));
}

/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.3, upper critical values of F, to three
/// decimals: 5 % exceed the first, 1 % the second.
#[test]
fn published_table_of_f() {
    let table = [
        (1, 1, 161.448, 4052.181),
        (2, 1, 199.500, 4999.500),
        (1, 2, 18.513, 98.503),
        (3, 2, 19.164, 99.166),
        (1, 10, 4.965, 10.044),
        (2, 10, 4.103, 7.559),
        (5, 10, 3.326, 5.636),
        (10, 10, 2.978, 4.849),
        (3, 20, 3.098, 4.938),
        (4, 30, 2.690, 4.018),
        (1, 100, 3.936, 6.895),
    ];
    for (above, below, five, one) in table {
        for (f, share) in [(five, 0.05), (one, 0.01)] {
            // Half a unit of the third decimal to either side.
            let [most, least] = [f - 6e-4, f + 6e-4].map(|f| f_tail(f, above, below).unwrap());
            assert!(least <= share && share <= most, "{above}, {below}: {least} to {most} for {share}");
        }
    }
}

/// Source: `tests/values/f_tails.csv`.
#[test]
fn f_to_many_digits() {
    let table = rows::<4>(include_str!("../values/f_tails.csv"));
    assert!(table.len() > 100, "{}", table.len());
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "whole numbers of a table")]
    for [f, above, below, tail] in table {
        let found = f_tail(f, above as u32, below as u32).unwrap();
        assert_relative_eq!(found, tail, max_relative = 1e-9, epsilon = 1e-13);
    }
}

#[test]
fn f_at_its_ends() {
    assert_eq!(f_tail(0.0, 3, 7), Some(1.0));
    assert_eq!(f_tail(f64::INFINITY, 3, 7), Some(0.0));
    assert!(f_tail(f64::MAX, 3, 7).unwrap() < 1e-300);
    assert_eq!(
        (f_tail(1.0, 0, 7), f_tail(1.0, 3, 0), f_tail(-1.0, 3, 7), f_tail(f64::NAN, 3, 7)),
        (None, None, None, None)
    );
    assert!(f_tail(3.0, u32::MAX, u32::MAX).unwrap() < 1e-9);
}

proptest! {
    /// Closed forms: t at one and at two degrees, F with two degrees above.
    #[test]
    fn closed_forms(confidence in 0.01..0.9999_f64, f in 0.0..60.0_f64, below in 1..200_u32) {
        let one = (std::f64::consts::FRAC_PI_2 * confidence).tan();
        assert_relative_eq!(two_sided_t(confidence, 1.0).unwrap(), one, max_relative = 1e-10);
        let two = confidence * (2.0 / (1.0 - confidence * confidence)).sqrt();
        assert_relative_eq!(two_sided_t(confidence, 2.0).unwrap(), two, max_relative = 1e-8);
        let tail = (1.0 + 2.0 * f / f64::from(below)).powf(-f64::from(below) / 2.0);
        assert_relative_eq!(f_tail(f, 2, below).unwrap(), tail, max_relative = 1e-10, epsilon = 1e-14);
    }

    /// The square of t with ν degrees is F with one and ν.
    #[test]
    fn t_squared_is_f(confidence in 0.1..0.999_f64, freedom in 1..500_u32) {
        let t = two_sided_t(confidence, f64::from(freedom)).unwrap();
        assert_relative_eq!(f_tail(t * t, 1, freedom).unwrap(), 1.0 - confidence, max_relative = 1e-9);
    }

    /// Fewer degrees of freedom and more confidence widen an interval.
    #[test]
    fn t_is_monotone(confidence in 0.1..0.99_f64, freedom in 1.0..2_000.0_f64, more in 0.5..100.0_f64) {
        let t = two_sided_t(confidence, freedom).unwrap();
        prop_assert!(t >= two_sided_t(confidence, freedom + more).unwrap());
        prop_assert!(t < two_sided_t(confidence + 0.005, freedom).unwrap());
    }
}
