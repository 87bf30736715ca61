//! The sweep chosen, worked out: its drawing, its sentence, its table.

use super::chosen::{FIRST_INPUT, FIRST_OUTPUT};
use crate::domain::Figure;
use crate::domain::compare::draft::SweepDraft;
use crate::domain::compare::feasibility::{FeasibilityGrade, Obstacle};
use crate::domain::compare::number_key::number_of;
use crate::domain::compare::range::{RangeError, range};
use crate::domain::compare::sweep::{Axis, LimitSpan, Sweep, slope, sweep as solve};
use crate::domain::compare::{Output, variable};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::record::table::Table;
use crate::t;
use crate::ui::chart::curves::{Labels, PlottedCurve, curves};
use crate::ui::chart::drawing::Drawing;
use crate::ui::page::compare::choices::{all_inputs, first, first_with, output_choices, output_of, picked};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::systems::Compared;
use crate::ui::page::compare::words::{output_name, signed, unit_name, with_unit_named};
use crate::ui::part::amount::joined;
use crate::ui::table::{SweepHead, sensitivity};
use crate::ui::text::{lower_first, words};
use leptos::prelude::*;

/// Points of a line; each is a full solve.
const POINTS: usize = 81;
/// Rows of the table behind it.
const ROWS: usize = 11;

/// What was swept.
#[derive(Debug, Clone, PartialEq)]
pub struct SweptResult {
    /// What it comes to, in a sentence.
    pub lead: String,
    /// Where the systems stop being able to run.
    pub second: String,
    /// The drawing; `None` where no system gives the figure.
    pub picture: Option<Drawing>,
    /// Heading of the table.
    pub head: Vec<String>,
    /// Its rows.
    pub rows: Vec<Vec<String>>,
    /// Systems that do not use the input, so that their line is level.
    pub level: Vec<String>,
    /// What limits each system somewhere on the range, in words.
    pub limited: Vec<String>,
    /// All of it to be exported.
    pub table: Table,
}

/// A system's line: its place, and the sweep, or its level value where it does not use the input.
type SystemLine = (usize, Result<Sweep, Option<f64>>);

/// The sweep chosen, drawn for a width; an error where its range is none.
pub fn swept_at(context: CompareContext, own: &SweepDraft, width: f64) -> Option<Result<SweptResult, RangeError>> {
    context.shown.with(|shown| {
        let system = first(shown)?;
        let inputs = all_inputs(shown);
        let key = picked(&own.input, FIRST_INPUT, &inputs);
        let outputs = output_choices(system);
        let output = output_of(context, system, &picked(&own.output, FIRST_OUTPUT, &outputs))?;
        let of = first_with(shown, &key)?;
        let axis = match range(of, &key, own.ranges.get(&key), POINTS) {
            Ok(axis) => axis,
            Err(error) => return Some(Err(error)),
        };
        Some(Ok(SweepAxes { context, shown, axis, output, key }.worked_out(of.draft.kind(axis.field), width)))
    })
}

struct SweepAxes<'a> {
    context: CompareContext,
    shown: &'a Compared,
    axis: Axis,
    output: Output,
    key: String,
}

