//! Sets of requirements: what a standard asks of a type of board, to start from. Every value can be typed over.
//!
//! Nobody here had the standards open. A value from memory is given as unverified and stays marked so until it is typed; where
//! memory is not sure, the set has the standard's name alone and its values are typed.

use crate::domain::recipe::draft::Entry;
use crate::domain::trial::boards::property::Property;
use crate::domain::trial::boards::target::RequirementDraft;
use crate::quantity::{Kind, Unit};

/// A set that is offered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RequirementSet {
    /// EN 312, type P2: particleboard for interior fitments in dry conditions, over 13 to 20 mm.
    ParticleboardInterior,
    /// EN 622-5, type MDF: general purpose in dry conditions, over 12 to 19 mm.
    FibreboardDry,
    /// ANSI A208.1, particleboard; grade and values are typed.
    ParticleboardAnsi,
    /// ANSI A208.2, medium density fibreboard; grade and values are typed.
    FibreboardAnsi,
}

impl RequirementSet {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [RequirementSet] =
        &[Self::ParticleboardInterior, Self::FibreboardDry, Self::ParticleboardAnsi, Self::FibreboardAnsi];

    /// The standard that it is of.
    #[must_use]
    pub const fn standard(self) -> &'static str {
        match self {
            Self::ParticleboardInterior => "EN 312",
            Self::FibreboardDry => "EN 622-5",
            Self::ParticleboardAnsi => "ANSI A208.1",
            Self::FibreboardAnsi => "ANSI A208.2",
        }
    }

    /// The values, from memory and unverified: N/mm² of a strength, % of a swelling.
    const fn values(self) -> &'static [(Property, &'static str)] {
        match self {
            Self::ParticleboardInterior => &[
                (Property::BendingStrength, "11"),
                (Property::BendingModulus, "1600"),
                (Property::InternalBond, "0.35"),
            ],
            Self::FibreboardDry => &[
                (Property::BendingStrength, "20"),
                (Property::BendingModulus, "2200"),
                (Property::InternalBond, "0.55"),
                (Property::Swelling, "12"),
            ],
            Self::ParticleboardAnsi | Self::FibreboardAnsi => &[],
        }
    }

    /// The requirements to start from. They are presets: a value that nobody typed is unverified.
    #[must_use]
    pub fn requirements(self) -> Vec<RequirementDraft> {
        let one = |(property, text): &(Property, &str)| RequirementDraft {
            property: *property,
            value: Entry::preset(*text, requirement_unit(*property)),
        };
        self.values().iter().map(one).collect()
    }
}

/// The unit in which a requirement starts.
#[must_use]
pub const fn requirement_unit(property: Property) -> Unit {
    match property.kind() {
        Kind::Strength => Unit::NewtonPerSquareMillimetre,
        _ => Unit::Percent,
    }
}
