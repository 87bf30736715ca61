//! Control limits of single values.

use approx::assert_relative_eq;
use haulm::statistics::control_chart::{control_chart, control_chart_from};
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

/// Holds the chart against published figures, given to `tolerance`.
#[track_caller]
fn check(values: &[f64], [mean, moving_range, low, high]: [f64; 4], tolerance: f64) {
    let chart = control_chart(values).unwrap();
    for (found, published) in
        [(chart.mean, mean), (chart.moving_range, moving_range), (chart.low, low), (chart.high, high)]
    {
        assert!((found - published).abs() <= tolerance, "{found} for {published}");
    }
    assert_eq!((chart.outside, chart.settled), (vec![], values.len() >= 20));
}

/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow rate of ten batches. Its limits are taken
/// with 3/1.128 unrounded, so that they differ by 0.0008 from those with 2.66.
#[test]
fn flow_rate_of_ten_batches() {
    let values = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    check(&values, [50.81, 1.8778, 45.8159, 55.8041], 0.001);
}

/// Source: Cano, Moguerza and Redchuk, Six Sigma with R (2012): moisture of the raw material of particleboard, 30
/// readings in percent, with the chart of individuals.
#[test]
fn moisture_of_particleboard_raw_material() {
    let values = [
        12.7533, 14.0144, 11.6449, 14.0282, 9.7831, 12.7584, 10.6938, 11.1975, 10.2078, 11.958, 14.15, 10.2298,
        12.8647, 10.2798, 12.1341, 11.9242, 12.8583, 12.3449, 11.4175, 12.7862, 11.3079, 10.817, 13.2689, 11.6874,
        12.0306, 10.5177, 10.8734, 10.2362, 10.9374, 10.657,
    ];
    check(&values, [11.745_41, 1.569_50, 7.5705, 15.9203], 1e-4);
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

/// Worked by hand: the limits of 10, 12, 11, 13 are 11.5 ± 4.43; 16 and 11 that come later move nothing.
#[test]
fn limits_of_the_first_values_are_not_widened_by_later_ones() {
    let values = [10.0, 12.0, 11.0, 13.0, 16.0, 11.0];
    let chart = control_chart_from(&values, 4).unwrap();
    assert_relative_eq!(chart.high, 11.5 + 2.66 * 5.0 / 3.0, max_relative = 1e-14);
    assert_eq!(chart.outside, vec![4]);
    assert_eq!(control_chart(&values).unwrap().outside, Vec::<usize>::new());
    assert_eq!(control_chart_from(&values, 20), control_chart(&values));
    assert_eq!(control_chart_from(&values, 1), None);
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
