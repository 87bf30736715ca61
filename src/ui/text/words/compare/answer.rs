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
use crate::{t, told};

/// What a solved-for input comes to, and how it was found. The context's draft is the system's.
#[must_use]
pub fn answer(answer: &SolvedInput, context: &Context<'_>) -> Message {
    let input = field::field_name(answer.field, context.draft);
    let kind = context.draft.kind(answer.field);
    let number = |base: f64| shown(Amount::from_base(kind, base), context);
    let result = |base: f64| shown(Amount::from_base(answer.output.kind(), base), context);
    let (figure, wanted) = (lower_first(name::output(answer.output).label), result(answer.wanted));
    let what = match &answer.found {
        Solution::One(at) => {
            t!("comparison-answer-one", input = input, value = number(*at), wanted = wanted, figure = figure)
        }
        Solution::Several(all) => {
            let all: Vec<_> = all.iter().map(|at| number(*at)).collect();
            t!("comparison-answer-several", input = input, values = listed(&all), wanted = wanted, figure = figure)
        }
        Solution::Range { from, to } => {
            let (from, to) = (number(*from), number(*to));
            t!("comparison-answer-range", input = input, from = from, to = to, wanted = wanted, figure = figure)
        }
        Solution::Unreachable { nearest: Reached { from, to, gives } } => {
            let (from, to, nearest) = (number(*from), number(*to), result(*gives));
            if from == to {
                t!(
                    "comparison-answer-nearest",
                    input = input,
                    wanted = wanted,
                    figure = figure,
                    nearest = nearest,
                    value = from
                )
            } else {
                t!(
                    "comparison-answer-nearest-range",
                    input = input,
                    wanted = wanted,
                    figure = figure,
                    nearest = nearest,
                    from = from,
                    to = to
                )
            }
        }
        Solution::Independent { gives } => {
            t!("comparison-answer-independent", input = input, figure = figure, value = result(*gives))
        }
    };
    let fix = match (&answer.found, answer.method) {
        _ if !answer.over.is_empty() => {
            let said: Vec<_> = groups(&answer.over).map(|over| beyond(over, number, context)).collect();
            said.join(" ")
        }
        (Solution::Unreachable { .. }, _) => t!("comparison-fix-unreachable"),
        (Solution::Independent { .. }, _) => t!("comparison-fix-independent"),
        (_, Method::Linear) => t!("comparison-found-linear"),
        (_, Method::Search) => t!("comparison-found-search"),
    };
    Message { what, fix }
}

/// The limits exceeded at one value of the input each.
fn groups(over: &[BeyondLimit]) -> impl Iterator<Item = &[BeyondLimit]> {
    over.chunk_by(|one, other| one.at.total_cmp(&other.at).is_eq())
}

/// "Beyond a limit at 13 t/h: fibre 13 t/h; the dryer gives 11.5 t/h. Within all limits: 3.1 t/h."
fn beyond(over: &[BeyondLimit], number: impl Fn(f64) -> String, context: &Context<'_>) -> String {
    let Some(first) = over.first() else { return String::new() };
    let all: Vec<_> = over.iter().map(|one| exceeded(&one.exceeded, context)).collect();
    let beyond = t!("comparison-beyond", count = all.len(), value = number(first.at), limits = all.join(" · "));
    // The most exceeded machine is the first: at its limit all others are within theirs.
    match first.reachable {
        Some(reachable) => format!("{beyond} {}", t!("comparison-within-limits", value = shown(reachable, context))),
        None => beyond,
    }
}

fn exceeded(exceeded: &Exceeded, context: &Context<'_>) -> String {
    let (asked, limit) = (shown(exceeded.asked, context), shown(exceeded.limit, context));
    match exceeded.machine {
        Machine::FibreSupply => t!("comparison-exceeded-fibre-supply", asked = asked, limit = limit),
        Machine::Blender => t!("comparison-exceeded-blender", asked = asked, limit = limit),
        Machine::Press => t!("comparison-exceeded-press", asked = asked, limit = limit),
        Machine::LineSpeed => t!("comparison-exceeded-line-speed", asked = asked, limit = limit),
    }
}

/// "a, b and c".
fn listed(all: &[String]) -> String {
    match all {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => t!("compare-and", first = first.join(", "), last = last),
    }
}

