//! How sure figures are, and what to improve.

use super::name;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::uncertainty::agreement::{Agreement, DisagreementCause};
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::domain::compare::uncertainty::study::{StudyError, UncertainInput};
use crate::ui::text::words::field;
use crate::ui::text::{Context, Message, trimmed_to};
use crate::{label, t, told};

/// A source of uncertainty by its instrument and what it acts on.
#[must_use]
pub fn uncertain(source: &UncertainInput, systems: &[ComparedSystem]) -> String {
    let Some((system, target)) = source.targets.first() else { return String::new() };
    let instrument = name::instrument(Instrument::of(*target));
    let input = systems.get(*system).map(|system| field::field_name(*target, &system.draft)).unwrap_or_default();
    let of: Vec<&str> =
        source.targets.iter().filter_map(|(at, _)| systems.get(*at)).map(|system| system.name.as_str()).collect();
    if systems.len() < 2 || of.is_empty() {
        t!("comparison-source", instrument = instrument, input = input)
    } else if source.targets.len() == systems.len() {
        t!("comparison-source-of-all", instrument = instrument, input = input)
    } else {
        t!("comparison-source-of", instrument = instrument, input = input, systems = of.join(", "))
    }
}

/// Why there is no uncertainty to show.
#[must_use]
pub fn no_study(error: StudyError, systems: &[ComparedSystem]) -> Message {
    let named =
        |at: usize| systems.get(at).map_or(label!("comparison-some-system"), |system| system.name.as_str()).to_owned();
    match error {
        StudyError::Empty => told!("comparison-nothing-uncertain"),
        StudyError::NoSystem(_) => told!("comparison-no-system"),
        StudyError::NotUsed(at, input) => {
            let input = match systems.get(at) {
                Some(system) => field::field_name(input, &system.draft),
                None => t!("comparison-some-input"),
            };
            told!("comparison-uncertain-not-used", system = named(at), input = input)
        }
        StudyError::NotGiven(at, output) => {
            told!("comparison-uncertain-not-given", system = named(at), figure = name::output(output).label)
        }
    }
}

/// A share in percent, without the sign.
fn percent(share: f64, context: &Context<'_>) -> String {
    trimmed_to(share * 100.0, 2, context.units.mark)
}

/// Whether both methods agree, in a few words with the reasons, for a table.
#[must_use]
pub fn agreement_note(agreement: &Agreement, context: &Context<'_>) -> String {
    if agreement.agree {
        return t!("comparison-agree");
    }
    let few = |why: &DisagreementCause| match why {
        DisagreementCause::AtBound(share) => t!("comparison-few-bound", share = percent(*share, context)),
        DisagreementCause::LeftOut(count) => t!("comparison-few-left-out", count = *count),
        DisagreementCause::Curved => t!("comparison-few-curved"),
        DisagreementCause::Rectangular => t!("comparison-few-limits"),
        DisagreementCause::FewDegrees => t!("comparison-few-degrees"),
    };
    let noisy = agreement.noisy.then(|| t!("comparison-few-noisy"));
    let why: Vec<String> = noisy.into_iter().chain(agreement.why.iter().map(few)).collect();
    t!("comparison-differ", why = why.join("; "))
}

/// Why both methods differ.
#[must_use]
pub fn why(why: DisagreementCause, context: &Context<'_>) -> String {
    match why {
        DisagreementCause::AtBound(share) => t!("comparison-why-bound", share = percent(share, context)),
        DisagreementCause::LeftOut(count) => t!("comparison-why-left-out", count = count),
        DisagreementCause::Curved => t!("comparison-why-curved"),
        DisagreementCause::Rectangular => t!("comparison-why-limits"),
        DisagreementCause::FewDegrees => t!("comparison-why-degrees"),
    }
}
