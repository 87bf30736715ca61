//! What every pump has to be set to: at the belt scale and the moisture of now, and over a range of both.

mod announce;
mod conditions;
pub mod context;
pub mod figure;
mod foot;
pub mod line_box;
pub mod matrix;
mod range;
pub mod range_bar;
mod ratios;
pub mod row;
mod table;

use super::lines::settings_lines;
use super::settings_now::{SettingsNow, settings_or_before};
use crate::t;
use crate::ui::components::{SlotLine, WarningSlot};
use crate::ui::state::State;
use announce::AnnounceSettings;
use conditions::ConditionBoxes;
use context::SettingsSheet;
use foot::SettingsFoot;
use leptos::prelude::*;
use matrix::SettingsMatrix;
use table::SettingsOfPumps;

/// The tab.
#[component]
pub fn PumpSettingsTab() -> impl IntoView {
    let state = expect_context::<State>();
    let now = Memo::new(move |before: Option<&SettingsNow>| settings_or_before(state, before));
    let sheet = SettingsSheet { now, open_figure: RwSignal::new(None), open_pump: RwSignal::new(None) };
    provide_context(sheet);
    // As they were at the last pause, so that nothing comes and goes between two keys.
    let lines = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if state.typing.get() {
            return;
        }
        let all = now.with(|now| settings_lines(state, now));
        if lines.with_untracked(|before| *before != all) {
            lines.set(all);
        }
    });
    let is_old = Memo::new(move |_| now.with(|now| now.old));
    view! {
        <section class="pump-settings-tab" class:old=move || is_old.get() aria-labelledby="line-section">
            <h2 id="line-section" class="out-of-sight" tabindex="-1">{t!("line-tab-settings")}</h2>
            <WarningSlot lines=lines/>
            <ConditionBoxes/>
            <SettingsOfPumps/>
            <SettingsMatrix/>
            <AnnounceSettings lines=lines/>
            <SettingsFoot lines=lines/>
        </section>
    }
}
