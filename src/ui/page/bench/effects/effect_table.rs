//! The effects, the largest first: each with its interval drawn on the axis of all.

use super::context::EffectsShown;
use crate::domain::trial::Series;
use crate::domain::trial::series::effects::{EffectEstimate, Effects, Term, TermResult};
use crate::quantity::Kind;
use crate::t;
use crate::ui::chart::scale::LinearScale;
use crate::ui::page::bench::entry::{TrialDesk, amount_parts};
use crate::ui::state::State;
use crate::ui::text::{Context, unit_short, words};
use leptos::prelude::*;

/// A row, in words and in places of the drawing.
#[derive(Debug, Clone, PartialEq)]
struct EffectRow {
    name: String,
    change: String,
    effect: String,
    limit: String,
    is_significant: Option<bool>,
    low: String,
    high: String,
    /// Where the effect and both ends of its interval are, in percent of the width.
    at: (f64, f64, f64),
    /// What the drawing shows, in words.
    told: String,
}

/// The table's rows with the ticks of their axis: each with its place in percent of the width.
type Drawn = (Vec<EffectRow>, Vec<(f64, String)>);

/// A difference with its sign, without the unit.
pub fn signed(state: State, kind: Kind, base: f64) -> String {
    let number = amount_parts(state, kind, base.abs()).0;
    let is_zero = number.chars().all(|c| !c.is_ascii_digit() || c == '0');
    match (is_zero, base < 0.0) {
        (true, _) => number,
        (_, true) => format!("\u{2212}{number}"),
        (_, false) => format!("+{number}"),
    }
}

/// A term by the names of its factors.
pub fn term_name(series: &Series, context: &Context<'_>, term: Term) -> String {
    words::bench::term(term, &series.factors, context.draft)
}

/// The table.
#[component]
pub fn EffectTable() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let EffectsShown { outcome, property } = expect_context::<EffectsShown>();
    let drawn = Memo::new(move |_| {
        let units = state.units.get();
        state.currency.with(|currency| {
            desk.basis.with(|basis| {
                let context = Context { units: &units, draft: &basis.recipe, currency };
                desk.planned.with(|planned| {
                    outcome.with(|own| {
                        let effects = own.as_ref()?.effects.as_ref()?;
                        rows(state, effects, planned.series.as_ref()?, &context)
                    })
                })
            })
        })
    });
    let unit = Memo::new(move |_| {
        property.get().map_or_else(String::new, |own| unit_short(state.unit(own.kind()), &state.currency.get()))
    });
    let ticks = move || drawn.with(|drawn| drawn.as_ref().map_or_else(Vec::new, |(_, ticks)| ticks.clone()));
    let zero = Memo::new(move |_| {
        ticks().into_iter().find(|(_, label)| label.trim_start_matches('+') == "0").map_or(0.0, |(at, _)| at)
    });
    let row = move |row: EffectRow| effect_row(row, ticks(), zero.get());
    let axis = move || {
        let last = ticks().len().saturating_sub(1);
        let tick = |(place, (at, label)): (usize, (f64, String))| {
            let anchor = match place {
                0 => "start",
                place if place == last => "end",
                _ => "middle",
            };
            view! { <text x=format!("{at:.2}%") y="14" text-anchor=anchor>{label}</text> }
        };
        ticks().into_iter().enumerate().map(tick).collect_view()
    };
    view! {
        <Show when=move || drawn.with(|drawn| drawn.as_ref().is_some_and(|(rows, _)| !rows.is_empty()))>
            <section class="panel effects-panel" aria-label=t!("trial-effects")>
                <table class="grid effects" aria-label=t!("trial-effects")>
                    <thead><tr>
                        <th scope="col" class="l">{t!("trial-term")}</th>
                        <th scope="col" class="l">{t!("trial-change")}</th>
                        <th scope="col">{t!("trial-effect")} <br/> {move || unit.get()}</th>
                        <th scope="col">{t!("trial-limit-95")}</th>
                        <th scope="col" class="l chart">{move || t!("trial-effect-and-limits", unit = unit.get())}</th>
                        <th scope="col" class="l">{t!("trial-at-five")}</th>
                        <th scope="col" class="edge">{t!("trial-mean-low")} <br/> {move || unit.get()}</th>
                        <th scope="col">{t!("trial-mean-high")} <br/> {move || unit.get()}</th>
                    </tr></thead>
                    <tbody>{move || {
                        let rows = drawn.with(|drawn| drawn.as_ref().map_or_else(Vec::new, |(rows, _)| rows.clone()));
                        rows.into_iter().map(row).collect_view()
                    }}</tbody>
                    <tfoot><tr>
                        <td colspan="4"></td>
                        <td class="chart"><svg class="effect-axis" aria-hidden="true">{axis}</svg></td>
                        <td colspan="3"></td>
                    </tr></tfoot>
                </table>
            </section>
        </Show>
    }
}

