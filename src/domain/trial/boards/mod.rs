//! Boards made: what was measured of them and of their test pieces.

/// Strength at the target density.
pub mod at_density;
/// Boards made, as entered.
pub mod board;
/// Density against the target, and the furnish for the next mat.
pub mod density;
/// The boxes of a board made and of its test pieces.
pub mod field;
/// Boards put together by run and by combination.
pub mod group;
/// From boards as entered to boards that can be evaluated.
pub mod measured;
/// Test pieces: the formulas of the standards.
pub mod piece;
/// The properties of a board that are measured.
pub mod property;
/// Sets of requirements to start from.
pub mod requirement_set;
/// Boards made against their target.
pub mod target;
/// How each figure of a board was computed.
pub mod working;
