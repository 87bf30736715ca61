//! Reading a number that a person typed.

/// The number, unless it is NaN or infinite.
#[must_use]
pub fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}
