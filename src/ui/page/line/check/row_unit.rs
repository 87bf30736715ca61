//! The unit of a row. That of a pump's flow also says how its meter reads: by mass or by volume.

use super::now::field_of;
use crate::domain::line::{LineField, PumpField, PumpId, ReadingWay, RunFigure};
use crate::quantity::{Kind, Unit};
use crate::t;
use crate::ui::components::UnitChoice;
use crate::ui::state::State;
use crate::ui::text::unit_short;
use leptos::prelude::*;

/// The unit, to choose.
#[component]
pub fn RowUnit(
    /// The row.
    figure: RunFigure,
    /// What it measures.
    kind: Memo<Kind>,
    /// The unit shown.
    unit: Memo<Unit>,
    /// Whose unit it is.
    name: Memo<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| match field_of(figure) {
        Some(field) => state.choose_line_unit(field, unit),
        None => state.choose_unit(kind.get_untracked(), unit),
    });
    match figure {
        RunFigure::Flow(id) => view! { <FlowUnit id=id unit=unit name=name/> }.into_any(),
        _ => view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }.into_any(),
    }
}

/// The unit of a pump's flow meter.
#[component]
fn FlowUnit(
    /// The pump.
    id: PumpId,
    /// The unit shown.
    unit: Memo<Unit>,
    /// Whose unit it is.
    name: Memo<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let choose = move |event| {
        let Some(unit) = Unit::from_symbol(&event_target_value(&event)) else { return };
        let way = if Kind::PumpFlow.units().any(|each| each == unit) {
            ReadingWay::VolumeMeter
        } else {
            ReadingWay::MassMeter
        };
        let field = LineField::Pump(id, PumpField::Reading);
        let (before, text) = state.line.record.with_untracked(|record| {
            let text = record.book.entry(field).map(|entry| entry.text.clone()).unwrap_or_default();
            (record.book.pump(id).map(|pump| pump.reading_way), text)
        });
        if before.is_some_and(|before| before != way) {
            // A number that was just typed was meant in this unit; an older one is of another kind, and goes.
            let is_meant = state.line.typed_last.get_value() == Some(field);
            state.line.edit(|book| {
                if let Some(pump) = book.pump_mut(id) {
                    pump.set_reading_way(way);
                }
            });
            if is_meant {
                state.enter_line(field, &text, unit);
            }
        }
        state.choose_line_unit(field, unit);
    };
    let option = move |each: Unit| {
        view! { <option value=each.symbol() prop:selected=move || unit.get() == each>{unit_short(each, "")}</option> }
    };
    view! {
        <select class="unit" aria-label=move || t!("common-unit-of", name = name.get()) on:change=choose>
            <optgroup label=t!("check-by-mass")>{Kind::LiquidFlow.units().map(option).collect_view()}</optgroup>
            <optgroup label=t!("check-by-volume")>{Kind::PumpFlow.units().map(option).collect_view()}</optgroup>
        </select>
    }
}
