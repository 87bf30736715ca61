//! One input from a target value of one figure.

use super::answered::{AnswerLines, Answered};
use crate::domain::compare::Output;
use crate::domain::compare::draft::{CompareDraft, SolveDraft, target_limit};
use crate::domain::compare::solve_for::{Solution, SolveForError, solve_for};
use crate::domain::recipe::check::read_entry;
use crate::domain::{Entry, Figure, Grade};
use crate::quantity::Units;
use crate::t;
use crate::ui::page::compare::choices::{
    KeyChoice, KeySlot, SystemSelect, SystemSlot, chosen_place, input_choices, input_of, output_choices, output_of,
    picked,
};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::entry_box::CompareBox;
use crate::ui::page::compare::words::output_name;
use crate::ui::text::words;
use leptos::prelude::*;

const SYSTEM: SystemSlot = SystemSlot {
    id: "solve.system",
    get: |typed| typed.solve.system.as_ref(),
    set: |typed, choice| typed.solve.system = choice,
};
const INPUT: KeySlot =
    KeySlot { id: "solve.input", get: |typed| typed.solve.input.clone(), set: |typed, key| typed.solve.input = key };
const OUTPUT: KeySlot =
    KeySlot { id: "solve.output", get: |typed| typed.solve.output.clone(), set: |typed, key| typed.solve.output = key };
/// What is solved for at first: how dry the fibre must be for no water to be added.
const FIRST_INPUT: &str = "fibre_moisture";
const FIRST_OUTPUT: &str = "water_dose";

/// The panel.
#[component]
pub fn SolvePanel() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let own = context.follow(|typed| typed.solve.clone());
    let place = chosen_place(context, SYSTEM);
    let inputs = Memo::new(move |_| {
        context
            .shown
            .with(|shown| shown.ready.get(place.get()).map_or_else(Vec::new, |system| input_choices(system, shown)))
    });
    let outputs = Memo::new(move |_| {
        context.shown.with(|shown| shown.ready.get(place.get()).map_or_else(Vec::new, output_choices))
    });
    let output_key =
        Memo::new(move |_| own.with(|own| outputs.with(|offered| picked(&own.output, FIRST_OUTPUT, offered))));
    // The box is another one for another figure, and stays while anything else changes.
    let target = move || {
        let key = output_key.get();
        let output = untrack(|| context.shown.with(|shown| output_of(context, shown.ready.get(place.get())?, &key)));
        output.map(|output| view! { <TargetBox output=output/> })
    };
    let answer = Memo::new(move |before: Option<&Option<Result<Answered, String>>>| match before {
        Some(before) if context.typing.get() => before.clone(),
        _ => own.with(|own| answered(context, own)),
    });
    let lines = move || {
        answer.get().map(|answer| match answer {
            Ok(answered) => view! { <AnswerLines answered=answered/> }.into_any(),
            Err(_) => view! { <p class="note">{t!("compare-target-missing")}</p> }.into_any(),
        })
    };
    view! {
        <section class="panel" aria-labelledby="solve">
            <h2 id="solve" tabindex="-1">{t!("compare-solve")}</h2>
            <div class="given">
                <SystemSelect kept=SYSTEM label=t!("compare-system") chosen=place/>
                <KeyChoice kept=INPUT label=t!("compare-input") prefer=FIRST_INPUT options=inputs/>
                <KeyChoice kept=OUTPUT label=t!("compare-result") prefer=FIRST_OUTPUT options=outputs/>
                {target}
            </div>
            <div class="answer" aria-live="polite">{lines}</div>
        </section>
    }
}

/// The target value of a figure. Each figure keeps its own.
#[component]
fn TargetBox(
    /// The figure.
    output: Output,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let (own, key) = (output.key(), output.key());
    let entry = Memo::new(move |_| {
        let entered = context.state.compare.typed.with(|typed| typed.solve.targets.get(&own).cloned());
        entered.unwrap_or_else(|| first_target(output))
    });
    let enter = Callback::new(move |entry: Entry| {
        context.enter(|typed: &mut CompareDraft| _ = typed.solve.targets.insert(key.clone(), entry));
    });
    view! {
        <CompareBox
            key="wanted"
            label=Signal::derive(|| t!("compare-target"))
            name=Signal::derive(|| t!("compare-target"))
            kind=output.kind()
            limit=target_limit()
            entry=entry
            on_enter=enter
        />
    }
}

/// The answer as asked for; an error with the question where no valid target is entered.
pub fn answered(context: CompareContext, typed: &SolveDraft) -> Option<Result<Answered, String>> {
    let system = context.shown.with(|shown| shown.ready.get(shown.ready_at(typed.system.as_ref())).cloned())?;
    let output_key = picked(&typed.output, FIRST_OUTPUT, &output_choices(&system));
    let output = output_of(context, &system, &output_key)?;
    let (field, of) = context.shown.with(|shown| {
        let key = picked(&typed.input, FIRST_INPUT, &input_choices(&system, shown));
        input_of(&system, shown, &key).map(|(of, field)| (field, of.clone()))
    })?;
    let entry = typed.targets.get(&output.key()).cloned().unwrap_or_else(|| first_target(output));
    let input = words::field_name(field, &of.draft);
    let question = t!(
        "compare-solve-question",
        system = system.name.clone(),
        input = input,
        figure = output_name(output, &system.draft)
    );
    let Ok(Some(base)) = read_entry(&entry, output.kind(), &target_limit()) else { return Some(Err(question)) };
    // What another system doses and this one does not cannot be solved for here; that is said.
    let answer = if of.name == system.name && of.draft == system.draft {
        solve_for(system.case()?, field, output, base)
    } else {
        Err(SolveForError::NotUsed)
    };
    let (grade, message) = context.with_draft(&of.draft, |own| match answer {
        Ok(answer) => {
            let none = matches!(answer.found, Solution::Unreachable { .. } | Solution::Independent { .. });
            let grade = if none || !answer.over.is_empty() { Grade::Unusual } else { Grade::Note };
            (grade, words::compare::answer(&answer, own))
        }
        Err(error) => (Grade::Unusual, words::compare::no_answer(error, field, output, own)),
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
