//! The emission sheet in English.

use crate::domain::chemistry::emission::{EmissionError, LimitedArticle, Market, PERFORATOR_MOISTURE};
use crate::domain::compare::emission::EmissionField;
use crate::ui::text::compare_emission::EmissionWords;
use crate::ui::text::{FieldWords, Message};

pub(super) const EMISSION: EmissionWords = EmissionWords {
    field,
    error,
    market,
    article,
    title: "Emission sheet",
    caution: "A test decides: no figure here predicts an emission. Check the current local limit.",
    ratio: "F/U of the mix",
    amino_ratio: "F/(NH₂)₂ of the mix",
    urea: "Urea for the target ratio",
    concentration: "Formaldehyde in air",
    perforator: "Perforator value at 6.5 % board moisture",
    from: "From",
    to: "To",
    source: "Source",
    structure: "Stoichiometry; from all methylol to all methylene",
    perforator_source: "Jann and Deppe (1990), coefficients from memory; favours a low value above 6.5 %",
    limits: "Limit",
    valid_from: "from",
};

fn field(field: EmissionField) -> FieldWords {
    let (label, hint) = match field {
        EmissionField::FormaldehydePerUrea => ("F/U of the resin, mol/mol", "From the resin's data sheet"),
        EmissionField::MelaminePerUrea => ("Melamine per urea, mol/mol", "Leave blank for a urea resin"),
        EmissionField::ResinSolids => ("Resin solids", ""),
        EmissionField::AddedUrea => ("Urea added", "Leave blank if none"),
        EmissionField::TargetRatio => ("Target F/(NH₂)₂, mol/mol", ""),
        EmissionField::Concentration => ("Formaldehyde in air, ppm", "By volume; gives mg/m³"),
        EmissionField::MassConcentration => ("Formaldehyde in air, mg/m³", "By mass; gives ppm"),
        EmissionField::AirTemperature => ("Air temperature", ""),
        EmissionField::Perforator => ("Perforator value, mg/100 g", "Per 100 g of oven-dry board"),
        EmissionField::BoardMoisture => ("Board moisture at the test", ""),
    };
    FieldWords { label, hint }
}

fn error(error: EmissionError) -> Message {
    let [least, most] = PERFORATOR_MOISTURE;
    let (what, fix) = match error {
        EmissionError::RatioOutOfRange(_) => ("F/U must be above 0 and at most 100.", "Fix F/U."),
        EmissionError::MelamineOutOfRange(_) => ("Melamine per urea must be from 0 to 100.", "Fix it."),
        EmissionError::MassOutOfRange => ("There is no resin.", "Enter its solids."),
        EmissionError::NotReachable(_) => {
            ("The target ratio is above that of the resin: urea only lowers it.", "Enter a lower ratio.")
        }
        EmissionError::TemperatureOutOfRange(_) => {
            ("The air temperature must be from −50 °C to 100 °C.", "Fix the temperature.")
        }
        EmissionError::ValueOutOfRange(_) => ("The value must be 0 or more.", "Fix the value."),
        EmissionError::MoistureOutOfRange(_) => {
            let what = format!("The correction holds for board moistures from {least} % to {most} %.");
            return Message { what, fix: "Condition the board and test again.".to_owned() };
        }
    };
    Message { what: what.to_owned(), fix: fix.to_owned() }
}

fn market(market: Market) -> &'static str {
    match market {
        Market::EuropeanUnion => "European Union",
        Market::UnitedStates => "United States",
    }
}

fn article(article: LimitedArticle) -> &'static str {
    match article {
        LimitedArticle::WoodBased => "wood-based articles and furniture",
        LimitedArticle::Particleboard => "particleboard",
        LimitedArticle::Mdf => "MDF",
        LimitedArticle::ThinMdf => "thin MDF",
        LimitedArticle::HardwoodPlywood => "hardwood plywood",
        LimitedArticle::WorkplaceShift => "workplace air, 8 h",
        LimitedArticle::WorkplaceShort => "workplace air, 15 min",
    }
}
