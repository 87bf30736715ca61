//! From one recipe to another: which pump steps when, when the new furnish arrives where, and how much board
//! in between is neither.

use super::entries::TransportField;
use super::field::LineField;
use super::finding::{LineFinding, LineFindingKind, LinePlace};
use super::step::{Change, Pipe, Step, StepReason, mat_moisture, water};
use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::pumps::pump::Pump;
use crate::domain::line::pumps::pump_settings::{PumpRow, row};
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::line::tanks::tank_state::after;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::finding::Grade;
use crate::domain::{LiquidId, Role};
use crate::quantity::{Amount, Kind};
use uom::ConstZero;
use uom::si::f64::{Area, ArealMassDensity, Length, Mass, MassRate, Time, Velocity, Volume};

/// A place that the new furnish reaches, in the material's order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Stop {
    /// The blender.
    Blender,
    /// The former.
    Former,
    /// The press, where the mat enters.
    PressIn,
    /// The press, where the board leaves.
    PressOut,
    /// The saw.
    Saw,
}

impl Stop {
    /// All of them, in the material's order.
    pub const ALL: &'static [Stop] = &[Self::Blender, Self::Former, Self::PressIn, Self::PressOut, Self::Saw];
}

/// When something arrives, milliseconds since 1970-01-01 00:00 UTC.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Arrival {
    /// Where.
    pub stop: Stop,
    /// From here on it is no longer the old recipe.
    pub begins: u64,
    /// From here on it is the new recipe; `None` without a mixing time.
    pub complete: Option<u64>,
}

/// What changes at former and press, when the new furnish reaches them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Downstream {
    /// Wet mat weight at the former.
    MatWeight {
        /// From.
        from: ArealMassDensity,
        /// To.
        to: ArealMassDensity,
    },
    /// Speed of the line.
    LineSpeed {
        /// From.
        from: Velocity,
        /// To.
        to: Velocity,
    },
    /// Press gap, or the stops.
    PressGap {
        /// Pressed thickness now.
        from: Length,
        /// Pressed thickness then.
        to: Length,
    },
    /// Temperature of the press: another binder cures at another one. A recipe holds none, so it is only named.
    PressTemperature,
}

/// A step at former or press.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DownstreamStep {
    /// What changes.
    pub change: Downstream,
    /// Where.
    pub stop: Stop,
    /// When, milliseconds since 1970-01-01 00:00 UTC; `None` while a transport time before it is blank.
    pub at: Option<u64>,
}

/// What is made in between and is neither recipe's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Between {
    /// For how long.
    pub time: Time,
    /// Length along the line; `None` without a mat width.
    pub length: Option<Length>,
    /// Finished area, with the new recipe's yield.
    pub area: Area,
    /// Finished volume.
    pub volume: Volume,
    /// Finished mass at board moisture.
    pub mass: Mass,
}

/// A changeover. It advises: interlocks and the line's own limits stay in charge.
#[derive(Debug, Clone, PartialEq)]
pub struct Changeover {
    /// When it starts, milliseconds since 1970-01-01 00:00 UTC.
    pub start: u64,
    /// The steps, in the safer order.
    pub steps: Vec<Step>,
    /// What changes at former and press, in the material's order.
    pub downstream: Vec<DownstreamStep>,
    /// When the new furnish is complete at the nozzles: last step, pipes filled, mixed through. `None` without a mixing
    /// time.
    pub complete: Option<u64>,
    /// Arrivals in the material's order, as far as the transport times are known.
    pub arrivals: Vec<Arrival>,
    /// What is made in between; `None` without a mixing time.
    pub between: Option<Between>,
    /// What there is to say.
    pub findings: Vec<LineFinding>,
}

/// A recipe as typed and as solved.
#[derive(Debug, Clone, Copy)]
pub struct Recipe<'a> {
    /// As typed: names the liquids.
    pub draft: &'a Draft,
    /// As solved.
    pub case: &'a Case,
}

