//! Solving for one input from a target value of one figure, and for the break-even price.

use super::answered::Answered;
use super::break_even;
use super::choices::{SystemSlot, input_choices, input_of, output_choices, output_of, system_at, system_choice};
use super::comparison::Comparison;
use super::parts::{KeptBox, Slot, follow, number_box, output_name, picked, select, with_draft};
use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::domain::compare::Output;
use crate::domain::compare::draft::{CompareDraft, SolveDraft, target_limit};
use crate::domain::compare::solve_for::{Solution, SolveForError, solve_for};
use crate::domain::recipe::check::read_entry;
use crate::domain::{Entry, Figure, Grade};
use crate::quantity::Units;
use crate::ui::signal::memo;
use crate::ui::state::State;
use crate::ui::text::FieldWords;

const SYSTEM: SystemSlot = SystemSlot {
    id: "solve.system",
    get: |typed| typed.solve.system.as_ref(),
    set: |typed, choice| typed.solve.system = choice,
};
const INPUT: Slot =
    Slot { id: "solve.input", get: |typed| typed.solve.input.clone(), set: |typed, key| typed.solve.input = key };
const OUTPUT: Slot =
    Slot { id: "solve.output", get: |typed| typed.solve.output.clone(), set: |typed, key| typed.solve.output = key };
/// What is solved for at first: how dry the fibre must be for no water to be added.
const FIRST_INPUT: &str = "fibre_moisture";
const FIRST_OUTPUT: &str = "water_dose";

/// The section.
pub fn solve(comparison: Comparison) -> View {
    let Comparison { state, shown, hours } = comparison;
    let page = &state.words.compare.page;
    // A key in another section leaves all this as it is.
    let own = follow(state, |typed| typed.solve.clone());
    let system = move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| system_at(typed, shown, SYSTEM)))
    };
    let input_choices =
        memo(move || system().map_or_else(Vec::new, |system| shown.with(|shown| input_choices(state, &system, shown))));
    let outputs = memo(move || system().map_or_else(Vec::new, |system| output_choices(state, &system)));
    let output_key = memo(move || own.with(|own| outputs.with(|offered| picked(&own.output, FIRST_OUTPUT, offered))));
    let output = move || system().and_then(|system| output_of(&system, hours, &output_key.get()));
    // The box is another one for another figure, and stays while anything else changes.
    let target = move || {
        output_key.track();
        untrack(output).map(|output| target_box(state, output))
    };
    let answer = move || match own.with(|own| answered(comparison, own))? {
        Ok(answered) => Some(answered.view()),
        Err(_) => Some(el("p").class("empty").child(page.wanted_missing).view()),
    };
    el("section")
        .set("aria-labelledby", "solve")
        .child(el("h2").set("id", "solve").set("tabindex", "-1").child(page.solve))
        .child(el("p").child(page.solve_hint))
        .child(
            el("div")
                .class("fields")
                .child(system_choice(comparison, SYSTEM, page.system))
                .child(select(state, INPUT, page.input, FIRST_INPUT, input_choices))
                .child(select(state, OUTPUT, page.output, FIRST_OUTPUT, outputs))
                .child(target),
        )
        .child(el("div").class("results answer").set("aria-live", "polite").child(answer))
        .child(el("h3").child(page.break_even))
        .child(break_even::break_even(comparison))
        .view()
}

/// The answer as asked for; an error with the question where no valid target is entered.
pub fn answered(comparison: Comparison, typed: &SolveDraft) -> Option<Result<Answered, String>> {
    let Comparison { state, shown, hours } = comparison;
    let system = shown.with(|shown| shown.ready.get(shown.ready_at(typed.system.as_ref())).cloned())?;
    let output_key = picked(&typed.output, FIRST_OUTPUT, &output_choices(state, &system));
    let output = output_of(&system, hours, &output_key)?;
    let (field, of) = shown.with(|shown| {
        let key = picked(&typed.input, FIRST_INPUT, &input_choices(state, &system, shown));
        input_of(&system, shown, &key).map(|(of, field)| (field, of.clone()))
    })?;
    let entry = typed.targets.get(&output.key()).cloned().unwrap_or_else(|| first_target(output));
    let words = &state.words.compare;
    let label = output_name(state, output, &system.draft);
    let question =
        format!("{}: {}: {} → {label}", words.page.solve, system.name, (state.words.field_name)(field, &of.draft));
    let Ok(Some(base)) = read_entry(&entry, output.kind(), &target_limit()) else { return Some(Err(question)) };
    // What another system doses and this one does not cannot be solved for here; that is said.
    let answer = if of.name == system.name && of.draft == system.draft {
        solve_for(system.case()?, field, output, base)
    } else {
        Err(SolveForError::NotUsed)
    };
    let (grade, message) = with_draft(state, &of.draft, |context| match answer {
        Ok(answer) => {
            let none = matches!(answer.found, Solution::Unreachable { .. } | Solution::Independent { .. });
            let grade = if none || !answer.over.is_empty() { Grade::Unusual } else { Grade::Note };
            (grade, (words.answer)(&answer, context))
        }
        Err(error) => (Grade::Unusual, (words.no_answer)(error, field, output, context)),
    });
    Some(Ok(Answered { grade, question, message }))
}

/// At first no water is wanted; of any other figure nothing is known.
fn first_target(output: Output) -> Entry {
    let unit = Units::default().unit(output.kind());
    match output {
        Output::Figure(Figure::WaterDose) => Entry::preset("0", unit),
        _ => Entry::empty(unit),
    }
}

fn target_box(state: State, output: Output) -> View {
    let key = output.key();
    let own = key.clone();
    let kept = KeptBox {
        id: "wanted".to_owned(),
        words: FieldWords { label: state.words.compare.page.wanted, hint: "" },
        kind: output.kind(),
        limit: target_limit(),
        get: move |typed: &CompareDraft| typed.solve.targets.get(&own).cloned().unwrap_or_else(|| first_target(output)),
        put: move |typed: &mut CompareDraft, entry: Entry| _ = typed.solve.targets.insert(key.clone(), entry),
    };
    number_box(state, kept)
}
