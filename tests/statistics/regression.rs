//! Least squares against certified values, and what must hold for all points.

use approx::assert_relative_eq;
use haulm::statistics::regression::{DataPoint, Fit, FitError, Interval, Model, RSquared};
use proptest::prelude::*;

fn norris() -> Vec<DataPoint> {
    let table = include_str!("../values/nist_strd_norris.csv");
    let number = |text: Option<&str>| text.unwrap().trim().parse::<f64>().unwrap();
    table
        .lines()
        .skip(1)
        .map(|line| {
            let mut cells = line.split(',');
            DataPoint { x: number(cells.next()), y: number(cells.next()) }
        })
        .collect()
}

/// Source: NIST Statistical Reference Datasets, linear regression, Norris, certified values.
#[test]
fn norris_is_met_to_ten_digits() {
    let points = norris();
    let fit = Fit::through(&points, Model::WithIntercept).unwrap();
    assert_eq!((points.len(), fit.freedom()), (36, 34));
    assert_relative_eq!(fit.intercept, -0.262_323_073_774_029, max_relative = 1e-10);
    assert_relative_eq!(fit.intercept_sd().unwrap(), 0.232_818_234_301_152, max_relative = 1e-10);
    assert_relative_eq!(fit.slope, 1.002_116_818_020_45, max_relative = 1e-10);
    assert_relative_eq!(fit.slope_sd().unwrap(), 0.429_796_848_199_937e-3, max_relative = 1e-10);
    assert_relative_eq!(fit.residual_sd.unwrap(), 0.884_796_396_144_373, max_relative = 1e-10);
    let Some(RSquared::Centred(r)) = fit.r_squared else { panic!("with an intercept R² is about the mean") };
    assert_relative_eq!(r, 0.999_993_745_883_712, max_relative = 1e-10);
}

/// Source: JCGM 100:2008, annex H.3 (calibration of a thermometer), table H.6: readings less 20 °C and corrections,
/// both in °C; y₁ = −0.1712 (0.0029), y₂ = 0.002 18 (0.000 67), s = 0.0035; b(30 °C) = −0.1494 with u = 0.0041 (H.3.4).
#[test]
fn calibration_of_a_thermometer() {
    let points: Vec<DataPoint> = [
        (21.521, -0.171),
        (22.012, -0.169),
        (22.512, -0.166),
        (23.003, -0.159),
        (23.507, -0.164),
        (23.999, -0.165),
        (24.513, -0.156),
        (25.002, -0.157),
        (25.503, -0.159),
        (26.010, -0.161),
        (26.511, -0.160),
    ]
    .map(|(reading, correction)| DataPoint { x: reading - 20.0, y: correction })
    .to_vec();
    let fit = Fit::through(&points, Model::WithIntercept).unwrap();
    assert_eq!(fit.freedom(), 9);
    for (found, published, last_digit) in [
        (fit.intercept, -0.1712, 1e-4),
        (fit.intercept_sd().unwrap(), 0.0029, 1e-4),
        (fit.slope, 0.002_18, 1e-5),
        (fit.slope_sd().unwrap(), 0.000_67, 1e-5),
        (fit.residual_sd.unwrap(), 0.0035, 1e-4),
        (fit.at(10.0), -0.1494, 1e-4),
        (fit.sd_of_mean(10.0).unwrap(), 0.0041, 1e-4),
    ] {
        assert!((found - published).abs() <= last_digit / 2.0, "{found} for {published}");
    }
}

/// Worked by hand: (1, 2), (2, 3), (3, 7). Through the origin b = 29/14, about zero R² = 1 − Σe²/62.
#[test]
fn a_line_through_the_origin_has_an_uncentred_r_squared() {
    let points = [(1.0, 2.0), (2.0, 3.0), (3.0, 7.0)].map(|(x, y)| DataPoint { x, y });
    let fit = Fit::through(&points, Model::ThroughOrigin).unwrap();
    assert_relative_eq!(fit.slope, 29.0 / 14.0, max_relative = 1e-14);
    assert_eq!((fit.intercept, fit.intercept_sd(), fit.freedom()), (0.0, None, 2));
    let unexplained = 62.0 - 29.0 * 29.0 / 14.0;
    assert_relative_eq!(fit.residual_sd.unwrap(), (unexplained / 2.0_f64).sqrt(), max_relative = 1e-12);
    let Some(RSquared::Uncentred(r)) = fit.r_squared else { panic!("through the origin R² is about zero") };
    assert_relative_eq!(r, 1.0 - unexplained / 62.0, max_relative = 1e-12);
}