/// Plans the changeover from one recipe to another, starting at `start` milliseconds.
///
/// Groups of steps follow each other by the step gap. Begins at a stop = start + way there; complete = last
/// step + slowest pipe + mixing time + way there. The press takes the pressing time of the new recipe. Between =
/// complete − start, times what the new recipe makes.
#[must_use]
pub fn changeover(old: Recipe<'_>, new: Recipe<'_>, line: &CheckedLine, start: u64) -> Changeover {
    let mut findings = Vec::new();
    let mut changes = changes(old, new, line);
    changes.sort_by_key(|(why, _)| *why);
    let mut downstream = downstream(old.case, new.case);
    if !(old.case.has_flow() && new.case.has_flow()) {
        findings.push(LineFinding::stop(LinePlace::Line, LineFindingKind::NoFibreFlow));
    } else if changes.is_empty() && downstream.is_empty() {
        findings.push(LineFinding::new(Grade::Note, LinePlace::Line, LineFindingKind::NothingChanges));
    }
    let gap = line.transport.step_gap.unwrap_or(Time::ZERO);
    let mut moments: Vec<StepReason> = changes.iter().map(|(why, _)| *why).collect();
    moments.dedup();
    let moment = |why: StepReason| moments.iter().position(|moment| *moment == why).unwrap_or(0) as f64;
    let steps: Vec<Step> = changes
        .into_iter()
        .map(|(why, change)| Step {
            why,
            change,
            at: after(start, gap * moment(why)),
            mat_after: mat_moisture(old.case, new.case, why),
        })
        .collect();
    wet_between(old.case, new.case, &steps, line, &mut findings);

    let last = gap * moments.len().saturating_sub(1) as f64;
    let pipes = steps.iter().filter_map(|step| filling(&step.change)).fold(Time::ZERO, Time::max);
    let lasts: Option<Time> =
        if steps.is_empty() { Some(Time::ZERO) } else { line.transport.mixing.map(|mixing| last + pipes + mixing) };
    let arrivals = arrivals(new.case, line, start, lasts, &mut findings);
    for step in &mut downstream {
        step.at = arrivals.iter().find(|arrival| arrival.stop == step.stop).map(|arrival| arrival.begins);
    }
    Changeover {
        start,
        complete: lasts.map(|lasts| after(start, lasts)),
        arrivals,
        between: lasts.filter(|_| new.case.has_flow()).map(|lasts| between(new.case, lasts)),
        steps,
        downstream,
        findings,
    }
}

/// What changes at former and press; the times are not set yet.
fn downstream(old: &Case, new: &Case) -> Vec<DownstreamStep> {
    let mut steps = Vec::new();
    let mut add = |stop, change| steps.push(DownstreamStep { change, stop, at: None });
    let (from, to) = (old.solved.mat.wet, new.solved.mat.wet);
    if differ(from.value, to.value) {
        add(Stop::Former, Downstream::MatWeight { from, to });
    }
    if let Some((from, to)) = old.solved.line.speed.zip(new.solved.line.speed)
        && differ(from.value, to.value)
    {
        add(Stop::Former, Downstream::LineSpeed { from, to });
    }
    let (from, to) = (old.solved.mat.pressed_thickness, new.solved.mat.pressed_thickness);
    if differ(from.value, to.value) {
        add(Stop::PressIn, Downstream::PressGap { from, to });
    }
    let binders = |case: &Case| {
        let liquids = case.input.liquids.as_slice().iter().filter(|liquid| liquid.role == Role::Binder);
        liquids.map(|liquid| liquid.substance).collect::<Vec<_>>()
    };
    let (before, then) = (binders(old), binders(new));
    if before.iter().any(|substance| !then.contains(substance)) || then.iter().any(|other| !before.contains(other)) {
        add(Stop::PressIn, Downstream::PressTemperature);
    }
    steps
}

/// What changes, and its place in the order.
fn changes(old: Recipe<'_>, new: Recipe<'_>, line: &CheckedLine) -> Vec<(StepReason, Change)> {
    let mut changes = Vec::new();
    let (from, to) = (old.case.input.fibre_moisture, new.case.input.fibre_moisture);
    if differ(from.dry_basis().value, to.dry_basis().value) {
        let why = if to < from { StepReason::DrierFibreFirst } else { StepReason::MoisterFibreLast };
        changes.push((why, Change::FibreMoisture { from, to }));
    }
    let (from, to) = (old.case.solved.fibre, new.case.solved.fibre);
    if differ(from.value, to.value) && old.case.has_flow() && new.case.has_flow() {
        changes.push((StepReason::Together, Change::Fibre { from, to, to_wet: new.case.solved.fibre_wet }));
    }
    changes.extend(line.pumps.iter().filter_map(|pump| pump_change(pump, old, new)));
    changes
}

