//! What a box of the weigh-out sheet may hold and what is usual.

use crate::domain::recipe::field::Field as RecipeField;
use crate::domain::recipe::limit::Source::{CommonPractice, FromMemory};
use crate::domain::recipe::limit::{Limit, PRESS_FACTOR, plain};
use crate::domain::trial::weigh_sheet::draft::{SheetDraft, ThicknessWay};
use crate::domain::trial::weigh_sheet::field::Field;
use crate::quantity::Unit as U;

/// Most boards that one sheet is made out for.
pub const MOST_BOARDS: f64 = 100.0;

/// The recipe's field that a box stands in for when something is typed into it.
#[must_use]
pub const fn stands_for(field: Field) -> Option<RecipeField> {
    Some(match field {
        Field::Thickness => RecipeField::Thickness,
        Field::BoardDensity => RecipeField::BoardDensity,
        Field::BoardMoisture => RecipeField::BoardMoisture,
        Field::FibreMoisture => RecipeField::FibreMoisture,
        Field::MatMoisture => RecipeField::MatMoisture,
        Field::DryingLoss => RecipeField::DryingLoss,
        _ => return None,
    })
}

/// The limit of a box. A pressed thickness has none to fall back on in the recipe and must be typed.
#[must_use]
pub const fn limit(field: Field, sheet: &SheetDraft) -> Limit {
    if let Some(recipe) = stands_for(field) {
        let limit = plain(recipe);
        return match (field, sheet.thickness_way) {
            (Field::Thickness, ThicknessWay::Pressed) => limit,
            _ => limit.optional(),
        };
    }
    match field {
        Field::MatLength | Field::MatWidth => {
            Limit::above_to(U::Millimetre, 0.0, 5_000.0).usually(100.0, 1_000.0, CommonPractice)
        }
        Field::Boards => Limit::from_to(U::One, 1.0, MOST_BOARDS).usually(1.0, 12.0, CommonPractice),
        Field::Overage => Limit::from_to(U::Percent, 0.0, 100.0).usually(0.0, 15.0, CommonPractice),
        Field::WallLoss => Limit::from_to(U::Percent, 0.0, 100.0).below_most().usually(0.0, 15.0, CommonPractice),
        Field::Capacity => Limit::above_to(U::Kilogram, 0.0, 1_000.0).usually(0.2, 50.0, CommonPractice).optional(),
        Field::FibreStep | Field::LiquidStep => {
            Limit::above_to(U::Gram, 0.0, 1_000.0).usually(0.001, 10.0, CommonPractice).optional()
        }
        Field::FibreLeast | Field::LiquidLeast => Limit::above_to(U::Gram, 0.0, 10_000.0).optional(),
        Field::PressFactor => Limit::above_to(U::SecondPerMillimetre, 0.0, 1_000.0)
            .usually(PRESS_FACTOR.low, PRESS_FACTOR.high, PRESS_FACTOR.source)
            .optional(),
        Field::SprayVolume => {
            Limit::above_to(U::MillilitrePerMinute, 0.0, 100_000.0).usually(10.0, 2_000.0, FromMemory).optional()
        }
        Field::SprayMass => {
            Limit::above_to(U::GramPerMinute, 0.0, 100_000.0).usually(10.0, 2_000.0, FromMemory).optional()
        }
        // These stand in for a field of the recipe, and have its limit.
        Field::Thickness
        | Field::BoardDensity
        | Field::BoardMoisture
        | Field::FibreMoisture
        | Field::MatMoisture
        | Field::DryingLoss => Limit::from_to(U::One, 0.0, 0.0),
    }
}
