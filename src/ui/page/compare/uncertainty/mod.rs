//! How study the figures are: all that are compared, by first order and by Monte Carlo, and what to improve.

mod draws;
pub mod results;
pub mod run;
pub mod shares;
pub mod sources;
pub mod study;

use self::study::PageStudy;
use crate::browser::element::{Part, View, el};
use crate::domain::compare::Output;
use crate::ui::field::choice::Choice;
use crate::ui::page::compare::choices::{first, output_choices};
use crate::ui::page::compare::comparison::Comparison;
use crate::ui::page::compare::parts::{Slot, follow, picked, select};
use crate::ui::page::compare::systems::Compared;
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;
use leptos::reactive::prelude::*;

const OUTPUT: Slot = Slot {
    id: "sure.output",
    get: |typed| typed.uncertainty.output.clone(),
    set: |typed, key| typed.uncertainty.output = key,
};
const FIRST_OUTPUT: &str = "mat_wet";
const OF: Slot = Slot {
    id: "sure.of",
    get: |typed| typed.uncertainty.of.to_string(),
    set: |typed, key| typed.uncertainty.of = key.parse().unwrap_or(0),
};

/// The figures whose shares can be looked at: those of the table.
fn figures(state: State, shown: &Compared) -> Vec<Choice> {
    let side = Output::side_by_side(1);
    let plain = |key: &str| side.iter().any(|output| output.key() == key);
    let all = first(shown).map(|system| output_choices(state, system)).unwrap_or_default();
    all.into_iter().filter(|(key, _)| plain(key)).collect()
}

/// The place of the budget whose shares are looked at.
pub fn chosen(comparison: Comparison, study: Memo<Option<PageStudy>>) -> Memo<Option<usize>> {
    let Comparison { state, shown, .. } = comparison;
    let own = follow(state, |typed| (typed.uncertainty.output.clone(), typed.uncertainty.of));
    memo(move || {
        own.with(|(output, of)| {
            let key = shown.with(|shown| picked(output, FIRST_OUTPUT, &figures(state, shown)));
            let of = *of;
            study.with(|known| {
                let places = known.as_ref()?.places(&key);
                places.get(of).or(places.first()).copied()
            })
        })
    })
}

/// The section.
pub fn section(comparison: Comparison, study: Memo<Option<PageStudy>>) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let figures = memo(move || shown.with(|shown| figures(state, shown)));
    let key = memo(move || {
        let chosen = state.compare.typed.with(OUTPUT.get);
        figures.with(|figures| picked(&chosen, FIRST_OUTPUT, figures))
    });
    let of = memo(move || {
        key.with(|key| {
            study.with(|known| {
                let Some(known) = known else { return Vec::new() };
                let name = |at: usize| known.budgets.get(at)?.as_ref().map(|budget| known.name(budget.asked));
                let names = known.places(key).into_iter().filter_map(name);
                names.enumerate().map(|(at, name)| (at.to_string(), name)).collect::<Vec<Choice>>()
            })
        })
    });
    let chosen = chosen(comparison, study);
    el("section")
        .set("aria-labelledby", "sure")
        .child(el("h2").set("id", "sure").set("tabindex", "-1").child(state.words.compare.sheet.uncertainty))
        .child(el("p").child(page.uncertainty_hint))
        .child(fold(page.sources, move || sources::sources(comparison, study)))
        .child(draws::controls(state, study))
        .child(draws::progress(state))
        .child(el("div").class("results").child(results::results(comparison, study, false)))
        .child(el("h3").child(page.shares))
        .child(
            el("div")
                .class("fields")
                .child(select(state, OUTPUT, page.sweep_output, FIRST_OUTPUT, figures))
                .child(select(state, OF, page.shares_of, "0", of)),
        )
        .child(shares::shares(comparison, study, chosen, true))
        .view()
}
