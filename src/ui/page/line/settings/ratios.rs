//! What is read less often of each pump: ratios for the controller, the fibre range it serves, how sure one catch is, its drift.

use super::context::{IN_FOLD, SettingsSheet, SheetFigure};
use super::figure::{SheetValue, SheetWorking};
use crate::domain::line::{LineFigure, PumpId};
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The fold.
#[component]
pub fn Ratios(
    /// Whether a figure is of the fold.
    belongs: fn(SheetFigure) -> bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let pumps = Memo::new(move |_| {
        sheet.now.with(|now| now.settings.iter().flat_map(|it| it.rows.iter().map(|row| row.pump)).collect::<Vec<_>>())
    });
    let note = Memo::new(move |_| {
        let ratio = |id: PumpId| {
            let (number, unit) = sheet.text(state, SheetFigure::Pump(id, LineFigure::PerFibre));
            format!("{} {number}\u{a0}{unit}", pump_name(state, id))
        };
        pumps.get().into_iter().map(ratio).collect::<Vec<_>>().join(" · ")
    });
    let head = move |figure: &LineFigure| {
        let words = words::line::figure(*figure);
        view! { <th scope="col">{words.label} <span class="sub">{words.note}</span></th> }
    };
    view! {
        <Fold id="ratios" title=t!("line-ratios") note=note>
            <div class="scroll" tabindex="0" role="region" aria-label=t!("line-ratios")>
                <table class="ratios" aria-label=t!("line-ratios")>
                    <thead><tr><th scope="col" class="l">{t!("line-pump")}</th>{IN_FOLD.iter().map(head).collect_view()}</tr></thead>
                    <tbody><For each=move || pumps.get() key=|id| id.0 let:id><RatioRow id=id/></For></tbody>
                </table>
            </div>
            <SheetWorking belongs=belongs/>
        </Fold>
    }
}

#[component]
fn RatioRow(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let cell = move |figure: &LineFigure| view! { <td><SheetValue figure=SheetFigure::Pump(id, *figure)/></td> };
    view! { <tr><th scope="row" class="l">{move || pump_name(state, id)}</th>{IN_FOLD.iter().map(cell).collect_view()}</tr> }
}
