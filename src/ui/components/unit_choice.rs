//! The unit beside a box or at the head of a column.

use crate::quantity::{Kind, Unit};
use crate::t;
use leptos::prelude::*;

/// The unit: to choose where the kind has several, else as a text.
#[component]
pub fn UnitChoice(
    /// What is measured.
    #[prop(into)]
    kind: Signal<Kind>,
    /// The unit shown.
    #[prop(into)]
    unit: Signal<Unit>,
    /// How a unit is written, with the currency where it is money.
    #[prop(into)]
    symbol: Callback<Unit, String>,
    /// Whose unit it is.
    #[prop(into)]
    name: Signal<String>,
    /// Hears of another choice.
    on_choose: Callback<Unit>,
) -> impl IntoView {
    let several = Memo::new(move |_| kind.get().units().count() > 1);
    let options = move || {
        let option = |each: Unit| {
            view! {
                <option value=each.symbol() prop:selected=move || unit.get() == each>
                    {symbol.run(each)}
                </option>
            }
        };
        kind.get().units().map(option).collect_view()
    };
    let choose = move |event| {
        if let Some(unit) = Unit::from_symbol(&event_target_value(&event)) {
            on_choose.run(unit);
        }
    };
    move || {
        if several.get() {
            view! {
                <select class="unit" aria-label=move || t!("common-unit-of", name = name.get()) on:change=choose>
                    {options}
                </select>
            }
            .into_any()
        } else {
            view! { <span class="unit">{move || symbol.run(unit.get())}</span> }.into_any()
        }
    }
}
