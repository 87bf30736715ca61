//! Every figure of the solved balance by name, so that views, workings and exports share one list.

use crate::domain::balance::machine::Machine;
use crate::domain::balance::station::Station;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Kind;

/// A figure of the balance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Figure {
    /// Oven-dry fibre flow F.
    Fibre,
    /// Fibre flow as a belt scale reads it.
    FibreWet,
    /// Water that comes with the fibre.
    FibreWater,
    /// A figure of one liquid.
    Liquid(LiquidId, LiquidFigure),
    /// Solids of the furnish S.
    Solids,
    /// Solids of the furnish per oven-dry fibre, S/F.
    FurnishPerFibre,
    /// Water that the mat moisture wanted needs, W*.
    WaterNeeded,
    /// Water on hand before any is dosed, W.
    WaterOnHand,
    /// Water dose by mass.
    WaterDose,
    /// Water dose by volume, at 20 °C.
    WaterDoseVolume,
    /// Water dose per oven-dry fibre.
    WaterDoseOnFibre,
    /// Water above what is needed.
    WaterExcess,
    /// Fibre moisture at which no water need be dosed.
    FibreMoistureForNoWater,
    /// Furnish moisture as it leaves the blender.
    BlenderMoisture,
    /// Mat moisture at the former.
    MatMoisture,
    /// Moist furnish out of the blender.
    FurnishWet,
    /// Moist mat weight per area.
    MatWet,
    /// Oven-dry mat weight per area.
    MatOvenDry,
    /// Oven-dry fibre in the mat per area.
    MatFibre,
    /// Water in the mat per area.
    MatWater,
    /// Moist mat weight per running length.
    MatRunning,
    /// Mat height.
    MatHeight,
    /// Mat height per pressed thickness.
    Compaction,
    /// Solids rejected by the sifter.
    Reject,
    /// Solids that reach the press.
    NetSolids,
    /// Water lost on the way to the former.
    TransportVapour,
    /// Solids of the trimmed mat edges, which return.
    Trim,
    /// Line speed.
    LineSpeed,
    /// Pressed thickness.
    PressedThickness,
    /// Pressing time.
    PressTime,
    /// Pressing time per pressed thickness.
    PressFactor,
    /// Water sprayed on the mat by itself.
    SurfaceSpray,
    /// The same by volume, at 20 °C.
    SurfaceSprayVolume,
    /// Water driven out in the press.
    PressVapour,
    /// Heat to warm and evaporate a mass of water.
    HeatPerWater,
    /// Heat that the water driven out takes.
    PressHeat,
    /// Raw board per area at board moisture.
    RawBoard,
    /// Finished area.
    FinishedArea,
    /// Finished volume.
    FinishedVolume,
    /// Finished mass at board moisture.
    FinishedMass,
    /// Solids sanded off.
    SanderDust,
    /// Solids of edges and crosscuts.
    Offcuts,
    /// Oven-dry fibre per volume of finished board.
    FibrePerVolume,
    /// Oven-dry fibre per area of finished board.
    FibrePerArea,
    /// Oven-dry fibre per mass of finished board.
    FibrePerBoardMass,
    /// Oven-dry fibre per shift.
    FibrePerShift,
    /// Dosed and thinning water per volume of finished board.
    WaterPerVolume,
    /// Cost of the fibre per volume of finished board.
    FibreCost,
    /// Cost of all that has a price per volume of finished board.
    Cost,
    /// Share of a machine's limit in use.
    Used(Machine),
    /// Oven-dry fibre flow at which a machine is fully used.
    FibreAtLimit(Machine),
}

/// A figure of one liquid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LiquidFigure {
    /// Solids.
    Solids,
    /// Liquid as delivered, by mass.
    Liquid,
    /// Liquid as delivered, by volume.
    Volume,
    /// Water that comes with it.
    Water,
    /// Water that thins it.
    Thinning,
    /// What goes through the nozzles, by mass.
    Spray,
    /// Share of the furnish's solids.
    Share,
    /// Solids per oven-dry fibre.
    SolidsOnFibre,
    /// Liquid as delivered per oven-dry fibre.
    LiquidOnFibre,
    /// Water that thins it per oven-dry fibre.
    ThinningOnFibre,
    /// Oven-dry mass per area of mat.
    InMat,
    /// Liquid as delivered per volume of finished board.
    PerVolume,
    /// Liquid as delivered per area of finished board.
    PerArea,
    /// Liquid as delivered per mass of finished board.
    PerBoardMass,
    /// Liquid as delivered per shift, by mass.
    PerShift,
    /// Liquid as delivered per shift, by volume.
    VolumePerShift,
    /// Cost per volume of finished board.
    Cost,
}