/// Worked by hand: x 1 to 5, y 1, 2, 3, 4, 6 gives b = 1.2, a = −0.4, Σe² = 0.4; at x = 3 the half width is
/// t(3)·s·√(1.2), s² = 0.4/3.
#[test]
fn a_prediction_interval() {
    let points = [1.0, 2.0, 3.0, 4.0, 6.0].iter().enumerate().map(|(at, y)| DataPoint { x: at as f64 + 1.0, y: *y });
    let fit = Fit::through(&points.collect::<Vec<_>>(), Model::WithIntercept).unwrap();
    let Interval { low, high } = fit.prediction(3.0).unwrap();
    let half = 3.182_446_305_284_263 * (0.4_f64 / 3.0).sqrt() * 1.2_f64.sqrt();
    assert_relative_eq!(low, 3.2 - half, max_relative = 1e-9);
    assert_relative_eq!(high, 3.2 + half, max_relative = 1e-9);
}

#[test]
fn what_gives_no_line() {
    let points = |xs: &[f64]| xs.iter().map(|x| DataPoint { x: *x, y: 2.0 * x }).collect::<Vec<_>>();
    let with = |xs: &[f64]| Fit::through(&points(xs), Model::WithIntercept).unwrap_err();
    assert_eq!(with(&[]), FitError::TooFew);
    assert_eq!(with(&[1.0]), FitError::TooFew);
    assert_eq!(with(&[3.3, 3.3, 3.3]), FitError::NoSpread);
    assert_eq!(with(&[1.0, f64::NAN]), FitError::NotFinite);
    assert_eq!(with(&[1.0, 1e300]), FitError::NotFinite);
    assert_eq!(Fit::through(&points(&[0.0, 0.0]), Model::ThroughOrigin).unwrap_err(), FitError::NoSpread);
    // Two points fix a line, and leave nothing to judge it by.
    let fit = Fit::through(&points(&[1.0, 2.0]), Model::WithIntercept).unwrap();
    assert_eq!((fit.residual_sd, fit.prediction(1.5), fit.inverse_interval(3.0)), (None, None, None));
    assert_relative_eq!(fit.inverse(3.0).unwrap(), 1.5, max_relative = 1e-14);
}

/// One row of six is a tenth too high: it is pointed at, and it alone.
#[test]
fn a_point_far_off_is_suspicious() {
    let mut points: Vec<_> = (1..=6).map(|x| DataPoint { x: f64::from(x), y: 10.0 * f64::from(x) }).collect();
    for (point, noise) in points.iter_mut().zip([0.05, -0.04, 0.02, 0.03, -0.06, 0.01]) {
        point.y += noise;
    }
    let far = |points: &[DataPoint]| {
        let fit = Fit::through(points, Model::WithIntercept).unwrap();
        let from = fit.suspicious_from().unwrap();
        let residuals = fit.residuals(points);
        (0..points.len()).filter(|at| residuals[*at].studentised.is_some_and(|t| t.abs() > from)).collect::<Vec<_>>()
    };
    assert_eq!(far(&points), Vec::<usize>::new());
    points[2].y *= 1.1;
    assert_eq!(far(&points), vec![2]);
}

