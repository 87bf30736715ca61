//! Boxes at the bench: what each holds, per what.

use crate::domain::trial::boards::field::{BendingField, BoardField, BondField, PieceField, SwellingField};
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, ThicknessWay};
use crate::domain::trial::{Field, SheetDraft};
use crate::ui::text::FieldWords;

const fn words(label: &'static str, hint: &'static str) -> FieldWords {
    FieldWords { label, hint }
}

pub(super) fn field(field: Field, sheet: &SheetDraft) -> FieldWords {
    match field {
        Field::MatLength => words("Mat length", "Of the mould or forming frame."),
        Field::MatWidth => words("Mat width", "Of the mould or forming frame."),
        Field::Boards => words("Boards", "From all batches together."),
        Field::Thickness => match sheet.thickness_way {
            ThicknessWay::Finished => {
                words("Finished thickness", "After sanding. Blank: the recipe's; its sanding comes on top.")
            }
            ThicknessWay::Pressed => words("Pressed thickness", "As it leaves the press, not sanded."),
        },
        Field::BoardDensity => words("Board density", "At the board moisture (EN 323). Blank: the recipe's."),
        Field::BoardMoisture => words("Board moisture", "At which the density is meant. Blank: the recipe's."),
        Field::FibreMoisture => words("Fibre moisture", "Of the fibre on the bench. Blank: the recipe's."),
        Field::MatMoisture => words("Mat moisture wanted", "Before the press. Blank: as the recipe doses its water."),
        Field::DryingLoss => words(
            "Drying on the way",
            "Points of dry-basis moisture lost between blender and press. Blank: the recipe's.",
        ),
        Field::Overage => match sheet.overage_of {
            OverageOf::Moist => words("Overage, share of the moist mass", "Weighed out beyond what the boards need."),
            OverageOf::OvenDry => {
                words("Overage, share of the oven-dry mass", "Added moist, beyond what the boards need.")
            }
        },
        Field::WallLoss => {
            words("Left on the walls, share of each liquid", "Of everything sprayed, water too; weighed out on top.")
        }
        Field::Capacity => words("Most that the blender takes, moist", "Blank: all in one batch."),
        Field::FibreStep => words("Step of the fibre's balance", "Blank: not rounded."),
        Field::LiquidStep => words("Step of the liquids' balance", "Blank: not rounded."),
        Field::FibreLeast => words("Least sensible mass of fibre", "Blank: no limit."),
        Field::LiquidLeast => words("Least sensible mass of a liquid", "Blank: no limit."),
        Field::PressFactor => {
            words("Press factor", "Pressing time per pressed thickness. Blank: that of the recipe's line.")
        }
        Field::SprayVolume => words("Spray flow by volume", "Of the pump. Blank: no spray times."),
        Field::SprayMass => words("Spray flow by mass", "Caught and weighed. Blank: no spray times."),
    }
}

pub(super) fn series_field(field: SeriesField) -> FieldWords {
    match field {
        SeriesField::Replicates => words("Replicates", "How often each combination is made."),
        SeriesField::Seed => words("Seed of the run order", "The same seed gives the same order again."),
        SeriesField::Margin => words("Margin on the material", "On top of what all sheets say."),
        SeriesField::Factor(_) => words("Factor", "What is varied."),
        SeriesField::Level(..) => words("Level", ""),
    }
}

pub(super) fn board_field(field: BoardField) -> FieldWords {
    match field {
        BoardField::Mass => words("Board mass", "The whole board."),
        BoardField::Length => words("Board length", ""),
        BoardField::Width => words("Board width", ""),
        BoardField::Thickness(_) => words("Board thickness", "At several points; their mean counts."),
        BoardField::Moisture => words("Board moisture", "Where no piece was dried."),
        BoardField::Piece(_, field) => match field {
            PieceField::Position => words("Position", "From one edge; gives the profile. Blank: none."),
            PieceField::Mass => words("Mass", "As cut and conditioned."),
            PieceField::Length => words("Length", ""),
            PieceField::Width => words("Width", ""),
            PieceField::Thickness => words("Thickness", ""),
            PieceField::Dry => words("Mass, oven-dry", "Dried at 103 °C to constant mass. Blank: not dried."),
        },
        BoardField::Bending(_, field) => match field {
            BendingField::Span => words("Span", "Between the supports; 20 times the thickness is usual."),
            BendingField::Width => words("Width", ""),
            BendingField::Thickness => words("Thickness", ""),
            BendingField::Load => words("Greatest load", ""),
            BendingField::Slope => {
                words("Slope of load over deflection", "Between 10 and 40 % of the greatest load. Blank: no modulus.")
            }
        },
        BoardField::Bond(_, field) => match field {
            BondField::Length => words("Length", ""),
            BondField::Width => words("Width", ""),
            BondField::Load => words("Greatest load", ""),
        },
        BoardField::Swelling(_, field) => match field {
            SwellingField::Before => words("Thickness before", "Before it lay in water."),
            SwellingField::After => words("Thickness after", "After it lay in water."),
        },
    }
}
