//! The weigh sheet: what is made, what is weighed for it, and what came of that, in one sheet.

mod boxes;
mod context;
pub mod figure;
mod foot;
mod inputs;
mod lab;
mod lines;
mod pick;
mod recovery;
mod results;
mod row;
pub mod rows;
mod sheet_box;
mod table;
pub mod text;

use super::desk::Desk;
use crate::t;
use crate::ui::components::{Cautions, Fold, SlotLine, WarningSlot};
use crate::ui::state::State;
use crate::ui::text::words;
use context::WeighContext;
use foot::{AnnounceWeighing, WeighFoot};
use inputs::WeighInputs;
use lab::{LabSetup, lab_note};
use leptos::prelude::*;
pub use lines::word;
use lines::{LAB, RECOVERED, lines};
use recovery::Recovered;
use results::{AllResults, KeyFigures, cautions_of};
use table::WeighTable;

/// The tab.
#[component]
pub fn WeighSheetTab() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = WeighContext::new(expect_context::<Desk>());
    provide_context(sheet);
    // As they were at the last pause, so that nothing comes and goes between two keys.
    let told = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if sheet.typing.get().is_some() {
            return;
        }
        let all = lines(sheet);
        if told.with_untracked(|before| *before != all) {
            told.set(all);
        }
    });
    let is_old = Memo::new(move |_| sheet.desk.made.with(|made| made.old));
    let cautions = Memo::new(move |_| cautions_of(sheet));
    let titles = Memo::new(move |_| {
        let title = |caution: &_| words::caution_title(*caution);
        cautions.with(|all| all.iter().map(title).collect::<Vec<_>>().join(" · "))
    });
    view! {
        <section class="weigh-sheet-tab" class:old=move || is_old.get() aria-labelledby="bench-section">
            <h2 id="bench-section" class="out-of-sight" tabindex="-1">{t!("bench-weigh-sheet")}</h2>
            <WarningSlot lines=told/>
            <WeighInputs/>
            <WeighTable/>
            <KeyFigures/>
            <section class="panel folds" aria-label=t!("bench-more")>
                <Fold id=LAB title=t!("bench-lab-setup") note=Signal::derive(move || lab_note(state))><LabSetup/></Fold>
                <Fold id=RECOVERED title=t!("bench-recovered") note=t!("bench-recovered-note")><Recovered/></Fold>
                <Fold id="all-results" title=t!("bench-all-results") note=t!("bench-all-results-note")><AllResults/></Fold>
                <Fold id="cautions" title=t!("bench-cautions") note=titles><Cautions all=cautions/></Fold>
            </section>
            <AnnounceWeighing lines=told/>
            <WeighFoot lines=told/>
        </section>
    }
}
