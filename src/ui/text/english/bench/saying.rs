//! What results tell, in plain sentences.

use super::figure::property;
use super::name::{factor, level, lower_first, term};
use crate::domain::trial::boards::at_density::AtDensity;
use crate::domain::trial::boards::group::GroupKey;
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::boards::target::Judged;
use crate::domain::trial::series::effects::{Effects, Term, TermResult};
use crate::domain::trial::series::factor::Factor;
use crate::domain::trial::{Property, Series};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{Context, shown};

/// How many terms are spoken of.
const SPOKEN: usize = 3;

pub(super) fn sayings(effects: &Effects, series: &Series, context: &Context<'_>) -> Vec<String> {
    let ranking = effects.ranking();
    // Without degrees of freedom nothing is tested, and all that can be said is which is larger.
    let tested = ranking.iter().any(|result| result.p.is_some());
    let told: Vec<&TermResult> =
        ranking.into_iter().filter(|result| !tested || result.is_significant() == Some(true)).collect();
    let called = |result: &TermResult| term(result.term, &series.factors, context.draft);
    let share = |result: &TermResult| shown(Amount::from_base(Kind::Share, result.share), context);
    let of = lower_first(property(effects.property).label);
    let mut sayings = Vec::new();
    match told.as_slice() {
        [] => sayings.push(format!("No effect on {of} is significant.")),
        [only] => {
            let rest = if tested { "; nothing else is significant" } else { "" };
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
        sayings.push("These runs leave no degrees of freedom, so significance is not tested.".to_owned());
    }
    sayings
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
