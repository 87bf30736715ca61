//! Boxes at the bench: what each holds, per what.

use crate::domain::trial::boards::field::{BendingField, BoardField, BondField, PieceField, SwellingField};
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, ThicknessWay};
use crate::domain::trial::weigh_sheet::recovery_draft::RecoveryField;
use crate::domain::trial::{SheetDraft, WeighField};
use crate::ui::text::FieldWords;

const fn words(label: &'static str, hint: &'static str) -> FieldWords {
    FieldWords { label, hint }
}

pub(super) fn field(field: WeighField, sheet: &SheetDraft) -> FieldWords {
    match field {
        WeighField::MatLength => words("Mat length", "Of the mould or forming frame."),
        WeighField::MatWidth => words("Mat width", "Of the mould or forming frame."),
        WeighField::Boards => words("Boards", "From all batches together."),
        WeighField::Thickness => match sheet.thickness_way {
            ThicknessWay::Finished => {
                words("Finished thickness", "After sanding. Blank: the recipe's; its sanding comes on top.")
            }
            ThicknessWay::Pressed => words("Pressed thickness", "As it leaves the press, not sanded."),
        },
        WeighField::BoardDensity => {
            words("Board density", "At the board moisture (EN 323). Leave blank for the recipe’s value.")
        }
        WeighField::BoardMoisture => {
            words("Board moisture", "At which the density is meant. Leave blank for the recipe’s value.")
        }
        WeighField::FibreMoisture => {
            words("Fibre moisture", "Of the fibre on the bench. Leave blank for the recipe’s value.")
        }
        WeighField::MatMoisture => {
            words("Target mat moisture", "Before the press. Blank: as the recipe doses its water.")
        }
        WeighField::DryingLoss => words(
            "Moisture loss, blender to press",
            "Points d.b. lost between blender and press. Leave blank for 0; the line’s loss is not used.",
        ),
        WeighField::Overage => match sheet.overage_of {
            OverageOf::Moist => words("Overage, share of the moist mass", "Weighed out beyond what the boards need."),
            OverageOf::OvenDry => {
                words("Overage, share of the oven-dry mass", "Added moist, beyond what the boards need.")
            }
        },
        WeighField::WallLoss => {
            words("Left on the walls, share of each liquid", "Of everything sprayed, water too; weighed out on top.")
        }
        WeighField::Capacity => words("Blender capacity, wet", "Leave blank for no limit."),
        WeighField::FibreStep => words("Step of the fibre's balance", "Leave blank for no rounding."),
        WeighField::LiquidStep => words("Step of the liquids' balance", "Leave blank for no rounding."),
        WeighField::FibreMinimum => words("Minimum weighable fibre", "Leave blank for no limit."),
        WeighField::LiquidMinimum => words("Minimum weighable liquid", "Leave blank for no limit."),
        WeighField::Tolerance => words("Overshoot tolerance", "Leave blank for one balance step."),
        WeighField::PressFactor => {
            words("Press factor", "Pressing time per pressed thickness. Blank: that of the recipe's line.")
        }
        WeighField::SprayVolume => words("Spray flow by volume", "Of the pump. Leave blank for no spray time."),
        WeighField::SprayMass => words("Spray flow by mass", "Caught and weighed. Leave blank for no spray time."),
    }
}

pub(super) fn recovery_field(field: RecoveryField) -> FieldWords {
    match field {
        RecoveryField::Mass => words("Furnish recovered, wet", "Out of the blender, before forming."),
        RecoveryField::Moisture => words("Furnish moisture", "Measured, such as on a moisture balance."),
    }
}

pub(super) const fn series_field(field: SeriesField) -> &'static str {
    match field {
        SeriesField::Replicates => "Replicates",
        SeriesField::Seed => "Seed of the run order",
        SeriesField::Margin => "Margin on the material",
        SeriesField::Factor(_) => "Factor",
        SeriesField::Level(..) => "Level",
    }
}

pub(super) fn board_field(field: BoardField) -> FieldWords {
    match field {
        BoardField::Laid => words("Furnish laid, wet", "Read off the balance. Leave blank for the sheet’s mass."),
        BoardField::Mass => words("Board mass", "The whole board."),
        BoardField::Length => words("Board length", ""),
        BoardField::Width => words("Board width", ""),
        BoardField::Thickness(_) => words("Board thickness", "At several points; their mean counts."),
        BoardField::Moisture => words("Board moisture", "Where no piece was dried."),
        BoardField::Piece(_, field) => match field {
            PieceField::Position => words("Position", "From one edge; gives the profile. Leave blank for no profile."),
            PieceField::Mass => words("Mass", "As cut and conditioned."),
            PieceField::Length => words("Length", ""),
            PieceField::Width => words("Width", ""),
            PieceField::Thickness => words("Thickness", ""),
            PieceField::Dry => words("Mass, oven-dry", "Dried at 103 °C to constant mass. Leave blank if not dried."),
        },
        BoardField::Bending(_, field) => match field {
            BendingField::Span => words("Span", "Between the supports; 20 times the thickness is usual."),
            BendingField::Width => words("Width", ""),
            BendingField::Thickness => words("Thickness", ""),
            BendingField::Length => words("Piece length", "For the density of the piece."),
            BendingField::Mass => words("Mass", "Leave blank if not weighed."),
            BendingField::Load => words("Maximum load", ""),
            BendingField::Slope => words(
                "Slope of load over deflection",
                "Between 10 and 40 % of the maximum load. Leave blank for no modulus.",
            ),
        },
        BoardField::Bond(_, field) => match field {
            BondField::Length => words("Length", ""),
            BondField::Width => words("Width", ""),
            BondField::Thickness => words("Thickness", "For the density of the piece."),
            BondField::Mass => words("Mass", "Leave blank if not weighed."),
            BondField::Load => words("Maximum load", ""),
        },
        BoardField::Swelling(_, field) => match field {
            SwellingField::Before => words("Thickness before", "Before soaking."),
            SwellingField::After => words("Thickness after 24 h", ""),
            SwellingField::AfterTwo => words("Thickness after 2 h", "Leave blank if not measured."),
            SwellingField::MassBefore => words("Mass before", "Leave blank if not weighed."),
            SwellingField::MassAfter => words("Mass after 24 h", "Leave blank if not weighed."),
        },
    }
}
