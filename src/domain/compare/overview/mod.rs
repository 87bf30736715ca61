//! What is compared first: eight key figures, and which system is the cheapest that can run.

/// The eight figures that are compared first.
pub mod key_figures;
/// Which system is the cheapest that can run.
pub mod verdict;
