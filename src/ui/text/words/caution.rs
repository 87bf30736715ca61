//! Cautions: general wording. Local codes, the safety data sheet and licensed practice decide, which
//! the page says once below them.

use crate::domain::recipe::caution::Caution;
use crate::domain::recipe::safety_limit::{
    AirUnit, Asks, Day, Holds, Measure, Region, SafetyLimit, Subject, Value, safety_limits,
};
use crate::quantity::format::{self, DecimalMark};
use crate::ui::text::CautionWords;
use crate::ui::text::source_text;
use crate::{label, t};

/// A caution, its limits with this decimal mark.
#[must_use]
pub fn caution(caution: Caution, mark: DecimalMark) -> CautionWords {
    let (title, text) = words(caution);
    CautionWords { title, text, limits: safety_limits(caution).map(|each| limit(each, mark)).collect() }
}

/// What a caution is about.
#[must_use]
pub fn caution_title(caution: Caution) -> &'static str {
    words(caution).0
}

fn words(caution: Caution) -> (&'static str, &'static str) {
    match caution {
        Caution::Steam => (label!("caution-steam"), label!("caution-steam.text")),
        Caution::Isocyanate => (label!("caution-isocyanate"), label!("caution-isocyanate.text")),
        Caution::IsocyanateTank => (label!("caution-isocyanate-tank"), label!("caution-isocyanate-tank.text")),
        Caution::Emulsion => (label!("caution-emulsion"), label!("caution-emulsion.text")),
        Caution::IsocyanateCatch => (label!("caution-isocyanate-catch"), label!("caution-isocyanate-catch.text")),
        Caution::ReleaseAgent => (label!("caution-release-agent"), label!("caution-release-agent.text")),
        Caution::Formaldehyde => (label!("caution-formaldehyde"), label!("caution-formaldehyde.text")),
        Caution::PressVapour => (label!("caution-press-vapour"), label!("caution-press-vapour.text")),
        Caution::BenchSpray => (label!("caution-bench-spray"), label!("caution-bench-spray.text")),
        Caution::Alkaline => (label!("caution-alkaline"), label!("caution-alkaline.text")),
        Caution::Ammonia => (label!("caution-ammonia"), label!("caution-ammonia.text")),
        Caution::AcidCure => (label!("caution-acid-cure"), label!("caution-acid-cure.text")),
        Caution::Oxidiser => (label!("caution-oxidiser"), label!("caution-oxidiser.text")),
        Caution::Corrosion => (label!("caution-corrosion"), label!("caution-corrosion.text")),
        Caution::Cooling => (label!("caution-cooling"), label!("caution-cooling.text")),
        Caution::Dust => (label!("caution-dust"), label!("caution-dust.text")),
        Caution::DampBales => (label!("caution-damp-bales"), label!("caution-damp-bales.text")),
        Caution::HighPressure => (label!("caution-high-pressure"), label!("caution-high-pressure.text")),
        Caution::Press => (label!("caution-press"), label!("caution-press.text")),
        Caution::CatchTest => (label!("caution-catch-test"), label!("caution-catch-test.text")),
        Caution::Advice => (label!("caution-advice"), label!("caution-advice.text")),
    }
}

/// "Diisocyanates in air, EU (Directive (EU) 2024/869): … Check the current local limit."
fn limit(limit: &SafetyLimit, mark: DecimalMark) -> String {
    let region = match limit.region {
        Region::Eu => label!("caution-limit-eu"),
        Region::Us => label!("caution-limit-us"),
    };
    let Asks::Values(values) = limit.asks else {
        return t!("caution-limit-training", region = region, regulation = source_text(limit.regulation));
    };
    let subject = match limit.subject {
        Subject::Diisocyanates => label!("caution-limit-diisocyanates"),
        Subject::Mdi => label!("caution-limit-mdi"),
        Subject::FormaldehydeAtWork => label!("caution-limit-formaldehyde-at-work"),
        Subject::FormaldehydeReleased => label!("caution-limit-formaldehyde-released"),
    };
    let values = values.iter().map(|each| value(each, mark)).collect::<Vec<_>>().join("; ");
    t!("caution-limit", subject = subject, region = region, regulation = source_text(limit.regulation), values = values)
}

fn value(value: &Value, mark: DecimalMark) -> String {
    let measure = match value.measure {
        Measure::Shift => label!("caution-limit-shift"),
        Measure::ShortTerm => label!("caution-limit-short-term"),
        Measure::Ceiling => label!("caution-limit-ceiling"),
        Measure::Articles => label!("caution-limit-articles"),
        Measure::Particleboard => label!("caution-limit-particleboard"),
        Measure::Mdf => label!("caution-limit-mdf"),
        Measure::ThinMdf => label!("caution-limit-thin-mdf"),
        Measure::HardwoodPlywood => label!("caution-limit-hardwood-plywood"),
    };
    let limit = match value.also {
        Some(also) => t!("caution-limit-both-units", limit = number(value.limit, mark), also = number(also, mark)),
        None => number(value.limit, mark),
    };
    match value.holds {
        Holds::Now => t!("caution-limit-value", measure = measure, limit = limit),
        Holds::From(from) => t!("caution-limit-value-from", measure = measure, limit = limit, day = day(from)),
        Holds::Until(until) => t!("caution-limit-value-until", measure = measure, limit = limit, day = day(until)),
        Holds::After(after) => t!("caution-limit-value-after", measure = measure, limit = limit, day = day(after)),
    }
}

fn number((number, unit): (f64, AirUnit), mark: DecimalMark) -> String {
    let unit = match unit {
        AirUnit::MicrogramNco => "µg NCO/m³",
        AirUnit::Milligram => "mg/m³",
        AirUnit::Ppm => "ppm",
    };
    format!("{}\u{a0}{unit}", format::editable(number, mark))
}

fn day(day: Day) -> String {
    t!("caution-limit-day", day = day.day, month = day.month, year = day.year.to_string())
}
