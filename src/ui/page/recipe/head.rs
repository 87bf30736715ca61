//! The head of the recipe page: what it is called, how it stands, and what can be done with it.

use crate::browser::{clock, page, print};
use crate::ui::erased::{attr, derive, flag, memo, on, prop};
use crate::ui::field::text;
use crate::ui::keep;
use crate::ui::part::save;
use crate::ui::state::{Session, State, state};
use leptos::prelude::*;

/// Name, standing, and the buttons.
pub fn head() -> AnyView {
    let state = state();
    let words = &state.words.recipe_page;
    let name = derive(move || state.title.with(|title| title.name.clone()));
    view! {
        <section class="head" aria-label=words.title>
            <h1 class="out-of-sight">{words.title}</h1>
            <div class="name">
                <label class="out-of-sight" for=save::NAME>{words.name}</label>
                <input
                    id=save::NAME
                    type="text"
                    autocomplete="off"
                    placeholder=words.untitled
                    aria-describedby=save::SAYS
                    aria-invalid=attr(move || state.naming.get().then_some("true"))
                    prop:value=prop(move || name.get())
                    on:input=on(move |event| {
                        let text = event_target_value(&event);
                        state.edit_title(Session::Name, &mut |title| title.name.clone_from(&text));
                    })
                    on:change=on(move |_| state.leave())
                    on:keydown=on(move |event: leptos::ev::KeyboardEvent| {
                        if event.key() == "Enter" && state.naming.get_untracked() && state.save() {
                            state.tell(state.words.tools.saved);
                        }
                    })
                />
                {save::says()}
            </div>
            {actions(state)} {standing(state)} {example(state)}
            <details class="more">
                <summary>{words.note} ", " {words.tags}</summary>
                <div class="fields">{note(state)} {tags(state)}</div>
            </details>
        </section>
    }
    .into_any()
}

/// What is on the screen at a first start is marked as what it is.
fn example(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    view! {
        <p class="example" hidden=flag(move || !state.example.get())>
            <strong>{words.example}</strong>
            " "
            {words.example_hint}
        </p>
    }
    .into_any()
}

/// When it was saved and as which revision, or that it is not saved as it stands.
fn standing(state: State) -> AnyView {
    let words = state.words;
    let saved = {
        let saved = state.saved();
        state.cell(move || saved.get())
    };
    let summary = memo(move || {
        let id = state.from.get()?;
        state.shelf.with(|shelf| {
            let at = shelf.revision(id)?;
            let history = shelf.history(at.recipe());
            let number = history.iter().filter(|other| other.saved_at <= at.content().saved_at).count();
            Some((number, clock::date_time(at.content().saved_at)))
        })
    });
    let told = move || match (summary.get(), saved.get()) {
        (Some((number, at)), true) => {
            format!("{} {number} · {} {at}", words.recipe_page.revision, words.tools.saved_at)
        }
        (Some((number, _)), false) => {
            format!("{} {number} · {}", words.recipe_page.revision, words.tools.changed)
        }
        (None, _) => words.tools.not_saved.to_owned(),
    };
    view! { <p class="standing-of-save" id="save-state" hidden=flag(move || state.example.get())>{told}</p> }.into_any()
}

fn actions(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    let tools = &state.words.tools;
    let undo = state.cell(move || state.can_undo());
    let redo = state.cell(move || state.can_redo());
    let blank = move |_| {
        state.open(keep::blank());
        state.tell_step(words.new);
        page::focus(save::NAME);
    };
    view! {
        <div class="actions">
            <button type="button" class="primary" on:click=on(move |_| if state.save() { state.tell(tools.saved) })>{tools.save}</button>
            <button type="button" on:click=on(move |_| state.give_out())>{tools.export}</button>
            <button type="button" aria-disabled=attr(move || (!undo.get()).then_some("true")) on:click=on(move |_| state.undo())>{tools.undo}</button>
            <button type="button" aria-disabled=attr(move || (!redo.get()).then_some("true")) on:click=on(move |_| state.redo())>{tools.redo}</button>
            <button type="button" on:click=blank>{words.new}</button>
            <button type="button" on:click=|_| _ = print::print()>{tools.print}</button>
        </div>
    }
    .into_any()
}

fn note(state: State) -> AnyView {
    let now = derive(move || state.title.with(|title| title.note.clone()));
    let put = Callback::new(move |text: String| {
        state.edit_title(Session::Note, &mut |title| title.note.clone_from(&text));
    });
    text::lines("recipe-note".to_owned(), state.words.recipe_page.note, now, put)
}

/// The tags in one box, with commas between them. What is typed stays as it is until the box is left.
fn tags(state: State) -> AnyView {
    let now = derive(move || state.title.with(|title| title.tags.join(", ")));
    view! {
        <div class="field wide">
            <label for="recipe-tags">{state.words.recipe_page.tags}</label>
            <div class="box">
                <input
                    id="recipe-tags"
                    type="text"
                    autocomplete="off"
                    aria-describedby="recipe-tags-hint"
                    prop:value=prop(move || now.get())
                    on:change=on(move |event| {
                        let tags: Vec<String> = event_target_value(&event)
                            .split(',')
                            .map(|tag| tag.trim().to_owned())
                            .filter(|tag| !tag.is_empty())
                            .collect();
                        state.edit_title(Session::Tags, &mut |title| title.tags.clone_from(&tags));
                        state.leave();
                    })
                />
            </div>
            <p class="aside" id="recipe-tags-hint">{state.words.recipe_page.tags_hint}</p>
        </div>
    }
    .into_any()
}
