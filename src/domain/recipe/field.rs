//! The address of every number a person can type.

use crate::domain::recipe::liquid::{DoseWay, LiquidId};
use crate::quantity::Kind;

/// A number on the recipe page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Field {
    /// Fibre into the blender, oven-dry or as the belt scale reads it (see [`FeedWay`](crate::domain::recipe::draft::FeedWay)).
    FibreFlow,
    /// Line speed wanted, when the fibre flow follows from it.
    WantedLineSpeed,
    /// Press factor wanted, when the fibre flow follows from it.
    WantedPressFactor,
    /// Moisture of the fibre into the blender.
    FibreMoisture,
    /// Price of oven-dry fibre.
    FibrePrice,
    /// Moisture wanted of the mat at the former.
    MatMoisture,
    /// Points of moisture lost between blender and former.
    DryingLoss,
    /// Water dose as kg per 100 kg oven-dry fibre.
    WaterOnFibre,
    /// Water dose as a flow.
    WaterFlow,
    /// Board density at the board's moisture (EN 323).
    BoardDensity,
    /// Moisture at which the board's density is meant.
    BoardMoisture,
    /// Thickness of the finished, sanded board.
    Thickness,
    /// Sanded off the top face.
    SandTop,
    /// Sanded off the bottom face.
    SandBottom,
    /// Density of the sanded-off layers as a ratio of the mean.
    SurfaceRatio,
    /// Width of the mat after trimming.
    MatWidth,
    /// Width that the former spreads, before trimming.
    SpreadWidth,
    /// Heated length of the press.
    PressLength,
    /// Share of the furnish that the sifter rejects.
    Reject,
    /// Finished area per pressed area.
    AreaYield,
    /// Moisture of the board as it leaves the press.
    ExitMoisture,
    /// Bulk density of the loose mat, with its moisture.
    MatBulkDensity,
    /// Temperature of the mat before the press.
    MatTemperature,
    /// Water sprayed on the mat before the press, both faces together.
    SurfaceSpray,
    /// Hours of a shift.
    ShiftHours,
    /// Largest oven-dry fibre flow that dryer and silo can supply.
    FibreSupply,
    /// Largest oven-dry furnish flow through the blender.
    BlenderCapacity,
    /// Smallest press factor that cures the board.
    LeastPressFactor,
    /// Largest line speed of former and press.
    TopLineSpeed,
    /// A number of one liquid.
    Liquid(LiquidId, LiquidField),
}

/// A number of one liquid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LiquidField {
    /// The dose, in the way that the liquid's [`DoseWay`](crate::domain::recipe::liquid::DoseWay) says.
    Dose,
    /// Solids as delivered, by mass.
    Solids,
    /// Density as delivered.
    Density,
    /// Solids to which it is thinned with water before spraying.
    SpraySolids,
    /// Price of the liquid as delivered.
    Price,
}

impl LiquidField {
    /// All of them, in the order of the page.
    pub const ALL: &'static [LiquidField] =
        &[LiquidField::Dose, LiquidField::Solids, LiquidField::Density, LiquidField::SpraySolids, LiquidField::Price];
}

