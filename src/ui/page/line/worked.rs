//! A figure of the line, and its working in place.

use super::context::with_context;
use super::lines::go_to_field;
use super::settings::figure::recipe_origin;
use crate::domain::line::{LineOrigin, LineWorking};
use crate::ui::components::{FigureValue, Rank, WorkingFrame, working_text};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// A figure; a press opens its working in the [`WorkedPanel`] of its section.
#[component]
pub fn WorkedFigure(
    /// `data-figure` on the page.
    key: String,
    /// Whose figure, and which.
    #[prop(into)]
    name: Signal<String>,
    /// Number and unit; blank where there is none.
    #[prop(into)]
    text: Signal<(String, String)>,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of its column has the unit.
    #[prop(optional)]
    unit_in_head: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let open = state.line.open;
    let (own, pressed) = (key.clone(), key.clone());
    let is_open = Memo::new(move |_| open.with(|open| *open == own));
    let press = Callback::new(move |()| {
        let own = pressed.clone();
        open.update(|open| *open = if *open == own { String::new() } else { own });
    });
    view! {
        <FigureValue
            key=key.clone()
            controls=format!("working-{key}")
            name=name
            text=text
            rank=rank
            unit_in_head=unit_in_head
            open=is_open
            on_press=press
        />
    }
}

/// The working of the open figure, where it is of this section.
#[component]
pub fn WorkedPanel(
    /// Name and working of a figure by its key; `None` for one of another section.
    working: Callback<String, Option<(String, LineWorking)>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let open = state.line.open;
    let shown = Memo::new(move |_| {
        let key = open.get();
        let (name, _) = working.run(key.clone())?;
        Some((key, name))
    });
    move || {
        shown.get().map(|(key, name)| {
            let id = format!("working-{key}");
            let told = move || {
                let (_, working) = working.run(key.clone())?;
                Some(working_text(state, &working, move |origin| origin_of(state, *origin)))
            };
            view! {
                <WorkingFrame id=id name=name on_close=Callback::new(move |()| open.set(String::new()))>
                    {told}
                </WorkingFrame>
            }
        })
    }
}

/// What a number put in is, and the way to where it was entered.
pub fn origin_of(state: State, origin: LineOrigin) -> AnyView {
    match origin {
        LineOrigin::Recipe(origin) => recipe_origin(state, origin),
        LineOrigin::Figure(figure) => words::line::figure(figure).label.into_any(),
        LineOrigin::Entry(field) => {
            let name = with_context(state, |context| words::line::field_name(field, context));
            let go = move |_| go_to_field(state, field);
            view! { <button type="button" class="link" on:click=go>{name}</button> }.into_any()
        }
    }
}
