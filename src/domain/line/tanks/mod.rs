//! Tanks: when they run empty, and what a delivery changes.

/// A delivery meets what is left in its tank.
pub mod blend;
/// What a new delivery of a liquid changes.
pub mod delivery;
/// What a recipe draws of a liquid or of water.
pub mod draw;
/// What a pump or a tank holds, across recipes.
pub mod feeds;
/// Tanks, as typed and as checked.
pub mod tank;
/// When a tank runs empty, and room for a delivery.
pub mod tank_state;
