//! What a mill makes: of which furnish, and which kind of board. Decides typical ranges, never the arithmetic.

use serde::{Deserialize, Serialize};

/// What the furnish is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Furnish {
    /// Straw of cereals.
    #[default]
    Straw,
    /// Wood.
    Wood,
    /// Straw and wood.
    Mixed,
}

impl Furnish {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [Furnish] = &[Self::Straw, Self::Wood, Self::Mixed];

    /// The stable key, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Straw => "straw",
            Self::Wood => "wood",
            Self::Mixed => "mixed",
        }
    }
}

/// The kind of board.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum BoardKind {
    /// Fibreboard by the dry process (EN 622-1, EN 622-5).
    Fibreboard,
    /// Particleboard (EN 312).
    Particleboard,
    /// Another board, or not decided.
    #[default]
    Other,
}

impl BoardKind {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [BoardKind] = &[Self::Fibreboard, Self::Particleboard, Self::Other];

    /// The stable key, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Fibreboard => "fibreboard",
            Self::Particleboard => "particleboard",
            Self::Other => "other",
        }
    }

    /// How far the density may be off the mean within a board: ±7 % for fibreboard (EN 622-1), ±10 % for particleboard
    /// (EN 312); both unverified, the texts of the standards were not at hand. `None` where no standard is known.
    #[must_use]
    pub const fn density_spread(self) -> Option<f64> {
        match self {
            Self::Fibreboard => Some(0.07),
            Self::Particleboard => Some(0.10),
            Self::Other => None,
        }
    }

    /// The standard that [`density_spread`](Self::density_spread) is from.
    #[must_use]
    pub const fn density_standard(self) -> Option<&'static str> {
        match self {
            Self::Fibreboard => Some("EN 622-1"),
            Self::Particleboard => Some("EN 312"),
            Self::Other => None,
        }
    }
}

/// What is made of what.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Product {
    /// What the furnish is made of.
    pub furnish: Furnish,
    /// The kind of board.
    pub board: BoardKind,
}
