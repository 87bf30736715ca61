//! What results tell, in plain sentences.

use super::figure::property;
use super::name::{factor, level, lower_first, term};
use crate::domain::trial::boards::at_density::AtDensity;
use crate::domain::trial::boards::group::GroupKey;
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::boards::target::Judged;
use crate::domain::trial::series::effects::{Effects, Term, TermResult};
use crate::domain::trial::series::factor::{Factor, Level};
use crate::domain::trial::{Property, Series};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{Context, shown};
use crate::{label, t};

/// How many terms are spoken of.
const SPOKEN: usize = 3;

/// What the effects tell: the first sentence is the whole in brief; the others say how much.
#[must_use]
pub fn sayings(effects: &Effects, series: &Series, context: &Context<'_>) -> Vec<String> {
    let ranking = effects.ranking();
    // Without degrees of freedom nothing is tested, and all that can be said is which is larger.
    let tested = ranking.iter().any(|result| result.p.is_some());
    let of = lower_first(property(effects.property).label);
    let called = |result: &TermResult| term(result.term, &series.factors, context.draft);
    let told: Vec<&TermResult> =
        ranking.iter().copied().filter(|result| !tested || result.is_significant() == Some(true)).collect();
    let mut sayings = match (tested, told.as_slice()) {
        (false, [largest, ..]) => vec![t!("bench-saying-largest", term = called(largest), property = of.as_str())],
        (_, []) => return vec![t!("bench-saying-none", property = of)],
        _ => vec![in_brief(&told, &of, series, called)],
    };
    sayings.extend(told.iter().take(SPOKEN).filter_map(|result| effect(result, effects, series, context)));
    // A factor that takes part in a significant interaction has an effect, though none of its own.
    let takes_part = |factor: usize| {
        told.iter().any(|result| matches!(result.term, Term::Pair(one, other) if one == factor || other == factor))
    };
    let is_main = |result: &&&TermResult| matches!(result.term, Term::Main(factor) if !takes_part(factor));
    let silent: Vec<String> = ranking
        .iter()
        .filter(|result| result.is_significant() == Some(false))
        .filter(is_main)
        .map(|result| lower_first(&called(result)))
        .collect();
    if !silent.is_empty() {
        sayings.push(t!("bench-saying-none-of", property = of, names = listed(&silent, Joint::Or)));
    }
    if !tested {
        sayings.push(t!("bench-saying-untested"));
    }
    sayings
}

/// "Board density and dose of pMDI raise internal bond; press factor lowers it."
fn in_brief(told: &[&TermResult], of: &str, series: &Series, called: impl Fn(&TermResult) -> String) -> String {
    let mains = told.iter().filter(|result| matches!(result.term, Term::Main(_)));
    // Levels in words have no order in which anything could rise or fall.
    let is_ordered = |result: &TermResult| match result.term {
        Term::Main(factor) => series
            .factors
            .get(factor)
            .is_some_and(|own| own.levels.iter().all(|level| matches!(level, Level::Value(_) | Level::Number { .. }))),
        _ => false,
    };
    let named = |belongs: fn(Option<f64>) -> bool| {
        let change = |result: &TermResult| result.effect.filter(|_| is_ordered(result)).map(|effect| effect.value);
        let own = mains.clone().filter(|result| belongs(change(result)));
        own.map(|result| lower_first(&called(result))).collect::<Vec<String>>()
    };
    let mut clauses: Vec<String> = Vec::new();
    let mut add = |verb: Verb, names: Vec<String>| {
        if !names.is_empty() {
            clauses.push(clause(verb, &names, of, clauses.is_empty()));
        }
    };
    add(Verb::Raises, named(|effect| effect.is_some_and(|effect| effect >= 0.0)));
    add(Verb::Lowers, named(|effect| effect.is_some_and(|effect| effect < 0.0)));
    add(Verb::Affects, named(|effect| effect.is_none()));
    if clauses.is_empty() {
        return t!("bench-saying-only-interaction", property = of);
    }
    let sentence = clauses.join("; ");
    let mut letters = sentence.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    format!("{}.", first.chain(letters).collect::<String>())
}

/// What factors do to a property.
#[derive(Clone, Copy)]
enum Verb {
    Raises,
    Lowers,
    Affects,
}

/// "press factor lowers internal bond", and after a first clause "press factor lowers it".
fn clause(verb: Verb, names: &[String], of: &str, is_first: bool) -> String {
    let (listed, count) = (listed(names, Joint::And), names.len());
    match verb {
        Verb::Raises => t!("bench-saying-raises", names = listed, count = count, property = of),
        Verb::Lowers if is_first => t!("bench-saying-lowers", names = listed, count = count, property = of),
        Verb::Lowers => t!("bench-saying-lowers-it", names = listed, count = count),
        Verb::Affects if is_first => t!("bench-saying-affects", names = listed, count = count, property = of),
        Verb::Affects => t!("bench-saying-affects-it", names = listed, count = count),
    }
}

/// The joint before the last name of a list.
#[derive(Clone, Copy)]
enum Joint {
    And,
    Or,
}

/// "a, b or c".
fn listed(names: &[String], joint: Joint) -> String {
    match names {
        [] => String::new(),
        [only] => only.clone(),
        [first @ .., last] => {
            let (first, last) = (first.join(", "), last.as_str());
            match joint {
                Joint::And => t!("bench-saying-and", first = first, last = last),
                Joint::Or => t!("bench-saying-or", first = first, last = last),
            }
        }
    }
}

