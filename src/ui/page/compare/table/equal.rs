//! What all systems have in common.

use super::key_figures::is_equal;
use crate::domain::compare::overview::key_figures::{KeyGroup, KeyRow};
use crate::domain::compare::side::equal_inputs;
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::words::{amount_text, key_name};
use crate::ui::text::words;
use leptos::prelude::*;

/// Names and values of the inputs and key figures that are equal for all.
pub fn equal_rows(context: CompareContext, rows: &[KeyRow]) -> Vec<(String, String)> {
    let state = context.state;
    let is_folded = |row: &&KeyRow| row.figure.group() != KeyGroup::Cost && is_equal(row);
    let figures = rows.iter().filter(is_folded).filter_map(|row| {
        let value = row.values.first().copied().flatten()?;
        Some((key_name(row.figure), amount_text(state, value)))
    });
    context.shown.with(|shown| {
        let inputs = equal_inputs(&shown.systems).into_iter().map(|(field, amount)| {
            let name = shown.systems.first().map(|system| words::field_name(field, &system.draft));
            (name.unwrap_or_default(), amount_text(state, amount))
        });
        figures.chain(inputs).collect()
    })
}

/// The table.
#[component]
pub fn EqualForAll(
    /// Names and values.
    rows: Memo<Vec<(String, String)>>,
) -> impl IntoView {
    let row =
        |(name, value): (String, String)| view! { <tr><th scope="row" class="l">{name}</th><td>{value}</td></tr> };
    view! {
        <table class="figures-table equal" aria-label=t!("compare-equal")>
            <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
        </table>
    }
}
