//! Systems side by side: what differs, what is missing.

use crate::domain::compare::side::{
    Belongs, ComparedSystem, Differing, FEWEST, MOST, SideBySideError, SystemDifference,
};
use crate::ui::text::words::{field, name};
use crate::ui::text::{Context, Message, lower_first, shown};
use crate::{label, t, told};

/// "A: 680 kg/m³; B: 700 kg/m³".
fn each<T>(systems: &[ComparedSystem], values: &[T], text: impl Fn(&T) -> String) -> String {
    let parts = systems.iter().zip(values).map(|(system, value)| format!("{}: {}", system.name, text(value)));
    parts.collect::<Vec<_>>().join("; ")
}

/// What differs between systems beside their liquids, each system by its name, and what to do.
#[must_use]
pub fn difference(difference: &SystemDifference, systems: &[ComparedSystem], context: &Context<'_>) -> Message {
    let (input, values) = match &difference.what {
        Differing::FeedWay(ways) => (
            label!("comparison-differing-feed-way").to_owned(),
            each(systems, ways, |way| lower_first(name::feed_way(*way))),
        ),
        Differing::WaterWay(ways) => (
            label!("comparison-differing-water-way").to_owned(),
            each(systems, ways, |way| lower_first(name::water_way(*way))),
        ),
        Differing::SprayedFaces(faces) => (
            label!("comparison-differing-sprayed-faces").to_owned(),
            each(systems, faces, |faces| lower_first(name::faces(*faces))),
        ),
        Differing::Number(number, amounts) => {
            let value = |amount: &Option<_>| match amount {
                Some(amount) => shown(*amount, context),
                None => t!("comparison-blank"),
            };
            (field::field_name(*number, context.draft), each(systems, amounts, value))
        }
    };
    let fix = match difference.belongs {
        Belongs::Fibre => t!("comparison-not-same-fibre"),
        Belongs::Board => t!("comparison-not-same-board"),
        Belongs::Line => t!("comparison-not-same-line"),
        Belongs::System => t!("comparison-not-same-system"),
    };
    Message { what: t!("comparison-differs", input = input, values = values), fix }
}

/// Why systems cannot be compared side by side.
#[must_use]
pub fn not_side_by_side(error: SideBySideError) -> Message {
    match error {
        SideBySideError::TooFew => told!("comparison-too-few", fewest = FEWEST),
        SideBySideError::TooMany => told!("comparison-too-many", most = MOST),
        SideBySideError::NoReference => told!("comparison-no-reference"),
    }
}

/// Prices that a system has no cost without; `None` where all are there.
#[must_use]
pub fn unpriced(system: &ComparedSystem) -> Option<Message> {
    let fields = system.unpriced();
    if fields.is_empty() {
        return None;
    }
    let names: Vec<_> = fields.iter().map(|price| field::field_name(*price, &system.draft)).collect();
    Some(told!("comparison-unpriced", system = &system.name, prices = names.join("; ")))
}
