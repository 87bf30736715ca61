//! What a change of binder system costs or saves beside its materials.

/// Costs, capacity and margin of each system, and what a change brings.
pub mod costs;
/// What is entered for it.
pub mod field;
