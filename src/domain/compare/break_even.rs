//! The price at which two systems cost the same.

use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::compare::variable;
use crate::domain::recipe::field::{Field, LiquidField};

/// At which price two systems cost the same per volume of board. Prices and costs in base units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum EqualCost {
    /// At this price.
    At(f64),
    /// At no price: even for nothing the system would cost this much more per volume.
    DearerEvenForNothing(f64),
    /// At any price: none of it is used, or both use as much, and all else costs the same.
    Always,
    /// At no price: none of it is used, or both use as much, and the rest differs by this much per volume.
    Never(f64),
}

/// Why there is no such price.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoPrice {
    /// The field is no price of this system.
    NotAPrice,
    /// A system has nothing priced, so its cost is unknown.
    Unpriced,
}

/// The price `field` of `system` at which it costs as much per volume of finished board as `other`.
/// With `shared`, the price counts for the other system as well: the fibre's, as a rule. `other_field`
/// names it there.
///
/// Costs are straight lines over a price: c = c_rest + p·use, so p = (c_other − c_rest)/(use − use_other).
///
/// # Errors
/// [`NoPrice`].
pub fn equal_cost(system: &Case, field: Field, other: &Case, other_field: Option<Field>) -> Result<EqualCost, NoPrice> {
    let (own_use, own_rest) = split(system, field)?;
    let (other_use, other_rest) = match other_field {
        Some(field) => split(other, field)?,
        None => (0.0, cost(other)?),
    };
    let (rest, used) = (own_rest - other_rest, own_use - other_use);
    if used.abs() <= 1e-12 * own_use.abs().max(other_use.abs()) {
        let same = rest.abs() <= 1e-12 * own_rest.abs().max(other_rest.abs());
        return Ok(if same { EqualCost::Always } else { EqualCost::Never(rest) });
    }
    let price = -rest / used;
    Ok(if price >= 0.0 { EqualCost::At(price) } else { EqualCost::DearerEvenForNothing(rest) })
}

fn cost(case: &Case) -> Result<f64, NoPrice> {
    case.figure(Figure::Cost).map(|cost| cost.base).ok_or(NoPrice::Unpriced)
}

/// How much of what `field` is the price of a volume of board takes, and what everything else costs.
fn split(case: &Case, field: Field) -> Result<(f64, f64), NoPrice> {
    let used = match field {
        Field::FibrePrice => case.figure(Figure::FibrePerVolume),
        Field::Liquid(id, LiquidField::Price) => case.figure(Figure::Liquid(id, LiquidFigure::PerVolume)),
        _ => None,
    };
    let used = used.ok_or(NoPrice::NotAPrice)?.base;
    let whole = case.figure(Figure::Cost).map_or(0.0, |cost| cost.base);
    Ok((used, whole - used * variable::get(&case.input, field).unwrap_or(0.0)))
}
