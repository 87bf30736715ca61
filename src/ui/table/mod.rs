//! A comparison as tables to take away: words and chosen units put to the cells of
//! [`record::table`](crate::record::table).

/// Without the digits that a conversion of units alone brings in: twelve digits hold whatever was typed.
fn without_conversion(value: f64) -> f64 {
    format!("{value:.11e}").parse().unwrap_or(value)
}

mod compare;
mod economy;
mod emission;
mod sweep;

pub use compare::{FigureUncertainty, assumptions, shares, side_by_side, stacked, uncertainty};
pub use economy::{answers, economy, limits};
pub use emission::emission;
pub use sweep::{SweepHead, sensitivity};
