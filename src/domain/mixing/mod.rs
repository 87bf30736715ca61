//! Making up solutions and premixed glue: what was typed, and the results.

mod draft;
mod field;
mod from_recipe;
/// A premixed glue: kilograms and litres of each part for a target batch.
pub mod glue_batch;
mod outcome;
mod premix;
/// The target amount of a liquid, by mass or by volume.
pub mod target_amount;

pub use draft::{AmountWay, MixDraft, PartKey, ShareWay, TankPart};
pub use field::{Entries, MixField, MixSection, SHARE};
pub use from_recipe::{RecipeSolution, enough_for, part_of, recipe_solutions, solution_in, weighed_solutions};
pub use outcome::{Isocyanate, MadeUp, MixError, formaldehyde_ratio, isocyanate, solution};
pub use premix::{PremixCandidate, batch, cautions, fill_in_shares, tank};
