//! All saves of a recipe, newest first.

use super::differences::{Pair, differences_of};
use super::facts::{facts, saved};
use super::list::Head;
use crate::browser::element::{Part, View, button, el};
use crate::record::content::revision::Standing;
use crate::record::{RecipeId, RevisionId};
use crate::ui::signal::RwSignal;
use crate::ui::state::state;

/// The saves, each but the last to be taken up again.
pub fn history(recipe: RecipeId, head: RevisionId) -> View {
    let state = state();
    let page = &state.words.library_page;
    let revisions = state.library.with(|library| {
        let summaries = library.history(recipe);
        let revision = |summary: &&crate::record::Summary| (Head::of(summary), summary.name.clone(), summary.standing);
        summaries.iter().map(revision).collect::<Vec<_>>()
    });
    let row = move |(revision, name, standing): (Head, String, Standing)| {
        let released = revision.released.then(|| el("span").class("badge").child(page.released_mark));
        let id = revision.id;
        let text = saved(&revision);
        let remark = (!revision.remark.is_empty()).then(|| el("span").class("remark").child(revision.remark.clone()));
        let label = format!("{} {text}", page.restore);
        let restore = (id != head && standing == Standing::Kept)
            .then(|| button().set("aria-label", label).on_click(move || state.restore(id, head)).child(page.restore));
        let compared = RwSignal::new(false);
        let pair = Pair { one: id, other: head, heads: false };
        let compare = (id != head).then(|| {
            button()
                .set("aria-label", format!("{} {text}", page.compare_with_newest))
                .set("aria-expanded", move || if compared.get() { "true" } else { "false" })
                .on_click(move || compared.update(|compared| *compared = !*compared))
                .child(page.compare_with_newest)
        });
        let name = state.called(&name);
        let name = if standing == Standing::Removed { format!("{name}, {}", page.removed_mark) } else { name };
        let facts = facts(state, &revision);
        let name = if facts.is_empty() { name } else { format!("{name} · {facts}") };
        el("li")
            .child(el("span").child(text))
            .child(remark)
            .child(el("span").class("note").child(name))
            .child(released)
            .child(compare)
            .child(restore)
            .child(move || compared.get().then(|| differences_of(pair)))
    };
    el("ul")
        .class("revisions")
        .set("aria-label", page.history)
        .child(revisions.into_iter().map(row).collect::<View>())
        .view()
}
