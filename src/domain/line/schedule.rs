//! The steps of a changeover as one list from its start to the first board of the new recipe.

use super::changeover::{Changeover, Downstream, DownstreamStep, Stop};
use super::step::{Change, Step};
use std::collections::BTreeMap;

/// What happens.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ScheduledEvent {
    /// A step before or at the blender.
    Step(Step),
    /// A step at former or press.
    Downstream(DownstreamStep),
    /// From here on the saw cuts transition boards.
    TransitionBoards {
        /// Until then; `None` without a mixing time.
        until: Option<u64>,
    },
    /// The first board of the new recipe at the saw.
    FirstBoard,
}

/// An event with its time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scheduled {
    /// What happens.
    pub event: ScheduledEvent,
    /// When, milliseconds since 1970-01-01 00:00 UTC; `None` while a transport time before it is blank.
    pub at: Option<u64>,
}

impl Scheduled {
    /// A name that stays with the event, by which it is marked as done.
    #[must_use]
    pub fn key(&self) -> String {
        match self.event {
            ScheduledEvent::Step(step) => match step.change {
                Change::FibreMoisture { .. } => "fibre_moisture".to_owned(),
                Change::Fibre { .. } => "fibre".to_owned(),
                Change::Pump { pump, .. } => format!("pump.{}", pump.0),
            },
            ScheduledEvent::Downstream(step) => match step.change {
                Downstream::MatWeight { .. } => "mat_weight",
                Downstream::LineSpeed { .. } => "line_speed",
                Downstream::PressGap { .. } => "press_gap",
                Downstream::PressTemperature => "press_temperature",
            }
            .to_owned(),
            ScheduledEvent::TransitionBoards { .. } => "transition_boards".to_owned(),
            ScheduledEvent::FirstBoard => "first_board".to_owned(),
        }
    }
}

/// All events of a changeover, the earliest first; those without a time at the end, in the material's order.
#[must_use]
pub fn schedule(plan: &Changeover) -> Vec<Scheduled> {
    let steps = plan.steps.iter().map(|step| Scheduled { event: ScheduledEvent::Step(*step), at: Some(step.at) });
    let downstream =
        plan.downstream.iter().map(|step| Scheduled { event: ScheduledEvent::Downstream(*step), at: step.at });
    let mut all: Vec<Scheduled> = steps.chain(downstream).collect();
    if !all.is_empty() {
        let saw = plan.arrivals.iter().find(|arrival| arrival.stop == Stop::Saw);
        let complete = saw.and_then(|saw| saw.complete);
        let begins = saw.map(|saw| saw.begins);
        all.push(Scheduled { event: ScheduledEvent::TransitionBoards { until: complete }, at: begins });
        all.push(Scheduled { event: ScheduledEvent::FirstBoard, at: complete });
    }
    // Stable: events of one moment stay in the order in which they are taken.
    all.sort_by_key(|scheduled| scheduled.at.unwrap_or(u64::MAX));
    all
}

/// The keys of what is to be done next: the first event that is not marked as done, and all others of its moment.
#[must_use]
pub fn next_steps(all: &[Scheduled], done: &BTreeMap<String, u64>) -> Vec<String> {
    let open =
        || all.iter().map(|scheduled| (scheduled.key(), scheduled.at)).filter(|(key, _)| !done.contains_key(key));
    let first = open().next();
    open().take_while(|(_, at)| first.as_ref().is_some_and(|(_, moment)| moment == at)).map(|(key, _)| key).collect()
}
