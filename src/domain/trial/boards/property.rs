//! The properties of a board that are measured.

use crate::quantity::Kind;
use serde::{Deserialize, Serialize};

/// A property of a board.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Property {
    /// Density at the moisture as measured (EN 323): of the pieces, or of the whole board where no
    /// piece was cut.
    Density,
    /// Oven-dry mass per volume at the moisture as measured.
    OvenDryDensity,
    /// Moisture, dry basis (EN 322).
    Moisture,
    /// Thickness.
    Thickness,
    /// Bending strength (EN 310).
    BendingStrength,
    /// Modulus of elasticity in bending (EN 310).
    BendingModulus,
    /// Internal bond: tensile strength perpendicular to the plane of the board (EN 319).
    InternalBond,
    /// Thickness swelling after 24 hours in water (EN 317).
    Swelling,
    /// Thickness swelling after 2 hours in water.
    SwellingTwo,
    /// Water absorption after 24 hours in water.
    Absorption,
}

/// On which side of the mean a requirement lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Tail {
    /// At least so much.
    Lower,
    /// At most so much.
    Upper,
}

impl Property {
    /// All of them, in the order of the page.
    pub const ALL: &'static [Property] = &[
        Self::Density,
        Self::OvenDryDensity,
        Self::Moisture,
        Self::Thickness,
        Self::BendingStrength,
        Self::BendingModulus,
        Self::InternalBond,
        Self::Swelling,
        Self::SwellingTwo,
        Self::Absorption,
    ];

    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Density | Self::OvenDryDensity => Kind::BoardDensity,
            Self::Moisture => Kind::Moisture,
            Self::Thickness => Kind::Thickness,
            Self::BendingStrength | Self::BendingModulus | Self::InternalBond => Kind::Strength,
            Self::Swelling | Self::SwellingTwo | Self::Absorption => Kind::Share,
        }
    }

    /// The stable key of the property.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Density => "density",
            Self::OvenDryDensity => "oven_dry_density",
            Self::Moisture => "moisture",
            Self::Thickness => "thickness",
            Self::BendingStrength => "bending_strength",
            Self::BendingModulus => "bending_modulus",
            Self::InternalBond => "internal_bond",
            Self::Swelling => "swelling",
            Self::SwellingTwo => "swelling_2h",
            Self::Absorption => "water_absorption",
        }
    }

    /// Where requirements for it lie; `None` for what has a target and no requirement.
    #[must_use]
    pub const fn tail(self) -> Option<Tail> {
        match self {
            Self::BendingStrength | Self::BendingModulus | Self::InternalBond => Some(Tail::Lower),
            Self::Swelling | Self::SwellingTwo | Self::Absorption => Some(Tail::Upper),
            Self::Density | Self::OvenDryDensity | Self::Moisture | Self::Thickness => None,
        }
    }

    /// The standard whose formula gives it.
    #[must_use]
    pub const fn standard(self) -> &'static str {
        match self {
            Self::Density | Self::OvenDryDensity => "EN 323",
            Self::Moisture => "EN 322",
            Self::Thickness => "EN 324-1",
            Self::BendingStrength | Self::BendingModulus => "EN 310",
            Self::InternalBond => "EN 319",
            Self::Swelling | Self::SwellingTwo => "EN 317",
            Self::Absorption => "ASTM D1037",
        }
    }
}
