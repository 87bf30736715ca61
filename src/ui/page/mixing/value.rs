//! A figure of the page; how it was computed is in the section's working.

use crate::ui::components::Rank;
use leptos::prelude::*;

/// Number and unit.
#[component]
pub fn Value(
    /// `data-figure` on the page.
    #[prop(into)]
    key: String,
    /// Number and unit; both blank while there is none.
    #[prop(into)]
    parts: Signal<(String, String)>,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of the column says the unit, so that it is only read out.
    #[prop(optional)]
    unit_in_head: bool,
) -> impl IntoView {
    let class = match rank {
        Rank::Act => "plain-figure act-on",
        Rank::Lead => "plain-figure lead",
        Rank::Body => "plain-figure",
    };
    view! {
        <span class=class data-figure=key>
            {move || parts.with(|(number, _)| if number.is_empty() { "–".to_owned() } else { number.clone() })}
            <span class=if unit_in_head { "u in-head" } else { "u" }>
                {move || parts.with(|(_, unit)| if unit.is_empty() { String::new() } else { format!("\u{a0}{unit}") })}
            </span>
        </span>
    }
}
