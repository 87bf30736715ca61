//! The head of the recipe page: what it is called, how it stands, and what can be done with it.

use crate::browser::element::{Part, View, button, el, many};
use crate::browser::graph::spawn_local;
use crate::browser::graph::*;
use crate::browser::{link, page, print};
use crate::record::limits::LONGEST_NAME;
use crate::ui::field::text;
use crate::ui::part::code::code;
use crate::ui::part::fold::fold;
use crate::ui::part::save;
use crate::ui::part::version;
use crate::ui::part::version::save_question::save_question;
use crate::ui::persistence;
use crate::ui::signal::memo;
use crate::ui::state::{Session, State, state};

/// Name, standing, and the buttons.
pub fn head() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let name = memo(move || state.title.with(|title| title.name.clone()));
    el("section")
        .class("head")
        .set("aria-label", words.title)
        .child(el("h1").class("out-of-sight").child(words.title))
        .child(
            el("div")
                .class("name")
                .child(el("label").class("out-of-sight").set("for", save::NAME).child(words.name))
                .child(
                    el("input")
                        .set("id", save::NAME)
                        .set("type", "text")
                        .set("maxlength", LONGEST_NAME.to_string())
                        .set("autocomplete", "off")
                        .set("placeholder", words.untitled)
                        .set("aria-describedby", save::SAYS)
                        .set("aria-invalid", move || save::is_name_missing(state).then_some("true"))
                        .property("value", move || name.get())
                        .on("input", move |event| {
                            let text = event_target_value(&event);
                            state.edit_title(Session::Name, |title| title.name.clone_from(&text));
                        })
                        .on("change", move |_| state.leave())
                        .on_key(move |event| {
                            if event.key() == "Enter" && state.naming.get_untracked() {
                                state.save_and_tell();
                            }
                        }),
                )
                .child(save::says()),
        )
        .child(actions(state))
        .child(standing(state))
        .child(save_question())
        .child(example(state))
        .child(pass_on(state))
        .child(
            el("details")
                .class("more")
                .child(el("summary").child(words.note).text(", ").child(words.tags).text(", ").child(words.remark))
                .child(el("div").class("fields").child(note(state)).child(tags(state)).child(remark(state))),
        )
        .view()
}

/// The recipe as a link and as a code for another device's camera.
fn pass_on(state: State) -> View {
    let words = &state.words.recipe_page;
    fold(words.pass_on, move || {
        let copy = move || {
            let Some(link) = state.link.get_untracked() else { return };
            spawn_local(async move {
                state.tell(if link::copy(&link).await { words.link_copied } else { words.link_not_copied });
            });
        };
        let shown = move || {
            let Some(link) = state.link.get() else { return el("p").child(words.no_link).view() };
            let code = code(&link, words.code);
            let box_of_link = el("input")
                .set("id", "link")
                .set("type", "text")
                .set("maxlength", LONGEST_NAME.to_string())
                .set("readonly", true)
                .set("aria-label", words.link)
                .set("value", link);
            el("div")
                .class("pass-on")
                .child(el("div").class("box").child(box_of_link))
                .child(button().on_click(copy).child(words.copy_link))
                .child(code)
                .view()
        };
        el("div").child(el("p").class("note").child(words.link_hint)).child(shown).view()
    })
}

/// What is on the screen at a first start is marked as what it is.
fn example(state: State) -> View {
    let words = &state.words.recipe_page;
    el("p")
        .class("example")
        .set("hidden", move || !state.example.get())
        .child(el("strong").child(words.example))
        .text(" ")
        .child(words.example_hint)
        .view()
}

/// When it was saved and as which revision, or that it is not saved as it stands.
fn standing(state: State) -> View {
    let words = state.words;
    let saved = {
        let saved = state.saved();
        state.cell(move || saved.get())
    };
    let seen = state.seen_on_page();
    let told = move || match seen.get() {
        Some(seen) => version::headline(state, &seen, saved.get()),
        None => words.tools.not_saved.to_owned(),
    };
    let released = state.released_of_page();
    let released = move || released.get().and_then(|seen| version::released(state, &seen));
    many([
        el("p")
            .class("standing-of-save")
            .set("id", "save-state")
            .set("hidden", move || state.example.get())
            .child(told)
            .view(),
        el("p")
            .class("standing-of-save")
            .set("id", "release-state")
            .set("hidden", move || released().is_none())
            .child(released)
            .view(),
    ])
    .view()
}

fn actions(state: State) -> View {
    let words = &state.words.recipe_page;
    let tools = &state.words.tools;
    let undo = state.cell(move || state.can_undo());
    let redo = state.cell(move || state.can_redo());
    let blank = move |_| {
        state.open(persistence::blank());
        state.tell_step(words.new);
        page::focus(save::NAME);
    };
    el("div")
        .class("actions")
        .child(button().class("primary").on_click(move || state.save_and_tell()).child(tools.save))
        .child(button().on_click(move || state.save_as_new_and_tell()).child(state.words.versions.save_as_new))
        .child(button().on_click(move || state.give_out()).child(tools.export))
        .child(
            button()
                .set("aria-disabled", move || (!undo.get()).then_some("true"))
                .on_click(move || state.undo())
                .child(tools.undo),
        )
        .child(
            button()
                .set("aria-disabled", move || (!redo.get()).then_some("true"))
                .on_click(move || state.redo())
                .child(tools.redo),
        )
        .child(button().on("click", blank).child(words.new))
        .child(button().on("click", |_| _ = print::print()).child(tools.print))
        .view()
}

fn note(state: State) -> View {
    let now = memo(move || state.title.with(|title| title.note.clone()));
    let put = Callback::new(move |text: String| {
        state.edit_title(Session::Note, |title| title.note.clone_from(&text));
    });
    text::lines("recipe-note".to_owned(), state.words.recipe_page.note, now, put)
}

/// Why the next revision is saved; it stands beside that one in the history.
fn remark(state: State) -> View {
    let now = memo(move || state.remark.get());
    let put = Callback::new(move |text: String| state.remark.set(text));
    text::lines("recipe-remark".to_owned(), state.words.recipe_page.remark, now, put)
}

/// The tags in one box, with commas between them. What is typed stays as it is until the box is left.
fn tags(state: State) -> View {
    let now = memo(move || state.title.with(|title| title.tags.join(", ")));
    el("div")
        .class("field wide")
        .child(el("label").set("for", "recipe-tags").child(state.words.recipe_page.tags))
        .child(
            el("div").class("box").child(
                el("input")
                    .set("id", "recipe-tags")
                    .set("type", "text")
                    .set("maxlength", LONGEST_NAME.to_string())
                    .set("autocomplete", "off")
                    .set("aria-describedby", "recipe-tags-hint")
                    .property("value", move || now.get())
                    .on("change", move |event| {
                        let tags: Vec<String> = event_target_value(&event)
                            .split(',')
                            .map(|tag| tag.trim().to_owned())
                            .filter(|tag| !tag.is_empty())
                            .collect();
                        state.edit_title(Session::Tags, |title| title.tags.clone_from(&tags));
                        state.leave();
                    }),
            ),
        )
        .child(el("p").class("aside").set("id", "recipe-tags-hint").child(state.words.recipe_page.tags_hint))
        .view()
}
