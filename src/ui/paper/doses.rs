//! What has to be dosed, in big figures.

use super::context::{number, symbol};
use super::inputs::entered;
use crate::domain::balance::total::dosed;
use crate::domain::{Field, Figure, LiquidField, LiquidFigure, LiquidId};
use crate::quantity::{Kind, Unit, format};
use crate::t;
use crate::ui::page::recipe::context::{is_laboratory, other_time};
use crate::ui::page::recipe::{row, water_row};
use crate::ui::part::figure;
use crate::ui::state::State;
use leptos::prelude::*;

/// More rows and warnings than these are set in smaller letters, so that all are on one page.
const ROOMY_LINES: usize = 4;

/// A row of the table.
struct DoseRow {
    name: String,
    /// Solids and density, or what there is to say.
    below: String,
    dose: String,
    basis: String,
    /// The figures that are set, by their columns.
    figures: [Option<String>; 4],
}

/// The table of liquids and water.
#[component]
pub fn Doses(
    /// How many warnings are above them.
    warnings: usize,
) -> impl IntoView {
    let state = expect_context::<State>();
    let by_flow = !is_laboratory(state);
    let ids = state.liquids_shown();
    let is_dense = ids.len() + 1 + warnings > ROOMY_LINES;
    let mut rows: Vec<DoseRow> = ids.into_iter().map(|id| of_liquid(state, id)).collect();
    rows.push(of_water(state));
    let unit = |kind: Kind| symbol(state, state.unit(kind));
    let heads = if by_flow {
        vec![unit(Kind::LiquidFlow), unit(Kind::PumpFlow), symbol(state, other_time(state)), unit(Kind::UsePerVolume)]
    } else {
        vec![t!("recipe-on-od-fibre")]
    };
    let columns = heads.len();
    let class = |column: usize| match column {
        0 => "act",
        1 => "mate",
        _ => "",
    };
    let cells = move |figures: [Option<String>; 4]| {
        let cell = |(at, text): (usize, Option<String>)| view! { <td class=class(at)>{text}</td> };
        figures.into_iter().take(columns).enumerate().map(cell).collect_view()
    };
    let row = |DoseRow { name, below, dose, basis, figures }: DoseRow| {
        view! {
            <tr>
                <th scope="row" class="l name"><b>{name}</b><span>{below}</span></th>
                <td>{dose}</td>
                <td class="l basis">{basis}</td>
                {cells(figures)}
            </tr>
        }
    };
    let total = by_flow.then(|| {
        let total = |part, unit: Option<Unit>| {
            let amount = state.outcome.with(|outcome| dosed(outcome.case.as_ref()?, part))?;
            let units = state.units.get();
            Some(format::amount(amount, unit.unwrap_or_else(|| units.unit(amount.kind)), units.mark))
        };
        let figures = [
            total(LiquidFigure::Liquid, None),
            total(LiquidFigure::Volume, None),
            total(LiquidFigure::Volume, Some(other_time(state))),
            total(LiquidFigure::PerVolume, None),
        ];
        let cell = |text: Option<String>| view! { <td>{text}</td> };
        view! {
            <tfoot><tr><th scope="row" class="l">{t!("recipe-total")}</th><td></td><td></td>{figures.map(cell).collect_view()}</tr></tfoot>
        }
    });
    let head = |words: String| view! { <th scope="col">{words}</th> };
    view! {
        <table class="print-doses" class:dense=is_dense>
            <thead><tr>
                <th scope="col" class="l">{t!("paper-liquid")}</th>
                <th scope="col">{t!("recipe-dose")}</th>
                <th scope="col" class="l">{t!("paper-on")}</th>
                {heads.into_iter().map(head).collect_view()}
            </tr></thead>
            <tbody>{rows.into_iter().map(row).collect_view()}</tbody>
            {total}
        </table>
    }
}

fn of_liquid(state: State, id: LiquidId) -> DoseRow {
    let figure = |part| some(number(state, Figure::Liquid(id, part)).0);
    let (dose, basis, solids, density) = state.draft.with(|draft| {
        let entry = |part| entered(state, draft, Field::Liquid(id, part));
        let basis = draft.liquid(id).map(|liquid| row::way_words(draft, liquid.dose_way));
        (entry(LiquidField::Dose), basis, entry(LiquidField::Solids), entry(LiquidField::Density))
    });
    let thinning =
        state.outcome.with(|outcome| outcome.case.as_ref()?.figure(Figure::Liquid(id, LiquidFigure::Thinning)));
    let thinning = thinning.filter(|amount| amount.base > 0.0).map(|_| {
        let (number, unit) = number(state, Figure::Liquid(id, LiquidFigure::Thinning));
        t!("paper-thinning", flow = format!("{number}\u{a0}{unit}"))
    });
    let below = [solids.map(|solids| t!("paper-solids", solids = solids)), density, thinning];
    let flow = if is_laboratory(state) { LiquidFigure::LiquidOnFibre } else { LiquidFigure::Liquid };
    let first = number(state, Figure::Liquid(id, flow));
    DoseRow {
        name: state.liquid_name(id),
        below: below.into_iter().flatten().collect::<Vec<_>>().join(" · "),
        dose: dose.unwrap_or_default(),
        basis: basis.unwrap_or_default(),
        figures: [
            some(with_unit_on_fibre(state, first)),
            figure(LiquidFigure::Volume),
            some(figure::parts(state, Figure::Liquid(id, LiquidFigure::Volume), Some(other_time(state))).0),
            figure(LiquidFigure::PerVolume),
        ],
    }
}

fn of_water(state: State) -> DoseRow {
    let way = state.draft.with(|draft| draft.water_way);
    let is_too_wet =
        state.outcome.with(|outcome| outcome.case.as_ref().is_some_and(|case| case.solved.water.excess.value > 0.0));
    let flow = if is_laboratory(state) { Figure::WaterDoseOnFibre } else { Figure::WaterDose };
    DoseRow {
        name: t!("recipe-water"),
        below: if is_too_wet { t!("recipe-none-too-wet") } else { String::new() },
        dose: String::new(),
        basis: water_row::way_words(way),
        figures: [
            some(with_unit_on_fibre(state, number(state, flow))),
            some(number(state, Figure::WaterDoseVolume).0),
            some(figure::parts(state, Figure::WaterDoseVolume, Some(other_time(state))).0),
            some(number(state, Figure::WaterPerVolume).0),
        ],
    }
}

/// The number; for a laboratory recipe with its unit, which no head of a column says.
fn with_unit_on_fibre(state: State, (number, unit): (String, String)) -> String {
    if is_laboratory(state) && !number.is_empty() { format!("{number}\u{a0}{unit}") } else { number }
}

fn some(text: String) -> Option<String> {
    (!text.is_empty()).then_some(text)
}
