//! The trade, pure: what was typed is checked, solved, and every figure can show its working.
//!
//! `Draft → check() → Input → solve() → Solved`, with findings on the way.

pub mod draft;
pub mod field;
pub mod liquid;

pub use draft::{Draft, Entry, LiquidDraft};
pub use field::{Field, LiquidField};
pub use liquid::{DoseWay, LiquidId, Role, Substance};
