//! A computed figure: its number, its unit, and its working on demand.

use leptos::prelude::*;

/// How large a figure is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Rank {
    /// The figure to act on.
    Act,
    /// Its companion.
    Lead,
    /// One among many.
    #[default]
    Body,
}

impl Rank {
    const fn class(self) -> &'static str {
        match self {
            Self::Act => "figure-value act-on",
            Self::Lead => "figure-value lead",
            Self::Body => "figure-value",
        }
    }
}

/// The number as a button that opens its working. Read out with whose figure it is.
#[component]
pub fn FigureValue(
    /// `data-figure` on the page.
    key: String,
    /// The id of its working.
    controls: String,
    /// Whose figure, and which.
    #[prop(into)]
    name: Signal<String>,
    /// Number and unit; blank where the recipe does not give it.
    #[prop(into)]
    text: Signal<(String, String)>,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of the column says the unit, so that it is only read out.
    #[prop(optional)]
    unit_in_head: bool,
    /// Whether its working is open.
    #[prop(into)]
    open: Signal<bool>,
    /// Hears of a press.
    on_press: Callback<()>,
) -> impl IntoView {
    let is_there = Memo::new(move |_| text.with(|(number, _)| !number.is_empty()));
    view! {
        <button
            type="button"
            class=rank.class()
            hidden=move || !is_there.get()
            aria-expanded=move || if open.get() { "true" } else { "false" }
            aria-controls=controls
            on:click=move |_| on_press.run(())
        >
            <span class="out-of-sight">{move || name.get()} ": "</span>
            <span data-figure=key>
                {move || text.with(|(number, _)| number.clone())}
                <span class=if unit_in_head { "u in-head" } else { "u" }>
                    {move || text.with(|(_, unit)| if unit.is_empty() { String::new() } else { format!("\u{a0}{unit}") })}
                </span>
            </span>
        </button>
    }
}
