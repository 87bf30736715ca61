//! One input over a range, for all systems in one drawing, with the table behind it.

use super::Bench;
use super::parts::{drawn, follow, number_box, output_name, picked, select, table, width, with_unit_named};
use super::solve::{output_choices, output_of};
use super::systems::Compared;
use crate::browser::element::{Part, View, el};
use crate::domain::compare::draft::{CompareDraft, number_key, number_of};
use crate::domain::compare::side::System;
use crate::domain::compare::sweep::{Axis, sweep as solve};
use crate::domain::compare::{Output, variable};
use crate::domain::recipe::check::read_entry;
use crate::domain::{Entry, Field, Grade};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::ui::chart::curves::{Curve, Labels, curves};
use crate::ui::chart::drawing::Drawing;
use crate::ui::chart::series::letter;
use crate::ui::field::choice::Choice;
use crate::ui::part::finding::told;
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;
use crate::ui::text::{FieldWords, Message};

const INPUT: &str = "sweep.input";
const OUTPUT: &str = "sweep.output";
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
}

/// Inputs that can be swept: those that the system holds.
pub fn inputs(state: State, system: &System) -> Vec<Choice> {
    let Some(case) = system.case() else { return Vec::new() };
    let choice = |field: Field| (number_key(&system.draft, field), (state.words.field_name)(field, &system.draft));
    variable::used(&case.input).map(choice).collect()
}

/// The reference, or else the first system that has a result.
pub fn first(shown: &Compared) -> Option<&System> {
    shown.ready.get(shown.ready_at(""))
}

/// The range of an input: as typed, else around what the recipe holds.
pub fn range(typed: &CompareDraft, system: &System, key: &str, points: usize) -> Option<Axis> {
    let case = system.case()?;
    let field = number_of(&system.draft, case, key)?;
    let axis = Axis::around(case, field, points)?;
    let (kind, limit) = (system.draft.kind(field), variable::limit(&case.input, field));
    let end = |end: &str, start: f64| {
        let entry = typed.entry(&format!("{end}.{key}"));
        let read = entry.and_then(|entry| read_entry(entry, kind, &limit).ok().flatten());
        read.unwrap_or(start)
    };
    let (from, to) = (end("from", axis.from), end("to", axis.to));
    let (from, to) = if from <= to { (from, to) } else { (to, from) };
    // Both ends alike are no range.
    if to - from <= 1e-9 * to.abs() { Some(axis) } else { Some(Axis { from, to, ..axis }) }
}

/// The boxes for both ends of the range of an input.
pub fn range_boxes(state: State, system: &System, key: &str, id: &str) -> Option<View> {
    let page = &state.words.compare.page;
    let case = system.case()?;
    let field = number_of(&system.draft, case, key)?;
    let axis = Axis::around(case, field, 2)?;
    let (kind, limit) = (system.draft.kind(field), variable::limit(&case.input, field));
    let ends = [("from", page.from, axis.from), ("to", page.to, axis.to)].map(|(end, label, base)| {
        let start = move || {
            let units = state.units.get();
            let unit = units.unit(kind);
            // A few digits are enough for an end that nobody typed.
            let value = unit.from_base(base);
            let rounded = format::significant(value, 4, units.mark);
            Entry::preset(if value < 1e5 { rounded } else { format::editable(value, units.mark) }, unit)
        };
        let words = FieldWords { label, hint: "" };
        let limit = crate::domain::recipe::limit::Limit { optional: true, usual: None, ..limit };
        number_box(state, (format!("{end}.{key}"), format!("{id}-{end}")), words, kind, limit, start)
    });
    Some(ends.into_iter().collect::<View>())
}

/// Everything of the sweep chosen, as it is whenever something changes.
pub fn swept(bench: Bench) -> Memo<Option<Swept>> {
    let Bench { state, shown, hours } = bench;
    let own = follow(state, &["sweep.", "from.", "to."]);
    memo(move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| work_out(state, typed, shown, hours)))
    })
}

fn keys(state: State, typed: &CompareDraft, shown: &Compared, hours: Memo<u16>) -> Option<(String, Output)> {
    let system = first(shown)?;
    let (inputs, outputs) = (inputs(state, system), output_choices(state, system));
    let key = picked(typed, INPUT, FIRST_INPUT, &inputs);
    let output = output_of(system, hours, &picked(typed, OUTPUT, FIRST_OUTPUT, &outputs))?;
    Some((key, output))
}

fn work_out(state: State, typed: &CompareDraft, shown: &Compared, hours: Memo<u16>) -> Option<Swept> {
    let system = first(shown)?;
    let (key, output) = keys(state, typed, shown, hours)?;
    let axis = range(typed, system, &key, POINTS)?;
    let kind = system.draft.kind(axis.field);
    let units = state.units.get();
    let (across, up) = (units.unit(kind), units.unit(output.kind()));
    let mut level = Vec::new();
    let mut lines = Vec::new();
    for (system, place) in shown.ready.iter().zip(&shown.places) {
        let Some(case) = system.case() else { continue };
        let values = match number_of(&system.draft, case, &key) {
            Some(field) => solve(case, &Axis { field, ..axis }, &[output]).outputs.into_iter().next(),
            None => {
                level.push(shown.name(*place));
                Some(vec![output.value(case).map(|amount| amount.base); POINTS])
            }
        };
        lines.push((*place, system, values.unwrap_or_default()));
    }
    let inputs = axis.values();
    let converted: Vec<f64> = inputs.iter().map(|base| across.from_base(*base)).collect();
    let curve = |(at, system, values): &(usize, &System, Vec<Option<f64>>)| Curve {
        at: *at,
        name: system.name.clone(),
        values: values.iter().map(|value| value.map(|base| up.from_base(base))).collect(),
    };
    let all: Vec<Curve> = lines.iter().map(curve).collect();
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
            let value = values.get(step).copied().flatten();
            value.map_or_else(|| state.words.tools.no_figure.to_owned(), |base| number(output.kind(), up, base))
        }));
        cells
    };
    let rows = (0..ROWS).map(|step| row(step * (POINTS - 1) / (ROWS - 1))).collect();
    Some(Swept { picture, head, rows, level })
}

/// The section.
pub fn sweep(bench: Bench, swept: Memo<Option<Swept>>) -> View {
    let Bench { state, shown, .. } = bench;
    let page = &state.words.compare.page;
    let offered =
        memo(move || shown.with(|shown| first(shown).map(|system| inputs(state, system)).unwrap_or_default()));
    let outputs =
        memo(move || shown.with(|shown| first(shown).map(|system| output_choices(state, system)).unwrap_or_default()));
    let key = memo(move || {
        state.compare.typed.with(|typed| offered.with(|offered| picked(typed, INPUT, FIRST_INPUT, offered)))
    });
    // Another input has other boxes; while anything else changes they stay.
    let boxes = move || {
        let key = key.get();
        shown.with_untracked(|shown| first(shown).and_then(|system| range_boxes(state, system, &key, "sweep")))
    };
    let picture = memo(move || swept.with(|swept| swept.as_ref().and_then(|swept| swept.picture.clone())));
    let level = move || {
        let say = |name: String| {
            let message = Message { what: (page.level)(&name), mend: String::new() };
            told(Grade::Note, message)
        };
        swept.with(|swept| swept.iter().flat_map(|swept| swept.level.clone()).map(say).collect::<View>())
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
        .child(level)
        .child(fold(page.table_behind, move || {
            (move || swept.with(|swept| swept.as_ref().map(|swept| table(page.sweep, &swept.head, swept.rows.clone()))))
                .view()
        }))
        .view()
}
