//! The analysis of variance, and the effects that share a column.

use super::context::{EffectsShown, read_effects};
use super::effect_table::term_name;
use crate::domain::trial::Series;
use crate::domain::trial::series::effects::{Effects, Term, TermResult};
use crate::domain::trial::series::word::Word;
use crate::quantity::Kind;
use crate::quantity::format::significant;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::{TrialDesk, amount_parts};
use crate::ui::state::State;
use crate::ui::text::{Context, unit_short};
use leptos::prelude::*;

/// Term, degrees of freedom, sum of squares, mean square, F, P, share.
type AnovaRow = [String; 7];

/// The analysis of variance.
#[component]
pub fn Anova() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let shown = expect_context::<EffectsShown>();
    let rows = Memo::new(move |_| {
        read_effects(state, desk, shown, |effects, series, context| anova_rows(state, effects, series, context))
    });
    // Squares in the square of the unit shown.
    let squared = move |label: String| {
        let unit = shown
            .property
            .get()
            .map_or_else(String::new, |own| unit_short(state.unit(own.kind()), &state.currency.get()));
        if unit.is_empty() { label } else { format!("{label}, ({unit})²") }
    };
    let note = Signal::derive(move || {
        rows.with(|rows| {
            let shares = rows.iter().filter(|row| !row[0].is_empty()).take(rows.len().saturating_sub(1));
            shares.map(|row| format!("{} {} %", row[0], row[6])).collect::<Vec<_>>().join(" · ")
        })
    });
    let row = |row: AnovaRow| {
        let [name, cells @ ..] = row;
        view! {
            <tr>
                <th scope="row" class="l">{name}</th>
                {cells.into_iter().map(|cell| view! { <td>{cell}</td> }).collect_view()}
            </tr>
        }
    };
    view! {
        <Fold title=t!("trial-anova") note=note id="anova">
            <div class="scroll" tabindex="0" role="region" aria-label=t!("trial-anova")>
                <table class="results">
                    <thead><tr>
                        <th scope="col" class="l">{t!("trial-term")}</th>
                        <th scope="col">{t!("trial-freedom")}</th>
                        <th scope="col">{move || squared(t!("trial-squares"))}</th>
                        <th scope="col">{move || squared(t!("trial-mean-square"))}</th>
                        <th scope="col">"F"</th>
                        <th scope="col">"P"</th>
                        <th scope="col">{t!("trial-share")} ", %"</th>
                    </tr></thead>
                    <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </div>
        </Fold>
    }
}

fn anova_rows(state: State, effects: &Effects, series: &Series, context: &Context<'_>) -> Vec<AnovaRow> {
    let mark = context.units.mark;
    let unit = state.unit(effects.property.kind());
    let scale = (unit.from_base(1.0) - unit.from_base(0.0)).powi(2);
    let number = |value: f64| significant(value, 4, mark);
    let chance = |p: f64| if p < 1e-4 { format!("< {}", significant(1e-4, 1, mark)) } else { significant(p, 3, mark) };
    let line = |name: String, freedom: u32, squares: f64, (f, p): (Option<f64>, Option<f64>), share: f64| {
        let mean = (freedom > 0).then(|| number(squares * scale / f64::from(freedom)));
        [
            name,
            freedom.to_string(),
            number(squares * scale),
            mean.unwrap_or_default(),
            f.map_or_else(String::new, number),
            p.map_or_else(String::new, chance),
            amount_parts(state, Kind::Share, share).0,
        ]
    };
    let term = |own: &TermResult| {
        line(term_name(series, context, own.term), own.freedom, own.squares, (own.f, own.p), own.share)
    };
    let rest = effects.residual_squares / effects.total_squares;
    let all = u32::try_from(effects.runs.saturating_sub(1)).unwrap_or(u32::MAX);
    let none = (None, None);
    effects
        .terms
        .iter()
        .map(term)
        .chain([
            line(t!("trial-residual"), effects.residual_freedom, effects.residual_squares, none, rest),
            line(t!("trial-total"), all, effects.total_squares, none, 1.0),
        ])
        .collect()
}

/// The effects that cannot be distinguished from those shown; nothing where all combinations were made.
#[component]
pub fn AliasesOfEffects() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let shown = expect_context::<EffectsShown>();
    // Name of the term, its word, its aliases.
    let rows = Memo::new(move |_| {
        read_effects(state, desk, shown, |effects, series, context| {
            let row = |own: &TermResult| {
                let with = own.aliases.iter().map(|word| word.to_text()).collect::<Vec<_>>().join(" = ");
                (!with.is_empty()).then(|| (term_name(series, context, own.term), word_of(own.term), with))
            };
            effects.terms.iter().filter_map(row).collect::<Vec<_>>()
        })
    });
    let note = Signal::derive(move || {
        rows.with(|rows| rows.iter().map(|(_, word, with)| format!("{word} = {with}")).collect::<Vec<_>>().join(" · "))
    });
    let row = |(name, word, with): (String, String, String)| {
        view! { <tr><th scope="row" class="l">{word} " " {name}</th><td class="l">{with}</td></tr> }
    };
    view! {
        <Show when=move || rows.with(|rows| !rows.is_empty())>
            <Fold title=t!("trial-aliases") note=note id="effect-aliases">
                <table class="results" aria-label=t!("trial-aliases")>
                    <thead><tr>
                        <th scope="col" class="l">{t!("trial-effect")}</th>
                        <th scope="col" class="l">{t!("trial-same-column")}</th>
                    </tr></thead>
                    <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </Fold>
        </Show>
    }
}

fn word_of(term: Term) -> String {
    match term {
        Term::Blocks => String::new(),
        Term::Main(factor) => Word::main(factor).to_text(),
        Term::Pair(one, other) => Word::pair(one, other).to_text(),
    }
}
