//! What is made: mat, board, moistures and press, each typed in place of the recipe's value or left to it.

use super::boxes::{SheetBox, units_at};
use super::context::WeighContext;
use super::pick::Pick;
use super::sheet_box::{BenchBox, BoxMessages};
use super::text::parts;
use crate::browser::page;
use crate::domain::balance::figure::Figure;
use crate::domain::recipe::draft::WaterWay;
use crate::domain::trial::WeighField;
use crate::domain::trial::weigh_sheet::draft::{SheetDraft, ThicknessWay};
use crate::domain::{Draft, Entry, work_out};
use crate::t;
use crate::ui::field::number_text::in_box;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

const FIELDS: &[WeighField] = &[
    WeighField::MatLength,
    WeighField::MatWidth,
    WeighField::Boards,
    WeighField::Thickness,
    WeighField::BoardDensity,
    WeighField::BoardMoisture,
    WeighField::FibreMoisture,
    WeighField::MatMoisture,
    WeighField::PressFactor,
];

/// The boxes.
#[component]
pub fn WeighInputs() -> impl IntoView {
    let state = expect_context::<State>();
    let boxes = FIELDS.iter().map(|field| SheetBox::Field(*field)).collect::<Vec<_>>();
    let is_pressed =
        Memo::new(move |_| state.bench.open.with(|open| open.trial.sheet.thickness_way == ThicknessWay::Pressed));
    let thickness =
        Signal::derive(move || if is_pressed.get() { t!("bench-pressed-thickness") } else { t!("bench-thickness") });
    view! {
        <section class="panel made-of" aria-label=t!("bench-inputs")>
            <fieldset>
                <legend>{t!("bench-mat")}</legend>
                <div class="row">
                    <OwnBox field=WeighField::MatLength label=t!("bench-length")/>
                    <OwnBox field=WeighField::MatWidth label=t!("bench-width")/>
                    <OwnBox field=WeighField::Boards label=t!("bench-boards")/>
                </div>
            </fieldset>
            <fieldset>
                <legend>{t!("bench-board")}</legend>
                <div class="row">
                    <div class="thickness">
                        <OwnBox field=WeighField::Thickness label=thickness/>
                    </div>
                    <OwnBox field=WeighField::BoardDensity label=t!("bench-density")/>
                    <OwnBox field=WeighField::BoardMoisture label=t!("bench-moisture")/>
                </div>
            </fieldset>
            <fieldset>
                <legend>{t!("bench-moistures")}</legend>
                <div class="row">
                    <OwnBox field=WeighField::FibreMoisture label=t!("bench-fibre")/>
                    <OwnBox field=WeighField::MatMoisture label=t!("bench-mat")/>
                </div>
            </fieldset>
            <fieldset>
                <legend>{t!("bench-press")}</legend>
                <div class="row">
                    <OwnBox field=WeighField::PressFactor label=t!("bench-press-factor")/>
                    <Pick
                        id="bench-thickness-way"
                        label=t!("bench-thickness-way")
                        all=ThicknessWay::ALL
                        words=words::bench::thickness_way
                        now=|sheet: &SheetDraft| sheet.thickness_way
                        put=|sheet: &mut SheetDraft, way| sheet.thickness_way = way
                    />
                </div>
            </fieldset>
            <BoxMessages boxes=boxes/>
        </section>
    }
}

/// What a box shows beside what was typed.
#[derive(Debug, Clone, PartialEq, Default)]
struct OwnValue {
    /// What the run of a series says, which nobody types over.
    fixed: Option<Entry>,
    /// What holds while it is blank.
    placeholder: String,
    /// Where the value comes from.
    aside: String,
    /// Whether something replaces the recipe's value.
    is_own: bool,
}

