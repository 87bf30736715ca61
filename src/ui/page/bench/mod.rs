//! The bench: what is weighed for trial boards, and what came of it. One tab is shown at a time.

mod boards;
pub mod desk;
mod effects;
mod entry;
pub mod selection;
mod series;
pub mod sheet;
pub mod tab;
mod title;
mod trials;

use crate::t;
use crate::ui::components::{Fold, Tabs};
use crate::ui::state::State;
use boards::BoardsTab;
use desk::Desk;
use effects::EffectsTab;
use leptos::prelude::*;
use series::SeriesTab;
use sheet::WeighSheetTab;
use tab::{BOARDS, EFFECTS, SERIES};
use title::TrialTitle;
use trials::{SavedTrials, TrialNote, trials_note};

/// The names of all tabs, in the order of the page.
pub fn sections() -> [String; 4] {
    [t!("bench-weigh-sheet"), t!("bench-series"), t!("bench-boards-made"), t!("bench-effects")]
}

/// The page.
#[component]
pub fn BenchSheet() -> impl IntoView {
    let state = expect_context::<State>();
    state.begin_bench();
    let desk = Desk::new(state);
    provide_context(desk);
    let section = state.bench.section;
    let shown = Memo::new(move |_| section.get());
    // Another trial is another page: nothing of the one before stays on it.
    let tab = move || {
        _ = state.bench.opening.get();
        match shown.get() {
            SERIES => view! { <SeriesTab/> }.into_any(),
            BOARDS => view! { <BoardsTab/> }.into_any(),
            EFFECTS => view! { <EffectsTab/> }.into_any(),
            _ => view! { <WeighSheetTab/> }.into_any(),
        }
    };
    view! {
        <div class="bench bench-sheet">
            <TrialTitle/>
            <Tabs name=t!("bench-title") tabs=sections().to_vec() shown=shown on_choose=Callback::new(move |at| section.set(at))/>
            {tab}
            <section class="panel folds" aria-label=t!("bench-trials")>
                <Fold id="trial-note" title=t!("bench-notes")><TrialNote/></Fold>
                <Fold id="trials" title=t!("bench-trials") note=Signal::derive(move || trials_note(state))><SavedTrials/></Fold>
            </section>
        </div>
    }
}
