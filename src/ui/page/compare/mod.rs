//! Binder systems compared: which one, on cost, water and speed. One tab is built at a time.

mod chart_frame;
mod choices;
mod context;
mod data_table;
mod entry_box;
mod exports;
mod glyph;
mod head;
mod lines;
mod map;
mod message;
mod ranges;
mod report;
mod solve;
mod sweep;
mod systems;
mod table;
mod uncertainty;
mod words;
mod working;

use crate::t;
use crate::ui::components::{SlotLine, Tabs, WarningSlot};
use crate::ui::state::State;
use crate::ui::state::compare::CompareSection;
use context::CompareContext;
use head::CompareHead;
use leptos::prelude::*;
use lines::lines;
use map::MapTab;
use report::ReportTab;
use solve::SolveTab;
use std::time::Duration;
use sweep::SensitivityTab;
use table::TableTab;
use uncertainty::UncertaintyTab;
use working::close_on_escape;

/// A number is taken as typed to its end when no key came for so long.
const PAUSE: Duration = Duration::from_millis(800);

/// The page.
#[component]
pub fn CompareSheet() -> impl IntoView {
    let state = expect_context::<State>();
    systems::follow_open(state);
    let context = CompareContext::new(state);
    provide_context(context);
    let mut rest = debounce(PAUSE, move |()| {
        // The page may be left meanwhile.
        if context.typing.try_get_untracked() == Some(true) {
            context.typing.set(false);
        }
    });
    Effect::new(move |_| {
        state.compare.typed.track();
        rest(());
    });
    // As they were at the last pause, so that nothing comes and goes between two keys.
    let said = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if context.typing.get() {
            return;
        }
        let all = lines(context);
        if said.with_untracked(|before| *before != all) {
            said.set(all);
        }
    });
    // Printed from the browser's own menu, it is the report as well.
    let printed = window_event_listener_untyped("beforeprint", move |_| {
        state.compare.show(CompareSection::Report);
    });
    on_cleanup(move || printed.remove());
    let shown = Memo::new(move |_| state.compare.section.get());
    view! {
        <div class="compare-sheet" on:keydown=move |event| close_on_escape(context, &event)>
            <CompareHead/>
            <WarningSlot lines=said/>
            <Tabs
                name=t!("compare-tabs")
                tabs=sections().into_iter().map(|(_, name)| name).collect()
                shown=shown
                on_choose=Callback::new(move |at| state.compare.section.set(at))
            />
            <div class="compare-tab">
                {move || match CompareSection::at(shown.get()) {
                    CompareSection::Table => view! { <h2 id="side" class="out-of-sight" tabindex="-1">{t!("compare-tab-table")}</h2><TableTab/> }.into_any(),
                    CompareSection::Solve => view! { <SolveTab/> }.into_any(),
                    CompareSection::Sensitivity => view! { <SensitivityTab/> }.into_any(),
                    CompareSection::Map => view! { <MapTab/> }.into_any(),
                    CompareSection::Uncertainty => view! { <UncertaintyTab/> }.into_any(),
                    CompareSection::Report => view! { <ReportTab/> }.into_any(),
                }}
            </div>
        </div>
    }
}

/// The id of each tab's heading and its name, in the order of the page.
pub fn sections() -> Vec<(&'static str, String)> {
    let section = |section: &CompareSection| match section {
        CompareSection::Table => ("side", t!("compare-tab-table")),
        CompareSection::Solve => ("solve", t!("compare-tab-solve")),
        CompareSection::Sensitivity => ("sweep", t!("compare-sweep")),
        CompareSection::Map => ("map", t!("compare-map")),
        CompareSection::Uncertainty => ("sure", t!("compare-uncertainty")),
        CompareSection::Report => ("report", t!("compare-report")),
    };
    CompareSection::ALL.iter().map(section).collect()
}
