//! The steps: when, what, from where to where, why, and what is done.

use super::context::{ChangeSheet, clock_of, minutes, until};
use super::row_words::{RowWords, row_words};
use crate::browser::clock;
use crate::domain::Grade;
use crate::domain::line::{Scheduled, ScheduledEvent};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::state::State;
use crate::ui::text::{unit_short, words};
use leptos::prelude::*;

/// A row as it is shown.
#[derive(Debug, Clone, PartialEq)]
struct StepRow {
    key: String,
    number: usize,
    /// When, in words.
    when: String,
    /// How long after the start, in words.
    after: String,
    at: Option<u64>,
    words: RowWords,
    /// Why this moment has its place; with the first step of the moment.
    reason: Option<&'static str>,
    is_next: bool,
    done: Option<u64>,
    started: bool,
}

/// The table.
#[component]
pub fn StepTable() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<ChangeSheet>();
    let rows = Memo::new(move |_| rows(state, sheet));
    let none = Memo::new(move |_| rows.with(Vec::is_empty));
    let moisture_unit = move || unit_short(state.unit(Kind::Moisture), "");
    view! {
        <Show when=move || !none.get() fallback=|| view! { <p>{t!("change-nothing")}</p> }>
            <table class="grid change-list" aria-label=t!("change-steps")>
                <thead><tr>
                    <th scope="col" class="l">{t!("change-number")}</th>
                    <th scope="col" class="l">{t!("change-when")}</th>
                    <td class="after"></td>
                    <th scope="col" class="l">{t!("change-what")}</th>
                    <th scope="col">{t!("change-old")}</th>
                    <td></td>
                    <th scope="col">{t!("change-new")}</th>
                    <td></td>
                    <th scope="col" class="edge mat">{t!("change-mat-moisture")} ", " {moisture_unit}</th>
                    <th scope="col" class="l why">{t!("change-why")}</th>
                    <th scope="col" class="l" colspan="2">{t!("change-done")}</th>
                </tr></thead>
                <tbody>
                    <For each=move || rows.get() key=|row| row.key.clone() let:row><StepLine key=row.key rows=rows/></For>
                </tbody>
            </table>
        </Show>
    }
}

fn rows(state: State, sheet: ChangeSheet) -> Vec<StepRow> {
    sheet.plan.with(|plan| {
        let Some((plan, solved)) = plan.as_ref().and_then(|plan| Some((plan, plan.solved.as_ref()?))) else {
            return Vec::new();
        };
        let started = plan.started.is_some();
        let mut reasons = Vec::new();
        let one = |(at, scheduled): (usize, &Scheduled)| {
            let key = scheduled.key();
            let reason = match scheduled.event {
                ScheduledEvent::Step(step) if !reasons.contains(&step.why) => {
                    reasons.push(step.why);
                    Some(words::line::why(step.why))
                }
                _ => None,
            };
            let unknown = || match scheduled.event {
                ScheduledEvent::Downstream(step) => words::line::stop(step.stop).to_owned(),
                _ => "–".to_owned(),
            };
            StepRow {
                number: at + 1,
                when: scheduled.at.map_or_else(unknown, |at| clock_of(started, at)),
                after: scheduled.at.filter(|_| started).map_or_else(String::new, |at| {
                    t!("change-after", time = minutes(at.saturating_sub(solved.plan.start)))
                }),
                at: scheduled.at,
                words: row_words(state, solved, scheduled),
                reason,
                is_next: solved.next.contains(&key),
                done: plan.done.get(&key).copied(),
                started,
                key,
            }
        };
        solved.schedule.iter().enumerate().map(one).collect()
    })
}

#[component]
fn StepLine(
    /// The step's key.
    key: String,
    /// All rows.
    rows: Memo<Vec<StepRow>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let own = key.clone();
    let row = Memo::new(move |_| rows.with(|rows| rows.iter().find(|row| row.key == own).cloned()));
    let mark = {
        let key = key.clone();
        move |event| {
            let on = event_target_checked(&event);
            let at = clock::now();
            let key = key.clone();
            state.line.change(|record| {
                if let Some(planned) = &mut record.planned {
                    if on {
                        planned.done.insert(key, at);
                    } else {
                        planned.done.remove(&key);
                    }
                }
            });
        }
    };
    let of = move |pick: fn(&StepRow) -> String| move || row.with(|row| row.as_ref().map(pick));
    let is_next = Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| row.is_next)));
    let is_done = Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| row.done.is_some())));
    let has_flag = Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| row.words.flag.is_some())));
    let what = move || {
        row.get().map(|row| {
            let flag = row.words.flag.map(|flag| {
                view! { <span class="sub flag"><Mark grade=Grade::Unusual/> " " {flag}</span> }
            });
            view! { <b>{row.words.what}</b> " " <span class="fed">{row.words.detail}</span> {flag} }
        })
    };
    let why = move || {
        row.get().map(|row| {
            let all = row.words.why.into_iter().chain(row.reason.map(str::to_owned));
            all.map(|words| view! { <span class="reason">{words}</span> }).collect_view()
        })
    };
    let state_of = move || {
        let row = row.get()?;
        match (row.done, row.started, row.at) {
            (Some(at), ..) => Some(clock::time_exact(at)),
            (None, true, Some(at)) if row.is_next => Some(until(at, state.line.now.get())),
            _ => None,
        }
    };
    let name = move || {
        row.with(|row| row.as_ref().map(|row| t!("change-done-step", number = row.number, what = row.words.in_short())))
    };
    view! {
        <tr class="step" data-step=key class:next=move || is_next.get() class:done=move || is_done.get() class:warn=move || has_flag.get()>
            <td class="l step-number">{of(|row| row.number.to_string())}</td>
            <td class="l when">{of(|row| row.when.clone())}</td>
            <td class="after note">{of(|row| row.after.clone())}</td>
            <th scope="row" class="l name">{what}</th>
            <td class="old">{of(|row| row.words.old.clone())}</td>
            <td class="arrow" aria-hidden="true">{of(|row| if row.words.new.is_empty() { String::new() } else { "→".to_owned() })}</td>
            <td class="new">{of(|row| row.words.new.clone())}</td>
            <td class="l unit">{of(|row| row.words.unit.clone())}</td>
            <td class="edge mat" data-label=t!("change-mat-moisture")>{of(|row| row.words.mat.clone())}</td>
            <td class="l why note">{why}</td>
            <td class="tick-cell">
                <label class="tick"><input type="checkbox" aria-label=name prop:checked=move || is_done.get() on:change=mark/></label>
            </td>
            <td class="l state">{state_of}</td>
        </tr>
    }
}
