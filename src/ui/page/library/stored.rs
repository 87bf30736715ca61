//! What is stored beside the recipes: deleted ones, lines that were set aside, and what cannot be read.

use super::context::{AT_ONCE, LibraryContext};
use super::rows;
use crate::domain::Grade;
use crate::record::content::kept_line::KeptLine;
use crate::record::store::library::Unreadable;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::text::{Message, words};
use leptos::prelude::*;

/// The sections; each only where there is something.
#[component]
pub fn Stored() -> impl IntoView {
    view! {
        <DeletedRecipes/>
        <LinesAside/>
        <div id="stored" tabindex="-1">
            <UnreadableRecords/>
            <TextsAside/>
        </div>
    }
}

/// What was deleted can be restored, later as well.
#[component]
fn DeletedRecipes() -> impl IntoView {
    let state = expect_context::<State>();
    let library = expect_context::<LibraryContext>();
    let open = RwSignal::new(false);
    let count = Memo::new(move |_| library.found.with(|found| found.deleted));
    let line = move |(recipe, name, at): (_, String, u64)| {
        let name = state.called(&name);
        let label = format!("{} {name}", t!("library-restore-deleted"));
        view! {
            <li>
                <span>{name}</span>
                <span class="note">{when(at)}</span>
                <button type="button" aria-label=label on:click=move |_| state.put_back(recipe)>{t!("library-restore-deleted")}</button>
            </li>
        }
    };
    let lines = move || {
        let deleted = state.library.with(|library| rows::deleted(library, AT_ONCE));
        deleted.into_iter().map(line).collect_view()
    };
    view! {
        <section class="panel" aria-label=t!("library-deleted") hidden=move || count.get() == 0>
            <button
                type="button"
                class="bare"
                aria-expanded=move || if open.get() { "true" } else { "false" }
                on:click=move |_| open.update(|open| *open = !*open)
            >
                {move || t!("library-deleted-recipes", count = count.get())}
            </button>
            <Show when=move || open.get()><ul class="revisions">{lines}</ul></Show>
        </section>
    }
}

/// Lines that an import replaced.
#[component]
fn LinesAside() -> impl IntoView {
    let state = expect_context::<State>();
    let lines = Memo::new(move |_| state.library.with(|library| library.lines()).unwrap_or_default());
    let line = move |kept: KeptLine| {
        let name = state.called(&kept.content().name);
        let id = kept.line();
        let (open, delete) = (format!("{} {name}", t!("library-open")), format!("{} {name}", t!("library-delete")));
        view! {
            <li>
                <span>{name}</span>
                <span class="note">{when(kept.content().saved_at)}</span>
                <button type="button" aria-label=open on:click=move |_| state.open_line(id)>{t!("library-open")}</button>
                <button type="button" aria-label=delete on:click=move |_| state.delete_line(id)>{t!("library-delete")}</button>
            </li>
        }
    };
    let is_none = Memo::new(move |_| lines.with(Vec::is_empty));
    view! {
        <section class="panel" aria-labelledby="lines-aside" hidden=move || is_none.get()>
            <h2 id="lines-aside">{t!("library-lines")}</h2>
            <p class="note">{t!("library-lines-hint")}</p>
            <ul class="revisions" aria-label=t!("library-lines")>{move || lines.get().into_iter().map(line).collect_view()}</ul>
        </section>
    }
}

/// Records that cannot be read: shown, to be exported, and never touched.
#[component]
fn UnreadableRecords() -> impl IntoView {
    let state = expect_context::<State>();
    let records = Memo::new(move |_| state.library.with(|library| library.unreadable().cloned().collect::<Vec<_>>()));
    let record = move |Unreadable { key, why, text, .. }: Unreadable| {
        let Message { what, fix } = words::unread(&why);
        let export = text.map(|text| view! { <ExportText key=key.clone() text=text/> });
        view! {
            <li>
                <p><Mark grade=Grade::Stop/> " " <strong>{what}</strong> " " {fix}</p>
                <p class="note">{t!("library-key")} " " <code>{key}</code></p>
                {export}
            </li>
        }
    };
    let is_none = Memo::new(move |_| records.with(Vec::is_empty));
    view! {
        <section class="panel unreadable" aria-labelledby="unreadable" hidden=move || is_none.get()>
            <h2 id="unreadable">{t!("library-unreadable")}</h2>
            <p class="note">{t!("library-unreadable-hint")}</p>
            <ul>{move || records.get().into_iter().map(record).collect_view()}</ul>
        </section>
    }
}

/// Texts that could not be read and had to make room.
#[component]
fn TextsAside() -> impl IntoView {
    let state = expect_context::<State>();
    let texts = Memo::new(move |_| state.aside());
    let text = move |(key, text): (String, String)| {
        view! {
            <li>
                <p class="note">{t!("library-key")} " " <code>{key.clone()}</code></p>
                <ExportText key=key text=text/>
            </li>
        }
    };
    let is_none = Memo::new(move |_| texts.with(Vec::is_empty));
    view! {
        <section class="panel unreadable" aria-labelledby="texts-aside" hidden=move || is_none.get()>
            <h2 id="texts-aside">{t!("library-aside")}</h2>
            <p class="note">{t!("library-aside-hint")}</p>
            <ul>{move || texts.get().into_iter().map(text).collect_view()}</ul>
        </section>
    }
}

#[component]
fn ExportText(
    /// Under which key it is stored.
    key: String,
    /// The text.
    text: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    let label = format!("{} {key}", t!("library-export-text"));
    view! {
        <button type="button" aria-label=label on:click=move |_| state.give_out_text(&key, &text)>{t!("library-export-text")}</button>
    }
}
