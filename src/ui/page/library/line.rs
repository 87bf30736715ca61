//! A recipe in the list, and what can be done with it.

use super::facts::facts;
use super::history;
use super::list::{Head, ListedRecipe};
use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::*;
use crate::browser::page;
use crate::domain::Grade;
use crate::record::limits::LONGEST_NAME;
use crate::ui::part::finding::mark;
use crate::ui::part::version;
use crate::ui::part::version::differences::{Pair, differences_of};
use crate::ui::persistence::records;
use crate::ui::signal::{RwSignal, memo};
use crate::ui::state::{State, state};

/// What is open in a line.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Open {
    Nothing,
    Name,
    History,
}

/// The line.
pub fn line(line: ListedRecipe) -> View {
    let state = state();
    let page = &state.words.library_page;
    let open = RwSignal::new(Open::Nothing);
    let name = state.called(&line.name);
    let (recipe, head) = (line.recipe, line.head.seen.id);
    let on_page = move || (state.from.get() == Some(head)).then(|| el("span").class("badge").child(page.on_page));
    let released = line.released.as_ref().and_then(|seen| version::released(state, seen));
    let released = released.map(|released| el("span").class("badge").child(released));
    let facts = {
        let head = line.head.clone();
        memo(move || facts(state, &head))
    };
    let title = {
        let (name, now) = (name.clone(), line.name.clone());
        move || match open.get() {
            Open::Name => rename(state, head, now.clone(), open),
            Open::Nothing | Open::History => {
                el("h2").set("id", format!("name-{recipe}")).child(name.clone()).text(" ").child(on_page).view()
            }
        }
    };
    el("li")
        .class("line")
        .set("aria-labelledby", format!("name-{recipe}"))
        .child(title)
        .child(released)
        .child(el("p").class("note saved").child(version::line(state, &line.head.seen)))
        .child(el("p").class("facts").set("hidden", move || facts.with(String::is_empty)).child(move || facts.get()))
        .child((!line.note.trim().is_empty()).then(|| el("p").class("remark").child(line.note.clone())))
        .child((!line.tags.is_empty()).then(|| {
            el("ul").class("tags").child(line.tags.iter().map(|tag| el("li").child(tag.clone())).collect::<View>())
        }))
        .child((!line.others.is_empty()).then(|| heads(state, &line)))
        .child(actions(state, &line, &name, open))
        .child(move || (open.get() == Open::History).then(|| history::history(recipe, head)))
        .view()
}

/// Several heads: each can be opened, and saving one goes on from it.
fn heads(state: State, line: &ListedRecipe) -> View {
    let page = &state.words.library_page;
    let head = |head: &Head| {
        let (id, text) = (head.seen.id, version::line(state, &head.seen));
        let label = format!("{} {text}", page.open);
        let on_page = move || (state.from.get() == Some(id)).then(|| el("span").class("badge").child(page.on_page));
        el("li")
            .child(el("span").child(text))
            .child(el("span").class("note").child(facts(state, head)).text(" ").child(on_page))
            .child(button().set("aria-label", label).on_click(move || state.take_from_library(id)).child(page.open))
    };
    el("div")
        .class("finding unusual")
        .child(
            el("p")
                .child(mark(Grade::Unusual))
                .text(" ")
                .child(el("strong").child(page.versions))
                .text(". ")
                .child(page.versions_hint),
        )
        .child(side_by_side(state, line))
        .child(
            el("ul")
                .class("revisions")
                .child(std::iter::once(&line.head).chain(&line.others).map(head).collect::<View>()),
        )
        .view()
}

/// The latest two heads, to be made one.
fn side_by_side(state: State, line: &ListedRecipe) -> Option<View> {
    let pair = Pair { one: line.others.first()?.seen.id, other: line.head.seen.id, heads: true };
    let open = RwSignal::new(false);
    let see = button()
        .set("aria-expanded", move || if open.get() { "true" } else { "false" })
        .on_click(move || open.update(|open| *open = !*open))
        .child(state.words.library_page.side_by_side);
    Some(el("div").child(see).child(move || open.get().then(|| differences_of(pair))).view())
}

