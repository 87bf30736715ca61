//! Molar masses of the substances whose reactions are calculated.

use uom::si::f64::MolarMass;
use uom::si::molar_mass::gram_per_mole;

/// A substance, or a reacting group of one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Species {
    /// H₂O
    Water,
    /// CH₂O
    Formaldehyde,
    /// CO(NH₂)₂
    Urea,
    /// The isocyanate group –NCO
    IsocyanateGroup,
    /// CO₂
    CarbonDioxide,
}

impl Species {
    /// Molar mass.
    ///
    /// Source: IUPAC abridged standard atomic weights (`tests/values/molar_mass_iupac.csv`).
    pub fn molar_mass(self) -> MolarMass {
        MolarMass::new::<gram_per_mole>(match self {
            Species::Water => 18.015,
            Species::Formaldehyde => 30.026,
            Species::Urea => 60.056,
            Species::IsocyanateGroup => 42.017,
            Species::CarbonDioxide => 44.009,
        })
    }
}
