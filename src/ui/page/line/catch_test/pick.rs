//! The pumps, one of which is shown.

use super::context::CatchSheet;
use crate::browser::{clock, page};
use crate::domain::Grade;
use crate::domain::line::{Feeds, PumpId, SettingUnit};
use crate::t;
use crate::ui::components::Mark;
use crate::ui::page::line::parts::ties;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::state::State;
use leptos::prelude::*;

/// A button a pump, and the one to add another.
#[component]
pub fn PumpPick() -> impl IntoView {
    let state = expect_context::<State>();
    let pumps = Memo::new(move |_| state.line.book(|book| book.pumps.iter().map(|pump| pump.id).collect::<Vec<_>>()));
    let add = move |_| {
        // What has no pump yet comes first.
        let free = state.line.record.with_untracked(|record| {
            let taken = |feeds: &Feeds| record.book.pumps.iter().any(|pump| pump.feeds.same(feeds));
            ties(state, None).into_iter().map(|(feeds, _)| feeds).find(|feeds| !taken(feeds))
        });
        let mut added = None;
        state.line.edit(|book| added = Some(book.add_pump(free.unwrap_or(Feeds::Water), SettingUnit::Percent)));
        if let Some(id) = added {
            state.line.pump.set(Some(id));
            request_animation_frame(move || page::focus(&format!("pump-name-{}", id.0)));
        }
    };
    view! {
        <div class="pump-pick">
            <div class="pump-choices" role="group" aria-label=t!("catch-pumps")>
                <For each=move || pumps.get() key=|id| id.0 let:id><PumpButton id=id/></For>
            </div>
            <button type="button" class="bare" id="add-pump" on:click=add>{t!("catch-add-pump")}</button>
        </div>
        <Show when=move || pumps.with(Vec::is_empty)>
            <p class="panel">{t!("catch-no-pumps")}</p>
        </Show>
    }
}

/// A pump: its name, what it delivers, and its last test or what is wrong with it.
#[component]
fn PumpButton(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    let name = Memo::new(move |_| pump_name(state, id));
    let is_shown = Memo::new(move |_| sheet.pump.get().is_some_and(|(shown, _)| shown == id));
    let last = Memo::new(move |_| {
        state.line.checked.with(|line| line.pump(id).and_then(|pump| pump.last().map(|test| clock::date(test.at))))
    });
    let flag = Memo::new(move |_| {
        let row = sheet.row(id);
        let drifted = row.and_then(|row| row.drift).is_some_and(|drift| drift.certain == Some(true));
        let faulty = state.line.checked.with(|line| line.pump(id).is_some_and(|pump| pump.faulty_test));
        match (faulty, drifted) {
            (true, _) => Some(t!("catch-incomplete")),
            (_, true) => Some(t!("catch-drift")),
            _ => None,
        }
    });
    let told = move || match (flag.get(), last.get()) {
        (Some(flag), _) => {
            view! { <span class="flag"><Mark grade=Grade::Unusual/> <span class="words">{flag}</span></span> }
                .into_any()
        }
        (None, Some(date)) => view! { <span class="note words">{date}</span> }.into_any(),
        (None, None) => view! { <span class="note words">{t!("catch-no-test")}</span> }.into_any(),
    };
    view! {
        <button
            type="button"
            aria-pressed=move || if is_shown.get() { "true" } else { "false" }
            on:click=move |_| state.line.pump.set(Some(id))
        >
            <span class="name">{move || name.get()}</span>
            " "
            {told}
        </button>
    }
}
