//! Least squares against certified values and a general-purpose library.

use approx::assert_relative_eq;
use haulm::statistics::least_squares::fit;
use nalgebra::{DMatrix, DVector};
use proptest::prelude::*;

fn table(text: &str) -> Vec<Vec<f64>> {
    text.lines().skip(1).map(|line| line.split(',').map(|cell| cell.parse().unwrap()).collect()).collect()
}

fn column(rows: &[Vec<f64>], at: usize) -> Vec<f64> {
    rows.iter().map(|row| row[at]).collect()
}

/// Source: NIST Statistical Reference Datasets, linear regression, Longley: certified coefficients and their
/// standard deviations, residual SD, sums of squares. The regressors nearly depend on each other, and seven
/// digits are what good double-precision code reaches without scaling; this reaches nine.
#[test]
fn longley() {
    let rows = table(include_str!("../values/nist_strd_longley.csv"));
    let mut columns = vec![vec![1.0; rows.len()]];
    columns.extend((1..=6).map(|at| column(&rows, at)));
    let fit = fit(&columns, &column(&rows, 0)).unwrap();
    let certified = [
        (-3_482_258.634_595_82, 890_420.383_607_373),
        (15.061_872_271_373_3, 84.914_925_774_766_9),
        (-0.358_191_792_925_910e-1, 0.334_910_077_722_432e-1),
        (-2.020_229_803_816_83, 0.488_399_681_651_699),
        (-1.033_226_867_173_59, 0.214_274_163_161_675),
        (-0.511_041_056_535_807e-1, 0.226_073_200_069_370),
        (1_829.151_464_613_55, 455.478_499_142_212),
    ];
    for (at, (value, deviation)) in certified.into_iter().enumerate() {
        let mut weights = vec![0.0; 7];
        weights[at] = 1.0;
        let (ours, spread) = fit.combination(&weights).unwrap();
        assert_relative_eq!(ours, value, max_relative = 1e-9);
        assert_relative_eq!(spread.unwrap(), deviation, max_relative = 1e-9);
    }
    assert_eq!(fit.freedom, 9);
    assert_relative_eq!(fit.residual, 836_424.055_505_915, max_relative = 1e-10);
    assert_relative_eq!(fit.variance().unwrap().sqrt(), 304.854_073_561_965, max_relative = 1e-10);
    let explained: f64 = fit.added.iter().skip(1).flatten().map(|added| added * added).sum();
    assert_relative_eq!(explained, 184_172_401.944_494, max_relative = 1e-10);
}

/// Source: NIST Statistical Reference Datasets, linear regression, Norris.
#[test]
fn norris() {
    let rows = table(include_str!("../values/nist_strd_norris.csv"));
    let columns = [vec![1.0; rows.len()], column(&rows, 0)];
    let fit = fit(&columns, &column(&rows, 1)).unwrap();
    let (intercept, of_intercept) = fit.combination(&[1.0, 0.0]).unwrap();
    let (slope, of_slope) = fit.combination(&[0.0, 1.0]).unwrap();
    assert_relative_eq!(intercept, -0.262_323_073_774_029, max_relative = 1e-10);
    assert_relative_eq!(of_intercept.unwrap(), 0.232_818_234_301_152, max_relative = 1e-10);
    assert_relative_eq!(slope, 1.002_116_818_020_45, max_relative = 1e-12);
    assert_relative_eq!(of_slope.unwrap(), 0.429_796_848_199_937e-3, max_relative = 1e-10);
    assert_relative_eq!(fit.variance().unwrap().sqrt(), 0.884_796_396_144_373, max_relative = 1e-10);
}

#[test]
fn a_column_that_says_nothing_new_is_left_out() {
    let one = vec![1.0; 5];
    let x: Vec<f64> = (0..5).map(f64::from).collect();
    let both: Vec<f64> = x.iter().map(|x| 3.0 - 2.0 * x).collect();
    let y = [1.0, 3.0, 2.0, 5.0, 4.0];
    let fit = fit(&[one.clone(), x.clone(), both, vec![0.0; 5]], &y).unwrap();
    assert!(fit.coefficients[2].is_none() && fit.coefficients[3].is_none());
    assert_eq!(fit.freedom, 3);
    assert_relative_eq!(fit.coefficients[1].unwrap(), 0.8, max_relative = 1e-12);
    assert!(fit.combination(&[0.0, 0.0, 1.0, 0.0]).is_none());
    assert!(super::least_squares::fit(&[one], &[f64::NAN; 5]).is_none());
    assert!(super::least_squares::fit(&[x], &y[..3]).is_none(), "a column of another length");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    /// The general-purpose library's singular value decomposition gives the same coefficients and residual.
    #[test]
    fn as_a_general_purpose_library(
        rows in 6..20_usize, width in 1..6_usize,
        numbers in prop::collection::vec(-10.0..10.0_f64, 140),
    ) {
        let columns: Vec<Vec<f64>> = (0..width).map(|at| numbers[at * 20..at * 20 + rows].to_vec()).collect();
        let y = numbers[120..120 + rows].to_vec();
        let ours = fit(&columns, &y).unwrap();
        let matrix = DMatrix::from_fn(rows, width, |row, column| columns[column][row]);
        let svd = matrix.clone().svd(true, true);
        let condition = svd.singular_values.max() / svd.singular_values.min();
        prop_assume!(condition < 1e4);
        let right = DVector::from_vec(y);
        let theirs = svd.solve(&right, 1e-14).unwrap();
        let residual = (&right - &matrix * &theirs).norm_squared();
        for (our, their) in ours.coefficients.iter().zip(theirs.iter()) {
            assert_relative_eq!(our.unwrap(), *their, max_relative = 1e-8, epsilon = 1e-10);
        }
        assert_relative_eq!(ours.residual, residual, max_relative = 1e-9);
        let inverse = (matrix.transpose() * &matrix).try_inverse().unwrap();
        for at in 0..width {
            let mut weights = vec![0.0; width];
            weights[at] = 1.0;
            let deviation = ours.combination(&weights).unwrap().1.unwrap();
            let expected = (residual / (rows - width) as f64 * inverse[(at, at)]).sqrt();
            assert_relative_eq!(deviation, expected, max_relative = 1e-6);
        }
    }
}
