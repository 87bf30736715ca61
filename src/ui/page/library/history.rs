//! All saves of a recipe, the latest first, and any two of them side by side.

use super::rows::RevisionRow;
use crate::record::content::revision::Standing;
use crate::record::{RecipeId, RevisionId};
use crate::ui::components::{Choice, ChoiceOption};
use crate::ui::part::version::differences::{Pair, RevisionDifferences};
use crate::ui::part::version::{label, line, release};
use crate::ui::state::State;
use crate::{label, t};
use leptos::prelude::*;

/// The saves, each but the head to be restored.
#[component]
pub fn History(
    /// The recipe.
    recipe: RecipeId,
    /// Its latest head.
    head: RevisionId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let rows: Vec<RevisionRow> = state.library.with_untracked(|library| {
        library.history(recipe).iter().map(|version| RevisionRow::of(state, version)).collect()
    });
    let pair = (rows.len() > 1).then(|| view! { <ComparePair recipe=recipe revisions=rows.clone()/> });
    let row = move |RevisionRow { seen, name, facts }: RevisionRow| {
        let id = seen.id;
        let released = release(&seen).map(|released| view! { <span class="badge">{released}</span> });
        let holds = seen.released.as_ref().is_some_and(|released| released.withdrawn.is_none());
        let text = label(&seen);
        let restore = (id != head && seen.standing == Standing::Kept).then(|| {
            let label = format!("{} {text}", t!("library-restore"));
            view! { <button type="button" aria-label=label on:click=move |_| state.restore(id, head)>{t!("library-restore")}</button> }
        });
        let withdraw = holds.then(|| {
            let words = label!("record-withdraw");
            let label = format!("{words} {text}");
            view! { <button type="button" aria-label=label on:click=move |_| state.withdraw(id)>{words}</button> }
        });
        let name = state.called(&name);
        let name = if facts.is_empty() { name } else { format!("{name} · {facts}") };
        view! {
            <li>
                <span class="revision">{line(&seen)}</span>
                <span class="note">{name}</span>
                {released}
                {restore}
                {withdraw}
            </li>
        }
    };
    view! {
        <ul class="revisions" aria-label=t!("library-history")>{rows.into_iter().map(row).collect_view()}</ul>
        {pair}
    }
}

/// Two selects, the latest revision and the one before it at first, and what differs between the two chosen.
#[component]
fn ComparePair(
    /// The recipe.
    recipe: RecipeId,
    /// Its saves.
    revisions: Vec<RevisionRow>,
) -> impl IntoView {
    let ids: Vec<RevisionId> = revisions.iter().map(|revision| revision.seen.id).collect();
    let option = |revision: &RevisionRow| ChoiceOption::new(revision.seen.id.to_string(), line(&revision.seen));
    let options: Vec<ChoiceOption> = revisions.iter().map(option).collect();
    let chosen = RwSignal::new((ids.get(1).copied(), ids.first().copied()));
    let text = |id: Option<RevisionId>| id.map(|id| id.to_string()).unwrap_or_default();
    let one = Signal::derive(move || text(chosen.get().0));
    let other = Signal::derive(move || text(chosen.get().1));
    let choose_one = Callback::new(move |id: String| chosen.update(|chosen| chosen.0 = RevisionId::parse(&id)));
    let choose_other = Callback::new(move |id: String| chosen.update(|chosen| chosen.1 = RevisionId::parse(&id)));
    let open = RwSignal::new(false);
    let differences = move || {
        let (Some(one), Some(other)) = chosen.get() else { return None };
        // The later one second, whichever was chosen first.
        let place = |id: RevisionId| ids.iter().position(|each| *each == id);
        let (one, other) = if place(one) < place(other) { (other, one) } else { (one, other) };
        open.get().then(|| {
            view! { <RevisionDifferences pair=Pair { one, other, heads: false }/> }
        })
    };
    view! {
        <div class="compare-two">
            <Choice id=format!("compare-0-{recipe}") name=label!("record-compare-one") labelled=true options=options.clone() value=one on_choose=choose_one/>
            <Choice id=format!("compare-1-{recipe}") name=label!("record-compare-other") labelled=true options=options value=other on_choose=choose_other/>
            <button
                type="button"
                aria-expanded=move || if open.get() { "true" } else { "false" }
                on:click=move |_| open.update(|open| *open = !*open)
            >
                {t!("record-show-differences")}
            </button>
            {differences}
        </div>
    }
}
