//! What can be done with a recipe, with its note and tags.

use super::context::{LibraryContext, RowPanel, more_button};
use super::heads::Heads;
use super::history::History;
use super::rename::RenameBox;
use super::rows::LibraryRow;
use crate::browser::page;
use crate::t;
use crate::ui::part::version;
use crate::ui::persistence::records;
use crate::ui::state::State;
use leptos::prelude::*;

/// The details.
#[component]
pub fn RowDetails(
    /// The row they belong to.
    row: LibraryRow,
) -> impl IntoView {
    let state = expect_context::<State>();
    let library = expect_context::<LibraryContext>();
    let LibraryRow { recipe, head, .. } = row;
    let panel = Memo::new(move |_| library.open.with(|open| open.map(|(_, panel)| panel)));
    let about = state.library.with_untracked(|library| {
        let version = library.version(head)?;
        let released = library.recipe(recipe)?.released.as_ref().map(version::Seen::from);
        Some((version::Seen::from(&version), released, version.summary.note.clone(), version.summary.tags.clone()))
    });
    let (saved, released, note, tags) = about.map_or_else(Default::default, |(seen, released, note, tags)| {
        let released = released.and_then(|seen| version::released(&seen));
        (version::line(&seen), released.unwrap_or_default(), note, tags)
    });
    let heads = (!row.others.is_empty()).then(|| view! { <Heads head=head others=row.others.clone()/> });
    let name = row.name.clone();
    let rename = move || {
        (panel.get() == Some(RowPanel::Rename)).then(|| {
            let plain = state.library.with_untracked(|library| library.revision(head));
            let now = plain.map(|revision| revision.content().name.clone()).unwrap_or_default();
            let save = Callback::new(move |name: String| {
                library.open.set(Some((recipe, RowPanel::Actions)));
                state.rename(head, &name);
                request_animation_frame(move || page::focus(&more_button(recipe)));
            });
            let cancel = Callback::new(move |()| {
                library.open.set(Some((recipe, RowPanel::Actions)));
                request_animation_frame(move || page::focus(&more_button(recipe)));
            });
            view! { <RenameBox id=format!("rename-{head}") now=now on_save=save on_cancel=cancel/> }
        })
    };
    let history =
        move || (panel.get() == Some(RowPanel::History)).then(|| view! { <History recipe=recipe head=head/> });
    view! {
        {heads}
        <p class="note saved">{saved}</p>
        <p class="badge" hidden=released.is_empty()>{released.clone()}</p>
        <p class="remark" hidden=note.trim().is_empty()>{note.clone()}</p>
        <ul class="tags" hidden=tags.is_empty()>{tags.iter().map(|tag| view! { <li>{tag.clone()}</li> }).collect_view()}</ul>
        {rename}
        <Actions row=row.clone() name=name/>
        {history}
    }
}

#[component]
fn Actions(
    /// The row they belong to.
    row: LibraryRow,
    /// The name of the recipe.
    name: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    let library = expect_context::<LibraryContext>();
    let LibraryRow { recipe, head, released, .. } = row;
    let delete = move |_| {
        library.open.set(None);
        state.remove(recipe);
        // The row is gone; what takes it back is next.
        records::focus_undo(state);
    };
    let is_released = released.as_ref().is_some_and(|(id, _)| *id == head);
    let label = |verb: String| format!("{verb} {name}");
    let release = (!is_released).then(|| {
        let label = label(t!("record-release"));
        view! { <button type="button" aria-label=label on:click=move |_| state.release(head)>{t!("record-release")}</button> }
    });
    let withdraw = released.map(|(id, _)| {
        let label = label(t!("record-withdraw"));
        view! { <button type="button" aria-label=label on:click=move |_| state.withdraw(id)>{t!("record-withdraw")}</button> }
    });
    let history = move || library.open.with(|open| *open == Some((recipe, RowPanel::History)));
    let toggle = move |panel: RowPanel| {
        let shown = if library.open.get_untracked() == Some((recipe, panel)) { RowPanel::Actions } else { panel };
        library.open.set(Some((recipe, shown)));
    };
    view! {
        <div class="actions">
            <button type="button" aria-label=label(t!("library-rename")) on:click=move |_| toggle(RowPanel::Rename)>
                {t!("library-rename")}
            </button>
            <button type="button" aria-label=label(t!("library-duplicate")) on:click=move |_| state.duplicate(head)>
                {t!("library-duplicate")}
            </button>
            <button type="button" aria-label=label(t!("common-export")) on:click=move |_| state.give_out_revision(head)>
                {t!("common-export")}
            </button>
            {release}
            {withdraw}
            <button
                type="button"
                aria-label=label(t!("library-history"))
                aria-expanded=move || if history() { "true" } else { "false" }
                on:click=move |_| toggle(RowPanel::History)
            >
                {t!("library-history")}
            </button>
            <button type="button" aria-label=label(t!("library-delete")) on:click=delete>{t!("library-delete")}</button>
        </div>
    }
}
