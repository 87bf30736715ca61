//! From one recipe to another: what to set when, and when the new furnish arrives where.

mod arrivals;
mod axis;
mod cautions;
mod context;
mod ends;
mod foot;
mod next;
mod row_words;
mod steps;
mod transport;

use crate::domain::line::LinePlace;
use crate::domain::line::working::between_working;
use crate::domain::line::{LineFigure, LineWorking};
use crate::t;
use crate::ui::components::{SlotLine, WarningSlot};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::lines::{common_lines, go_to_field, slot_line};
use crate::ui::page::line::worked::WorkedPanel;
use crate::ui::state::State;
use crate::ui::text::words;
use arrivals::ArrivalsFold;
use axis::TimeAxis;
use cautions::NewCautions;
use context::{ChangeSheet, plan_now};
use ends::ChooseEnds;
use foot::ChangeFoot;
use leptos::prelude::*;
use next::NextFigures;
use steps::StepTable;
use transport::TransportTimes;

/// The tab.
#[component]
pub fn ChangeoverTab() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = ChangeSheet { plan: Memo::new(move |_| plan_now(state)) };
    provide_context(sheet);
    let lines = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if state.typing.get() {
            return;
        }
        let all = change_lines(state, sheet);
        if lines.with_untracked(|before| *before != all) {
            lines.set(all);
        }
    });
    let has_plan = Memo::new(move |_| sheet.plan.with(|plan| plan.as_ref().is_some_and(|plan| plan.solved.is_some())));
    let working = Callback::new(move |key: String| -> Option<(String, LineWorking)> { working_of(sheet, &key) });
    view! {
        <section class="changeover-tab" aria-labelledby="line-section">
            <h2 id="line-section" class="out-of-sight" tabindex="-1">{t!("line-tab-changeover")}</h2>
            <WarningSlot lines=lines/>
            <section class="panel change-plan" aria-label=t!("change-plan-title")>
                <ChooseEnds/>
                <Show when=move || has_plan.get()><NextFigures/></Show>
                <WorkedPanel working=working/>
            </section>
            <Show when=move || has_plan.get()>
                <section class="panel change-axis" aria-label=t!("change-axis")><TimeAxis/></section>
                <section class="panel change-steps" aria-label=t!("change-steps")><StepTable/></section>
            </Show>
            <section class="panel folds change-folds">
                <Show when=move || has_plan.get()><ArrivalsFold/></Show>
                <TransportTimes/>
                <Show when=move || has_plan.get()><NewCautions/></Show>
            </section>
            <ChangeFoot/>
        </section>
    }
}

fn change_lines(state: State, sheet: ChangeSheet) -> Vec<SlotLine> {
    let mut lines = common_lines(state);
    let findings = sheet.plan.with(|plan| {
        plan.as_ref()
            .and_then(|plan| plan.solved.as_ref())
            .map(|solved| solved.plan.findings.clone())
            .unwrap_or_default()
    });
    for found in &findings {
        let message = with_context(state, |context| words::line::finding(found, context));
        let show = match found.place {
            LinePlace::Field(field) => Some(Callback::new(move |()| go_to_field(state, field))),
            _ => None,
        };
        lines.push(slot_line(found.grade, format!("{} {}", message.what, message.fix), show));
    }
    lines
}

/// Name and working of a figure of the transition boards by its key.
fn working_of(sheet: ChangeSheet, key: &str) -> Option<(String, LineWorking)> {
    let figure =
        [LineFigure::BetweenArea, LineFigure::BetweenVolume].into_iter().find(|figure| next::key(*figure) == key)?;
    let working = sheet.plan.with(|plan| {
        let solved = plan.as_ref()?.solved.as_ref()?;
        between_working(figure, &solved.plan.between?, &solved.new)
    })?;
    Some((words::line::figure(figure).label.to_owned(), working))
}
