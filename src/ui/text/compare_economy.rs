//! Words of the economy of a change, of limits and of answers that are taken away.

use super::FieldWords;
use crate::domain::compare::economy::field::{EconomyField, SystemEconomyField};

/// Labels and headings.
#[derive(Debug, Clone, Copy)]
#[allow(missing_docs, reason = "each is the label of that name")]
pub struct EconomyWords {
    /// Label, with its unit after the currency, and hint of a field.
    pub field: fn(EconomyField) -> FieldWords,
    /// The same of a field that each system has of its own.
    pub system_field: fn(SystemEconomyField) -> FieldWords,
    pub title: &'static str,
    pub hint: &'static str,
    pub materials: &'static str,
    pub dryer_energy: &'static str,
    pub press_energy: &'static str,
    pub release_agent: &'static str,
    pub freight: &'static str,
    pub freight_per_solids: &'static str,
    pub total: &'static str,
    pub margin: &'static str,
    pub margin_per_press_hour: &'static str,
    pub volume_per_year: &'static str,
    pub capacity_per_year: &'static str,
    pub more_cost: &'static str,
    pub scrap: &'static str,
    pub scrap_cost: &'static str,
    pub more_capacity: &'static str,
    pub more_margin: &'static str,
    pub limits: &'static str,
    pub system: &'static str,
    pub limited_by: &'static str,
    pub asked: &'static str,
    pub limit: &'static str,
    pub no_result: &'static str,
    pub missing_price: &'static str,
    pub answers: &'static str,
    pub question: &'static str,
    pub answer: &'static str,
}
