//! What is left where two numbers cancel: rounding, and no figure.

/// So small a part of the numbers that cancel is rounding.
const NOISE: f64 = 1e-12;

/// A sum or difference of numbers whose sizes add up to `size`; zero where only rounding is left.
#[must_use]
pub fn without_noise(value: f64, size: f64) -> f64 {
    if value.abs() <= NOISE * size { 0.0 } else { value }
}
