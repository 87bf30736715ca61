//! What a box of the weigh sheet may hold and what is usual.

use crate::domain::recipe::field::Field as RecipeField;
use crate::domain::recipe::limit::Source::{CommonPractice, FromMemory};
use crate::domain::recipe::limit::{LABORATORY_PRESS_FACTOR, Limit, plain};
use crate::domain::trial::weigh_sheet::draft::{SheetDraft, ThicknessWay};
use crate::domain::trial::weigh_sheet::field::WeighField;
use crate::quantity::Unit as U;

/// Maximum number of boards that one sheet is made out for.
pub const MAX_BOARDS: f64 = 100.0;

/// The recipe's field that a box stands in for when something is typed into it.
#[must_use]
pub const fn stands_for(field: WeighField) -> Option<RecipeField> {
    Some(match field {
        WeighField::Thickness => RecipeField::Thickness,
        WeighField::BoardDensity => RecipeField::BoardDensity,
        WeighField::BoardMoisture => RecipeField::BoardMoisture,
        WeighField::FibreMoisture => RecipeField::FibreMoisture,
        WeighField::MatMoisture => RecipeField::MatMoisture,
        WeighField::DryingLoss => RecipeField::DryingLoss,
        _ => return None,
    })
}

/// The limit of a box. A pressed thickness has none to fall back on in the recipe and must be typed.
#[must_use]
pub const fn limit(field: WeighField, sheet: &SheetDraft) -> Limit {
    if let Some(recipe) = stands_for(field) {
        let limit = plain(recipe);
        return match (field, sheet.thickness_way) {
            (WeighField::Thickness, ThicknessWay::Pressed) => limit,
            _ => limit.optional(),
        };
    }
    match field {
        WeighField::MatLength | WeighField::MatWidth => {
            Limit::above_to(U::Millimetre, 0.0, 5_000.0).usually(100.0, 1_000.0, CommonPractice)
        }
        WeighField::Boards => Limit::from_to(U::One, 1.0, MAX_BOARDS).usually(1.0, 12.0, CommonPractice),
        WeighField::Overage => Limit::from_to(U::Percent, 0.0, 100.0).usually(0.0, 15.0, CommonPractice),
        WeighField::WallLoss => Limit::from_to(U::Percent, 0.0, 100.0).below_most().usually(0.0, 15.0, CommonPractice),
        WeighField::Capacity => {
            Limit::above_to(U::Kilogram, 0.0, 1_000.0).usually(0.2, 50.0, CommonPractice).optional()
        }
        WeighField::FibreStep | WeighField::LiquidStep => {
            Limit::above_to(U::Gram, 0.0, 1_000.0).usually(0.001, 10.0, CommonPractice).optional()
        }
        WeighField::FibreMinimum | WeighField::LiquidMinimum => Limit::above_to(U::Gram, 0.0, 10_000.0).optional(),
        WeighField::Tolerance => Limit::from_to(U::Percent, 0.0, 20.0).usually(0.0, 2.0, CommonPractice).optional(),
        WeighField::PressFactor => {
            Limit::above_to(U::SecondPerMillimetre, 0.0, 1_000.0).within(LABORATORY_PRESS_FACTOR).optional()
        }
        WeighField::SprayVolume => {
            Limit::above_to(U::MillilitrePerMinute, 0.0, 100_000.0).usually(10.0, 2_000.0, FromMemory).optional()
        }
        WeighField::SprayMass => {
            Limit::above_to(U::GramPerMinute, 0.0, 100_000.0).usually(10.0, 2_000.0, FromMemory).optional()
        }
        // These stand in for a field of the recipe, and have its limit.
        WeighField::Thickness
        | WeighField::BoardDensity
        | WeighField::BoardMoisture
        | WeighField::FibreMoisture
        | WeighField::MatMoisture
        | WeighField::DryingLoss => Limit::from_to(U::One, 0.0, 0.0),
    }
}