impl Field {
    /// All fields outside the liquids, in the order of the page: the material's.
    pub const PLAIN: &'static [Field] = &[
        Field::FibreFlow,
        Field::WantedLineSpeed,
        Field::WantedPressFactor,
        Field::FibreMoisture,
        Field::FibrePrice,
        Field::MatMoisture,
        Field::DryingLoss,
        Field::WaterOnFibre,
        Field::WaterFlow,
        Field::BoardDensity,
        Field::BoardMoisture,
        Field::Thickness,
        Field::SandTop,
        Field::SandBottom,
        Field::SurfaceRatio,
        Field::MatWidth,
        Field::SpreadWidth,
        Field::PressLength,
        Field::Reject,
        Field::AreaYield,
        Field::ExitMoisture,
        Field::MatBulkDensity,
        Field::MatTemperature,
        Field::SurfaceSpray,
        Field::ShiftHours,
        Field::FibreSupply,
        Field::BlenderCapacity,
        Field::LeastPressFactor,
        Field::TopLineSpeed,
    ];

    /// The stable key of the field: in stored files, and as `data-field` on the page. A liquid's
    /// field carries the liquid's number behind its key.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Liquid(id, field) => format!("{}.{}", field.key(), id.0),
            plain => plain.plain_key().to_owned(),
        }
    }

    const fn plain_key(self) -> &'static str {
        match self {
            Self::FibreFlow => "fibre_flow",
            Self::WantedLineSpeed => "wanted_line_speed",
            Self::WantedPressFactor => "wanted_press_factor",
            Self::FibreMoisture => "fibre_moisture",
            Self::FibrePrice => "fibre_price",
            Self::MatMoisture => "mat_moisture",
            Self::DryingLoss => "drying_loss",
            Self::WaterOnFibre => "water_on_fibre",
            Self::WaterFlow => "water_flow",
            Self::BoardDensity => "board_density",
            Self::BoardMoisture => "board_moisture",
            Self::Thickness => "thickness",
            Self::SandTop => "sand_top",
            Self::SandBottom => "sand_bottom",
            Self::SurfaceRatio => "surface_ratio",
            Self::MatWidth => "mat_width",
            Self::SpreadWidth => "spread_width",
            Self::PressLength => "press_length",
            Self::Reject => "reject",
            Self::AreaYield => "area_yield",
            Self::ExitMoisture => "exit_moisture",
            Self::MatBulkDensity => "mat_bulk_density",
            Self::MatTemperature => "mat_temperature",
            Self::SurfaceSpray => "surface_spray",
            Self::ShiftHours => "shift_hours",
            Self::FibreSupply => "fibre_supply",
            Self::BlenderCapacity => "blender_capacity",
            Self::LeastPressFactor => "least_press_factor",
            Self::TopLineSpeed => "top_line_speed",
            Self::Liquid(..) => "liquid",
        }
    }
}

impl LiquidField {
    /// The stable key of the field.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Dose => "dose",
            Self::Solids => "solids",
            Self::Density => "density",
            Self::SpraySolids => "spray_solids",
            Self::Price => "price",
        }
    }
}

impl Field {
    /// What the field measures. A liquid's field depends on the liquid: see [`LiquidField::kind`].
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::FibreFlow | Self::FibreSupply | Self::BlenderCapacity => Kind::FibreFlow,
            Self::WantedLineSpeed | Self::TopLineSpeed => Kind::LineSpeed,
            Self::WantedPressFactor | Self::LeastPressFactor => Kind::PressFactor,
            Self::FibreMoisture | Self::MatMoisture | Self::BoardMoisture | Self::ExitMoisture => Kind::Moisture,
            Self::FibrePrice => Kind::Price,
            Self::DryingLoss | Self::Reject | Self::AreaYield => Kind::Share,
            Self::WaterOnFibre => Kind::Dose,
            Self::WaterFlow => Kind::LiquidFlow,
            Self::BoardDensity => Kind::BoardDensity,
            Self::Thickness | Self::SandTop | Self::SandBottom => Kind::Thickness,
            Self::SurfaceRatio => Kind::Ratio,
            Self::MatWidth | Self::SpreadWidth | Self::PressLength => Kind::Extent,
            Self::MatBulkDensity => Kind::BulkDensity,
            Self::MatTemperature => Kind::Temperature,
            Self::SurfaceSpray => Kind::UsePerArea,
            Self::ShiftHours => Kind::ShiftTime,
            Self::Liquid(_, part) => part.kind(DoseWay::SolidsOnFibre),
        }
    }
}

impl LiquidField {
    /// What the field measures, which for the dose follows from its way.
    #[must_use]
    pub const fn kind(self, dose_way: DoseWay) -> Kind {
        match self {
            Self::Dose => match dose_way {
                DoseWay::LiquidPerBoard => Kind::UsePerVolume,
                DoseWay::SolidsOnFibre | DoseWay::SolidsOnLiquid(_) | DoseWay::LiquidOnFibre => Kind::Dose,
            },
            Self::Solids | Self::SpraySolids => Kind::Solids,
            Self::Density => Kind::LiquidDensity,
            Self::Price => Kind::Price,
        }
    }
}
