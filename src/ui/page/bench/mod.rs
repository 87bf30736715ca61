//! The bench: what is weighed for trial boards, and what came of it. One tab is shown at a time.

mod boards;
mod desk;
mod effects;
mod paper;
mod parts;
mod selection;
mod series;
mod sheet;
mod tab;
mod tested;
mod title;
mod trials;

pub use paper::paper;

use crate::browser::element::View;
use crate::t;
use crate::ui::components::{Fold, Mounted, Tabs};
use crate::ui::state::State;
use desk::Desk;
use leptos::prelude::*;
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
            SERIES => view! { <OlderTab at=SERIES older=series::series/> }.into_any(),
            BOARDS => view! { <OlderTab at=BOARDS older=boards::boards/> }.into_any(),
            EFFECTS => view! { <OlderTab at=EFFECTS older=effects::effects/> }.into_any(),
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

/// Builds what is not a component yet.
type Build = fn(Desk) -> View;

/// A tab that is built with `browser::element`.
#[component]
fn OlderTab(
    /// Its place.
    at: usize,
    /// What is in it.
    older: Build,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let name = sections().into_iter().nth(at);
    view! {
        <section class="panel page older-tab" aria-labelledby="bench-section">
            <h2 id="bench-section" tabindex="-1">{name}</h2>
            <Mounted part=move || older(desk)/>
        </section>
    }
}
