//! The trade, pure: what was typed is checked, solved, and every figure can show its working.

/// Straight lines between the rows of a published table.
mod interpolate;
/// Liquid water from 0 to 100 °C: density, heat capacity, heat to evaporate.
pub mod water;
