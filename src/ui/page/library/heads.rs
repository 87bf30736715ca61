//! Several versions of a recipe, saved apart from each other: each at a glance, the latest two side by side, and merged.

use super::rows::RevisionRow;
use crate::record::RevisionId;
use crate::t;
use crate::ui::part::version;
use crate::ui::part::version::differences::{Pair, RevisionDifferences};
use crate::ui::state::State;
use leptos::prelude::*;

/// The versions.
#[component]
pub fn Heads(
    /// The latest.
    head: RevisionId,
    /// The others.
    others: Vec<RevisionId>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let rows: Vec<RevisionRow> = state.library.with_untracked(|library| {
        let ids = std::iter::once(head).chain(others.iter().copied());
        ids.filter_map(|id| library.version(id).map(|version| RevisionRow::of(state, &version))).collect()
    });
    let row = move |RevisionRow { seen, facts, .. }: RevisionRow| {
        let (id, text) = (seen.id, version::line(&seen));
        let label = format!("{} {text}", t!("library-open"));
        let on_page = move || (state.from.get() == Some(id)).then(|| t!("library-on-page"));
        view! {
            <li>
                <span>{text}</span>
                <span class="note">{facts} " " {on_page}</span>
                <button type="button" aria-label=label on:click=move |_| state.take_from_library(id)>{t!("library-open")}</button>
            </li>
        }
    };
    let pair = others.first().map(|other| Pair { one: *other, other: head, heads: true });
    let differences = pair.map(|pair| {
        view! { <RevisionDifferences pair=pair/> }
    });
    view! {
        <p>{t!("library-versions-hint")}</p>
        <ul class="revisions" aria-label=t!("library-several-versions")>{rows.into_iter().map(row).collect_view()}</ul>
        {differences}
    }
}
