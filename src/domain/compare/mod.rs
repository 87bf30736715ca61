//! Comparing binder systems: side by side, solved for a target value, over a range, and with uncertainty.

/// The price at which two systems cost the same.
pub mod break_even;
/// Which machines a recipe asks too much of.
pub mod capacity;
/// What is chosen and entered.
pub mod draft;
/// What a change of system costs or saves beside its materials.
pub mod economy;
/// The emission sheet as entered.
pub mod emission;
/// Whether a recipe can be run.
pub mod feasibility;
/// What a number is known by in several systems.
pub mod number_key;
/// The figures that are compared.
pub mod output;
/// What is compared first.
pub mod overview;
/// Prices of liquids that have none of their own.
pub mod price;
/// The range of one input.
pub mod range;
/// What is left where two numbers cancel.
pub mod rounding;
/// Systems side by side.
pub mod side;
/// One input from a target value of one figure.
pub mod solve_for;
/// One input over a range, two over a grid.
pub mod sweep;
/// Which system is compared.
pub mod system_choice;
/// How uncertain a figure is.
pub mod uncertainty;
/// Prices that are missing.
pub mod unpriced;
/// A number of a recipe, read and set by its field.
pub mod variable;
/// A recipe solved again and again with some numbers changed.
pub mod variation;

pub use output::Output;
