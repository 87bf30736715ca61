//! What is wrong or unusual in a catch test, below its grid: the place is kept free, so that nothing moves.

use super::context::OpenTest;
use crate::domain::Grade;
use crate::domain::line::{LineField, LineFinding, LineFindingKind, LinePlace};
use crate::ui::components::Mark;
use crate::ui::field::number_text::{Suggestion, entry_offers};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::settings::line_box::{LineOffer, entry};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// A message: how grave, its words, and the numbers that may have been meant.
type Told = (Grade, String, Vec<(LineField, Suggestion)>);

/// The messages of the test, as they were at the last pause.
#[component]
pub fn CatchMessages() -> impl IntoView {
    let state = expect_context::<State>();
    let open = expect_context::<OpenTest>();
    let all = Memo::new(move |before: Option<&Vec<Told>>| {
        if state.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        let found = open.examined.with(|examined| examined.as_ref().map(|examined| examined.findings.clone()));
        let told = |found: &LineFinding| {
            let message = with_context(state, |context| words::line::finding(found, context));
            let offers = match (found.place, &found.what) {
                (LinePlace::Field(field), LineFindingKind::Entry(what)) => {
                    let kind = state.line.book(|book| book.kind(field));
                    let offers = entry_offers(&entry(state, field), what, &state.line_units_at(field, kind));
                    offers.into_iter().map(|offer| (field, offer)).collect()
                }
                _ => Vec::new(),
            };
            // A test that was only begun has no error.
            let grade = if matches!(found.what, LineFindingKind::FewRows { .. }) { Grade::Note } else { found.grade };
            (grade, format!("{} {}", message.what, message.fix), offers)
        };
        let mut all: Vec<Told> = found.iter().flatten().map(told).collect();
        all.sort_by_key(|(grade, ..)| *grade);
        all
    });
    let line = |(grade, words, offers): Told| {
        let offers =
            offers.into_iter().map(|(field, offer)| view! { <LineOffer field=field offer=offer/> }).collect_view();
        view! { <p><Mark grade=grade/> " " {words} " " {offers}</p> }
    };
    view! { <div class="box-messages">{move || all.get().into_iter().map(line).collect_view()}</div> }
}
