//! The line check: readings of the running line, which of them to distrust, and what to correct.

/// What runs, each reading taken as right.
pub mod actual;
/// The line check.
pub mod check;
/// What brings the line back to the recipe.
pub mod correction;
/// Figures of the running line against the recipe.
pub mod deviation;
/// From readings to what runs.
mod flows;
/// What was read off the running line.
pub mod reading;
/// Data reconciliation: which reading to distrust.
pub mod reconcile;
/// The line check as one table: a row for each thing that is read.
pub mod row;
/// Readings that are not of what runs.
pub mod stale;
