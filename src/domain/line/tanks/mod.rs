//! Tanks: when they run empty, and what a delivery changes.

/// What a new delivery of a liquid changes.
pub mod delivery;
/// What a pump or a tank holds, across recipes.
pub mod feeds;
/// Tanks: time to empty, and room for a delivery.
pub mod tank;
