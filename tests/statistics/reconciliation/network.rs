//! An invented nonlinear network: two feeds are mixed and split, one part is mixed with a third feed, the product's
//! volume is measured. Flows and the fraction of one component in each.

use haulm::statistics::reconciliation::{Dual64, Problem, Quantity};

/// Flows a b c d e f g, their fractions, then density and volume of f.
pub const TRUTH: [f64; 16] = [
    6000.0,
    4000.0,
    10000.0,
    7000.0,
    3000.0,
    9000.0,
    2000.0,
    0.10,
    0.30,
    0.18,
    0.18,
    0.18,
    0.2733333333333333,
    0.60,
    1200.0,
    7.5,
];

/// 1 % of flows, fractions to 0.003, density to 0.3 %, volume to 1 %.
pub const UNCERTAINTIES: [f64; 16] =
    [60.0, 40.0, 100.0, 70.0, 30.0, 90.0, 20.0, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 0.003, 3.6, 0.075];

pub const CONSTRAINTS: usize = 8;

pub fn balances(x: &[Dual64], residuals: &mut [Dual64]) {
    let flow = &x[0..7];
    let part = &x[7..14];
    residuals[0] = flow[0] + flow[1] - flow[2];
    residuals[1] = flow[0] * part[0] + flow[1] * part[1] - flow[2] * part[2];
    residuals[2] = flow[2] - flow[3] - flow[4];
    residuals[3] = part[2] - part[3];
    residuals[4] = part[2] - part[4];
    residuals[5] = flow[3] + flow[6] - flow[5];
    residuals[6] = flow[3] * part[3] + flow[6] * part[6] - flow[5] * part[5];
    residuals[7] = flow[5] - x[14] * x[15];
}

pub fn measured(values: &[f64], uncertainties: &[f64]) -> Vec<Quantity> {
    values
        .iter()
        .zip(uncertainties)
        .map(|(value, uncertainty)| Quantity::Measured { value: *value, uncertainty: *uncertainty })
        .collect()
}

/// The network with readings that are each off by some of their uncertainties.
pub fn problem(errors: &[f64]) -> Problem {
    let readings: Vec<f64> =
        TRUTH.iter().zip(&UNCERTAINTIES).zip(errors).map(|((truth, sd), error)| truth + sd * error).collect();
    Problem::new(measured(&readings, &UNCERTAINTIES))
}

/// Readings with errors of about their uncertainties, the same at each run.
pub const SOME_ERRORS: [f64; 16] =
    [0.8, -1.1, 0.3, 1.4, -0.6, 0.2, -1.7, 0.5, 1.0, -0.9, 0.7, -0.2, 1.2, -0.4, 0.1, -1.3];