impl SweepAxes<'_> {
    fn lines(&self) -> Vec<SystemLine> {
        let mut lines = Vec::new();
        // Below a water dose of zero the excess is drawn.
        let outputs = [self.output, Output::Figure(Figure::WaterExcess)];
        for (system, place) in self.shown.ready.iter().zip(&self.shown.places) {
            let Some(case) = system.case() else { continue };
            lines.push((
                *place,
                match number_of(&system.draft, case, &self.key) {
                    Some(field) => Ok(solve(case, &Axis { field, ..self.axis }, &outputs)),
                    None => Err(self.output.value(case).map(|amount| amount.base)),
                },
            ));
        }
        lines
    }

    fn is_water_dose(&self) -> bool {
        self.output == Output::Figure(Figure::WaterDose)
    }

    /// The figure of a line at a step; `drawn` with the water in excess below zero.
    fn value(&self, line: &Result<Sweep, Option<f64>>, step: usize, drawn: bool) -> Option<f64> {
        let Ok(sweep) = line else { return line.as_ref().err().copied().flatten() };
        let of = |at: usize| sweep.outputs.get(at).and_then(|values| values.get(step).copied().flatten());
        let value = of(0)?;
        Some(if drawn && self.is_water_dose() { value - of(1).unwrap_or(0.0) } else { value })
    }

    fn worked_out(&self, kind: Kind, width: f64) -> SweptResult {
        let Self { context, shown, axis, output, .. } = self;
        let state = context.state;
        let units = state.units.get();
        let (across, up) = (units.unit(kind), units.unit(output.kind()));
        let lines = self.lines();
        let inputs = axis.values();
        let of = first_with(shown, &self.key);
        let now = of.and_then(|system| variable::get(&system.case()?.input, axis.field));
        let number =
            |kind: Kind, unit: Unit, base: f64| format::amount(Amount::from_base(kind, base), unit, units.mark);
        let input_name = of.map_or_else(String::new, |system| words::field_name(axis.field, &system.draft));
        let output_name = of.map_or_else(String::new, |system| output_name(*output, &system.draft));
        let (x, y) = (with_unit_named(state, &input_name, kind), with_unit_named(state, &output_name, output.kind()));
        let all: Vec<PlottedCurve> = lines
            .iter()
            .map(|(at, line)| PlottedCurve {
                at: *at,
                name: short_name(&shown.name(*at)),
                values: (0..inputs.len())
                    .map(|step| self.value(line, step, true).map(|base| up.from_base(base)))
                    .collect(),
                runs: (0..inputs.len())
                    .map(|step| match line {
                        Ok(sweep) => sweep
                            .feasibilities
                            .get(step)
                            .is_none_or(|feasibility| feasibility.standing() != FeasibilityGrade::Infeasible),
                        Err(_) => true,
                    })
                    .collect(),
                now: self.now_of(*at).map(|(drawn, shown)| (up.from_base(drawn), number(output.kind(), up, shown))),
                edges: edges(line, axis).map(|base| (across.from_base(base), number(kind, across, base))).collect(),
            })
            .collect();
        let title = t!("compare-over", figure = output_name.clone(), input = input_name.clone());
        let present = now.map(|now| {
            (
                across.from_base(now),
                t!("compare-present", value = joined(&number(kind, across, now), &unit_name(state, kind))),
            )
        });
        let below = t!("compare-below-zero");
        let converted: Vec<f64> = inputs.iter().map(|base| across.from_base(*base)).collect();
        let picture = curves(
            (width, if width < 500.0 { 340.0 } else { 420.0 }),
            &converted,
            &all,
            present.as_ref().map(|(now, words)| (*now, words.as_str())),
            self.is_water_dose().then_some(below.as_str()),
            Labels { title: &title, across: &x, up: &y, mark: units.mark },
        );
        let mut head = vec![x];
        head.extend(lines.iter().map(|(at, _)| shown.name(*at)));
        let row = |step: usize| {
            let mut cells = vec![inputs.get(step).map_or_else(String::new, |base| number(kind, across, *base))];
            cells.extend(lines.iter().map(|(_, line)| {
                self.value(line, step, false).map_or_else(|| "–".to_owned(), |base| number(output.kind(), up, base))
            }));
            cells
        };
        let named: Vec<String> = lines.iter().map(|(place, _)| shown.name(*place)).collect();
        let systems: Vec<(&str, Result<&Sweep, Option<f64>>)> = named
            .iter()
            .zip(&lines)
            .map(|(name, (_, line))| (name.as_str(), line.as_ref().map_err(|level| *level)))
            .collect();
        let head_of = SweepHead { input: (&input_name, kind), output: (&output_name, output.kind()) };
        SweptResult {
            lead: self.lead(&lines, now, (&input_name, kind), &output_name),
            second: self.too_wet(&lines, kind),
            picture,
            head,
            rows: (0..ROWS).map(|step| row(step * (POINTS - 1) / (ROWS - 1))).collect(),
            level: self.level(&lines),
            limited: self.limited(&lines, kind),
            table: state.with_context(|context| sensitivity(head_of, &inputs, &systems, context)),
        }
    }

    /// A system's value now: as drawn, and as shown.
    fn now_of(&self, place: usize) -> Option<(f64, f64)> {
        let case = self.shown.systems.get(place)?.case()?;
        let value = self.output.value(case)?.base;
        let excess =
            if self.is_water_dose() { case.figure(Figure::WaterExcess).map_or(0.0, |excess| excess.base) } else { 0.0 };
        Some((value - excess, value))
    }

    /// "1 % db more fibre moisture changes the water dose by −89 kg/h."
    fn lead(&self, lines: &[SystemLine], now: Option<f64>, (input, kind): (&str, Kind), output: &str) -> String {
        let state = self.context.state;
        let (across, up) = (state.unit(kind), state.unit(self.output.kind()));
        let reference = self.shown.reference;
        let found = lines.iter().find(|(place, _)| *place == reference).or(lines.first());
        let Some(((place, line), now)) = found.zip(now) else { return String::new() };
        let inputs: Vec<f64> = self.axis.values();
        let in_unit: Vec<f64> = inputs.iter().map(|base| across.from_base(*base)).collect();
        let values: Vec<Option<f64>> =
            (0..inputs.len()).map(|step| self.value(line, step, true).map(|base| up.from_base(base))).collect();
        let Some(slope) = slope(&in_unit, &values, across.from_base(now)) else { return String::new() };
        let range = in_unit.last().zip(in_unit.first()).map_or(1.0, |(last, first)| (last - first).abs());
        let step = 10.0_f64.powf((range / 5.0).log10().floor());
        t!(
            "compare-slope",
            step = joined(&format::full(step, state.units.get().mark), &unit_name(state, kind)),
            input = lower_first(input),
            figure = lower_first(output),
            change = joined(&signed(state, slope * step), &unit_name(state, self.output.kind())),
            system = self.shown.name(*place)
        )
    }

    /// From where on no water is left to dose, for each system.
    fn too_wet(&self, lines: &[SystemLine], kind: Kind) -> String {
        let state = self.context.state;
        if !self.is_water_dose() {
            return String::new();
        }
        let edge = |(place, line): &SystemLine| {
            let sweep = line.as_ref().ok()?;
            let span = sweep.limits.iter().find(|span| span.obstacle == Obstacle::TooWet)?;
            let edge = if span.from > self.axis.from { span.from } else { span.to };
            let text = crate::ui::page::compare::words::amount_text(state, Amount::from_base(kind, edge));
            Some(t!("compare-too-wet-with", at = text, system = self.shown.name(*place)))
        };
        let all: Vec<String> = lines.iter().filter_map(edge).collect();
        if all.is_empty() { String::new() } else { t!("compare-too-wet-from", edges = all.join(", ")) }
    }

    fn level(&self, lines: &[SystemLine]) -> Vec<String> {
        let level = lines.iter().filter(|(_, line)| line.is_err());
        level.map(|(place, _)| t!("compare-level", system = self.shown.name(*place))).collect()
    }

    fn limited(&self, lines: &[SystemLine], kind: Kind) -> Vec<String> {
        let state = self.context.state;
        let mut said = Vec::new();
        for (place, line) in lines {
            for LimitSpan { obstacle, from, to } in line.iter().flat_map(|sweep| &sweep.limits) {
                // Where no water is left is in the sentence above.
                if self.is_water_dose() && *obstacle == Obstacle::TooWet {
                    continue;
                }
                let ends = [*from, *to].map(|base| Amount::from_base(kind, base));
                said.push(state.with_context(|context| {
                    words::compare::limited(&self.shown.name(*place), *obstacle, ends, context)
                }));
            }
        }
        said
    }
}

/// The longest name beside a line.
const LONGEST: usize = 24;

/// A name that fits beside a line.
fn short_name(name: &str) -> String {
    if name.chars().count() <= LONGEST {
        return name.to_owned();
    }
    format!("{}…", name.chars().take(LONGEST - 1).collect::<String>().trim_end())
}

/// Where a system stops or begins being able to run, within the range.
fn edges<'a>(line: &'a Result<Sweep, Option<f64>>, axis: &'a Axis) -> impl Iterator<Item = f64> + 'a {
    let ends = line.iter().flat_map(|sweep| &sweep.limits).flat_map(|span| [span.from, span.to]);
    ends.filter(|end| *end > axis.from && *end < axis.to)
}
