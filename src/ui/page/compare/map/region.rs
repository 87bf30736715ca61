//! From where to where each system can run, along each axis of the map by itself.

use super::mapped::axes;
use crate::domain::compare::number_key::{number_key, number_of};
use crate::domain::compare::sweep::{Axis, EDGE, feasible_stretches};
use crate::quantity::{Kind, format};
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::glyph::SystemGlyph;
use crate::ui::page::compare::words::with_unit_named;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// Points along an axis.
const POINTS: usize = 81;

/// The table.
#[component]
pub fn FeasibleRegion() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let own = context.follow(|typed| typed.map.clone());
    let table = move || {
        own.with(|own| {
            context.shown.with(|shown| {
                let chosen = shown.ready.get(shown.ready_at(own.system.as_ref()))?;
                let (x, y) = axes(own, chosen, POINTS)?.ok()?;
                let kinds = [chosen.draft.kind(x.field), chosen.draft.kind(y.field)];
                let head = [(x, kinds[0]), (y, kinds[1])].map(|(axis, kind)| {
                    with_unit_named(state, &words::field_name(axis.field, &chosen.draft), kind)
                });
                let row = |(system, place): (&crate::domain::compare::side::ComparedSystem, &usize)| {
                    let along = |axis: &Axis, kind: Kind| {
                        let case = system.case()?;
                        // The same liquid has another place in another system.
                        let field = number_of(&system.draft, case, &number_key(&chosen.draft, axis.field))?;
                        Some(stretches(state, &feasible_stretches(case, &Axis { field, ..*axis }), axis, kind))
                    };
                    let cell = |axis: &Axis, kind: Kind| along(axis, kind).unwrap_or_else(|| "–".to_owned());
                    view! {
                        <tr>
                            <th scope="row" class="l">
                                <SystemGlyph at=*place is_reference={*place == shown.reference}/> " " {shown.name(*place)}
                            </th>
                            <td>{cell(&x, kinds[0])}</td>
                            <td>{cell(&y, kinds[1])}</td>
                        </tr>
                    }
                };
                let rows = shown.ready.iter().zip(&shown.places).map(row).collect_view();
                let [across, up] = head;
                Some(view! {
                    <table class="figures-table region" aria-label=t!("compare-region")>
                        <thead><tr><th scope="col" class="l">{t!("compare-system")}</th><th scope="col">{across}</th><th scope="col">{up}</th></tr></thead>
                        <tbody>{rows}</tbody>
                    </table>
                })
            })
        })
    };
    view! {
        <section aria-labelledby="region">
            <h3 id="region">{t!("compare-region")}</h3>
            {table}
            <p class="note">{t!("compare-region-note")}</p>
        </section>
    }
}

/// "2.0 to 4.48", several joined; "none".
fn stretches(state: State, found: &[(f64, f64)], axis: &Axis, kind: Kind) -> String {
    let units = state.units.get();
    let unit = units.unit(kind);
    // An edge is narrowed down to a thousandth of the axis: more digits say nothing.
    let width = (unit.from_base(axis.to) - unit.from_base(axis.from)).abs() * 5.0 * EDGE;
    let step = 10_f64.powf(width.log10().floor());
    let number = |base: f64| format::in_steps((unit.from_base(base) / step).round() * step, step.min(1.0), units.mark);
    let all: Vec<String> =
        found.iter().map(|(from, to)| t!("compare-from-to", from = number(*from), to = number(*to))).collect();
    if all.is_empty() { t!("compare-none") } else { all.join(", ") }
}
