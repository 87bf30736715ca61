//! The plan of a series: the runs in the order of making with their levels, and the material for all of them. Then the weigh sheets.

use super::super::end::End;
use super::super::not_valid::NothingPaper;
use super::super::sheet::Sheet;
use super::super::warnings::Warnings;
use super::subject::{recipe_of_trial, said, trial_name};
use super::weigh_sheet::RunSheets;
use crate::domain::trial::Series;
use crate::domain::trial::SeriesDraft;
use crate::domain::trial::series::factor::Factor;
use crate::domain::trial::series::material::Needed;
use crate::domain::trial::series::run::Run;
use crate::domain::trial::series::word::letter;
use crate::quantity::Kind;
use crate::t;
use crate::ui::page::bench::desk::Desk;
use crate::ui::page::bench::sheet::text::shown;
use crate::ui::text::words;
use leptos::prelude::*;

/// The plan, and behind it the sheets to weigh every run by.
#[component]
pub fn SeriesPlan() -> impl IntoView {
    let desk = expect_context::<Desk>();
    match desk.planned.with_untracked(|planned| planned.series.clone()) {
        Some(series) => {
            let sheets = series.runs.iter().map(|run| view! { <RunSheets run=run.place/> }).collect_view();
            view! { <Plan series=series/> {sheets} }.into_any()
        }
        None => view! { <NothingPaper kind=t!("paper-series-plan") why=t!("paper-no-series")/> }.into_any(),
    }
}

#[component]
fn Plan(
    /// The series.
    series: Series,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let state = desk.state;
    let made = desk.made.get_untracked();
    let heads = desk.with_context(|context| {
        let head = |(at, factor): (usize, &Factor)| {
            format!("{} {}", letter(at), words::bench::factor(factor.of, &factor.own, context.draft))
        };
        series.factors.iter().enumerate().map(head).collect::<Vec<_>>()
    });
    let row = |run: &Run| {
        let levels = desk.with_context(|context| {
            let level =
                |at| series.level(run, at).map_or_else(String::new, |level| words::bench::level(level, context));
            (0..series.factors.len()).map(level).collect::<Vec<_>>()
        });
        view! {
            <tr>
                <td><b>{run.place}</b></td>
                <td>{run.standard}</td>
                <td>{run.block}</td>
                <td>{run.replicate}</td>
                {levels.into_iter().map(|level| view! { <td>{level}</td> }).collect_view()}
                <td class="blank"></td>
                <td class="blank"></td>
            </tr>
        }
    };
    let rows = series.runs.iter().map(row).collect_view();
    let needed = desk.basis.with_untracked(|basis| {
        let none = SeriesDraft::default();
        let draft = basis.series.as_ref().unwrap_or(&none);
        let row = |needed: &Needed| {
            let volume = needed.volume.map(|volume| shown(state, Kind::BenchVolume, volume.value));
            view! {
                <tr>
                    <th scope="row" class="l">{words::bench::material(needed.material, draft, &basis.recipe)}</th>
                    <td>{shown(state, Kind::BenchMass, needed.mass.value)}</td>
                    <td>{volume}</td>
                </tr>
            }
        };
        desk.planned.with_untracked(|planned| planned.needed.iter().map(row).collect_view())
    });
    let lines = said(desk, &made, &made.findings);
    view! {
        <Sheet title=trial_name(state) about=recipe_of_trial(state) kind=t!("paper-series-plan")>
            <Warnings lines=lines/>
            <table class="print-table print-plan">
                <thead><tr>
                    <th scope="col">{t!("trial-run")}</th>
                    <th scope="col">{t!("trial-standard-order")}</th>
                    <th scope="col">{t!("trial-block")}</th>
                    <th scope="col">{t!("trial-replicate")}</th>
                    {heads.into_iter().map(|head| view! { <th scope="col">{head}</th> }).collect_view()}
                    <th scope="col">{t!("trial-weighed")}</th>
                    <th scope="col">{t!("trial-pressed")}</th>
                </tr></thead>
                <tbody>{rows}</tbody>
            </table>
            <section>
                <h2>{t!("trial-material")}</h2>
                <table class="print-table">
                    <thead><tr>
                        <th scope="col" class="l">{t!("trial-material-name")}</th>
                        <th scope="col">{t!("trial-mass")}</th>
                        <th scope="col">{t!("trial-volume")}</th>
                    </tr></thead>
                    <tbody>{needed}</tbody>
                </table>
            </section>
            <End cautions=Vec::new() signature=[t!("paper-planned-by"), t!("paper-checked-by"), t!("paper-date")]/>
        </Sheet>
    }
}
