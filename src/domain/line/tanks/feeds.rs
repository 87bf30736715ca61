//! What a pump or a tank holds, across recipes.

use crate::domain::recipe::draft::{Draft, LiquidDraft};
use crate::domain::recipe::liquid::{LiquidId, Role, Substance};
use serde::{Deserialize, Serialize};

/// A liquid as the line knows it. The numbers of liquids are each recipe's own, so a pump is tied to a
/// liquid by what it is called and what it is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Tie {
    /// The mill's name for it; may be blank.
    #[serde(default)]
    pub name: String,
    /// What it is for.
    pub role: Role,
    /// What it is made of.
    pub substance: Substance,
}

impl Tie {
    /// The tie to a liquid of a recipe.
    #[must_use]
    pub fn to(liquid: &LiquidDraft) -> Self {
        Self { name: liquid.name.trim().to_owned(), role: liquid.role, substance: liquid.substance }
    }

    /// Whether this is the liquid: the same name, whatever its case; without a name on either side, the
    /// same role and substance.
    #[must_use]
    pub fn is(&self, liquid: &LiquidDraft) -> bool {
        self.same(&Self::to(liquid))
    }

    fn same(&self, other: &Self) -> bool {
        let (own, theirs) = (self.name.trim(), other.name.trim());
        if own.is_empty() || theirs.is_empty() {
            self.role == other.role && self.substance == other.substance
        } else {
            own.to_lowercase() == theirs.to_lowercase()
        }
    }
}

/// What a pump delivers or a tank holds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Feeds {
    /// A liquid as delivered.
    Liquid(Tie),
    /// The water that thins a liquid on its way to the nozzles.
    Thinning(Tie),
    /// The water that is dosed by itself.
    Water,
    /// The water that is sprayed on the faces of the mat.
    FaceWater,
}

/// What that is in one recipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Fed {
    /// A liquid as delivered.
    Liquid(LiquidId),
    /// The thinning water of a liquid.
    Thinning(LiquidId),
    /// The dosed water.
    Water,
    /// The water on the faces of the mat.
    FaceWater,
}

impl Feeds {
    /// Whether both are one thing: a pump and the tank that it draws from.
    #[must_use]
    pub fn same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Liquid(own), Self::Liquid(theirs)) | (Self::Thinning(own), Self::Thinning(theirs)) => {
                own.same(theirs)
            }
            (Self::Water, Self::Water) | (Self::FaceWater, Self::FaceWater) => true,
            _ => false,
        }
    }

    /// Whether what is in a tank of `self` is what a pump of `pump` draws: water is water.
    #[must_use]
    pub fn holds_for(&self, pump: &Self) -> bool {
        let water = |feeds: &Self| matches!(feeds, Self::Water | Self::FaceWater | Self::Thinning(_));
        self.same(pump) || (water(self) && water(pump))
    }

    /// What it is in a recipe; `None` when the recipe does not have it. The first liquid that fits.
    #[must_use]
    pub fn within(&self, draft: &Draft) -> Option<Fed> {
        let liquid = |tie: &Tie| draft.liquids.iter().find(|liquid| tie.is(liquid)).map(|liquid| liquid.id);
        match self {
            Self::Liquid(tie) => liquid(tie).map(Fed::Liquid),
            Self::Thinning(tie) => liquid(tie).map(Fed::Thinning),
            Self::Water => Some(Fed::Water),
            Self::FaceWater => Some(Fed::FaceWater),
        }
    }
}
