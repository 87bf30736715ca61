//! What a line of the weigh sheet weighs.

use crate::domain::recipe::liquid::LiquidId;
use serde::{Deserialize, Serialize};

/// Names a line of the weigh sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum LineId {
    /// Moist fibre, first into the blender.
    Fibre,
    /// A liquid as delivered.
    Liquid(LiquidId),
    /// The water that thins a liquid before it is sprayed.
    Thinning(LiquidId),
    /// Water sprayed by itself.
    Water,
}

impl LineId {
    /// The stable key of the line, on the page and in exports.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Fibre => "fibre".to_owned(),
            Self::Liquid(id) => format!("liquid.{}", id.0),
            Self::Thinning(id) => format!("thinning.{}", id.0),
            Self::Water => "water".to_owned(),
        }
    }

    /// Whether it goes through the spray and can stay on the walls.
    #[must_use]
    pub const fn is_sprayed(self) -> bool {
        !matches!(self, Self::Fibre)
    }
}
