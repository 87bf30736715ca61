//! Molar masses of the substances whose reactions are calculated.

use uom::si::f64::MolarMass;
use uom::si::molar_mass::gram_per_mole;

/// A substance, or a reacting group of one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Substance {
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

impl Substance {
    /// Molar mass.
    ///
    /// Source: IUPAC abridged standard atomic weights (`tests/values/molar_mass_iupac.csv`).
    pub fn molar_mass(self) -> MolarMass {
        MolarMass::new::<gram_per_mole>(match self {
            Substance::Water => 18.015,
            Substance::Formaldehyde => 30.026,
            Substance::Urea => 60.056,
            Substance::IsocyanateGroup => 42.017,
            Substance::CarbonDioxide => 44.009,
        })
    }
}
