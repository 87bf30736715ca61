//! Statistics that know nothing of the trade.

/// Data reconciliation and the detection of gross errors.
pub mod reconciliation;
