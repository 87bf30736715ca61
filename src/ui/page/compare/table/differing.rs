//! The inputs in which the systems differ: liquids with their doses and prices, and what else is not the same.

use super::asks::{PriceBox, without_own_price};
use crate::domain::Grade;
use crate::domain::compare::side::SystemDifference;
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::data_table::exported;
use crate::ui::page::compare::message::GradedMessage;
use crate::ui::table::assumptions;
use crate::ui::text::words;
use leptos::prelude::*;

/// What is in the fold.
pub fn input_note() -> String {
    t!("compare-differing-note")
}

/// What differs beside the liquids, what is to be the same first.
pub fn differences(context: CompareContext) -> AnyView {
    let state = context.state;
    context.shown.with(|shown| {
        let Ok(side) = &shown.side else { return ().into_any() };
        let say = |difference: &SystemDifference| {
            let grade = if difference.is_fair() { Grade::Note } else { Grade::Unusual };
            let message = state.with_context(|context| words::compare::difference(difference, &shown.systems, context));
            view! { <GradedMessage grade=grade message=message/> }
        };
        if side.differences.is_empty() {
            return view! { <p class="note">{t!("compare-same")}</p> }.into_any();
        }
        side.differences.iter().map(say).collect_view().into_any()
    })
}

/// The fold.
#[component]
pub fn DifferingInputs() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let own = context.follow(|typed| typed.own_conditions);
    let prices = Memo::new(move |_| without_own_price(context));
    let choose = move |event| {
        let now = event_target_checked(&event);
        context.enter(|typed| typed.own_conditions = now);
    };
    let inputs = move || {
        context.shown.with(|shown| {
            let first = shown.systems.first()?;
            let table = context.with_draft(&first.draft, |context| assumptions(&shown.systems, context));
            Some(exported(context.state, &table))
        })
    };
    view! {
        <label class="tick">
            <input id="own-conditions" type="checkbox" prop:checked=move || own.get() on:change=choose/>
            {t!("compare-own-conditions")}
        </label>
        {move || differences(context)}
        <h3>{t!("compare-prices")}</h3>
        <p class="note">{t!("compare-prices-hint")}</p>
        <div class="given">
            <For each=move || prices.get() key=|price| price.key.clone() let:price><PriceBox price=price scope="own-"/></For>
        </div>
        {inputs}
    }
}
