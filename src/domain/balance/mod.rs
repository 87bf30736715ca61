//! The balance of a recipe: solids and water at every station, and what follows from them.

/// Every stream of the line, and whether mass closes at each machine.
pub mod closure;
/// Prices and costs.
pub mod cost;
/// Every figure of the solved balance by name.
pub mod figure;
/// Which machine is the bottleneck.
pub mod machine;
/// From a draft to its solved balance with all findings.
pub mod outcome;
/// Solves the balance.
pub mod solve;
/// The solved balance.
pub mod solved;
/// The stations in the material's order.
pub mod station;
/// All that is dosed together.
pub mod total;
mod value;
