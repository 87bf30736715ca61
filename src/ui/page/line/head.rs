//! The head of the page: which recipe runs, and what can be done.

use super::check::CheckActions;
use crate::browser::print;
use crate::record::LineRecord;
use crate::t;
use crate::ui::components::Menu;
use crate::ui::part::version;
use crate::ui::state::State;
use crate::ui::state::line::LineSection;
use leptos::prelude::*;

/// The head.
#[component]
pub fn LineHead() -> impl IntoView {
    let state = expect_context::<State>();
    let print = move |_| {
        if !print::print() {
            state.tell(t!("line-no-printer"));
        }
    };
    view! {
        <header class="title">
            <h1>{t!("line-title")}</h1>
            <RecipeRevision/>
            <div class="title-actions">
                <Show when=move || LineSection::at(state.line.section.get()) == LineSection::Running><CheckActions/></Show>
                <button type="button" on:click=print>{t!("common-print")}</button>
                <LineMore/>
            </div>
        </header>
    }
}

/// The recipe by its name, its revision and when that was saved.
#[component]
fn RecipeRevision() -> impl IntoView {
    let state = expect_context::<State>();
    let name = Memo::new(move |_| {
        let name = state.title.with(|title| title.name.clone());
        if name.trim().is_empty() { t!("recipe-untitled") } else { name }
    });
    let saved = state.saved();
    let is_saved = Memo::new(move |_| saved.get());
    let seen = state.seen_on_page();
    let revision = move || match seen.get() {
        Some(seen) => version::headline(&seen, is_saved.get()),
        None => t!("recipe-not-saved"),
    };
    let told = move || t!("line-recipe", name = name.get(), revision = revision());
    view! { <p class="note" id="line-recipe">{told}</p> }
}

/// What is needed less often.
#[component]
fn LineMore() -> impl IntoView {
    let state = expect_context::<State>();
    let can_undo = Memo::new(move |_| state.line.can_undo());
    let can_redo = Memo::new(move |_| state.line.can_redo());
    let off = |can: bool| (!can).then_some("true");
    view! {
        <Menu id="line-more" label=t!("common-more") sign="⋯">
            <button type="button" aria-disabled=move || off(can_undo.get()) on:click=move |_| state.line.undo()>
                {t!("common-undo")}
            </button>
            <button type="button" aria-disabled=move || off(can_redo.get()) on:click=move |_| state.line.redo()>
                {t!("common-redo")}
            </button>
        </Menu>
    }
}

/// That nothing here is the mill's own yet.
#[component]
pub fn ExampleLine() -> impl IntoView {
    let state = expect_context::<State>();
    let is_example = Memo::new(move |_| state.line.record.with(|record| record.example));
    let blank = move |_| {
        let blanked = state.line.change(|record| *record = LineRecord::default());
        state.tell_undo(t!("line-blanked"), move || state.line.take_back(&blanked));
    };
    let own = move |_| drop(state.line.change(|record| record.example = false));
    view! {
        <Show when=move || is_example.get()>
            <div class="example-line">
                <p class="note"><b>{t!("line-example")}</b> " " {t!("line-example-hint")}</p>
                <button type="button" on:click=blank>{t!("line-start-blank")}</button>
                <button type="button" on:click=own>{t!("line-own-figures")}</button>
            </div>
        </Show>
    }
}
