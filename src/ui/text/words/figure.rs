//! Figures: what each is, on which basis.

use super::name;
use crate::domain::balance::machine::Machine;
use crate::domain::{Figure, LiquidFigure};
use crate::ui::text::FigureWords;

const fn words(label: &'static str, note: &'static str) -> FigureWords {
    FigureWords { label, note }
}

pub(super) fn figure(figure: Figure) -> FigureWords {
    match figure {
        Figure::Fibre => words("Fibre", "oven-dry"),
        Figure::FibreWet => words("Fibre on the belt scale", "with its moisture"),
        Figure::FibreWater => words("Water with the fibre", "water"),
        Figure::Liquid(_, part) => liquid(part),
        Figure::Solids => words("Furnish solids", "oven-dry: fibre and all solids sprayed on it"),
        Figure::FurnishPerFibre => words("Furnish per fibre", "oven-dry furnish per oven-dry fibre"),
        Figure::WaterNeeded => words("Water needed", "water, for the mat moisture wanted"),
        Figure::WaterOnHand => words("Water on hand", "water, with fibre, liquids and thinning"),
        Figure::WaterDose => words("Water dose", "water, by mass"),
        Figure::WaterDoseVolume => words("Water dose by volume", "water at 20 °C"),
        Figure::WaterDoseOnFibre => words("Water dose on fibre", "water, on oven-dry fibre"),
        Figure::WaterExcess => words("Water in excess", "water above what is needed"),
        Figure::FibreMoistureForNoWater => words("Fibre moisture for no water dose", "water per oven-dry fibre"),
        Figure::BlenderMoisture => words("Furnish moisture after the blender", "water per oven-dry furnish"),
        Figure::MatMoisture => words("Mat moisture at the former", "water per oven-dry mat"),
        Figure::FurnishWet => words("Furnish out of the blender", "with its moisture"),
        Figure::MatWet => words("Mat weight, moist", "with its moisture, at the former"),
        Figure::MatOvenDry => words("Mat weight, oven-dry", "oven-dry"),
        Figure::MatFibre => words("Fibre in the mat", "oven-dry"),
        Figure::MatWater => words("Water in the mat", "water"),
        Figure::MatRunning => words("Mat weight per running length", "with its moisture, over the trimmed width"),
        Figure::MatHeight => words("Mat height", "loose, at the former"),
        Figure::Compaction => words("Compaction", "mat height per pressed thickness"),
        Figure::Reject => words("Sifter reject", "oven-dry"),
        Figure::NetSolids => words("Furnish to the press", "oven-dry"),
        Figure::TransportVapour => words("Water lost on the way", "water, from blender to former"),
        Figure::Trim => words("Mat trim, returned", "oven-dry"),
        Figure::LineSpeed => words("Line speed", ""),
        Figure::PressedThickness => words("Pressed thickness", "before sanding"),
        Figure::PressTime => words("Pressing time", "press length over line speed"),
        Figure::PressFactor => words("Press factor", "per pressed thickness"),
        Figure::SurfaceSpray => words("Face water", "water, all sprayed faces"),
        Figure::SurfaceSprayVolume => words("Face water by volume", "water at 20 °C, all sprayed faces"),
        Figure::PressVapour => words("Water driven out in the press", "water"),
        Figure::HeatPerWater => words("Heat per mass of that water", "to warm and evaporate it at 101.325 kPa"),
        Figure::PressHeat => words("Heat for that water", "without losses of the press"),
        Figure::RawBoard => words("Raw board weight", "at board moisture, before sanding"),
        Figure::FinishedArea => words("Finished area", "sanded and cut"),
        Figure::FinishedVolume => words("Finished volume", "sanded and cut"),
        Figure::FinishedMass => words("Finished board", "at board moisture"),
        Figure::SanderDust => words("Sander dust", "oven-dry"),
        Figure::Offcuts => words("Edges and crosscuts", "oven-dry"),
        Figure::FibrePerVolume => words("Fibre per volume of board", "oven-dry fibre, finished board"),
        Figure::FibrePerArea => words("Fibre per area of board", "oven-dry fibre, finished board"),
        Figure::FibrePerBoardMass => words("Fibre per mass of board", "oven-dry fibre, board at board moisture"),
        Figure::FibrePerShift => words("Fibre per shift", "oven-dry"),
        Figure::WaterPerVolume => words("Water per volume of board", "dosed and thinning water, finished board"),
        Figure::FibreCost => words("Cost of fibre", "per volume of finished board"),
        Figure::Cost => words("Cost of all that has a price", "per volume of finished board"),
        Figure::Used(machine) => words(name::machine(machine), "share of its limit in use"),
        Figure::FibreAtLimit(machine) => words(fibre_at_limit(machine), "oven-dry fibre at its limit"),
    }
}

const fn fibre_at_limit(machine: Machine) -> &'static str {
    match machine {
        Machine::FibreSupply => "Fibre flow at the limit of the fibre supply",
        Machine::Blender => "Fibre flow at the limit of the blender",
        Machine::Press => "Fibre flow at the limit of the press",
        Machine::LineSpeed => "Fibre flow at the top line speed",
    }
}

fn liquid(part: LiquidFigure) -> FigureWords {
    match part {
        LiquidFigure::Solids => words("Solids", "oven-dry"),
        LiquidFigure::Liquid => words("Flow by mass", "as delivered"),
        LiquidFigure::Volume => words("Flow by volume", "as delivered"),
        LiquidFigure::Water => words("Water it brings", "water"),
        LiquidFigure::Thinning => words("Thinning water", "water"),
        LiquidFigure::Spray => words("Through the nozzles", "thinned, by mass"),
        LiquidFigure::Share => words("Share of the furnish", "solids of all solids"),
        LiquidFigure::SolidsOnFibre => words("Solids on fibre", "solids on oven-dry fibre"),
        LiquidFigure::LiquidOnFibre => words("Liquid on fibre", "as delivered, on oven-dry fibre"),
        LiquidFigure::ThinningOnFibre => words("Thinning water on fibre", "water, on oven-dry fibre"),
        LiquidFigure::InMat => words("In the mat", "oven-dry"),
        LiquidFigure::PerVolume => words("Per volume of board", "as delivered, finished board"),
        LiquidFigure::PerArea => words("Per area of board", "as delivered, finished board"),
        LiquidFigure::PerBoardMass => words("Per mass of board", "as delivered, board at board moisture"),
        LiquidFigure::PerShift => words("Per shift by mass", "as delivered"),
        LiquidFigure::VolumePerShift => words("Per shift by volume", "as delivered"),
        LiquidFigure::Cost => words("Cost", "per volume of finished board"),
    }
}
