//! Data reconciliation of a line check.

/// Quantities, balances and readings.
pub mod model;
/// The quantities of a line check.
pub mod quantity;
/// How well each reading is known.
pub mod uncertainty;
/// Which reading to distrust.
pub mod verdict;