impl LiquidFigure {
    /// All figures of a liquid, in the order in which they are shown.
    pub const ALL: &'static [LiquidFigure] = &[
        Self::Solids,
        Self::Liquid,
        Self::Volume,
        Self::Water,
        Self::Thinning,
        Self::Spray,
        Self::Share,
        Self::SolidsOnFibre,
        Self::LiquidOnFibre,
        Self::ThinningOnFibre,
        Self::InMat,
        Self::PerVolume,
        Self::PerArea,
        Self::PerBoardMass,
        Self::PerShift,
        Self::VolumePerShift,
        Self::Cost,
    ];

    /// What the figure measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Solids | Self::Liquid | Self::Water | Self::Thinning | Self::Spray => Kind::LiquidFlow,
            Self::Volume => Kind::PumpFlow,
            Self::Share | Self::PerBoardMass => Kind::Share,
            Self::SolidsOnFibre | Self::LiquidOnFibre | Self::ThinningOnFibre => Kind::Dose,
            Self::InMat | Self::PerArea => Kind::UsePerArea,
            Self::PerVolume => Kind::UsePerVolume,
            Self::PerShift => Kind::BatchMass,
            Self::VolumePerShift => Kind::BatchVolume,
            Self::Cost => Kind::Cost,
        }
    }

    /// The stable key of the figure.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Solids => "solids",
            Self::Liquid => "liquid",
            Self::Volume => "volume",
            Self::Water => "water",
            Self::Thinning => "thinning",
            Self::Spray => "spray",
            Self::Share => "share",
            Self::SolidsOnFibre => "solids_on_fibre",
            Self::LiquidOnFibre => "liquid_on_fibre",
            Self::ThinningOnFibre => "thinning_on_fibre",
            Self::InMat => "in_mat",
            Self::PerVolume => "per_volume",
            Self::PerArea => "per_area",
            Self::PerBoardMass => "per_board_mass",
            Self::PerShift => "per_shift",
            Self::VolumePerShift => "volume_per_shift",
            Self::Cost => "cost",
        }
    }
}

