//! What is stored and cannot be read: shown, to be saved to a file, and never touched.

use crate::domain::Grade;
use crate::ui::erased::on;
use crate::ui::part::finding::mark;
use crate::ui::state::state;
use crate::ui::text::Message;
use leptos::prelude::*;

/// The records that cannot be read, and the texts that had to make room.
pub fn strays() -> AnyView {
    let state = state();
    let page = &state.words.shelf_page;
    let save = move |key: String, text: String| {
        let label = format!("{} {key}", page.save_text);
        view! {
            <button type="button" aria-label=label on:click=on(move |_| state.give_out_text(&key, &text))>{page.save_text}</button>
        }
    };
    let unreadable = move || {
        let records = state.shelf.with(|shelf| shelf.unreadable().cloned().collect::<Vec<_>>());
        let record = move |record: crate::record::shelf::Unreadable| {
            let Message { what, mend } = (state.words.unread)(&record.why);
            view! {
                <li class="finding stop">
                    <p>{mark(Grade::Stop)} " " <strong>{what}</strong> " " {mend}</p>
                    <p class="note">{page.key} " " <code>{record.key.clone()}</code></p>
                    {record.text.map(|text| save(record.key, text))}
                </li>
            }
        };
        (!records.is_empty()).then(|| {
            view! {
                <section class="strays">
                    <h2>{page.unreadable}</h2>
                    <p>{page.unreadable_hint}</p>
                    <ul>{records.into_iter().map(record).collect_view()}</ul>
                </section>
            }
        })
    };
    let aside = move || {
        let texts = state.aside();
        let text = move |(key, text): (String, String)| {
            view! { <li class="finding"><p class="note">{page.key} " " <code>{key.clone()}</code></p> {save(key, text)}</li> }
        };
        (!texts.is_empty()).then(|| {
            view! {
                <section class="strays">
                    <h2>{page.aside}</h2>
                    <p>{page.aside_hint}</p>
                    <ul>{texts.into_iter().map(text).collect_view()}</ul>
                </section>
            }
        })
    };
    view! { {unreadable} {aside} }.into_any()
}
