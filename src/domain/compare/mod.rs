//! Comparing binder systems: side by side, solved for a target value, swept over a range, and with
//! uncertainty.

/// The price at which two systems cost the same.
pub mod break_even;
/// What is chosen and typed.
pub mod draft;
/// What is compared.
pub mod output;
/// A recipe solved again and again with some numbers changed.
pub mod probe;
/// Systems side by side.
pub mod side;
/// One input from a target value of one figure.
pub mod solve_for;
/// One input over a range, two over a grid.
pub mod sweep;
/// How sure a figure is.
pub mod uncertainty;
/// A number of a recipe, read and set by its field.
pub mod variable;
/// Whether a recipe can be run.
pub mod verdict;

pub use output::Output;
