//! The price at which two systems cost the same.

use super::Bench;
use super::parts::{follow, picked, select, with_draft};
use super::solve::{inputs, system_at, system_choice};
use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::domain::compare::break_even::{EqualCost, equal_cost};
use crate::domain::compare::draft::{liquid_key, number_key};
use crate::domain::compare::side::System;
use crate::domain::{Field, Grade, LiquidField};
use crate::ui::field::choice::{self, Choice};
use crate::ui::part::finding::told;
use crate::ui::signal::memo;

const FIRST: &str = "equal.first";
const OTHER: &str = "equal.other";
const PRICE: &str = "equal.price";

const fn is_price(field: &Field) -> bool {
    matches!(field, Field::FibrePrice | Field::Liquid(_, LiquidField::Price))
}

/// The price of the same liquid, or of the fibre, in another system.
fn same(own: &System, field: Field, other: &System) -> Option<Field> {
    let Field::Liquid(id, _) = field else { return Some(field) };
    let key = own.draft.liquid(id).map(|liquid| liquid_key(&liquid.name, liquid.substance))?;
    let liquid = other.draft.liquids.iter().find(|liquid| liquid_key(&liquid.name, liquid.substance) == key)?;
    Some(Field::Liquid(liquid.id, LiquidField::Price))
}

/// Boxes and answer.
pub fn equal(bench: Bench) -> View {
    let Bench { state, shown, .. } = bench;
    let page = &state.words.compare.page;
    let own = follow(state, &["equal."]);
    let first = move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| system_at(typed, shown, FIRST)))
    };
    // Another than the first, as long as nothing was chosen.
    let other = move || {
        own.track();
        shown.with(|shown| {
            let chosen = state.compare.typed.with_untracked(|typed| typed.choice(OTHER).to_owned());
            let own = state.compare.typed.with_untracked(|typed| shown.ready_at(typed.choice(FIRST)));
            let place = shown.keys.iter().position(|key| *key == chosen);
            let at = place.and_then(|place| shown.places.iter().position(|other| *other == place));
            let at = at.unwrap_or(usize::from(own == 0));
            shown.ready.get(at).cloned().map(|system| (system, at == own, shown.places.get(at).copied()))
        })
    };
    let prices = memo(move || {
        let Some(system) = first() else { return Vec::new() };
        let choice = |field: Field| -> Choice {
            (number_key(&system.draft, field), (state.words.field_name)(field, &system.draft))
        };
        // A liquid's price first: the fibre's is much the same for all.
        let mut all: Vec<Field> = inputs(&system).into_iter().filter(is_price).collect();
        let fibre = all.first() == Some(&Field::FibrePrice);
        all.rotate_left(usize::from(fibre));
        all.into_iter().map(choice).collect()
    });
    let answer = move || {
        let (system, (other, itself, _)) = (first()?, other()?);
        if itself {
            return Some(el("p").class("empty").child(page.equal_itself).view());
        }
        let key = state.compare.typed.with_untracked(|typed| prices.with(|offered| picked(typed, PRICE, "", offered)));
        let field = inputs(&system).into_iter().find(|field| number_key(&system.draft, *field) == key)?;
        let found = equal_cost(system.case()?, field, other.case()?, same(&system, field, &other));
        Some(with_draft(state, &system.draft, |context| match found {
            Ok(found) => {
                let grade = if matches!(found, EqualCost::At(_)) { Grade::Note } else { Grade::Unusual };
                let names = [system.name.as_str(), other.name.as_str()];
                told(grade, (state.words.compare.equal_cost)(found, field, names, context))
            }
            Err(error) => told(Grade::Unusual, (state.words.compare.no_price)(error)),
        }))
    };
    let offered = memo(move || shown.with(|shown| shown.choices()));
    let now = memo(move || {
        let place = other().and_then(|(_, _, place)| place);
        shown.with(|shown| place.and_then(|place| shown.keys.get(place)).cloned().unwrap_or_default())
    });
    let choose = Callback::new(move |key: String| state.compare.typed.update(|typed| typed.choose(OTHER, key)));
    el("div")
        .class("results")
        .child(
            el("div")
                .class("fields")
                .child(system_choice(bench, FIRST, page.equal_first))
                .child(select(state, PRICE, page.equal_price, "", prices))
                .child(choice::labelled(
                    format!("compare-{OTHER}"),
                    page.equal_other.to_owned().into(),
                    offered,
                    now,
                    choose,
                )),
        )
        .child(el("div").class("answer").set("aria-live", "polite").child(answer))
        .view()
}
