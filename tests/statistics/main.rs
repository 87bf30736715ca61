//! Statistics against certified values, published tables and what must hold for all numbers.
#![allow(clippy::float_cmp, reason = "zeros and copies are meant exactly")]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod control_chart;
mod covariance;
mod distribution;
mod ends;
mod least_squares;
mod reconciliation;
mod regression;
