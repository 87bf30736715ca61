//! Statistics that know nothing of the trade.

/// Control chart of individual values.
pub mod control_chart;
/// Analysis of covariance: groups with one slope.
pub mod covariance;
/// Coverage factors, combined uncertainty, effective degrees of freedom.
pub mod coverage;
/// Quantiles and tails of the normal distribution, Student's t and Fisher's F.
pub mod distribution;
/// What the draws of a Monte Carlo run say.
pub mod draws;
/// The draws of one figure, of which only both ends are kept.
pub mod ends;
/// Linear least squares with any number of columns.
pub mod least_squares;
/// Data reconciliation and the detection of gross errors.
pub mod reconciliation;
/// Least squares of a straight line.
pub mod regression;
/// Mean, standard deviation, confidence interval and quantiles of a sample.
pub mod sample;
