//! Workings as MathML, so that a screen reader reads a formula and a browser sets it.
//!
//! The markup is made of our own letters and numbers only; the one text that comes from a person,
//! the currency, is escaped.

use super::text::{trimmed_to, unit_shown};
use crate::domain::compare::uncertainty::budget::Budget;
use crate::domain::compare::uncertainty::input_uncertainty::width_in;
use crate::domain::working::{Expr, Symbol, Working};
use crate::quantity::format::DecimalMark;
use crate::quantity::{Amount, Coherent, Dimension};
use html_escape::encode_double_quoted_attribute as escape;
use std::fmt::Write as _;

/// How many significant digits the numbers put in are shown with. Enough to follow the arithmetic
/// on a pocket calculator.
const DIGITS: u8 = 6;

/// What numbers are written with.
#[derive(Clone, Copy)]
pub struct Style<'a> {
    /// A set of units in which the formula holds between the bare numbers.
    pub set: Coherent,
    /// The decimal mark.
    pub mark: DecimalMark,
    /// The currency.
    pub currency: &'a str,
}

/// The formula in letters: "L₁ = m₁ / s₁".
#[must_use]
pub fn letters<F, O>(working: &Working<F, O>) -> String {
    let right =
        markup(&working.formula, &|at| working.givens.get(at).map_or_else(String::new, |given| letter(given.symbol)));
    math(&format!("{}<mo>=</mo>{right}", letter(working.symbol)))
}

/// The formula with the numbers put in, and its result in the same set of units.
#[must_use]
pub fn numbers<F, O>(working: &Working<F, O>, style: Style<'_>) -> String {
    let left = markup(&working.formula, &|at| {
        working.givens.get(at).map_or_else(String::new, |given| quantity(given.amount, style))
    });
    math(&format!("{left}<mo>=</mo>{}", quantity(working.result, style)))
}

/// The combined standard uncertainty in letters: "u_c = √(Σ (c_i·u_i)²)".
#[must_use]
pub fn combined_letters() -> String {
    math(
        "<msub><mi>u</mi><mtext>c</mtext></msub><mo>=</mo><msqrt><mrow><munder><mo>∑</mo><mi>i</mi></munder>\
         <msup><mrow><mo>(</mo><msub><mi>c</mi><mi>i</mi></msub><mo>·</mo><msub><mi>u</mi><mi>i</mi></msub>\
         <mo>)</mo></mrow><mn>2</mn></msup></mrow></msqrt>",
    )
}

/// The combined standard uncertainty with the numbers put in: the part c·u of each source, the largest
/// first, and the result, in one unit. `around` is the value near which a difference lies, as for
/// [`plus_minus`](super::text::plus_minus).
#[must_use]
pub fn combined_numbers(budget: &Budget, around: Option<f64>, style: Style<'_>) -> String {
    let kind = budget.asked.kind();
    let unit = style.set.unit(kind.dimension());
    let at = around.unwrap_or(budget.value);
    let number = |width: f64| {
        let number = trimmed_to(width_in(unit, width, at).abs(), DIGITS, style.mark);
        with_unit(&number, kind.dimension(), style)
    };
    let squares = budget.shares.iter().map(|share| format!("<msup>{}<mn>2</mn></msup>", number(share.part)));
    let sum = squares.collect::<Vec<_>>().join("<mo>+</mo>");
    math(&format!("<msqrt><mrow>{sum}</mrow></msqrt><mo>=</mo>{}", number(budget.standard)))
}

/// One letter by itself.
#[must_use]
pub fn symbol(symbol: Symbol) -> String {
    math(&letter(symbol))
}

fn math(inner: &str) -> String {
    format!("<math><mrow>{inner}</mrow></math>")
}

fn letter(symbol: Symbol) -> String {
    let base = format!("<mi>{}</mi>", symbol.letter);
    let index = match (symbol.index, symbol.liquid) {
        ("", None) => return base,
        (index, None) => format!("<mtext>{index}</mtext>"),
        ("", Some(place)) => format!("<mn>{place}</mn>"),
        (index, Some(place)) => format!("<mrow><mtext>{index}</mtext><mo>,</mo><mn>{place}</mn></mrow>"),
    };
    format!("<msub>{base}{index}</msub>")
}

/// A number with its unit, as one group, so that "11 400 kg/h" is never torn apart.
fn quantity(amount: Amount, style: Style<'_>) -> String {
    let dimension = amount.kind.dimension();
    let unit = style.set.unit(dimension);
    let number = trimmed_to(amount.get(unit), DIGITS, style.mark);
    with_unit(&number, dimension, style)
}

fn with_unit(number: &str, dimension: Dimension, style: Style<'_>) -> String {
    let unit = style.set.unit(dimension);
    // In a formula the basis of a moisture is in its letter; the number is a percentage.
    let symbol = match dimension {
        Dimension::Moisture => "%".into(),
        _ => escape(&unit_shown(unit, style.currency)).into_owned(),
    };
    let mut out = format!("<mrow><mn>{number}</mn>");
    if !symbol.is_empty() {
        let _ = write!(out, "<mspace width=\"0.17em\"/><mtext>{symbol}</mtext>");
    }
    out.push_str("</mrow>");
    out
}

fn markup(expr: &Expr, given: &impl Fn(usize) -> String) -> String {
    let within = |part: &Expr, least: u8| {
        let inner = markup(part, given);
        if part.binding() < least { format!("<mrow><mo>(</mo>{inner}<mo>)</mo></mrow>") } else { inner }
    };
    match expr {
        Expr::Given(at) => given(*at),
        Expr::Number(number) => format!("<mn>{number}</mn>"),
        Expr::Add(left, right) => format!("<mrow>{}<mo>+</mo>{}</mrow>", within(left, 1), within(right, 1)),
        Expr::Sub(left, right) => format!("<mrow>{}<mo>−</mo>{}</mrow>", within(left, 1), within(right, 2)),
        Expr::Mul(left, right) => format!("<mrow>{}<mo>·</mo>{}</mrow>", within(left, 2), within(right, 2)),
        // A fraction bar groups by itself.
        Expr::Div(left, right) => format!("<mfrac>{}{}</mfrac>", markup(left, given), markup(right, given)),
        Expr::Max(left, right) => format!(
            "<mrow><mi>max</mi><mo>(</mo>{}<mo>,</mo>{}<mo>)</mo></mrow>",
            markup(left, given),
            markup(right, given)
        ),
        Expr::Sqrt(of) => format!("<msqrt>{}</msqrt>", markup(of, given)),
    }
}
