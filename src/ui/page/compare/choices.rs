//! Systems, inputs and figures to choose from.

use super::comparison::Comparison;
use super::parts::{output_name, outputs};
use super::systems::Compared;
use crate::browser::element::View;
use crate::browser::graph::*;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::number_key::number_key;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::compare::{Output, variable};
use crate::domain::{Field, LiquidField};
use crate::ui::field::choice::{self, Choice};
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;

/// Where the choice of a system is kept.
#[derive(Clone, Copy)]
pub struct SystemSlot {
    /// Its name on the page.
    pub id: &'static str,
    /// What is chosen.
    pub get: fn(&CompareDraft) -> Option<&SystemChoice>,
    /// Chooses.
    pub set: fn(&mut CompareDraft, Option<SystemChoice>),
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

/// Inputs of all systems to choose from, those of the first one first.
pub fn input_choices(state: State, first: &ComparedSystem, shown: &Compared) -> Vec<Choice> {
    let mut all: Vec<Choice> = Vec::new();
    for system in std::iter::once(first).chain(&shown.ready) {
        for field in inputs(system) {
            let key = number_key(&system.draft, field);
            if !all.iter().any(|(other, _)| *other == key) {
                all.push((key, (state.words.field_name)(field, &system.draft)));
            }
        }
    }
    all
}

/// The input of that key, with the system that has it: the first one, or else the first other that does.
pub fn input_of<'a>(first: &'a ComparedSystem, shown: &'a Compared, key: &str) -> Option<(&'a ComparedSystem, Field)> {
    std::iter::once(first).chain(&shown.ready).find_map(|system| {
        let field = inputs(system).into_iter().find(|field| number_key(&system.draft, *field) == key)?;
        Some((system, field))
    })
}

/// Figures to choose from.
pub fn output_choices(state: State, system: &ComparedSystem) -> Vec<Choice> {
    let choice = |output: Output| (output.key(), output_name(state, output, &system.draft));
    system.case().map(|case| outputs(case).into_iter().map(choice).collect()).unwrap_or_default()
}

/// The figure of a key. Only a cost a year follows the hours.
pub fn output_of(system: &ComparedSystem, hours: Memo<Option<u16>>, key: &str) -> Option<Output> {
    let found = outputs(system.case()?).into_iter().find(|output| output.key() == key)?;
    Some(if matches!(found, Output::CostPerYear(_)) { Output::CostPerYear(hours.get()?) } else { found })
}

/// The system chosen, among those that have a result.
pub fn system_at(typed: &CompareDraft, shown: &Compared, slot: SystemSlot) -> Option<ComparedSystem> {
    shown.ready.get(shown.ready_at((slot.get)(typed))).cloned()
}

/// The choice of a system among those that have a result.
pub fn system_choice(comparison: Comparison, slot: SystemSlot, label: &'static str) -> View {
    let Comparison { state, shown, .. } = comparison;
    let offered = memo(move || shown.with(|shown| shown.choices()));
    let now = memo(move || {
        shown.with(|shown| {
            let at = state.compare.typed.with(|typed| shown.ready_at((slot.get)(typed)));
            shown.places.get(at).and_then(|place| shown.keys.get(*place)).map(SystemChoice::key).unwrap_or_default()
        })
    });
    let choose = Callback::new(move |key: String| {
        state.compare.typed.update(|typed| (slot.set)(typed, SystemChoice::parse(&key)));
    });
    choice::labelled(format!("compare-{}", slot.id), label.to_owned().into(), offered, now, choose)
}

/// Inputs that can be swept: those that the system holds.
pub fn used_inputs(state: State, system: &ComparedSystem) -> Vec<Choice> {
    let Some(case) = system.case() else { return Vec::new() };
    let choice = |field: Field| (number_key(&system.draft, field), (state.words.field_name)(field, &system.draft));
    variable::used(&case.input).map(choice).collect()
}

/// Inputs that any of the systems holds, the reference's first.
pub fn all_inputs(state: State, shown: &Compared) -> Vec<Choice> {
    let mut all: Vec<Choice> = first(shown).map(|system| used_inputs(state, system)).unwrap_or_default();
    for choice in shown.ready.iter().flat_map(|system| used_inputs(state, system)) {
        if !all.iter().any(|(key, _)| *key == choice.0) {
            all.push(choice);
        }
    }
    all
}

/// The reference, or else the first system that has a result.
pub fn first(shown: &Compared) -> Option<&ComparedSystem> {
    shown.ready.get(shown.ready_at(None))
}

/// The first system that uses the number of that key, the reference before the others.
pub fn first_with<'a>(shown: &'a Compared, key: &str) -> Option<&'a ComparedSystem> {
    let uses = |system: &&ComparedSystem| {
        system
            .case()
            .is_some_and(|case| crate::domain::compare::number_key::number_of(&system.draft, case, key).is_some())
    };
    first(shown).filter(uses).or_else(|| shown.ready.iter().find(uses))
}
