//! Beside the tables: the last backup, the file on a shared drive, and the browser's storage.

use super::context::{LibraryContext, OLD_BACKUP, days_ago};
use crate::browser::{clock, database, shared, storage};
use crate::domain::Grade;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::persistence;
use crate::ui::state::State;
use crate::ui::text::Message;
use leptos::prelude::*;
use leptos::task::spawn_local;

/// The panels.
#[component]
pub fn Panels() -> impl IntoView {
    view! {
        <aside class="panels" aria-label=t!("library-data")>
            <Backup/>
            {shared::can().then(|| view! { <SharedLibrary/> })}
            <StorageUse/>
        </aside>
    }
}

/// When the library last went to a file, and what has changed since.
#[component]
fn Backup() -> impl IntoView {
    let state = expect_context::<State>();
    let library = expect_context::<LibraryContext>();
    let at = Memo::new(move |_| state.settings.with(|settings| settings.copied_at));
    let changed = Memo::new(move |_| library.found.with(|found| found.changed));
    let trials = Memo::new(move |_| {
        let at = at.get().unwrap_or_default();
        library.trials.with(|trials| trials.iter().filter(|saved_at| **saved_at > at).count())
    });
    let changed_words = move || {
        let recipes = t!("library-recipe-count", count = changed.get());
        match trials.get() {
            0 => recipes,
            trials => format!("{recipes}, {}", t!("library-trial-count", count = trials)),
        }
    };
    let last = move || at.get().map_or_else(|| t!("library-no-backup"), clock::date);
    let ago = move || {
        let days = days_ago(at.get()?);
        let is_old = days >= OLD_BACKUP && changed.get() > 0;
        let words = t!("library-days-ago", days = days);
        Some(match is_old {
            true => view! { <span class="flag"><Mark grade=Grade::Unusual/> " " {words}</span> }.into_any(),
            false => view! { <span>{words}</span> }.into_any(),
        })
    };
    view! {
        <section class="panel" aria-labelledby="backup">
            <h2 id="backup">{t!("library-backup")}</h2>
            <dl>
                <dt>{t!("library-last-backup")}</dt>
                <dd><span class="last-backup">{last}</span> {ago}</dd>
                <dt>{t!("library-changed-since")}</dt>
                <dd>{changed_words}</dd>
            </dl>
            <button type="button" on:click=move |_| state.give_out_library()>{t!("library-back-up")}</button>
            <p class="note">{t!("library-backup-hint")}</p>
        </section>
    }
}

/// A library file on a shared drive.
#[component]
fn SharedLibrary() -> impl IntoView {
    let state = expect_context::<State>();
    let name = Memo::new(move |_| state.shared.with(|file| file.name.clone()));
    let says = Memo::new(move |_| state.shared.with(|file| file.says.clone()));
    let wrong = Memo::new(move |_| state.shared.with(|file| file.wrong.clone()));
    let is_chosen = Memo::new(move |_| name.with(|name| !name.is_empty()));
    let actions = move || {
        match is_chosen.get() {
        true => view! {
            <button type="button" on:click=move |_| persistence::shared::level(state, true)>{t!("library-sync")}</button>
            <button type="button" class="bare" on:click=move |_| persistence::shared::let_go(state)>{t!("library-disconnect")}</button>
        }
        .into_any(),
        false => view! {
            <button type="button" on:click=move |_| persistence::shared::choose(state, false)>{t!("library-use-file")}</button>
            <button type="button" on:click=move |_| persistence::shared::choose(state, true)>{t!("library-new-file")}</button>
        }
        .into_any(),
    }
    };
    let message = move || {
        wrong.get().map(|Message { what, fix }| {
            view! { <p class="wrong"><Mark grade=Grade::Stop/> " " <strong>{what}</strong> " " {fix}</p> }
        })
    };
    view! {
        <section class="panel" aria-labelledby="shared-library">
            <h2 id="shared-library">{t!("library-shared")}</h2>
            <p role="status"><strong>{move || name.get()}</strong> " " {move || says.get()}</p>
            <div role="alert">{message}</div>
            <div class="actions">{actions}</div>
            <p class="note" hidden=move || is_chosen.get()>{t!("library-shared-hint")}</p>
        </section>
    }
}

/// How much the library takes of what the browser gives.
#[component]
fn StorageUse() -> impl IntoView {
    let state = expect_context::<State>();
    let room = RwSignal::new(None::<u64>);
    spawn_local(async move {
        if let Some(bytes) = database::room().await {
            _ = room.try_set(Some(bytes));
        }
    });
    let used = move || {
        let mark = state.units.get().mark;
        let used = megabytes(state.library.with(|library| library.size()), mark);
        match room.get() {
            Some(bytes) => t!("library-used-of", used = used, most = gigabytes(bytes, mark)),
            None => used,
        }
    };
    let ask = move |_| {
        spawn_local(async move {
            let is_kept = storage::ask_for_persistence().await == Some(true);
            state.tell(if is_kept { t!("library-persisted") } else { t!("library-not-persisted") });
        });
    };
    view! {
        <section class="panel" aria-labelledby="storage">
            <h2 id="storage">{t!("library-storage")}</h2>
            <dl><dt>{t!("library-used")}</dt><dd>{used}</dd></dl>
            <button type="button" on:click=ask>{t!("library-persist")}</button>
            <p class="note">{t!("library-storage-hint")}</p>
        </section>
    }
}

fn megabytes(bytes: usize, mark: crate::quantity::format::DecimalMark) -> String {
    #[allow(clippy::cast_precision_loss, reason = "shown to a tenth of a megabyte")]
    let megabytes = (bytes as f64 / 1e5).ceil() / 10.0;
    format!("{}\u{a0}MB", crate::quantity::format::editable(megabytes, mark))
}

/// Rounded down: it is a promise.
fn gigabytes(bytes: u64, mark: crate::quantity::format::DecimalMark) -> String {
    #[allow(clippy::cast_precision_loss, reason = "shown to a tenth of a gigabyte")]
    let gigabytes = (bytes as f64 / 1e8).floor() / 10.0;
    format!("{}\u{a0}GB", crate::quantity::format::editable(gigabytes, mark))
}