fn pump_change(pump: &Pump, old: Recipe<'_>, new: Recipe<'_>) -> Option<(StepReason, Change)> {
    let part = |recipe: Recipe<'_>| {
        let fed = pump.feeds.within(recipe.draft)?;
        row(pump, fed, recipe.case)
    };
    let (before, then) = (part(old), part(new));
    let fed = then.as_ref().or(before.as_ref())?.fed;
    let flow = |row: &Option<PumpRow>| row.as_ref().map_or(MassRate::ZERO, |row| row.mass);
    let (from, to) = (flow(&before), flow(&then));
    let swapped = before.as_ref().zip(then.as_ref()).is_some_and(|(a, b)| {
        let solids = |recipe: Recipe<'_>, fed: Fed| match fed {
            Fed::Liquid(id) => recipe.case.input.liquids.as_slice().iter().find(|l| l.id == id).map(|l| l.solids),
            _ => None,
        };
        differ(a.density.value, b.density.value) || solids(old, a.fed) != solids(new, b.fed)
    });
    let moves = differ(from.value, to.value) || (swapped && to > MassRate::ZERO);
    if !moves {
        return None;
    }
    let fills = |way: Pipe| {
        let row = then.as_ref()?;
        Some((way, pump.pipe?, Some(pump.pipe? / row.volume)))
    };
    let pipe = match (from > MassRate::ZERO, to > MassRate::ZERO) {
        (true, false) => pump.pipe.map(|volume| (Pipe::Flush, volume, None)),
        (false, true) => fills(Pipe::Fills),
        _ if swapped => fills(Pipe::Displaces),
        _ => None,
    };
    let setting = |row: &Option<PumpRow>| row.as_ref().and_then(|row| row.set_to);
    let change = Change::Pump {
        pump: pump.id,
        fed,
        unit: pump.unit,
        from,
        to,
        setting_from: setting(&before),
        setting_to: setting(&then),
        status_to: then.as_ref().map_or(RangeStatus::Within, |row| row.range_status),
        pipe,
    };
    let recipe = if then.is_some() { new } else { old };
    Some((why(fed, from, to, recipe.draft), change))
}

fn why(fed: Fed, from: MassRate, to: MassRate, draft: &Draft) -> StepReason {
    let agent = |id: LiquidId| draft.liquid(id).is_some_and(|liquid| liquid.role == Role::ReleaseAgent);
    match fed {
        Fed::Water => water(from, to),
        Fed::Liquid(id) | Fed::Thinning(id) if agent(id) => {
            if to > from {
                StepReason::ReleaseFirst
            } else {
                StepReason::ReleaseLast
            }
        }
        // Water on the faces belongs to the mat that it goes on.
        Fed::Liquid(_) | Fed::Thinning(_) | Fed::FaceWater => StepReason::Together,
    }
}

fn differ(a: f64, b: f64) -> bool {
    (a - b).abs() > 1e-9 * a.abs().max(b.abs())
}

/// How long a pipe takes to bring the new liquid to the nozzles.
fn filling(change: &Change) -> Option<Time> {
    match change {
        Change::Pump { pipe: Some((_, _, time)), .. } => time.filter(|time| time.is_finite()),
        _ => None,
    }
}

fn wet_between(old: &Case, new: &Case, steps: &[Step], line: &CheckedLine, findings: &mut Vec<LineFinding>) {
    let wettest = old.solved.water.mat.dry_basis().max(new.solved.water.mat.dry_basis());
    let allowed = line.tolerances.map_or(0.0, |tolerances| tolerances.moisture.value);
    let moistures = steps.iter().filter_map(|step| step.mat_after).map(|moisture| moisture.dry_basis().value);
    let between = moistures.fold(0.0, f64::max);
    if between > wettest.value + allowed + 1e-9 {
        let moisture = Amount::from_base(Kind::Moisture, between);
        findings.push(LineFinding::new(Grade::Unusual, LinePlace::Line, LineFindingKind::WetBetween { moisture }));
    }
}

fn arrivals(
    new: &Case,
    line: &CheckedLine,
    start: u64,
    lasts: Option<Time>,
    findings: &mut Vec<LineFinding>,
) -> Vec<Arrival> {
    let transport = &line.transport;
    let legs = [
        (Stop::Blender, Some(Time::ZERO), None),
        (Stop::Former, transport.blender_to_former, Some(TransportField::BlenderToFormer)),
        (Stop::PressIn, transport.former_to_press, Some(TransportField::FormerToPress)),
        (Stop::PressOut, new.solved.line.press_time, None),
        (Stop::Saw, transport.press_to_saw, Some(TransportField::PressToSaw)),
    ];
    for (stop, time, field) in legs {
        match field {
            Some(field) if time.is_none() => {
                let place = LinePlace::Field(LineField::Transport(field));
                findings.push(LineFinding::new(Grade::Note, place, LineFindingKind::NoTransport));
            }
            None if stop == Stop::PressOut && time.is_none() => {
                findings.push(LineFinding::new(Grade::Note, LinePlace::Line, LineFindingKind::NoPressTime));
            }
            _ => {}
        }
    }
    let mut way = Time::ZERO;
    let known = legs.into_iter().map_while(|(stop, time, _)| {
        way += time?;
        Some(Arrival { stop, begins: after(start, way), complete: lasts.map(|lasts| after(start, way + lasts)) })
    });
    known.collect()
}

fn between(new: &Case, lasts: Time) -> Between {
    let run = &new.solved.line;
    Between {
        time: lasts,
        length: run.speed.map(|speed| speed * lasts),
        area: run.finished_area * lasts,
        volume: run.finished_volume * lasts,
        mass: run.finished_mass * lasts,
    }
}