fn actions(state: State, line: &ListedRecipe, name: &str, open: RwSignal<Open>) -> View {
    let page = &state.words.library_page;
    let tools = &state.words.tools;
    let (recipe, head) = (line.recipe, line.head.seen.id);
    let label = |verb: &str| format!("{verb} {name}");
    let toggle = move |what: Open| open.update(|open| *open = if *open == what { Open::Nothing } else { what });
    let remove = move |_| {
        state.remove(recipe);
        // The line is gone; what takes it back is next.
        records::focus_undo(state);
    };
    let holds = line.released.as_ref().is_some_and(|released| released.id == head);
    let expanded = move || if open.get() == Open::History { "true" } else { "false" };
    el("div")
        .class("actions")
        .set("hidden", move || open.get() == Open::Name)
        .child(
            button()
                .class("primary")
                .set("aria-label", label(page.open))
                .on_click(move || state.take_from_library(head))
                .child(page.open),
        )
        .child(button().set("aria-label", label(tools.rename)).on_click(move || toggle(Open::Name)).child(tools.rename))
        .child(
            button()
                .set("aria-label", label(tools.duplicate))
                .on_click(move || state.duplicate(head))
                .child(tools.duplicate),
        )
        .child(
            button()
                .set("aria-label", label(tools.export))
                .on_click(move || state.give_out_revision(head))
                .child(tools.export),
        )
        .child((!holds).then(|| {
            let words = state.words.versions.release;
            button().set("aria-label", label(words)).on_click(move || state.release(head)).child(words)
        }))
        .child(line.released.as_ref().map(|released| {
            let (words, id) = (state.words.versions.withdraw, released.id);
            button().set("aria-label", label(words)).on_click(move || state.withdraw(id)).child(words)
        }))
        .child(
            button()
                .set("aria-label", label(page.history))
                .set("aria-expanded", expanded)
                .on_click(move || toggle(Open::History))
                .child(page.history),
        )
        .child(button().set("aria-label", label(tools.remove)).on("click", remove).child(tools.remove))
        .view()
}

/// The box for another name, in place of the name.
fn rename(state: State, head: crate::record::RevisionId, now: String, open: RwSignal<Open>) -> View {
    let page = &state.words.library_page;
    let tools = &state.words.tools;
    let id = format!("rename-{head}");
    let says = format!("{id}-says");
    let text = RwSignal::new(now.clone());
    let missing = RwSignal::new(false);
    let save = move || {
        let name = text.with_untracked(|text| text.trim().to_owned());
        missing.set(name.is_empty());
        if name.is_empty() {
            return;
        }
        open.set(Open::Nothing);
        if name != now {
            state.rename(head, &name);
        }
    };
    let enter = save.clone();
    let focused = id.clone();
    request_animation_frame(move || page::focus(&focused));
    el("div")
        .class("rename field")
        .child(el("label").set("for", id.clone()).child(page.new_name))
        .child(
            el("div").class("box").child(
                el("input")
                    .set("id", id)
                    .set("type", "text")
                    .set("maxlength", LONGEST_NAME.to_string())
                    .set("autocomplete", "off")
                    .set("aria-describedby", says.clone())
                    .set("aria-invalid", move || missing.get().then_some("true"))
                    .property("value", move || text.get())
                    .on("input", move |event| {
                        missing.set(false);
                        text.set(event_target_value(&event));
                    })
                    .on_key(move |event| match event.key().as_str() {
                        "Enter" => enter(),
                        "Escape" => open.set(Open::Nothing),
                        _ => {}
                    }),
            ),
        )
        .child(el("div").class("says").set("id", says).child(move || {
            missing
                .get()
                .then(|| el("p").class("finding stop").child(mark(Grade::Stop)).text(" ").child(page.name_missing))
        }))
        .child(
            el("div")
                .class("actions")
                .child(button().class("primary").on_click(save).child(tools.rename))
                .child(button().on_click(move || open.set(Open::Nothing)).child(tools.cancel)),
        )
        .view()
}