/// The externally studentised residual by its definition: leave the point out, lay the line again.
#[test]
fn studentised_residuals_are_those_of_the_line_without_the_point() {
    let points = norris();
    let fit = Fit::through(&points, Model::WithIntercept).unwrap();
    for (at, residual) in fit.residuals(&points).iter().enumerate() {
        let mut others = points.clone();
        let left_out = others.remove(at);
        let without = Fit::through(&others, Model::WithIntercept).unwrap();
        let spread = (1.0 + 1.0 / 35.0 + (left_out.x - without.centre).powi(2) / without.spread).sqrt();
        let expected = (left_out.y - without.at(left_out.x)) / (without.residual_sd.unwrap() * spread);
        assert_relative_eq!(residual.studentised.unwrap(), expected, max_relative = 1e-7);
    }
}

/// Points about a rising line, scattered.
fn scattered() -> impl Strategy<Value = (Vec<DataPoint>, Model)> {
    let points = prop::collection::vec((0.05..1.5_f64, -1.0..1.0_f64), 3..20);
    let model = prop::sample::select(Model::ALL);
    (points, 0.01..100.0_f64, -0.2..0.2_f64, 0.0..0.05_f64, model).prop_map(
        |(points, slope, offset, scatter, model)| {
            let point = |(x, noise): (f64, f64)| DataPoint { x, y: slope * (x + offset + scatter * noise) };
            (points.into_iter().map(point).collect(), model)
        },
    )
}

/// Now and then any number at all: more often than that, and hardly any line goes through the points.
fn number() -> impl Strategy<Value = f64> {
    prop_oneof![20 => -1e3..1e3_f64, 1 => any::<f64>()]
}

proptest! {
    #[test]
    fn the_line_and_its_inverse_cancel((points, model) in scattered(), x in 0.05..1.5_f64) {
        let fit = Fit::through(&points, model);
        prop_assume!(fit.as_ref().is_ok_and(|fit| fit.slope.abs() > 1e-3), "no line");
        let fit = fit.unwrap();
        assert_relative_eq!(fit.inverse(fit.at(x)).unwrap(), x, max_relative = 1e-9);
    }

    /// The ends of the inverse interval are where the prediction interval touches the wanted value.
    #[test]
    fn the_inverse_interval_is_that_of_the_prediction((points, model) in scattered(), x in 0.05..1.5_f64) {
        let fit = Fit::through(&points, model);
        prop_assume!(fit.is_ok(), "no line");
        let fit = fit.unwrap();
        let y = fit.at(x);
        let interval = fit.inverse_interval(y);
        prop_assume!(interval.is_some(), "no interval");
        let Interval { low, high } = interval.unwrap();
        prop_assert!(low <= x && x <= high);
        let scale = fit.slope.abs() * 2.0 + y.abs();
        let touches = |x: f64| {
            let at = fit.prediction(x).unwrap();
            (at.low - y).abs().min((at.high - y).abs())
        };
        // Far out the ends are far from all points and lose digits.
        prop_assume!(high - low < 100.0);
        prop_assert!(touches(low) < 1e-7 * scale, "{low}: {}", touches(low));
        prop_assert!(touches(high) < 1e-7 * scale, "{high}: {}", touches(high));
    }

    #[test]
    fn no_points_panic_or_give_what_is_no_number(
        raw in prop::collection::vec((number(), number()), 0..8), model in prop::sample::select(Model::ALL), x: f64
    ) {
        let points: Vec<_> = raw.into_iter().map(|(x, y)| DataPoint { x, y }).collect();
        let fit = Fit::through(&points, model);
        prop_assume!(fit.is_ok(), "no line");
        let fit = fit.unwrap();
        prop_assert!(fit.slope.is_finite() && fit.intercept.is_finite());
        prop_assert!(fit.residual_sd.is_none_or(f64::is_finite));
        prop_assert!(fit.r_squared.is_none_or(|r| r.value().is_finite()));
        prop_assert!(fit.inverse(x).is_none_or(f64::is_finite));
        prop_assert!(fit.prediction(x).is_none_or(|i| i.low.is_finite() && i.high.is_finite()));
        prop_assert!(fit.inverse_interval(x).is_none_or(|i| i.low.is_finite() && i.high.is_finite()));
        prop_assert!(fit.residuals(&points).iter().all(|r| r.studentised.is_none_or(f64::is_finite)));
    }
}
