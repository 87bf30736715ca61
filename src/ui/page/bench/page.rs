//! The page: its frame, and the section that is shown.

use super::boards::BoardsTab;
use super::effects::EffectsTab;
use super::series::SeriesTab;
use super::{BOARDS, EFFECTS, SERIES, frame, older_section};
use crate::ui::components::Mounted;
use crate::ui::state::State;
use leptos::prelude::*;

/// The page.
#[component]
pub fn BenchPage() -> impl IntoView {
    let state = expect_context::<State>();
    state.begin_bench();
    let shown = Memo::new(move |_| (state.bench.section.get(), state.bench.opening.get()));
    let section = move || match shown.get().0 {
        SERIES => view! { <SeriesTab/> }.into_any(),
        BOARDS => view! { <BoardsTab/> }.into_any(),
        EFFECTS => view! { <EffectsTab/> }.into_any(),
        at => view! { <Mounted part=move || older_section(state, at)/> }.into_any(),
    };
    view! {
        <div class="bench page">
            <Mounted part=move || frame(state)/>
            {section}
        </div>
    }
}
