//! The runs in the order of making: their levels, and what is weighed, pressed and tested of each.

use super::context::SeriesProgress;
use super::go::{to_boards, to_weigh_sheet};
use crate::domain::trial::boards::group::BoardGroup;
use crate::domain::trial::series::factor::Factor;
use crate::domain::trial::series::word::letter;
use crate::domain::trial::{Property, Series};
use crate::quantity::Kind;
use crate::record::content::trial::progress::RunStage;
use crate::t;
use crate::ui::page::bench::entry::{TrialDesk, amount_parts, levels_of_run};
use crate::ui::state::State;
use crate::ui::text::{Context, lower_first, unit_short, words};
use leptos::prelude::*;

/// The properties of which one is shown beside the density: the first that any board gives.
const SHOWN: [Property; 3] = [Property::InternalBond, Property::BendingStrength, Property::Swelling];

/// A row, in words.
#[derive(Debug, Clone, PartialEq)]
struct RunRow {
    progress: RunStage,
    block: u16,
    replicate: u16,
    /// The level of each factor.
    levels: Vec<String>,
    /// All of them in a few words, for a phone.
    summary: String,
    density: String,
    result: String,
    is_next: bool,
}

/// The grid.
#[component]
pub fn RunsGrid() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let SeriesProgress(progress) = expect_context::<SeriesProgress>();
    let property = Memo::new(move |_| {
        desk.tested
            .with(|tested| SHOWN.into_iter().find(|own| tested.results.iter().any(|result| result.property == *own)))
    });
    let rows = Memo::new(move |_| run_rows(state, desk, progress, property.get()));
    let heads = Memo::new(move |_| factor_heads(desk));
    let has_blocks =
        Memo::new(move |_| desk.planned.with(|planned| planned.series.as_ref().is_some_and(|own| own.blocks > 1)));
    let has_replicates =
        Memo::new(move |_| desk.planned.with(|planned| planned.series.as_ref().is_some_and(|own| own.replicates > 1)));
    let is_there = Memo::new(move |_| rows.with(|rows| !rows.is_empty()));
    let unit = move |kind: Kind| move || unit_short(state.unit(kind), &state.currency.get());
    let result_head = move || {
        property.get().map(|property| {
            view! { {words::bench::property(property).label} <br/> {unit(property.kind())} }
        })
    };
    let row = move |row: RunRow| run_row(state, row, has_blocks.get_untracked(), has_replicates.get_untracked());
    view! {
        <Show when=move || is_there.get()>
            <section class="panel runs-panel" aria-labelledby="series-runs">
                <h3 id="series-runs">{t!("trial-runs")} " " <span class="note">{t!("trial-in-order")}</span></h3>
                <div class="scroll" tabindex="0" role="region" aria-label=t!("trial-runs")>
                    <table class="grid tight runs" aria-label=t!("trial-run-order")>
                        <thead><tr>
                            <th scope="col" class="l">{t!("trial-run")}</th>
                            {move || has_blocks.get().then(|| view! { <th scope="col">{t!("trial-block")}</th> })}
                            {move || has_replicates.get().then(|| view! { <th scope="col">{t!("trial-replicate")}</th> })}
                            {move || heads.get().into_iter().map(|head| view! { <th scope="col" class="level">{head}</th> }).collect_view()}
                            <th scope="col" class="l edge">{t!("trial-levels")}</th>
                            <th scope="col">{t!("trial-weighed")} ", " <br/> {t!("trial-batches")}</th>
                            <th scope="col">{t!("trial-pressed")} ", " <br/> {lower_first(&t!("trial-boards"))}</th>
                            <th scope="col">{t!("trial-tested")} ", " <br/> {lower_first(&t!("trial-boards"))}</th>
                            <th scope="col" class="edge roomy">{t!("trial-density")} <br/> {unit(Kind::BoardDensity)}</th>
                            <th scope="col" class="roomy">{result_head}</th>
                            <td></td>
                        </tr></thead>
                        <tbody>{move || {
                            // Another set of columns makes all rows anew.
                            has_blocks.track();
                            has_replicates.track();
                            rows.get().into_iter().map(row).collect_view()
                        }}</tbody>
                    </table>
                </div>
            </section>
        </Show>
    }
}

