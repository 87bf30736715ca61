//! The report of a trial: what the boards came to by combination and by run, and what the factors did.

use super::super::end::End;
use super::super::not_valid::NothingPaper;
use super::super::sheet::Sheet;
use super::super::warnings::Warnings;
use super::subject::{recipe_of_trial, said, trial_name};
use crate::domain::trial::boards::group::{BoardGroup, PropertyResult};
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::series::effects::{Effects, RunResult, effects as analyse};
use crate::domain::trial::{Property, Series};
use crate::quantity::Kind;
use crate::t;
use crate::ui::page::bench::desk::{Desk, Tested};
use crate::ui::page::bench::sheet::text::{shown, signed};
use crate::ui::text::words;
use leptos::prelude::*;

/// The document.
#[component]
pub fn TrialReport() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let state = desk.state;
    let tested = desk.tested.get_untracked();
    if tested.results.is_empty() {
        return view! { <NothingPaper kind=t!("paper-trial-report") why=t!("paper-no-boards")/> }.into_any();
    }
    let made = desk.made.get_untracked();
    let combinations = tested.combinations.iter().map(|own| &own.group).collect::<Vec<_>>();
    let combinations = rows(desk, &combinations);
    let mut findings = tested.findings.clone();
    findings.extend(tested.combinations.iter().flat_map(|own| own.findings.clone()));
    let lines = said(desk, &made, &findings);
    let next = tested.combinations.iter().filter_map(|own| {
        let target = own.group.density?;
        Some(view! {
            <div>
                <dt>{name(desk, &own.group)}</dt>
                <dd>
                    {shown(state, Kind::BenchMass, target.next_mat.value)}
                    " ("
                    {signed(state, Kind::Share, target.correction.value - 1.0)}
                    ")"
                </dd>
            </div>
        })
    });
    let next = next.collect_view();
    let by_run = (!tested.runs.is_empty()).then(|| {
        let runs = rows(desk, &tested.runs.iter().collect::<Vec<_>>());
        view! { <Groups title=t!("paper-by-run") groups=runs/> }
    });
    let effects = effects(desk, &tested);
    view! {
        <Sheet title=trial_name(state) about=recipe_of_trial(state) kind=t!("paper-trial-report")>
            <Warnings lines=lines/>
            <Groups title=t!("paper-by-combination") groups=combinations/>
            <section>
                <h2>{t!("trial-next-mat")}</h2>
                <dl class="print-pairs">{next}</dl>
            </section>
            {effects}
            {by_run}
            <End cautions=Vec::new() signature=[t!("paper-reported-by"), t!("paper-checked-by"), t!("paper-date")]/>
        </Sheet>
    }
    .into_any()
}

/// What boards that belong together are called, and a row for each property.
type Group = (String, Vec<[String; 6]>);

fn name(desk: Desk, group: &BoardGroup) -> String {
    desk.planned.with_untracked(|planned| {
        desk.with_context(|context| words::bench::group(&group.key, planned.series.as_ref(), context))
    })
}

fn rows(desk: Desk, groups: &[&BoardGroup]) -> Vec<Group> {
    groups.iter().map(|group| (name(desk, group), group.results.iter().map(|own| row(desk, own)).collect())).collect()
}

fn row(desk: Desk, result: &PropertyResult) -> [String; 6] {
    let state = desk.state;
    let words = words::bench::property(result.property);
    let base = |base: Option<f64>| base.map_or_else(String::new, |base| shown(state, result.property.kind(), base));
    let summary = &result.summary;
    let quantile = match result.property.tail() {
        Some(Tail::Lower) => summary.lower.map(|_| format!("{} {}", t!("trial-lower"), base(summary.lower))),
        Some(Tail::Upper) => summary.upper.map(|_| format!("{} {}", t!("trial-upper"), base(summary.upper))),
        None => None,
    };
    [
        format!("{} ({})", words.label, words.note),
        summary.count.to_string(),
        base(Some(summary.mean)),
        base(summary.deviation),
        summary.half_width.map_or_else(String::new, |half| format!("± {}", base(Some(half)))),
        quantile.unwrap_or_default(),
    ]
}

