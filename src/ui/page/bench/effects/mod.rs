//! What the factors of a series did to a property: the effects with their intervals, and the analysis of variance.

mod anova;
mod context;
mod effect_table;
mod level_means;
mod readings;
mod summary;

use crate::domain::trial::Property;
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::series::effects::{ModelWay, RunResult, effects as analyse};
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::WarningSlot;
use crate::ui::page::bench::entry::{PlaceChoice, TrialDesk, slot_lines};
use crate::ui::state::State;
use crate::ui::text::{Context, words};
use anova::{AliasesOfEffects, Anova};
use context::EffectsShown;
use effect_table::EffectTable;
use leptos::prelude::*;
use level_means::LevelMeans;
use readings::Readings;
use summary::Summary;

/// The tab.
#[component]
pub fn EffectsTab() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = TrialDesk::new(state);
    provide_context(desk);
    let chosen = RwSignal::new(None::<Property>);
    let properties = Memo::new(move |_| {
        desk.tested.with(|tested| tested.results.iter().map(|result| result.property).collect::<Vec<_>>())
    });
    // The one chosen while boards give it, else the first strength, else the first of all.
    let property = Memo::new(move |_| {
        properties.with(|all| {
            let is_given = |property: &Property| all.contains(property);
            let first = [Property::InternalBond, Property::BendingStrength].into_iter().find(is_given);
            chosen.get().filter(is_given).or(first).or(all.first().copied())
        })
    });
    let model = Memo::new(move |_| state.bench.open.with(|open| open.trial.model));
    let outcome = Memo::new(move |_| {
        let property = property.get()?;
        let of_board = |board: &MeasuredBoard| -> Option<RunResult> { Some((board.run?, board.mean(property)?)) };
        let results: Vec<RunResult> = desk.tested.with(|tested| tested.boards.iter().filter_map(of_board).collect());
        desk.planned
            .with(|planned| planned.series.as_ref().map(|series| analyse(property, series, &results, model.get())))
    });
    provide_context(EffectsShown { outcome, property });
    let findings = move || outcome.with(|outcome| outcome.as_ref().map_or_else(Vec::new, |own| own.findings.clone()));
    let lines = slot_lines(state, desk, findings, Vec::<TrialField>::new, false);
    let words = Memo::new(move |_| {
        properties.with(|all| {
            let words = |property: &Property| {
                let words = words::bench::property(*property);
                format!("{} ({})", words.label, property.standard())
            };
            all.iter().map(words).collect::<Vec<_>>()
        })
    });
    let place =
        Memo::new(move |_| properties.with(|all| all.iter().position(|own| Some(*own) == property.get())).unwrap_or(0));
    let choose = Callback::new(move |at: usize| chosen.set(properties.with_untracked(|all| all.get(at).copied())));
    let models: Vec<String> = ModelWay::ALL.iter().map(|way| words::bench::model_way(*way).to_owned()).collect();
    let model_place = Memo::new(move |_| ModelWay::ALL.iter().position(|way| *way == model.get()).unwrap_or(0));
    let choose_model = Callback::new(move |at: usize| {
        if let Some(way) = ModelWay::ALL.get(at) {
            state.bench.edit(|trial| trial.model = *way);
        }
    });
    let is_there = Memo::new(move |_| outcome.with(Option::is_some));
    let has_effects = Memo::new(move |_| outcome.with(|own| own.as_ref().is_some_and(|own| own.effects.is_some())));
    let counts = move || {
        let runs = outcome.with(|own| own.as_ref().and_then(|own| own.effects.as_ref()).map_or(0, |own| own.runs));
        let boards = desk.tested.with(|tested| {
            let own = |property: Property| {
                tested.boards.iter().filter(|board| board.run.is_some() && board.mean(property).is_some()).count()
            };
            property.get().map_or(0, own)
        });
        t!("trial-runs-and-boards", runs = runs, boards = boards)
    };
    let sayings = Memo::new(move |_| {
        let units = state.units.get();
        state
            .currency
            .with(|currency| {
                desk.basis.with(|basis| {
                    let context = Context { units: &units, draft: &basis.recipe, currency };
                    desk.planned.with(|planned| {
                        outcome.with(|own| {
                            let effects = own.as_ref()?.effects.as_ref()?;
                            Some(words::bench::sayings(effects, planned.series.as_ref()?, &context))
                        })
                    })
                })
            })
            .unwrap_or_default()
    });
    let first = move || sayings.with(|all| all.first().cloned());
    let rest = move || {
        let line = |words: String| view! { <li>{words}</li> };
        sayings.get().into_iter().skip(1).map(line).collect_view()
    };
    view! {
        <section class="bench-tab effects-tab" aria-labelledby="bench-section">
            <h2 id="bench-section" class="out-of-sight" tabindex="-1">{t!("trial-effects")}</h2>
            <WarningSlot lines=lines/>
            <Show when=move || is_there.get() fallback=|| view! { <section class="panel"><p>{t!("trial-no-effects")}</p></section> }>
                <section class="panel effects-says" aria-label=t!("trial-effects")>
                    <div class="tools">
                        <PlaceChoice
                            id="effects-property"
                            name=t!("trial-property")
                            labelled=true
                            offered=words
                            chosen=place
                            on_choose=choose
                        />
                        <PlaceChoice
                            id="effects-model"
                            name=t!("trial-model")
                            labelled=true
                            offered=models.clone()
                            chosen=model_place
                            on_choose=choose_model
                        />
                        <span class="note">{counts}</span>
                    </div>
                    <p class="says">{first}</p>
                    <ul class="also-says">{rest}</ul>
                </section>
                <Show when=move || has_effects.get()>
                    <EffectTable/>
                    <Summary/>
                    <section class="panel"><Anova/><AliasesOfEffects/><LevelMeans/><Readings/></section>
                </Show>
            </Show>
        </section>
    }
}
