//! Boxes at the bench: what each holds, per what.

use crate::domain::trial::boards::field::{BendingField, BoardField, BondField, PieceField, SwellingField};
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, ThicknessWay};
use crate::domain::trial::weigh_sheet::recovery_draft::RecoveryField;
use crate::domain::trial::{SheetDraft, WeighField};
use crate::ui::text::FieldWords;
use crate::{field, label};

/// Label and hint of a box of the weigh sheet.
#[must_use]
pub fn field(field: WeighField, sheet: &SheetDraft) -> FieldWords {
    match field {
        WeighField::MatLength => field!("bench-field-mat-length"),
        WeighField::MatWidth => field!("bench-field-mat-width"),
        WeighField::Boards => field!("bench-field-boards"),
        WeighField::Thickness => match sheet.thickness_way {
            ThicknessWay::Finished => field!("bench-field-finished-thickness"),
            ThicknessWay::Pressed => field!("bench-field-pressed-thickness"),
        },
        WeighField::BoardDensity => field!("bench-field-board-density"),
        WeighField::BoardMoisture => field!("bench-field-board-moisture"),
        WeighField::FibreMoisture => field!("bench-field-fibre-moisture"),
        WeighField::MatMoisture => field!("bench-field-mat-moisture"),
        WeighField::DryingLoss => field!("bench-field-drying-loss"),
        WeighField::Overage => match sheet.overage_of {
            OverageOf::Moist => field!("bench-field-overage-moist"),
            OverageOf::OvenDry => field!("bench-field-overage-oven-dry"),
        },
        WeighField::WallLoss => field!("bench-field-wall-loss"),
        WeighField::Capacity => field!("bench-field-capacity"),
        WeighField::FibreStep => field!("bench-field-fibre-step"),
        WeighField::LiquidStep => field!("bench-field-liquid-step"),
        WeighField::FibreMinimum => field!("bench-field-fibre-minimum"),
        WeighField::LiquidMinimum => field!("bench-field-liquid-minimum"),
        WeighField::Tolerance => field!("bench-field-tolerance"),
        WeighField::PressFactor => field!("bench-field-press-factor"),
        WeighField::SprayVolume => field!("bench-field-spray-volume"),
        WeighField::SprayMass => field!("bench-field-spray-mass"),
    }
}

/// Label and hint of a box of the furnish recovered.
#[must_use]
pub fn recovery_field(field: RecoveryField) -> FieldWords {
    match field {
        RecoveryField::Mass => field!("bench-field-recovered-mass"),
        RecoveryField::Moisture => field!("bench-field-recovered-moisture"),
    }
}

pub(super) fn series_field(field: SeriesField) -> &'static str {
    match field {
        SeriesField::Replicates => label!("bench-field-replicates"),
        SeriesField::Seed => label!("bench-field-seed"),
        SeriesField::Margin => label!("bench-field-margin"),
        SeriesField::Factor(_) => label!("bench-field-factor"),
        SeriesField::Level(..) => label!("bench-field-level"),
    }
}

/// Label and hint of a box of a board, a piece without its number.
#[must_use]
pub fn board_field(field: BoardField) -> FieldWords {
    match field {
        BoardField::Laid => field!("bench-field-board-laid"),
        BoardField::Mass => field!("bench-field-board-mass"),
        BoardField::Length => field!("bench-field-board-length"),
        BoardField::Width => field!("bench-field-board-width"),
        BoardField::Thickness(_) => field!("bench-field-board-thickness"),
        BoardField::Moisture => field!("bench-field-board-own-moisture"),
        BoardField::Piece(_, field) => match field {
            PieceField::Position => field!("bench-field-piece-position"),
            PieceField::Mass => field!("bench-field-piece-mass"),
            PieceField::Length => field!("bench-field-piece-length"),
            PieceField::Width => field!("bench-field-piece-width"),
            PieceField::Thickness => field!("bench-field-piece-thickness"),
            PieceField::Dry => field!("bench-field-piece-dry"),
        },
        BoardField::Bending(_, field) => match field {
            BendingField::Span => field!("bench-field-piece-span"),
            BendingField::Width => field!("bench-field-piece-width"),
            BendingField::Thickness => field!("bench-field-piece-thickness"),
            BendingField::Length => field!("bench-field-piece-whole-length"),
            BendingField::Mass => field!("bench-field-piece-mass-optional"),
            BendingField::Load => field!("bench-field-piece-load"),
            BendingField::Slope => field!("bench-field-piece-slope"),
        },
        BoardField::Bond(_, field) => match field {
            BondField::Length => field!("bench-field-piece-length"),
            BondField::Width => field!("bench-field-piece-width"),
            BondField::Thickness => field!("bench-field-piece-thickness-for-density"),
            BondField::Mass => field!("bench-field-piece-mass-optional"),
            BondField::Load => field!("bench-field-piece-load"),
        },
        BoardField::Swelling(_, field) => match field {
            SwellingField::Before => field!("bench-field-piece-before"),
            SwellingField::After => field!("bench-field-piece-after"),
            SwellingField::AfterTwo => field!("bench-field-piece-after-two"),
            SwellingField::MassBefore => field!("bench-field-piece-mass-before"),
            SwellingField::MassAfter => field!("bench-field-piece-mass-after"),
        },
    }
}
