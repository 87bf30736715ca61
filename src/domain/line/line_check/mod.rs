//! The line check: readings of the running line against the recipe.

/// What brings the line back to the recipe.
pub mod correction;
/// Figures of the running line against the recipe.
pub mod deviation;
/// The likely cause of a deviation.
pub mod diagnosis;
/// What was read off the running line.
pub mod reading;
/// What the line really does, from its readings and a weighed piece of mat.
pub mod running;