/// A table with the groups below each other.
#[component]
fn Groups(
    /// Its heading.
    title: String,
    /// The groups.
    groups: Vec<Group>,
) -> impl IntoView {
    let group = |(name, rows): Group| {
        let row = |[property, rest @ ..]: [String; 6]| {
            let cells = rest.map(|cell| view! { <td>{cell}</td> }).collect_view();
            view! { <tr><th scope="row" class="l">{property}</th>{cells}</tr> }
        };
        view! {
            <tr class="group"><th scope="rowgroup" class="l" colspan="6"><b>{name}</b></th></tr>
            {rows.into_iter().map(row).collect_view()}
        }
    };
    view! {
        <section>
            <h2>{title}</h2>
            <table class="print-table print-results">
                <thead><tr>
                    <th scope="col" class="l">{t!("trial-property")}</th>
                    <th scope="col">{t!("trial-boards")}</th>
                    <th scope="col">{t!("trial-mean")}</th>
                    <th scope="col">{t!("paper-deviation-between")}</th>
                    <th scope="col">{t!("trial-interval-of-mean")}</th>
                    <th scope="col">{t!("trial-quantile")}</th>
                </tr></thead>
                <tbody>{groups.into_iter().map(group).collect_view()}</tbody>
            </table>
        </section>
    }
}

/// The effects on each property that the boards give, by the model that was chosen.
fn effects(desk: Desk, tested: &Tested) -> Option<impl IntoView + use<>> {
    let series = desk.planned.with_untracked(|planned| planned.series.clone())?;
    let model = desk.state.bench.open.with_untracked(|open| open.trial.model);
    let of_property = |property: Property| {
        let of_board = |board: &MeasuredBoard| -> Option<RunResult> { Some((board.run?, board.mean(property)?)) };
        let results: Vec<RunResult> = tested.boards.iter().filter_map(of_board).collect();
        analyse(property, &series, &results, model).effects
    };
    let found: Vec<Effects> = tested.results.iter().filter_map(|result| of_property(result.property)).collect();
    let groups = found.iter().map(|effects| effect_rows(desk, effects, &series)).collect_view();
    (!found.is_empty()).then(|| {
        view! {
            <section>
                <h2>{t!("trial-effects")}</h2>
                <table class="print-table print-results">
                    <thead><tr>
                        <th scope="col" class="l">{t!("trial-term")}</th>
                        <th scope="col">{t!("trial-effect")}</th>
                        <th scope="col">{t!("trial-limit-95")}</th>
                        <th scope="col" class="l">{t!("trial-at-five")}</th>
                    </tr></thead>
                    <tbody>{groups}</tbody>
                </table>
            </section>
        }
    })
}

fn effect_rows(desk: Desk, effects: &Effects, series: &Series) -> impl IntoView + use<> {
    let state = desk.state;
    let kind = effects.property.kind();
    let rows = effects.ranking().into_iter().filter_map(|term| Some((term, term.effect?)));
    let rows = rows.map(|(term, own)| {
        let name = desk.with_context(|context| words::bench::term(term.term, &series.factors, context.draft));
        let word = match term.is_significant() {
            Some(true) => t!("trial-significant"),
            Some(false) => t!("trial-not-significant"),
            None => t!("trial-untested"),
        };
        let half = own.half_width.map(|half| format!("± {}", shown(state, kind, half)));
        view! {
            <tr>
                <th scope="row" class="l">{name}</th>
                <td>{signed(state, kind, own.value)}</td>
                <td>{half}</td>
                <td class="l">{word}</td>
            </tr>
        }
    });
    view! {
        <tr class="group">
            <th scope="rowgroup" class="l" colspan="4"><b>{words::bench::property(effects.property).label}</b></th>
        </tr>
        {rows.collect_view()}
    }
}
