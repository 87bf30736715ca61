//! What is stored and cannot be read: shown, to be saved to a file, and never touched.

use crate::browser::element::{Part, View, button, el, many};
use crate::domain::Grade;
use crate::ui::part::finding::mark;
use crate::ui::state::state;
use crate::ui::text::Message;
use leptos::reactive::prelude::*;

/// The records that cannot be read, and the texts that had to make room.
pub fn unreadable() -> View {
    let state = state();
    let page = &state.words.library_page;
    let save = move |key: String, text: String| {
        let label = format!("{} {key}", page.save_text);
        button().set("aria-label", label).on_click(move || state.give_out_text(&key, &text)).child(page.save_text)
    };
    let unreadable = move || {
        let records = state.library.with(|library| library.unreadable().cloned().collect::<Vec<_>>());
        let record = move |record: crate::record::store::library::Unreadable| {
            let Message { what, fix } = (state.words.unread)(&record.why);
            el("li")
                .class("finding stop")
                .child(el("p").child(mark(Grade::Stop)).text(" ").child(el("strong").child(what)).text(" ").child(fix))
                .child(el("p").class("note").child(page.key).text(" ").child(el("code").child(record.key.clone())))
                .child(record.text.map(|text| save(record.key, text)))
        };
        (!records.is_empty()).then(|| {
            el("section")
                .class("unreadable")
                .child(el("h2").child(page.unreadable))
                .child(el("p").child(page.unreadable_hint))
                .child(el("ul").child(records.into_iter().map(record).collect::<View>()))
        })
    };
    let aside = move || {
        let texts = state.aside();
        let text = move |(key, text): (String, String)| {
            el("li")
                .class("finding")
                .child(el("p").class("note").child(page.key).text(" ").child(el("code").child(key.clone())))
                .child(save(key, text))
        };
        (!texts.is_empty()).then(|| {
            el("section")
                .class("unreadable")
                .child(el("h2").child(page.aside))
                .child(el("p").child(page.aside_hint))
                .child(el("ul").child(texts.into_iter().map(text).collect::<View>()))
        })
    };
    many([unreadable.view(), aside.view()]).view()
}
