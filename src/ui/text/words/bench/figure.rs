//! Figures of the bench: what each is, on which basis.

use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::weigh_sheet::working::WeighOrigin;
use crate::domain::trial::{Property, WeighFigure, WeighLineFigure};
use crate::ui::text::FigureWords;
use crate::ui::text::words::balance;
use crate::{figure, label};

/// Label and basis of a figure of the sheet, a line's without the line.
#[must_use]
pub fn figure(figure: WeighFigure) -> FigureWords {
    match figure {
        WeighFigure::MatArea => figure!("bench-figure-mat-area"),
        WeighFigure::MatOvenDry => figure!("bench-figure-mat-oven-dry"),
        WeighFigure::MatMoist => figure!("bench-figure-mat-moist"),
        WeighFigure::RawBoard => figure!("bench-figure-raw-board"),
        WeighFigure::FinishedBoard => figure!("bench-figure-finished-board"),
        WeighFigure::FibreFactor => figure!("bench-figure-fibre-factor"),
        WeighFigure::LiquidFactor => figure!("bench-figure-liquid-factor"),
        WeighFigure::Batch => figure!("bench-figure-batch"),
        WeighFigure::Stops => figure!("bench-figure-stops"),
        WeighFigure::PressTime => figure!("bench-figure-press-time"),
        WeighFigure::SprayTime => figure!("bench-figure-spray-time"),
        WeighFigure::ActualMoisture => figure!("bench-figure-actual-moisture"),
        WeighFigure::Line(_, part) => match part {
            WeighLineFigure::Mass => figure!("bench-figure-line-mass"),
            WeighLineFigure::Rounded => figure!("bench-figure-line-rounded"),
            WeighLineFigure::Volume => figure!("bench-figure-line-volume"),
            WeighLineFigure::SprayTime => figure!("bench-figure-line-spray-time"),
            WeighLineFigure::Target => figure!("bench-figure-line-target"),
            WeighLineFigure::Actual => figure!("bench-figure-line-actual"),
            WeighLineFigure::Deviation => figure!("bench-figure-line-deviation"),
        },
    }
}

/// Label and basis of a figure of a board, a piece's without its number.
#[must_use]
pub fn board_figure(figure: BoardFigure) -> FigureWords {
    match figure {
        BoardFigure::WholeDensity => figure!("bench-figure-whole-density"),
        BoardFigure::Density(_) => figure!("bench-figure-density"),
        BoardFigure::Moisture(_) => figure!("bench-figure-moisture"),
        BoardFigure::OvenDryDensity(_) => figure!("bench-figure-oven-dry-density"),
        BoardFigure::BendingStrength(_) => figure!("bench-figure-bending-strength"),
        BoardFigure::BendingModulus(_) => figure!("bench-figure-bending-modulus"),
        BoardFigure::InternalBond(_) => figure!("bench-figure-internal-bond"),
        BoardFigure::Swelling(_) => figure!("bench-figure-swelling"),
        BoardFigure::HalfWidth(_) => figure!("bench-figure-half-width"),
        BoardFigure::Lower(_) => figure!("bench-figure-lower"),
        BoardFigure::Upper(_) => figure!("bench-figure-upper"),
        BoardFigure::Correction => figure!("bench-figure-correction"),
    }
}

/// A property and the standard whose formula gives it.
#[must_use]
pub fn property(property: Property) -> FigureWords {
    match property {
        Property::Density => figure!("bench-property-density"),
        Property::OvenDryDensity => figure!("bench-property-oven-dry-density"),
        Property::Moisture => figure!("bench-property-moisture"),
        Property::Thickness => figure!("bench-property-thickness"),
        Property::BendingStrength => figure!("bench-property-bending-strength"),
        Property::BendingModulus => figure!("bench-property-bending-modulus"),
        Property::InternalBond => figure!("bench-property-internal-bond"),
        Property::Swelling => figure!("bench-property-swelling"),
        Property::SwellingTwo => figure!("bench-property-swelling-two"),
        Property::Absorption => figure!("bench-property-absorption"),
    }
}

/// What a number put into a sheet's formula is, where it is neither a field nor a figure.
#[must_use]
pub fn origin(origin: WeighOrigin) -> &'static str {
    match origin {
        WeighOrigin::Field(_) => label!("bench-origin-field"),
        WeighOrigin::Figure(_) => label!("bench-origin-figure"),
        WeighOrigin::RecipeField(_) => label!("bench-origin-recipe-field"),
        WeighOrigin::RecipeFigure(_) => label!("bench-origin-recipe-figure"),
        WeighOrigin::Batches => label!("bench-origin-batches"),
        WeighOrigin::Constant(constant) => balance::constant(constant),
    }
}
