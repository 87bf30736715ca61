//! What the board costs, part by part.

use super::context::OpenWorking;
use super::figure_of::FigureOf;
use crate::domain::{Figure, LiquidFigure};
use crate::t;
use crate::ui::components::WorkingPanel;
use crate::ui::part::figure::text;
use crate::ui::state::State;
use leptos::context::Provider;
use leptos::prelude::*;

/// The cost beside the heading.
pub fn note(state: State) -> String {
    text(state, Figure::Cost).unwrap_or_else(|| t!("recipe-no-prices"))
}

/// Fibre, each liquid, and the sum.
#[component]
pub fn CostTable() -> impl IntoView {
    let state = expect_context::<State>();
    let open = OpenWorking::new("cost-");
    let ids = Memo::new(move |_| state.liquids_shown());
    view! {
        <Provider value=open>
            <WorkingPanel open=open.figure scope=open.scope/>
            <table class="results" aria-label=t!("recipe-cost")>
                <tbody>
                    <CostRow name=Signal::stored(t!("recipe-fibre")) figure=Figure::FibreCost/>
                    <For each=move || ids.get() key=|id| id.0 let:id>
                        <CostRow
                            name=Signal::derive(move || state.liquid_name(id))
                            figure=Figure::Liquid(id, LiquidFigure::Cost)
                        />
                    </For>
                    <CostRow name=Signal::stored(t!("recipe-total")) figure=Figure::Cost/>
                </tbody>
            </table>
        </Provider>
    }
}

#[component]
fn CostRow(
    /// Whose cost.
    name: Signal<String>,
    /// The figure.
    figure: Figure,
) -> impl IntoView {
    let state = expect_context::<State>();
    let is_missing = Memo::new(move |_| text(state, figure).is_none());
    view! {
        <tr>
            <th scope="row">{move || name.get()}</th>
            <td>
                <FigureOf figure=figure/>
                <Show when=move || is_missing.get()><span class="note">{t!("recipe-no-price")}</span></Show>
            </td>
        </tr>
    }
}
