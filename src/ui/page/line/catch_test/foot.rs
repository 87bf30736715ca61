//! What the pump is set to, at the foot of a phone's screen.

use super::context::CatchSheet;
use crate::domain::Grade;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::page::line::settings_text::{pump_name, setting_text, signed};
use crate::ui::state::State;
use leptos::prelude::*;

/// The foot.
#[component]
pub fn CatchFoot() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    let row = Memo::new(move |_| sheet.row(sheet.pump.get()?.0));
    let set = move || {
        let row = row.get()?;
        Some(view! { <span>{pump_name(state, row.pump)} " " <b>{setting_text(state, &row)}</b></span> })
    };
    let drift = move || {
        let drift = row.get()?.drift.filter(|drift| drift.certain == Some(true))?;
        let change = signed(state, drift.change?.value);
        Some(view! { <span class="flag"><Mark grade=Grade::Unusual/> " " {t!("line-drift", change = change)}</span> })
    };
    view! { <div class="phone-foot">{set} {drift}</div> }
}