/// "From 10 % to 14 %, internal bond rises by 0.12 N/mm², ± 0.05."
fn effect(result: &TermResult, effects: &Effects, series: &Series, context: &Context<'_>) -> Option<String> {
    let Term::Main(factor) = result.term else { return interaction(result, effects, series, context) };
    let estimate = result.effect?;
    let [low, high] = series.factors.get(factor)?.levels.as_slice() else { return None };
    let difference = |base: f64| difference(effects.property, base, context);
    let size = difference(estimate.value.abs());
    let change = if estimate.value < 0.0 { "falls" } else { "rises" };
    let term = term(result.term, &series.factors, context.draft);
    let (low, high) = (level(low, context), level(high, context));
    let property = lower_first(property(effects.property).label);
    Some(match estimate.half_width.map(difference) {
        Some(half) => t!(
            "bench-saying-effect-sure",
            term = term,
            low = low,
            high = high,
            property = property,
            change = change,
            size = size,
            half = half,
        ),
        None => t!(
            "bench-saying-effect",
            term = term,
            low = low,
            high = high,
            property = property,
            change = change,
            size = size,
        ),
    })
}

/// A difference of a property: of a share or a moisture in percentage points.
fn difference(property: Property, base: f64, context: &Context<'_>) -> String {
    match property.kind() {
        kind @ Kind::Share => {
            let text = shown(Amount::from_base(kind, base), context);
            text.strip_suffix('%').map_or(text.clone(), |number| t!("bench-saying-points", number = number.trim_end()))
        }
        Kind::Moisture => {
            let text = shown(Amount::from_base(Kind::Share, base), context);
            text.strip_suffix('%')
                .map_or(text.clone(), |number| t!("bench-saying-points-dry-basis", number = number.trim_end()))
        }
        kind => shown(Amount::from_base(kind, base), context),
    }
}

/// "Dose × board density: at the high level of one, the effect of the other is larger by 0.04 N/mm²."
fn interaction(result: &TermResult, effects: &Effects, series: &Series, context: &Context<'_>) -> Option<String> {
    let Term::Pair(one, other) = result.term else { return None };
    // Without a test, or where it is not significant, an interaction is not spoken of.
    result.is_significant().filter(|significant| *significant)?;
    let estimate = result.effect?;
    let (one, other) = (series.factors.get(one)?, series.factors.get(other)?);
    let [low, high] = one.levels.as_slice() else { return None };
    // Half the difference that one makes to the other's effect is the estimate.
    let change = difference(effects.property, 2.0 * estimate.value.abs(), context);
    Some(t!(
        "bench-saying-interaction",
        factor = lower_first(&factor(other.of, &other.own, context.draft)),
        property = lower_first(property(effects.property).label),
        size = change,
        change = if estimate.value < 0.0 { "lower" } else { "higher" },
        other = lower_first(&factor(one.of, &one.own, context.draft)),
        high = level(high, context),
        low = level(low, context),
    ))
}

/// Whether a requirement is met, as a sentence.
#[must_use]
pub fn verdict(judged: &Judged, context: &Context<'_>) -> String {
    let kind = judged.property.kind();
    let amount = |base: f64| shown(Amount::from_base(kind, base), context);
    let tail = match judged.property.tail() {
        Some(Tail::Upper) => "upper",
        Some(Tail::Lower) | None => "lower",
    };
    let property = property(judged.property).label;
    let required = match amount(judged.required) {
        amount if judged.unverified => t!("bench-verdict-unverified", amount = amount),
        amount => amount,
    };
    match (judged.met, judged.value.map(amount)) {
        (Some(true), Some(value)) => {
            t!("bench-verdict-met", tail = tail, property = property, value = value, required = required)
        }
        (Some(false), Some(value)) => {
            t!("bench-verdict-not-met", tail = tail, property = property, value = value, required = required)
        }
        _ => t!("bench-verdict-open", tail = tail, property = property, required = required),
    }
}

/// What boards that are put together have in common.
#[must_use]
pub fn group(key: &GroupKey, series: Option<&Series>, context: &Context<'_>) -> String {
    match (key, series) {
        (GroupKey::Base, _) => t!("bench-base-sheet"),
        (GroupKey::Run(run), _) => t!("trial-run-n", number = *run),
        (GroupKey::Combination(levels), Some(series)) => {
            let one = |(own, at): (&Factor, &u8)| {
                let level = own.levels.get(usize::from(*at)).map_or_else(String::new, |own| level(own, context));
                t!("bench-group-level", factor = factor(own.of, &own.own, context.draft), level = level)
            };
            series.factors.iter().zip(levels).map(one).collect::<Vec<_>>().join(", ")
        }
        (GroupKey::Combination(_), None) => t!("trial-combination"),
    }
}

/// "Internal bond at target density: 0.52 N/mm² ± 0.04 N/mm² (95 % confidence interval, 8 pieces)."
#[must_use]
pub fn at_density(own: &AtDensity, context: &Context<'_>) -> String {
    let amount = |base: f64| shown(Amount::from_base(own.property.kind(), base), context);
    let (property, value, half) = (property(own.property).label, amount(own.value), amount(own.half_width));
    let said = match own.groups {
        ..=1 => t!("bench-at-density", property = property, value = value, half = half, pieces = own.pieces),
        groups => t!(
            "bench-at-density-shared",
            property = property,
            value = value,
            half = half,
            pieces = own.pieces,
            groups = groups,
        ),
    };
    if own.outside { format!("{said} {}", label!("bench-at-density-outside")) } else { said }
}
