//! The mean at each level of each factor.

use super::context::{EffectsShown, read_effects};
use super::effect_table::signed;
use crate::domain::trial::series::effects::LevelEffect;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::{TrialDesk, amount_parts, shown};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The fold.
#[component]
pub fn LevelMeans() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let of = expect_context::<EffectsShown>();
    // Level, mean, above the mean of its levels.
    let rows = Memo::new(move |_| {
        read_effects(state, desk, of, |effects, series, context| {
            let kind = effects.property.kind();
            let row = |own: &LevelEffect| {
                let factor = series.factors.get(own.factor)?;
                let level = factor.levels.get(usize::from(own.level))?;
                let name = words::bench::factor(factor.of, &factor.own, context.draft);
                let above = signed(state, kind, own.above.value);
                let above = match own.above.half_width {
                    Some(half) => format!("{above} ± {}", amount_parts(state, kind, half).0),
                    None => above,
                };
                Some([format!("{name}, {}", words::bench::level(level, context)), shown(state, kind, own.mean), above])
            };
            effects.levels.iter().filter_map(row).collect::<Vec<_>>()
        })
    });
    let note = Signal::derive(move || rows.with(|rows| t!("trial-level-count", count = rows.len())));
    let row = |[level, mean, above]: [String; 3]| {
        view! { <tr><th scope="row" class="l">{level}</th><td>{mean}</td><td>{above}</td></tr> }
    };
    view! {
        <Fold title=t!("trial-level-means") note=note id="level-means">
            <table class="results" aria-label=t!("trial-level-means")>
                <thead><tr>
                    <th scope="col" class="l">{t!("trial-level")}</th>
                    <th scope="col">{t!("trial-mean")}</th>
                    <th scope="col">{t!("trial-above-mean")}</th>
                </tr></thead>
                <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
            </table>
        </Fold>
    }
}
