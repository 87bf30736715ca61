//! What a binder system consists of, in the units chosen.

use crate::domain::{Draft, Entry, LiquidDraft, LiquidField};
use crate::quantity::number::read;
use crate::quantity::{Kind, format};
use crate::t;
use crate::ui::field::number_text::in_box;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, unit_shown, words};
use leptos::prelude::*;

/// "UF resin 12 % · Wax emulsion 1 %"
pub fn summary(state: State, liquids: &[LiquidDraft]) -> String {
    let liquid = |liquid: &LiquidDraft| {
        let dose = shown(state, &liquid.dose, LiquidField::Dose.kind(liquid.dose_way));
        format!("{} {dose}", words::liquid(liquid))
    };
    liquids.iter().map(liquid).collect::<Vec<_>>().join(" · ")
}

/// The liquids with their values and where those come from.
#[component]
pub fn LiquidTable(
    /// The name of the system.
    name: String,
    /// Its liquids.
    liquids: Vec<LiquidDraft>,
) -> impl IntoView {
    let state = expect_context::<State>();
    // Doses name the liquids that they are on.
    let draft = Draft { liquids: liquids.clone(), ..Draft::default() };
    let row = move |liquid: LiquidDraft| {
        let on = words::dose_way(liquid.dose_way, &draft).into_owned();
        let source = liquid.source.trim();
        let source = if source.is_empty() { t!("library-no-source") } else { source.to_owned() };
        let (called, role) = (words::liquid(&liquid).into_owned(), words::role(liquid.role));
        let LiquidDraft { dose, dose_way, solids, spray_solids, density, .. } = liquid;
        let thinned = (!spray_solids.is_blank()).then(|| {
            view! { <span class="sub">{move || t!("library-thinned-to", solids = shown(state, &spray_solids, Kind::Solids))}</span> }
        });
        view! {
            <tr>
                <th scope="row" class="l">{called} <span class="sub">{role}</span></th>
                <td>{move || shown(state, &dose, LiquidField::Dose.kind(dose_way))} <span class="sub">{on}</span></td>
                <td>{move || shown(state, &solids, Kind::Solids)} {thinned}</td>
                <td>{move || shown(state, &density, Kind::LiquidDensity)}</td>
                <td class="l source">{source}</td>
            </tr>
        }
    };
    let region = name.clone();
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=region>
            <table class="results of-system" aria-label=name>
                <thead>
                    <tr>
                        <th scope="col" class="l">{t!("library-liquid")}</th>
                        <th scope="col">{t!("library-dose")}</th>
                        <th scope="col">{t!("library-solids")}</th>
                        <th scope="col">{t!("library-liquid-density")}</th>
                        <th scope="col" class="l">{t!("common-source")}</th>
                    </tr>
                </thead>
                <tbody>{liquids.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}

/// An entry in the unit chosen; one that cannot be read as it was typed.
fn shown(state: State, entry: &Entry, kind: Kind) -> String {
    if entry.is_blank() {
        return t!("frame-no-figure");
    }
    if entry.unit.dimension() != kind.dimension() {
        return joined(&entry.text, symbol_shown(entry.unit));
    }
    let units = state.units.get();
    let unit = units.unit(kind);
    // As typed, or rounded as the figures are: seven digits are for a box that is typed into.
    let text = match read(&entry.text, kind, entry.unit) {
        Ok(reading) if entry.unit != unit => format::amount(reading.amount(kind), unit, units.mark),
        _ => in_box(entry, kind, &units),
    };
    joined(&text, &unit_shown(unit, &state.currency.get()))
}
