//! The economy of a change in English.

use crate::domain::compare::economy::field::{EconomyField, SystemEconomyField};
use crate::ui::text::FieldWords;
use crate::ui::text::compare_economy::EconomyWords;

pub(super) const ECONOMY: EconomyWords = EconomyWords {
    field,
    system_field,
    title: "Economy",
    hint: "Energy, freight, changeovers and capacity beside the materials. A blank price leaves its part out of all \
           systems.",
    materials: "Fibre and liquids",
    dryer_energy: "Dryer energy, against now",
    press_energy: "Press energy",
    release_agent: "Release agent",
    freight: "Freight of the liquids",
    freight_per_solids: "Freight per kg of binder solids",
    total: "Total cost",
    margin: "Margin",
    margin_per_press_hour: "Margin per press hour, at the bottleneck",
    volume_per_year: "Board per year, at this flow",
    capacity_per_year: "Board per year, at the bottleneck",
    more_cost: "Change: total cost",
    scrap: "Change: changeover scrap",
    scrap_cost: "Change: cost of that scrap",
    more_capacity: "Change: capacity at the bottleneck",
    more_margin: "Change: margin, after scrap",
    limits: "Limits",
    system: "System",
    limited_by: "Limited by",
    asked: "Asked for",
    limit: "Limit",
    no_result: "no result",
    missing_price: "missing price",
    answers: "Answers",
    question: "Question",
    answer: "Answer",
};

fn field(field: EconomyField) -> FieldWords {
    let (label, hint) = match field {
        EconomyField::DryerEnergyPrice => ("Dryer energy price, per MWh", ""),
        EconomyField::DryerEfficiency => ("Dryer efficiency", "Heat into the water per energy bought"),
        EconomyField::PressEnergyPrice => ("Press energy price, per MWh", ""),
        EconomyField::PressEfficiency => ("Press efficiency", "Heat into the water per energy bought"),
        EconomyField::Freight => ("Freight, as delivered", "Average of all liquids"),
        EconomyField::ChangeoverScrap => ("Scrap per changeover, m³", ""),
        EconomyField::Changeovers => ("Changeovers a year", "Those that the change adds"),
        EconomyField::SellingPrice => ("Selling price", ""),
    };
    FieldWords { label, hint }
}

fn system_field(field: SystemEconomyField) -> FieldWords {
    match field {
        SystemEconomyField::ReleaseAgent => {
            FieldWords { label: "Release agent, per m² of board", hint: "Leave blank if none" }
        }
    }
}
