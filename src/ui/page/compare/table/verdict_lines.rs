//! Which system is the cheapest that can run, in a sentence, and what the others would bring.

use crate::domain::Field;
use crate::domain::compare::overview::key_figures::{KeyFigure, KeyRow};
use crate::domain::compare::overview::verdict::{CostVerdict, OtherSystem, verdict};
use crate::domain::compare::variable;
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::words::{amount_text, unit_name};
use crate::ui::part::amount::joined;
use leptos::prelude::*;

/// The verdict: its sentence, and what else there is to say.
#[component]
pub fn VerdictLines(
    /// The key figures.
    rows: Memo<Vec<KeyRow>>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    // As it was at the last pause: nothing comes and goes between two keys.
    let words = Memo::new(move |before: Option<&(String, String)>| match before {
        Some(before) if context.typing.get() => before.clone(),
        _ => rows.with(|rows| verdict_words(context, rows)),
    });
    view! {
        <section class="verdict" role="status" aria-label=t!("compare-verdict")>
            <p class="lead">{move || words.with(|words| words.0.clone())}</p>
            <p>{move || words.with(|words| words.1.clone())}</p>
        </section>
    }
}

/// The verdict in words.
pub fn verdict_words(context: CompareContext, rows: &[KeyRow]) -> (String, String) {
    let row = |figure: KeyFigure| rows.iter().find(|row| row.figure == figure);
    let (Some(plain), Some(with_agent)) = (row(KeyFigure::Cost), row(KeyFigure::CostWithAgent)) else {
        return (String::new(), String::new());
    };
    context.shown.with(|shown| {
        // With the release agent once every system that has a cost has it too.
        let is_known =
            plain.values.iter().zip(&with_agent.values).all(|(plain, with)| plain.is_none() || with.is_some());
        let costs = if is_known { with_agent } else { plain };
        let found = verdict(&shown.systems, costs);
        let cost = |at: usize| costs.values.get(at).copied().flatten();
        let decimals = cost_decimals(context, costs);
        let mut rest: Vec<String> = Vec::new();
        if let Some(best) = found.cheapest {
            let letter = crate::ui::chart::series::letter(best).to_string();
            let other = |other: &OtherSystem| {
                let own = cost(other.at).zip(cost(best));
                other_words(context, &shown.name(other.at), other, own, &letter, decimals)
            };
            rest.extend(found.others.iter().filter_map(other));
        }
        let unpriced: Vec<usize> = (0..shown.systems.len())
            .filter(|at| shown.systems.get(*at).is_some_and(|system| system.case().is_some()) && cost(*at).is_none())
            .collect();
        if !unpriced.is_empty() {
            rest.push(t!("compare-verdict-unpriced", systems = context.letters(&unpriced)));
        }
        if !is_known {
            let is_open = |at: &usize| {
                plain.values.get(*at).is_some_and(Option::is_some)
                    && with_agent.values.get(*at).is_some_and(Option::is_none)
            };
            let open: Vec<usize> = (0..shown.systems.len()).filter(is_open).collect();
            rest.push(t!("compare-verdict-agent", systems = context.letters(&open)));
        }
        let moisture = moisture(context);
        let lead = match (&found, found.cheapest) {
            (CostVerdict { can_run, .. }, _) if can_run.is_empty() => t!("compare-verdict-none", at = moisture),
            (CostVerdict { can_run, .. }, Some(best)) if can_run.len() == 1 => {
                t!("compare-verdict-only", system = shown.name(best), at = moisture)
            }
            (CostVerdict { unpriced, .. }, Some(best)) if unpriced.is_empty() => {
                t!("compare-verdict-cheapest", system = shown.name(best), at = moisture)
            }
            (_, Some(best)) => t!("compare-verdict-cheapest-priced", system = shown.name(best), at = moisture),
            (CostVerdict { can_run, .. }, None) => {
                t!("compare-verdict-no-cost", systems = context.letters(can_run), count = can_run.len(), at = moisture)
            }
        };
        (lead, rest.join(" "))
    })
}

/// " at 5.0 % db", where all run on the same fibre.
fn moisture(context: CompareContext) -> String {
    if context.state.compare.typed.with(|typed| typed.own_conditions) {
        return String::new();
    }
    context.shown.with(|shown| {
        let case = shown.systems.get(shown.reference).and_then(|system| system.case());
        let amount = case.and_then(|case| variable::amount(&case.input, Field::FibreMoisture));
        amount.map_or_else(String::new, |amount| {
            format!(" {}", t!("compare-at", moisture = amount_text(context.state, amount)))
        })
    })
}

fn cost_decimals(context: CompareContext, costs: &KeyRow) -> u8 {
    let unit = context.state.unit(Kind::Cost);
    format::column_decimals(Kind::Cost.digits(), costs.values.iter().flatten().map(|cost| cost.get(unit)))
}

/// What another system would bring; nothing where neither its cost nor its output says anything.
fn other_words(
    context: CompareContext,
    name: &str,
    other: &OtherSystem,
    costs: Option<(Amount, Amount)>,
    best: &str,
    decimals: u8,
) -> Option<String> {
    let state = context.state;
    let mark = state.units.get().mark;
    let (own, cheapest) = costs?;
    let unit = state.unit(Kind::Cost);
    // From the figures shown.
    let more = format::rounded(own.get(unit), decimals) - format::rounded(cheapest.get(unit), decimals);
    let cost = joined(&format::fixed(more.abs(), decimals, mark), &unit_name(state, Kind::Cost));
    if more == 0.0 && other.can_run {
        return Some(t!("compare-other-same", system = name, best = best));
    }
    let can = if other.can_run { "yes" } else { "no" };
    let direction = |number: f64| if number < 0.0 { "less" } else { "more" };
    let first = t!("compare-other-cost", system = name, can = can, cost = cost, way = direction(more), best = best);
    let board = other.output.filter(|output| output.abs() > 1e-12).map(|output| {
        let output_unit = state.unit(Kind::BoardFlow);
        let text = format::significant(output_unit.from_base(output).abs(), 2, mark);
        let amount = joined(&text, &unit_name(state, Kind::BoardFlow));
        format!(" {}", t!("compare-other-output", can = can, output = amount, way = direction(output)))
    });
    let way_out = match (other.can_run, other.way_out) {
        (true, _) => String::new(),
        (false, Some(moisture)) => t!("compare-other-way-out", moisture = amount_text(state, moisture)),
        (false, None) => t!("compare-other-cannot"),
    };
    let way_out = if way_out.is_empty() { way_out } else { format!(", {way_out}") };
    Some(format!("{first}{}{way_out}.", board.unwrap_or_default()))
}
