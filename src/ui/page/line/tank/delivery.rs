//! A new delivery: what its certificate changes, and the way to accept it.

use super::certificate::CertificateTable;
use super::context::{DeliveryNow, TankSheet};
use super::effect::{ChangedFigures, NewSettings};
use super::recipes::{DeliveryRecipes, RecipesThatUseIt, effects, selected, using};
use crate::domain::Grade;
use crate::domain::LiquidId;
use crate::domain::line::{Fed, LineFinding, LineFindingKind, LinePlace, TankId, on_line};
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Mark};
use crate::ui::page::line::context::with_context;
use crate::ui::state::State;
use crate::ui::text::{Message, words};
use leptos::prelude::*;

/// The section.
#[component]
pub fn DeliverySection() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let using = using(state);
    let recipes = DeliveryRecipes { using, effects: Memo::new(move |_| effects(state, sheet, using)) };
    provide_context(recipes);
    let options = Memo::new(move |_| places(state));
    let chosen = Memo::new(move |_| {
        sheet.delivery.with(|now| match (now.tank, now.liquid) {
            (Some(tank), _) => tank_value(tank),
            (None, Some(liquid)) => liquid_value(liquid),
            _ => String::new(),
        })
    });
    let choose = Callback::new(move |value: String| choose_place(state, &value));
    let is_chosen = Memo::new(move |_| sheet.delivery.with(|now| now.liquid.is_some()));
    let can_accept = Memo::new(move |_| {
        let any = !selected(state, using).is_empty();
        state.draft.with(|own| sheet.delivery.with(|now| now.can_accept(own, any)))
    });
    let accept = move |_| {
        // Pressed again and again it is accepted once: what was accepted leaves nothing to accept.
        if !can_accept.get_untracked() {
            return;
        }
        let delivered = sheet.delivery.with_untracked(|now| now.result.clone());
        if let Some(delivered) = delivered {
            let heads = untrack(move || selected(state, using));
            state.accept_delivery(&delivered, &heads);
        }
    };
    view! {
        <section class="panel delivery" aria-labelledby="delivery-title">
            <div class="delivery-head">
                <h2 id="delivery-title">{t!("delivery-title")}</h2>
                <label for="delivery-into" class="note">{t!("delivery-into")}</label>
                <Choice id="delivery-into" name=t!("delivery-into") options=options value=chosen on_choose=choose/>
                <Show when=move || is_chosen.get()>
                    <button
                        type="button"
                        class="primary accept"
                        aria-disabled=move || (!can_accept.get()).then_some("true")
                        on:click=accept
                    >
                        {t!("delivery-accept")}
                    </button>
                </Show>
            </div>
            <Show when=move || is_chosen.get() fallback=|| view! { <p>{t!("delivery-none")}</p> }>
                <div class="delivery-body">
                    <CertificateTable/>
                    <div class="delivery-effect" role="group" aria-label=t!("delivery-effects")>
                        <DeliveryFindings/>
                        <NewSettings/>
                        <RecipesThatUseIt/>
                        <p class="note">{t!("delivery-hint")}</p>
                        <ChangedFigures/>
                    </div>
                </div>
            </Show>
        </section>
    }
}

fn tank_value(id: TankId) -> String {
    format!("tank.{}", id.0)
}

fn liquid_value(id: LiquidId) -> String {
    format!("liquid.{}", id.0)
}

/// Where a delivery can go: the tanks that hold a liquid of the recipe, and the liquids that no tank holds.
fn places(state: State) -> Vec<ChoiceOption> {
    state.draft.with(|draft| {
        state.line.book(|book| {
            let mut all = vec![ChoiceOption::new("", t!("delivery-choose"))];
            let mut held = Vec::new();
            for tank in &book.tanks {
                if let Some(Fed::Liquid(id)) = tank.feeds.within(draft) {
                    held.push(id);
                    let tank_name = words::line::tank(tank).into_owned();
                    let words = t!("delivery-tank", tank = tank_name, liquid = state.liquid_name(id));
                    all.push(ChoiceOption::new(tank_value(tank.id), words));
                }
            }
            for liquid in draft.liquids.iter().filter(|liquid| !held.contains(&liquid.id)) {
                let words = t!("delivery-no-tank", liquid = state.liquid_name(liquid.id));
                all.push(ChoiceOption::new(liquid_value(liquid.id), words));
            }
            all
        })
    })
}

fn choose_place(state: State, value: &str) {
    let draft = state.draft.get_untracked();
    state.line.edit(|book| {
        let tank = book
            .tanks
            .iter()
            .find(|tank| tank_value(tank.id) == value)
            .map(|tank| (tank.id, tank.feeds.within(&draft)));
        (book.delivered, book.delivered_into) = match tank {
            Some((id, Some(Fed::Liquid(liquid)))) => (Some(liquid), Some(id)),
            _ => (draft.liquids.iter().map(|liquid| liquid.id).find(|id| liquid_value(*id) == value), None),
        };
    });
}

/// What there is to say that is not about one box.
#[component]
fn DeliveryFindings() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let told = Memo::new(move |_| {
        let off_line = state.shown.with(|shown| on_line(shown.case.as_ref()).err());
        sheet.delivery.with(|now: &DeliveryNow| {
            let after =
                now.result.as_ref().and_then(|delivered| delivered.after.as_ref()).map(|after| after.findings.clone());
            let all = now.findings.iter().cloned().chain(off_line).chain(after.unwrap_or_default());
            let at_its_box = |found: &LineFinding| {
                matches!(found.place, LinePlace::Field(_)) && matches!(found.what, LineFindingKind::Entry(_))
            };
            let said = |found: LineFinding| {
                let message = with_context(state, |context| words::line::finding(&found, context));
                (found.grade, message)
            };
            let mut told: Vec<_> = all.filter(|found| !at_its_box(found)).map(said).collect();
            told.dedup();
            told
        })
    });
    let unsolved = Memo::new(move |_| {
        sheet.delivery.with(|now| now.result.as_ref().is_some_and(|delivered| delivered.after.is_none()))
    });
    let one = |(grade, message): (Grade, Message)| {
        view! { <p><Mark grade=grade/> " " {message.what} " " {message.fix}</p> }
    };
    view! {
        <div class="delivery-findings">
            {move || unsolved.get().then(|| view! { <p><Mark grade=Grade::Stop/> " " {t!("delivery-unsolved")}</p> })}
            {move || told.get().into_iter().map(one).collect_view()}
        </div>
    }
}
