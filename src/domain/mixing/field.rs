//! The address of every number typed where solutions and glues are made up, and what it may hold.

use crate::domain::recipe::limit::Limit;
use crate::domain::recipe::limit::Source::{CommonPractice, FromMemory};
use crate::quantity::{Kind, Unit};

/// A number typed beside the recipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum MixField {
    /// Solution wanted, by mass.
    SolutionMass,
    /// Solution wanted, by volume at 20 °C.
    SolutionVolume,
    /// Salt per solution, by mass.
    Concentration,
    /// Coldest temperature at which the salt has to stay dissolved.
    Coldest,
    /// Density of the solution as measured.
    MeasuredDensity,
    /// Glue wanted, by mass.
    GlueMass,
    /// Glue wanted, by volume.
    GlueVolume,
    /// NCO groups per isocyanate, by mass.
    Nco,
    /// Formalin in the charge of a resin.
    Formalin,
    /// Formaldehyde per formalin, by mass.
    Strength,
    /// Urea in the charge.
    Urea,
    /// Urea added to it later.
    ExtraUrea,
}

/// What the share of a part of a glue may hold: parts by mass of the liquid as delivered.
pub const SHARE: Limit = Limit::from_to(Unit::One, 0.0, 1e6);

impl MixField {
    /// All of them, in the order of the page.
    pub const ALL: &'static [MixField] = &[
        Self::Concentration,
        Self::SolutionMass,
        Self::SolutionVolume,
        Self::Coldest,
        Self::MeasuredDensity,
        Self::GlueMass,
        Self::GlueVolume,
        Self::Nco,
        Self::Formalin,
        Self::Strength,
        Self::Urea,
        Self::ExtraUrea,
    ];

    /// What the field measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::SolutionMass | Self::GlueMass | Self::Formalin | Self::Urea | Self::ExtraUrea => Kind::BatchMass,
            Self::SolutionVolume | Self::GlueVolume => Kind::BatchVolume,
            Self::Concentration => Kind::Solids,
            Self::Coldest => Kind::Temperature,
            Self::MeasuredDensity => Kind::LiquidDensity,
            Self::Nco | Self::Strength => Kind::Share,
        }
    }

    /// What the field may hold and what is usual.
    #[must_use]
    pub const fn limit(self) -> Limit {
        match self {
            Self::SolutionMass | Self::GlueMass | Self::Formalin | Self::Urea => {
                Limit::above_to(Unit::Kilogram, 0.0, 1e6)
            }
            Self::ExtraUrea => Limit::from_to(Unit::Kilogram, 0.0, 1e6).optional(),
            Self::SolutionVolume | Self::GlueVolume => Limit::above_to(Unit::Litre, 0.0, 1e6),
            Self::Concentration => Limit::above_to(Unit::Percent, 0.0, 100.0).below_most(),
            // As far as the solubilities reach.
            Self::Coldest => Limit::from_to(Unit::Celsius, 0.0, 60.0),
            Self::MeasuredDensity => Limit::above_to(Unit::KilogramPerCubicMetre, 0.0, 3_000.0)
                .usually(990.0, 1_400.0, CommonPractice)
                .optional(),
            Self::Nco => Limit::above_to(Unit::Percent, 0.0, 100.0).usually(30.0, 32.0, FromMemory),
            Self::Strength => Limit::above_to(Unit::Percent, 0.0, 100.0).usually(35.0, 55.0, FromMemory),
        }
    }

    /// The stable key of the field: in the store, and as `data-field` on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::SolutionMass => "solution_mass",
            Self::SolutionVolume => "solution_volume",
            Self::Concentration => "concentration",
            Self::Coldest => "coldest",
            Self::MeasuredDensity => "measured_density",
            Self::GlueMass => "glue_mass",
            Self::GlueVolume => "glue_volume",
            Self::Nco => "nco",
            Self::Formalin => "formalin",
            Self::Strength => "strength",
            Self::Urea => "urea",
            Self::ExtraUrea => "extra_urea",
        }
    }
}
