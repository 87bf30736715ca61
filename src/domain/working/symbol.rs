//! The letters of the model.

use super::Constant;
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::machine::Machine;
use crate::domain::recipe::field::{Field, LiquidField};

/// A letter with its index. A liquid's symbols carry its place in the recipe as well.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Symbol {
    /// The letter.
    pub letter: &'static str,
    /// The index, perhaps empty.
    pub index: &'static str,
    /// The liquid's place in the recipe, from 1.
    pub liquid: Option<usize>,
}

/// A letter with its index, perhaps empty.
pub(in crate::domain) const fn symbol(letter: &'static str, index: &'static str) -> Symbol {
    Symbol { letter, index, liquid: None }
}

impl Symbol {
    /// As plain text: `ω_f`, `m_2`, `T_sp,1`.
    #[must_use]
    pub fn to_text(self) -> String {
        match (self.index, self.liquid) {
            ("", None) => self.letter.to_owned(),
            (index, None) => format!("{}_{index}", self.letter),
            ("", Some(place)) => format!("{}_{place}", self.letter),
            (index, Some(place)) => format!("{}_{index},{place}", self.letter),
        }
    }

    pub(in crate::domain) const fn of_liquid(self, place: usize) -> Self {
        Self { liquid: Some(place), ..self }
    }

    /// The symbol of a field. A liquid's is without its place.
    #[must_use]
    pub const fn of_field(field: Field) -> Self {
        match field {
            Field::Liquid(_, part) => match part {
                LiquidField::Dose => symbol("d", ""),
                LiquidField::Solids => symbol("s", ""),
                LiquidField::Density => symbol("ρ", ""),
                LiquidField::SpraySolids => symbol("s′", ""),
                LiquidField::Price => symbol("p", ""),
            },
            plain => {
                let (letter, index) = plain.letter();
                symbol(letter, index)
            }
        }
    }

    /// The symbol of a figure. A liquid's is without its place.
    #[must_use]
    pub const fn of_figure(figure: Figure) -> Self {
        match figure {
            Figure::Fibre => symbol("F", ""),
            Figure::FibreWet => symbol("G", ""),
            Figure::FibreWater => symbol("W", "f"),
            Figure::Solids => symbol("S", ""),
            Figure::FurnishPerFibre => symbol("S/F", ""),
            Figure::WaterNeeded => symbol("W*", ""),
            Figure::WaterOnHand => symbol("W", ""),
            Figure::WaterDose => symbol("W", "d"),
            Figure::WaterDoseVolume => symbol("V", "d"),
            Figure::WaterDoseOnFibre => symbol("x", "w"),
            Figure::WaterExcess => symbol("W", "ex"),
            Figure::FibreMoistureForNoWater => symbol("ω", "f0"),
            Figure::BlenderMoisture => symbol("ω", "out"),
            Figure::MatMoisture => symbol("ω", "mat"),
            Figure::FurnishWet => symbol("S", "wet"),
            Figure::MatWet => symbol("M", "wet"),
            Figure::MatOvenDry => symbol("M", ""),
            Figure::MatFibre => symbol("M", "f"),
            Figure::MatWater => symbol("M", "w"),
            Figure::MatRunning => symbol("M", "run"),
            Figure::MatHeight => symbol("h", ""),
            Figure::Compaction => symbol("c", ""),
            Figure::Reject => symbol("S", "r"),
            Figure::NetSolids => symbol("S", "n"),
            Figure::TransportVapour => symbol("W", "δ"),
            Figure::Trim => symbol("S", "trim"),
            Figure::LineSpeed => symbol("v", ""),
            Figure::PressedThickness => symbol("t", "p"),
            Figure::PressTime => symbol("τ", ""),
            Figure::PressFactor => symbol("φ", ""),
            Figure::SurfaceSpray => symbol("W", "q"),
            Figure::SurfaceSprayVolume => symbol("V", "q"),
            Figure::PressVapour => symbol("W", "p"),
            Figure::HeatPerWater => symbol("h", "w"),
            Figure::PressHeat => symbol("Q", ""),
            Figure::RawBoard => symbol("m", ""),
            Figure::FinishedArea => symbol("A", ""),
            Figure::FinishedVolume => symbol("V", ""),
            Figure::FinishedMass => symbol("B", ""),
            Figure::SanderDust => symbol("S", "dust"),
            Figure::Offcuts => symbol("S", "cut"),
            Figure::FibrePerVolume => symbol("f", "V"),
            Figure::FibrePerArea => symbol("f", "A"),
            Figure::FibrePerBoardMass => symbol("f", "B"),
            Figure::FibrePerShift => symbol("f", "T"),
            Figure::WaterPerVolume => symbol("w", "V"),
            Figure::FibreCost => symbol("c", "f"),
            Figure::Cost => symbol("C", ""),
            Figure::Used(machine) => symbol("u", of_machine(machine)),
            Figure::FibreAtLimit(machine) => symbol("F", of_machine(machine)),
            Figure::Liquid(_, part) => match part {
                LiquidFigure::Solids => symbol("m", ""),
                LiquidFigure::Liquid => symbol("L", ""),
                LiquidFigure::Volume => symbol("V", "L"),
                LiquidFigure::Water => symbol("W", "L"),
                LiquidFigure::Thinning => symbol("W", "thin"),
                LiquidFigure::Spray => symbol("L", "sp"),
                LiquidFigure::Share => symbol("g", ""),
                LiquidFigure::SolidsOnFibre => symbol("x", ""),
                LiquidFigure::LiquidOnFibre => symbol("x", "L"),
                LiquidFigure::ThinningOnFibre => symbol("x", "thin"),
                LiquidFigure::InMat => symbol("M", "L"),
                LiquidFigure::PerVolume => symbol("l", "V"),
                LiquidFigure::PerArea => symbol("l", "A"),
                LiquidFigure::PerBoardMass => symbol("l", "B"),
                LiquidFigure::PerShift => symbol("l", "T"),
                LiquidFigure::VolumePerShift => symbol("V", "T"),
                LiquidFigure::Cost => symbol("c", ""),
            },
        }
    }

    /// The symbol of a constant.
    #[must_use]
    pub const fn of_constant(constant: Constant) -> Self {
        match constant {
            Constant::WaterDensity => symbol("ρ", "w"),
            Constant::SensibleHeat => symbol("Δh", ""),
            Constant::LatentHeat => symbol("r", "w"),
            Constant::DryerHeat => symbol("h", "dry"),
            Constant::HoursPerYear => symbol("T", "a"),
        }
    }
}

const fn of_machine(machine: Machine) -> &'static str {
    match machine {
        Machine::FibreSupply => "supply",
        Machine::Blender => "blender",
        Machine::Press => "press",
        Machine::LineSpeed => "speed",
    }
}
