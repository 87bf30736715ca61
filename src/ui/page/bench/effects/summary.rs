//! How much the model explains, and how sure it is.

use super::context::EffectsShown;
use crate::domain::trial::series::effects::Effects;
use crate::quantity::Kind;
use crate::t;
use crate::ui::page::bench::entry::shown;
use crate::ui::state::State;
use leptos::prelude::*;

/// The figures.
#[component]
pub fn Summary() -> impl IntoView {
    let state = expect_context::<State>();
    let EffectsShown { outcome, .. } = expect_context::<EffectsShown>();
    let read = move |read: fn(State, &Effects) -> Option<String>| {
        Memo::new(move |_| {
            let text = outcome.with(|own| own.as_ref()?.effects.as_ref().and_then(|effects| read(state, effects)));
            text.unwrap_or_else(|| "–".to_owned())
        })
    };
    let explained = read(|state, own| Some(shown(state, Kind::Share, own.explained())));
    let deviation = read(|state, own| Some(shown(state, own.property.kind(), own.residual_deviation()?)));
    let freedom = read(|_, own| Some(t!("trial-freedom-count", count = own.residual_freedom)));
    let mean = read(|state, own| Some(shown(state, own.property.kind(), own.mean)));
    let smallest = read(|state, own| {
        let half = own.terms.iter().filter_map(|term| term.effect?.half_width);
        Some(shown(state, own.property.kind(), half.reduce(f64::min)?))
    });
    view! {
        <section class="panel series-head" aria-label=t!("trial-model")>
            <div class="fig"><span class="label">{t!("trial-explained")}</span><p>{move || explained.get()}</p></div>
            <div class="fig">
                <span class="label">{t!("trial-residual-sd")}</span>
                <p>{move || deviation.get()}</p>
                <span class="note">{move || freedom.get()}</span>
            </div>
            <div class="fig"><span class="label">{t!("trial-mean-of-runs")}</span><p>{move || mean.get()}</p></div>
            <div class="fig">
                <span class="label">{t!("trial-smallest-effect")}</span>
                <p>{move || smallest.get()}</p>
                <span class="note">{t!("trial-more-replicates")}</span>
            </div>
        </section>
    }
}
