//! The mass balance of a shift or a week.

/// Unaccounted masses, and which meter drifts.
pub mod balance;
/// What was read over a period, as typed.
pub mod draft;
/// From what was typed to readings with their uncertainties.
mod reading;

pub use balance::{PeriodBalance, PeriodDrift, PeriodLiquid, PeriodQuantity, PeriodReadings, Uncertain};
pub use draft::{PeriodDraft, PeriodField, PeriodLiquidDraft, PeriodLiquidField, PeriodLiquidId, PeriodPart};
pub use reading::read_period;
