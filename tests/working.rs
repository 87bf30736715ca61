//! Every working's formula, evaluated with its numbers by a general-purpose expression library,
//! gives the figure that the solver gave: words and code cannot drift apart.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod support;

use approx::relative_eq;
use evalexpr::{ContextWithMutableFunctions, Function, HashMapContext, Value, eval_number_with_context};
use haulm::domain::working::{Ground, working};
use haulm::domain::{Case, Figure};
use haulm::quantity::{Amount, Coherent, Dimension, Unit};
use proptest::prelude::*;
use support::solved;

/// `max` of two numbers; the library's own refuses a float beside an integer.
fn context() -> HashMapContext {
    let mut context = HashMapContext::new();
    let max = Function::new(|argument| {
        let pair = argument.as_tuple()?;
        let numbers: Result<Vec<f64>, _> = pair.iter().map(Value::as_number).collect();
        Ok(Value::Float(numbers?.into_iter().fold(f64::NEG_INFINITY, f64::max)))
    });
    context.set_function("max".into(), max).unwrap();
    context
}

/// A number put in as the page shows it, but with all its digits: a percentage is a hundredth.
fn put_in(amount: Amount, set: Coherent) -> String {
    let unit = set.unit(amount.kind.dimension());
    let value = amount.get(unit);
    match amount.kind.dimension() {
        Dimension::Fraction | Dimension::Moisture => format!("({value:?} / 100.0)"),
        _ => format!("({value:?})"),
    }
}

/// The size of the terms that a difference is made of decides how exact it can be.
fn check(figure: Figure, case: &Case, set: Coherent) {
    let working = working(figure, case).unwrap_or_else(|| panic!("{figure:?} has no working"));
    let text = working.formula.to_text(&|at| put_in(working.givens[at].amount, set));
    let text = with_decimals(&text);
    let evaluated: f64 =
        eval_number_with_context(&text, &context()).unwrap_or_else(|e| panic!("{figure:?}: {text}: {e}"));
    let unit = set.unit(figure.kind().dimension());
    let shown = working.result.get(unit);
    let shown = if matches!(unit, Unit::Percent | Unit::PercentDryBasis) { shown / 100.0 } else { shown };
    let scale = working
        .givens
        .iter()
        .map(|given| given.amount.get(set.unit(given.amount.kind.dimension())).abs())
        .fold(shown.abs(), f64::max);
    assert!(
        relative_eq!(evaluated, shown, max_relative = 1e-9, epsilon = 1e-12 * scale),
        "{figure:?}: {text} is {evaluated}, the figure {shown}"
    );
    // Without liquids the furnish is the fibre; every other formula has numbers to put in.
    assert!(
        working.ground == Ground::Entered || figure == Figure::FurnishPerFibre || !working.givens.is_empty(),
        "{figure:?} says nothing"
    );
}

/// Integers of the formula itself as floats.
fn with_decimals(text: &str) -> String {
    text.replace("1 + ", "1.0 + ").replace("1 - ", "1.0 - ").replace("max(0, ", "max(0.0, ")
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn formulas_give_the_figures((_, case) in solved()) {
        let mut count = 0;
        for (figure, amount) in case.figures() {
            prop_assert!(amount.base.is_finite());
            for set in [Coherent::Metric, Coherent::Us] {
                check(figure, &case, set);
            }
            count += 1;
        }
        prop_assert!(count > 40);
    }
}
