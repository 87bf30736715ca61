//! Systems, inputs and figures to choose from.

use super::context::CompareContext;
use super::systems::Compared;
use super::words::output_name;
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::number_key::{number_key, number_of};
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::compare::{Output, variable};
use crate::domain::{Field, LiquidField};
use crate::ui::components::{Choice, ChoiceOption};
use crate::ui::text::words;
use leptos::prelude::*;

/// What is chosen among what is offered: as chosen before, else `prefer`, else the first.
#[must_use]
pub fn picked(chosen: &str, prefer: &str, offered: &[ChoiceOption]) -> String {
    let is_there = |key: &str| offered.iter().any(|option| option.value == key);
    match () {
        () if is_there(chosen) => chosen.to_owned(),
        () if is_there(prefer) => prefer.to_owned(),
        () => offered.first().map(|option| option.value.clone()).unwrap_or_default(),
    }
}

/// Where the choice of a text is kept.
#[derive(Clone, Copy)]
pub struct KeySlot {
    /// Its id on the page.
    pub id: &'static str,
    /// What is chosen; empty for nothing yet.
    pub get: fn(&CompareDraft) -> String,
    /// Chooses.
    pub set: fn(&mut CompareDraft, String),
}

/// A choice of the comparison.
#[component]
pub fn KeyChoice(
    /// Where it is kept.
    kept: KeySlot,
    /// Its label.
    label: String,
    /// What is chosen at first.
    #[prop(optional)]
    prefer: &'static str,
    /// What is offered.
    #[prop(into)]
    options: Signal<Vec<ChoiceOption>>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let now = Memo::new(move |_| {
        let chosen = context.state.compare.typed.with(kept.get);
        options.with(|options| picked(&chosen, prefer, options))
    });
    let choose = Callback::new(move |key: String| context.enter(|typed| (kept.set)(typed, key)));
    view! {
        <Choice
            id=format!("compare-{}", kept.id)
            name=Signal::stored(label)
            labelled=true
            options=options
            value=now
            on_choose=choose
        />
    }
}

/// Where the choice of a system is kept.
#[derive(Clone, Copy)]
pub struct SystemSlot {
    /// Its id on the page.
    pub id: &'static str,
    /// What is chosen.
    pub get: fn(&CompareDraft) -> Option<&SystemChoice>,
    /// Chooses.
    pub set: fn(&mut CompareDraft, Option<SystemChoice>),
}

/// The choice of a system among those that have a result.
#[component]
pub fn SystemSelect(
    /// Where it is kept.
    kept: SystemSlot,
    /// Its label.
    label: String,
    /// The place chosen among those that have a result.
    #[prop(into)]
    chosen: Signal<usize>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let options = Memo::new(move |_| context.shown.with(|shown| shown.choices()));
    let now = Memo::new(move |_| {
        let at = chosen.get();
        context.shown.with(|shown| {
            shown.places.get(at).and_then(|place| shown.keys.get(*place)).map(SystemChoice::key).unwrap_or_default()
        })
    });
    let choose = Callback::new(move |key: String| context.enter(|typed| (kept.set)(typed, SystemChoice::parse(&key))));
    view! {
        <Choice
            id=format!("compare-{}", kept.id)
            name=Signal::stored(label)
            labelled=true
            options=options
            value=now
            on_choose=choose
        />
    }
}

/// The place of the system chosen, among those that have a result.
pub fn chosen_place(context: CompareContext, kept: SystemSlot) -> Memo<usize> {
    Memo::new(move |_| {
        context.state.compare.typed.with(|typed| context.shown.with(|shown| shown.ready_at((kept.get)(typed))))
    })
}

/// The inputs of a system that can be solved for: those that it holds, and its prices.
pub fn inputs(system: &ComparedSystem) -> Vec<Field> {
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

fn input_option(system: &ComparedSystem, field: Field) -> ChoiceOption {
    ChoiceOption::new(number_key(&system.draft, field), words::field_name(field, &system.draft))
}

fn each_once(options: impl Iterator<Item = ChoiceOption>) -> Vec<ChoiceOption> {
    let mut all: Vec<ChoiceOption> = Vec::new();
    for option in options {
        if !all.iter().any(|other| other.value == option.value) {
            all.push(option);
        }
    }
    all
}

/// Inputs of all systems to choose from, those of the first one first.
pub fn input_choices(first: &ComparedSystem, shown: &Compared) -> Vec<ChoiceOption> {
    let systems = std::iter::once(first).chain(&shown.ready);
    each_once(systems.flat_map(|system| inputs(system).into_iter().map(move |field| input_option(system, field))))
}

/// The input of that key, with the system that has it: the first one, or else the first other that does.
pub fn input_of<'a>(first: &'a ComparedSystem, shown: &'a Compared, key: &str) -> Option<(&'a ComparedSystem, Field)> {
    std::iter::once(first).chain(&shown.ready).find_map(|system| {
        let field = inputs(system).into_iter().find(|field| number_key(&system.draft, *field) == key)?;
        Some((system, field))
    })
}

/// The figures that a recipe gives, its liquids' flows with them; a cost a year for one hour.
#[must_use]
pub fn outputs(case: &Case) -> Vec<Output> {
    let mut all = Output::side_by_side(1);
    all.push(Output::Figure(Figure::WaterDoseVolume));
    for flow in &case.solved.liquids {
        all.push(Output::Figure(Figure::Liquid(flow.id, LiquidFigure::Liquid)));
        all.push(Output::Figure(Figure::Liquid(flow.id, LiquidFigure::Volume)));
    }
    all.retain(|output| output.value(case).is_some());
    all
}

/// Figures to choose from.
pub fn output_choices(system: &ComparedSystem) -> Vec<ChoiceOption> {
    let option = |output: Output| ChoiceOption::new(output.key(), output_name(output, &system.draft));
    system.case().map(|case| outputs(case).into_iter().map(option).collect()).unwrap_or_default()
}

/// The figure of a key. Only a cost a year follows the hours.
pub fn output_of(context: CompareContext, system: &ComparedSystem, key: &str) -> Option<Output> {
    let found = outputs(system.case()?).into_iter().find(|output| output.key() == key)?;
    Some(if matches!(found, Output::CostPerYear(_)) { Output::CostPerYear(context.hours.get()?) } else { found })
}

/// Inputs that can be swept: those that the system holds.
pub fn used_inputs(system: &ComparedSystem) -> Vec<ChoiceOption> {
    let Some(case) = system.case() else { return Vec::new() };
    variable::used(&case.input).map(|field| input_option(system, field)).collect()
}

/// Inputs that any of the systems holds, the reference's first.
pub fn all_inputs(shown: &Compared) -> Vec<ChoiceOption> {
    each_once(first(shown).into_iter().chain(&shown.ready).flat_map(used_inputs))
}

/// The reference, or else the first system that has a result.
pub fn first(shown: &Compared) -> Option<&ComparedSystem> {
    shown.ready.get(shown.ready_at(None))
}

/// The first system that uses the number of that key, the reference before the others.
pub fn first_with<'a>(shown: &'a Compared, key: &str) -> Option<&'a ComparedSystem> {
    let uses =
        |system: &&ComparedSystem| system.case().is_some_and(|case| number_of(&system.draft, case, key).is_some());
    first(shown).filter(uses).or_else(|| shown.ready.iter().find(uses))
}
