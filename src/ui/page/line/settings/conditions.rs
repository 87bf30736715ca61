//! At what the pumps are set: belt scale and fibre moisture as they are now, and what comes of them.

use super::context::{SettingsSheet, SheetFigure, parts};
use super::figure::{SheetValue, SheetWorking};
use super::line_box::{LineFieldBox, LineMessages};
use crate::browser::page;
use crate::domain::Figure;
use crate::domain::line::{ConditionField, LineField};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::components::Rank;
use crate::ui::page::line::settings_now::SettingsNow;
use crate::ui::part::save::when;
use crate::ui::state::State;
use leptos::prelude::*;

const BELT: LineField = LineField::Condition(ConditionField::Belt);
const MOISTURE: LineField = LineField::Condition(ConditionField::Moisture);

/// The boxes and the figures beside them.
#[component]
pub fn ConditionBoxes() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let belt_of = move |flow: fn(&SettingsNow) -> Option<f64>| {
        let flow = sheet.now.with(flow)?;
        let (number, unit) = parts(state, Amount::from_base(Kind::FibreFlow, flow));
        Some((number, unit))
    };
    let target = Memo::new(move |_| belt_of(|now| Some(now.target?.value)));
    let recipe_target = Memo::new(move |_| belt_of(|now| Some(now.recipe_target?.value)));
    let belt_blank = Signal::derive(move || target.get().map_or_else(String::new, |(number, _)| number));
    let belt_aside = Signal::derive(move || {
        target.get().map_or_else(String::new, |(number, _)| t!("line-belt-target", target = number))
    });
    let moisture_blank = Signal::derive(move || {
        let units = state.line_units_at(MOISTURE, Kind::Moisture);
        let moisture = state.shown.with(|shown| Some(shown.case.as_ref()?.input.fibre_moisture.dry_basis().value));
        moisture.map_or_else(String::new, |base| {
            let unit = units.unit(Kind::Moisture);
            // Six digits hide what a conversion leaves at the end.
            let number = (unit.from_base(base) * 1e4).round() / 1e4;
            format::editable(number, units.mark)
        })
    });
    let moved = move || {
        let ((to, unit), (from, _)) = target.get().zip(recipe_target.get())?;
        (to != from).then(|| t!("line-belt-moved", from = from, to = format!("{to}\u{a0}{unit}")))
    };
    view! {
        <section class="panel conditions" aria-label=t!("line-conditions")>
            <div class="condition-boxes">
                <LineFieldBox field=BELT label=t!("line-belt-scale") placeholder=belt_blank aside=belt_aside/>
                <LineFieldBox field=MOISTURE label=t!("line-fibre-moisture") placeholder=moisture_blank aside=t!("line-as-recipe")/>
            </div>
            <div class="figs">
                <div class="fig">
                    <span class="label">{t!("line-fibre-oven-dry")}</span>
                    <SheetValue figure=SheetFigure::Recipe(Figure::Fibre) rank=Rank::Lead/>
                    <span class="note"><RecipeFibre/></span>
                </div>
                <div class="fig">
                    <span class="label">{t!("line-mat-weight")}</span>
                    <SheetValue figure=SheetFigure::Recipe(Figure::MatWet) rank=Rank::Lead/>
                    <span class="note figure-notes">
                        <span>{t!("line-oven-dry")} " " <SheetValue figure=SheetFigure::Recipe(Figure::MatOvenDry)/></span>
                    </span>
                </div>
                <div class="fig">
                    <span class="label">{t!("line-speed")}</span>
                    <SheetValue figure=SheetFigure::Recipe(Figure::LineSpeed) rank=Rank::Lead/>
                    <PressFactor/>
                </div>
            </div>
            <div class="box-messages">
                <LineMessages fields=&[BELT, MOISTURE]/>
                <p class="moved" role="status">{moved}</p>
                <AsRecipe/>
            </div>
            <SheetWorking belongs=|figure| matches!(figure, SheetFigure::Recipe(_))/>
        </section>
    }
}

/// The recipe's oven-dry fibre beside that of the belt scale.
#[component]
fn RecipeFibre() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let own = Memo::new(move |_| {
        let fibre = state.shown.with(|shown| shown.case.as_ref()?.figure(Figure::Fibre))?;
        Some(parts(state, fibre).0)
    });
    let now = Memo::new(move |_| sheet.text(state, SheetFigure::Recipe(Figure::Fibre)).0);
    move || match own.get() {
        Some(own) if own == now.get() => t!("line-as-recipe"),
        Some(own) => t!("line-recipe-has", value = own),
        None => String::new(),
    }
}

/// The press factor, where the recipe has a press length.
#[component]
fn PressFactor() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    const FACTOR: SheetFigure = SheetFigure::Recipe(Figure::PressFactor);
    let is_there = Memo::new(move |_| !sheet.text(state, FACTOR).0.is_empty());
    view! {
        <span class="note figure-notes">
            <span hidden=move || !is_there.get()>{t!("line-press-factor")} " " <SheetValue figure=FACTOR/></span>
        </span>
    }
}

/// When the entries were made, and the way back to the recipe's.
#[component]
fn AsRecipe() -> impl IntoView {
    let state = expect_context::<State>();
    let entered = Memo::new(move |_| {
        state.line.book(|book| {
            let is_typed = ConditionField::ALL.iter().any(|part| !book.conditions.entry(*part).is_blank());
            book.conditions_on.as_ref().filter(|_| is_typed).map(|on| on.at)
        })
    });
    let clear = move |_| {
        let cleared = state.line.change(|record| {
            record.book.conditions = Default::default();
            record.book.conditions_on = None;
        });
        state.tell_undo(t!("line-conditions-cleared"), move || state.line.take_back(&cleared));
        page::focus_field(&BELT.key());
    };
    move || {
        entered.get().map(|at| {
            view! {
                <p class="note">
                    {t!("line-entered-at", time = when(at))}
                    " "
                    <button type="button" class="link" on:click=clear>{t!("line-clear-conditions")}</button>
                </p>
            }
        })
    }
}
