//! Figures: what each is, on which basis.

use super::name;
use crate::domain::balance::machine::Machine;
use crate::domain::{Figure, LiquidFigure};
use crate::ui::text::FigureWords;
use crate::{figure, label};

/// Label and basis of a figure. A liquid's figure is labelled without the liquid's name, a
/// machine's with the machine's.
#[must_use]
pub fn figure(figure: Figure) -> FigureWords {
    match figure {
        Figure::Fibre => figure!("figure-fibre"),
        Figure::FibreWet => figure!("figure-fibre-wet"),
        Figure::FibreWater => figure!("figure-fibre-water"),
        Figure::Liquid(_, part) => liquid(part),
        Figure::Solids => figure!("figure-solids"),
        Figure::FurnishPerFibre => figure!("figure-furnish-per-fibre"),
        Figure::WaterNeeded => figure!("figure-water-needed"),
        Figure::WaterOnHand => figure!("figure-water-on-hand"),
        Figure::WaterDose => figure!("figure-water-dose"),
        Figure::WaterDoseVolume => figure!("figure-water-dose-volume"),
        Figure::WaterDoseOnFibre => figure!("figure-water-dose-on-fibre"),
        Figure::WaterExcess => figure!("figure-water-excess"),
        Figure::FibreMoistureForNoWater => figure!("figure-fibre-moisture-for-no-water"),
        Figure::BlenderMoisture => figure!("figure-blender-moisture"),
        Figure::MatMoisture => figure!("figure-mat-moisture"),
        Figure::FurnishWet => figure!("figure-furnish-wet"),
        Figure::MatWet => figure!("figure-mat-wet"),
        Figure::MatOvenDry => figure!("figure-mat-oven-dry"),
        Figure::MatFibre => figure!("figure-mat-fibre"),
        Figure::MatWater => figure!("figure-mat-water"),
        Figure::MatRunning => figure!("figure-mat-running"),
        Figure::MatHeight => figure!("figure-mat-height"),
        Figure::Compaction => figure!("figure-compaction"),
        Figure::Reject => figure!("figure-reject"),
        Figure::NetSolids => figure!("figure-net-solids"),
        Figure::TransportVapour => figure!("figure-transport-vapour"),
        Figure::Trim => figure!("figure-trim"),
        Figure::LineSpeed => figure!("figure-line-speed"),
        Figure::PressedThickness => figure!("figure-pressed-thickness"),
        Figure::PressTime => figure!("figure-press-time"),
        Figure::PressFactor => figure!("figure-press-factor"),
        Figure::SurfaceSpray => figure!("figure-surface-spray"),
        Figure::SurfaceSprayVolume => figure!("figure-surface-spray-volume"),
        Figure::PressVapour => figure!("figure-press-vapour"),
        Figure::HeatPerWater => figure!("figure-heat-per-water"),
        Figure::PressHeat => figure!("figure-press-heat"),
        Figure::RawBoard => figure!("figure-raw-board"),
        Figure::FinishedArea => figure!("figure-finished-area"),
        Figure::FinishedVolume => figure!("figure-finished-volume"),
        Figure::FinishedMass => figure!("figure-finished-mass"),
        Figure::SanderDust => figure!("figure-sander-dust"),
        Figure::Offcuts => figure!("figure-offcuts"),
        Figure::FibrePerVolume => figure!("figure-fibre-per-volume"),
        Figure::FibrePerArea => figure!("figure-fibre-per-area"),
        Figure::FibrePerBoardMass => figure!("figure-fibre-per-board-mass"),
        Figure::FibrePerShift => figure!("figure-fibre-per-shift"),
        Figure::WaterPerVolume => figure!("figure-water-per-volume"),
        Figure::FibreCost => figure!("figure-fibre-cost"),
        Figure::Cost => figure!("figure-cost"),
        Figure::Used(machine) => FigureWords { label: name::machine(machine), note: label!("figure-used-note") },
        Figure::FibreAtLimit(machine) => {
            FigureWords { label: fibre_at_limit(machine), note: label!("figure-fibre-at-limit-note") }
        }
    }
}

fn fibre_at_limit(machine: Machine) -> &'static str {
    match machine {
        Machine::FibreSupply => label!("figure-fibre-at-limit-fibre-supply"),
        Machine::Blender => label!("figure-fibre-at-limit-blender"),
        Machine::Press => label!("figure-fibre-at-limit-press"),
        Machine::LineSpeed => label!("figure-fibre-at-limit-line-speed"),
    }
}

fn liquid(part: LiquidFigure) -> FigureWords {
    match part {
        LiquidFigure::Solids => figure!("figure-liquid-solids"),
        LiquidFigure::Liquid => figure!("figure-liquid-liquid"),
        LiquidFigure::Volume => figure!("figure-liquid-volume"),
        LiquidFigure::Water => figure!("figure-liquid-water"),
        LiquidFigure::Thinning => figure!("figure-liquid-thinning"),
        LiquidFigure::Spray => figure!("figure-liquid-spray"),
        LiquidFigure::Share => figure!("figure-liquid-share"),
        LiquidFigure::SolidsOnFibre => figure!("figure-liquid-solids-on-fibre"),
        LiquidFigure::LiquidOnFibre => figure!("figure-liquid-liquid-on-fibre"),
        LiquidFigure::ThinningOnFibre => figure!("figure-liquid-thinning-on-fibre"),
        LiquidFigure::InMat => figure!("figure-liquid-in-mat"),
        LiquidFigure::PerVolume => figure!("figure-liquid-per-volume"),
        LiquidFigure::PerArea => figure!("figure-liquid-per-area"),
        LiquidFigure::PerBoardMass => figure!("figure-liquid-per-board-mass"),
        LiquidFigure::PerShift => figure!("figure-liquid-per-shift"),
        LiquidFigure::VolumePerShift => figure!("figure-liquid-volume-per-shift"),
        LiquidFigure::Cost => figure!("figure-liquid-cost"),
    }
}
