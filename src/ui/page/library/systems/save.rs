//! The recipe's liquids saved as a system of the mill's own.

use crate::browser::page;
use crate::domain::Grade;
use crate::record::content::binder_system::SystemDraft;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Mark, TextBox};
use crate::ui::state::State;
use leptos::ev::SubmitEvent;
use leptos::prelude::*;

/// Name, note and the button.
#[component]
pub fn SaveSystem() -> impl IntoView {
    let state = expect_context::<State>();
    let typed = state.new_system;
    let is_missing = RwSignal::new(false);
    let has_none = Memo::new(move |_| state.draft.with(|draft| draft.liquids.is_empty()));
    let save = move |event: SubmitEvent| {
        event.prevent_default();
        let (name, note) = typed.with_untracked(|typed| (typed.name.trim().to_owned(), typed.note.trim().to_owned()));
        is_missing.set(name.is_empty());
        if name.is_empty() {
            page::focus("system-name");
        } else if !has_none.get_untracked() && state.save_system(&name, &note).is_some() {
            typed.set(SystemDraft::default());
        }
    };
    let put_name = Callback::new(move |text: String| {
        is_missing.set(false);
        typed.update(|typed| typed.name = text);
    });
    let put_note = Callback::new(move |text: String| typed.update(|typed| typed.note = text));
    let leave = Callback::new(|()| ());
    view! {
        <section class="panel" aria-labelledby="save-system">
            <h2 id="save-system">{t!("library-save-system-heading")}</h2>
            <p class="empty" hidden=move || !has_none.get()>{t!("library-no-liquids")}</p>
            <form class="save-system" hidden=move || has_none.get() on:submit=save>
                <TextBox
                    id="system-name"
                    label=t!("library-system-name")
                    value=Signal::derive(move || typed.with(|typed| typed.name.clone()))
                    longest=LONGEST_NAME
                    on_input=put_name
                    on_leave=leave
                />
                <TextBox
                    id="system-note"
                    label=t!("library-system-source")
                    value=Signal::derive(move || typed.with(|typed| typed.note.clone()))
                    longest=LONGEST_NAME
                    on_input=put_note
                    on_leave=leave
                />
                <button type="submit" class="primary">{t!("library-save-system")}</button>
            </form>
            <p class="note" role="status">
                {move || match is_missing.get() {
                    true => view! { <Mark grade=Grade::Stop/> " " {t!("library-system-name-missing")} }.into_any(),
                    false => t!("library-save-system-hint").into_any(),
                }}
            </p>
        </section>
    }
}
