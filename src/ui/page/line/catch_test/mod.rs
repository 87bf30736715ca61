//! Pumps and their catch tests: one pump at a time, its catches as a grid, the fitted line and what follows from it beside it.

mod announce;
mod cautions;
mod chart;
mod context;
mod earlier;
mod figure;
mod figures;
mod foot;
mod grid;
mod lines;
mod messages;
mod pick;
mod row;
mod setup;
mod test;

use super::settings_now::settings_now;
use crate::domain::line::PumpId;
use crate::t;
use crate::ui::components::{SlotLine, WarningSlot};
use crate::ui::state::State;
use announce::AnnounceTest;
use context::CatchSheet;
use foot::CatchFoot;
use leptos::prelude::*;
use lines::catch_lines;
use pick::PumpPick;
use test::PumpSection;

/// The tab.
#[component]
pub fn CatchTestTab() -> impl IntoView {
    let state = expect_context::<State>();
    let now = Memo::new(move |_| settings_now(state));
    let pump = Memo::new(move |_| {
        let chosen = state.line.pump.get();
        state.line.book(|book| {
            let pump = chosen.and_then(|id| book.pump(id)).or_else(|| book.pumps.first())?;
            Some((pump.id, pump.unit))
        })
    });
    let sheet = CatchSheet { now, pump, open_figure: RwSignal::new(None) };
    provide_context(sheet);
    // As they were at the last pause, so that nothing comes and goes between two keys.
    let lines = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if state.typing.get() {
            return;
        }
        let all = now.with(|now| catch_lines(state, now));
        if lines.with_untracked(|before| *before != all) {
            lines.set(all);
        }
    });
    let is_old = Memo::new(move |_| now.with(|now| now.old));
    view! {
        <section class="catch-tab" class:old=move || is_old.get() aria-labelledby="line-section">
            <h2 id="line-section" class="out-of-sight" tabindex="-1">{t!("line-tab-pumps")}</h2>
            <WarningSlot lines=lines/>
            <PumpPick/>
            // Another scale of the drive makes other boxes.
            <For each=move || pump.get().into_iter() key=|(id, unit): &(PumpId, _)| (id.0, *unit as u8) let((id, unit))>
                <PumpSection id=id unit=unit/>
            </For>
            <AnnounceTest lines=lines/>
            <CatchFoot/>
        </section>
    }
}
