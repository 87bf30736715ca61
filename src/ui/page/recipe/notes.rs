//! Note, tags, and the note on the next save.

use crate::record::limits::{LONGEST_NAME, LONGEST_NOTE};
use crate::t;
use crate::ui::components::{TextArea, TextBox};
use crate::ui::state::{Session, State};
use leptos::prelude::*;

/// What is written about the recipe.
#[component]
pub fn Notes() -> impl IntoView {
    let state = expect_context::<State>();
    let note = Memo::new(move |_| state.title.with(|title| title.note.clone()));
    let tags = Memo::new(move |_| state.title.with(|title| title.tags.join(", ")));
    let leave = Callback::new(move |()| state.leave());
    let put_note = Callback::new(move |text: String| {
        state.edit_title(Session::Note, |title| title.note.clone_from(&text));
    });
    let put_tags = Callback::new(move |text: String| {
        let tags: Vec<String> =
            text.split(',').map(|tag| tag.trim().to_owned()).filter(|tag| !tag.is_empty()).collect();
        state.edit_title(Session::Tags, |title| title.tags.clone_from(&tags));
    });
    let put_remark = Callback::new(move |text: String| state.remark.set(text));
    view! {
        <div class="notes">
            <TextArea id="recipe-note" label=t!("recipe-note") value=note longest=LONGEST_NOTE on_input=put_note on_leave=leave/>
            <TextBox
                id="recipe-tags"
                label=t!("recipe-tags")
                hint=t!("recipe-tags-hint")
                value=tags
                longest=LONGEST_NAME
                when_left=true
                on_input=put_tags
                on_leave=leave
            />
            <TextArea
                id="recipe-remark"
                label=t!("recipe-change-note")
                value=Signal::derive(move || state.remark.get())
                longest=LONGEST_NOTE
                on_input=put_remark
                on_leave=leave
            />
        </div>
    }
}
