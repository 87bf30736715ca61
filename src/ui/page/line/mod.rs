//! The line: what every pump has to be set to, first of all; then what really runs, and all that both rest on. One tab is
//! shown at a time, each one tap away.

mod catch_test;
mod changeover;
mod check;
mod context;
mod grid_box;
mod head;
pub mod lines;
mod parts;
pub mod settings;
pub mod settings_now;
pub mod settings_text;
mod tank;
mod worked;

pub use check::{computed_outside, readings_outside};

use crate::browser::{clock, page};
use crate::domain::Caution;
use crate::t;
use crate::ui::components::{Cautions, Tabs};
use crate::ui::state::State;
use crate::ui::state::line::LineSection;
use catch_test::CatchTestTab;
use changeover::ChangeoverTab;
use check::LineCheckTab;
use head::{ExampleLine, LineHead};
use leptos::prelude::*;
use settings::PumpSettingsTab;
use std::time::Duration;
use tank::TanksTab;

/// The page.
#[component]
pub fn LineSheet() -> impl IntoView {
    let state = expect_context::<State>();
    tick(state);
    let shown = Memo::new(move |_| state.line.section.get());
    on_cleanup(move || {
        // On a tablet at the line the page opens where an operator needs it.
        if page::matches("(pointer: coarse)") {
            state.line.show(LineSection::Sheet);
        }
    });
    view! {
        <div class="line-sheet line-page">
            <LineHead/>
            <ExampleLine/>
            <Tabs
                name=t!("line-tabs")
                tabs=LineSection::ALL.iter().map(|tab| tab_name(*tab)).collect()
                shown=shown
                on_choose=Callback::new(move |at| state.line.section.set(at))
            />
            {move || match LineSection::at(shown.get()) {
                LineSection::Sheet => view! { <PumpSettingsTab/> }.into_any(),
                LineSection::Running => view! { <LineCheckTab/> }.into_any(),
                LineSection::Pumps => view! { <CatchTestTab/> }.into_any(),
                LineSection::Tanks => view! { <TanksTab/> }.into_any(),
                LineSection::Change => view! { <ChangeoverTab/> }.into_any(),
            }}
            <Cautions all=vec![Caution::Advice]/>
        </div>
    }
}

/// The time goes on while the page is shown.
fn tick(state: State) {
    state.line.now.set(clock::now());
    if let Ok(handle) = set_interval_with_handle(move || state.line.now.set(clock::now()), Duration::from_secs(1)) {
        on_cleanup(move || handle.clear());
    }
}

fn tab_name(tab: LineSection) -> String {
    match tab {
        LineSection::Sheet => t!("line-tab-settings"),
        LineSection::Running => t!("line-tab-check"),
        LineSection::Pumps => t!("line-tab-pumps"),
        LineSection::Tanks => t!("line-tab-tanks"),
        LineSection::Change => t!("line-tab-changeover"),
    }
}

/// The names of all tabs, in the order of the page.
pub fn sections() -> Vec<String> {
    LineSection::ALL.iter().map(|tab| tab_name(*tab)).collect()
}
