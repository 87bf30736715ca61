//! The trade, pure: what was typed is checked, solved, and every figure can show its working.
//!
//! `Draft → check() → Input → solve() → Solved`, with findings on the way.

pub mod draft;
pub mod field;
pub mod input;
pub mod liquid;
pub mod machine;
pub mod money;
pub mod solve;
pub mod solved;
pub mod water;
mod interpolate;

pub use draft::{Draft, Entry, LiquidDraft};
pub use field::{Field, LiquidField};
pub use input::Input;
pub use liquid::{DoseWay, LiquidId, Role, Substance};
pub use solve::{Unsolvable, solve};
pub use solved::Solved;
