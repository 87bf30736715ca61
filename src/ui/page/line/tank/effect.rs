//! What a delivery changes at the pumps and in the balance.

use super::context::{DeliveryNow, TankSheet, amount, number};
use crate::domain::Grade;
use crate::domain::line::tanks::delivery::Moved;
use crate::domain::line::{Fed, RangeStatus, Setting};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::{Fold, Mark};
use crate::ui::page::line::settings::context::setting_parts;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::part::working::figure_name;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// A setting of a pump as number and unit; why there is none, without a unit.
pub fn setting_of(state: State, moved: &Moved, at: Option<Setting>, flow: f64) -> (String, String) {
    match at {
        _ if flow <= 0.0 => (t!("line-off"), String::new()),
        Some(at) => setting_parts(state, moved.pump, at, moved.unit),
        None => (t!("line-no-setting"), String::new()),
    }
}

/// From which setting to which, with the unit once.
pub fn setting_change(state: State, moved: &Moved) -> (String, String) {
    let (from, own_unit) = setting_of(state, moved, moved.before, moved.mass_before.value);
    let (to, unit) = setting_of(state, moved, moved.after, moved.mass_after.value);
    let from = if unit == own_unit { from } else { joined(&from, &own_unit) };
    (from, joined(&to, &unit))
}

/// The new settings, big.
#[component]
pub fn NewSettings() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let one = move |moved: Moved, now: &DeliveryNow| {
        let (number_after, unit) = setting_of(state, &moved, moved.after, moved.mass_after.value);
        let (before, _) = setting_change(state, &moved);
        let flows = t!(
            "delivery-flow",
            from = number(state, Kind::LiquidFlow, moved.mass_before.value),
            to = amount(state, Kind::LiquidFlow, moved.mass_after.value),
        );
        let reaches = now.result.as_ref().and_then(|delivered| delivered.blend.as_ref()?.reaches_nozzle);
        let own = Some(moved.fed) == now.liquid.map(Fed::Liquid);
        let reaches = reaches.filter(|_| own).map(|time| {
            view! { <span class="note">{t!("delivery-reaches", time = amount(state, Kind::RunTime, time.value))}</span> }
        });
        let status = (moved.status_after != RangeStatus::Within).then(|| {
            let words = words::line::range_status(moved.status_after);
            view! { <span class="sub flag"><Mark grade=Grade::Unusual/> " " {words}</span> }
        });
        view! {
            <div class="fig" data-moved=moved.pump.0.to_string()>
                <span class="label">{t!("delivery-new-setting", pump = pump_name(state, moved.pump))}</span>
                <span class="act-on">{number_after} " " <span class="u">{unit}</span></span>
                <span class="note">{t!("delivery-was", setting = before)} " · " {flows}</span>
                {reaches}
                {status}
            </div>
        }
    };
    let all = move || {
        sheet.delivery.with(|now| {
            let delivered = now.result.as_ref()?;
            if delivered.moved.is_empty() {
                return Some(view! { <p>{t!("delivery-nothing-moves")}</p> }.into_any());
            }
            let figs = delivered.moved.iter().map(|moved| one(*moved, now)).collect_view();
            Some(view! { <div class="figs new-settings">{figs}</div> }.into_any())
        })
    };
    view! { <div aria-live="polite">{all}</div> }
}

/// Every figure of the balance that changes, folded.
#[component]
pub fn ChangedFigures() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let changed = Memo::new(move |_| {
        sheet.delivery.with(|now| now.result.as_ref().map(|delivered| delivered.figures.clone()).unwrap_or_default())
    });
    let row = move |(figure, before, after)| {
        view! {
            <tr>
                <th scope="row" class="l">{figure_name(state, figure)}</th>
                <td>{with_unit(state, before, None)}</td>
                <td>{with_unit(state, after, None)}</td>
            </tr>
        }
    };
    view! {
        <Fold id="delivery-figures" title=t!("delivery-figures") note=Signal::derive(move || t!("delivery-count", count = changed.with(Vec::len)))>
            <div class="scroll" tabindex="0" role="region" aria-label=t!("delivery-figures")>
                <table class="results" aria-label=t!("delivery-figures")>
                    <thead><tr>
                        <th scope="col" class="l">{t!("delivery-figure")}</th>
                        <th scope="col">{t!("delivery-before")}</th>
                        <th scope="col">{t!("delivery-after")}</th>
                    </tr></thead>
                    <tbody>{move || changed.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </div>
        </Fold>
    }
}
