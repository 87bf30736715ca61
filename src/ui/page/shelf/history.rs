//! All saves of a recipe, newest first.

use super::line::{facts, saved};
use super::list::Head;
use crate::record::revision::Standing;
use crate::record::{RecipeId, RevisionId};
use crate::ui::erased::on;
use crate::ui::state::state;
use leptos::prelude::*;

/// The saves, each but the last to be taken up again.
pub fn history(recipe: RecipeId, head: RevisionId) -> AnyView {
    let state = state();
    let page = &state.words.shelf_page;
    let revisions = state.shelf.with(|shelf| {
        let summaries = shelf.history(recipe);
        let revision = |summary: &&crate::record::Summary| (Head::of(summary), summary.name.clone(), summary.standing);
        summaries.iter().map(revision).collect::<Vec<_>>()
    });
    let row = move |(revision, name, standing): (Head, String, Standing)| {
        let id = revision.id;
        let text = saved(&revision);
        let label = format!("{} {text}", page.restore);
        let restore = (id != head && standing == Standing::Kept).then(|| {
            view! { <button type="button" aria-label=label on:click=on(move |_| state.restore(id, head))>{page.restore}</button> }
        });
        let name = state.called(&name);
        let name = if standing == Standing::Removed { format!("{name}, {}", page.removed_mark) } else { name };
        let facts = facts(state, &revision);
        let name = if facts.is_empty() { name } else { format!("{name} · {facts}") };
        view! { <li><span>{text}</span> <span class="note">{name}</span> {restore}</li> }
    };
    view! { <ul class="revisions" aria-label=page.history>{revisions.into_iter().map(row).collect_view()}</ul> }
        .into_any()
}
