//! Physical and chemical data: water, aqueous solutions, isocyanates, formaldehyde.

/// Formaldehyde emission: ratios of the mix, concentrations, perforator value, limits.
pub mod emission;
/// Equilibrium moisture of solid wood, from a published table.
pub mod equilibrium_moisture;
/// Molar ratio of formaldehyde to urea of a resin, and what extra urea does to it.
pub mod formaldehyde_ratio;
/// Linear interpolation between the rows of a published table.
pub(in crate::domain) mod interpolate;
/// Equivalent weight of an isocyanate, the water it uses and the gas it releases.
pub mod isocyanate;
/// Molar masses.
pub mod molar_mass;
/// The substances that a mill dissolves in water, and how much of each dissolves.
pub mod solute;
/// Aqueous solutions made up from crystals, refused where they would not dissolve.
pub mod solution;
/// Density of aqueous solutions at 20 °C, from a published table.
pub mod solution_density;
/// Liquid water from 0 to 100 °C: density, heat capacity, heat of evaporation.
pub mod water;
