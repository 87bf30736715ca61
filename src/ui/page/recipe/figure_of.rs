//! A figure of the recipe's balance.

use super::context::{OpenWorking, SheetContext};
use crate::domain::Figure;
use crate::quantity::Unit;
use crate::ui::components::{FigureValue, Rank, opens};
use crate::ui::part::figure::parts;
use crate::ui::part::working::figure_name;
use crate::ui::state::State;
use leptos::prelude::*;

/// The figure; a press opens its working in the section it is in.
#[component]
pub fn FigureOf(
    /// The figure.
    #[prop(into)]
    figure: Figure,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of its column has the unit.
    #[prop(optional)]
    unit_in_head: bool,
    /// Another unit than the one chosen for its kind; the figure's key then has `.other` behind it.
    #[prop(optional)]
    unit: Option<fn(State) -> Unit>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let OpenWorking { figure: open, scope } = expect_context::<OpenWorking>();
    let shown = sheet.memo(move || (figure_name(state, figure), parts(state, figure, unit.map(|unit| unit(state)))));
    let name = Signal::derive(move || shown.with(|(name, _)| name.clone()));
    let text = Signal::derive(move || shown.with(|(_, text)| text.clone()));
    let key = if unit.is_some() { format!("{}.other", figure.key()) } else { figure.key() };
    view! {
        <FigureValue
            key=key
            controls=format!("{scope}working-{}", figure.key())
            name=name
            text=text
            rank=rank
            unit_in_head=unit_in_head
            open=Signal::derive(move || open.get() == Some(figure))
            on_press=opens(open, figure)
        />
    }
}
