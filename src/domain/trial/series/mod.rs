//! Series of trials: factors with their levels, the design, the run order, and the effects.

/// Factorial designs, whole and in fractions.
pub mod design;
/// A series as entered.
pub mod draft;
/// Changing the factors of a series.
pub mod editing;
/// Effects, intervals and the analysis of variance.
pub mod effects;
/// A factor with its levels.
pub mod factor;
/// The boxes of a series.
pub mod field;
/// Useful fractions, from a published table.
pub mod fraction;
/// Made runs in a plan.
pub mod keep_made;
/// Runs that were made keep what they were made with.
pub mod made;
/// The material that a whole series needs.
pub mod material;
/// One run.
pub mod run;
/// A run order from a seed.
pub mod run_order;
/// The runs of a series in their order.
pub mod runs;
/// Effects written with the letters of their factors.
pub mod word;
