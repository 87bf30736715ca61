//! One input over a range, for all systems in one drawing, with the table behind it.

use super::choices::{all_inputs, first, first_with, output_choices, output_of};
use super::comparison::Comparison;
use super::parts::{Slot, drawn, follow, output_name, picked, select, table, width, with_unit_named};
use super::ranges::{RangeSlot, range_boxes};
use super::systems::Compared;
use crate::browser::element::{Part, View, el};
use crate::domain::Grade;
use crate::domain::compare::draft::SweepDraft;
use crate::domain::compare::number_key::number_of;
use crate::domain::compare::range::{RangeError, range};
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::sweep::{Axis, LimitSpan, Sweep, sweep as solve};
use crate::domain::compare::{Output, variable};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::record::table::Table;
use crate::ui::chart::curves::{Labels, PlottedCurve, curves};
use crate::ui::chart::drawing::Drawing;
use crate::ui::chart::series::letter;
use crate::ui::part::finding::told;
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;
use crate::ui::table::{SweepHead, sensitivity};
use crate::ui::text::Message;
use leptos::reactive::prelude::*;

const INPUT: Slot =
    Slot { id: "sweep.input", get: |typed| typed.sweep.input.clone(), set: |typed, key| typed.sweep.input = key };
const OUTPUT: Slot =
    Slot { id: "sweep.output", get: |typed| typed.sweep.output.clone(), set: |typed, key| typed.sweep.output = key };
const RANGES: RangeSlot = RangeSlot { get: |typed| &typed.sweep.ranges, get_mut: |typed| &mut typed.sweep.ranges };
const FIRST_INPUT: &str = "fibre_moisture";
const FIRST_OUTPUT: &str = "water_dose";
/// Points of a line; each is a full solve.
const POINTS: usize = 81;
/// Rows of the table behind it.
const ROWS: usize = 11;

/// What was swept.
#[derive(Debug, Clone, PartialEq)]
pub struct Swept {
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
    /// All of it to take away.
    pub table: Table,
}

/// Everything of the sweep chosen, as it is whenever something changes.
pub fn swept(comparison: Comparison) -> Memo<Option<Result<Swept, RangeError>>> {
    let Comparison { state, shown, hours } = comparison;
    let own = follow(state, |typed| typed.sweep.clone());
    memo(move || own.with(|own| shown.with(|shown| work_out(state, own, shown, hours))))
}

fn keys(state: State, own: &SweepDraft, shown: &Compared, hours: Memo<Option<u16>>) -> Option<(String, Output)> {
    let system = first(shown)?;
    let (inputs, outputs) = (all_inputs(state, shown), output_choices(state, system));
    let key = picked(&own.input, FIRST_INPUT, &inputs);
    let output = output_of(system, hours, &picked(&own.output, FIRST_OUTPUT, &outputs))?;
    Some((key, output))
}