/// A box with where its value comes from, and the way back to the recipe's.
#[component]
fn OwnBox(
    /// The field.
    field: WeighField,
    /// Its label in sight.
    #[prop(into)]
    label: Signal<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    let which = SheetBox::Field(field);
    let own = Memo::new(move |_| own(state, sheet, field));
    let name = Memo::new(move |_| {
        state.bench.open.with(|open| words::bench::field(field, &open.trial.sheet).label.to_owned())
    });
    let is_changed = Memo::new(move |_| own.with(|own| own.is_own && own.fixed.is_none()));
    let reset = move |_| {
        let unit = untrack(|| which.entry(state)).unit;
        which.put(state, Entry::empty(unit));
        page::focus_field(&which.key());
    };
    view! {
        <div class="own-box" class:own=move || own.with(|own| own.is_own)>
            <BenchBox
                which=which
                label=label
                name=name
                placeholder=Signal::derive(move || own.with(|own| own.placeholder.clone()))
                aside=Signal::derive(move || own.with(|own| own.aside.clone()))
                fixed=Signal::derive(move || own.with(|own| own.fixed.clone()))
            />
            <Show when=move || is_changed.get()>
                <button type="button" class="link reset" aria-label=move || t!("bench-reset-of", name = name.get()) on:click=reset>
                    {t!("bench-reset")}
                </button>
            </Show>
        </div>
    }
}

fn own(state: State, context: WeighContext, field: WeighField) -> OwnValue {
    let desk = context.desk;
    desk.basis.with(|basis| {
        let (typed, recipe) = (basis.sheet.entry(field), &basis.recipe);
        let recipe_number = recipe_number(state, field, recipe, &basis.sheet);
        let run = u16::try_from(state.bench.run.get()).unwrap_or(0);
        let fixed = desk.made.with(|made| {
            let is_made = desk.planned.with(|planned| Some(planned.series.as_ref()?.run(run)?.made.is_some()))?;
            let in_run = value(field, &made.typed, &made.recipe);
            (is_made || !in_run.says_same(&value(field, &basis.sheet, recipe))).then_some(in_run)
        });
        if let Some(fixed) = fixed {
            let run_words = t!("bench-run-number", run = run);
            let aside = match &recipe_number {
                Some(number) if !number.is_empty() => {
                    format!("● {run_words} · {}", t!("bench-recipe-has", value = number.clone()))
                }
                _ => format!("● {run_words}"),
            };
            return OwnValue { fixed: Some(fixed), aside, is_own: true, ..OwnValue::default() };
        }
        match (typed.is_blank(), recipe_number) {
            (true, Some(number)) if number.is_empty() => {
                OwnValue { aside: t!("common-optional"), ..OwnValue::default() }
            }
            (true, Some(number)) => OwnValue { placeholder: number, aside: t!("bench-recipe"), ..OwnValue::default() },
            (true, None) => OwnValue { aside: t!("common-required"), ..OwnValue::default() },
            (false, None) if typed.preset => OwnValue { aside: t!("common-typical"), ..OwnValue::default() },
            (false, None) => OwnValue::default(),
            (false, Some(number)) if number.is_empty() => OwnValue { is_own: true, ..OwnValue::default() },
            (false, Some(number)) => {
                let aside = format!("● {} · {}", t!("bench-changed"), t!("bench-recipe-has", value = number));
                OwnValue { aside, is_own: true, ..OwnValue::default() }
            }
        }
    })
}

/// What is made in the end: what the sheet says, else the recipe.
fn value(field: WeighField, sheet: &SheetDraft, recipe: &Draft) -> Entry {
    let typed = sheet.entry(field);
    let of_recipe = field.stands_for().filter(|_| typed.is_blank()).and_then(|own| recipe.entry(own));
    of_recipe.unwrap_or(typed).clone()
}

/// The recipe's number in the unit of the box: blank where the recipe has none; `None` for what no recipe has.
fn recipe_number(state: State, field: WeighField, recipe: &Draft, sheet: &SheetDraft) -> Option<String> {
    if field == WeighField::PressFactor {
        let factor = work_out(recipe).case.and_then(|case| case.figure(Figure::PressFactor));
        return Some(factor.map(|factor| parts(state, factor).0).unwrap_or_default());
    }
    let own = field.stands_for()?;
    if field == WeighField::Thickness && sheet.thickness_way == ThicknessWay::Pressed {
        return None;
    }
    // Where the recipe does not dose its water to a mat moisture, that moisture is not what holds.
    if field == WeighField::MatMoisture && recipe.water_way != WaterWay::ToMatMoisture {
        return Some(String::new());
    }
    let units = units_at(state, SheetBox::Field(field));
    let text = recipe.entry(own).map(|entry| in_box(entry, field.kind(), &units));
    Some(text.unwrap_or_default())
}
