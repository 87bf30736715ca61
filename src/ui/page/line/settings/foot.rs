//! What goes with the settings, at the foot of a phone's screen.

use super::context::{SettingsSheet, SheetFigure};
use crate::domain::{Figure, Grade};
use crate::t;
use crate::ui::components::{Mark, SlotLine};
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use leptos::prelude::*;

/// Mat weight, line speed and the number of warnings, where a narrow screen has no room for them beside the boxes.
#[component]
pub fn SettingsFoot(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let figure = move |figure: Figure| {
        Memo::new(move |_| match sheet.text(state, SheetFigure::Recipe(figure)) {
            (number, _) if number.is_empty() => "–".to_owned(),
            (number, unit) => joined(&number, &unit),
        })
    };
    let (mat, speed) = (figure(Figure::MatWet), figure(Figure::LineSpeed));
    let warnings =
        Memo::new(move |_| lines.with(|lines| lines.iter().filter(|line| line.grade != Grade::Note).count()));
    view! {
        <div class="phone-foot">
            <span>{t!("line-mat")} " " <b>{move || mat.get()}</b></span>
            <span>{t!("line-title")} " " <b>{move || speed.get()}</b></span>
            <Show when=move || { warnings.get() > 0 }>
                <span class="flag"><Mark grade=Grade::Unusual/> " " <span class="out-of-sight">{t!("common-warnings")}</span> {move || warnings.get()}</span>
            </Show>
        </div>
    }
}
