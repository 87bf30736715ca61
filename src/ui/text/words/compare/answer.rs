//! Answers: inputs solved for, and break-even prices.

use super::name;
use crate::domain::Field;
use crate::domain::balance::machine::Machine;
use crate::domain::compare::Output;
use crate::domain::compare::break_even::{BreakEven, BreakEvenAnswer, BreakEvenError};
use crate::domain::compare::capacity::{BeyondLimit, Exceeded};
use crate::domain::compare::feasibility::Obstacle;
use crate::domain::compare::range::RangeError;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::solve_for::{Method, Reached, Solution, SolveForError, SolvedInput};
use crate::quantity::{Amount, Kind};
use crate::ui::text::lower_first;
use crate::ui::text::words::field;
use crate::ui::text::{Context, Message, shown};

/// What a figure is called in a sentence.
fn figure(output: Output) -> String {
    lower_first(name::output(output).label)
}

pub(super) fn answer(answer: &SolvedInput, context: &Context<'_>) -> Message {
    let input = field::field_name(answer.field, context.draft);
    let kind = context.draft.kind(answer.field);
    let number = |base: f64| shown(Amount::from_base(kind, base), context);
    let value = |base: f64| shown(Amount::from_base(answer.output.kind(), base), context);
    let (output, wanted) = (figure(answer.output), value(answer.wanted));
    let what = match &answer.found {
        Solution::One(at) => format!("{input}: {} gives {wanted} for {output}.", number(*at)),
        Solution::Several(all) => {
            let all: Vec<_> = all.iter().map(|at| number(*at)).collect();
            format!("{input}: each of {} gives {wanted} for {output}.", listed(&all))
        }
        Solution::Range { from, to } => {
            format!("{input}: every value from {} to {} gives {wanted} for {output}.", number(*from), number(*to))
        }
        Solution::Unreachable { nearest: Reached { from, to, gives } } => {
            let (from, to) = (number(*from), number(*to));
            let at = if from == to { format!("at {from}") } else { format!("from {from} to {to}") };
            format!("{input}: no allowed value gives {wanted} for {output}. The nearest is {}, {at}.", value(*gives))
        }
        Solution::Independent { gives } => {
            format!("{input}: {output} does not depend on it and stays at {}.", value(*gives))
        }
    };
    let fix = match (&answer.found, answer.method) {
        _ if !answer.over.is_empty() => {
            let said: Vec<_> = groups(&answer.over).map(|over| beyond(over, number, context)).collect();
            said.join(" ")
        }
        (Solution::Unreachable { .. }, _) => {
            "Enter a value that can be reached, or change another input first.".to_owned()
        }
        (Solution::Independent { .. }, _) => "Select an input that this figure depends on.".to_owned(),
        (_, Method::Linear) => "The figure is linear in this input, so the answer is exact.".to_owned(),
        (_, Method::Search) => "Found by a search through all allowed values.".to_owned(),
    };
    Message { what, fix }
}

/// The limits exceeded at one value of the input each.
fn groups(over: &[BeyondLimit]) -> impl Iterator<Item = &[BeyondLimit]> {
    over.chunk_by(|one, other| one.at.total_cmp(&other.at).is_eq())
}

/// "Beyond limits at 13 t/h: 13 t/h of oven-dry fibre; the dryer gives 11.5 t/h. Within all limits: 3.1 t/h."
fn beyond(over: &[BeyondLimit], number: impl Fn(f64) -> String, context: &Context<'_>) -> String {
    let Some(first) = over.first() else { return String::new() };
    let all: Vec<_> = over.iter().map(|one| exceeded(&one.exceeded, context)).collect();
    // The most exceeded machine is the first: at its limit all others are within theirs.
    let reachable = first
        .reachable
        .map(|reachable| format!(" Within all limits: {}.", shown(reachable, context)))
        .unwrap_or_default();
    let limits = if all.len() == 1 { "a limit" } else { "limits" };
    format!("Beyond {limits} at {}: {}.{reachable}", number(first.at), all.join(" · "))
}

fn exceeded(exceeded: &Exceeded, context: &Context<'_>) -> String {
    let (asked, limit) = (shown(exceeded.asked, context), shown(exceeded.limit, context));
    match exceeded.machine {
        Machine::FibreSupply => format!("fibre {asked}; the dryer gives {limit}"),
        Machine::Blender => format!("furnish {asked}; the blender takes {limit}"),
        Machine::Press => format!("press factor {asked}; the press needs at least {limit}"),
        Machine::LineSpeed => format!("line speed {asked}; the line runs {limit} at most"),
    }
}

