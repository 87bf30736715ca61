//! What a document of the bench is about, and what there is to say.

use super::super::sheet::{recipe_name, revision};
use super::super::warnings::PaperLine;
use crate::domain::trial::TrialFinding;
use crate::t;
use crate::ui::page::bench::desk::{Desk, Made, at_box};
use crate::ui::state::State;
use leptos::prelude::*;

/// The trial's name.
pub fn trial_name(state: State) -> String {
    let name = state.bench.open.with_untracked(|open| open.trial.name.clone());
    if name.trim().is_empty() { t!("paper-trial-untitled") } else { name }
}

/// The recipe that the trial is of, with its revision where that is the one on the page.
pub fn recipe_of_trial(state: State) -> String {
    let own = state.bench.open.with_untracked(|open| open.trial.recipe_name.clone());
    let name = recipe_name(state);
    let own = if own.trim().is_empty() { t!("recipe-untitled") } else { own };
    if own == name { t!("line-recipe", name = name, revision = revision(state)) } else { own }
}

/// What there is to say, but for what is wrong in a box, which gives no sheet at all.
pub fn said(desk: Desk, made: &Made, all: &[TrialFinding]) -> Vec<PaperLine> {
    let line = |finding: &TrialFinding| {
        let message = desk.message(finding, &made.recipe, &made.typed);
        PaperLine { grade: finding.grade, words: format!("{} {}", message.what, message.fix) }
    };
    all.iter().filter(|finding| !at_box(finding)).map(line).collect()
}
