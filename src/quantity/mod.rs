//! Numbers with meaning: units, bases, bounds, and the way they are typed and shown.
//!
//! Typed quantities are [`uom`]'s. What uom cannot tell apart (a moisture on the dry basis from one
//! on the wet basis, solids from liquid) has a type of its own in [`basis`].

pub mod amount;
pub mod basis;
pub mod exact;
pub mod format;
pub mod kind;
pub mod number;
pub mod unit;
pub mod units;

pub use amount::Amount;
pub use basis::{Dose, Moisture, Solids};
pub use kind::Kind;
pub use unit::{Dimension, Unit};
pub use units::{Coherent, Units};
