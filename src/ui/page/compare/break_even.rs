//! The price at which two systems cost the same.

use super::answered::Answered;
use super::choices::{SystemSlot, inputs, system_at, system_choice};
use super::comparison::Comparison;
use super::parts::{Slot, follow, picked, select, with_draft};
use super::systems::Compared;
use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::domain::compare::break_even::{BreakEven, break_even as solve};
use crate::domain::compare::draft::BreakEvenDraft;
use crate::domain::compare::number_key::number_key;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::{Field, Grade, LiquidField};
use crate::ui::field::choice::{self, Choice};
use crate::ui::signal::memo;
use crate::ui::state::State;

const FIRST: SystemSlot = SystemSlot {
    id: "equal.first",
    get: |typed| typed.break_even.system.as_ref(),
    set: |typed, choice| typed.break_even.system = choice,
};
const PRICE: Slot = Slot {
    id: "equal.price",
    get: |typed| typed.break_even.price.clone(),
    set: |typed, key| typed.break_even.price = key,
};
/// Where the price moves: in both systems, or in the first one alone.
const MOVES: Slot = Slot {
    id: "equal.moves",
    get: |typed| if typed.break_even.alone { ALONE } else { BOTH }.to_owned(),
    set: |typed, key| typed.break_even.alone = key == ALONE,
};
const OTHER: &str = "equal.other";
const BOTH: &str = "both";
const ALONE: &str = "alone";

const fn is_price(field: &Field) -> bool {
    matches!(field, Field::FibrePrice | Field::Liquid(_, LiquidField::Price))
}

/// The system to compare with: another than the first, as long as none is chosen.
fn other_at(own: &BreakEvenDraft, shown: &Compared) -> Option<(ComparedSystem, bool, Option<usize>)> {
    let first = shown.ready_at(own.system.as_ref());
    let place = shown.keys.iter().position(|key| Some(key) == own.other.as_ref());
    let at = place.and_then(|place| shown.places.iter().position(|other| *other == place));
    let at = at.unwrap_or(usize::from(first == 0));
    shown.ready.get(at).cloned().map(|system| (system, at == first, shown.places.get(at).copied()))
}

/// The prices of a system. A liquid's first: the fibre's is much the same for all.
fn prices_of(state: State, system: &ComparedSystem) -> Vec<Choice> {
    let mut all: Vec<Field> = inputs(system).into_iter().filter(is_price).collect();
    let fibre = all.first() == Some(&Field::FibrePrice);
    all.rotate_left(usize::from(fibre));
    all.into_iter()
        .map(|field| (number_key(&system.draft, field), (state.words.field_name)(field, &system.draft)))
        .collect()
}

/// The answer as asked for; `Some(None)` for a system compared with itself.
pub fn answered(comparison: Comparison, typed: &BreakEvenDraft) -> Option<Option<Answered>> {
    let Comparison { state, shown, .. } = comparison;
    let system = shown.with(|shown| shown.ready.get(shown.ready_at(typed.system.as_ref())).cloned())?;
    let (other, itself, _) = shown.with(|shown| other_at(typed, shown))?;
    if itself {
        return Some(None);
    }
    let key = picked(&typed.price, "", &prices_of(state, &system));
    let field = inputs(&system).into_iter().find(|field| number_key(&system.draft, *field) == key)?;
    let words = &state.words.compare;
    let price = (state.words.field_name)(field, &system.draft);
    let question = format!("{}: {}, {}: {price}", words.page.break_even, system.name, other.name);
    let found = solve(&system, field, &other, typed.alone);
    let (grade, message) = with_draft(state, &system.draft, |context| match found {
        Ok(found) => {
            let grade = if matches!(found.at, BreakEven::At(_)) { Grade::Note } else { Grade::Unusual };
            (grade, (words.break_even)(&found, field, [&system, &other], context))
        }
        Err(error) => (Grade::Unusual, (words.no_price)(&error, [&system, &other])),
    });
    Some(Some(Answered { grade, question, message }))
}

/// Boxes and answer.
pub fn break_even(comparison: Comparison) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let own = follow(state, |typed| typed.break_even.clone());
    let first = move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| system_at(typed, shown, FIRST)))
    };
    let other = move || own.with(|own| shown.with(|shown| other_at(own, shown)));
    let prices = memo(move || first().map(|system| prices_of(state, &system)).unwrap_or_default());
    let moves = memo(move || {
        vec![(BOTH.to_owned(), page.moves_in_both.to_owned()), (ALONE.to_owned(), page.moves_in_first.to_owned())]
    });
    let answer = move || match own.with(|own| answered(comparison, own))? {
        Some(answered) => Some(answered.view()),
        None => Some(el("p").class("empty").child(page.break_even_itself).view()),
    };
    let offered = memo(move || shown.with(|shown| shown.choices()));
    let now = memo(move || {
        let place = other().and_then(|(_, _, place)| place);
        shown.with(|shown| place.and_then(|place| shown.keys.get(place)).map(SystemChoice::key).unwrap_or_default())
    });
    let choose = Callback::new(move |key: String| {
        state.compare.typed.update(|typed| typed.break_even.other = SystemChoice::parse(&key));
    });
    el("div")
        .class("results")
        .child(
            el("div")
                .class("fields")
                .child(system_choice(comparison, FIRST, page.break_even_first))
                .child(select(state, PRICE, page.break_even_price, "", prices))
                .child(choice::labelled(
                    format!("compare-{OTHER}"),
                    page.break_even_other.to_owned().into(),
                    offered,
                    now,
                    choose,
                ))
                .child(select(state, MOVES, page.moves, BOTH, moves)),
        )
        .child(el("div").class("answer").set("aria-live", "polite").child(answer))
        .view()
}
