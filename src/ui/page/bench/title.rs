//! The name of the trial, its recipe, and what can be done with it.

use crate::browser::{page, print};
use crate::domain::Grade;
use crate::domain::trial::weigh_sheet::example::example_sheet;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Mark, Menu};
use crate::ui::part::save::when;
use crate::ui::part::version;
use crate::ui::persistence::{TrialTable, has_begun};
use crate::ui::state::State;
use leptos::prelude::*;

/// The box for the trial's name.
const NAME: &str = "bench-name";

/// The head of the page.
#[component]
pub fn TrialTitle() -> impl IntoView {
    let state = expect_context::<State>();
    view! {
        <header class="title">
            <h1 class="out-of-sight">{t!("bench-title")}</h1>
            <Name/>
            <p class="note" id="trial-state"><RecipeName/> " · " <Saved/></p>
            <div class="title-actions">
                <button type="button" class="primary" on:click=move |_| state.save_trial()>{t!("bench-save")}</button>
                <button type="button" on:click=|_| _ = print::print()>{t!("common-print")}</button>
                <More/>
            </div>
        </header>
        <OtherRecipe/>
        <ExampleTrial/>
    }
}

#[component]
fn Name() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let name = Memo::new(move |_| bench.open.with(|open| open.trial.name.clone()));
    view! {
        <div class="recipe-name">
            <input
                id=NAME
                class="words"
                type="text"
                autocomplete="off"
                maxlength=LONGEST_NAME.to_string()
                placeholder=t!("bench-untitled")
                aria-label=t!("bench-name")
                prop:value=move || name.get()
                on:input=move |event| {
                    let text = event_target_value(&event);
                    bench.edit(|trial| trial.name = text);
                }
            />
        </div>
    }
}

/// The recipe that the trial is of, with its revision.
#[component]
fn RecipeName() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let basis = Memo::new(move |_| {
        bench.open.with(|open| {
            let name = state.called(&open.trial.recipe_name);
            match open.trial.revision.map(|id| state.seen(id)) {
                Some(Some(seen)) => format!("{name}, {}", version::label(&seen)),
                Some(None) => name,
                None => t!("bench-unsaved-recipe", name = name),
            }
        })
    });
    move || t!("bench-of-recipe", recipe = basis.get())
}

/// Whether the trial is saved as it is.
#[component]
fn Saved() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    // Read once a save, not once a key.
    let saved = Memo::new(move |_| {
        let id = bench.open.with(|open| open.from)?;
        let trial = state.library.with(|library| library.trial(id)).ok().flatten()?;
        Some(trial.content().clone())
    });
    move || {
        saved.with(|saved| match saved {
            None => t!("bench-not-saved"),
            Some(saved) if bench.open.with(|open| open.trial.says_same(saved)) => {
                t!("bench-saved-at", time = when(saved.saved_at))
            }
            Some(_) => t!("bench-unsaved-changes"),
        })
    }
}

/// What is needed less often.
#[component]
fn More() -> impl IntoView {
    let state = expect_context::<State>();
    let blank = move |_| {
        state.new_trial();
        page::focus(NAME);
    };
    let table = move |words: String, table: TrialTable| {
        view! { <button type="button" on:click=move |_| state.give_out_trial_table(table)>{words}</button> }
    };
    view! {
        <Menu id="trial-more" label=t!("common-more") sign="⋯">
            <button type="button" on:click=blank>{t!("bench-new")}</button>
            <button type="button" on:click=move |_| state.give_out_trial()>{t!("bench-export-trial")}</button>
            {table(t!("bench-export-boards"), TrialTable::Boards)}
            {table(t!("bench-export-results"), TrialTable::Results)}
            {table(t!("bench-export-readings"), TrialTable::Readings)}
            {table(t!("bench-export-sheets"), TrialTable::Sheets)}
        </Menu>
    }
}

/// That the recipe page has gone on since the trial began.
#[component]
fn OtherRecipe() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let differs = Memo::new(move |_| {
        bench.open.with(|open| has_begun(open) && state.draft.with(|draft| *draft != open.trial.draft))
    });
    let use_it = move |_| {
        let before = bench.open.get_untracked();
        state.take_recipe();
        state.tell_undo(t!("bench-recipe-used"), move || bench.load(before.clone()));
    };
    view! {
        <Show when=move || differs.get()>
            <div class="aside-line">
                <p class="note"><Mark grade=Grade::Note/> " " {t!("bench-recipe-kept")}</p>
                <button type="button" on:click=use_it>{t!("bench-use-recipe")}</button>
            </div>
        </Show>
    }
}

/// That nothing here is the laboratory's own yet.
#[component]
fn ExampleTrial() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let is_example =
        Memo::new(move |_| bench.open.with(|open| !has_begun(open) && open.trial.sheet == example_sheet()));
    let blank = move |_| {
        let before = bench.open.with_untracked(|open| open.trial.sheet.clone());
        bench.edit(|trial| trial.sheet = Default::default());
        // What came of the example is not the last result of this sheet.
        bench.opening.update(|opening| *opening += 1);
        state.tell_undo(t!("bench-blanked"), move || bench.edit(|trial| trial.sheet = before.clone()));
        request_animation_frame(|| page::focus_field("bench_mat_length"));
    };
    view! {
        <Show when=move || is_example.get()>
            <div class="aside-line example-trial">
                <p class="note"><b>{t!("bench-example")}</b> " " {t!("bench-example-hint")}</p>
                <button type="button" on:click=blank>{t!("bench-start-blank")}</button>
            </div>
        </Show>
    }
}
