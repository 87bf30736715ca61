//! How a figure of a system was computed, below the table that it is in.

use super::context::{CompareContext, OpenOutput};
use super::words::output_name;
use crate::browser::page;
use crate::domain::Draft;
use crate::domain::compare::Output;
use crate::domain::working::Origin;
use crate::t;
use crate::ui::components::{FigureValue, Rank, WorkingFrame, opens, working_text};
use crate::ui::part::working::name_in;
use crate::ui::text::words;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

fn panel_id(open: OpenOutput) -> String {
    format!("{}working-{}-{}", open.scope, open.output.key(), open.at)
}

/// A figure of a system; a press opens its working.
#[component]
pub fn SystemFigure(
    /// The part of the page it is in, and the figure.
    open: OpenOutput,
    /// Number and unit.
    text: (String, String),
    /// Whose figure, and which.
    name: String,
    /// How large.
    #[prop(optional)]
    rank: Rank,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    view! {
        <FigureValue
            key=format!("{}.{}", open.output.key(), open.at)
            controls=panel_id(open)
            name=Signal::stored(name)
            text=Signal::stored(text)
            rank=rank
            unit_in_head=true
            open=Signal::derive(move || context.open.get() == Some(open))
            on_press=opens(context.open, open)
        />
    }
}

/// Closes the working that is open, and goes back to its figure.
fn close_working(context: CompareContext) {
    if let Some(open) = context.open.get_untracked() {
        context.open.set(None);
        page::focus_opener(&panel_id(open));
    }
}

/// Esc closes the working, wherever on the page the focus is.
pub fn close_on_escape(context: CompareContext, event: &KeyboardEvent) {
    if event.key() == "Escape" {
        close_working(context);
    }
}

/// The working of the open figure, where it is of this part of the page.
#[component]
pub fn SystemWorking(
    /// The part of the page.
    scope: &'static str,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    move || {
        context.open.get().filter(|open| open.scope == scope).map(|open| {
            let name = context.shown.with(|shown| {
                let draft = shown.systems.get(open.at).map(|system| &system.draft);
                let output = draft.map_or_else(String::new, |draft| output_name(open.output, draft));
                t!("compare-figure-of", figure = output, system = shown.name(open.at))
            });
            view! {
                <WorkingFrame id=panel_id(open) name=name on_close=Callback::new(move |()| context.open.set(None))>
                    {move || told(context, open.output, open.at)}
                </WorkingFrame>
            }
        })
    }
}

fn told(context: CompareContext, output: Output, at: usize) -> Option<AnyView> {
    // A cost a year is worked out for the hours entered.
    let output =
        if matches!(output, Output::CostPerYear(_)) { Output::CostPerYear(context.hours.get()?) } else { output };
    context.shown.with(|shown| {
        let system = shown.systems.get(at)?;
        let working = output.working(system.case()?)?.without_figure();
        Some(working_text(context.state, &working, |origin| origin_name(*origin, &system.draft)))
    })
}

fn origin_name(origin: Origin, draft: &Draft) -> AnyView {
    match origin {
        Origin::Field(field) => words::field_name(field, draft).into_any(),
        Origin::Figure(figure) => name_in(figure, draft).into_any(),
        Origin::Constant(constant) => words::constant(constant).into_any(),
    }
}
