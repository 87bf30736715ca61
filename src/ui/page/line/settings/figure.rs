//! A figure of the pump settings, and its working.

use super::context::{SettingsSheet, SheetFigure, line_figure_working};
use crate::domain;
use crate::domain::line::{LineOrigin, PumpId};
use crate::domain::working::Origin;
use crate::ui::components::{FigureValue, Rank, WorkingFrame, opens, working_text};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::lines::go_to_field;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::part::working::{figure_name, name_in};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// A figure by its name, a pump's with the pump's.
fn name(state: State, figure: SheetFigure) -> String {
    match figure {
        SheetFigure::Pump(id, figure) => {
            format!("{}: {}", pump_name(state, id), words::line::figure(figure).label)
        }
        SheetFigure::Recipe(figure) => figure_name(state, figure),
    }
}

/// The figure; a press opens its working.
#[component]
pub fn SheetValue(
    /// The figure.
    figure: SheetFigure,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of its column, or a column of its own, has the unit.
    #[prop(optional)]
    unit_in_head: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    let open = sheet.open_figure;
    let text = Memo::new(move |_| sheet.text(state, figure));
    let name = Memo::new(move |_| name(state, figure));
    view! {
        <FigureValue
            key=figure.key()
            controls=format!("working-{}", figure.key())
            name=name
            text=text
            rank=rank
            unit_in_head=unit_in_head
            open=Signal::derive(move || open.get() == Some(figure))
            on_press=opens(open, figure)
        />
    }
}

/// The working of the open figure, where it is among those that `belongs` picks.
#[component]
pub fn SheetWorking(
    /// Whether a figure is of this section.
    belongs: fn(SheetFigure) -> bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SettingsSheet>();
    move || {
        sheet.open_figure.get().filter(|figure| belongs(*figure)).map(|figure| {
            view! {
                <WorkingFrame id=format!("working-{}", figure.key()) name=name(state, figure) on_close=Callback::new(move |()| sheet.open_figure.set(None))>
                    {move || told(state, sheet, figure)}
                </WorkingFrame>
            }
        })
    }
}

fn told(state: State, sheet: SettingsSheet, figure: SheetFigure) -> Option<AnyView> {
    sheet.now.with(|now| {
        let case = now.case.as_ref()?;
        match figure {
            SheetFigure::Recipe(figure) => {
                let working = domain::working(figure, case)?;
                Some(working_text(state, &working, move |origin| recipe_origin(state, *origin)))
            }
            SheetFigure::Pump(id, figure) => {
                let working = line_figure_working(now.row(id)?, figure, case)?;
                Some(working_text(state, &working, move |origin| line_origin(state, id, *origin)))
            }
        }
    })
}

/// What a number of the recipe put into a working is.
pub fn recipe_origin(state: State, origin: Origin) -> AnyView {
    state.draft.with(|draft| match origin {
        Origin::Field(field) => words::field_name(field, draft).into_any(),
        Origin::Figure(figure) => name_in(figure, draft).into_any(),
        Origin::Constant(constant) => words::constant(constant).into_any(),
    })
}

/// What a number put into a working of the line is, and the way to where it was entered.
pub fn line_origin(state: State, pump: PumpId, origin: LineOrigin) -> AnyView {
    match origin {
        LineOrigin::Recipe(origin) => recipe_origin(state, origin),
        LineOrigin::Figure(figure) => name(state, SheetFigure::Pump(pump, figure)).into_any(),
        LineOrigin::Entry(field) => {
            let name = with_context(state, |context| words::line::field_name(field, context));
            let go = move |_| go_to_field(state, field);
            view! { <button type="button" class="link" on:click=go>{name}</button> }.into_any()
        }
    }
}