fn work_out(
    state: State,
    own: &SweepDraft,
    shown: &Compared,
    hours: Memo<Option<u16>>,
) -> Option<Result<Swept, RangeError>> {
    let (key, output) = keys(state, own, shown, hours)?;
    let system = first_with(shown, &key)?;
    let axis = match range(system, &key, own.ranges.get(&key), POINTS) {
        Ok(axis) => axis,
        Err(error) => return Some(Err(error)),
    };
    let kind = system.draft.kind(axis.field);
    let units = state.units.get();
    let (across, up) = (units.unit(kind), units.unit(output.kind()));
    let (mut level, mut limited) = (Vec::new(), Vec::new());
    let mut lines = Vec::new();
    for (system, place) in shown.ready.iter().zip(&shown.places) {
        let Some(case) = system.case() else { continue };
        let values: Result<Sweep, Option<f64>> = match number_of(&system.draft, case, &key) {
            Some(field) => {
                let swept = solve(case, &Axis { field, ..axis }, &[output]);
                for LimitSpan { obstacle, from, to } in &swept.limits {
                    let ends = [*from, *to].map(|base| Amount::from_base(kind, base));
                    limited.push(state.with_context(|context| {
                        (state.words.compare.limited)(&shown.name(*place), *obstacle, ends, context)
                    }));
                }
                Ok(swept)
            }
            None => {
                level.push(shown.name(*place));
                Err(output.value(case).map(|amount| amount.base))
            }
        };
        lines.push((*place, system, values));
    }
    let inputs = axis.values();
    let value_at = |values: &Result<Sweep, Option<f64>>, step: usize| match values {
        Ok(sweep) => sweep.outputs.first().and_then(|values| values.get(step).copied().flatten()),
        Err(level) => *level,
    };
    let converted: Vec<f64> = inputs.iter().map(|base| across.from_base(*base)).collect();
    let curve = |(at, system, values): &(usize, &ComparedSystem, Result<Sweep, Option<f64>>)| PlottedCurve {
        at: *at,
        name: system.name.clone(),
        values: (0..inputs.len()).map(|step| value_at(values, step).map(|base| up.from_base(base))).collect(),
    };
    let all: Vec<PlottedCurve> = lines.iter().map(curve).collect();
    let input_name = (state.words.field_name)(axis.field, &system.draft);
    let output_name = output_name(state, output, &system.draft);
    let (x, y) = (with_unit_named(state, &input_name, kind), with_unit_named(state, &output_name, output.kind()));
    let title = (state.words.compare.page.over)(&output_name, &input_name);
    let now = system.case().and_then(|case| variable::get(&case.input, axis.field)).map(|base| across.from_base(base));
    let wide = width(state);
    let labels = Labels { title: &title, across: &x, up: &y, mark: units.mark };
    let picture = curves((wide, if wide < 500.0 { 300.0 } else { 380.0 }), &converted, &all, now, labels);
    let mut head = vec![x.clone()];
    head.extend(all.iter().map(|curve| format!("{} {}: {y}", letter(curve.at), curve.name)));
    let number = |kind: Kind, unit: Unit, base: f64| format::amount(Amount::from_base(kind, base), unit, units.mark);
    let row = |step: usize| {
        let mut cells = vec![inputs.get(step).map_or_else(String::new, |base| number(kind, across, *base))];
        cells.extend(lines.iter().map(|(_, _, values)| {
            value_at(values, step)
                .map_or_else(|| state.words.tools.no_figure.to_owned(), |base| number(output.kind(), up, base))
        }));
        cells
    };
    let rows = (0..ROWS).map(|step| row(step * (POINTS - 1) / (ROWS - 1))).collect();
    let named: Vec<String> = lines.iter().map(|(place, ..)| shown.name(*place)).collect();
    let systems: Vec<(&str, Result<&Sweep, Option<f64>>)> = named
        .iter()
        .zip(&lines)
        .map(|(name, (.., values))| (name.as_str(), values.as_ref().map_err(|level| *level)))
        .collect();
    let head_of = SweepHead { input: (&input_name, kind), output: (&output_name, output.kind()) };
    let table = state.with_context(|context| sensitivity(head_of, &inputs, &systems, state.words, context));
    Some(Ok(Swept { picture, head, rows, level, limited, table }))
}

/// The sweep, where there is a range.
pub fn swept_of(swept: &Option<Result<Swept, RangeError>>) -> Option<&Swept> {
    swept.as_ref()?.as_ref().ok()
}

/// The section.
pub fn sweep(comparison: Comparison, swept: Memo<Option<Result<Swept, RangeError>>>) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let offered = memo(move || shown.with(|shown| all_inputs(state, shown)));
    let outputs =
        memo(move || shown.with(|shown| first(shown).map(|system| output_choices(state, system)).unwrap_or_default()));
    let key = memo(move || {
        let chosen = state.compare.typed.with(INPUT.get);
        offered.with(|offered| picked(&chosen, FIRST_INPUT, offered))
    });
    // Another input has other boxes; while anything else changes they stay.
    let boxes = move || {
        let key = key.get();
        shown.with_untracked(|shown| {
            first_with(shown, &key).and_then(|system| range_boxes(state, system, RANGES, &key, "sweep"))
        })
    };
    let picture = memo(move || swept.with(|swept| swept_of(swept).and_then(|swept| swept.picture.clone())));
    let problem = move || {
        swept.with(|swept| match swept {
            Some(Err(error)) => Some(told(Grade::Stop, (state.words.compare.no_range)(*error))),
            _ => None,
        })
    };
    let limited = move || {
        let say = |text: String| told(Grade::Unusual, Message { what: text, fix: String::new() });
        swept.with(|swept| swept_of(swept).into_iter().flat_map(|s| s.limited.clone()).map(say).collect::<View>())
    };
    let level = move || {
        let say = |name: String| {
            let message = Message { what: (page.level)(&name), fix: String::new() };
            told(Grade::Note, message)
        };
        swept.with(|swept| swept_of(swept).into_iter().flat_map(|swept| swept.level.clone()).map(say).collect::<View>())
    };
    el("section")
        .set("aria-labelledby", "sweep")
        .child(el("h2").set("id", "sweep").set("tabindex", "-1").child(page.sweep))
        .child(el("p").child(page.sweep_hint))
        .child(
            el("div")
                .class("fields")
                .child(select(state, INPUT, page.sweep_input, FIRST_INPUT, offered))
                .child(select(state, OUTPUT, page.sweep_output, FIRST_OUTPUT, outputs))
                .child(boxes),
        )
        .child(drawn(state, picture, page.sweep))
        .child(el("p").class("empty").set("hidden", move || picture.with(Option::is_some)).child(page.no_drawing))
        .child(problem)
        .child(level)
        .child(limited)
        .child(fold(page.table_behind, move || {
            (move || {
                swept.with(|swept| swept_of(swept).map(|swept| table(page.sweep, &swept.head, swept.rows.clone())))
            })
            .view()
        }))
        .view()
}
