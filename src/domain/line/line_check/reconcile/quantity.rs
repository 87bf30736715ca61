//! The quantities of a line check.

use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Kind;

/// A quantity of the line check, in SI base units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LineQuantity {
    /// Wet fibre flow at the belt scale, G.
    BeltScale,
    /// Fibre moisture ω_f, dry basis.
    FibreMoisture,
    /// Oven-dry fibre flow F.
    Fibre,
    /// Solids of the furnish, S.
    FurnishSolids,
    /// Moisture lost between blender and former δ, as a fraction.
    DryingLoss,
    /// Line speed v.
    LineSpeed,
    /// Trimmed mat width b.
    MatWidth,
    /// Mat mass per area M, wet.
    MatMass,
    /// Mat moisture ω_mat, dry basis.
    MatMoisture,
    /// Raw-board mass per area m, with its moisture.
    BoardMass,
    /// Raw-board moisture ω_b, dry basis.
    BoardMoisture,
    /// Pressed thickness t.
    Thickness,
    /// Raw-board density ρ.
    Density,
    /// Flow of what no pump of the line delivers, by mass.
    Flow(Fed),
    /// Flow of a pump by mass: what its flow meter reads, or should.
    Meter(PumpId),
    /// Flow of a pump by its volume meter.
    Volume(PumpId),
    /// Flow of a pump by its setting and catch-test line.
    Setting(PumpId),
    /// Solids content of a liquid.
    Solids(LiquidId),
    /// Density of a liquid whose flow is read by volume.
    LiquidDensity(LiquidId),
}

impl LineQuantity {
    /// Those that every line has, in the order of the problem.
    pub const PLAIN: [Self; 13] = [
        Self::BeltScale,
        Self::FibreMoisture,
        Self::Fibre,
        Self::FurnishSolids,
        Self::DryingLoss,
        Self::LineSpeed,
        Self::MatWidth,
        Self::MatMass,
        Self::MatMoisture,
        Self::BoardMass,
        Self::BoardMoisture,
        Self::Thickness,
        Self::Density,
    ];

    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::BeltScale | Self::Fibre | Self::FurnishSolids => Kind::FibreFlow,
            Self::FibreMoisture | Self::MatMoisture | Self::BoardMoisture => Kind::Moisture,
            Self::DryingLoss => Kind::Share,
            Self::LineSpeed => Kind::LineSpeed,
            Self::MatWidth => Kind::Extent,
            Self::MatMass | Self::BoardMass => Kind::MatWeight,
            Self::Thickness => Kind::Thickness,
            Self::Density => Kind::BoardDensity,
            Self::Flow(_) | Self::Meter(_) | Self::Setting(_) => Kind::LiquidFlow,
            Self::Volume(_) => Kind::PumpFlow,
            Self::Solids(_) => Kind::Solids,
            Self::LiquidDensity(_) => Kind::LiquidDensity,
        }
    }

    /// Whether its error is told in points, and not relative.
    #[must_use]
    pub const fn in_points(self) -> bool {
        matches!(self.kind(), Kind::Moisture | Kind::Share | Kind::Solids)
    }

    /// Whether the quantity can have this value at all.
    #[must_use]
    pub const fn can_be(self, value: f64) -> bool {
        match self {
            Self::Solids(_) => value > 0.0 && value <= 1.0 + 1e-9,
            Self::DryingLoss => value > -0.02,
            _ => value >= 0.0,
        }
    }
}
