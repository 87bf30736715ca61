//! What the boards of a run, or of a combination, come to. Boards with different targets are never put together.

use crate::domain::trial::Property;
use crate::domain::trial::boards::group::{BoardGroup, PropertyResult};
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::boards::working::BoardFigure;
use crate::quantity::Kind;
use crate::record::content::trial::outcome::Tested;
use crate::t;
use crate::ui::page::bench::entry::{
    BoardsFigure, BoardsWorking, FigureOfBoard, PlaceChoice, TrialDesk, amount_parts, group_key, group_name, shown,
    signed_share,
};
use crate::ui::state::State;
use crate::ui::text::{Context, unit_short, words};
use leptos::prelude::*;

/// A row of the table: a group with its means.
#[derive(Debug, Clone, PartialEq)]
struct ResultRow {
    key: String,
    name: String,
    boards: usize,
    target: String,
    deviation: String,
    /// Mean and standard deviation of each column's property.
    means: Vec<Option<(String, String)>>,
}

/// The panel; nothing before there is a result.
#[component]
pub fn Results() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let chosen = RwSignal::new(None::<usize>);
    let differ = Memo::new(move |_| desk.tested.with(|tested| tested.runs.len() != tested.combinations.len()));
    // Replicates together, where there are any, until somebody wants the runs.
    let by_run = Memo::new(move |_| chosen.get().map_or(!differ.get(), |at| at == 0));
    let columns = Memo::new(move |_| {
        desk.tested.with(|tested| tested.results.iter().map(|own| own.property).collect::<Vec<_>>())
    });
    let rows = Memo::new(move |_| {
        let columns = columns.get();
        desk.tested.with(|tested| {
            groups(tested, by_run.get())
                .into_iter()
                .map(|group| result_row(state, desk, group, &columns))
                .collect::<Vec<_>>()
        })
    });
    let is_there = Memo::new(move |_| columns.with(|columns| !columns.is_empty()));
    let choose = Callback::new(move |at: usize| chosen.set(Some(at)));
    let title = move || if by_run.get() { t!("trial-by-run") } else { t!("trial-by-combination") };
    let unit = move |property: Property| move || unit_short(state.unit(property.kind()), &state.currency.get());
    let heads = move || {
        let one = |property: Property| {
            view! {
                <th scope="col" class="edge">{words::bench::property(property).label} <br/> {unit(property)}</th>
                <th scope="col">{t!("trial-sd")}</th>
            }
        };
        columns.get().into_iter().map(one).collect_view()
    };
    let row = move |row: ResultRow| {
        let key = row.key.clone();
        let means = row.means.into_iter().zip(columns.get_untracked()).map(move |(mean, property)| {
            let (mean, deviation) = mean.unwrap_or_default();
            let name = format!("{key}.{}", property.key());
            view! {
                <td class="edge" data-figure=format!("{name}.mean")>{mean}</td>
                <td data-figure=format!("{name}.sd")>{deviation}</td>
            }
        });
        view! {
            <tr>
                <th scope="row" class="l">{row.name}</th>
                <td>{row.boards}</td>
                <td class="edge">{row.target}</td>
                <td>{row.deviation}</td>
                {means.collect_view()}
            </tr>
        }
    };
    view! {
        <Show when=move || is_there.get()>
            <section class="panel results-panel" aria-labelledby="board-results">
                <div class="tools">
                    <h3 id="board-results">{title}</h3>
                    <span class="note">{t!("trial-not-pooled")}</span>
                    <Show when=move || differ.get()>
                        <PlaceChoice
                            id="results-by"
                            name=t!("trial-results-by")
                            offered=vec![t!("trial-by-run"), t!("trial-by-combination")]
                            chosen=Signal::derive(move || usize::from(!by_run.get()))
                            on_choose=choose
                        />
                    </Show>
                </div>
                <div class="scroll" tabindex="0" role="region" aria-label=title>
                    <table class="results by-group">
                        <thead><tr>
                            <th scope="col" class="l">{move || if by_run.get() { t!("trial-run") } else { t!("trial-combination") }}</th>
                            <th scope="col">{t!("trial-boards")}</th>
                            <th scope="col" class="edge">{t!("trial-target")} <br/> {unit(Property::Density)}</th>
                            <th scope="col">{t!("trial-deviation")} ", %"</th>
                            {heads}
                        </tr></thead>
                        <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
                    </table>
                </div>
                <Statistics by_run=by_run/>
            </section>
        </Show>
    }
}

fn groups(tested: &Tested, by_run: bool) -> Vec<&BoardGroup> {
    if by_run { tested.runs.iter().collect() } else { tested.combinations.iter().map(|own| &own.group).collect() }
}

