//! What every pump is set to: one row a pump.

use super::context::{SettingsSheet, SheetFigure, is_in_fold};
use super::figure::SheetWorking;
use super::ratios::Ratios;
use super::row::PumpSettingRow;
use crate::quantity::{Kind, Unit};
use crate::t;
use crate::ui::components::UnitChoice;
use crate::ui::state::State;
use crate::ui::state::line::LineSection;
use crate::ui::text::unit_short;
use leptos::prelude::*;

/// The table with its fold, or what is missing for one.
#[component]
pub fn SettingsOfPumps() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let pumps = Memo::new(move |_| {
        let rows = sheet.now.with(|now| {
            let settings = now.settings.as_ref()?;
            Some(settings.rows.iter().map(|row| (row.pump, row.unit)).collect::<Vec<_>>())
        });
        rows.unwrap_or_default()
    });
    let is_empty = Memo::new(move |_| pumps.with(Vec::is_empty));
    let has_pumps = Memo::new(move |_| state.line.book(|book| !book.pumps.is_empty()));
    let nothing = move || {
        if has_pumps.get() {
            view! { <p>{t!("line-no-settings")}</p> }.into_any()
        } else {
            let add = move |_| state.line.show(LineSection::Pumps);
            view! {
                <p>{t!("line-no-pumps")} " " <button type="button" class="primary" on:click=add>{t!("line-add-pumps")}</button></p>
            }
            .into_any()
        }
    };
    view! {
        <section class="panel" aria-label=t!("line-set-to")>
            <Show when=move || !is_empty.get() fallback=nothing>
                <table class="grid pump-settings" aria-label=t!("line-tab-settings")>
                    <thead><tr>
                        <th scope="col" class="l">{t!("line-pump-liquid")}</th>
                        <th scope="col">{t!("line-set-to")}</th>
                        <td></td>
                        <th scope="col">{t!("line-interval")}</th>
                        <th scope="col" class="l range"><BarKey/></th>
                        <th scope="col" class="edge"><ColumnUnit name=t!("line-by-mass") kind=Kind::LiquidFlow/></th>
                        <th scope="col"><ColumnUnit name=t!("line-by-volume") kind=Kind::PumpFlow/></th>
                        <th scope="col">{t!("line-nozzles")}</th>
                        <th scope="col" class="l last-test">{t!("line-catch-test")}</th>
                        <td></td>
                    </tr></thead>
                    <tbody>
                        <For each=move || pumps.get() key=|(id, unit)| (id.0, *unit as u8) let((id, unit))>
                            <PumpSettingRow id=id unit=unit/>
                        </For>
                    </tbody>
                </table>
                <SheetWorking belongs=|figure| matches!(figure, SheetFigure::Pump(..)) && !is_in_fold(figure)/>
                <Ratios belongs=is_in_fold/>
            </Show>
        </section>
    }
}

/// The unit of a column, to choose.
#[component]
fn ColumnUnit(
    /// What the column has.
    #[prop(into)]
    name: Signal<String>,
    /// What it measures.
    kind: Kind,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = Memo::new(move |_| state.unit(kind));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| state.choose_unit(kind, unit));
    view! {
        <span class="out-of-sight">{move || name.get()}</span>
        <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/>
    }
}

/// What the drawing shows.
#[component]
fn BarKey() -> impl IntoView {
    view! {
        <svg class="range-bar key" viewBox="0 0 20 16" aria-hidden="true"><rect class="tested" y="3" width="20" height="10"></rect></svg>
        {t!("line-tested")}
        <svg class="range-bar key" viewBox="0 0 20 16" aria-hidden="true">
            <path class="allowed" d="M0 8H18"></path>
            <path class="limit" d="M19 0V16"></path>
        </svg>
        {t!("line-allowed")}
    }
}
