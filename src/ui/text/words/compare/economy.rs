//! The economy of a change: what is entered.

use crate::domain::compare::economy::field::{EconomyField, SystemEconomyField};
use crate::field;
use crate::ui::text::FieldWords;

/// Label, with its unit after the currency, and hint of a field of the economy.
#[must_use]
pub fn field(field: EconomyField) -> FieldWords {
    match field {
        EconomyField::DryerEnergyPrice => field!("comparison-economy-dryer-energy-price"),
        EconomyField::DryerEfficiency => field!("comparison-economy-dryer-efficiency"),
        EconomyField::PressEnergyPrice => field!("comparison-economy-press-energy-price"),
        EconomyField::PressEfficiency => field!("comparison-economy-press-efficiency"),
        EconomyField::Freight => field!("comparison-economy-freight-price"),
        EconomyField::ChangeoverScrap => field!("comparison-economy-changeover-scrap"),
        EconomyField::Changeovers => field!("comparison-economy-changeovers"),
        EconomyField::SellingPrice => field!("comparison-economy-selling-price"),
    }
}

/// Label, with its unit after the currency, and hint of a field that each system has of its own.
#[must_use]
pub fn system_field(field: SystemEconomyField) -> FieldWords {
    match field {
        SystemEconomyField::ReleaseAgent => field!("comparison-economy-release-agent-price"),
    }
}
