//! The trade, pure: what was typed is checked, solved, and every figure can show its working.

/// Molar ratio of formaldehyde to urea of a resin, and what extra urea does to it.
pub mod formaldehyde_ratio;
/// A premixed glue: kilograms and litres of each part for a wanted batch.
pub mod glue_batch;
/// Straight lines between the rows of a published table.
mod interpolate;
/// Equivalent weight of an isocyanate, the water it uses and the gas it releases.
pub mod isocyanate;
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
/// Liquid water from 0 to 100 °C: density, heat capacity, heat to evaporate.
pub mod water;
