//! The price at which two systems cost the same.

use crate::domain::balance::figure::Figure;
use crate::domain::balance::outcome::Case;
use crate::domain::compare::capacity::{Exceeded, exceeded};
use crate::domain::compare::number_key::liquid_key;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::unpriced::{missing, used};
use crate::domain::compare::variable;
use crate::domain::recipe::field::{Field, LiquidField};

/// At which price two systems cost the same per volume of board. Prices and costs in base units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BreakEven {
    /// At this price.
    At(f64),
    /// At no price: even at a price of zero the system would cost this much more per volume.
    DearerAtZero(f64),
    /// At any price: none of it is used, or both use as much, and all else costs the same.
    Always,
    /// At no price: none of it is used, or both use as much, and the rest differs by this much per volume.
    Never(f64),
}

/// A break-even price, and what it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct BreakEvenAnswer {
    /// The price.
    pub at: BreakEven,
    /// The same price in the other system; `None` where the other system does not use the material, or keeps its own
    /// price of it.
    pub moves_with: Option<Field>,
    /// The price that the other system keeps, in base units; `None` where the price moves there too, or is not used.
    pub other_keeps: Option<f64>,
    /// Machines that either system asks too much of at its own flow.
    pub exceeded: [Vec<Exceeded>; 2],
}

/// Why there is no such price.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum BreakEvenError {
    /// The field is no price of this system.
    NotAPrice,
    /// A system has no balance.
    NoBalance,
    /// Prices that are missing in either system: without them nothing is known of its cost.
    Unpriced([Vec<Field>; 2]),
}

/// The price `field` of `system` at which it costs as much per volume of finished board as `other`. The price moves in
/// every system that uses the same material, unless `alone`.
///
/// Costs are straight lines over a price: c = c_rest + p·use, so p = (c_other − c_rest)/(use − use_other).
///
/// # Errors
/// [`BreakEvenError`].
pub fn break_even(
    system: &ComparedSystem,
    field: Field,
    other: &ComparedSystem,
    alone: bool,
) -> Result<BreakEvenAnswer, BreakEvenError> {
    let (case, other_case) = system.case().zip(other.case()).ok_or(BreakEvenError::NoBalance)?;
    used(case, field).ok_or(BreakEvenError::NotAPrice)?;
    let same = same_price(system, field, other);
    let moves_with = same.filter(|_| !alone);
    let missing = [missing(case, Some(field)), missing(other_case, moves_with)];
    if missing.iter().any(|missing| !missing.is_empty()) {
        return Err(BreakEvenError::Unpriced(missing));
    }
    let (own_use, own_rest) = split(case, field).ok_or(BreakEvenError::NotAPrice)?;
    let (other_use, other_rest) = match moves_with {
        Some(field) => split(other_case, field).ok_or(BreakEvenError::NotAPrice)?,
        None => (0.0, whole(other_case)),
    };
    let other_keeps = same.filter(|_| alone).and_then(|field| variable::get(&other_case.input, field));
    let (rest, used) = (own_rest - other_rest, own_use - other_use);
    let at = if used.abs() <= 1e-12 * own_use.abs().max(other_use.abs()) {
        let same = rest.abs() <= 1e-12 * own_rest.abs().max(other_rest.abs());
        if same { BreakEven::Always } else { BreakEven::Never(rest) }
    } else {
        let price = -rest / used;
        if price >= 0.0 { BreakEven::At(price) } else { BreakEven::DearerAtZero(rest) }
    };
    Ok(BreakEvenAnswer { at, moves_with, other_keeps, exceeded: [exceeded(case), exceeded(other_case)] })
}

/// The price of the same material in another system that uses it.
fn same_price(own: &ComparedSystem, field: Field, other: &ComparedSystem) -> Option<Field> {
    let Field::Liquid(id, LiquidField::Price) = field else { return (field == Field::FibrePrice).then_some(field) };
    let key = own.draft.liquid(id).map(|liquid| liquid_key(&liquid.name, liquid.substance))?;
    let liquid = other.draft.liquids.iter().find(|liquid| liquid_key(&liquid.name, liquid.substance) == key)?;
    Some(Field::Liquid(liquid.id, LiquidField::Price))
}

fn whole(case: &Case) -> f64 {
    case.figure(Figure::Cost).map_or(0.0, |cost| cost.base)
}

/// How much of it a volume of board takes, and what everything else costs.
fn split(case: &Case, field: Field) -> Option<(f64, f64)> {
    let used = used(case, field)?;
    Some((used, whole(case) - used * variable::get(&case.input, field).unwrap_or(0.0)))
}
