//! A choice of the weigh sheet among a few.

use super::boxes::keep_lab;
use crate::domain::trial::SheetDraft;
use crate::ui::components::{Choice, ChoiceOption};
use crate::ui::state::State;
use leptos::prelude::*;

/// The choice, with its label above it.
#[component]
pub fn Pick<T: Copy + PartialEq + Send + Sync + 'static>(
    /// Its id.
    id: &'static str,
    /// Its label.
    #[prop(into)]
    label: String,
    /// What is offered.
    all: &'static [T],
    /// Each in words.
    words: fn(T) -> &'static str,
    /// What is chosen.
    now: fn(&SheetDraft) -> T,
    /// Chooses.
    put: fn(&mut SheetDraft, T),
    /// Whether it belongs to the laboratory, so that the next trial begins with it.
    #[prop(optional)]
    of_lab: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let options: Vec<_> =
        all.iter().enumerate().map(|(at, each)| ChoiceOption::new(at.to_string(), words(*each))).collect();
    let value = Memo::new(move |_| {
        let now = bench.open.with(|open| now(&open.trial.sheet));
        all.iter().position(|each| *each == now).unwrap_or(0).to_string()
    });
    let choose = Callback::new(move |chosen: String| {
        if let Some(each) = chosen.parse().ok().and_then(|at: usize| all.get(at)) {
            bench.edit(|trial| put(&mut trial.sheet, *each));
            if of_lab {
                keep_lab(state);
            }
        }
    });
    view! { <Choice id=id name=label labelled=true options=options value=value on_choose=choose/> }
}
