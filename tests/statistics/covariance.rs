//! Analysis of covariance against a general statistics library, and against the straight line that it contains.

use approx::assert_relative_eq;
use haulm::statistics::covariance::Covariance;
use haulm::statistics::distribution::{CONFIDENCE, two_sided_t};
use haulm::statistics::regression::{DataPoint, Fit, Model};
use proptest::prelude::*;

fn group(points: &[(f64, f64)]) -> Vec<DataPoint> {
    points.iter().map(|(x, y)| DataPoint { x: *x, y: *y }).collect()
}

/// Internal bond over density of an invented mill's boards.
fn three() -> Vec<Vec<DataPoint>> {
    vec![
        group(&[(648.0, 0.42), (655.0, 0.45), (667.0, 0.47), (672.0, 0.50)]),
        group(&[(690.0, 0.61), (701.0, 0.62), (716.0, 0.68), (722.0, 0.67), (735.0, 0.72)]),
        group(&[(655.0, 0.38), (681.0, 0.45), (707.0, 0.49)]),
    ]
}

/// Source: computed once with a general statistics library: the group as a factor and x for slope, residual variance and the
/// predicted means at x = 680 with their 95 % intervals, and the analysis of variance of it against the model with a slope of
/// each group for the test that the slopes are alike (F = 0.9017 on 2 and 6 degrees of freedom).
#[test]
fn as_a_general_statistics_library_has_it() {
    let own = Covariance::of(&three()).unwrap();
    assert_relative_eq!(own.slope, 0.002_378_539_090_479_102_3, max_relative = 1e-10);
    assert_relative_eq!(own.variance, 0.000_131_885_600_378_404_18, max_relative = 1e-9);
    assert_eq!(own.freedom, 8);
    assert_relative_eq!(own.slopes_alike.unwrap(), 0.454_560_011_316_114_57, max_relative = 1e-8);
    let expected = [
        (0.506_381_512_264_354_7, 0.016_292_036_460_851_977),
        (0.581_983_917_832_298_7, 0.019_879_230_707_679_052),
        (0.437_621_460_909_533_24, 0.015_297_417_856_276_585),
    ];
    for (at, (value, half)) in expected.into_iter().enumerate() {
        let mean = own.at(at, 680.0).unwrap();
        assert_relative_eq!(mean.value, value, max_relative = 1e-10);
        assert_relative_eq!(mean.half_width, half, max_relative = 1e-8);
    }
}

#[test]
fn what_gives_no_answer() {
    let own = three();
    assert_eq!(Covariance::of(&own[..1]), None, "one group is a straight line");
    assert_eq!(Covariance::of(&[group(&[(1.0, 2.0)]), group(&[(2.0, 3.0)])]), None, "no spread within the groups");
    assert_eq!(Covariance::of(&[group(&[(1.0, 2.0), (2.0, 4.0)]), group(&[(5.0, 3.0)])]), None, "no freedom");
    let beside = Covariance::of(&[own[0].clone(), Vec::new(), own[1].clone()]).unwrap();
    assert_eq!(beside.at(1, 680.0), None);
    assert!(beside.at(2, 680.0).is_some() && beside.at(3, 680.0).is_none());
    // Each line is met exactly, and they are not parallel.
    let crossed = [group(&[(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)]), group(&[(0.0, 2.0), (1.0, 1.0), (2.0, 0.0)])];
    assert_eq!(Covariance::of(&crossed).unwrap().slopes_alike, Some(0.0));
}

proptest! {
    /// A second group of one point at its own level adds nothing: slope, variance and interval are those of the line.
    #[test]
    fn a_group_of_one_point_leaves_the_line(
        points in proptest::collection::vec((600.0..750.0_f64, 0.2..0.9_f64), 3..12),
        lone in (600.0..750.0_f64, 0.2..0.9_f64),
        at in 600.0..750.0_f64,
    ) {
        let own = group(&points);
        prop_assume!(points.iter().any(|point| (point.0 - points[0].0).abs() > 1.0));
        let line = Fit::through(&own, Model::WithIntercept).unwrap();
        let both = Covariance::of(&[own, group(&[lone])]).unwrap();
        prop_assert!((both.slope - line.slope).abs() <= 1e-9 * line.slope.abs().max(1e-6));
        let mean = both.at(0, at).unwrap();
        prop_assert!((mean.value - line.at(at)).abs() < 1e-9);
        let half = two_sided_t(CONFIDENCE, f64::from(line.freedom())).unwrap() * line.sd_of_mean(at).unwrap();
        prop_assert!((mean.half_width - half).abs() <= 1e-7 * half.max(1e-9));
    }
}
