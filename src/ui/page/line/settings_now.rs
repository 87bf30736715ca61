//! The pump settings at the belt scale and the fibre moisture that were entered, or at the recipe's.

use super::context::solved;
use crate::domain::line::{LineFinding, PumpId, PumpRow, PumpSettings, at_conditions, on_line, try_pump_settings};
use crate::domain::{Case, Finding};
use crate::ui::state::State;
use leptos::reactive::prelude::*;
use uom::si::f64::MassRate;

/// The pump settings, and all there is to say about them.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SettingsNow {
    /// The recipe at what was entered.
    pub case: Option<Case>,
    /// The settings; `None` without a result or without pumps.
    pub settings: Option<PumpSettings>,
    /// What the belt scale has to read at this moisture.
    pub target: Option<MassRate>,
    /// What the belt scale has to read at the recipe's own moisture.
    pub recipe_target: Option<MassRate>,
    /// What there is to say about entries, pumps and settings.
    pub findings: Vec<LineFinding>,
    /// What there is to say about the recipe at what was entered.
    pub recipe: Vec<Finding>,
    /// Whether something prevents a result, so that this is an older one.
    pub old: bool,
}

impl SettingsNow {
    /// The row of a pump.
    #[must_use]
    pub fn row(&self, id: PumpId) -> Option<&PumpRow> {
        self.settings.as_ref()?.rows.iter().find(|row| row.pump == id)
    }
}

/// The settings as they are now. Follows the recipe, the line and the entries.
pub fn settings_now(state: State) -> SettingsNow {
    let name = state.title.with(|title| title.name.clone());
    let is_old = state.shown.with(|shown| shown.old);
    let found = solved(state, |draft, case, line, book| {
        let at = at_conditions(case, book, &name);
        let mut findings = at.findings;
        let settings = match at.case.as_ref().map(|case| try_pump_settings(draft, Some(case), line)) {
            Some(Ok(settings)) => {
                findings.extend(settings.findings.iter().cloned());
                Some(settings)
            }
            Some(Err(none)) => {
                findings.push(none);
                None
            }
            None => None,
        };
        findings.extend(line.findings.iter().filter(|finding| finding.pump().is_some()).cloned());
        SettingsNow {
            case: at.case,
            settings,
            target: at.target,
            recipe_target: Some(case.solved.fibre_wet),
            findings,
            recipe: at.recipe,
            old: is_old,
        }
    });
    found.unwrap_or_else(|| {
        let why = state.shown.with(|shown| on_line(shown.case.as_ref()).err());
        SettingsNow { findings: why.into_iter().collect(), ..SettingsNow::default() }
    })
}

/// The same; with an entry that cannot be used, the settings as they were before, as old ones.
pub fn settings_or_before(state: State, before: Option<&SettingsNow>) -> SettingsNow {
    let now = settings_now(state);
    match before {
        Some(before) if now.case.is_none() && before.settings.is_some() => SettingsNow {
            case: before.case.clone(),
            settings: before.settings.clone(),
            target: before.target,
            old: true,
            ..now
        },
        _ => now,
    }
}
