//! The boxes and choices of the page.

use crate::browser::element::{Part, View, many};
use crate::browser::graph::*;
use crate::domain::mixing::{AmountWay, MixDraft, MixField};
use crate::ui::field::choice::{self, Choice};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::signal::{Signal, memo};
use crate::ui::state::State;

/// A box for a number of this page.
pub fn field(state: State, field: MixField) -> View {
    number(LooseBox {
        key: field.key().to_owned(),
        words: (state.words.mix_field)(field),
        named: None,
        kind: field.kind(),
        limit: field.limit(),
        entry: memo(move || state.mix.with(|mix| mix.entry(field).clone())),
        put: Callback::new(move |entry| state.mix.update(|mix| *mix.entry_mut(field) = entry)),
    })
}

/// A choice of this page, kept with what is typed.
pub fn choose<T: Copy + PartialEq + Send + Sync + 'static>(
    state: State,
    id: &'static str,
    label: &'static str,
    offered: &'static [T],
    words: fn(T) -> &'static str,
    now: fn(&MixDraft) -> T,
    put: impl Fn(T) + Send + Sync + 'static,
) -> View {
    // The place among what is offered stands for each.
    let choices: Vec<Choice> = offered
        .iter()
        .map(|each| words(*each).to_owned())
        .enumerate()
        .map(|(at, words)| (at.to_string(), words))
        .collect();
    let now = memo(move || {
        let now = state.mix.with(now);
        offered.iter().position(|each| *each == now).unwrap_or(0).to_string()
    });
    let choose = Callback::new(move |chosen: String| {
        if let Some(chosen) = chosen.parse().ok().and_then(|at: usize| offered.get(at)) {
            put(*chosen);
        }
    });
    choice::labelled(id.to_owned(), label.to_owned().into(), Signal::stored(choices), now, choose)
}

/// The amount asked for, by mass or by volume: how, and the box that belongs to it.
pub fn amount(
    state: State,
    id: &'static str,
    now: fn(&MixDraft) -> AmountWay,
    put: fn(&mut MixDraft, AmountWay),
    boxes: (MixField, MixField),
) -> View {
    let way = memo(move || state.mix.with(now));
    let put = move |way| state.mix.update(|mix| put(mix, way));
    many([
        (choose(state, id, state.words.mix_page.amount, AmountWay::ALL, state.words.amount_way, now, put)).view(),
        (move || field(state, if way.get() == AmountWay::Mass { boxes.0 } else { boxes.1 })).view(),
    ])
    .view()
}