fn result_row(state: State, desk: TrialDesk, group: &BoardGroup, columns: &[Property]) -> ResultRow {
    let number = |kind: Kind, base: f64| amount_parts(state, kind, base).0;
    let mean = |property: &Property| {
        let own = group.results.iter().find(|own| own.property == *property)?;
        let of = |base: f64| number(property.kind(), base);
        Some((of(own.summary.mean), own.summary.deviation.map(of).unwrap_or_default()))
    };
    ResultRow {
        key: group_key(&group.key),
        name: group_name(state, desk, &group.key),
        boards: group.boards.len(),
        target: group.density.map_or_else(String::new, |target| number(Kind::BoardDensity, target.target)),
        deviation: group.density.map_or_else(String::new, |target| signed_share(state, target.split.total.value)),
        means: columns.iter().map(mean).collect(),
    }
}

/// What the table of intervals and quantiles shows of a group.
#[derive(Debug, Clone, PartialEq)]
struct GroupStatistics {
    /// Its place among the groups.
    at: usize,
    name: String,
    /// Each property with its mean and the number of boards.
    results: Vec<(Property, String, usize)>,
    /// Strengths at the target density, as sentences.
    densities: Vec<String>,
}

/// Interval of the mean and quantile of each property, with their workings; strengths at the target density.
#[component]
fn Statistics(
    /// Whether the groups are runs.
    by_run: Memo<bool>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let opened = RwSignal::new(false);
    let all = Memo::new(move |_| {
        desk.tested.with(|tested| {
            let one = |(at, group): (usize, &BoardGroup)| {
                let of = |result: &PropertyResult| {
                    let mean = shown(state, result.property.kind(), result.summary.mean);
                    (result.property, mean, result.summary.count)
                };
                let units = state.units.get();
                let densities = state.currency.with(|currency| {
                    desk.basis.with(|basis| {
                        let context = Context { units: &units, draft: &basis.recipe, currency };
                        group.at_density.iter().map(|own| words::bench::at_density(own, &context)).collect::<Vec<_>>()
                    })
                });
                let name = group_name(state, desk, &group.key);
                GroupStatistics { at, name, results: group.results.iter().map(of).collect(), densities }
            };
            groups(tested, by_run.get()).into_iter().enumerate().map(one).collect::<Vec<_>>()
        })
    });
    let figure = move |at: usize, figure: BoardFigure| {
        if by_run.get_untracked() { BoardsFigure::Run(at, figure) } else { BoardsFigure::Combination(at, figure) }
    };
    let rows = move || {
        let one = |GroupStatistics { at, name, results, densities }: GroupStatistics| {
            let row = move |(property, mean, count): (Property, String, usize)| {
                let words = words::bench::property(property);
                let (word, quantile) = match property.tail() {
                    Some(Tail::Lower) => (t!("trial-lower"), Some(BoardFigure::Lower(property))),
                    Some(Tail::Upper) => (t!("trial-upper"), Some(BoardFigure::Upper(property))),
                    None => (String::new(), None),
                };
                let quantile = quantile.map(|own| view! { <FigureOfBoard figure=figure(at, own)/> });
                view! {
                    <tr>
                        <th scope="row" class="l">{words.label} " " <span class="note">{words.note}</span></th>
                        <td>{mean}</td>
                        <td>{count}</td>
                        <td><FigureOfBoard figure=figure(at, BoardFigure::HalfWidth(property)) before="± "/></td>
                        <td class="l">{word}</td>
                        <td>{quantile}</td>
                    </tr>
                }
            };
            let densities =
                densities.into_iter().map(|words| view! { <tr><td class="l" colspan="6">{words}</td></tr> });
            view! {
                <tr class="group"><th scope="rowgroup" colspan="6">{name}</th></tr>
                {results.into_iter().map(row).collect_view()}
                {densities.collect_view()}
            }
        };
        all.get().into_iter().map(one).collect_view()
    };
    view! {
        <details class="fold-section" id="result-statistics" on:toggle=move |_| opened.set(true)>
            <summary><h2>{t!("trial-statistics")}</h2><span class="note">{t!("trial-statistics-note")}</span></summary>
            <Show when=move || opened.get()>
                <div class="scroll" tabindex="0" role="region" aria-label=t!("trial-statistics")>
                    <table class="results">
                        <thead><tr>
                            <th scope="col" class="l">{t!("trial-property")}</th>
                            <th scope="col">{t!("trial-mean")}</th>
                            <th scope="col">{t!("trial-boards")}</th>
                            <th scope="col">{t!("trial-interval-of-mean")}</th>
                            <th scope="col" colspan="2">{t!("trial-quantile")}</th>
                        </tr></thead>
                        <tbody>{rows}</tbody>
                    </table>
                </div>
                <BoardsWorking belongs=is_statistic/>
            </Show>
        </details>
    }
}

const fn is_statistic(figure: BoardsFigure) -> bool {
    matches!(
        figure,
        BoardsFigure::Run(_, BoardFigure::HalfWidth(_) | BoardFigure::Lower(_) | BoardFigure::Upper(_))
            | BoardsFigure::Combination(_, BoardFigure::HalfWidth(_) | BoardFigure::Lower(_) | BoardFigure::Upper(_))
    )
}