fn rows(state: State, effects: &Effects, series: &Series, context: &Context<'_>) -> Option<Drawn> {
    let kind = effects.property.kind();
    let unit = state.unit(kind);
    let shown = |base: f64| unit.from_base(base) - unit.from_base(0.0);
    let estimates = effects.ranking().into_iter().filter_map(|term| Some((term, term.effect?)));
    let ends = estimates.clone().flat_map(|(_, own)| {
        let half = own.half_width.unwrap_or(0.0);
        [shown(own.value - half), shown(own.value + half)]
    });
    let (scale, ticks) = LinearScale::around(ends.chain([0.0]), (2.0, 98.0), 5)?;
    let mark = state.units.with(|units| units.mark);
    let label = |tick: f64| {
        let label = ticks.label(tick, mark);
        if tick > 0.0 { format!("+{label}") } else { label }
    };
    let row = |(term, own): (&TermResult, EffectEstimate)| {
        let half = own.half_width.unwrap_or(0.0);
        let name = term_name(series, context, term.term);
        let (effect, limit) =
            (signed(state, kind, own.value), own.half_width.map(|half| amount_parts(state, kind, half).0));
        let ends = t!(
            "trial-effect-told",
            name = name.clone(),
            effect = effect.clone(),
            low = signed(state, kind, own.value - half),
            high = signed(state, kind, own.value + half)
        );
        let (low, high, change) = match term.term {
            Term::Main(factor) => {
                let mean = |level: u8| {
                    let own = effects.levels.iter().find(|own| (own.factor, own.level) == (factor, level));
                    own.map_or_else(String::new, |own| amount_parts(state, kind, own.mean).0)
                };
                let level = |at: usize| {
                    let level = series.factors.get(factor).and_then(|own| own.levels.get(at));
                    level.map_or_else(String::new, |level| words::bench::level(level, context))
                };
                (mean(0), mean(1), format!("{} → {}", level(0), level(1)))
            }
            _ => (String::new(), String::new(), t!("trial-interaction")),
        };
        EffectRow {
            name,
            change,
            effect,
            limit: limit.map_or_else(String::new, |limit| format!("± {limit}")),
            is_significant: term.is_significant(),
            low,
            high,
            at: (
                scale.place(shown(own.value)),
                scale.place(shown(own.value - half)),
                scale.place(shown(own.value + half)),
            ),
            told: ends,
        }
    };
    let rows = estimates.map(row).collect();
    Some((rows, ticks.iter().map(|tick| (scale.place(tick), label(tick))).collect()))
}

fn effect_row(row: EffectRow, ticks: Vec<(f64, String)>, zero: f64) -> impl IntoView {
    let EffectRow { name, change, effect, limit, is_significant, low, high, at: (middle, from, to), told } = row;
    let class = if is_significant == Some(true) { "effect significant" } else { "effect" };
    let line = |at: f64| {
        let class = if (at - zero).abs() < 1e-9 { "zero" } else { "tick" };
        view! { <line class=class x1=format!("{at:.2}%") x2=format!("{at:.2}%") y1="0" y2="48"></line> }
    };
    let ends = [from, to].map(|at| {
        view! { <line class="interval" x1=format!("{at:.2}%") x2=format!("{at:.2}%") y1="17" y2="31"></line> }
    });
    let word = match is_significant {
        Some(true) => view! { <b>{t!("trial-significant")}</b> }.into_any(),
        Some(false) => view! { <span class="note">{t!("trial-not-significant")}</span> }.into_any(),
        None => view! { <span class="note">{t!("trial-untested")}</span> }.into_any(),
    };
    view! {
        <tr class=class>
            <th scope="row" class="l name">{name}</th>
            <td class="l change">{change}</td>
            <td class="size">{effect}</td>
            <td class="limit">{limit}</td>
            <td class="chart">
                <svg class="effect-line" role="img" aria-label=told>
                    {ticks.into_iter().map(|(at, _)| line(at)).collect_view()}
                    <line class="interval" x1=format!("{from:.2}%") x2=format!("{to:.2}%") y1="24" y2="24"></line>
                    {ends.to_vec()}
                    <circle cx=format!("{middle:.2}%") cy="24" r="5.5"></circle>
                </svg>
            </td>
            <td class="l word">{word}</td>
            <td class="edge roomy">{low}</td>
            <td class="roomy">{high}</td>
        </tr>
    }
}
