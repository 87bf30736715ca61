//! What the parts of the tab share beside the trial.

use crate::domain::trial::series::effects::{Effects, EffectsOutcome};
use crate::domain::trial::{Property, Series};
use crate::ui::page::bench::entry::TrialDesk;
use crate::ui::state::State;
use crate::ui::text::Context;
use leptos::prelude::*;

/// The property that is shown, and what comes of it.
#[derive(Clone, Copy)]
pub struct EffectsShown {
    /// What comes of the property; `None` without a series or a result.
    pub outcome: Memo<Option<EffectsOutcome>>,
    /// The property.
    pub property: Memo<Option<Property>>,
}

/// Reads the effects that are shown, with the series and what words need.
pub fn read_effects<T: Default>(
    state: State,
    desk: TrialDesk,
    shown: EffectsShown,
    read: impl FnOnce(&Effects, &Series, &Context<'_>) -> T,
) -> T {
    let units = state.units.get();
    state
        .currency
        .with(|currency| {
            desk.basis.with(|basis| {
                let context = Context { units: &units, draft: &basis.recipe, currency };
                desk.planned.with(|planned| {
                    shown.outcome.with(|own| {
                        let effects = own.as_ref()?.effects.as_ref()?;
                        Some(read(effects, planned.series.as_ref()?, &context))
                    })
                })
            })
        })
        .unwrap_or_default()
}
