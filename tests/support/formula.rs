//! Formulas of workings, evaluated with their numbers by a general-purpose expression library.
#![allow(dead_code, clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use approx::relative_eq;
use evalexpr::{ContextWithMutableFunctions, Function, HashMapContext, Value, eval_number_with_context};
use haulm::domain::working::Working;
use haulm::quantity::{Amount, Coherent, Dimension};
use std::fmt::Debug;

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

/// The bare number of an amount in a set: a percentage is a hundredth.
fn bare(amount: Amount, set: Coherent) -> f64 {
    let value = amount.get(set.unit(amount.kind.dimension()));
    match amount.kind.dimension() {
        Dimension::Fraction | Dimension::Moisture => value / 100.0,
        _ => value,
    }
}

/// The formula with its numbers gives the figure that the program gave, in both sets of units.
pub fn check<F: Debug, O: Debug>(working: &Working<F, O>) {
    for set in [Coherent::Metric, Coherent::Us] {
        // With a decimal mark even where it is whole, or the library divides integers.
        let text = working.formula.to_text(&|at| format!("({:?})", bare(working.givens[at].amount, set)));
        let evaluated = eval_number_with_context(&with_decimals(&text), &context())
            .unwrap_or_else(|e| panic!("{:?}: {text}: {e}", working.figure));
        let shown = bare(working.result, set);
        // The size of the terms that a difference is made of decides how exact it can be.
        let scale = working.givens.iter().map(|given| bare(given.amount, set).abs()).fold(shown.abs(), f64::max);
        let scale = if text.contains(" - 1") { scale.max(1.0) } else { scale };
        assert!(
            relative_eq!(evaluated, shown, max_relative = 1e-9, epsilon = 1e-12 * scale),
            "{:?}: {text} is {evaluated}, the figure {shown}",
            working.figure
        );
    }
}

/// Integers of the formula itself as floats.
fn with_decimals(text: &str) -> String {
    text.replace("1 + ", "1.0 + ").replace("1 - ", "1.0 - ").replace("max(0, ", "max(0.0, ")
}
