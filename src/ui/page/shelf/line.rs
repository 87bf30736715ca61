//! A recipe in the list, and what can be done with it.

use super::history;
use super::list::{Head, Line};
use crate::browser::element::{Part, View, el};
use crate::browser::page;
use crate::domain::{Entry, Grade};
use crate::quantity::Kind;
use crate::ui::erased::memo;
use crate::ui::field::number_text::in_box;
use crate::ui::part::announce::UNDO;
use crate::ui::part::figure::joined;
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::state::{State, state};
use leptos::prelude::*;

/// What is open in a line.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Open {
    Nothing,
    Name,
    History,
}

/// The line.
pub fn line(line: Line) -> View {
    let state = state();
    let page = &state.words.shelf_page;
    let open = RwSignal::new(Open::Nothing);
    let name = state.called(&line.name);
    let (recipe, head) = (line.recipe, line.head.id);
    let on_page = move || (state.from.get() == Some(head)).then(|| el("span").class("badge").add(page.on_page));
    let facts = {
        let head = line.head.clone();
        memo(move || facts(state, &head))
    };
    let title = {
        let (name, now) = (name.clone(), line.name.clone());
        move || match open.get() {
            Open::Name => rename(state, head, now.clone(), open),
            Open::Nothing | Open::History => {
                el("h2").set("id", format!("name-{recipe}")).add(name.clone()).text(" ").add(on_page).view()
            }
        }
    };
    el("li")
        .class("line")
        .set("aria-labelledby", format!("name-{recipe}"))
        .add(title)
        .add(el("p").class("note saved").add(page.saved_on).text(" ").add(saved(&line.head)))
        .add(el("p").class("facts").set("hidden", move || facts.with(String::is_empty)).add(move || facts.get()))
        .add((!line.note.trim().is_empty()).then(|| el("p").class("remark").add(line.note.clone())))
        .add((!line.tags.is_empty()).then(|| {
            el("ul").class("tags").add(line.tags.iter().map(|tag| el("li").add(tag.clone())).collect::<View>())
        }))
        .add((!line.others.is_empty()).then(|| heads(state, &line)))
        .add(actions(state, &line, &name, open))
        .add(move || (open.get() == Open::History).then(|| history::history(recipe, head)))
        .view()
}

/// "UF resin · 15 mm · 680 kg/m³", in the units chosen.
pub fn facts(state: State, head: &Head) -> String {
    let binders: Vec<&str> =
        head.substances.iter().filter(|each| each.is_binder()).map(|each| (state.words.substance)(*each)).collect();
    let entry = |entry: &Entry, kind: Kind| {
        let units = state.units.get();
        if entry.is_blank() {
            String::new()
        } else if entry.unit.dimension() == kind.dimension() {
            joined(&in_box(entry, kind, &units), units.unit(kind).symbol())
        } else {
            joined(&entry.text, entry.unit.symbol())
        }
    };
    let parts =
        [binders.join(" + "), entry(&head.thickness, Kind::Thickness), entry(&head.density, Kind::BoardDensity)];
    parts.iter().filter(|part| !part.is_empty()).map(String::as_str).collect::<Vec<_>>().join(" · ")
}

/// "10:42 · MK"
pub fn saved(head: &Head) -> String {
    let when = when(head.saved_at);
    if head.author.is_empty() { when } else { format!("{when} · {}", head.author) }
}

/// Several heads: each can be opened, and saving one goes on from it.
fn heads(state: State, line: &Line) -> View {
    let page = &state.words.shelf_page;
    let head = |head: &Head| {
        let (id, text) = (head.id, saved(head));
        let label = format!("{} {text}", page.open);
        let on_page = move || (state.from.get() == Some(id)).then(|| el("span").class("badge").add(page.on_page));
        el("li")
            .add(el("span").add(text))
            .add(el("span").class("note").add(facts(state, head)).text(" ").add(on_page))
            .add(
                el("button")
                    .set("type", "button")
                    .set("aria-label", label)
                    .on_click(move || state.take_from_shelf(id))
                    .add(page.open),
            )
    };
    el("div")
        .class("finding unusual")
        .add(
            el("p")
                .add(mark(Grade::Unusual))
                .text(" ")
                .add(el("strong").add(page.versions))
                .text(". ")
                .add(page.versions_hint),
        )
        .add(
            el("ul")
                .class("revisions")
                .add(std::iter::once(&line.head).chain(&line.others).map(head).collect::<View>()),
        )
        .view()
}

fn actions(state: State, line: &Line, name: &str, open: RwSignal<Open>) -> View {
    let page = &state.words.shelf_page;
    let tools = &state.words.tools;
    let (recipe, head) = (line.recipe, line.head.id);
    let label = |verb: &str| format!("{verb} {name}");
    let toggle = move |what: Open| open.update(|open| *open = if *open == what { Open::Nothing } else { what });
    let remove = move |_| {
        state.remove(recipe);
        // The line is gone; what takes it back is next.
        request_animation_frame(|| page::focus(UNDO));
    };
    let expanded = move || if open.get() == Open::History { "true" } else { "false" };
    el("div")
        .class("actions")
        .set("hidden", move || open.get() == Open::Name)
        .add(
            el("button")
                .set("type", "button")
                .class("primary")
                .set("aria-label", label(page.open))
                .on_click(move || state.take_from_shelf(head))
                .add(page.open),
        )
        .add(
            el("button")
                .set("type", "button")
                .set("aria-label", label(tools.rename))
                .on_click(move || toggle(Open::Name))
                .add(tools.rename),
        )
        .add(
            el("button")
                .set("type", "button")
                .set("aria-label", label(tools.duplicate))
                .on_click(move || state.duplicate(head))
                .add(tools.duplicate),
        )
        .add(
            el("button")
                .set("type", "button")
                .set("aria-label", label(tools.export))
                .on_click(move || state.give_out_revision(head))
                .add(tools.export),
        )
        .add(
            el("button")
                .set("type", "button")
                .set("aria-label", label(page.history))
                .set("aria-expanded", expanded)
                .on_click(move || toggle(Open::History))
                .add(page.history),
        )
        .add(
            el("button")
                .set("type", "button")
                .set("aria-label", label(tools.remove))
                .on("click", remove)
                .add(tools.remove),
        )
        .view()
}

/// The box for another name, in place of the name.
fn rename(state: State, head: crate::record::RevisionId, now: String, open: RwSignal<Open>) -> View {
    let page = &state.words.shelf_page;
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
        .add(el("label").set("for", id.clone()).add(page.new_name))
        .add(
            el("div").class("box").add(
                el("input")
                    .set("id", id)
                    .set("type", "text")
                    .set("autocomplete", "off")
                    .set("aria-describedby", says.clone())
                    .set("aria-invalid", move || missing.get().then_some("true"))
                    .property("value", move || text.get())
                    .on("input", move |event| text.set(event_target_value(&event)))
                    .on_key(move |event| match event.key().as_str() {
                        "Enter" => enter(),
                        "Escape" => open.set(Open::Nothing),
                        _ => {}
                    }),
            ),
        )
        .add(el("div").class("says").set("id", says).add(move || {
            missing.get().then(|| el("p").class("finding stop").add(mark(Grade::Stop)).text(" ").add(page.name_missing))
        }))
        .add(
            el("div")
                .class("actions")
                .add(el("button").set("type", "button").class("primary").on_click(move || save()).add(tools.rename))
                .add(el("button").set("type", "button").on_click(move || open.set(Open::Nothing)).add(tools.cancel)),
        )
        .view()
}
