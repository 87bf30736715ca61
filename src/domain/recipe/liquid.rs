//! What a liquid is and what it is for.

use serde::{Deserialize, Serialize};

/// Names a liquid within one recipe. Stays the same when liquids are added, moved or removed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct LiquidId(pub u16);

/// What a liquid does in the furnish.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Holds the fibres together.
    Binder,
    /// Makes a binder cure (catalyst).
    Hardener,
    /// Keeps liquid water out of the board for a while.
    Wax,
    /// Takes up free formaldehyde.
    Scavenger,
    /// Keeps the board off hot metal.
    ReleaseAgent,
    /// Anything else.
    Other,
}

impl Role {
    /// All roles, in the order in which they are offered.
    pub const ALL: &'static [Role] =
        &[Role::Binder, Role::Hardener, Role::Wax, Role::Scavenger, Role::ReleaseAgent, Role::Other];
}

/// What a liquid is made of. Decides the usual windows and the cautions, never the arithmetic.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Substance {
    /// Urea-formaldehyde resin.
    Uf,
    /// Melamine-urea-formaldehyde resin.
    Muf,
    /// Phenol-formaldehyde resin.
    Pf,
    /// Polymeric diphenylmethane diisocyanate, neat or emulsified at the nozzle.
    Pmdi,
    /// Soy-based adhesive.
    Soy,
    /// Tannin-based adhesive.
    Tannin,
    /// Wax emulsion.
    WaxEmulsion,
    /// Ammonium sulfate solution.
    AmmoniumSulfate,
    /// Ammonium chloride solution.
    AmmoniumChloride,
    /// Ammonium nitrate solution.
    AmmoniumNitrate,
    /// Urea solution.
    Urea,
    /// Something else: no usual window, no caution of its own.
    Other,
}

impl Substance {
    /// All substances, in the order in which they are offered.
    pub const ALL: &'static [Substance] = &[
        Substance::Uf,
        Substance::Muf,
        Substance::Pf,
        Substance::Pmdi,
        Substance::Soy,
        Substance::Tannin,
        Substance::WaxEmulsion,
        Substance::AmmoniumSulfate,
        Substance::AmmoniumChloride,
        Substance::AmmoniumNitrate,
        Substance::Urea,
        Substance::Other,
    ];

    /// Whether it holds fibres together.
    #[must_use]
    pub const fn is_binder(self) -> bool {
        matches!(self, Self::Uf | Self::Muf | Self::Pf | Self::Pmdi | Self::Soy | Self::Tannin)
    }

    /// Whether it gives off formaldehyde.
    #[must_use]
    pub const fn has_formaldehyde(self) -> bool {
        matches!(self, Self::Uf | Self::Muf | Self::Pf)
    }

    /// Whether it is an isocyanate.
    #[must_use]
    pub const fn is_isocyanate(self) -> bool {
        matches!(self, Self::Pmdi)
    }

    /// Whether it is an acid-curing hardener salt.
    #[must_use]
    pub const fn is_hardener_salt(self) -> bool {
        matches!(self, Self::AmmoniumSulfate | Self::AmmoniumChloride | Self::AmmoniumNitrate)
    }
}

/// How a dose is entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum DoseWay {
    /// Solids per oven-dry fibre.
    SolidsOnFibre,
    /// Solids per solids of another liquid.
    SolidsOnLiquid(LiquidId),
    /// Liquid as delivered per oven-dry fibre (kg per 100 kg).
    LiquidOnFibre,
    /// Liquid as delivered per volume of finished board.
    LiquidPerBoard,
    /// Liquid as delivered per area of each face that it is sprayed on, between former and press.
    LiquidOnFaces(Faces),
}

impl DoseWay {
    /// Whether the liquid is sprayed on the faces of the mat, and so is no part of the furnish.
    #[must_use]
    pub const fn is_on_faces(self) -> bool {
        matches!(self, Self::LiquidOnFaces(_))
    }
}

/// The faces of the mat that a spray goes on: water, or a release agent.
///
/// A release agent for a board with an isocyanate is mostly water, and so is face water. Neither breaks the rule that no advice puts
/// water into an isocyanate: they meet binder that is already spread over moist furnish, seconds before the press, and never a tank,
/// a pipe or a pump that holds an isocyanate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Faces {
    /// The top face.
    Top,
    /// The bottom face, sprayed on the belt that the mat comes to lie on.
    Bottom,
    /// Both faces, each with the same.
    #[default]
    Both,
}

impl Faces {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [Faces] = &[Self::Both, Self::Top, Self::Bottom];

    /// How many faces they are.
    #[must_use]
    pub const fn count(self) -> u8 {
        match self {
            Self::Top | Self::Bottom => 1,
            Self::Both => 2,
        }
    }

    /// The stable key, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Top => "top",
            Self::Bottom => "bottom",
            Self::Both => "both",
        }
    }
}
