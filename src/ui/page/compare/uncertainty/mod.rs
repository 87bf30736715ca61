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
use std::time::Duration;

/// Results, budget, sources.
const PARTS: u8 = 3;

/// The tab.
#[component]
pub fn UncertaintyTab() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let study = study::study(context);
    let own = context.follow(|typed| (typed.uncertainty.output.clone(), typed.uncertainty.of));
    let chosen =
        Memo::new(move |_| own.with(|own| study.with(|study| study.as_ref().and_then(|study| study.chosen(own)))));
    provide_context(UncertaintyContext { study, chosen });
    // Made in one go, the tab would hold up the page for a tenth of a second: one part after the other.
    let parts = RwSignal::new(0_u8);
    Effect::new(move |_| {
        if parts.get() < PARTS {
            set_timeout(move || _ = parts.try_update(|parts| *parts += 1), Duration::ZERO);
        }
    });
    let has = move |part: u8| move || parts.get() >= part;
    view! {
        <UncertaintyVerdict/>
        <div class="unc-two">
            <section class="panel" aria-labelledby="sure">
                <div class="controls">
                    <h2 id="sure" tabindex="-1">{t!("compare-uncertainty")}</h2>
                    <Controls/>
                </div>
                <Show when=has(1)><ResultsTable/></Show>
                <div class="controls">
                    <DrawProgress/>
                    <ChooseResults/>
                </div>
            </section>
            <section class="panel budget" aria-label=t!("compare-budget")><Show when=has(2)><BudgetPanel/></Show></section>
        </div>
        <section class="panel" aria-labelledby="sources"><Show when=has(PARTS)><Sources/></Show></section>
    }
}
