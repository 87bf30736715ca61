//! What the isocyanate groups of a binder stand for: equivalent weight, water used, gas released.

use uom::si::f64::{MolarMass, Ratio};
use uom::si::ratio::ratio;

use crate::domain::chemistry::molar_mass::Species;

/// Why nothing can be computed for an isocyanate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum IsocyanateError {
    /// The NCO content is not above 0 and at most 100 % by mass.
    NcoOutOfRange {
        /// What was given, as a mass fraction of the binder.
        given: Ratio,
    },
}

/// What a kilogram of isocyanate takes up and gives off when all of it reacts with water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterReaction {
    /// Water used, kg per kg of isocyanate.
    pub water: Ratio,
    /// Carbon dioxide released, kg per kg of isocyanate.
    pub carbon_dioxide: Ratio,
}

/// Equivalent weight: mass of isocyanate that carries one mole of NCO groups.
///
/// E = M(NCO)/w, g/eq, with w the NCO content as a mass fraction of the binder (0 < w ≤ 1).
/// The trade's rounded form 4202/%NCO gives 0.007 % more.
///
/// # Errors
/// [`IsocyanateError::NcoOutOfRange`] for a content not above 0 and at most 100 %.
///
/// Source: definition; M(NCO) = 42.017 g/mol from the IUPAC abridged atomic weights.
pub fn equivalent_weight(nco: Ratio) -> Result<MolarMass, IsocyanateError> {
    let content = checked(nco)?;
    let weight = Species::IsocyanateGroup.molar_mass() / content;
    if weight.is_finite() { Ok(weight) } else { Err(IsocyanateError::NcoOutOfRange { given: nco }) }
}

/// Water used and carbon dioxide released if every NCO group reacts with water,
/// 2 R–NCO + H₂O → R–NH–CO–NH–R + CO₂.
///
/// Per kg of isocyanate: w/M(NCO)/2 · M(H₂O) and w/M(NCO)/2 · M(CO₂). The upper bound: in a board
/// part of the groups react with the fibre instead.
///
/// # Errors
/// [`IsocyanateError::NcoOutOfRange`] for a content not above 0 and at most 100 %.
///
/// Source: stoichiometry with the IUPAC abridged atomic weights.
pub fn reaction_with_water(nco: Ratio) -> Result<WaterReaction, IsocyanateError> {
    let content = checked(nco)?;
    let group = Species::IsocyanateGroup.molar_mass();
    Ok(WaterReaction {
        water: content * (Species::Water.molar_mass() / group) / 2.0,
        carbon_dioxide: content * (Species::CarbonDioxide.molar_mass() / group) / 2.0,
    })
}

/// The NCO content, if it is a mass fraction above zero.
fn checked(nco: Ratio) -> Result<Ratio, IsocyanateError> {
    let value = nco.get::<ratio>();
    if value > 0.0 && value <= 1.0 { Ok(nco) } else { Err(IsocyanateError::NcoOutOfRange { given: nco }) }
}
