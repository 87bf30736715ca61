//! How many draws from which seed, the button that starts them, and how far they are.

use super::run;
use super::study::PageStudy;
use crate::browser::element::{Part, View, button, el, many};
use crate::domain::Entry;
use crate::domain::compare::draft::{CompareDraft, seed_limit};
use crate::domain::compare::uncertainty::monte_carlo::USUAL_DRAWS;
use crate::quantity::{Kind, format};
use crate::ui::field::choice::Choice;
use crate::ui::page::compare::parts::{KeptBox, Slot, number_box, select};
use crate::ui::signal::{Memo, Signal};
use crate::ui::state::State;
use crate::ui::state::compare::Stage;
use crate::ui::text::FieldWords;
use leptos::reactive::prelude::*;

const DRAWS: Slot = Slot {
    id: "sure.draws",
    get: |typed| typed.uncertainty.draws.to_string(),
    set: |typed, key| typed.uncertainty.draws = key.parse().unwrap_or(USUAL_DRAWS),
};
/// Draws to choose from; the usual number stands first.
const NUMBERS: [&str; 3] = ["100000", "10000", "1000000"];

/// How many draws from which seed, and the button that starts them.
pub fn controls(state: State, study: Memo<Option<PageStudy>>) -> View {
    let page = &state.words.compare.page;
    let compare = state.compare;
    let grouped = |draws: &&str| -> Choice {
        let number = draws.parse().unwrap_or(0.0);
        ((*draws).to_owned(), format::significant(number, 1, format::DecimalMark::Point))
    };
    let numbers: Vec<Choice> = NUMBERS.iter().map(grouped).collect();
    let running = move || compare.progress.with(|progress| progress.stage == Stage::Running);
    let start = move || {
        let (draws, seed) = compare.typed.with_untracked(|typed| (typed.uncertainty.draws, typed.uncertainty.seed()));
        let Some(seed) = seed else { return };
        study.with_untracked(|known| {
            if let Some(PageStudy { study: Ok(study), .. }) = known {
                run::start(compare, study.clone(), seed, draws);
            }
        });
    };
    el("div")
        .class("fields")
        .child(select(state, DRAWS, page.draws, NUMBERS[0], Signal::stored(numbers)))
        .child(number_box(
            state,
            KeptBox {
                id: "seed".to_owned(),
                words: FieldWords { label: page.seed, hint: page.seed_hint },
                kind: Kind::Ratio,
                limit: seed_limit(),
                get: |typed: &CompareDraft| typed.uncertainty.seed.clone(),
                put: |typed: &mut CompareDraft, entry: Entry| typed.uncertainty.seed = entry,
            },
        ))
        .child(
            el("div")
                .class("field actions end")
                .child(button().class("primary").set("id", "draw").on_click(start).child(page.draw))
                .child(
                    button()
                        .set("hidden", move || !running())
                        .on_click(move || run::cancel(compare))
                        .child(state.words.tools.cancel),
                ),
        )
        .view()
}

/// How far the draws are.
pub fn progress(state: State) -> View {
    let page = &state.words.compare.page;
    let (progress, found) = (state.compare.progress, state.compare.found);
    let stage = move || progress.with(|progress| progress.stage);
    let percent = move || progress.with(|progress| (progress.made * 100).checked_div(progress.wanted).unwrap_or(0));
    many([
        el("progress")
            .set("aria-label", page.drawing)
            .set("max", "100")
            .set("hidden", move || stage() != Stage::Running)
            .set("value", move || percent().to_string())
            .view(),
        el("p")
            .class("note")
            .set("role", "status")
            .set("data-stage", move || match stage() {
                Stage::None => "none",
                Stage::Running => "running",
                Stage::Done => "done",
                Stage::Cancelled => "cancelled",
            })
            .child(move || match stage() {
                Stage::None => page.not_drawn.to_owned(),
                Stage::Running => page.drawing.to_owned(),
                Stage::Done => found.with(|found| (page.drawn)(found.draws, found.seed, found.took)),
                Stage::Cancelled => page.cancelled.to_owned(),
            })
            .view(),
    ])
    .view()
}
