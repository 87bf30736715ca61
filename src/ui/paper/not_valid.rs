//! What cannot be computed, and what there is not: said on paper, with no figure that could be taken for one.

use super::context::{line_words, symbol};
use super::inputs::Inputs;
use super::sheet::{Sheet, recipe_line};
use super::warnings::PaperLine;
use crate::domain::{Field, Grade, Place};
use crate::t;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// An error, and how to fix it.
struct Fault {
    /// The input, or the place.
    name: String,
    /// What is in the box.
    entered: String,
    /// What is wrong and how to fix it.
    fix: String,
}

/// Why the recipe has no valid result: each error with what was entered. No dose, no setting, no signature.
#[component]
pub fn NotValid() -> impl IntoView {
    let state = expect_context::<State>();
    let stops = state.outcome.with(|outcome| {
        outcome.findings.iter().filter(|finding| finding.grade == Grade::Stop).copied().collect::<Vec<_>>()
    });
    let bad: Vec<Field> = stops
        .iter()
        .filter_map(|finding| match finding.place {
            Place::Field(field) => Some(field),
            Place::Liquid(_) | Place::Station(_) => None,
        })
        .collect();
    let fault = |finding: crate::domain::Finding| {
        let message = state.with_context(|context| words::finding(&finding, context));
        // It begins with the name of what it is about.
        let (name, what) = message.what.split_once(": ").unwrap_or(("", &message.what));
        let entered = state.draft.with(|draft| match finding.place {
            Place::Field(field) => draft.entry(field).map(|entry| match entry.is_blank() {
                true => t!("paper-blank"),
                false => joined(entry.text.trim(), &symbol(state, entry.unit)),
            }),
            Place::Liquid(_) | Place::Station(_) => None,
        });
        Fault {
            name: name.to_owned(),
            entered: entered.unwrap_or_default(),
            fix: format!("{} {}", first_upper(what), message.fix),
        }
    };
    let faults: Vec<Fault> = stops.into_iter().map(fault).collect();
    let count = faults.len();
    let row = |Fault { name, entered, fix }: Fault| {
        view! { <tr><th scope="row" class="l">{name}</th><td class="l">{entered}</td><td class="l">{fix}</td></tr> }
    };
    view! {
        <Void/>
        <section>
            <h2>{t!("paper-errors", count = count)}</h2>
            <table class="print-table print-faults">
                <thead><tr>
                    <th scope="col" class="l">{t!("paper-input")}</th>
                    <th scope="col" class="l">{t!("paper-entered")}</th>
                    <th scope="col" class="l">{t!("paper-fix")}</th>
                </tr></thead>
                <tbody>{faults.into_iter().map(row).collect_view()}</tbody>
            </table>
        </section>
        <Inputs bad=bad/>
        <p class="print-unsigned"><b>{t!("paper-no-signature")}</b> " " {last_valid(state)}</p>
    }
}

/// The frame that nobody overlooks.
#[component]
pub fn Void() -> impl IntoView {
    view! {
        <section class="print-void">
            <b>"✕ " {t!("paper-not-valid")}</b>
            <p>{t!("paper-cannot-be-computed")}</p>
            <p>{t!("paper-do-not-run")}</p>
        </section>
    }
}

/// Which revision was the last valid one, where one was saved.
fn last_valid(state: State) -> Option<String> {
    let seen = state.seen_on_page().get_untracked()?;
    let is_saved = state.saved().get_untracked();
    (!is_saved).then(|| t!("paper-last-valid", revision = t!("record-revision", number = seen.number)))
}

/// A document of the line that cannot be made: the recipe's errors, or the line's own.
#[component]
pub fn LineNotValid(
    /// What it would be.
    #[prop(into)]
    title: String,
    /// What is wrong with the line, where the recipe is valid.
    lines: Vec<PaperLine>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let is_recipe = state.outcome.with(|outcome| outcome.case.is_none());
    let lines: Vec<PaperLine> = lines.into_iter().filter(|line| line.grade == Grade::Stop).collect();
    let line = |line: PaperLine| view! { <li>{line.words}</li> };
    let why = match is_recipe {
        true => view! { <NotValid/> }.into_any(),
        false => {
            view! { <Void/> <ul class="print-reasons">{lines.into_iter().map(line).collect_view()}</ul> }.into_any()
        }
    };
    view! { <Sheet title=title about=recipe_line(state) kind=t!("line-title")>{why}</Sheet> }
}

/// That there is nothing to print, and what to do.
#[component]
pub fn NothingPaper(
    /// What would be printed.
    #[prop(into)]
    kind: String,
    /// Why there is nothing.
    #[prop(into)]
    why: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    view! {
        <Sheet title=kind about=recipe_line(state) kind=t!("line-title")>
            <section class="print-void nothing"><b>{t!("paper-nothing")}</b><p>{why}</p></section>
        </Sheet>
    }
}

/// What is found at the line, in words.
pub fn line_lines(state: State, findings: &[crate::domain::line::LineFinding]) -> Vec<PaperLine> {
    let say = |finding: &crate::domain::line::LineFinding| {
        let message = line_words(state, |context| words::line::finding(finding, context));
        PaperLine { grade: finding.grade, words: format!("{} {}", message.what, message.fix) }
    };
    findings.iter().map(say).collect()
}

fn first_upper(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().into_iter().flat_map(char::to_uppercase).chain(chars).collect()
}