impl Figure {
    /// All figures outside the liquids and the machines, in the material's order.
    pub const PLAIN: &'static [Figure] = &[
        Self::Fibre,
        Self::FibreWet,
        Self::FibreWater,
        Self::Solids,
        Self::FurnishPerFibre,
        Self::WaterNeeded,
        Self::WaterOnHand,
        Self::WaterDose,
        Self::WaterDoseVolume,
        Self::WaterDoseOnFibre,
        Self::WaterExcess,
        Self::FibreMoistureForNoWater,
        Self::BlenderMoisture,
        Self::FurnishWet,
        Self::Reject,
        Self::NetSolids,
        Self::TransportVapour,
        Self::MatMoisture,
        Self::MatWet,
        Self::MatOvenDry,
        Self::MatFibre,
        Self::MatWater,
        Self::MatRunning,
        Self::MatHeight,
        Self::Compaction,
        Self::Trim,
        Self::LineSpeed,
        Self::PressedThickness,
        Self::PressTime,
        Self::PressFactor,
        Self::SurfaceSpray,
        Self::SurfaceSprayVolume,
        Self::PressVapour,
        Self::HeatPerWater,
        Self::PressHeat,
        Self::RawBoard,
        Self::FinishedArea,
        Self::FinishedVolume,
        Self::FinishedMass,
        Self::SanderDust,
        Self::Offcuts,
        Self::FibrePerVolume,
        Self::FibrePerArea,
        Self::FibrePerBoardMass,
        Self::FibrePerShift,
        Self::WaterPerVolume,
        Self::FibreCost,
        Self::Cost,
    ];

    /// The station that the figure belongs to.
    #[must_use]
    pub const fn station(self) -> Station {
        match self {
            Self::Fibre
            | Self::FibreWet
            | Self::FibreWater
            | Self::Used(Machine::FibreSupply)
            | Self::FibreAtLimit(Machine::FibreSupply) => Station::Fibre,
            Self::Liquid(..)
            | Self::Solids
            | Self::FurnishPerFibre
            | Self::WaterNeeded
            | Self::WaterOnHand
            | Self::WaterDose
            | Self::WaterDoseVolume
            | Self::WaterDoseOnFibre
            | Self::WaterExcess
            | Self::FibreMoistureForNoWater
            | Self::BlenderMoisture
            | Self::FurnishWet
            | Self::Used(Machine::Blender)
            | Self::FibreAtLimit(Machine::Blender) => Station::Blender,
            Self::Reject
            | Self::NetSolids
            | Self::TransportVapour
            | Self::MatMoisture
            | Self::MatWet
            | Self::MatOvenDry
            | Self::MatFibre
            | Self::MatWater
            | Self::MatRunning
            | Self::MatHeight
            | Self::Compaction
            | Self::Trim => Station::Mat,
            Self::LineSpeed
            | Self::PressedThickness
            | Self::PressTime
            | Self::PressFactor
            | Self::SurfaceSpray
            | Self::SurfaceSprayVolume
            | Self::PressVapour
            | Self::HeatPerWater
            | Self::PressHeat
            | Self::RawBoard
            | Self::Used(Machine::Press | Machine::LineSpeed)
            | Self::FibreAtLimit(Machine::Press | Machine::LineSpeed) => Station::Press,
            Self::FinishedArea
            | Self::FinishedVolume
            | Self::FinishedMass
            | Self::SanderDust
            | Self::Offcuts
            | Self::FibrePerVolume
            | Self::FibrePerArea
            | Self::FibrePerBoardMass
            | Self::FibrePerShift
            | Self::WaterPerVolume
            | Self::FibreCost
            | Self::Cost => Station::Board,
        }
    }

    /// What the figure measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Fibre | Self::FibreWet | Self::Solids | Self::FurnishWet | Self::NetSolids | Self::FinishedMass => {
                Kind::FibreFlow
            }
            Self::FibreAtLimit(_) => Kind::FibreFlow,
            Self::FibreWater | Self::WaterNeeded | Self::WaterOnHand | Self::WaterDose | Self::WaterExcess => {
                Kind::LiquidFlow
            }
            Self::WaterDoseVolume | Self::SurfaceSprayVolume => Kind::PumpFlow,
            Self::WaterDoseOnFibre => Kind::Dose,
            Self::FibreMoistureForNoWater | Self::BlenderMoisture | Self::MatMoisture => Kind::Moisture,
            Self::MatWet | Self::MatOvenDry | Self::MatFibre | Self::MatWater | Self::RawBoard => Kind::MatWeight,
            Self::MatRunning => Kind::RunningWeight,
            Self::MatHeight | Self::PressedThickness => Kind::Thickness,
            Self::Compaction | Self::FurnishPerFibre => Kind::Ratio,
            Self::Reject
            | Self::TransportVapour
            | Self::Trim
            | Self::SurfaceSpray
            | Self::PressVapour
            | Self::SanderDust
            | Self::Offcuts => Kind::LossFlow,
            Self::LineSpeed => Kind::LineSpeed,
            Self::PressTime => Kind::PressTime,
            Self::PressFactor => Kind::PressFactor,
            Self::HeatPerWater => Kind::SpecificHeat,
            Self::PressHeat => Kind::HeatFlow,
            Self::FinishedArea => Kind::AreaFlow,
            Self::FinishedVolume => Kind::BoardFlow,
            Self::FibrePerVolume | Self::WaterPerVolume => Kind::UsePerVolume,
            Self::FibrePerArea => Kind::UsePerArea,
            Self::FibrePerBoardMass | Self::Used(_) => Kind::Share,
            Self::FibrePerShift => Kind::BatchMass,
            Self::FibreCost | Self::Cost => Kind::Cost,
            Self::Liquid(_, part) => part.kind(),
        }
    }

    /// The stable key of the figure: `data-figure` on the page, and in exports. A liquid's figure
    /// carries the liquid's number behind its key.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Liquid(id, part) => format!("{}.{}", part.key(), id.0),
            Self::Used(machine) => format!("used.{}", machine.key()),
            Self::FibreAtLimit(machine) => format!("fibre_at_limit.{}", machine.key()),
            plain => plain.plain_key().to_owned(),
        }
    }

    const fn plain_key(self) -> &'static str {
        match self {
            Self::Fibre => "fibre",
            Self::FibreWet => "fibre_wet",
            Self::FibreWater => "fibre_water",
            Self::Solids => "solids",
            Self::FurnishPerFibre => "furnish_per_fibre",
            Self::WaterNeeded => "water_needed",
            Self::WaterOnHand => "water_on_hand",
            Self::WaterDose => "water_dose",
            Self::WaterDoseVolume => "water_dose_volume",
            Self::WaterDoseOnFibre => "water_dose_on_fibre",
            Self::WaterExcess => "water_excess",
            Self::FibreMoistureForNoWater => "fibre_moisture_for_no_water",
            Self::BlenderMoisture => "blender_moisture",
            Self::MatMoisture => "mat_moisture",
            Self::FurnishWet => "furnish_wet",
            Self::MatWet => "mat_wet",
            Self::MatOvenDry => "mat_oven_dry",
            Self::MatFibre => "mat_fibre",
            Self::MatWater => "mat_water",
            Self::MatRunning => "mat_running",
            Self::MatHeight => "mat_height",
            Self::Compaction => "compaction",
            Self::Reject => "reject",
            Self::NetSolids => "net_solids",
            Self::TransportVapour => "transport_vapour",
            Self::Trim => "trim",
            Self::LineSpeed => "line_speed",
            Self::PressedThickness => "pressed_thickness",
            Self::PressTime => "press_time",
            Self::PressFactor => "press_factor",
            Self::SurfaceSpray => "surface_spray",
            Self::SurfaceSprayVolume => "surface_spray_volume",
            Self::PressVapour => "press_vapour",
            Self::HeatPerWater => "heat_per_water",
            Self::PressHeat => "press_heat",
            Self::RawBoard => "raw_board",
            Self::FinishedArea => "finished_area",
            Self::FinishedVolume => "finished_volume",
            Self::FinishedMass => "finished_mass",
            Self::SanderDust => "sander_dust",
            Self::Offcuts => "offcuts",
            Self::FibrePerVolume => "fibre_per_volume",
            Self::FibrePerArea => "fibre_per_area",
            Self::FibrePerBoardMass => "fibre_per_board_mass",
            Self::FibrePerShift => "fibre_per_shift",
            Self::WaterPerVolume => "water_per_volume",
            Self::FibreCost => "fibre_cost",
            Self::Cost => "cost",
            Self::Liquid(..) | Self::Used(_) | Self::FibreAtLimit(_) => "",
        }
    }
}

