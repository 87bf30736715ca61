//! Prices that are missing, asked for below the cost.

use crate::browser::page;
use crate::domain::compare::price::{price_key, price_of};
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::limit::Limit;
use crate::domain::recipe::limit;
use crate::domain::{Entry, Field, LiquidDraft, LiquidField, Product};
use crate::quantity::{Kind, Unit};
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::entry_box::CompareBox;
use crate::ui::part::on_recipe::on_recipe;
use crate::ui::text::words;
use leptos::prelude::*;

/// A price to ask for.
#[derive(Debug, Clone, PartialEq)]
pub struct AskedPrice {
    /// The liquid's key.
    pub key: String,
    /// The liquid's name.
    pub name: String,
    /// What the price may be.
    pub limit: Limit,
}

fn asked(liquid: &LiquidDraft) -> AskedPrice {
    AskedPrice {
        key: price_key(liquid),
        name: words::liquid(liquid).into_owned(),
        limit: limit::liquid(liquid, LiquidField::Price, false, Product::default()),
    }
}

/// The liquids whose price is missing in these systems, each once.
fn missing<'a>(systems: impl Iterator<Item = &'a ComparedSystem>) -> Vec<AskedPrice> {
    let mut found: Vec<AskedPrice> = Vec::new();
    for system in systems {
        for field in system.unpriced() {
            let Field::Liquid(id, LiquidField::Price) = field else { continue };
            let Some(liquid) = system.draft.liquid(id) else { continue };
            if !found.iter().any(|other| other.key == price_key(liquid)) {
                found.push(asked(liquid));
            }
        }
    }
    found
}

/// The liquids that have no price where they come from, each once.
pub fn without_own_price(context: CompareContext) -> Vec<AskedPrice> {
    let typed = context.state.compare.typed.get();
    let open = context.base.get();
    let mut found: Vec<AskedPrice> = Vec::new();
    context.shown.with(|shown| {
        for liquid in shown.systems.iter().flat_map(|system| &system.draft.liquids) {
            let filled = || liquid.price == price_of(&typed, &open, liquid);
            let is_there = found.iter().any(|other| other.key == price_key(liquid));
            if !is_there && (liquid.price.is_blank() || filled()) {
                found.push(asked(liquid));
            }
        }
    });
    found
}

/// Prices to ask for. One that was asked for stays while the tab is open, so that nothing goes away under the fingers.
fn asked_for(context: CompareContext, of: Signal<Vec<SystemChoice>>) -> Memo<Vec<AskedPrice>> {
    Memo::new(move |before: Option<&Vec<AskedPrice>>| {
        let of = of.get();
        context.shown.with(|shown| {
            let systems =
                || shown.keys.iter().zip(&shown.systems).filter(|(key, _)| of.contains(key)).map(|(_, system)| system);
            let mut all = missing(systems());
            let is_used = |price: &&AskedPrice| {
                systems().flat_map(|system| &system.draft.liquids).any(|liquid| price_key(liquid) == price.key)
            };
            let kept: Vec<AskedPrice> = before.into_iter().flatten().filter(is_used).cloned().collect();
            all.retain(|price| !kept.iter().any(|other| other.key == price.key));
            kept.into_iter().chain(all).collect()
        })
    })
}

/// The boxes of missing prices of some systems, and the way to the price of the fibre.
#[component]
pub fn MissingPrices(
    /// The systems.
    #[prop(into)]
    systems: Signal<Vec<SystemChoice>>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let prices = asked_for(context, systems);
    let is_fibre = Memo::new(move |_| {
        context.shown.with(|shown| shown.systems.iter().any(|system| system.unpriced().contains(&Field::FibrePrice)))
    });
    let go = move |_| on_recipe(context.state, || page::focus_field(&Field::FibrePrice.key()));
    view! {
        <Show when=move || is_fibre.get() || !prices.with(Vec::is_empty)>
            <div class="asks-line">
                <span class="note">{t!("compare-prices-missing")}</span>
                <For each=move || prices.get() key=|price| price.key.clone() let:price><PriceBox price=price scope=""/></For>
                <Show when=move || is_fibre.get()>
                    <button type="button" class="link" on:click=go>{t!("compare-fibre-price-missing")}</button>
                </Show>
            </div>
        </Show>
    }
}

/// The row with the boxes below the cost.
#[component]
pub fn PriceAsks(
    /// How many columns the table has.
    #[prop(into)]
    columns: Signal<usize>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let systems = Memo::new(move |_| context.shown.with(|shown| shown.keys.clone()));
    view! {
        <tr class="asks"><td colspan=move || columns.get().to_string()><MissingPrices systems=systems/></td></tr>
    }
}

/// The price of a liquid, for this comparison.
#[component]
pub fn PriceBox(
    /// What is asked for.
    price: AskedPrice,
    /// What comes before the key of the box, where it is shown a second time.
    scope: &'static str,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let AskedPrice { key, name, limit } = price;
    let (own, put) = (key.clone(), key.clone());
    let entry = Memo::new(move |_| {
        let liquid = context.shown.with(|shown| {
            let mut liquids = shown.systems.iter().flat_map(|system| &system.draft.liquids);
            liquids.find(|liquid| price_key(liquid) == own).cloned()
        });
        context.state.compare.typed.with(|typed| match liquid {
            Some(liquid) => context.base.with(|base| price_of(typed, base, &liquid)),
            None => Entry::empty(Unit::PerTonne),
        })
    });
    let enter = Callback::new(move |entry: Entry| context.enter(|typed| _ = typed.prices.insert(put.clone(), entry)));
    let hint = Signal::derive(move || if entry.with(Entry::is_blank) { t!("common-required") } else { String::new() });
    let full = t!("compare-price-of", liquid = name);
    view! {
        <CompareBox
            key=format!("{scope}price-{key}")
            label=Signal::stored(full.clone())
            name=Signal::stored(full)
            kind=Kind::Price
            limit=limit
            entry=entry
            on_enter=enter
            hint=hint
            class="want"
        />
    }
}
