//! Operating map: two inputs of one system at once, lines of equal value, and where it can be run.

mod chosen;
mod mapped;
mod region;

pub use mapped::{MappedResult, mapped_at};

use super::chart_frame::{ChartExport, ChartFrame};
use super::choices::{KeyChoice, KeySlot, SystemSelect, chosen_place, output_choices, picked, used_inputs};
use super::context::CompareContext;
use super::data_table::DataTable;
use super::message::GradedMessage;
use super::ranges::{RangeBoxes, RangeOf};
use crate::domain::Grade;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::text::words;
use chosen::{ACROSS, FIRST_ACROSS, FIRST_OUTPUT, FIRST_UP, OUTPUT, RANGES, SYSTEM, UP};
use leptos::prelude::*;
use region::FeasibleRegion;

/// The tab.
#[component]
pub fn MapTab() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let width = RwSignal::new(0.0);
    let place = chosen_place(context, SYSTEM);
    let inputs = Memo::new(move |_| {
        context.shown.with(|shown| shown.ready.get(place.get()).map(used_inputs).unwrap_or_default())
    });
    let outputs = Memo::new(move |_| {
        context.shown.with(|shown| shown.ready.get(place.get()).map(output_choices).unwrap_or_default())
    });
    let own = context.follow(|typed| typed.map.clone());
    let mapped = Memo::new(move |_| {
        let width = width.get();
        if width > 0.0 { own.with(|own| mapped_at(context, own, width)) } else { None }
    });
    let picture = Memo::new(move |_| {
        mapped.with(|mapped| {
            mapped.as_ref().and_then(|mapped| mapped.as_ref().ok()).and_then(|mapped| mapped.picture.clone())
        })
    });
    let text = move |part: fn(&MappedResult) -> String| {
        move || {
            mapped.with(|mapped| mapped.as_ref().and_then(|mapped| mapped.as_ref().ok()).map(part).unwrap_or_default())
        }
    };
    let problem = move || {
        mapped.with(|mapped| match mapped {
            Some(Err(error)) => {
                Some(view! { <GradedMessage grade=Grade::Stop message=words::compare::no_range(*error)/> })
            }
            _ => None,
        })
    };
    let is_empty = move || width.get() > 0.0 && picture.with(Option::is_none);
    let table = move || {
        mapped.with(|mapped| {
            let mapped = mapped.as_ref()?.as_ref().ok()?;
            Some(view! {
                <DataTable name=mapped.title.clone() head=mapped.head.clone() rows=mapped.rows.clone()/>
                <p class="note">{mapped.notes.join("; ")}</p>
            })
        })
    };
    view! {
        <section class="verdict" role="status" aria-labelledby="map">
            <h2 id="map" class="out-of-sight" tabindex="-1">{t!("compare-map")}</h2>
            <p class="lead">{text(|mapped| mapped.lead.clone())}</p>
            <p>{text(|mapped| mapped.second.clone())}</p>
        </section>
        <section class="panel" aria-labelledby="map">
            <div class="given">
                <SystemSelect kept=SYSTEM label=t!("compare-system") chosen=place/>
                <KeyChoice kept=OUTPUT label=t!("compare-result") prefer=FIRST_OUTPUT options=outputs/>
                <KeyChoice kept=ACROSS label=t!("compare-across") prefer=FIRST_ACROSS options=inputs/>
                <AxisBoxes kept=ACROSS first=FIRST_ACROSS place=place id="map-across"/>
                <KeyChoice kept=UP label=t!("compare-up") prefer=FIRST_UP options=inputs/>
                <AxisBoxes kept=UP first=FIRST_UP place=place id="map-up"/>
                <div class="end"><ChartExport picture=picture name=t!("compare-map") id="map-export"/></div>
            </div>
            {problem}
            <div class="map-two">
                <div>
                    <ChartFrame picture=picture width=width/>
                    <Show when=is_empty><p class="note">{t!("compare-no-map")}</p></Show>
                    <p class="note">{text(|mapped| mapped.obstacles.clone())}</p>
                </div>
                <FeasibleRegion/>
            </div>
            <Fold id="map-values" title=t!("compare-values") note=Signal::derive(|| t!("compare-map-values-note"))>{table}</Fold>
        </section>
    }
}

/// The boxes for the range of an axis. Another input has other boxes; while anything else changes they stay.
#[component]
fn AxisBoxes(kept: KeySlot, first: &'static str, place: Memo<usize>, id: &'static str) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let range = Memo::new(move |_| {
        let chosen = context.state.compare.typed.with(kept.get);
        context.shown.with(|shown| {
            let system = shown.ready.get(place.get())?;
            RangeOf::new(system, &picked(&chosen, first, &used_inputs(system)))
        })
    });
    let key = Memo::new(move |_| range.with(|range| range.as_ref().map(|range| range.key.clone())));
    move || {
        key.track();
        range.get_untracked().map(|range| view! { <RangeBoxes range=range kept=RANGES id=id/> })
    }
}
