//! The recipe: one page that is pinned to a panel, so that what has to be set is first and big.

use super::doses::Doses;
use super::end::End;
use super::inputs::Inputs;
use super::key_figures::{KeyFigures, OtherFigures};
use super::not_valid::NotValid;
use super::sheet::{Sheet, recipe_name, revision};
use super::warnings::{Warnings, recipe_lines};
use crate::domain::{Grade, cautions};
use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;

/// The document.
#[component]
pub fn RecipePaper() -> impl IntoView {
    let state = expect_context::<State>();
    let is_valid = state.outcome.with(|outcome| outcome.case.is_some());
    let inside = match is_valid {
        true => view! { <ValidRecipe/> }.into_any(),
        false => view! { <NotValid/> }.into_any(),
    };
    view! { <Sheet title=recipe_name(state) about=revision(state) kind=t!("recipe-title")>{inside}</Sheet> }
}

#[component]
fn ValidRecipe() -> impl IntoView {
    let state = expect_context::<State>();
    let cautions = state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome)));
    let lines = recipe_lines(state);
    let warnings = lines.iter().filter(|line| line.grade != Grade::Note).count();
    let note = state.title.with(|title| title.note.clone());
    let note =
        (!note.trim().is_empty()).then(|| view! { <p class="print-note"><b>{t!("recipe-note")}</b> " " {note}</p> });
    view! {
        <Warnings lines=lines/>
        <Doses warnings=warnings/>
        <KeyFigures/>
        <Inputs/>
        <OtherFigures/>
        {note}
        <End cautions=cautions signature=[t!("paper-released-by"), t!("paper-operator"), t!("paper-date")] with_code=true/>
    }
}