/// "a, b and c".
fn listed(all: &[String]) -> String {
    match all {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

pub(super) fn no_answer(error: SolveForError, input: Field, output: Output, context: &Context<'_>) -> Message {
    let (what, fix) = match error {
        SolveForError::NotUsed => (
            format!("{}: this recipe does not use it.", field::field_name(input, context.draft)),
            "Select an input that the recipe uses.".to_owned(),
        ),
        SolveForError::NotGiven => (
            format!("{}: this recipe does not give it.", name::output(output).label),
            "Enter what it needs, such as a width, a length or all prices, or select another figure.".to_owned(),
        ),
        SolveForError::NotWanted => (
            format!("{}: the target value is not a number.", name::output(output).label),
            "Enter the target value.".to_owned(),
        ),
    };
    Message { what, fix }
}

pub(super) fn break_even(
    found: &BreakEvenAnswer,
    price: Field,
    systems: [&ComparedSystem; 2],
    context: &Context<'_>,
) -> Message {
    let [own, other] = systems.map(|system| system.name.as_str());
    let label = field::field_name(price, context.draft);
    let cost = |base: f64| shown(Amount::from_base(Kind::Cost, base), context);
    let amount = |base: f64| shown(Amount::from_base(Kind::Price, base), context);
    let what = match found.at {
        BreakEven::At(base) => {
            format!("{label}: at {} both cost the same per volume of board, {own} and {other}.", amount(base))
        }
        BreakEven::DearerAtZero(more) if more >= 0.0 => {
            format!("{label}: even at a price of zero, {own} costs {} more than {other}.", cost(more))
        }
        BreakEven::DearerAtZero(less) => {
            format!("{label}: even at a price of zero, {other} costs {} more than {own}.", cost(-less))
        }
        BreakEven::Always => format!("{label}: at any price, {own} and {other} cost the same."),
        BreakEven::Never(more) => {
            let (dear, cheap) = if more >= 0.0 { (own, other) } else { (other, own) };
            format!("{label}: at any price, {dear} costs {} more than {cheap}.", cost(more.abs()))
        }
    };
    let moves = match (found.moves_with, found.other_keeps) {
        (Some(_), _) => format!("The price moves in both systems, {own} and {other}."),
        (None, Some(kept)) => format!("The price moves in {own} alone; {other} keeps {}.", amount(kept)),
        (None, None) => format!("The price moves in {own} alone; {other} does not use this material."),
    };
    let over = systems.into_iter().zip(&found.exceeded).flat_map(|(system, all)| {
        all.iter().map(move |one| format!(" {} is beyond a limit: {}.", system.name, exceeded(one, context)))
    });
    let fix = format!("{moves}{}", over.collect::<String>());
    Message { what, fix }
}

pub(super) fn no_price(error: &BreakEvenError, systems: [&ComparedSystem; 2]) -> Message {
    let (what, fix) = match error {
        BreakEvenError::NotAPrice => (
            "This is not a price of the first system.".to_owned(),
            "Select the price of its fibre or of a liquid.".to_owned(),
        ),
        BreakEvenError::NoBalance => {
            ("A system has no result.".to_owned(), "Fix the errors of its recipe first.".to_owned())
        }
        BreakEvenError::Unpriced(missing) => {
            let of = |(system, fields): (&ComparedSystem, &Vec<Field>)| {
                let names: Vec<_> = fields.iter().map(|price| field::field_name(*price, &system.draft)).collect();
                (!names.is_empty()).then(|| format!("{}: {}", system.name, names.join("; ")))
            };
            let all: Vec<String> = systems.into_iter().zip(missing).filter_map(of).collect();
            (format!("Prices are missing. {}.", all.join(". ")), "Enter these prices.".to_owned())
        }
    };
    Message { what, fix }
}

pub(super) fn no_range(error: RangeError) -> Message {
    let (what, fix) = match error {
        RangeError::NotUsed => ("The recipe does not use this input.", "Select another input."),
        RangeError::NotReadable => {
            ("An end of the range is not valid.", "Fix it, or leave it blank for the start value.")
        }
        RangeError::Equal => ("Both ends of the range are the same.", "Enter two different values."),
        RangeError::Reversed => ("The range is reversed: “From” is above “To”.", "Swap the two values."),
    };
    Message { what: what.to_owned(), fix: fix.to_owned() }
}

pub(super) fn limited(system: &str, obstacle: Obstacle, ends: [Amount; 2], context: &Context<'_>) -> String {
    let [from, to] = ends.map(|end| shown(end, context));
    format!("{system}: {} from {from} to {to}.", name::obstacle(obstacle))
}
