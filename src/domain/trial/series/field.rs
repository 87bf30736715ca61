//! The boxes of a series.

use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Kind;
use serde::{Deserialize, Serialize};

/// Names a factor within a series. Stays the same when factors are added or removed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct FactorId(pub u8);

/// What a factor changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Of {
    /// The dose of a liquid, in the way that the recipe enters it.
    Dose(LiquidId),
    /// Board density.
    BoardDensity,
    /// Target mat moisture.
    MatMoisture,
    /// Press factor.
    PressFactor,
    /// All liquids at once.
    System,
    /// Nothing computed: a factor with a name and a unit of its own.
    Own(FactorId),
}

impl Of {
    /// The stable key of what a factor changes, in exports.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Dose(id) => format!("dose.{}", id.0),
            Self::BoardDensity => "board_density".to_owned(),
            Self::MatMoisture => "mat_moisture".to_owned(),
            Self::PressFactor => "press_factor".to_owned(),
            Self::System => "system".to_owned(),
            Self::Own(id) => format!("own.{}", id.0),
        }
    }
}

/// A box of the series.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SeriesField {
    /// How often each combination is made.
    Replicates,
    /// The seed of the run order.
    Seed,
    /// What is ordered beyond what the sheets say.
    Margin,
    /// A factor as a whole.
    Factor(FactorId),
    /// A level of a factor, by its place from 0.
    Level(FactorId, u8),
}

impl SeriesField {
    /// The stable key of the field, as `data-field` on the page.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Replicates => "series_replicates".to_owned(),
            Self::Seed => "series_seed".to_owned(),
            Self::Margin => "series_margin".to_owned(),
            Self::Factor(factor) => format!("series_factor.{}", factor.0),
            Self::Level(factor, level) => format!("series_level.{}.{level}", factor.0),
        }
    }

    /// What the field measures; that of a level depends on its factor.
    #[must_use]
    pub const fn plain_kind(self) -> Kind {
        match self {
            Self::Replicates | Self::Seed | Self::Factor(_) | Self::Level(..) => Kind::Count,
            Self::Margin => Kind::Share,
        }
    }
}
