//! A changeover: the steps by the clock, when the new furnish arrives where, and the transition board.

use super::context::{amount, line_words};
use super::end::End;
use super::not_valid::{LineNotValid, NothingPaper, line_lines};
use super::sheet::{Sheet, line_kind};
use super::warnings::{PaperLine, Warnings};
use crate::browser::clock;
use crate::domain::line::changeover::{Arrival, Between, DownstreamStep, Recipe};
use crate::domain::line::step::{Change, Step};
use crate::domain::line::{Changeover, changeover};
use crate::domain::{Caution, Grade, cautions, work_out};
use crate::quantity::Kind;
use crate::record::PlannedChangeover;
use crate::t;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The document.
#[component]
pub fn ChangeoverPaper() -> impl IntoView {
    let state = expect_context::<State>();
    let Some(planned) = state.line.record.with(|record| record.planned.clone()) else {
        return view! { <NothingPaper kind=t!("line-tab-changeover") why=t!("paper-no-plan")/> }.into_any();
    };
    let (old, new) = (work_out(&planned.from.draft), work_out(&planned.to.draft));
    let Some((old_case, new_case)) = old.case.as_ref().zip(new.case.as_ref()) else {
        return view! { <NothingPaper kind=t!("line-tab-changeover") why=t!("paper-end-not-valid")/> }.into_any();
    };
    let plan = state.line.checked.with(|line| {
        let from = Recipe { draft: &planned.from.draft, case: old_case };
        let to = Recipe { draft: &planned.to.draft, case: new_case };
        changeover(from, to, line, planned.started.unwrap_or(0))
    });
    let lines = line_lines(state, &plan.findings);
    if lines.iter().any(|line| line.grade == Grade::Stop) {
        return view! { <LineNotValid title=t!("line-tab-changeover") lines=lines/> }.into_any();
    }
    let cautions = cautions(&planned.to.draft, &new);
    view! { <Planned planned=planned plan=plan lines=lines cautions=cautions/> }.into_any()
}

#[component]
fn Planned(
    /// From what to what, and when it was started.
    planned: PlannedChangeover,
    /// The plan.
    plan: Changeover,
    /// What there is to say.
    lines: Vec<PaperLine>,
    /// The cautions for the new recipe.
    cautions: Vec<Caution>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let started = planned.started;
    let clock_of = move |at: u64| match started {
        Some(_) => clock::time_exact(at),
        None => format!("+ {}", minutes(at)),
    };
    let steps = plan.steps.iter().map(|step| step_row(state, step, &clock_of(step.at))).collect_view();
    let downstream = plan.downstream.iter().map(|step| {
        let at = step.at.map_or_else(|| words::line::stop(step.stop).to_owned(), clock_of);
        downstream_row(state, step, &at)
    });
    let arrival = |arrival: &Arrival| {
        view! {
            <tr>
                <th scope="row" class="l">{words::line::stop(arrival.stop)}</th>
                <td>{clock_of(arrival.begins)}</td>
                <td>{arrival.complete.map(clock_of)}</td>
            </tr>
        }
    };
    let downstream = downstream.collect_view();
    let arrivals = plan.arrivals.iter().map(arrival).collect_view();
    let between = plan.between.map(|between| between_words(state, &between));
    let when = match started {
        Some(at) => t!("paper-started", time = clock::date_time(at)),
        None => t!("paper-not-started"),
    };
    // Advice alone of what concerns the whole recipe: straw and bales are as before.
    let cautions =
        cautions.into_iter().filter(|caution| !matches!(caution, Caution::Dust | Caution::DampBales)).collect();
    view! {
        <Sheet title=t!("line-tab-changeover") about=when kind=line_kind(state)>
            <Warnings lines=lines/>
            <p class="print-change"><b>{planned.from.name}</b> " → " <b>{planned.to.name}</b></p>
            <table class="print-table print-steps">
                <thead><tr>
                    <th scope="col" class="l">{t!("paper-when")}</th>
                    <th scope="col" class="l">{t!("paper-what")}</th>
                    <th scope="col">{t!("paper-done")}</th>
                </tr></thead>
                <tbody>{steps}{downstream}</tbody>
            </table>
            <section>
                <h2>{t!("paper-arrivals")}</h2>
                <table class="print-table">
                    <thead><tr>
                        <th scope="col" class="l">{t!("paper-station")}</th>
                        <th scope="col">{t!("paper-begins")}</th>
                        <th scope="col">{t!("paper-complete")}</th>
                    </tr></thead>
                    <tbody>{arrivals}</tbody>
                </table>
            </section>
            {between}
            <End cautions=cautions signature=[t!("paper-changed-by"), t!("paper-checked-by"), t!("paper-date-time")]/>
        </Sheet>
    }
}

fn step_row(state: State, step: &Step, at: &str) -> impl IntoView + use<> {
    let pipe = match step.change {
        Change::Pump { pipe: Some((way, volume, time)), .. } => {
            let volume = amount(state, Kind::BatchVolume, volume.value);
            let time = time.map(|time| amount(state, Kind::RunTime, time.value));
            let size = [Some(volume), time].into_iter().flatten().collect::<Vec<_>>().join(", ");
            Some(format!("{} ({size})", words::line::pipe(way)))
        }
        _ => None,
    };
    let mat = step
        .mat_after
        .map(|moisture| t!("paper-mat-then", moisture = amount(state, Kind::Moisture, moisture.dry_basis().value)));
    let below = [Some(words::line::why(step.why).to_owned()), pipe, mat];
    let what = line_words(state, |context| words::line::change(&step.change, context));
    row(at, what, &below.into_iter().flatten().collect::<Vec<_>>().join(" "))
}

fn downstream_row(state: State, step: &DownstreamStep, at: &str) -> impl IntoView + use<> {
    row(at, line_words(state, |context| words::line::downstream(&step.change, context)), "")
}

fn row(at: &str, what: String, below: &str) -> impl IntoView + use<> {
    let (at, below) = (at.to_owned(), below.to_owned());
    view! { <tr><th scope="row" class="l"><b>{at}</b></th><td class="l"><b>{what}</b><span>{below}</span></td><td class="to-tick"><i></i></td></tr> }
}

/// How much transition board there is.
fn between_words(state: State, between: &Between) -> impl IntoView + use<> {
    let length = between.length.map(|length| amount(state, Kind::Extent, length.value));
    let parts = [
        Some(amount(state, Kind::RunTime, between.time.value)),
        length,
        Some(amount(state, Kind::SampleArea, between.area.value)),
        Some(amount(state, Kind::BatchVolume, between.volume.value)),
    ];
    let parts = parts.into_iter().flatten().collect::<Vec<_>>().join(" · ");
    view! { <p class="print-between"><b>{t!("paper-transition-board")}</b> " " {parts}</p> }
}

/// "2:05 min" for so many milliseconds, cut to seconds.
fn minutes(milliseconds: u64) -> String {
    let seconds = milliseconds / 1_000;
    format!("{}:{:02}\u{a0}min", seconds / 60, seconds % 60)
}
