//! The recipe: what to dose, and what the mat must weigh.
//!
//! One sheet: the warnings, the inputs in rows, the dosing grid with its results in the same row, mat, line and
//! bottleneck; everything else is folded below.

mod all_results;
mod balance;
pub mod context;
mod cost;
mod details;
mod dosing;
mod enum_choice;
mod field_box;
mod figure_of;
mod inputs;
mod key_figures;
mod notes;
pub mod row;
mod share;
mod title;
pub mod water_row;

use crate::domain::cautions;
use crate::t;
use crate::ui::components::{Cautions, Fold, WarningSlot};
use crate::ui::state::State;
use crate::ui::text::words;
use all_results::AllResults;
use balance::{MassBalance, WaterBalance};
use context::SheetContext;
use cost::CostTable;
use dosing::Dosing;
use inputs::Inputs;
use key_figures::{KeyFigures, PhoneFoot};
use leptos::prelude::*;
use notes::Notes;
use title::Title;

/// The page.
#[component]
pub fn RecipeSheet() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = SheetContext::new(state);
    provide_context(sheet);
    let lines = Memo::new(move |_| sheet.lines());
    let is_old = Memo::new(move |_| state.shown.with(|shown| shown.old));
    view! {
        <div class="recipe-sheet" class:old=move || is_old.get()>
            <Title/>
            <WarningSlot lines=lines/>
            <Inputs/>
            <Dosing/>
            <KeyFigures/>
            <Folds/>
            <PhoneFoot/>
        </div>
    }
}

/// All that is folded.
#[component]
fn Folds() -> impl IntoView {
    let state = expect_context::<State>();
    let applying = Memo::new(move |_| state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome))));
    let titles = Memo::new(move |_| {
        applying.with(|all| all.iter().map(|caution| words::caution_title(*caution)).collect::<Vec<_>>().join(" · "))
    });
    view! {
        <section class="panel folds" aria-label=t!("recipe-more-results")>
            <Fold id="all-results" title=t!("recipe-all-results") note=t!("recipe-all-results-note")><AllResults/></Fold>
            <Fold id="water-balance" title=t!("recipe-water-balance") note=Signal::derive(move || balance::water_note(state))>
                <WaterBalance/>
            </Fold>
            <Fold id="cost" title=t!("recipe-cost") note=Signal::derive(move || cost::note(state))><CostTable/></Fold>
            <Fold id="mass-balance" title=t!("recipe-mass-balance") note=Signal::derive(move || balance::mass_note(state))>
                <MassBalance/>
            </Fold>
            <Fold id="cautions" title=t!("recipe-cautions") note=titles>
                <Cautions all=applying/>
            </Fold>
            <Fold id="notes" title=t!("recipe-notes")><Notes/></Fold>
        </section>
    }
}
