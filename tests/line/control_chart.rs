//! Control limits of single values.

use approx::assert_relative_eq;
use haulm::domain::line::control_chart;
use proptest::prelude::*;

/// Worked by hand: 10, 12, 11, 13 have moving ranges 2, 1, 2, mean 5/3; mean 11.5, limits 11.5 ± 2.66·5/3.
#[test]
fn limits_by_hand() {
    let chart = control_chart(&[10.0, 12.0, 11.0, 13.0]).unwrap();
    assert_relative_eq!(chart.mean, 11.5, max_relative = 1e-14);
    assert_relative_eq!(chart.low, 11.5 - 2.66 * 5.0 / 3.0, max_relative = 1e-14);
    assert_relative_eq!(chart.high, 11.5 + 2.66 * 5.0 / 3.0, max_relative = 1e-14);
    assert_eq!((chart.outside, chart.settled), (vec![], false));
}

#[test]
fn a_value_outside_is_pointed_at() {
    let mut values = vec![0.0; 30];
    for (at, value) in values.iter_mut().enumerate() {
        *value = if at % 2 == 0 { 0.1 } else { -0.1 };
    }
    values[17] = 5.0;
    let chart = control_chart(&values).unwrap();
    assert_eq!((chart.outside, chart.settled), (vec![17], true));
}

#[test]
fn too_few_give_none() {
    assert_eq!(control_chart(&[]), None);
    assert_eq!(control_chart(&[1.0]), None);
    assert_eq!(control_chart(&[1.0, f64::NAN]), None);
    assert_eq!(control_chart(&[0.1, 0.1, 0.1]).unwrap().outside, Vec::<usize>::new());
}

proptest! {
    #[test]
    fn the_mean_is_within(values in prop::collection::vec(-1e6..1e6_f64, 2..50)) {
        let chart = control_chart(&values).unwrap();
        prop_assert!(chart.low <= chart.mean && chart.mean <= chart.high);
    }
}
