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

/// How many terms are spoken of.
const SPOKEN: usize = 3;

/// The first sentence is the whole in brief; the others say how much.
pub(super) fn sayings(effects: &Effects, series: &Series, context: &Context<'_>) -> Vec<String> {
    let ranking = effects.ranking();
    // Without degrees of freedom nothing is tested, and all that can be said is which is larger.
    let tested = ranking.iter().any(|result| result.p.is_some());
    let of = lower_first(property(effects.property).label);
    let called = |result: &TermResult| term(result.term, &series.factors, context.draft);
    let told: Vec<&TermResult> =
        ranking.iter().copied().filter(|result| !tested || result.is_significant() == Some(true)).collect();
    let mut sayings = match (tested, told.as_slice()) {
        (false, [largest, ..]) => vec![format!("{} has the largest effect on {of}.", called(largest))],
        (_, []) => return vec![format!("No significant effect on {of}.")],
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
        sayings.push(format!("No significant effect on {of} of {}.", listed(&silent, "or")));
    }
    if !tested {
        sayings.push("These runs leave no degrees of freedom, so significance is not tested.".to_owned());
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
    let groups = [
        (named(|effect| effect.is_some_and(|effect| effect >= 0.0)), "raises", "raise"),
        (named(|effect| effect.is_some_and(|effect| effect < 0.0)), "lowers", "lower"),
        (named(|effect| effect.is_none()), "affects", "affect"),
    ];
    let mut clauses = Vec::new();
    for (names, one, several) in groups.iter().filter(|(names, ..)| !names.is_empty()) {
        let verb = if names.len() == 1 { one } else { several };
        let object = if clauses.is_empty() { of } else { "it" };
        clauses.push(format!("{} {verb} {object}", listed(names, "and")));
    }
    if clauses.is_empty() {
        return format!("Only the interaction of factors affects {of}.");
    }
    let sentence = clauses.join("; ");
    let mut letters = sentence.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    format!("{}.", first.chain(letters).collect::<String>())
}

/// "a, b or c".
fn listed(names: &[String], last_word: &str) -> String {
    match names {
        [] => String::new(),
        [only] => only.clone(),
        [first @ .., last] => format!("{} {last_word} {last}", first.join(", ")),
    }
}

/// "From 10 % to 14 %, internal bond rises by 0.12 N/mm², ± 0.05."
fn effect(result: &TermResult, effects: &Effects, series: &Series, context: &Context<'_>) -> Option<String> {
    let Term::Main(factor) = result.term else { return interaction(result, effects, series, context) };
    let estimate = result.effect?;
    let [low, high] = series.factors.get(factor)?.levels.as_slice() else { return None };
    let difference = |base: f64| difference(effects.property, base, context);
    let size = difference(estimate.value.abs());
    let way = if estimate.value < 0.0 { "falls" } else { "rises" };
    let sure = estimate.half_width.map_or_else(String::new, |half| format!(" (± {}, 95 %)", difference(half)));
    Some(format!(
        "{}, from {} to {}: {} {way} by {size}{sure}.",
        term(result.term, &series.factors, context.draft),
        level(low, context),
        level(high, context),
        lower_first(property(effects.property).label)
    ))
}

/// A difference of a property: of a share or a moisture in percentage points.
fn difference(property: Property, base: f64, context: &Context<'_>) -> String {
    match property.kind() {
        kind @ Kind::Share => {
            let text = shown(Amount::from_base(kind, base), context);
            text.strip_suffix('%').map_or(text.clone(), |number| format!("{}\u{a0}points", number.trim_end()))
        }
        Kind::Moisture => {
            let text = shown(Amount::from_base(Kind::Share, base), context);
            text.strip_suffix('%').map_or(text.clone(), |number| format!("{}\u{a0}points d.b.", number.trim_end()))
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
    let way = if estimate.value < 0.0 { "lower" } else { "higher" };
    Some(format!(
        "Significant interaction: the effect of {} on {} is {change} {way} at {} {} than at {}.",
        lower_first(&factor(other.of, &other.own, context.draft)),
        lower_first(property(effects.property).label),
        lower_first(&factor(one.of, &one.own, context.draft)),
        level(high, context),
        level(low, context),
    ))
}

pub(super) fn verdict(judged: &Judged, context: &Context<'_>) -> String {
    let kind = judged.property.kind();
    let amount = |base: f64| shown(Amount::from_base(kind, base), context);
    let (bound, quantile) = match judged.property.tail() {
        Some(Tail::Upper) => ("at most", "upper 95 % quantile"),
        Some(Tail::Lower) | None => ("at least", "lower 95 % quantile"),
    };
    let label = property(judged.property).label;
    let source = if judged.unverified { " (unverified)" } else { "" };
    match (judged.met, judged.value) {
        (Some(true), Some(value)) => {
            format!(
                "{label}: met, {quantile} {} where {bound} {}{source} is required.",
                amount(value),
                amount(judged.required)
            )
        }
        (Some(false), Some(value)) => {
            format!(
                "{label}: not met, {quantile} {} where {bound} {}{source} is required.",
                amount(value),
                amount(judged.required)
            )
        }
        _ => format!("{label}: too few boards to tell whether {bound} {}{source} is met.", amount(judged.required)),
    }
}

/// What boards that are put together have in common.
pub(super) fn group(key: &GroupKey, series: Option<&Series>, context: &Context<'_>) -> String {
    match (key, series) {
        (GroupKey::Base, _) => "Base sheet".to_owned(),
        (GroupKey::Run(run), _) => format!("Run {run}"),
        (GroupKey::Combination(levels), Some(series)) => {
            let one = |(own, at): (&Factor, &u8)| {
                let level = own.levels.get(usize::from(*at)).map_or_else(String::new, |own| level(own, context));
                format!("{} {level}", factor(own.of, &own.own, context.draft))
            };
            series.factors.iter().zip(levels).map(one).collect::<Vec<_>>().join(", ")
        }
        (GroupKey::Combination(_), None) => "Combination".to_owned(),
    }
}

/// "Internal bond at target density: 0.52 N/mm² ± 0.04 N/mm² (95 % confidence interval, 8 pieces)."
pub(super) fn at_density(own: &AtDensity, context: &Context<'_>) -> String {
    let amount = |base: f64| shown(Amount::from_base(own.property.kind(), base), context);
    let outside = if own.outside { " The target density is outside the densities tested." } else { "" };
    let pieces = if own.pieces == 1 { "1 piece".to_owned() } else { format!("{} pieces", own.pieces) };
    let shared = match own.groups {
        ..=1 => String::new(),
        groups => format!(", one slope for {groups} groups of boards"),
    };
    format!(
        "{} at target density: {} ± {} (95 % confidence interval, {pieces}{shared}).{outside}",
        property(own.property).label,
        amount(own.value),
        amount(own.half_width),
    )
}
