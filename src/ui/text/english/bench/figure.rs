//! Figures of the bench: what each is, on which basis.

use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::weigh_sheet::working::Origin;
use crate::domain::trial::{Figure, LineFigure, Property};
use crate::ui::text::FigureWords;
use crate::ui::text::english::balance;

const fn words(label: &'static str, note: &'static str) -> FigureWords {
    FigureWords { label, note }
}

pub(super) fn figure(figure: Figure) -> FigureWords {
    match figure {
        Figure::MatArea => words("Mat area", ""),
        Figure::MatOvenDry => words("Mat, oven-dry", "oven-dry, one mat"),
        Figure::MatMoist => words("Furnish to lay", "resinated, with its moisture, one mat"),
        Figure::RawBoard => words("Raw board expected", "at board moisture, before sanding"),
        Figure::FinishedBoard => words("Finished board expected", "at board moisture, edges not trimmed"),
        Figure::FibreFactor => words("Overage on the fibre", "factor"),
        Figure::LiquidFactor => words("Overage on the liquids", "factor"),
        Figure::Batch => words("Batch", "all that goes into the blender at once"),
        Figure::Stops => words("Stops", "pressed thickness"),
        Figure::PressTime => words("Pressing time", ""),
        Figure::SprayTime => words("Spray time of a batch", "all liquids one after another"),
        Figure::GivenMoisture => words("Mat moisture given", "water per oven-dry furnish, by the rounded masses"),
        Figure::Line(_, part) => match part {
            LineFigure::Mass => words("Exact mass", "one batch"),
            LineFigure::Rounded => words("Mass to weigh", "one batch, rounded to the balance"),
            LineFigure::Volume => words("Volume", "of the mass to weigh"),
            LineFigure::SprayTime => words("Spray time", "with the water that thins it"),
            LineFigure::Wanted => words("Dose wanted", "solids on oven-dry fibre"),
            LineFigure::Given => words("Dose given", "solids on oven-dry fibre, by the rounded masses"),
            LineFigure::Deviation => words("Deviation of the dose", "share of the dose wanted"),
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
        BoardFigure::Lower(_) => words("Lower 5 % quantile", "from the means of boards (EN 326-1, from memory)"),
        BoardFigure::Upper(_) => words("Upper 5 % quantile", "from the means of boards (EN 326-1, from memory)"),
        BoardFigure::Correction => words("Correction of the next mat", "factor on its mass, same thickness"),
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
        Property::Swelling => words("Thickness swelling", "share of the thickness before (EN 317)"),
    }
}

pub(super) fn origin(origin: Origin) -> &'static str {
    match origin {
        Origin::Field(_) => "typed on the sheet",
        Origin::Figure(_) => "of the sheet",
        Origin::RecipeField(_) => "of the recipe, or typed on the sheet in its place",
        Origin::RecipeFigure(_) => "of the recipe as it is made on the bench",
        Origin::Batches => "number of batches",
        Origin::Constant(constant) => balance::constant(constant),
    }
}
