//! What comes next, when the new recipe is at the saw, and how much board is neither recipe's.

use super::context::{ChangeSheet, SolvedPlan, clock_of, until};
use super::row_words::row_words;
use crate::browser::clock;
use crate::domain::line::changeover::Stop;
use crate::domain::line::{LineFigure, ScheduledEvent};
use crate::quantity::{Amount, Kind};
use crate::t;
use crate::ui::components::Rank;
use crate::ui::page::line::settings::context::parts;
use crate::ui::page::line::worked::WorkedFigure;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::state::State;
use crate::ui::text::{unit_short, words};
use leptos::prelude::*;

/// The key of a figure of the transition boards.
pub fn key(figure: LineFigure) -> String {
    format!("change.{}", figure.key())
}

/// The figures.
#[component]
pub fn NextFigures() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<ChangeSheet>();
    let status = move || {
        sheet.plan.with(|plan| {
            let plan = plan.as_ref()?;
            let solved = plan.solved.as_ref()?;
            let count = solved.schedule.len();
            let done = solved.schedule.iter().filter(|scheduled| plan.done.contains_key(&scheduled.key())).count();
            let wettest = wettest(solved).map(|base| {
                let number = parts(state, Amount::from_base(Kind::Moisture, base)).0;
                joined(&number, &unit_short(state.unit(Kind::Moisture), ""))
            });
            let moisture = wettest.map_or_else(String::new, |moisture| t!("change-never-above", moisture = moisture));
            Some(match plan.started {
                Some(at) => {
                    let steps = t!("change-done-of", done = done, count = count);
                    view! { <b>{t!("change-running", time = clock::date_time(at))}</b> " " {steps} " " {moisture} }
                        .into_any()
                }
                None => view! { <b>{t!("change-before-start")}</b> " " {moisture} }.into_any(),
            })
        })
    };
    let next = move || {
        sheet.plan.with(|plan| {
            let plan = plan.as_ref()?;
            let solved = plan.solved.as_ref()?;
            let mut all = solved.schedule.iter().filter(|scheduled| solved.next.contains(&scheduled.key()));
            let first = all.next()?;
            let words = |scheduled| row_words(state, solved, scheduled).in_short();
            let at = first.at.map(|at| clock_of(plan.started.is_some(), at)).unwrap_or_default();
            let others = all.map(words).collect::<Vec<_>>();
            let with = if others.is_empty() { String::new() } else { t!("change-with", others = others.join(", ")) };
            Some((words(first), first.at, at, with, plan.started.is_some()))
        })
    };
    let next = Memo::new(move |_| next());
    let countdown = move || match next.get() {
        Some((_, Some(at), _, _, true)) => until(at, state.line.now.get()),
        Some((_, Some(_), at, _, false)) => at,
        Some((_, None, ..)) => t!("change-time-unknown"),
        None => t!("change-all-done"),
    };
    let saw = Memo::new(move |_| {
        sheet.plan.with(|plan| {
            let plan = plan.as_ref()?;
            let saw = plan.solved.as_ref()?.plan.arrivals.iter().find(|arrival| arrival.stop == Stop::Saw)?;
            Some((saw.begins, saw.complete?, plan.started.is_some()))
        })
    });
    let saw_time = move || saw.get().map_or_else(|| "–".to_owned(), |(_, at, started)| clock_of(started, at));
    let saw_in = move || saw.get().filter(|(.., started)| *started).map(|(_, at, _)| until(at, state.line.now.get()));
    let board = move |figure: LineFigure| {
        Signal::derive(move || {
            let between = sheet.plan.with(|plan| plan.as_ref()?.solved.as_ref()?.plan.between);
            between.map_or_else(Default::default, |made| {
                let base = if figure == LineFigure::BetweenArea { made.area.value } else { made.volume.value };
                parts(state, Amount::from_base(figure.kind(), base))
            })
        })
    };
    let length = move || {
        let between = sheet.plan.with(|plan| plan.as_ref()?.solved.as_ref()?.plan.between)?;
        let amount = |kind, base| with_unit(state, Amount::from_base(kind, base), None);
        let time = amount(Kind::RunTime, between.time.value);
        let mat = between.length.map(|length| t!("change-mat-length", length = amount(Kind::Extent, length.value)));
        let from = saw.get().map(|(at, _, started)| t!("change-at-saw-from", time = clock_of(started, at)));
        Some([mat, Some(t!("change-lasts", time = time)), from].into_iter().flatten().collect::<Vec<_>>().join(", "))
    };
    let figure_name = move |figure: LineFigure| {
        let words = words::line::figure(figure);
        format!("{}, {}", words.label, words.note)
    };
    view! {
        <p class="change-status">{status}</p>
        <div class="figs">
            <div class="fig">
                <span class="label">{move || next.get().map_or_else(|| t!("change-next"), |(what, ..)| t!("change-next-is", what = what))}</span>
                <span class="act-on" id="change-countdown">{countdown}</span>
                <span class="note">{move || next.get().map(|(_, _, at, with, _)| format!("{at} {with}"))}</span>
            </div>
            <div class="fig">
                <span class="label">{t!("change-new-at-saw")}</span>
                <span class="lead">{saw_time}</span>
                <span class="note">{saw_in}</span>
            </div>
            <div class="fig">
                <span class="label">{t!("change-transition-board")}</span>
                <WorkedFigure key=key(LineFigure::BetweenArea) name=figure_name(LineFigure::BetweenArea) text=board(LineFigure::BetweenArea) rank=Rank::Lead/>
                <WorkedFigure key=key(LineFigure::BetweenVolume) name=figure_name(LineFigure::BetweenVolume) text=board(LineFigure::BetweenVolume)/>
                <span class="note">{length}</span>
            </div>
        </div>
    }
}

/// The highest mat moisture of both recipes and of everything between.
fn wettest(solved: &SolvedPlan) -> Option<f64> {
    let ends = [&solved.old, &solved.new].map(|case| case.solved.water.mat.dry_basis().value);
    let steps = solved.schedule.iter().filter_map(|scheduled| match scheduled.event {
        ScheduledEvent::Step(step) => step.mat_after.map(|moisture| moisture.dry_basis().value),
        _ => None,
    });
    ends.into_iter().chain(steps).reduce(f64::max)
}
