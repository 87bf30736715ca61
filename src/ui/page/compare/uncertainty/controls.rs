//! How many draws from which seed, the button that starts them, how far they are, and which figures are studied.

use super::run;
use super::shared::UncertaintyContext;
use super::study::{PageStudy, choosable};
use crate::domain::Entry;
use crate::domain::compare::draft::{CompareDraft, seed_limit};
use crate::domain::compare::uncertainty::monte_carlo::USUAL_DRAWS;
use crate::quantity::{Kind, format};
use crate::t;
use crate::ui::components::{ChoiceOption, Menu};
use crate::ui::page::compare::choices::{KeyChoice, KeySlot};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::entry_box::CompareBox;
use crate::ui::state::compare::Stage;
use crate::ui::text::words;
use leptos::prelude::*;

const DRAWS: KeySlot = KeySlot {
    id: "sure.draws",
    get: |typed| typed.uncertainty.draws.to_string(),
    set: |typed, key| typed.uncertainty.draws = key.parse().unwrap_or(USUAL_DRAWS),
};
/// Draws to choose from.
const NUMBERS: [&str; 3] = ["10000", "100000", "1000000"];

/// Draws, seed, and the button.
#[component]
pub fn Controls() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let shared = expect_context::<UncertaintyContext>();
    let compare = context.state.compare;
    let option = |draws: &&str| {
        let number = draws.parse().unwrap_or(0.0);
        ChoiceOption::new(*draws, format::significant(number, 1, format::DecimalMark::Point))
    };
    let numbers: Vec<ChoiceOption> = NUMBERS.iter().map(option).collect();
    let is_running = Memo::new(move |_| compare.progress.with(|progress| progress.stage == Stage::Running));
    let start = move |_| {
        let (draws, seed) = compare.typed.with_untracked(|typed| (typed.uncertainty.draws, typed.uncertainty.seed()));
        let Some(seed) = seed else { return };
        shared.study.with_untracked(|known| {
            if let Some(PageStudy { study: Ok(study), .. }) = known {
                run::start(compare, study.clone(), seed, draws);
            }
        });
    };
    let seed = context.follow(|typed| typed.uncertainty.seed.clone());
    let enter =
        Callback::new(move |entry: Entry| context.enter(|typed: &mut CompareDraft| typed.uncertainty.seed = entry));
    view! {
        <div class="given draw-controls">
            <KeyChoice kept=DRAWS label=t!("compare-draws") prefer=NUMBERS[1] options=Signal::stored(numbers)/>
            <CompareBox
                key="seed"
                label=Signal::derive(|| t!("compare-seed"))
                name=Signal::derive(|| t!("compare-seed"))
                kind=Kind::Ratio
                limit=seed_limit()
                entry=seed
                on_enter=enter
                class="narrow"
            />
            <div class="end">
                <button type="button" class="primary" id="draw" on:click=start>{t!("compare-run")}</button>
                <button type="button" hidden=move || !is_running.get() on:click=move |_| run::cancel(compare)>
                    {t!("compare-cancel")}
                </button>
            </div>
        </div>
    }
}

/// How far the draws are.
#[component]
pub fn DrawProgress() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let shared = expect_context::<UncertaintyContext>();
    let (progress, found) = (context.state.compare.progress, context.state.compare.found);
    let stage = Memo::new(move |_| progress.with(|progress| progress.stage));
    let percent = move || progress.with(|progress| (progress.made * 100).checked_div(progress.wanted).unwrap_or(0));
    let is_old = move || {
        found.with(|found| {
            found.study.is_some() && shared.study.with(|known| known.as_ref().is_some_and(|known| !known.is_of(found)))
        })
    };
    let key = move || match stage.get() {
        Stage::None => "none",
        Stage::Running => "running",
        Stage::Done => "done",
        Stage::Cancelled => "cancelled",
    };
    let told = move || match stage.get() {
        Stage::Running => t!("compare-drawing", percent = percent()),
        Stage::Cancelled => t!("compare-cancelled"),
        _ if is_old() => t!("compare-draws-old"),
        Stage::None => t!("compare-not-drawn-yet"),
        Stage::Done => found.with(|found| {
            let draws = format::significant(found.draws as f64, 1, format::DecimalMark::Point);
            t!("compare-drawn", draws = draws, seed = found.seed.to_string(), took = found.took.to_string())
        }),
    };
    view! { <p class="note" role="status" data-stage=key>{told}</p> }
}

/// The figures whose uncertainty is worked out.
#[component]
pub fn ChooseResults() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let own = context.follow(|typed| typed.uncertainty.figures.clone());
    let offered = Memo::new(move |_| {
        own.track();
        let typed = context.state.compare.typed.with_untracked(|typed| typed.uncertainty.clone());
        context.shown.with(|shown| choosable(shown, &typed))
    });
    let keys =
        Memo::new(move |_| offered.with(|offered| offered.iter().map(|(output, _)| *output).collect::<Vec<_>>()));
    let one = move |output: crate::domain::compare::Output| {
        let key = output.key();
        let words = words::compare::output(output);
        let is_chosen = Memo::new(move |_| {
            offered.with(|offered| offered.iter().any(|(other, chosen)| *other == output && *chosen))
        });
        let choose = move |event| {
            let now = event_target_checked(&event);
            context.enter(|typed| typed.uncertainty.choose(&key, now));
        };
        view! {
            <label class="tick"><input type="checkbox" prop:checked=move || is_chosen.get() on:change=choose/> {words.label}</label>
        }
    };
    view! {
        <Menu id="choose-results" label=t!("compare-choose-results")>
            <div class="choose-results"><For each=move || keys.get() key=|output| output.key() children=one/></div>
        </Menu>
    }
}
