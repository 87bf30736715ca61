//! What a save asks before it puts one revision over another, and that the page is behind.

use super::differences::{Side, compared};
use super::label;
use crate::browser::element::{El, Part, View, button, el, many};
use crate::domain::{Draft, Grade, Role};
use crate::record::RevisionId;
use crate::record::store::library::save::SaveQuestion;
use crate::ui::part::finding::mark;
use crate::ui::signal::RwSignal;
use crate::ui::state::{State, state};
use crate::ui::text::Message;
use leptos::reactive::prelude::*;

/// The question while there is one, else that the page shows an older revision than there is.
pub fn save_question() -> View {
    let state = state();
    let newer = state.newer_than_page();
    let shown = state.seen_on_page();
    let behind = move || {
        if state.question.get().is_some() {
            return None;
        }
        let (newer, shown) = (newer.get()?, shown.get()?);
        let words = &state.words.versions;
        let told = (words.behind)(&label(state, &newer), &label(state, &shown));
        let (id, name) = (newer.id, label(state, &newer));
        let (see, beside) = comparison(state, id, &name);
        let open = button().on_click(move || state.take_from_library(id)).child((words.open)(&name));
        Some(warning(told).child(el("div").class("actions").child(open).child(see)).child(beside))
    };
    many([
        el("div").class("save-question").set("role", "status").child(behind).view(),
        el("div")
            .class("save-question")
            .set("role", "alert")
            .child(move || state.question.get().and_then(|why| ask(state, why)))
            .view(),
    ])
    .view()
}

/// The ways out: a recipe of its own, on top of what is there, or a look at it first.
fn ask(state: State, why: SaveQuestion) -> Option<View> {
    let words = &state.words.versions;
    let shown = state.seen(state.from.get()?)?;
    let other = state.seen(why.revision())?;
    let name = label(state, &other);
    let (told, on_top) = match why {
        SaveQuestion::Behind(_) => ((words.ask_behind)(&name, &label(state, &shown)), (words.save_on_top)(&name)),
        SaveQuestion::OtherBinders(id) => {
            let before = state.library.with_untracked(|library| library.revision(id))?;
            let before = binders(state, &before.content().draft);
            let now = state.draft.with_untracked(|draft| binders(state, draft));
            ((words.ask_binders)(&before, &now), words.save_next.to_owned())
        }
    };
    let (see, beside) = comparison(state, why.revision(), &name);
    let actions = el("div")
        .class("actions")
        .child(button().class("primary").on_click(move || state.save_as_new_and_tell()).child(words.save_as_new))
        .child(button().on_click(move || state.save_on_top_and_tell()).child(on_top))
        .child(see)
        .child(button().on_click(move || state.question.set(None)).child(state.words.tools.cancel));
    Some(warning(told).child(actions).child(beside).view())
}

fn warning(Message { what, fix }: Message) -> El {
    let line = el("p").child(mark(Grade::Unusual)).text(" ").child(el("strong").child(what)).text(" ").child(fix);
    el("div").class("finding unusual").child(line)
}

/// A button, and the revision beside what is on the page once it was pressed.
fn comparison(state: State, id: RevisionId, name: &str) -> (El, View) {
    let open = RwSignal::new(false);
    let see = button()
        .set("aria-expanded", move || if open.get() { "true" } else { "false" })
        .on_click(move || open.update(|open| *open = !*open))
        .child((state.words.versions.compare)(name));
    let beside = move || {
        open.get().then(|| match Side::of_revision(state, id) {
            Some(saved) => compared(state, &saved, &Side::of_page(state)),
            None => el("p").child(state.words.library_page.no_revision).view(),
        })
    };
    (see, beside.view())
}

/// The binders by name, or that there is none.
fn binders(state: State, draft: &Draft) -> String {
    let binders = draft.liquids.iter().filter(|liquid| liquid.role == Role::Binder);
    let names: Vec<String> = binders.map(|liquid| (state.words.liquid)(liquid).into_owned()).collect();
    if names.is_empty() { state.words.tools.no_figure.to_owned() } else { names.join(" + ") }
}
