//! A recipe, from the boxes to values that can be solved.

/// Typical binder systems to start from.
pub mod binder_system;
/// Which cautions apply, and to which work.
pub mod caution;
/// From a draft to a recipe that can be solved, or to what is wrong with it.
pub mod check;
/// Where two recipes differ.
pub mod difference;
/// What the user typed, raw.
pub mod draft;
/// The example that a first start shows.
pub mod example;
/// The address of every number a person can type.
pub mod field;
/// Errors, warnings and notes about a recipe, as data.
pub mod finding;
/// Which boxes count, by what was chosen.
pub mod in_effect;
/// A recipe that can be solved.
pub mod input;
/// One table of the possible and the typical range of each field.
pub mod limit;
/// What a liquid is and what it is for.
pub mod liquid;
/// Which liquid of one recipe is which of another.
pub mod liquid_pairs;
/// The furnish and the kind of board, which choose the typical ranges.
pub mod product;
/// Limits of exposure and emission with their regulations.
pub mod safety_limit;
/// A typical density that follows the solids, and what a substance starts with.
pub mod typical_density;
