//! Figures of the bench: what each is, on which basis.

use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::weigh_sheet::working::WeighOrigin;
use crate::domain::trial::{Property, WeighFigure, WeighLineFigure};
use crate::ui::text::FigureWords;
use crate::ui::text::words::balance;

const fn words(label: &'static str, note: &'static str) -> FigureWords {
    FigureWords { label, note }
}

pub(super) fn figure(figure: WeighFigure) -> FigureWords {
    match figure {
        WeighFigure::MatArea => words("Mat area", ""),
        WeighFigure::MatOvenDry => words("Mat, oven-dry", "oven-dry, one mat"),
        WeighFigure::MatMoist => words("Furnish to lay", "resinated, with its moisture, one mat"),
        WeighFigure::RawBoard => words("Raw board expected", "at board moisture, before sanding"),
        WeighFigure::FinishedBoard => words("Finished board expected", "at board moisture, edges not trimmed"),
        WeighFigure::FibreFactor => words("Overage on the fibre", "factor"),
        WeighFigure::LiquidFactor => words("Overage on the liquids", "factor"),
        WeighFigure::Batch => words("Batch", "all that goes into the blender at once"),
        WeighFigure::Stops => words("Stops", "pressed thickness"),
        WeighFigure::PressTime => words("Pressing time", ""),
        WeighFigure::SprayTime => words("Spray time of a batch", "all liquids one after another"),
        WeighFigure::ActualMoisture => {
            words("Actual mat moisture", "water per oven-dry furnish, by the rounded masses")
        }
        WeighFigure::Line(_, part) => match part {
            WeighLineFigure::Mass => words("Exact mass", "one batch"),
            WeighLineFigure::Rounded => words("Mass to weigh", "one batch, rounded to the balance"),
            WeighLineFigure::Volume => words("Volume", "of the mass to weigh"),
            WeighLineFigure::SprayTime => words("Spray time", "with the water that thins it"),
            WeighLineFigure::Target => words("Target dose", "solids on oven-dry fibre"),
            WeighLineFigure::Actual => words("Actual dose", "solids on oven-dry fibre, by the rounded masses"),
            WeighLineFigure::Deviation => words("Deviation of the dose", "share of the target dose"),
        },
    }
}

pub(super) fn board_figure(figure: BoardFigure) -> FigureWords {
    match figure {
        BoardFigure::WholeDensity => words("Density of the whole board", "at its moisture"),
        BoardFigure::Density(_) => words("Density", "at its moisture"),
        BoardFigure::Moisture(_) => words("Moisture", "water per oven-dry mass"),
        BoardFigure::OvenDryDensity(_) => words("Oven-dry density", "oven-dry mass per volume as measured"),
        BoardFigure::BendingStrength(_) => words("Bending strength", ""),
        BoardFigure::BendingModulus(_) => words("Modulus of elasticity in bending", "apparent: shear is in it"),
        BoardFigure::InternalBond(_) => words("Internal bond", ""),
        BoardFigure::Swelling(_) => words("Thickness swelling", "share of the thickness before"),
        BoardFigure::HalfWidth(_) => words("± of the mean", "95 % interval, from the means of boards"),
        BoardFigure::Lower(_) => words("Lower 95 % quantile", "from the means of boards (EN 326-1, from memory)"),
        BoardFigure::Upper(_) => words("Upper 95 % quantile", "from the means of boards (EN 326-1, from memory)"),
        BoardFigure::Correction => {
            words("Correction of the next mat", "factor on its mass; thickness is not corrected")
        }
    }
}

pub(super) fn property(property: Property) -> FigureWords {
    match property {
        Property::Density => words("Density", "at its moisture (EN 323)"),
        Property::OvenDryDensity => words("Oven-dry density", "oven-dry mass per volume as measured (EN 323)"),
        Property::Moisture => words("Moisture", "water per oven-dry mass (EN 322)"),
        Property::Thickness => words("Thickness", "EN 324-1"),
        Property::BendingStrength => words("Bending strength", "EN 310"),
        Property::BendingModulus => words("Modulus of elasticity in bending", "EN 310"),
        Property::InternalBond => words("Internal bond", "EN 319"),
        Property::Swelling => words("Thickness swelling, 24 h", "share of the thickness before (EN 317)"),
        Property::SwellingTwo => words("Thickness swelling, 2 h", "share of the thickness before (EN 317)"),
        Property::Absorption => words("Water absorption, 24 h", "share of the mass before (ASTM D1037)"),
    }
}

pub(super) fn origin(origin: WeighOrigin) -> &'static str {
    match origin {
        WeighOrigin::Field(_) => "typed on the sheet",
        WeighOrigin::Figure(_) => "of the sheet",
        WeighOrigin::RecipeField(_) => "of the recipe, or typed on the sheet in its place",
        WeighOrigin::RecipeFigure(_) => "of the recipe as it is made on the bench",
        WeighOrigin::Batches => "number of batches",
        WeighOrigin::Constant(constant) => balance::constant(constant),
    }
}
