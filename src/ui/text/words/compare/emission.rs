//! The emission sheet: what is entered, what is wrong with it, markets and what is limited there.

use crate::domain::chemistry::emission::{EmissionError, LimitedArticle, Market, PERFORATOR_MOISTURE};
use crate::domain::compare::emission::EmissionField;
use crate::ui::text::{FieldWords, Message};
use crate::{field, label, told};

/// Label and hint of a field of the emission sheet.
#[must_use]
pub fn field(field: EmissionField) -> FieldWords {
    match field {
        EmissionField::FormaldehydePerUrea => field!("comparison-emission-formaldehyde-per-urea"),
        EmissionField::MelaminePerUrea => field!("comparison-emission-melamine-per-urea"),
        EmissionField::ResinSolids => field!("comparison-emission-resin-solids"),
        EmissionField::AddedUrea => field!("comparison-emission-added-urea"),
        EmissionField::TargetRatio => field!("comparison-emission-target-ratio"),
        EmissionField::Concentration => field!("comparison-emission-by-volume"),
        EmissionField::MassConcentration => field!("comparison-emission-by-mass"),
        EmissionField::AirTemperature => field!("comparison-emission-air-temperature"),
        EmissionField::Perforator => field!("comparison-emission-perforator"),
        EmissionField::BoardMoisture => field!("comparison-emission-board-moisture"),
    }
}

/// What is wrong with an entry of the emission sheet.
#[must_use]
pub fn error(error: EmissionError) -> Message {
    let [least, most] = PERFORATOR_MOISTURE;
    match error {
        EmissionError::RatioOutOfRange(_) => told!("comparison-emission-ratio-out-of-range"),
        EmissionError::MelamineOutOfRange(_) => told!("comparison-emission-melamine-out-of-range"),
        EmissionError::MassOutOfRange => told!("comparison-emission-no-resin"),
        EmissionError::NotReachable(_) => told!("comparison-emission-not-reachable"),
        EmissionError::TemperatureOutOfRange(_) => told!("comparison-emission-temperature-out-of-range"),
        EmissionError::ValueOutOfRange(_) => told!("comparison-emission-value-out-of-range"),
        EmissionError::MoistureOutOfRange(_) => {
            told!("comparison-emission-moisture-out-of-range", least = least, most = most)
        }
    }
}

/// A market with limits of its own.
#[must_use]
pub fn market(market: Market) -> &'static str {
    match market {
        Market::EuropeanUnion => label!("comparison-market-european-union"),
        Market::UnitedStates => label!("comparison-market-united-states"),
    }
}

/// What a limit is for.
#[must_use]
pub fn article(article: LimitedArticle) -> &'static str {
    match article {
        LimitedArticle::WoodBased => label!("comparison-article-wood-based"),
        LimitedArticle::Particleboard => label!("comparison-article-particleboard"),
        LimitedArticle::Mdf => label!("comparison-article-mdf"),
        LimitedArticle::ThinMdf => label!("comparison-article-thin-mdf"),
        LimitedArticle::HardwoodPlywood => label!("comparison-article-hardwood-plywood"),
        LimitedArticle::WorkplaceShift => label!("comparison-article-workplace-shift"),
        LimitedArticle::WorkplaceShort => label!("comparison-article-workplace-short"),
    }
}
