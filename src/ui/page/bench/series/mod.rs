//! A series: factors with levels, the plan, and its runs with what is weighed, pressed and tested of each.

mod aliases;
mod context;
mod factor_row;
mod factors;
mod go;
mod level_box;
mod material;
mod notation;
mod plan;
mod progress_head;
mod random_order;
mod runs_grid;

use crate::browser::clock;
use crate::domain::trial::SeriesDraft;
use crate::domain::trial::series::field::SeriesField;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::WarningSlot;
use crate::ui::page::bench::entry::{TrialDesk, slot_lines};
use crate::ui::state::State;
use aliases::AliasFold;
use context::SeriesProgress;
use factors::Factors;
use leptos::prelude::*;
use material::MaterialFold;
use plan::PlanBoxes;
use progress_head::ProgressHead;
use random_order::RandomOrderFold;
use runs_grid::RunsGrid;

/// The tab.
#[component]
pub fn SeriesTab() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let desk = TrialDesk::new(state);
    provide_context(desk);
    provide_context(SeriesProgress(Memo::new(move |_| {
        desk.planned.with(|planned| bench.open.with(|open| open.trial.progress(&planned.sheets)))
    })));
    let is_there = Memo::new(move |_| desk.basis.with(|basis| basis.series.is_some()));
    let findings = move || desk.planned.with(|planned| planned.findings.clone());
    let lines = slot_lines(state, desk, findings, move || series_fields(state), false);
    let plan = move |_| {
        bench.edit(|trial| {
            let mut series = SeriesDraft::begin(clock::now());
            series.add_factor(&trial.draft, &[]);
            trial.series = Some(series);
        });
    };
    let start = move || {
        view! {
            <section class="panel">
                <p>{t!("trial-no-series")}</p>
                <p><button type="button" class="primary" on:click=plan>{t!("trial-plan-series")}</button></p>
            </section>
        }
    };
    view! {
        <section class="bench-tab series-tab" aria-labelledby="bench-section">
            <h2 id="bench-section" class="out-of-sight" tabindex="-1">{t!("trial-series")}</h2>
            <WarningSlot lines=lines/>
            <Show when=move || is_there.get() fallback=start>
                <ProgressHead/>
                <section class="panel split">
                    <Factors/>
                    <PlanBoxes/>
                </section>
                <RunsGrid/>
                <section class="panel"><AliasFold/><RandomOrderFold/><MaterialFold/></section>
            </Show>
        </section>
    }
}

/// Every box of the series with a number in it.
fn series_fields(state: State) -> Vec<TrialField> {
    state.bench.open.with(|open| {
        let Some(series) = &open.trial.series else { return Vec::new() };
        let plain = [SeriesField::Replicates, SeriesField::Seed, SeriesField::Margin];
        plain.into_iter().chain(series.number_levels()).map(TrialField::Series).collect()
    })
}
