//! The bench on paper: weigh sheets, the plan of a series with the sheets of its runs, and the report of a trial.

mod report;
mod series_plan;
mod subject;
mod weigh_sheet;

use crate::ui::page::bench::desk::Desk;
use crate::ui::page::bench::tab::{BOARDS, EFFECTS, SERIES};
use crate::ui::state::State;
use leptos::prelude::*;
use report::TrialReport;
use series_plan::SeriesPlan;
use weigh_sheet::WeighSheets;

/// What the open tab has for paper.
#[component]
pub fn BenchPaper() -> impl IntoView {
    let state = expect_context::<State>();
    provide_context(Desk::new(state));
    match state.bench.section.get_untracked() {
        SERIES => view! { <SeriesPlan/> }.into_any(),
        BOARDS | EFFECTS => view! { <TrialReport/> }.into_any(),
        _ => view! { <WeighSheets/> }.into_any(),
    }
}
