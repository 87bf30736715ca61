//! What runs, and boards that are put together, are called.

use super::context::TrialDesk;
use crate::domain::trial::Series;
use crate::domain::trial::boards::group::GroupKey;
use crate::domain::trial::series::factor::Factor;
use crate::domain::trial::series::field::Of;
use crate::domain::trial::series::run::Run;
use crate::ui::state::State;
use crate::ui::text::{Context, words};
use leptos::prelude::*;

/// What a group is called: its run, or the levels of its runs.
pub fn group_name(state: State, desk: TrialDesk, key: &GroupKey) -> String {
    let units = state.units.get();
    state.currency.with(|currency| {
        desk.basis.with(|basis| {
            let context = Context { units: &units, draft: &basis.recipe, currency };
            desk.planned.with(|planned| words::bench::group(key, planned.series.as_ref(), &context))
        })
    })
}

/// The stable name of a group within the page.
pub fn group_key(key: &GroupKey) -> String {
    match key {
        GroupKey::Base => "base".to_owned(),
        GroupKey::Run(run) => format!("run-{run}"),
        GroupKey::Combination(levels) => {
            format!("levels-{}", levels.iter().map(u8::to_string).collect::<Vec<_>>().join("-"))
        }
    }
}

/// The levels of a run in a few words: "pMDI 3 % · 640 kg/m³"; blank for a run that does not belong to the design.
pub fn levels_of_run(series: &Series, run: &Run, context: &Context<'_>) -> String {
    let one = |(at, factor): (usize, &Factor)| {
        let level = words::bench::level(series.level(run, at)?, context);
        Some(match factor.of {
            Of::Dose(id) => match context.draft.liquid(id) {
                Some(liquid) => format!("{} {level}", words::liquid(liquid)),
                None => level,
            },
            Of::Own(_) => format!("{} {level}", factor.own.name.trim()),
            Of::BoardDensity | Of::MatMoisture | Of::PressFactor | Of::System => level,
        })
    };
    series.factors.iter().enumerate().filter_map(one).collect::<Vec<_>>().join(" · ")
}