/// "A Dose of pMDI".
fn factor_heads(desk: TrialDesk) -> Vec<String> {
    desk.basis.with(|basis| {
        desk.planned.with(|planned| {
            let named = |series: &Series| {
                let one = |(at, factor): (usize, &Factor)| {
                    format!("{} {}", letter(at), words::bench::factor(factor.of, &factor.own, &basis.recipe))
                };
                series.factors.iter().enumerate().map(one).collect()
            };
            planned.series.as_ref().map_or_else(Vec::new, named)
        })
    })
}

fn run_rows(state: State, desk: TrialDesk, progress: Memo<Vec<RunStage>>, shown: Option<Property>) -> Vec<RunRow> {
    let units = state.units.get();
    let next = progress.with(|runs| runs.iter().find(|run| run.is_open()).map(|run| run.place));
    state.currency.with(|currency| {
        desk.basis.with(|basis| {
            let context = Context { units: &units, draft: &basis.recipe, currency };
            desk.planned.with(|planned| {
                desk.tested.with(|tested| {
                    let Some(series) = &planned.series else { return Vec::new() };
                    let mean = |place: u16, property: Property| {
                        let own = |group: &&BoardGroup| group.boards.iter().any(|board| board.run == Some(place));
                        // Boards of a run with different targets have no common mean.
                        let mut groups = tested.runs.iter().filter(own);
                        let (group, None) = (groups.next()?, groups.next()) else { return None };
                        let result = group.results.iter().find(|result| result.property == property)?;
                        Some(amount_parts(state, property.kind(), result.summary.mean).0)
                    };
                    let one = |progress: &RunStage| {
                        let run = series.run(progress.place)?;
                        let level = |at| {
                            series.level(run, at).map_or_else(String::new, |level| words::bench::level(level, &context))
                        };
                        Some(RunRow {
                            progress: *progress,
                            block: run.block,
                            replicate: run.replicate,
                            levels: (0..series.factors.len()).map(level).collect(),
                            summary: levels_of_run(series, run, &context),
                            density: mean(run.place, Property::Density).unwrap_or_default(),
                            result: shown.and_then(|property| mean(run.place, property)).unwrap_or_default(),
                            is_next: next == Some(run.place),
                        })
                    };
                    progress.with(|runs| runs.iter().filter_map(one).collect())
                })
            })
        })
    })
}

fn run_row(state: State, row: RunRow, has_blocks: bool, has_replicates: bool) -> impl IntoView {
    let RunRow { progress, block, replicate, levels, summary, density, result, is_next } = row;
    let place = u32::from(progress.place);
    let done = move |part: u32, all: u32| match part {
        0 => view! { <span class="note">"–"</span> }.into_any(),
        part if part >= all => t!("trial-done", part = part, all = all).into_any(),
        part => view! { <b>{t!("trial-part-of", part = part, all = all)}</b> }.into_any(),
    };
    let level = |level: String| view! { <td class="level">{level}</td> };
    let name = t!("trial-run-n", number = place);
    // A run that is weighed goes on with its boards.
    let way = if progress.is_open() {
        let class = if is_next { "primary" } else { "link" };
        let label = t!("trial-weigh-sheet-of", run = name.clone());
        view! { <button type="button" class=class aria-label=label on:click=move |_| to_weigh_sheet(state, progress)>{t!("trial-weigh-sheet")}</button> }
            .into_any()
    } else {
        let label = t!("trial-boards-of", run = name.clone());
        view! { <button type="button" class="link" aria-label=label on:click=move |_| to_boards(state, progress)>{t!("trial-boards")}</button> }
            .into_any()
    };
    view! {
        <tr class="run" class:on=is_next data-run=place.to_string()>
            <th scope="row" class="l"><b>{place}</b></th>
            {has_blocks.then(|| view! { <td>{u32::from(block)}</td> })}
            {has_replicates.then(|| view! { <td>{u32::from(replicate)}</td> })}
            {levels.into_iter().map(level).collect_view()}
            <td class="l edge state">
                <span class="note">{if progress.is_fixed { t!("trial-fixed") } else { t!("trial-planned") }}</span>
                <span class="levels-summary">{summary}</span>
            </td>
            <td data-label=t!("trial-weighed")>{done(progress.weighed, progress.batches)}</td>
            <td data-label=t!("trial-pressed")>{done(progress.pressed, progress.boards)}</td>
            <td data-label=t!("trial-tested")>{done(progress.tested, progress.boards)}</td>
            <td class="edge roomy">{density}</td>
            <td class="roomy">{result}</td>
            <td class="way">{way}</td>
        </tr>
    }
}
