//! A pump with its last catch test, its tests over time and its setup.

use super::cautions::CatchCautions;
use super::chart::CatchChart;
use super::context::OpenTest;
use super::earlier::EarlierTests;
use super::figures::LineFigures;
use super::grid::CatchGrid;
use super::setup::PumpSetup;
use crate::browser::page;
use crate::domain::line::{
    CalibrationField, CalibrationId, Fed, LineBook, LineField, PumpId, RowField, RowId, SettingUnit, examine,
};
use crate::t;
use crate::ui::page::line::settings::line_box::LineFieldBox;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The pump.
#[component]
pub fn PumpSection(
    /// The pump.
    id: PumpId,
    /// The scale of its drive.
    unit: SettingUnit,
) -> impl IntoView {
    let state = expect_context::<State>();
    let test = Memo::new(move |_| {
        state.line.book(|book| book.pump(id).and_then(|pump| pump.calibrations.last().map(|test| test.id)))
    });
    let examined = Memo::new(move |_| {
        let test = test.get()?;
        state.line.book(|book| examine(book, id, test))
    });
    let open = move |test| OpenTest { pump: id, unit, test, examined };
    let has_none = Memo::new(move |_| test.with(Option::is_none));
    // A pump that is new has to be set up first.
    let is_new = test.with_untracked(Option::is_none);
    view! {
        <section class="panel catch-test" aria-labelledby=format!("pump-{}", id.0)>
            <Show when=move || has_none.get()>
                <div class="test-head"><PumpHeading id=id/><NewTest id=id/></div>
                <p>{t!("catch-how")}</p>
            </Show>
            <For each=move || test.get().into_iter() key=|test: &CalibrationId| test.0 let:test>
                <LastTest open=open(test)/>
            </For>
        </section>
        <section class="panel folds" aria-label=t!("catch-more")>
            <For each=move || test.get().into_iter() key=|test: &CalibrationId| test.0 let:test>
                <EarlierTests open=open(test)/>
            </For>
            <PumpSetup id=id open=is_new/>
            <CatchCautions/>
        </section>
    }
}

/// The pump by its name, and what it delivers.
#[component]
fn PumpHeading(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let name = Memo::new(move |_| pump_name(state, id));
    let fed = Memo::new(move |_| {
        state.draft.with(|draft| {
            let fed = state.line.book(|book| book.pump(id).and_then(|pump| pump.feeds.within(draft)));
            fed.map(|fed| words::line::fed(fed, draft))
        })
    });
    let told = move || fed.get().unwrap_or_else(|| t!("line-name-not-in-recipe"));
    view! { <h3 id=format!("pump-{}", id.0) tabindex="-1">{move || name.get()} " " <span class="fed">{told}</span></h3> }
}

/// Starts a catch test, with the density of the last one or of the recipe to be checked.
#[component]
fn NewTest(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let start = move |_| {
        let (at, by) =
            (crate::browser::clock::now(), state.settings.with_untracked(|settings| settings.initials.clone()));
        let first_of = |test| LineField::Row(id, test, RowId(1), RowField::Setting);
        // One that was only begun is the new one.
        let begun = state.line.record.with_untracked(|record| {
            record.book.pump(id)?.calibrations.last().filter(|test| test.is_blank()).map(|test| test.id)
        });
        let mut first = begun.map(first_of);
        let start = |book: &mut LineBook| {
            let Some(pump) = book.pump_mut(id) else { return };
            let density = state.draft.with_untracked(|draft| match pump.feeds.within(draft)? {
                Fed::Liquid(liquid) => draft.liquid(liquid).map(|liquid| liquid.density.clone()),
                Fed::Thinning(_) | Fed::Water | Fed::FaceWater => None,
            });
            let test = pump.offer_calibration(at, density.as_ref());
            if let Some(draft) = pump.calibration_mut(test) {
                by.trim().clone_into(&mut draft.by);
            }
            first = Some(first_of(test));
        };
        if begun.is_none() {
            state.line.edit(start);
        }
        if let Some(first) = first {
            request_animation_frame(move || page::focus_field(&first.key()));
        }
    };
    view! { <button type="button" class="primary" on:click=start>{t!("catch-new-test")}</button> }
}

/// The way to be rid of a test, as of one that was begun by mistake.
#[component]
fn DeleteTest(
    /// The test.
    open: OpenTest,
) -> impl IntoView {
    let state = expect_context::<State>();
    let delete = move |_| {
        let deleted = state.line.change(|record| {
            if let Some(pump) = record.book.pump_mut(open.pump) {
                pump.calibrations.retain(|test| test.id != open.test);
            }
        });
        state.tell_undo(t!("catch-test-deleted"), move || state.line.take_back(&deleted));
        request_animation_frame(move || page::focus(&format!("pump-{}", open.pump.0)));
    };
    view! { <p><button type="button" class="link" on:click=delete>{t!("catch-delete-test")}</button></p> }
}

/// The last catch test, with what follows from it beside it.
#[component]
fn LastTest(
    /// The test.
    open: OpenTest,
) -> impl IntoView {
    let state = expect_context::<State>();
    provide_context(open);
    let OpenTest { pump: id, test, .. } = open;
    let told = Memo::new(move |_| {
        state.line.book(|book| {
            let test = book.calibration(id, test)?;
            let by = if test.by.is_empty() { String::new() } else { format!(" · {}", test.by) };
            Some(format!("{}{by}", when(test.at)))
        })
    });
    let field = move |part| LineField::Calibration(id, test, part);
    view! {
        <div class="two-parts">
            <div class="catches">
                <div class="test-head">
                    <PumpHeading id=id/>
                    <span class="note">{move || told.get().map(|told| t!("catch-test-of", time = told))}</span>
                    <NewTest id=id/>
                </div>
                <div class="test-liquid">
                    <LineFieldBox field=field(CalibrationField::Density) label=t!("catch-density")/>
                    <LineFieldBox field=field(CalibrationField::Temperature) label=t!("catch-temperature") class="narrow"/>
                </div>
                <CatchGrid/>
                <DeleteTest open=open/>
            </div>
            <div class="fit">
                <LineFigures/>
                <CatchChart/>
            </div>
        </div>
    }
}
