//! The boxes of the weigh sheet: what each is called, holds and measures.

use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::finding::What;
use crate::domain::trial::weigh_sheet::recovery_draft::{RecoveryDraft, RecoveryField};
use crate::domain::trial::weigh_sheet::weighing::{LIMIT, read_mass};
use crate::domain::trial::{LineId, TrialPlace, WeighField};
use crate::domain::{Entry, Grade};
use crate::quantity::{Amount, Dimension, Kind, Unit, Units};
use crate::ui::state::State;
use leptos::prelude::*;

/// Which box.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SheetBox {
    /// An input of the sheet.
    Field(WeighField),
    /// What was weighed of a line, in the batch shown.
    Weighed(LineId),
    /// Of the furnish recovered from the batch shown.
    Recovered(RecoveryField),
}

impl SheetBox {
    /// `data-field` on the page.
    pub fn key(self) -> String {
        match self {
            Self::Field(field) => field.box_key(),
            Self::Weighed(id) => format!("weighed.{}", id.key()),
            Self::Recovered(field) => field.box_key(),
        }
    }

    /// What it measures.
    pub const fn kind(self) -> Kind {
        match self {
            Self::Field(field) => field.kind(),
            Self::Weighed(_) => Kind::BenchMass,
            Self::Recovered(field) => field.kind(),
        }
    }

    /// Where a finding about it belongs.
    pub const fn place(self) -> TrialPlace {
        match self {
            Self::Field(field) => TrialPlace::Field(field),
            Self::Weighed(id) => TrialPlace::Line(id),
            Self::Recovered(field) => TrialPlace::Recovery(field),
        }
    }

    /// What it holds; follows it.
    pub fn entry(self, state: State) -> Entry {
        let (run, batch) = state.bench.place();
        state.bench.open.with(|open| match self {
            Self::Field(field) => open.trial.sheet.entry(field).clone(),
            Self::Weighed(id) => {
                let typed = open.trial.batch(run, batch).and_then(|lines| lines.entry(id)).cloned();
                typed.unwrap_or_else(|| Entry::empty(Unit::Gram))
            }
            Self::Recovered(field) => {
                let typed = open.trial.recovered(run, batch).map(|own| own.entry(field).clone());
                typed.unwrap_or_else(|| RecoveryDraft::default().entry(field).clone())
            }
        })
    }

    /// Enters something.
    pub fn put(self, state: State, entry: Entry) {
        let (run, batch) = untrack(|| state.bench.place());
        state.bench.edit(|trial| match self {
            Self::Field(field) => *trial.sheet.entry_mut(field) = entry,
            Self::Weighed(id) => {
                if let Some(lines) = trial.batch_mut(run, batch) {
                    lines.enter(id, entry);
                }
            }
            Self::Recovered(field) => {
                if let Some(weighed) = trial.weighed_mut(run, batch) {
                    *weighed.recovered.entry_mut(field) = entry;
                }
            }
        });
        if let Self::Field(field) = self
            && field.is_of_lab()
        {
            keep_lab(state);
        }
    }

    /// What is wrong or unusual about what it holds. Blank and never touched is neither.
    pub fn judge(self, state: State) -> Option<(Grade, What)> {
        let entry = self.entry(state);
        let limit = match self {
            Self::Field(field) => state.bench.open.with(|open| open.trial.sheet.limit(field)),
            Self::Weighed(_) => LIMIT,
            Self::Recovered(field) => field.limit(),
        };
        let read = match self {
            Self::Weighed(_) => read_mass(&entry),
            _ => read_entry(&entry, self.kind(), &limit),
        };
        match read {
            Err(What::Missing) if entry.preset => None,
            Err(what) => Some((Grade::Stop, what)),
            Ok(Some(base)) => unusual(Amount::from_base(self.kind(), base), &limit).map(|what| (Grade::Unusual, what)),
            Ok(None) => None,
        }
    }
}

/// Every new trial begins with the laboratory that was entered last.
pub fn keep_lab(state: State) {
    let lab = state.bench.open.with_untracked(|open| open.trial.sheet.lab_setup());
    state.settings.update(|settings| settings.lab = Some(lab));
}

/// The units as one box has them: the basis of a moisture is chosen for the box alone.
pub fn units_at(state: State, which: SheetBox) -> Units {
    let (mut units, kind) = (state.units.get(), which.kind());
    if kind.dimension() == Dimension::Moisture
        && let Some(unit) = state.settings.with(|settings| settings.bases.get(&which.key()).copied())
    {
        units.choose(kind, unit);
    }
    units
}
