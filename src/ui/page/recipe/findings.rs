//! Everything there is to say, and the cautions that apply.

use crate::browser::element::{Part, View, el, many};
use crate::browser::page;
use crate::domain::{Caution, Grade, Place, cautions};
use crate::ui::part::finding::says;
use crate::ui::state::{Said, State, state};
use leptos::prelude::*;

/// The findings, the gravest first, then the cautions.
pub fn all() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let findings = state.cell(move || state.said(|_| true));
    many([
        el("section")
            .class("group findings")
            .set("aria-labelledby", "findings")
            .add(el("h2").set("id", "findings").add(words.findings))
            .add(el("p").set("hidden", move || !findings.with(Vec::is_empty)).add(words.no_findings))
            .add(el("ul").add(move || findings.get().into_iter().map(|said| line(state, said)).collect::<View>()))
            .view(),
        applying(state).view(),
    ])
    .view()
}

fn line(state: State, said: Said) -> View {
    let finding = said.finding;
    let go = match finding.place {
        Place::Field(field) => Some(move |_| page::focus_field(&field.key())),
        Place::Liquid(_) | Place::Station(_) => None,
    };
    let words = &state.words.recipe_page;
    el("li")
        .class_if("stop", finding.grade == Grade::Stop)
        .add(says(said))
        .add(go.map(|go| el("button").set("type", "button").class("link").on("click", go).add(words.go_to_field)))
        .view()
}

fn applying(state: State) -> View {
    let list = state.cell(move || state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome))));
    let told = move |caution: Caution| {
        let words = (state.words.caution)(caution);
        el("li")
            .add(el("h3").add(words.title))
            .add(el("p").add(words.text))
            .add((!words.limits.is_empty()).then(|| el("p").class("note").add(words.limits)))
    };
    el("section")
        .class("group cautions")
        .set("aria-labelledby", "cautions")
        .add(el("h2").set("id", "cautions").add(state.words.tools.cautions))
        .add(el("ul").add(move || list.get().into_iter().map(told).collect::<View>()))
        .add(el("p").class("note").add(state.words.tools.caution_rule))
        .view()
}
