//! How many draws from which seed, the button that starts them, and how far they are.

use super::desk::Stage;
use super::parts::{any, number_box, picked, select};
use super::run;
use super::sure::Known;
use crate::browser::element::{Part, View, button, el, many};
use crate::domain::Entry;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::limit::Limit;
use crate::quantity::{Kind, Unit, format};
use crate::ui::field::choice::Choice;
use crate::ui::signal::{Memo, Signal};
use crate::ui::state::State;
use crate::ui::text::FieldWords;

const DRAWS: &str = "sure.draws";
const SEED: &str = "seed";
/// Draws to choose from; the usual number stands first.
const NUMBERS: [&str; 3] = ["100000", "10000", "1000000"];

/// How many draws from which seed, and the button that starts them.
pub fn controls(state: State, sure: Memo<Option<Known>>) -> View {
    let page = &state.words.compare.page;
    let desk = state.compare;
    let grouped = |draws: &&str| -> Choice {
        let number = draws.parse().unwrap_or(0.0);
        ((*draws).to_owned(), format::significant(number, 1, format::DecimalMark::Point))
    };
    let numbers: Vec<Choice> = NUMBERS.iter().map(grouped).collect();
    let offered = numbers.clone();
    let seed_limit = Limit { most: 9_007_199_254_740_991.0, ..any(Unit::One, 0.0) };
    let seed_start = || Entry::preset("1", Unit::One);
    let running = move || desk.progress.with(|progress| progress.stage == Stage::Running);
    let start = move || {
        let typed = desk.typed.get_untracked();
        let draws = picked(&typed, DRAWS, NUMBERS[0], &offered).parse().unwrap_or(100_000);
        let entry = typed.entry(SEED).cloned().unwrap_or_else(seed_start);
        let Ok(Some(seed)) = read_entry(&entry, Kind::Ratio, &seed_limit) else { return };
        sure.with_untracked(|known| {
            if let Some(Known { study: Ok(study), .. }) = known {
                #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 0 to 2⁵³")]
                run::start(desk, study.clone(), seed as u64, draws);
            }
        });
    };
    el("div")
        .class("fields")
        .child(select(state, DRAWS, page.draws, NUMBERS[0], Signal::stored(numbers)))
        .child(number_box(
            state,
            (SEED.to_owned(), SEED.to_owned()),
            FieldWords { label: page.seed, hint: page.seed_hint },
            Kind::Ratio,
            seed_limit,
            seed_start,
        ))
        .child(
            el("div")
                .class("field actions end")
                .child(button().class("primary").set("id", "draw").on_click(start).child(page.draw))
                .child(
                    button()
                        .set("hidden", move || !running())
                        .on_click(move || run::cancel(desk))
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
