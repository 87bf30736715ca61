//! Student's quantiles against another library.

use approx::assert_relative_eq;
use haulm::domain::line::student::two_sided;
use statrs::distribution::{ContinuousCDF, StudentsT};

/// Source: statrs 0.19, by the cumulative distribution, which is exact where its quantile is not quite.
#[test]
fn the_quantile_gives_back_its_confidence() {
    for freedom in [1, 2, 3, 4, 5, 7, 10, 16, 33, 34, 50, 100, 199, 1_000] {
        let reference = StudentsT::new(0.0, 1.0, f64::from(freedom)).unwrap();
        for confidence in [0.1, 0.5, 0.8, 0.9, 0.95, 0.975, 0.99, 0.999, 0.9999] {
            let t = two_sided(confidence, freedom).unwrap();
            assert_relative_eq!(1.0 - 2.0 * reference.cdf(-t), confidence, max_relative = 1e-11);
            assert_relative_eq!(t, reference.inverse_cdf(f64::midpoint(1.0, confidence)), max_relative = 1e-7);
        }
    }
}

/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2, to three decimals.
#[test]
fn the_printed_table() {
    for (freedom, printed) in [(1, 12.706), (2, 4.303), (3, 3.182), (4, 2.776), (10, 2.228), (30, 2.042), (100, 1.984)]
    {
        assert!((two_sided(0.95, freedom).unwrap() - printed).abs() < 6e-4, "{freedom}");
    }
    assert!((two_sided(0.95, u32::MAX).unwrap() - 1.959_964).abs() < 3e-4);
}

#[test]
fn nothing_to_tell_is_none() {
    assert_eq!(two_sided(0.95, 0), None);
    for confidence in [0.0, 1.0, -1.0, 2.0, f64::NAN] {
        assert_eq!(two_sided(confidence, 5), None);
    }
}
