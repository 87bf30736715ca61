//! What a save asks before it puts one revision over another, and that the page is behind.

use super::differences::DifferencesFromPage;
use super::label;
use crate::domain::{Draft, Grade, Role};
use crate::record::RevisionId;
use crate::record::store::library::save::SaveQuestion;
use crate::ui::components::Mark;
use crate::ui::state::State;
use crate::ui::text::{Message, words};
use crate::{t, told};
use leptos::prelude::*;

/// The question while there is one, else that the page shows an older revision than there is.
#[component]
pub fn SaveQuestionSlot() -> impl IntoView {
    let state = expect_context::<State>();
    let newer = state.newer_than_page();
    let shown = state.seen_on_page();
    let behind = move || {
        if state.question.get().is_some() {
            return None;
        }
        let (newer, shown) = (newer.get()?, shown.get()?);
        let message = told!("record-behind", newer = label(&newer), shown = label(&shown));
        let (id, name) = (newer.id, label(&newer));
        let open = t!("record-open-revision", revision = &name);
        Some(view! {
            <Question message=message id=id name=name>
                <button type="button" on:click=move |_| state.take_from_library(id)>{open}</button>
            </Question>
        })
    };
    let asked = move || state.question.get().and_then(|why| ask(state, why));
    view! {
        <div class="save-question" role="status">{behind}</div>
        <div class="save-question" role="alert">{asked}</div>
    }
}

/// The ways out: a recipe of its own, on top of what is there, or a look at it first.
fn ask(state: State, why: SaveQuestion) -> Option<impl IntoView> {
    let shown = state.seen(state.from.get()?)?;
    let other = state.seen(why.revision())?;
    let name = label(&other);
    let (message, on_top) = match why {
        SaveQuestion::Behind(_) => (
            told!("record-ask-behind", newer = &name, shown = label(&shown)),
            t!("record-save-on-top", revision = &name),
        ),
        SaveQuestion::OtherBinders(id) => {
            let before = state.library.with_untracked(|library| library.revision(id))?;
            let before = binders(&before.content().draft);
            let now = state.draft.with_untracked(binders);
            (told!("record-ask-binders", before = before, now = now), t!("record-save-next"))
        }
    };
    Some(view! {
        <Question message=message id=why.revision() name=name cancel=true>
            <button type="button" class="primary" on:click=move |_| state.save_as_new_and_tell()>{t!("record-save-as-new")}</button>
            <button type="button" on:click=move |_| state.save_on_top_and_tell()>{on_top.clone()}</button>
        </Question>
    })
}

/// A warning with its ways out, among them a look at the other revision beside what is on the page.
#[component]
fn Question(
    /// What is the matter, and what can be done.
    message: Message,
    /// The other revision.
    id: RevisionId,
    /// Its name.
    name: String,
    /// Whether it can be put off.
    #[prop(optional)]
    cancel: bool,
    /// The ways out.
    children: Children,
) -> impl IntoView {
    let state = expect_context::<State>();
    let open = RwSignal::new(false);
    let cancel = cancel.then(|| {
        view! { <button type="button" on:click=move |_| state.question.set(None)>{t!("frame-cancel")}</button> }
    });
    view! {
        <div class="finding unusual">
            <p><Mark grade=Grade::Unusual/> " " <strong>{message.what}</strong> " " {message.fix}</p>
            <div class="actions">
                {children()}
                <button
                    type="button"
                    aria-expanded=move || if open.get() { "true" } else { "false" }
                    on:click=move |_| open.update(|open| *open = !*open)
                >
                    {t!("record-compare-revision", revision = name)}
                </button>
                {cancel}
            </div>
            <Show when=move || open.get()><DifferencesFromPage id=id/></Show>
        </div>
    }
}

/// The binders by name, or that there is none.
fn binders(draft: &Draft) -> String {
    let binders = draft.liquids.iter().filter(|liquid| liquid.role == Role::Binder);
    let names: Vec<String> = binders.map(|liquid| words::liquid(liquid).into_owned()).collect();
    if names.is_empty() { t!("frame-no-figure") } else { names.join(" + ") }
}
