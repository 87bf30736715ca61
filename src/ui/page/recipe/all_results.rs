//! Every figure of the balance, by station.

use super::context::{OpenWorking, SheetContext};
use super::figure_of::FigureOf;
use crate::domain::balance::machine::Machine;
use crate::domain::{Figure, LiquidFigure, LiquidId, Station};
use crate::t;
use crate::ui::components::WorkingPanel;
use crate::ui::part::figure::text;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::context::Provider;
use leptos::prelude::*;

const MACHINES: [Machine; 4] = [Machine::FibreSupply, Machine::Blender, Machine::Press, Machine::LineSpeed];

/// The table.
#[component]
pub fn AllResults() -> impl IntoView {
    let state = expect_context::<State>();
    let open = OpenWorking::new("results-");
    let ids = Memo::new(move |_| state.liquids_shown());
    let station = move |station: &Station| {
        let station = *station;
        let of_machines =
            MACHINES.into_iter().flat_map(|machine| [Figure::Used(machine), Figure::FibreAtLimit(machine)]);
        let figures =
            Figure::PLAIN.iter().copied().chain(of_machines).filter(move |figure| figure.station() == station);
        let rows = figures.map(|figure| view! { <ResultRow figure=figure/> }).collect_view();
        let liquids = (station == Station::Blender).then(|| {
            view! { <For each=move || ids.get() key=|id| id.0 let:id><LiquidResults id=id/></For> }
        });
        view! {
            <tr class="group"><th scope="colgroup" colspan="3">{words::station(station)}</th></tr>
            {rows}
            {liquids}
        }
    };
    view! {
        <Provider value=open>
            <WorkingPanel open=open.figure scope=open.scope/>
            <table class="results" aria-label=t!("recipe-all-results")>
                <tbody>{Station::ALL.iter().map(station).collect_view()}</tbody>
            </table>
        </Provider>
    }
}

#[component]
fn LiquidResults(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let name = Memo::new(move |_| state.liquid_name(id));
    let rows =
        LiquidFigure::ALL.iter().map(|part| view! { <ResultRow figure=Figure::Liquid(id, *part)/> }).collect_view();
    view! {
        <tr class="group"><th scope="colgroup" colspan="3">{move || name.get()}</th></tr>
        {rows}
    }
}

/// A figure with its basis; nothing where the recipe does not give it.
#[component]
fn ResultRow(
    /// The figure.
    figure: Figure,
) -> impl IntoView {
    let state = expect_context::<State>();
    let words = words::figure(figure);
    let is_there = expect_context::<SheetContext>().memo(move || text(state, figure).is_some());
    view! {
        <tr hidden=move || !is_there.get()>
            <th scope="row">{words.label}</th>
            <td><FigureOf figure=figure/></td>
            <td class="l note">{words.note}</td>
        </tr>
    }
}
