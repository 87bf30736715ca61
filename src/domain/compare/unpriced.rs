//! Prices that are missing: without them nothing is known of a cost.

use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::compare::variable;
use crate::domain::recipe::field::{Field, LiquidField};

/// Prices that a solved recipe has no value for, beside `but`. What is dosed at zero needs no price.
#[must_use]
pub fn missing(case: &Case, but: Option<Field>) -> Vec<Field> {
    let liquids = case.input.liquids.as_slice().iter().map(|liquid| Field::Liquid(liquid.id, LiquidField::Price));
    let unknown = |field: &Field| {
        Some(*field) != but
            && variable::get(&case.input, *field).is_none()
            && used(case, *field).is_none_or(|used| used != 0.0)
    };
    std::iter::once(Field::FibrePrice).chain(liquids).filter(unknown).collect()
}

/// How much of what `field` is the price of a volume of board takes.
pub(super) fn used(case: &Case, field: Field) -> Option<f64> {
    let used = match field {
        Field::FibrePrice => case.figure(Figure::FibrePerVolume),
        Field::Liquid(id, LiquidField::Price) => case.figure(Figure::Liquid(id, LiquidFigure::PerVolume)),
        _ => None,
    };
    used.map(|used| used.base)
}
