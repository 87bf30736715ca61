//! A recipe in the list, and what can be done with it.

use super::history;
use super::list::{Head, Line};
use crate::browser::page;
use crate::domain::{Entry, Grade};
use crate::quantity::Kind;
use crate::ui::erased::{attr, flag, live, memo, on, prop};
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
pub fn line(line: Line) -> AnyView {
    let state = state();
    let page = &state.words.shelf_page;
    let open = RwSignal::new(Open::Nothing);
    let name = state.called(&line.name);
    let (recipe, head) = (line.recipe, line.head.id);
    let on_page = move || (state.from.get() == Some(head)).then(|| view! { <span class="badge">{page.on_page}</span> });
    let facts = {
        let head = line.head.clone();
        memo(move || facts(state, &head))
    };
    let title = {
        let (name, now) = (name.clone(), line.name.clone());
        move || match open.get() {
            Open::Name => rename(state, head, now.clone(), open),
            Open::Nothing | Open::History => {
                view! { <h2 id=format!("name-{recipe}")>{name.clone()} " " {on_page}</h2> }.into_any()
            }
        }
    };
    view! {
        <li class="line" aria-labelledby=format!("name-{recipe}")>
            {title}
            <p class="note saved">{page.saved_on} " " {saved(&line.head)}</p>
            <p class="facts" hidden=flag(move || facts.with(String::is_empty))>{live(move || facts.get())}</p>
            {(!line.note.trim().is_empty()).then(|| view! { <p class="remark">{line.note.clone()}</p> })}
            {(!line.tags.is_empty()).then(|| {
                view! { <ul class="tags">{line.tags.iter().map(|tag| view! { <li>{tag.clone()}</li> }).collect_view()}</ul> }
            })}
            {(!line.others.is_empty()).then(|| heads(state, &line))}
            {actions(state, &line, &name, open)}
            {live(move || (open.get() == Open::History).then(|| history::history(recipe, head)))}
        </li>
    }
    .into_any()
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
fn heads(state: State, line: &Line) -> AnyView {
    let page = &state.words.shelf_page;
    let head = |head: &Head| {
        let (id, text) = (head.id, saved(head));
        let label = format!("{} {text}", page.open);
        let on_page =
            move || (state.from.get() == Some(id)).then(|| view! { <span class="badge">{page.on_page}</span> });
        view! {
            <li>
                <span>{text}</span>
                <span class="note">{facts(state, head)} " " {live(on_page)}</span>
                <button type="button" aria-label=label on:click=on(move |_| state.take_from_shelf(id))>{page.open}</button>
            </li>
        }
    };
    view! {
        <div class="finding unusual">
            <p>{mark(Grade::Unusual)} " " <strong>{page.versions}</strong> ". " {page.versions_hint}</p>
            <ul class="revisions">{std::iter::once(&line.head).chain(&line.others).map(head).collect_view()}</ul>
        </div>
    }
    .into_any()
}

fn actions(state: State, line: &Line, name: &str, open: RwSignal<Open>) -> AnyView {
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
    view! {
        <div class="actions" hidden=flag(move || open.get() == Open::Name)>
            <button type="button" class="primary" aria-label=label(page.open) on:click=on(move |_| state.take_from_shelf(head))>{page.open}</button>
            <button type="button" aria-label=label(tools.rename) on:click=on(move |_| toggle(Open::Name))>{tools.rename}</button>
            <button type="button" aria-label=label(tools.duplicate) on:click=on(move |_| state.duplicate(head))>{tools.duplicate}</button>
            <button type="button" aria-label=label(tools.export) on:click=on(move |_| state.give_out_revision(head))>{tools.export}</button>
            <button type="button" aria-label=label(page.history) aria-expanded=expanded on:click=on(move |_| toggle(Open::History))>{page.history}</button>
            <button type="button" aria-label=label(tools.remove) on:click=remove>{tools.remove}</button>
        </div>
    }
    .into_any()
}

/// The box for another name, in place of the name.
fn rename(state: State, head: crate::record::RevisionId, now: String, open: RwSignal<Open>) -> AnyView {
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
    view! {
        <div class="rename field">
            <label for=id.clone()>{page.new_name}</label>
            <div class="box">
                <input
                    id=id
                    type="text"
                    autocomplete="off"
                    aria-describedby=says.clone()
                    aria-invalid=attr(move || missing.get().then_some("true"))
                    prop:value=prop(move || text.get())
                    on:input=on(move |event| text.set(event_target_value(&event)))
                    on:keydown=on(move |event: leptos::ev::KeyboardEvent| match event.key().as_str() {
                        "Enter" => enter(),
                        "Escape" => open.set(Open::Nothing),
                        _ => {}
                    })
                />
            </div>
            <div class="says" id=says>
                {live(move || missing.get().then(|| view! { <p class="finding stop">{mark(Grade::Stop)} " " {page.name_missing}</p> }))}
            </div>
            <div class="actions">
                <button type="button" class="primary" on:click=on(move |_| save())>{tools.rename}</button>
                <button type="button" on:click=on(move |_| open.set(Open::Nothing))>{tools.cancel}</button>
            </div>
        </div>
    }
    .into_any()
}
