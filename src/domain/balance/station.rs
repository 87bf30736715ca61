//! The stations in the material's order.

use crate::domain::recipe::field::Field;

/// A station of the line, as inputs, figures and findings are grouped.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Station {
    /// Fibre as it comes.
    Fibre,
    /// Liquids and blender.
    Blender,
    /// Sifter, former and mat.
    Mat,
    /// Press.
    Press,
    /// Board: sander, saw, stack.
    Board,
}

impl Station {
    /// All stations, in the material's order.
    pub const ALL: &'static [Station] = &[Self::Fibre, Self::Blender, Self::Mat, Self::Press, Self::Board];

    /// The station that a field belongs to.
    #[must_use]
    pub const fn of(field: Field) -> Self {
        match field {
            Field::FibreFlow
            | Field::WantedLineSpeed
            | Field::WantedPressFactor
            | Field::FibreMoisture
            | Field::FibrePrice
            | Field::FibreSupply => Self::Fibre,
            Field::Liquid(..) | Field::WaterOnFibre | Field::WaterFlow | Field::BlenderCapacity => Self::Blender,
            Field::MatMoisture
            | Field::DryingLoss
            | Field::Reject
            | Field::MatWidth
            | Field::SpreadWidth
            | Field::MatBulkDensity
            | Field::MatTemperature
            | Field::SurfaceSpray => Self::Mat,
            Field::PressLength | Field::ExitMoisture | Field::LeastPressFactor | Field::TopLineSpeed => Self::Press,
            Field::BoardDensity
            | Field::BoardMoisture
            | Field::Thickness
            | Field::SandTop
            | Field::SandBottom
            | Field::SurfaceRatio
            | Field::AreaYield
            | Field::ShiftHours => Self::Board,
        }
    }

    /// The stable key of the station, in addresses and on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Fibre => "fibre",
            Self::Blender => "blender",
            Self::Mat => "mat",
            Self::Press => "press",
            Self::Board => "board",
        }
    }
}
