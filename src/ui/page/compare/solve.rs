//! Solving for one input from a wanted value of one figure, and for the price at which two systems cost
//! the same.

use super::Bench;
use super::equal;
use super::parts::{any, follow, number_box, output_name, outputs, picked, select, with_draft};
use super::systems::Compared;
use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::side::System;
use crate::domain::compare::solve_for::{Found, solve_for};
use crate::domain::compare::{Output, variable};
use crate::domain::recipe::check::read_entry;
use crate::domain::{Entry, Field, Figure, Grade, LiquidField};
use crate::quantity::{Unit, Units};
use crate::ui::field::choice::{self, Choice};
use crate::ui::part::finding::told;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;
use crate::ui::text::FieldWords;

const SYSTEM: &str = "solve.system";
const INPUT: &str = "solve.input";
const OUTPUT: &str = "solve.output";
/// What is solved for at first: how dry the fibre must be for no water to be added.
const FIRST_INPUT: &str = "fibre_moisture";
const FIRST_OUTPUT: &str = "water_dose";

/// The inputs of a system that can be solved for: those that it holds, and its prices.
pub fn inputs(system: &System) -> Vec<Field> {
    let Some(case) = system.case() else { return Vec::new() };
    let mut all: Vec<Field> = variable::used(&case.input).collect();
    let prices = system.draft.liquids.iter().map(|liquid| Field::Liquid(liquid.id, LiquidField::Price));
    for price in std::iter::once(Field::FibrePrice).chain(prices) {
        if !all.contains(&price) {
            all.push(price);
        }
    }
    all
}

/// Inputs to choose from.
pub fn input_choices(state: State, system: &System) -> Vec<Choice> {
    let choice = |field: Field| (field.key(), (state.words.field_name)(field, &system.draft));
    inputs(system).into_iter().map(choice).collect()
}

/// Figures to choose from.
pub fn output_choices(state: State, system: &System) -> Vec<Choice> {
    let choice = |output: Output| (output.key(), output_name(state, output, &system.draft));
    system.case().map(|case| outputs(case).into_iter().map(choice).collect()).unwrap_or_default()
}

/// The figure of a key. Only a cost a year follows the hours.
pub fn output_of(system: &System, hours: Memo<u16>, key: &str) -> Option<Output> {
    let found = outputs(system.case()?).into_iter().find(|output| output.key() == key)?;
    Some(if matches!(found, Output::CostPerYear(_)) { Output::CostPerYear(hours.get()) } else { found })
}

/// The system chosen under `what`.
pub fn system_at(typed: &CompareDraft, shown: &Compared, what: &str) -> Option<System> {
    shown.ready.get(shown.ready_at(typed.choice(what))).cloned()
}

/// The choice of a system among those that have a result.
pub fn system_choice(bench: Bench, what: &'static str, label: &'static str) -> View {
    let Bench { state, shown, .. } = bench;
    let offered = memo(move || shown.with(|shown| shown.choices()));
    let now = memo(move || {
        shown.with(|shown| {
            let at = state.compare.typed.with(|typed| shown.ready_at(typed.choice(what)));
            shown.places.get(at).and_then(|place| shown.keys.get(*place)).cloned().unwrap_or_default()
        })
    });
    let choose = Callback::new(move |key: String| state.compare.typed.update(|typed| typed.choose(what, key)));
    let id = format!("compare-{what}");
    choice::labelled(id, label.to_owned().into(), offered, now, choose)
}

/// The section.
pub fn solve(bench: Bench) -> View {
    let Bench { state, shown, hours } = bench;
    let page = &state.words.compare.page;
    // A key in another section leaves all this as it is.
    let own = follow(state, &["solve.", "wanted."]);
    let system = move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| system_at(typed, shown, SYSTEM)))
    };
    let inputs = memo(move || system().map_or_else(Vec::new, |system| input_choices(state, &system)));
    let outputs = memo(move || system().map_or_else(Vec::new, |system| output_choices(state, &system)));
    let output_key = memo(move || {
        own.track();
        let pick = |typed: &CompareDraft| outputs.with(|offered| picked(typed, OUTPUT, FIRST_OUTPUT, offered));
        state.compare.typed.with_untracked(pick)
    });
    let output = move || system().and_then(|system| output_of(&system, hours, &output_key.get()));
    // The box is another one for another figure, and stays while anything else changes.
    let wanted = move || {
        output_key.track();
        untrack(output).map(|output| wanted_box(state, output))
    };
    let answer = move || {
        let system = system()?;
        let output = output()?;
        let typed = state.compare.typed.get_untracked();
        let key = inputs.with(|offered| picked(&typed, INPUT, FIRST_INPUT, offered));
        let field = self::inputs(&system).into_iter().find(|field| field.key() == key)?;
        let entry = typed.entry(&wanted_key(output)).cloned();
        let entry = entry.unwrap_or_else(|| wanted_entry(output));
        let Ok(Some(base)) = read_entry(&entry, output.kind(), &any(Unit::One, -1e12)) else {
            return Some(el("p").class("empty").child(page.wanted_missing).view());
        };
        let answer = solve_for(system.case()?, field, output, base);
        Some(with_draft(state, &system.draft, |context| match answer {
            Ok(answer) => {
                let never = matches!(answer.found, Found::Never { .. } | Found::Indifferent { .. });
                let grade = if never { Grade::Unusual } else { Grade::Note };
                told(grade, (state.words.compare.answer)(&answer, context))
            }
            Err(error) => told(Grade::Unusual, (state.words.compare.no_answer)(error, field, output, context)),
        }))
    };
    el("section")
        .set("aria-labelledby", "solve")
        .child(el("h2").set("id", "solve").set("tabindex", "-1").child(page.solve))
        .child(el("p").child(page.solve_hint))
        .child(
            el("div")
                .class("fields")
                .child(system_choice(bench, SYSTEM, page.system))
                .child(select(state, INPUT, page.input, FIRST_INPUT, inputs))
                .child(select(state, OUTPUT, page.output, FIRST_OUTPUT, outputs))
                .child(wanted),
        )
        .child(el("div").class("results answer").set("aria-live", "polite").child(answer))
        .child(el("h3").child(page.equal))
        .child(equal::equal(bench))
        .view()
}

fn wanted_key(output: Output) -> String {
    format!("wanted.{}", output.key())
}

/// At first no water is wanted; of any other figure nothing is known.
fn wanted_entry(output: Output) -> Entry {
    let unit = Units::default().unit(output.kind());
    match output {
        Output::Figure(Figure::WaterDose) => Entry::preset("0", unit),
        _ => Entry::empty(unit),
    }
}

fn wanted_box(state: State, output: Output) -> View {
    let page = &state.words.compare.page;
    number_box(
        state,
        (wanted_key(output), "wanted".to_owned()),
        FieldWords { label: page.wanted, hint: "" },
        output.kind(),
        any(Unit::One, -1e12),
        move || wanted_entry(output),
    )
}
