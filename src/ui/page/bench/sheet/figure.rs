//! A figure of the weigh sheet, and its working.

use super::context::WeighContext;
use super::text::value_parts;
use crate::browser::page;
use crate::domain::trial::weigh_sheet::working::{WeighOrigin, working};
use crate::domain::trial::{LineId, WeighFigure, WeighLineFigure};
use crate::t;
use crate::ui::components::{FigureValue, Rank, WorkingFrame, opens, working_text};
use crate::ui::page::bench::desk::Made;
use crate::ui::part::working::name_in;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// A figure by its name, a line's with the line.
fn name(made: &Made, figure: WeighFigure) -> String {
    let label = words::bench::figure(figure).label;
    match figure {
        WeighFigure::Line(id, _) => format!("{}: {label}", line_name(made, id)),
        _ => label.to_owned(),
    }
}

/// What a line weighs.
pub fn line_name(made: &Made, id: LineId) -> String {
    words::bench::line(id, &made.recipe)
}

/// The figure; a press opens its working.
#[component]
pub fn SheetValue(
    /// The figure.
    figure: WeighFigure,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of its column has the unit.
    #[prop(optional)]
    unit_in_head: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    let open = sheet.open_figure;
    let text = Memo::new(move |_| {
        sheet
            .desk
            .made
            .with(|made| made.sheet.as_ref().map_or_else(Default::default, |sheet| value_parts(state, sheet, figure)))
    });
    let name = Memo::new(move |_| sheet.desk.made.with(|made| name(made, figure)));
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
    belongs: fn(WeighFigure) -> bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    move || {
        sheet.open_figure.get().filter(|figure| belongs(*figure)).map(|figure| {
            let name = sheet.desk.made.with_untracked(|made| name(made, figure));
            view! {
                <WorkingFrame id=format!("working-{}", figure.key()) name=name on_close=Callback::new(move |()| sheet.open_figure.set(None))>
                    {move || told(state, sheet, figure)}
                </WorkingFrame>
            }
        })
    }
}

fn told(state: State, sheet: WeighContext, figure: WeighFigure) -> Option<AnyView> {
    // Rounding is no formula; what was rounded has one.
    let from = match figure {
        WeighFigure::Line(id, WeighLineFigure::Rounded) => WeighFigure::Line(id, WeighLineFigure::Mass),
        other => other,
    };
    sheet.desk.made.with(|made| {
        let working = working(from, made.sheet.as_ref()?)?;
        let rounded = (from != figure).then(|| view! { <p class="note">{t!("bench-rounded-note")}</p> });
        let told = working_text(state, &working, |origin| origin_view(made, *origin));
        Some(view! { {rounded} {told} }.into_any())
    })
}

/// What a number put into a working is.
fn origin_view(made: &Made, origin: WeighOrigin) -> AnyView {
    match origin {
        WeighOrigin::Field(field) => {
            let go = move |_| page::focus_field(&field.box_key());
            let name = words::bench::field(field, &made.typed).label;
            view! { <button type="button" class="link" on:click=go>{name}</button> }.into_any()
        }
        WeighOrigin::Figure(figure) => name(made, figure).into_any(),
        WeighOrigin::RecipeField(field) => words::field_name(field, &made.recipe).into_any(),
        WeighOrigin::RecipeFigure(figure) => name_in(figure, &made.recipe).into_any(),
        WeighOrigin::Batches | WeighOrigin::Constant(_) => words::bench::origin(origin).into_any(),
    }
}
