//! All saves of a recipe, the latest first, and any two of them side by side.

use super::facts::facts;
use super::list::Head;
use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::*;
use crate::record::content::revision::Standing;
use crate::record::{RecipeId, RevisionId};
use crate::ui::field::choice::{self, Choice};
use crate::ui::part::version::differences::{Pair, differences_of};
use crate::ui::part::version::{label, line, release};
use crate::ui::signal::{RwSignal, Signal, memo};
use crate::ui::state::{State, state};

/// The saves, each but the head to be restored.
pub fn history(recipe: RecipeId, head: RevisionId) -> View {
    let state = state();
    let page = &state.words.library_page;
    let revisions = state.library.with(|library| {
        let versions = library.history(recipe);
        versions.iter().map(|version| (Head::of(version), version.summary.name.clone())).collect::<Vec<_>>()
    });
    let pairs = (revisions.len() > 1).then(|| compare_two(state, recipe, &revisions));
    let row = move |(revision, name): (Head, String)| {
        let seen = &revision.seen;
        let id = seen.id;
        let released = release(state, seen).map(|released| el("span").class("badge").child(released));
        let holds = seen.released.as_ref().is_some_and(|released| released.withdrawn.is_none());
        let text = label(state, seen);
        let restore = (id != head && seen.standing == Standing::Kept).then(|| {
            let label = format!("{} {text}", page.restore);
            button().set("aria-label", label).on_click(move || state.restore(id, head)).child(page.restore)
        });
        let withdraw = holds.then(|| {
            let words = state.words.versions.withdraw;
            button().set("aria-label", format!("{words} {text}")).on_click(move || state.withdraw(id)).child(words)
        });
        let name = state.called(&name);
        let facts = facts(state, &revision);
        let name = if facts.is_empty() { name } else { format!("{name} · {facts}") };
        el("li")
            .child(el("span").class("revision").child(line(state, seen)))
            .child(el("span").class("note").child(name))
            .child(released)
            .child(restore)
            .child(withdraw)
    };
    el("div")
        .child(
            el("ul")
                .class("revisions")
                .set("aria-label", page.history)
                .child(revisions.iter().cloned().map(row).collect::<View>()),
        )
        .child(pairs)
        .view()
}

/// Two selects, the latest revision and the one before it at first, and what differs between the two chosen.
fn compare_two(state: State, recipe: RecipeId, revisions: &[(Head, String)]) -> View {
    let words = &state.words.versions;
    let ids: Vec<RevisionId> = revisions.iter().map(|(revision, _)| revision.seen.id).collect();
    let choices: Vec<Choice> =
        revisions.iter().map(|(revision, _)| (revision.seen.id.to_string(), line(state, &revision.seen))).collect();
    let chosen = RwSignal::new([ids.get(1).copied(), ids.first().copied()]);
    let select = |at: usize, label: &'static str| {
        let now = memo(move || chosen.with(|chosen| chosen[at].map(|id| id.to_string()).unwrap_or_default()));
        let choose = Callback::new(move |id: String| chosen.update(|chosen| chosen[at] = RevisionId::parse(&id)));
        let id = format!("compare-{at}-{recipe}");
        choice::labelled(id, label.to_owned().into(), Signal::stored(choices.clone()), now, choose)
    };
    let open = RwSignal::new(false);
    let differences = move || {
        let [Some(one), Some(other)] = chosen.get() else { return None };
        // The later one second, whichever was chosen first.
        let place = |id: RevisionId| ids.iter().position(|each| *each == id);
        let (one, other) = if place(one) < place(other) { (other, one) } else { (one, other) };
        open.get().then(|| differences_of(Pair { one, other, heads: false }))
    };
    el("div")
        .class("compare-two")
        .child(select(0, words.compare_one))
        .child(select(1, words.compare_other))
        .child(
            button()
                .set("aria-expanded", move || if open.get() { "true" } else { "false" })
                .on_click(move || open.update(|open| *open = !*open))
                .child(words.show_differences),
        )
        .child(differences)
        .view()
}
