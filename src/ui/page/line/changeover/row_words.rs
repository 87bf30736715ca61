//! A step of the changeover in words and numbers, for its row.

use super::context::SolvedPlan;
use crate::domain::line::changeover::Downstream;
use crate::domain::line::step::{Change, Step};
use crate::domain::line::{PumpId, RangeStatus, Scheduled, ScheduledEvent, Setting, SettingUnit};
use crate::domain::{Case, Figure};
use crate::quantity::{Amount, Kind};
use crate::t;
use crate::ui::page::line::settings::context::{parts, setting_parts};
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;
use uom::si::f64::MassRate;

/// The content of a row.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct RowWords {
    /// What is set, in bold.
    pub what: String,
    /// What else it is called, such as the liquid of a pump.
    pub detail: String,
    /// The number before.
    pub old: String,
    /// The number after.
    pub new: String,
    /// The unit of both.
    pub unit: String,
    /// What is wrong with the new one.
    pub flag: Option<String>,
    /// Mat moisture afterwards.
    pub mat: String,
    /// Why, and what goes with it.
    pub why: Vec<String>,
}

impl RowWords {
    /// As one phrase: "P1 binder 42.5 → 38.2 %".
    pub fn in_short(&self) -> String {
        if self.new.is_empty() {
            return if self.detail.is_empty() { self.what.clone() } else { format!("{}: {}", self.what, self.detail) };
        }
        format!("{} {} → {}", self.what, self.old, joined(&self.new, &self.unit))
    }
}

/// The words of a step.
pub fn row_words(state: State, solved: &SolvedPlan, scheduled: &Scheduled) -> RowWords {
    match scheduled.event {
        ScheduledEvent::Step(step) => of_step(state, &step),
        ScheduledEvent::Downstream(step) => downstream(state, solved, step.change),
        ScheduledEvent::TransitionBoards { .. } => RowWords {
            what: t!("change-saw"),
            detail: t!("change-transition-from"),
            why: vec![t!("change-stack-apart")],
            ..RowWords::default()
        },
        ScheduledEvent::FirstBoard => RowWords {
            what: t!("change-saw"),
            detail: t!("change-first-board"),
            why: vec![t!("change-measure-first")],
            ..RowWords::default()
        },
    }
}

/// Both numbers in the unit shown for the kind.
fn pair(state: State, kind: Kind, from: f64, to: f64) -> (String, String, String) {
    let ((old, _), (new, unit)) =
        (parts(state, Amount::from_base(kind, from)), parts(state, Amount::from_base(kind, to)));
    (old, new, unit)
}

fn of_step(state: State, step: &Step) -> RowWords {
    let mat =
        step.mat_after.map(|moisture| parts(state, Amount::from_base(Kind::Moisture, moisture.dry_basis().value)).0);
    let mut words = RowWords { mat: mat.unwrap_or_default(), ..RowWords::default() };
    match step.change {
        Change::FibreMoisture { from, to } => {
            words.what = t!("line-fibre-moisture");
            (words.old, words.new, words.unit) =
                pair(state, Kind::Moisture, from.dry_basis().value, to.dry_basis().value);
        }
        Change::Fibre { from, to, to_wet } => {
            words.what = t!("line-fibre-oven-dry");
            (words.old, words.new, words.unit) = pair(state, Kind::FibreFlow, from.value, to.value);
            let belt = with_unit(state, Amount::from_base(Kind::FibreFlow, to_wet.value), None);
            words.why.push(t!("change-belt-reads", flow = belt));
        }
        Change::Pump { pump, fed, unit, from, to, setting_from, setting_to, status_to, pipe } => {
            words.what = pump_name(state, pump);
            words.detail = state.draft.with(|draft| words::line::fed(fed, draft));
            let (old, old_unit) = end(state, (pump, unit), from, setting_from);
            let (new, new_unit) = end(state, (pump, unit), to, setting_to);
            // Each end has its own unit where one is a flow and the other a setting.
            words.old = if old_unit == new_unit || new_unit.is_empty() { old } else { joined(&old, &old_unit) };
            (words.new, words.unit) = (new, if new_unit.is_empty() { old_unit } else { new_unit });
            words.flag = match status_to {
                RangeStatus::Within => None,
                status if status.is_allowed() => Some(words::line::range_status(status).to_owned()),
                status => Some(t!("change-cannot", status = words::line::range_status(status))),
            };
            let (from, to, flow_unit) = pair(state, Kind::LiquidFlow, from.value, to.value);
            words.why.push(format!("{from} → {}", joined(&to, &flow_unit)));
            if let Some((way, volume, time)) = pipe {
                let volume = with_unit(state, Amount::from_base(Kind::BatchVolume, volume.value), None);
                let time = time.map(|time| with_unit(state, Amount::from_base(Kind::RunTime, time.value), None));
                let needs = words::line::pipe(way);
                words.why.push(match time {
                    Some(time) => t!("change-pipe-time", needs = needs, volume = volume, time = time),
                    None => t!("change-pipe", needs = needs, volume = volume),
                });
            }
        }
    }
    words
}

/// One end of a pump's step: its setting, that it is off, or its flow where there is no setting.
fn end(state: State, (pump, unit): (PumpId, SettingUnit), flow: MassRate, at: Option<Setting>) -> (String, String) {
    match at {
        _ if flow.value <= 0.0 => (t!("line-off"), String::new()),
        Some(at) => setting_parts(state, pump, at, unit),
        None => parts(state, Amount::from_base(Kind::LiquidFlow, flow.value)),
    }
}

fn downstream(state: State, solved: &SolvedPlan, change: Downstream) -> RowWords {
    let both = |figure: Figure| {
        let of = |case: &Case| case.figure(figure);
        let (from, to) = of(&solved.old).zip(of(&solved.new))?;
        Some((parts(state, from).0, with_unit(state, to, None)))
    };
    let (what, (old, new, unit), why) = match change {
        Downstream::MatWeight { from, to } => {
            let oven_dry = both(Figure::MatOvenDry).map(|(from, to)| t!("change-oven-dry", from = from, to = to));
            (t!("line-mat-weight"), pair(state, Kind::MatWeight, from.value, to.value), oven_dry)
        }
        Downstream::LineSpeed { from, to } => {
            (t!("line-speed"), pair(state, Kind::LineSpeed, from.value, to.value), Some(t!("change-with-furnish")))
        }
        Downstream::PressGap { from, to } => {
            let factor = both(Figure::PressFactor).map(|(from, to)| t!("change-press-factor", from = from, to = to));
            (t!("change-press-gap"), pair(state, Kind::Thickness, from.value, to.value), factor)
        }
        Downstream::PressTemperature => {
            (t!("change-press-temperature"), Default::default(), Some(t!("change-for-binder")))
        }
    };
    RowWords { what, old, new, unit, why: why.into_iter().collect(), ..RowWords::default() }
}
