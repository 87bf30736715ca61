//! Answers to what was solved for.

use super::name;
use crate::domain::Field;
use crate::domain::compare::Output;
use crate::domain::compare::break_even::{EqualCost, NoPrice};
use crate::domain::compare::solve_for::{Answer, Found, NoAnswer, Way};
use crate::quantity::{Amount, Kind};
use crate::ui::text::english::field;
use crate::ui::text::lower_first;
use crate::ui::text::{Context, Message, shown};

/// What a figure is called in a sentence.
fn figure(output: Output) -> String {
    lower_first(name::output(output).label)
}

pub(super) fn answer(answer: &Answer, context: &Context<'_>) -> Message {
    let input = field::field_name(answer.field, context.draft);
    let kind = context.draft.kind(answer.field);
    let number = |base: f64| shown(Amount::from_base(kind, base), context);
    let value = |base: f64| shown(Amount::from_base(answer.output.kind(), base), context);
    let (output, wanted) = (figure(answer.output), value(answer.wanted));
    let what = match &answer.found {
        Found::One(at) => format!("{input}: {} gives {wanted} for {output}.", number(*at)),
        Found::Several(all) => {
            let all: Vec<_> = all.iter().map(|at| number(*at)).collect();
            format!("{input}: each of {} gives {wanted} for {output}.", listed(&all))
        }
        Found::Stretch { from, to } => {
            format!("{input}: everything from {} to {} gives {wanted} for {output}.", number(*from), number(*to))
        }
        Found::Never { nearest } => format!(
            "{input}: nothing that is allowed gives {wanted} for {output}. The nearest is {}, at {}.",
            value(nearest.gives),
            number(nearest.at)
        ),
        Found::Indifferent { gives } => {
            format!("{input}: whatever is entered, {output} stays at {}.", value(*gives))
        }
    };
    let mend = match (&answer.found, answer.way) {
        (Found::Never { .. }, _) => "Ask for a value that can be reached, or change another input first.",
        (Found::Indifferent { .. }, _) => "Solve for an input that this figure follows from.",
        (_, Way::Line) => "The figure is a straight line over this input, so this is exact.",
        (_, Way::Search) => "Found by looking through all that is allowed and narrowing down.",
    };
    Message { what, mend: mend.to_owned() }
}

/// "a, b and c".
fn listed(all: &[String]) -> String {
    match all {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

pub(super) fn no_answer(error: NoAnswer, input: Field, output: Output, context: &Context<'_>) -> Message {
    let (what, mend) = match error {
        NoAnswer::NotUsed => (
            format!("{}: this recipe does not use it.", field::field_name(input, context.draft)),
            "Choose an input that the recipe is made with.".to_owned(),
        ),
        NoAnswer::NotGiven => (
            format!("{}: this recipe does not give it.", name::output(output).label),
            "Fill in what it needs, such as a width, a length or a price, or choose another figure.".to_owned(),
        ),
        NoAnswer::NotWanted => (
            format!("{}: the value wanted is not a number.", name::output(output).label),
            "Type the value that the figure is to have.".to_owned(),
        ),
    };
    Message { what, mend }
}

pub(super) fn equal_cost(found: EqualCost, price: Field, names: [&str; 2], context: &Context<'_>) -> Message {
    let [own, other] = names;
    let label = field::field_name(price, context.draft);
    let cost = |base: f64| shown(Amount::from_base(Kind::Cost, base), context);
    let what = match found {
        EqualCost::At(base) => {
            let price = shown(Amount::from_base(Kind::Price, base), context);
            format!("{label}: at {price} both cost the same per volume of board, {own} and {other}.")
        }
        EqualCost::DearerEvenForNothing(more) if more >= 0.0 => {
            format!("{label}: even for nothing, {own} costs {} more than {other}.", cost(more))
        }
        EqualCost::DearerEvenForNothing(less) => {
            format!("{label}: even for nothing, {other} costs {} more than {own}.", cost(-less))
        }
        EqualCost::Always => format!("{label}: whatever the price, {own} and {other} cost the same."),
        EqualCost::Never(more) => {
            let (dear, cheap) = if more >= 0.0 { (own, other) } else { (other, own) };
            format!("{label}: whatever the price, {dear} costs {} more than {cheap}.", cost(more.abs()))
        }
    };
    let mend = match found {
        EqualCost::At(_) => "What has no price counts as nothing in both.",
        EqualCost::DearerEvenForNothing(_) => "Look at the other prices, at the doses, and at what has no price.",
        EqualCost::Always | EqualCost::Never(_) => "Both take the same of it, or take none.",
    };
    Message { what, mend: mend.to_owned() }
}

pub(super) fn no_price(error: NoPrice) -> Message {
    let (what, mend) = match error {
        NoPrice::NotAPrice => {
            ("This is no price of the first system.", "Choose the price of its fibre or of a liquid.")
        }
        NoPrice::Unpriced => ("The second system has no price at all.", "Type its prices on its recipe first."),
    };
    Message { what: what.to_owned(), mend: mend.to_owned() }
}
