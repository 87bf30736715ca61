//! A comparison as tables to take away: words and chosen units put to the cells of
//! [`record::table`](crate::record::table).

mod compare;

pub use compare::{Measured, assumptions, shares, side_by_side, stacked, uncertainty};
