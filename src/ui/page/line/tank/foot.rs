//! The first tank to run empty, at the foot of a phone's screen.

use super::context::{TankNow, TankSheet, moment};
use crate::domain::Grade;
use crate::t;
use crate::ui::components::{Mark, SlotLine};
use leptos::prelude::*;

/// The foot.
#[component]
pub fn TanksFoot(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let sheet = expect_context::<TankSheet>();
    let first = move || {
        let now = sheet.now.get();
        let empty = sheet.tanks.with(|tanks| {
            let of = |tank: &TankNow| Some((tank.state?.empty_at(now)?, tank.name.clone()));
            tanks.iter().filter_map(of).min()
        });
        empty
            .map(|(at, name)| view! { <span>{t!("tank-first-empty", name = name)} " " <b>{moment(at, now)}</b></span> })
    };
    let warnings =
        Memo::new(move |_| lines.with(|lines| lines.iter().filter(|line| line.grade != Grade::Note).count()));
    view! {
        <div class="phone-foot">
            {first}
            <Show when=move || { warnings.get() > 0 }>
                <span class="flag"><Mark grade=Grade::Unusual/> " " <span class="out-of-sight">{t!("common-warnings")}</span> {move || warnings.get()}</span>
            </Show>
        </div>
    }
}
