//! The line check: what runs against the recipe in one table, which reading to distrust, what to set instead, and the log of it all.

mod foot;
mod heading;
mod lines;
mod log;
mod now;
mod period;
mod reconciliation;
mod row;
mod row_text;
mod row_unit;
mod strip;
mod table;
mod tolerances;
mod worked;
mod workings;

pub use heading::CheckActions;
pub use lines::{computed_outside, readings_outside};

use crate::domain::{Work, cautions_at};
use crate::t;
use crate::ui::components::{CautionItem, SlotLine, WarningSlot};
use crate::ui::state::State;
use foot::CheckFoot;
use leptos::prelude::*;
use lines::check_lines;
use log::CheckLog;
use now::{CheckNow, CheckSheet, check_now};
use period::PeriodBalanceFold;
use table::CheckTable;

/// The tab.
#[component]
pub fn LineCheckTab() -> impl IntoView {
    let state = expect_context::<State>();
    let now = Memo::new(move |_| check_now(state));
    provide_context(CheckSheet { now, open_row: RwSignal::new(None) });
    // As they were at the last pause, so that nothing comes and goes between two keys.
    let lines = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if state.typing.get() {
            return;
        }
        let all = now.with(|now| check_lines(state, now));
        if lines.with_untracked(|before| *before != all) {
            lines.set(all);
        }
    });
    let is_old = Memo::new(move |_| now.with(|now| now.old));
    view! {
        <section class="line-check-tab" class:old=move || is_old.get() aria-labelledby="line-section">
            <h2 id="line-section" class="out-of-sight" tabindex="-1">{t!("line-tab-check")}</h2>
            <WarningSlot lines=lines/>
            <CheckTable/>
            <CheckLog/>
            <section class="panel" aria-label=t!("line-period-balance")><PeriodBalanceFold/></section>
            <CheckCautions/>
            <CheckFoot lines=lines/>
        </section>
    }
}

/// Cautions of what was read, such as of a mat too moist for the press.
#[component]
fn CheckCautions() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CheckSheet>();
    let cautions = Memo::new(move |_| {
        let measured = sheet.now.with(CheckNow::mat_moisture);
        state.draft.with(|draft| cautions_at(Work::LineCheck, draft, measured))
    });
    move || {
        let cautions = cautions.get();
        (!cautions.is_empty()).then(|| {
            view! {
                <section class="panel" aria-label=t!("check-cautions")>
                    <ul class="check-cautions">{cautions.into_iter().map(|caution| view! { <CautionItem caution=caution/> }).collect_view()}</ul>
                    <p class="note">{t!("frame-caution-rule")}</p>
                </section>
            }
        })
    }
}
