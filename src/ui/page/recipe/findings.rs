//! Everything there is to say, and the cautions that apply.

use crate::browser::element::{Part, View, button, el, many};
use crate::browser::page;
use crate::domain::{Caution, Grade, Place, cautions};
use crate::ui::part::finding::says;
use crate::ui::state::{Said, State, state};

/// The findings, the gravest first, then the cautions.
pub fn all() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let findings = state.cell(move || state.said(|_| true));
    many([
        el("section")
            .class("group findings")
            .set("aria-labelledby", "findings")
            .child(el("h2").set("id", "findings").child(words.findings))
            .child(el("p").set("hidden", move || !findings.with(Vec::is_empty)).child(words.no_findings))
            .child(el("ul").child(move || findings.get().into_iter().map(|said| line(state, said)).collect::<View>()))
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
        .child(says(said))
        .child(go.map(|go| button().class("link").on("click", go).child(words.go_to_field)))
        .view()
}

fn applying(state: State) -> View {
    let list = state.cell(move || state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome))));
    let told = move |caution: Caution| {
        let words = (state.words.caution)(caution);
        el("li")
            .child(el("h3").child(words.title))
            .child(el("p").child(words.text))
            .child(words.limits.into_iter().map(|limit| el("p").class("note").child(limit).view()).collect::<View>())
    };
    el("section")
        .class("group cautions")
        .set("aria-labelledby", "cautions")
        .child(el("h2").set("id", "cautions").child(state.words.tools.cautions))
        .child(el("ul").child(move || list.get().into_iter().map(told).collect::<View>()))
        .child(el("p").class("note").child(state.words.tools.caution_rule))
        .view()
}
