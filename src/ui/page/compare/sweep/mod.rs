//! Sensitivity: all systems over the range of one input.

mod chosen;
mod plotted;

pub use plotted::{SweptResult, swept_at};

use super::chart_frame::{ChartExport, ChartFrame};
use super::choices::{KeyChoice, all_inputs, first, first_with, output_choices, output_of, picked};
use super::context::CompareContext;
use super::data_table::DataTable;
use super::message::GradedMessage;
use super::ranges::{RangeBoxes, RangeOf};
use super::words::{output_name, signed};
use crate::domain::Grade;
use crate::domain::compare::range::RangeError;
use crate::domain::compare::sweep::ranked_effects;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::text::{Message, lower_first, words};
use chosen::{FIRST_INPUT, FIRST_OUTPUT, INPUT, OUTPUT, RANGES};
use leptos::prelude::*;

/// Inputs that are ranked.
const RANKED: usize = 12;

/// The tab.
#[component]
pub fn SensitivityTab() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let width = RwSignal::new(0.0);
    let inputs = Memo::new(move |_| context.shown.with(|shown| all_inputs(shown)));
    let outputs = Memo::new(move |_| context.shown.with(|shown| first(shown).map(output_choices).unwrap_or_default()));
    let key = Memo::new(move |_| {
        let chosen = state.compare.typed.with(INPUT.get);
        inputs.with(|inputs| picked(&chosen, FIRST_INPUT, inputs))
    });
    // Another input has other boxes; while anything else changes they stay.
    let range = Memo::new(move |_| {
        let key = key.get();
        context.shown.with(|shown| first_with(shown, &key).and_then(|system| RangeOf::new(system, &key)))
    });
    let range_key = Memo::new(move |_| range.with(|range| range.as_ref().map(|range| range.key.clone())));
    let boxes = move || {
        range_key.track();
        range.get_untracked().map(|range| view! { <RangeBoxes range=range kept=RANGES id="sweep"/> })
    };
    let own = context.follow(|typed| typed.sweep.clone());
    let swept = Memo::new(move |_| {
        let width = width.get();
        if width > 0.0 { own.with(|own| swept_at(context, own, width)) } else { None }
    });
    let of = move |part: fn(&SweptResult) -> Vec<String>| {
        move || swept.with(|swept| swept.as_ref().and_then(|swept| swept.as_ref().ok()).map(part).unwrap_or_default())
    };
    let text = move |part: fn(&SweptResult) -> String| {
        move || swept.with(|swept| swept.as_ref().and_then(|swept| swept.as_ref().ok()).map(part).unwrap_or_default())
    };
    let picture = Memo::new(move |_| {
        swept.with(|swept| swept.as_ref().and_then(|swept| swept.as_ref().ok()).and_then(|swept| swept.picture.clone()))
    });
    let problem = move || {
        let error: Option<RangeError> =
            swept.with(|swept| swept.as_ref().and_then(|swept| swept.as_ref().err().copied()));
        error.map(|error| view! { <GradedMessage grade=Grade::Stop message=words::compare::no_range(error)/> })
    };
    let (limited, level) = (of(|swept| swept.limited.clone()), of(|swept| swept.level.clone()));
    let notes = move || {
        let say = |grade: Grade, what: String| view! { <GradedMessage grade=grade message=Message { what, fix: String::new() }/> };
        let limited = limited().into_iter().map(|what| say(Grade::Unusual, what)).collect_view();
        let level = level().into_iter().map(|what| say(Grade::Note, what)).collect_view();
        view! { {limited}{level} }
    };
    let is_empty = move || swept.with(|swept| matches!(swept, Some(Ok(_)))) && picture.with(Option::is_none);
    let table = move || {
        swept.with(|swept| {
            let swept = swept.as_ref()?.as_ref().ok()?;
            Some(view! { <DataTable name=t!("compare-sweep") head=swept.head.clone() rows=swept.rows.clone()/> })
        })
    };
    view! {
        <section class="verdict" role="status" aria-labelledby="sweep">
            <h2 id="sweep" class="out-of-sight" tabindex="-1">{t!("compare-sweep")}</h2>
            <p class="lead">{text(|swept| swept.lead.clone())}</p>
            <p>{text(|swept| swept.second.clone())}</p>
        </section>
        <section class="panel" aria-labelledby="sweep">
            <div class="given">
                <KeyChoice kept=OUTPUT label=t!("compare-result") prefer=FIRST_OUTPUT options=outputs/>
                <KeyChoice kept=INPUT label=t!("compare-input") prefer=FIRST_INPUT options=inputs/>
                {boxes}
                <div class="end"><ChartExport picture=picture name=t!("compare-sweep") id="sweep-export"/></div>
            </div>
            {problem}
            <ChartFrame picture=picture width=width/>
            <Show when=is_empty><p class="note">{t!("compare-no-drawing")}</p></Show>
            {notes}
            <Fold id="sweep-values" title=t!("compare-values") note=Signal::derive(|| t!("compare-values-note"))>{table}</Fold>
            <Fold id="sweep-ranked" title=t!("compare-ranked") note=Signal::derive(|| t!("compare-ranked-note"))><Ranked/></Fold>
        </section>
    }
}

/// The inputs of the reference by their effect on the figure.
#[component]
fn Ranked() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let own = context.follow(|typed| typed.sweep.output.clone());
    let rows = move || {
        context.shown.with(|shown| {
            let system = first(shown)?;
            let key = own.with(|own| picked(own, FIRST_OUTPUT, &output_choices(system)));
            let output = output_of(context, system, &key)?;
            let unit = state.unit(output.kind());
            let row = |(field, effect): (crate::domain::Field, f64)| {
                // A difference: only the scale of the unit counts.
                let change = unit.from_base(effect) - unit.from_base(0.0);
                vec![words::field_name(field, &system.draft), signed(state, change)]
            };
            let rows: Vec<Vec<String>> =
                ranked_effects(system.case()?, output).into_iter().take(RANKED).map(row).collect();
            let figure = super::words::with_unit_named(state, &output_name(output, &system.draft), output.kind());
            let head = vec![t!("compare-input"), t!("compare-effect", figure = lower_first(&figure))];
            Some(view! { <DataTable name=t!("compare-ranked") head=head rows=rows/> })
        })
    };
    view! { {rows} }
}
