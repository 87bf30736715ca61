//! How certain the chosen figures are: by first order and by Monte Carlo, and what to improve.

mod budget;
mod controls;
mod results;
mod rows;
mod run;
mod shared;
mod source_row;
mod sources;
mod study;

pub use budget::budget_table;
pub use results::results_table;
pub use sources::assumed;
pub use study::work_out;

use super::context::CompareContext;
use crate::t;
use budget::BudgetPanel;
use controls::{ChooseResults, Controls, DrawProgress};
use leptos::prelude::*;
use results::{ResultsTable, UncertaintyVerdict};
use shared::UncertaintyContext;
use sources::Sources;

/// The tab.
#[component]
pub fn UncertaintyTab() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let study = study::study(context);
    let own = context.follow(|typed| (typed.uncertainty.output.clone(), typed.uncertainty.of));
    let chosen =
        Memo::new(move |_| own.with(|own| study.with(|study| study.as_ref().and_then(|study| study.chosen(own)))));
    provide_context(UncertaintyContext { study, chosen });
    view! {
        <UncertaintyVerdict/>
        <div class="unc-two">
            <section class="panel" aria-labelledby="sure">
                <div class="controls">
                    <h2 id="sure" tabindex="-1">{t!("compare-uncertainty")}</h2>
                    <Controls/>
                </div>
                <ResultsTable/>
                <div class="controls">
                    <DrawProgress/>
                    <ChooseResults/>
                </div>
            </section>
            <section class="panel budget" aria-label=t!("compare-budget")><BudgetPanel/></section>
        </div>
        <section class="panel" aria-labelledby="sources"><Sources/></section>
    }
}
