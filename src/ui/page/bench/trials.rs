//! The saved trials: opened again, deleted, imported; and the note of the one that is open.

use super::sheet::word;
use crate::browser::file::{self, ReadFileError};
use crate::browser::page;
use crate::domain::Grade;
use crate::record::TrialId;
use crate::record::content::trial::{LARGEST, Trial};
use crate::record::limits::LONGEST_NOTE;
use crate::t;
use crate::ui::components::{Mark, TextArea};
use crate::ui::part::save::when;
use crate::ui::part::version;
use crate::ui::persistence::records;
use crate::ui::state::State;
use crate::ui::text::library::{file_too_large, file_unreadable};
use crate::ui::text::{Carrier, Message, words};
use leptos::prelude::*;
use leptos::task::spawn_local;

/// The list, which takes the focus once a trial is deleted.
const LIST: &str = "saved-trials";

/// How many there are.
pub fn trials_note(state: State) -> String {
    let count = state.library.with(|library| library.trials()).map_or(0, |trials| trials.kept().count());
    t!("bench-trials-saved", count = count)
}

/// The note of the trial that is open.
#[component]
pub fn TrialNote() -> impl IntoView {
    let bench = expect_context::<State>().bench;
    let note = Memo::new(move |_| bench.open.with(|open| open.trial.note.clone()));
    view! {
        <div class="notes">
            <TextArea
                id="bench-note"
                label=t!("bench-note")
                value=note
                longest=LONGEST_NOTE
                on_input=Callback::new(move |text: String| bench.edit(|trial| trial.note = text))
                on_leave=Callback::new(|()| {})
            />
        </div>
    }
}

/// The saved trials, the newest first.
#[component]
pub fn SavedTrials() -> impl IntoView {
    let state = expect_context::<State>();
    let trials = Memo::new(move |_| {
        let trials = state.library.with(|library| library.trials());
        trials.map(|trials| (trials.kept().cloned().collect::<Vec<Trial>>(), trials.unreadable))
    });
    let row = move |trial: Trial| view! { <TrialRow trial=trial/> };
    let table = move || match trials.get() {
        Err(why) => {
            let message = words::store(&why);
            view! { <Told message=message/> }.into_any()
        }
        Ok((kept, unreadable)) => {
            let table = if kept.is_empty() {
                view! { <p class="empty">{t!("bench-no-trials")}</p> }.into_any()
            } else {
                view! {
                    <table class="grid saved-trials" aria-label=t!("bench-trials")>
                        <thead><tr>
                            <th scope="col" class="l">{t!("bench-name")}</th>
                            <th scope="col" class="l">{t!("bench-recipe-head")}</th>
                            <th scope="col">{t!("bench-boards")}</th>
                            <th scope="col" class="l">{t!("bench-saved-head")}</th>
                            <td></td>
                        </tr></thead>
                        <tbody>{kept.into_iter().map(row).collect_view()}</tbody>
                    </table>
                }
                .into_any()
            };
            let line = |(key, why): (String, _)| {
                let Message { what, fix } = words::unread(&why);
                view! { <li>{format!("{key}: {what} {fix}")}</li> }
            };
            let unreadable = (!unreadable.is_empty()).then(|| {
                view! { <p>{t!("bench-unreadable")}</p> <ul>{unreadable.into_iter().map(line).collect_view()}</ul> }
            });
            view! { {table} {unreadable} }.into_any()
        }
    };
    view! { <div class="trials" id=LIST tabindex="-1">{table} <Import/></div> }
}

#[component]
fn TrialRow(
    /// Its last save.
    trial: Trial,
) -> impl IntoView {
    let state = expect_context::<State>();
    let id: TrialId = trial.trial();
    let content = trial.content();
    let name = state.called(&content.name);
    let revision = content.revision.and_then(|id| state.seen(id)).map(|seen| version::label(&seen));
    let recipe =
        [Some(state.called(&content.recipe_name)), revision].into_iter().flatten().collect::<Vec<_>>().join(", ");
    let delete = move |_| {
        state.remove_trial(id);
        // The button goes with its row.
        page::focus(LIST);
    };
    view! {
        <tr>
            <th scope="row" class="l name"><b>{name.clone()}</b> <span class="sub">{content.note.clone()}</span></th>
            <td class="l recipe">{recipe}</td>
            <td class="boards">{words::bench::board_count(content.boards.len())}</td>
            <td class="l saved">{when(content.saved_at)}</td>
            <td class="more">
                <button type="button" aria-label=t!("bench-open-named", name = name.clone()) on:click=move |_| state.open_trial(id)>
                    {t!("bench-open")}
                </button>
                " "
                <button type="button" aria-label=t!("bench-delete-named", name = name) on:click=delete>
                    {t!("bench-delete")}
                </button>
            </td>
        </tr>
    }
}

/// A trial from a file.
#[component]
fn Import() -> impl IntoView {
    let state = expect_context::<State>();
    let refused = RwSignal::new(None::<Message>);
    let import = move |event| {
        let Some(chosen) = file::chosen(&event_target(&event)) else { return };
        refused.set(None);
        spawn_local(async move {
            let text = file::read_text(&chosen, LARGEST as u64).await;
            // What of the trial on the page is saved is known only then.
            records::loaded(state).await;
            // The page may be gone meanwhile.
            _ = refused.try_set(opened(state, text));
        });
    };
    view! {
        <div class="actions">
            <input
                id="import-trial" class="out-of-sight" type="file" accept=".json,application/json"
                on:change=import
            />
            <label class="button" for="import-trial">{t!("bench-import")}</label>
        </div>
        <div role="alert">{move || refused.get().map(|message| view! { <Told message=message/> })}</div>
    }
}

/// An error in words.
#[component]
fn Told(
    /// What happened, and how to fix it.
    message: Message,
) -> impl IntoView {
    view! { <p class="told-error"><Mark grade=Grade::Stop/> " " <b>{word(Grade::Stop)}</b> " " {message.what} " " {message.fix}</p> }
}

/// Puts the trial of a file on the page; why not, if it does not go there.
fn opened(state: State, text: Result<String, ReadFileError>) -> Option<Message> {
    match text {
        Ok(text) => state.take_in_trial(&text).err().map(|refusal| words::refusal(&refusal, Carrier::File)),
        Err(ReadFileError::TooLarge { bytes, limit }) => Some(file_too_large(bytes, limit)),
        Err(ReadFileError::Unreadable(own)) => Some(file_unreadable(&own)),
    }
}
