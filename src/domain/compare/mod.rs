//! Comparing binder systems: side by side, solved for a wanted value, swept over a range, and with
//! honest uncertainty.

// One number at a time.

/// A number of a recipe, read and set by its field.
pub mod knob;
/// What is compared.
pub mod output;
/// A recipe solved again and again with some numbers turned.
pub mod probe;
/// Whether a recipe can be run.
pub mod verdict;

// Several systems.

/// What is chosen and typed.
pub mod draft;
/// Systems side by side.
pub mod side;

// Asking the other way round, and over a range.

/// The price at which two systems cost the same.
pub mod equal_cost;
/// One input from a wanted value of one figure.
pub mod solve_for;
/// One input over a range, two over a grid.
pub mod sweep;

// How sure a figure is.

/// Whether first order and Monte Carlo agree.
pub mod agreement;
/// First order: standard uncertainty and the share of each source.
pub mod budget;
/// What an input is measured with, and a ± to start from.
pub mod instrument;
/// Monte Carlo, in slices.
pub mod monte_carlo;
/// Sources of uncertainty, as started from and as typed.
pub mod source;
/// How uncertain one input is.
pub mod spread;
/// What an uncertainty study is about.
pub mod study;
/// A recipe as instructions over its varied inputs.
pub mod tape;

pub use output::Output;
