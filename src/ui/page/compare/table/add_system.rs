//! What the systems have in common, the reference, and the way to add a system.

use crate::browser::page;
use crate::domain::compare::side::MOST;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::compare::variable;
use crate::domain::{Field, Figure};
use crate::quantity::{Amount, Dimension, Unit, format};
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Menu, TextBox};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::systems::{SystemOffer, chosen, offered};
use crate::ui::page::compare::words::amount_text;
use crate::ui::text::unit_short;
use leptos::prelude::*;

/// The longest part of a name that is looked for.
const LONGEST_PART: usize = 100;

/// Fibre, board and line that all systems run on.
#[component]
pub fn Conditions() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let own = context.follow(|typed| typed.own_conditions);
    let told = move || {
        if own.get() {
            return t!("compare-own-conditions-hold");
        }
        context.shown.with(|shown| {
            let Some(case) = shown.systems.get(shown.reference).and_then(|system| system.case()) else {
                return String::new();
            };
            let state = context.state;
            let flow = case.figure(Figure::Fibre).map(|flow| t!("compare-oven-dry", flow = amount_text(state, flow)));
            let moisture = variable::amount(&case.input, Field::FibreMoisture).map(|amount| {
                let other = other_basis(context, amount);
                format!("{} ({other})", amount_text(state, amount))
            });
            let rest = [Field::Thickness, Field::BoardDensity]
                .into_iter()
                .filter_map(|field| variable::amount(&case.input, field).map(|amount| amount_text(state, amount)));
            let all: Vec<String> = flow.into_iter().chain(moisture).chain(rest).collect();
            t!("compare-conditions", values = all.join(" · "))
        })
    };
    view! { <p class="note conditions-line">{told}</p> }
}

/// A moisture on the basis that is not shown.
fn other_basis(context: CompareContext, amount: Amount) -> String {
    let units = context.state.units.get();
    let other = match units.unit(amount.kind) {
        Unit::PercentWetBasis => Unit::PercentDryBasis,
        _ if amount.kind.dimension() == Dimension::Moisture => Unit::PercentWetBasis,
        unit => unit,
    };
    format!("{}\u{a0}{}", format::amount(amount, other, units.mark), unit_short(other, ""))
}

/// The system that the others are compared with, and the menu that adds one.
#[component]
pub fn ReferenceChoice() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let offered = Memo::new(move |_| context.shown.with(|shown| shown.all_choices()));
    let now = Memo::new(move |_| {
        context.shown.with(|shown| shown.keys.get(shown.reference).map(SystemChoice::key).unwrap_or_default())
    });
    let choose = Callback::new(move |key: String| context.enter(|typed| typed.reference = SystemChoice::parse(&key)));
    let is_full = Memo::new(move |_| context.shown.with(|shown| shown.keys.len() >= MOST));
    view! {
        <Choice id="compare-reference" name=Signal::derive(|| t!("compare-reference")) labelled=true options=offered value=now on_choose=choose/>
        <Show when=move || !is_full.get() fallback=|| view! { <p class="note">{t!("compare-no-more")}</p> }>
            <Menu id="compare-add" label=t!("compare-add-system")><AddSystem/></Menu>
        </Show>
    }
}

/// What can be added; of many recipes a part of the name finds one.
#[component]
fn AddSystem() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let part = RwSignal::new(String::new());
    let next = RwSignal::new(String::new());
    let offer = Memo::new(move |_| {
        let mut offer = part.with(|part| offered(context.state, part));
        let there = context.shown.with(|shown| shown.keys.iter().map(SystemChoice::key).collect::<Vec<_>>());
        offer.choices.retain(|choice| !there.contains(&choice.value));
        offer
    });
    let options = Memo::new(move |_| offer.with(|offer| offer.choices.clone()));
    let now = Memo::new(move |_| {
        let wanted = next.get();
        options.with(|options| {
            let found = options.iter().find(|option: &&ChoiceOption| option.value == wanted).or(options.first());
            found.map(|option| option.value.clone()).unwrap_or_default()
        })
    });
    let said = move || {
        offer.with(|SystemOffer { choices, recipes, found, .. }| match () {
            () if choices.is_empty() => t!("compare-none-found"),
            () if recipes < found => t!("compare-offered", shown = *recipes, all = *found),
            () => String::new(),
        })
    };
    let is_many = Memo::new(move |_| offer.with(|offer| offer.many));
    let add = move |_| {
        if let Some(choice) = SystemChoice::parse(&now.get_untracked()) {
            let mut systems = untrack(|| chosen(context.state));
            systems.push(choice);
            context.enter(|typed| typed.systems = systems);
            page::focus("compare-add-open");
        }
    };
    view! {
        <Show when=move || is_many.get()>
            <TextBox
                id="compare-find"
                label=t!("compare-find")
                value=part
                longest=LONGEST_PART
                on_input=Callback::new(move |text| part.set(text))
                on_leave=Callback::new(|()| ())
            />
        </Show>
        <Choice
            id="compare-next"
            name=Signal::derive(|| t!("compare-system"))
            labelled=true
            options=options
            value=now
            on_choose=Callback::new(move |key| next.set(key))
        />
        <p class="note" role="status">{said}</p>
        <button type="button" class="primary" on:click=add>{t!("compare-add")}</button>
    }
}