/// Why nothing can be solved for. The context's draft is the system's.
#[must_use]
pub fn no_answer(error: SolveForError, input: Field, output: Output, context: &Context<'_>) -> Message {
    let figure = name::output(output).label;
    match error {
        SolveForError::NotUsed => told!("comparison-not-used", input = field::field_name(input, context.draft)),
        SolveForError::NotGiven => told!("comparison-not-given", figure = figure),
        SolveForError::NotWanted => told!("comparison-not-wanted", figure = figure),
    }
}

/// The price at which two systems, named, cost the same. The context's draft is the first one's.
#[must_use]
pub fn break_even(
    found: &BreakEvenAnswer,
    price: Field,
    systems: [&ComparedSystem; 2],
    context: &Context<'_>,
) -> Message {
    let [first, second] = systems.map(|system| system.name.as_str());
    let price = field::field_name(price, context.draft);
    let amount = |base: f64| shown(Amount::from_base(Kind::Price, base), context);
    // The dearer system, how much more it costs than the other, and that other one.
    let ranked = |more: f64| {
        let (dear, cheap) = if more >= 0.0 { (first, second) } else { (second, first) };
        (dear, shown(Amount::from_base(Kind::Cost, more.abs()), context), cheap)
    };
    let what = match found.at {
        BreakEven::At(base) => {
            t!("comparison-price-at", price = price, value = amount(base), first = first, second = second)
        }
        BreakEven::DearerAtZero(more) => {
            let (dear, more, cheap) = ranked(more);
            t!("comparison-price-dearer-at-zero", price = price, dear = dear, more = more, cheap = cheap)
        }
        BreakEven::Always => t!("comparison-price-always", price = price, first = first, second = second),
        BreakEven::Never(more) => {
            let (dear, more, cheap) = ranked(more);
            t!("comparison-price-never", price = price, dear = dear, more = more, cheap = cheap)
        }
    };
    let moves = match (found.moves_with, found.other_keeps) {
        (Some(_), _) => t!("comparison-price-moves-in-both", first = first, second = second),
        (None, Some(kept)) => {
            t!("comparison-price-moves-and-stays", first = first, second = second, value = amount(kept))
        }
        (None, None) => t!("comparison-price-moves-in-first", first = first, second = second),
    };
    let over = systems.into_iter().zip(&found.exceeded).flat_map(|(system, all)| {
        all.iter().map(move |one| t!("comparison-price-beyond", system = &system.name, limit = exceeded(one, context)))
    });
    let fix: Vec<String> = std::iter::once(moves).chain(over).collect();
    Message { what, fix: fix.join(" ") }
}

/// Why there is no such price.
#[must_use]
pub fn no_price(error: &BreakEvenError, systems: [&ComparedSystem; 2]) -> Message {
    match error {
        BreakEvenError::NotAPrice => told!("comparison-not-a-price"),
        BreakEvenError::NoBalance => told!("comparison-no-balance"),
        BreakEvenError::Unpriced(missing) => {
            let of = |(system, fields): (&ComparedSystem, &Vec<Field>)| {
                let names: Vec<_> = fields.iter().map(|price| field::field_name(*price, &system.draft)).collect();
                (!names.is_empty()).then(|| format!("{}: {}", system.name, names.join("; ")))
            };
            let all: Vec<String> = systems.into_iter().zip(missing).filter_map(of).collect();
            told!("comparison-prices-missing", prices = all.join(". "))
        }
    }
}

/// Why there is no range to sweep.
#[must_use]
pub fn no_range(error: RangeError) -> Message {
    match error {
        RangeError::NotUsed => told!("comparison-range-not-used"),
        RangeError::NotReadable => told!("comparison-range-not-readable"),
        RangeError::Equal => told!("comparison-range-equal"),
        RangeError::Reversed => told!("comparison-range-reversed"),
    }
}

/// A limit of a system, by its name, between two values of the input.
#[must_use]
pub fn limited(system: &str, obstacle: Obstacle, ends: [Amount; 2], context: &Context<'_>) -> String {
    let [from, to] = ends.map(|end| shown(end, context));
    t!("comparison-limited", system = system, obstacle = name::obstacle(obstacle), from = from, to = to)
}
