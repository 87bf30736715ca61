//! The economy of a change and the emission sheet: what is entered, and what comes of it.

use super::key_row::AgentBox;
use crate::domain::Entry;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::economy::field::{EconomyField, SystemEconomyField};
use crate::domain::compare::emission::{EmissionField, sheet};
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::limit::Limit;
use crate::quantity::Kind;
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::data_table::exported;
use crate::ui::page::compare::entry_box::CompareBox;
use crate::ui::page::compare::exports::economy_table;
use crate::ui::table::emission;
use crate::ui::text::{FieldWords, words};
use leptos::prelude::*;

/// One box of a sheet.
#[component]
fn SheetBox(
    /// Its key.
    key: String,
    /// Label and hint.
    words: FieldWords,
    /// What it measures.
    kind: Kind,
    /// What it may hold.
    limit: Limit,
    /// Its entry.
    entry: Memo<Entry>,
    /// Takes the entry.
    on_enter: Callback<Entry>,
) -> impl IntoView {
    view! {
        <CompareBox
            key=key
            label=Signal::stored(words.label.to_owned())
            name=Signal::stored(words.label.to_owned())
            kind=kind
            limit=limit
            entry=entry
            on_enter=on_enter
            hint=Signal::stored(words.hint.to_owned())
            class="sheet-box"
        />
    }
}

/// Prices and habits, and each system's costs, capacity and margin.
#[component]
pub fn EconomySection() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let field = move |field: &EconomyField| {
        let field = *field;
        let entry = Memo::new(move |_| state.compare.typed.with(|typed| typed.economy.entry(field).clone()));
        let enter = Callback::new(move |entry| {
            context.enter(|typed: &mut CompareDraft| *typed.economy.entry_mut(field) = entry)
        });
        view! {
            <SheetBox
                key=format!("economy-{}", field.key())
                words=words::compare::economy_field(field)
                kind=field.kind()
                limit=field.limit()
                entry=entry
                on_enter=enter
            />
        }
    };
    let keys = Memo::new(move |_| context.shown.with(|shown| shown.keys.clone()));
    let agent = move |key: SystemChoice| {
        let own = key.clone();
        let at = Memo::new(move |_| {
            context.shown.with(|shown| shown.keys.iter().position(|other| *other == own).unwrap_or_default())
        });
        let label = move || {
            let label = words::compare::system_economy_field(SystemEconomyField::ReleaseAgent).label;
            t!("compare-figure-of", figure = label, system = context.shown.with(|shown| shown.name(at.get())))
        };
        view! { <div class="sheet-box"><p class="label">{label}</p><AgentBox key=key at=at scope="economy-"/></div> }
    };
    let table = move || {
        let typed = state.compare.typed.get();
        context.shown.with(|shown| economy_table(context, &typed, shown).map(|table| exported(state, &table)))
    };
    view! {
        <p class="note">{t!("comparison-economy-hint")}</p>
        <div class="given">
            {EconomyField::ALL.iter().map(field).collect_view()}
            <For each=move || keys.get() key=SystemChoice::key children=agent/>
        </div>
        {table}
    }
}

/// Molar ratios, formaldehyde in air and perforator value, and the limits by market.
#[component]
pub fn EmissionSection() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let field = move |field: &EmissionField| {
        let field = *field;
        let entry = Memo::new(move |_| state.compare.typed.with(|typed| typed.emission.entry(field).clone()));
        let enter = Callback::new(move |entry| {
            context.enter(|typed: &mut CompareDraft| *typed.emission.entry_mut(field) = entry);
        });
        view! {
            <SheetBox
                key=format!("emission-{}", field.key())
                words=words::compare::emission_field(field)
                kind=field.kind()
                limit=field.limit()
                entry=entry
                on_enter=enter
            />
        }
    };
    let own = context.follow(|typed| typed.emission.clone());
    let table = move || own.with(|own| exported(state, &emission(&sheet(own))));
    view! {
        <p class="note">{t!("comparison-emission-caution")}</p>
        <div class="given">{EmissionField::ALL.iter().map(field).collect_view()}</div>
        {table}
    }
}