impl Figure {
    /// Whether it grows with the fibre flow, or follows from it: a recipe without that flow does not give it.
    #[must_use]
    pub const fn is_of_flow(self) -> bool {
        match self {
            Self::Fibre
            | Self::FibreWet
            | Self::FibreWater
            | Self::Solids
            | Self::WaterNeeded
            | Self::WaterOnHand
            | Self::WaterDose
            | Self::WaterDoseVolume
            | Self::WaterExcess
            | Self::FurnishWet
            | Self::Reject
            | Self::NetSolids
            | Self::TransportVapour
            | Self::Trim
            | Self::LineSpeed
            | Self::PressTime
            | Self::PressFactor
            | Self::SurfaceSpray
            | Self::SurfaceSprayVolume
            | Self::PressVapour
            | Self::PressHeat
            | Self::FinishedArea
            | Self::FinishedVolume
            | Self::FinishedMass
            | Self::SanderDust
            | Self::Offcuts
            | Self::FibrePerShift
            | Self::Used(_)
            | Self::FibreAtLimit(_) => true,
            Self::Liquid(_, part) => matches!(
                part,
                LiquidFigure::Solids
                    | LiquidFigure::Liquid
                    | LiquidFigure::Volume
                    | LiquidFigure::Water
                    | LiquidFigure::Thinning
                    | LiquidFigure::Spray
                    | LiquidFigure::PerShift
                    | LiquidFigure::VolumePerShift
            ),
            Self::FurnishPerFibre
            | Self::WaterDoseOnFibre
            | Self::FibreMoistureForNoWater
            | Self::BlenderMoisture
            | Self::MatMoisture
            | Self::MatWet
            | Self::MatOvenDry
            | Self::MatFibre
            | Self::MatWater
            | Self::MatRunning
            | Self::MatHeight
            | Self::Compaction
            | Self::PressedThickness
            | Self::HeatPerWater
            | Self::RawBoard
            | Self::FibrePerVolume
            | Self::FibrePerArea
            | Self::FibrePerBoardMass
            | Self::WaterPerVolume
            | Self::FibreCost
            | Self::Cost => false,
        }
    }
}
