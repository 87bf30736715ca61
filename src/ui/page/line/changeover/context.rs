//! The changeover as planned, computed once for all parts of the tab.

use crate::browser::clock;
use crate::domain::line::changeover::Recipe;
use crate::domain::line::{Changeover, Scheduled, changeover, next_steps, schedule};
use crate::domain::{Case, Caution, cautions, work_out};
use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;
use std::collections::BTreeMap;

/// What the parts of the tab share.
#[derive(Clone, Copy)]
pub struct ChangeSheet {
    /// The plan; `None` while there is none.
    pub plan: Memo<Option<PlanNow>>,
}

/// A planned changeover.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanNow {
    /// The name of the recipe that it begins with.
    pub from: String,
    /// The name of the recipe that it goes to.
    pub to: String,
    /// When it was started.
    pub started: Option<u64>,
    /// The steps done, by key, with their time.
    pub done: BTreeMap<String, u64>,
    /// Its steps; `None` where one of the recipes has no result.
    pub solved: Option<SolvedPlan>,
}

/// What was computed of it.
#[derive(Debug, Clone, PartialEq)]
pub struct SolvedPlan {
    /// The changeover.
    pub plan: Changeover,
    /// Its steps as one list.
    pub schedule: Vec<Scheduled>,
    /// The keys of the steps that come next.
    pub next: Vec<String>,
    /// The recipe that it begins with.
    pub old: Case,
    /// The recipe that it goes to.
    pub new: Case,
    /// What to beware of with the new recipe.
    pub cautions: Vec<Caution>,
}

/// The plan. Follows the record and the line, not the clock.
pub fn plan_now(state: State) -> Option<PlanNow> {
    let planned = state.line.record.with(|record| record.planned.clone())?;
    let (old, new) = (work_out(&planned.from.draft), work_out(&planned.to.draft));
    let applying = cautions(&planned.to.draft, &new);
    let solved = old.case.zip(new.case).map(|(old, new)| {
        let plan = state.line.checked.with(|line| {
            let from = Recipe { draft: &planned.from.draft, case: &old };
            let to = Recipe { draft: &planned.to.draft, case: &new };
            changeover(from, to, line, planned.started.unwrap_or(0))
        });
        let schedule = schedule(&plan);
        let next = next_steps(&schedule, &planned.done);
        SolvedPlan { plan, schedule, next, old, new, cautions: applying }
    });
    Some(PlanNow { from: planned.from.name, to: planned.to.name, started: planned.started, done: planned.done, solved })
}

/// A moment: the time of day once started, else the time from the start.
pub fn clock_of(started: bool, at: u64) -> String {
    if started { clock::time_exact(at) } else { t!("change-after", time = minutes(at)) }
}

/// "2:05" for so many milliseconds, cut to seconds.
pub fn minutes(milliseconds: u64) -> String {
    let seconds = milliseconds / 1_000;
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

/// How long until a moment, or how long ago.
pub fn until(at: u64, now: u64) -> String {
    if now >= at { t!("change-due", time = minutes(now - at)) } else { t!("change-in", time = minutes(at - now)) }
}
