//! Everything there is to say, and the cautions that apply.

use crate::browser::page;
use crate::domain::{Caution, Grade, Place, cautions};
use crate::ui::erased::{flag, live};
use crate::ui::part::finding::says;
use crate::ui::state::{Said, State, state};
use leptos::prelude::*;

/// The findings, the gravest first, then the cautions.
pub fn all() -> AnyView {
    let state = state();
    let words = &state.words.recipe_page;
    let findings = state.cell(move || state.said(|_| true));
    view! {
        <section class="group findings" aria-labelledby="findings">
            <h2 id="findings">{words.findings}</h2>
            <p hidden=flag(move || !findings.with(Vec::is_empty))>{words.no_findings}</p>
            <ul>{live(move || findings.get().into_iter().map(|said| line(state, said)).collect_view())}</ul>
        </section>
        {applying(state)}
    }
    .into_any()
}

fn line(state: State, said: Said) -> AnyView {
    let finding = said.finding;
    let go = match finding.place {
        Place::Field(field) => Some(move |_| page::focus_field(&field.key())),
        Place::Liquid(_) | Place::Station(_) => None,
    };
    let words = &state.words.recipe_page;
    view! {
        <li class:stop=finding.grade == Grade::Stop>
            {says(said)}
            {go.map(|go| view! { <button type="button" class="link" on:click=go>{words.go_to_field}</button> })}
        </li>
    }
    .into_any()
}

fn applying(state: State) -> AnyView {
    let list = state.cell(move || state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome))));
    let told = move |caution: Caution| {
        let words = (state.words.caution)(caution);
        view! {
            <li>
                <h3>{words.title}</h3>
                <p>{words.text}</p>
                {(!words.limits.is_empty()).then(|| view! { <p class="note">{words.limits}</p> })}
            </li>
        }
    };
    view! {
        <section class="group cautions" aria-labelledby="cautions">
            <h2 id="cautions">{state.words.tools.cautions}</h2>
            <ul>{live(move || list.get().into_iter().map(told).collect_view())}</ul>
            <p class="note">{state.words.tools.caution_rule}</p>
        </section>
    }
    .into_any()
}
