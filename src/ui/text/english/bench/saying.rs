//! What results tell, in plain sentences.

use super::figure::property;
use super::name::{level, lower_first, term};
use crate::domain::trial::Series;
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::boards::target::Judged;
use crate::domain::trial::series::effects::{Effects, Term, TermResult};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{Context, shown};

/// How many terms are spoken of.
const SPOKEN: usize = 3;

pub(super) fn sayings(effects: &Effects, series: &Series, context: &Context<'_>) -> Vec<String> {
    let ranking = effects.ranking();
    // Without degrees of freedom nothing is tested, and all that can be said is which is larger.
    let tested = ranking.iter().any(|result| result.p.is_some());
    let told: Vec<&TermResult> =
        ranking.into_iter().filter(|result| !tested || result.is_told_apart() == Some(true)).collect();
    let called = |result: &TermResult| term(result.term, &series.factors, context.draft);
    let share = |result: &TermResult| shown(Amount::from_base(Kind::Share, result.share), context);
    let of = lower_first(property(effects.property).label);
    let mut sayings = Vec::new();
    match told.as_slice() {
        [] => sayings.push(format!("No effect on {of} is told apart from the scatter.")),
        [only] => {
            let rest = if tested { "; nothing else is told apart from the scatter" } else { "" };
            sayings.push(format!("{} explains {} of the differences in {of}{rest}.", called(only), share(only)));
        }
        [first, second, ..] => sayings.push(format!(
            "{} explains more than {}: {} of the differences in {of} against {}.",
            called(first),
            lower_first(&called(second)),
            share(first),
            share(second)
        )),
    }
    sayings.extend(told.iter().take(SPOKEN).filter_map(|result| effect(result, effects, series, context)));
    if !tested {
        sayings.push("How sure this is cannot be told from these runs.".to_owned());
    }
    sayings
}

/// "From 10 % to 14 %, internal bond rises by 0.12 N/mm², ± 0.05."
fn effect(result: &TermResult, effects: &Effects, series: &Series, context: &Context<'_>) -> Option<String> {
    let Term::Main(factor) = result.term else { return None };
    let estimate = result.effect?;
    let [low, high] = series.factors.get(factor)?.levels.as_slice() else { return None };
    let kind = effects.property.kind();
    let size = shown(Amount::from_base(kind, estimate.value.abs()), context);
    let way = if estimate.value < 0.0 { "falls" } else { "rises" };
    let sure = estimate
        .half_width
        .map_or_else(String::new, |half| format!(" (± {}, 95 %)", shown(Amount::from_base(kind, half), context)));
    Some(format!(
        "{}, from {} to {}: {} {way} by {size}{sure}.",
        term(result.term, &series.factors, context.draft),
        level(low, context),
        level(high, context),
        lower_first(property(effects.property).label)
    ))
}

pub(super) fn verdict(judged: &Judged, context: &Context<'_>) -> String {
    let kind = judged.property.kind();
    let amount = |base: f64| shown(Amount::from_base(kind, base), context);
    let bound = match judged.property.tail() {
        Some(Tail::Upper) => "at most",
        Some(Tail::Lower) | None => "at least",
    };
    let label = property(judged.property).label;
    match (judged.met, judged.value) {
        (Some(true), Some(value)) => {
            format!("{label}: met, {} where {bound} {} is required.", amount(value), amount(judged.required))
        }
        (Some(false), Some(value)) => {
            format!("{label}: not met, {} where {bound} {} is required.", amount(value), amount(judged.required))
        }
        _ => format!("{label}: too few boards to tell whether {bound} {} is met.", amount(judged.required)),
    }
}
