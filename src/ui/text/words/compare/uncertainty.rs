//! How sure figures are, and what to improve.

use super::name;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::uncertainty::agreement::{Agreement, DisagreementCause};
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::domain::compare::uncertainty::study::{StudyError, UncertainInput};
use crate::ui::text::words::field;
use crate::ui::text::{Context, Message, trimmed_to};

pub(super) fn uncertain(source: &UncertainInput, systems: &[ComparedSystem]) -> String {
    let Some((system, target)) = source.targets.first() else { return String::new() };
    let instrument = name::instrument(Instrument::of(*target));
    let label = systems.get(*system).map(|system| field::field_name(*target, &system.draft)).unwrap_or_default();
    let whose = match (source.targets.len(), systems) {
        (_, [] | [_]) => String::new(),
        (1, _) => systems.get(*system).map(|system| format!(" ({})", system.name)).unwrap_or_default(),
        (all, systems) if all == systems.len() => " (all systems)".to_owned(),
        _ => {
            let names: Vec<_> = source
                .targets
                .iter()
                .filter_map(|(at, _)| systems.get(*at))
                .map(|system| system.name.as_str())
                .collect();
            format!(" ({})", names.join(", "))
        }
    };
    format!("{instrument}: {label}{whose}")
}

pub(super) fn no_study(error: StudyError, systems: &[ComparedSystem]) -> Message {
    let named = |at: usize| systems.get(at).map_or("A system", |system| system.name.as_str());
    let (what, fix) = match error {
        StudyError::Empty => (
            "No input has a ±, or no figure is selected.".to_owned(),
            "Enter a ± for at least one input, and select a figure.".to_owned(),
        ),
        StudyError::NoSystem(_) => ("A system was deleted.".to_owned(), "Select the systems again.".to_owned()),
        StudyError::NotUsed(at, input) => {
            let label =
                systems.get(at).map_or_else(|| "an input".to_owned(), |system| field::field_name(input, &system.draft));
            (format!("{} does not use this input, which has a ±: {label}.", named(at)), "Clear its ±.".to_owned())
        }
        StudyError::NotGiven(at, output) => (
            format!("{} does not give this figure: {}.", named(at), name::output(output).label),
            "Enter what the figure needs, such as a width, a length or all prices, or select another.".to_owned(),
        ),
    };
    Message { what, fix }
}

pub(super) fn agreement_note(agreement: &Agreement, context: &Context<'_>) -> String {
    if agreement.agree {
        return "agree".to_owned();
    }
    let few = |why: &DisagreementCause| match why {
        DisagreementCause::AtBound(share) => {
            format!("at its bound in {} % of the draws", trimmed_to(share * 100.0, 2, context.units.mark))
        }
        DisagreementCause::LeftOut(1) => "one draw left out".to_owned(),
        DisagreementCause::LeftOut(count) => format!("{count} draws left out"),
        DisagreementCause::Curved => "not in proportion to its inputs".to_owned(),
        DisagreementCause::Rectangular => "one source with fixed limits outweighs".to_owned(),
        DisagreementCause::FewDegrees => "few degrees of freedom".to_owned(),
    };
    let noisy = agreement.noisy.then(|| "too few draws to say by how much".to_owned());
    let why: Vec<String> = noisy.into_iter().chain(agreement.why.iter().map(few)).collect();
    format!("differ: {}", why.join("; "))
}

pub(super) fn why(why: DisagreementCause, context: &Context<'_>) -> String {
    match why {
        DisagreementCause::AtBound(share) => format!(
            "In up to {} % of the draws a figure is at its bound, such as a water dose of zero: its distribution is one-sided.",
            trimmed_to(share * 100.0, 2, context.units.mark)
        ),
        DisagreementCause::LeftOut(1) => {
            "One draw was left out: an input in it was outside its allowed values.".to_owned()
        }
        DisagreementCause::LeftOut(count) => {
            format!("{count} draws were left out: an input in them was outside its allowed values.")
        }
        DisagreementCause::Curved => {
            "Over so wide a range the figure does not change in proportion to its inputs; first order takes \
                        it for a straight line."
                .to_owned()
        }
        DisagreementCause::Rectangular => {
            "One source with fixed limits outweighs the others, and its values are all alike up to \
                             them; first order takes the result for a normal distribution."
                .to_owned()
        }
        DisagreementCause::FewDegrees => {
            "Few degrees of freedom: the two methods treat them in different ways, and neither is the \
                            better."
                .to_owned()
        }
    }
}
