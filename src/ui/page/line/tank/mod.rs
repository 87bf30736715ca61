//! Tanks: how long they last and when to order; deliveries: what a certificate changes, before it is accepted.

mod announce;
mod certificate;
mod context;
mod delivery;
mod effect;
mod foot;
mod history;
mod level_bar;
mod lines;
mod recipes;
mod row;
mod table;

use crate::domain::line::LineWorking;
use crate::t;
use crate::ui::components::{SlotLine, WarningSlot};
use crate::ui::page::line::worked::WorkedPanel;
use crate::ui::state::State;
use announce::AnnounceTanks;
use context::{TankSheet, deliver_now, tanks_now, working_of};
use delivery::DeliverySection;
use foot::TanksFoot;
use history::EarlierDeliveries;
use leptos::prelude::*;
use lines::tank_lines;
use table::TankTable;

/// The tab.
#[component]
pub fn TanksTab() -> impl IntoView {
    let state = expect_context::<State>();
    // By the minute: nobody reads a tank by the second.
    let minute = Memo::new(move |_| state.line.now.get() / 60_000);
    let sheet = TankSheet {
        tanks: Memo::new(move |_| tanks_now(state, minute.get() * 60_000)),
        delivery: Memo::new(move |_| deliver_now(state)),
        now: Memo::new(move |_| minute.get() * 60_000),
        open_tank: RwSignal::new(None),
    };
    provide_context(sheet);
    // As they were at the last pause, so that nothing comes and goes between two keys.
    let lines = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if state.typing.get() {
            return;
        }
        let all = tank_lines(state, sheet);
        if lines.with_untracked(|before| *before != all) {
            lines.set(all);
        }
    });
    let is_old = Memo::new(move |_| state.shown.with(|shown| shown.old));
    let working = Callback::new(move |key: String| -> Option<(String, LineWorking)> { working_of(state, sheet, &key) });
    view! {
        <section class="tanks-tab" class:old=move || is_old.get() aria-labelledby="line-section">
            <h2 id="line-section" class="out-of-sight" tabindex="-1">{t!("line-tab-tanks")}</h2>
            <WarningSlot lines=lines/>
            <section class="panel" aria-label=t!("tank-tanks")>
                <TankTable/>
                <WorkedPanel working=working/>
            </section>
            <DeliverySection/>
            <EarlierDeliveries/>
            <AnnounceTanks lines=lines/>
            <TanksFoot lines=lines/>
        </section>
    }
}
