//! What is next, how far the series has come, and its design.

use super::context::SeriesProgress;
use super::go::to_weigh_sheet;
use super::notation::raised;
use crate::domain::trial::Series;
use crate::domain::trial::series::design::roman;
use crate::record::content::trial::progress::RunStage;
use crate::t;
use crate::ui::components::LimitBar;
use crate::ui::page::bench::entry::{TrialDesk, levels_of_run};
use crate::ui::state::State;
use crate::ui::text::Context;
use leptos::prelude::*;

/// The head; nothing while there is no series.
#[component]
pub fn ProgressHead() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let SeriesProgress(progress) = expect_context::<SeriesProgress>();
    let is_there = Memo::new(move |_| desk.planned.with(|planned| planned.series.is_some()));
    let next = Memo::new(move |_| progress.with(|runs| runs.iter().find(|run| run.is_open()).copied()));
    let levels = Memo::new(move |_| {
        let place = next.get()?.place;
        let units = state.units.get();
        state.currency.with(|currency| {
            desk.basis.with(|basis| {
                let context = Context { units: &units, draft: &basis.recipe, currency };
                desk.planned.with(|planned| {
                    let series = planned.series.as_ref()?;
                    Some(levels_of_run(series, series.run(place)?, &context))
                })
            })
        })
    });
    let total =
        move |of: fn(&RunStage) -> u32| Memo::new(move |_| progress.with(|runs| runs.iter().map(of).sum::<u32>()));
    let (pressed, tested, all) = (total(|run| run.pressed), total(|run| run.tested), total(|run| run.boards));
    let share = move |part: Memo<u32>| Signal::derive(move || f64::from(part.get()) / f64::from(all.get().max(1)));
    let design = Memo::new(move |_| desk.planned.with(|planned| planned.series.as_ref().map(design_words)));
    let next_run = move || {
        match next.get() {
        Some(run) => view! {
            <span class="act-on">{t!("trial-run-n", number = u32::from(run.place))}</span>
            " "
            <span class="u">{t!("trial-batch-of", batch = u32::from(run.next_batch.unwrap_or(1)), batches = run.batches)}</span>
        }
        .into_any(),
        None if all.get() == 0 => view! { <span class="lead">{t!("trial-none-possible")}</span> }.into_any(),
        None => view! { <span class="lead">{t!("trial-all-weighed")}</span> }.into_any(),
    }
    };
    let foot = move || {
        next.get().map(|run| {
            view! {
                <span>{t!("trial-run")} " " <b>{u32::from(run.place)}</b> " " {t!("trial-of", count = progress.with(Vec::len))}</span>
                <button type="button" class="primary" on:click=move |_| to_weigh_sheet(state, run)>{t!("trial-weigh-sheet")}</button>
            }
        })
    };
    view! {
        <Show when=move || is_there.get()>
            <section class="panel series-head" aria-label=t!("trial-progress")>
                <div class="fig"><span class="label">{t!("trial-next")}</span><p>{next_run}</p><span class="note">{move || levels.get()}</span></div>
                <div class="fig">
                    <span class="label">{t!("trial-boards-pressed")}</span>
                    <p><b class="lead">{move || pressed.get()}</b> " " <span class="u">{move || t!("trial-of", count = all.get())}</span></p>
                    <LimitBar used=share(pressed)/>
                </div>
                <div class="fig">
                    <span class="label">{t!("trial-boards-tested")}</span>
                    <p><b class="lead">{move || tested.get()}</b> " " <span class="u">{move || t!("trial-of", count = all.get())}</span></p>
                    <LimitBar used=share(tested)/>
                </div>
                <div class="fig">
                    <span class="label">{t!("trial-design")}</span>
                    <p id="series-design">{move || design.get().map(|(name, _)| raised(&name))}</p>
                    <span class="note">{move || design.get().map(|(_, note)| note)}</span>
                </div>
            </section>
            <div class="phone-foot">{foot}</div>
        </Show>
    }
}

/// The design in its notation, and how much of all combinations it makes.
fn design_words(series: &Series) -> (String, String) {
    let design = &series.design;
    let all: usize = design.levels.iter().map(|levels| usize::from(*levels)).product();
    let generators = design.generators_in_letters().join(", ");
    let name = match design.resolution() {
        Some(resolution) => {
            let notation = format!("2^({}\u{2212}{})", design.levels.len(), design.generators.len());
            t!("trial-design-fraction", notation = notation, resolution = roman(resolution))
        }
        None => design.notation(),
    };
    let note = match (generators.is_empty(), series.replicates) {
        (true, 1) => t!("trial-all-combinations", count = all),
        (true, replicates) => t!("trial-all-replicated", count = all, replicates = u32::from(replicates)),
        (false, _) => t!("trial-some-combinations", count = design.runs.len(), all = all, generators = generators),
    };
    (name, note)
}
