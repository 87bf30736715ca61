//! What is stored and cannot be read: shown, to be saved to a file, and never touched.

use crate::browser::element::{Part, View, el, many};
use crate::domain::Grade;
use crate::ui::part::finding::mark;
use crate::ui::state::state;
use crate::ui::text::Message;
use leptos::prelude::*;

/// The records that cannot be read, and the texts that had to make room.
pub fn strays() -> View {
    let state = state();
    let page = &state.words.shelf_page;
    let save = move |key: String, text: String| {
        let label = format!("{} {key}", page.save_text);
        el("button")
            .set("type", "button")
            .set("aria-label", label)
            .on_click(move || state.give_out_text(&key, &text))
            .add(page.save_text)
    };
    let unreadable = move || {
        let records = state.shelf.with(|shelf| shelf.unreadable().cloned().collect::<Vec<_>>());
        let record = move |record: crate::record::shelf::Unreadable| {
            let Message { what, mend } = (state.words.unread)(&record.why);
            el("li")
                .class("finding stop")
                .add(el("p").add(mark(Grade::Stop)).text(" ").add(el("strong").add(what)).text(" ").add(mend))
                .add(el("p").class("note").add(page.key).text(" ").add(el("code").add(record.key.clone())))
                .add(record.text.map(|text| save(record.key, text)))
        };
        (!records.is_empty()).then(|| {
            el("section")
                .class("strays")
                .add(el("h2").add(page.unreadable))
                .add(el("p").add(page.unreadable_hint))
                .add(el("ul").add(records.into_iter().map(record).collect::<View>()))
        })
    };
    let aside = move || {
        let texts = state.aside();
        let text = move |(key, text): (String, String)| {
            el("li")
                .class("finding")
                .add(el("p").class("note").add(page.key).text(" ").add(el("code").add(key.clone())))
                .add(save(key, text))
        };
        (!texts.is_empty()).then(|| {
            el("section")
                .class("strays")
                .add(el("h2").add(page.aside))
                .add(el("p").add(page.aside_hint))
                .add(el("ul").add(texts.into_iter().map(text).collect::<View>()))
        })
    };
    many([unreadable.view(), aside.view()]).view()
}
