//! A binder system in the table; what is in it opens below.

use super::SystemLine;
use super::liquids::{LiquidTable, summary};
use crate::browser::page;
use crate::domain::LiquidDraft;
use crate::domain::recipe::binder_system::add_liquids;
use crate::record::SystemId;
use crate::t;
use crate::ui::page::library::rename::RenameBox;
use crate::ui::persistence::records;
use crate::ui::state::State;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The row.
#[component]
pub fn SystemRow(
    /// What it shows.
    line: SystemLine,
) -> impl IntoView {
    let state = expect_context::<State>();
    let SystemLine { id, name, note, saved, liquids } = line;
    let open = RwSignal::new(false);
    let key = id.map_or_else(|| name.to_lowercase().replace(|c: char| !c.is_alphanumeric(), "-"), |id| id.to_string());
    let (button, details) = (format!("system-more-{key}"), format!("system-{key}"));
    let opener = button.clone();
    let close = move |event: KeyboardEvent| {
        if event.key() == "Escape" && open.get_untracked() {
            event.stop_propagation();
            open.set(false);
            page::focus(&opener);
        }
    };
    let close_below = close.clone();
    let shown = liquids.clone();
    let text = move || summary(state, &shown);
    let (use_label, add_label) = (t!("library-use-of", name = name.clone()), t!("library-add-of", name = name.clone()));
    let more_label = t!("library-more-of", name = name.clone());
    let (used, added) =
        (StoredValue::new((name.clone(), liquids.clone())), StoredValue::new((name.clone(), liquids.clone())));
    let of_details = StoredValue::new((name.clone(), liquids));
    let own_actions = id.map(|id| (id, name.clone()));
    let own = move || own_actions.clone().map(|(id, name)| view! { <OwnActions id=id name=name/> });
    view! {
        <tr class="recipe" class:open=move || open.get() on:keydown=close>
            <th scope="row" class="l"><b class="name">{name}</b> <span class="sub">{note}</span></th>
            <td class="l fact">{text}</td>
            <td class="l fact">{saved}</td>
            <td class="l uses">
                <button type="button" aria-label=use_label on:click=move |_| used.with_value(|(name, liquids)| use_system(state, name, liquids))>
                    {t!("library-use")}
                </button>
                <button type="button" class="bare" aria-label=add_label on:click=move |_| added.with_value(|(name, liquids)| add_system(state, name, liquids))>
                    {t!("library-add")}
                </button>
            </td>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    id=button
                    aria-label=more_label
                    aria-expanded=move || if open.get() { "true" } else { "false" }
                    aria-controls=details.clone()
                    on:click=move |_| open.update(|open| *open = !*open)
                >
                    "⋯"
                </button>
            </td>
        </tr>
        <Show when=move || open.get()>
            <tr class="details" id=details.clone() on:keydown=close_below.clone()>
                <td colspan="5">
                    {of_details.with_value(|(name, liquids)| {
                        view! { <LiquidTable name=name.clone() liquids=liquids.clone()/> }
                    })}
                    {own()}
                </td>
            </tr>
        </Show>
    }
}

/// The recipe gets the system's liquids in place of its own.
fn use_system(state: State, name: &str, liquids: &[LiquidDraft]) {
    state.edit(None, |draft| {
        draft.liquids.clear();
        add_liquids(draft, liquids);
    });
    state.tell_step(t!("library-system-used", name = name));
}

/// The recipe gets the system's liquids beside its own.
fn add_system(state: State, name: &str, liquids: &[LiquidDraft]) {
    if state.has_room_for(liquids.len()) {
        state.edit(None, |draft| {
            add_liquids(draft, liquids);
        });
        state.tell_step(t!("library-system-added", name = name));
    }
}

/// What can be done with a system of the mill's own.
#[component]
fn OwnActions(
    /// The system.
    id: SystemId,
    /// Its name.
    name: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    let renaming = RwSignal::new(false);
    let (rename_label, delete_label) =
        (format!("{} {name}", t!("library-rename")), format!("{} {name}", t!("library-delete")));
    let delete = move |_| {
        state.remove_system(id);
        // The row is gone; what takes it back is next.
        records::focus_undo(state);
    };
    let back = move || request_animation_frame(move || page::focus(&format!("system-more-{id}")));
    let save = Callback::new(move |name: String| {
        renaming.set(false);
        state.rename_system(id, &name);
        back();
    });
    let cancel = Callback::new(move |()| {
        renaming.set(false);
        back();
    });
    view! {
        <p class="note">{t!("library-edit-hint")}</p>
        <Show when=move || renaming.get()>
            <RenameBox id=format!("rename-{id}") now=name.clone() on_save=save on_cancel=cancel/>
        </Show>
        <div class="actions">
            <button type="button" aria-label=rename_label on:click=move |_| renaming.update(|now| *now = !*now)>{t!("library-rename")}</button>
            <button type="button" aria-label=delete_label on:click=delete>{t!("library-delete")}</button>
        </div>
    }
}
