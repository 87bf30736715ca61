//! The trade, pure: what was typed is checked, solved, and every figure can show its working.
//!
//! `Draft → check() → Input → solve() → Solved`, with findings on the way.

// What is entered, from the boxes to a recipe that can be solved.

/// Which cautions apply to a recipe.
pub mod caution;
/// From a draft to a recipe that can be solved, or to what is wrong with it.
pub mod check;
/// Where two recipes differ, and taking over what the other says.
pub mod difference;
/// What the user typed, raw.
pub mod draft;
/// The example that a first start shows.
pub mod example;
/// The address of every number a person can type.
pub mod field;
/// What there is to say about a recipe, as data.
pub mod finding;
/// A recipe that can be solved.
pub mod input;
/// Typical binder systems to start from.
pub mod library;
/// One table of what a field may hold and what is usual.
pub mod limit;
/// What a liquid is and what it is for.
pub mod liquid;

// The balance.

/// Every stream of the line, and whether mass closes at each machine.
pub mod balance;
/// Every figure of the solved balance by name.
pub mod figure;
/// Which machine limits the line.
pub mod machine;
/// Prices and costs.
pub mod money;
/// The whole way at once: from a draft to its solved balance and everything there is to say.
pub mod outcome;
/// The same dose entered in another way.
/// Solves the balance.
pub mod solve;
/// The solved balance.
pub mod solved;
/// The stations in the material's order.
pub mod station;
/// Liquid water from 0 to 100 °C: density, heat capacity, heat to evaporate.
pub mod water;
/// How each figure came about.
pub mod working;

// At the bench.

/// Trial boards: weigh-out sheets, series, boards made, effects.
pub mod bench;

// At the line.

/// Pumps, catch tests, settings, what really runs, tanks, changeovers.
pub mod line;

// Several recipes beside each other, and how sure each figure is.

/// Comparing binder systems.
pub mod compare;

// Made up beside the line.

/// Molar ratio of formaldehyde to urea of a resin, and what extra urea does to it.
pub mod formaldehyde_ratio;
/// A premixed glue: kilograms and litres of each part for a wanted batch.
pub mod glue_batch;
/// Straight lines between the rows of a published table.
mod interpolate;
/// Equivalent weight of an isocyanate, the water it uses and the gas it releases.
pub mod isocyanate;
/// What is typed where solutions and glues are made up, and what comes of it.
pub mod mix;
/// Molar masses of the substances whose reactions are reckoned with.
pub mod molar_mass;
/// The substances that a mill dissolves in water, and how much of each dissolves.
pub mod solute;
/// Aqueous solutions made up from crystals, refused where they would not dissolve.
pub mod solution;
/// Density of aqueous solutions at 20 °C, from a published table.
pub mod solution_density;
/// How much of a liquid is wanted, by mass or by volume.
pub mod wanted;

pub use caution::{Caution, cautions};
pub use check::{Checked, check};
pub use draft::{Draft, Entry, LiquidDraft};
pub use example::example;
pub use field::{Field, LiquidField};
pub use figure::{Figure, LiquidFigure};
pub use finding::{Finding, Grade, Place, What};
pub use input::Input;
pub use liquid::{DoseWay, LiquidId, Role, Substance};
pub use outcome::{Case, Outcome, work_out};
pub use solve::{Unsolvable, solve};
pub use solved::Solved;
pub use station::Station;
pub use working::{Working, working};
