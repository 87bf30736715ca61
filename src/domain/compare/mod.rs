//! Comparing binder systems: side by side, solved for a wanted value, swept over a range, and with
//! honest uncertainty.

// One number at a time.

/// A number of a recipe, read and set by its field.
pub mod knob;
/// What is compared.
pub mod output;

// Many recipes at once.

/// A recipe as instructions over its varied inputs.
pub mod tape;

pub use output::Output;
