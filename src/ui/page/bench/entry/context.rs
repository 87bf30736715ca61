//! What the parts of a tab share beside the app's state.

use crate::domain::Entry;
use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::{BoardId, SeriesDraft};
use crate::quantity::{Kind, Unit};
use crate::record::content::trial::field::TrialField;
use crate::record::content::trial::outcome::{Basis, PlannedSeries, Tested};
use crate::ui::state::State;
use crate::ui::text::{BenchContext, Context};
use leptos::prelude::*;
use std::time::Duration;

/// A number is taken as typed to its end when no key came for so long.
const PAUSE: Duration = Duration::from_millis(800);

/// A figure whose working can be opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BoardsFigure {
    /// A board's.
    Of(BoardId, BoardFigure),
    /// Of the boards of a combination, by its place among them.
    Combination(usize, BoardFigure),
    /// Of the boards of a run, by its place among them.
    Run(usize, BoardFigure),
}

/// What the parts of a tab share beside the app's state.
#[derive(Clone, Copy)]
pub struct TrialDesk {
    /// What everything but the boards is made from.
    pub basis: Memo<Basis>,
    /// The series.
    pub planned: Memo<PlannedSeries>,
    /// The boards.
    pub tested: Memo<Tested>,
    /// Whether a number is being typed, so that nothing is said about it yet.
    pub typing: RwSignal<bool>,
    /// The board whose test pieces are shown.
    pub board: RwSignal<Option<BoardId>>,
    /// The figure whose working is open.
    pub open_figure: RwSignal<Option<BoardsFigure>>,
    keys: RwSignal<u32>,
    typed_last: StoredValue<Option<TrialField>>,
}

impl TrialDesk {
    /// Follows the trial on the page.
    pub fn new(state: State) -> Self {
        let bench = state.bench;
        let basis = Memo::new(move |_| bench.open.with(|open| open.trial.basis()));
        let planned = Memo::new(move |_| basis.with(Basis::plan));
        let tested = Memo::new(move |_| planned.with(|planned| bench.open.with(|open| open.trial.tested(planned))));
        let (typing, keys) = (RwSignal::new(false), RwSignal::new(0_u32));
        let mut settled = debounce(PAUSE, move |()| _ = typing.try_set(false));
        Effect::new(move |before: Option<()>| {
            keys.track();
            if before.is_some() {
                settled(());
            }
        });
        Self {
            basis,
            planned,
            tested,
            typing,
            board: RwSignal::new(None),
            open_figure: RwSignal::new(None),
            keys,
            typed_last: StoredValue::new(None),
        }
    }

    /// Puts a text into a box. Nothing is said about it before a pause, or before the box is left.
    pub fn type_into(self, state: State, field: TrialField, text: String) {
        self.typed_last.set_value(Some(field));
        self.typing.set(true);
        self.keys.update(|keys| *keys = keys.wrapping_add(1));
        self.enter(state, field, text);
    }

    /// Puts a text into a box, as one that is complete.
    pub fn enter(self, state: State, field: TrialField, text: String) {
        let kind = state.bench.open.with_untracked(|open| open.trial.kind(field));
        let unit = state.units.with_untracked(|units| units.unit(kind));
        state.bench.edit(|trial| trial.enter(field, Entry::typed(text, unit)));
    }

    /// A box was left.
    pub fn leave(self) {
        if self.typing.get_untracked() {
            self.typing.set(false);
        }
    }

    /// Chooses the unit of a kind. A number that was just typed keeps its digits: the unit is what was still to be said.
    pub fn choose_unit(self, state: State, kind: Kind, unit: Unit) {
        let last = self.typed_last.get_value();
        // Choosing once more is about the number that is there now.
        self.typed_last.set_value(None);
        if let Some(field) = last {
            state.bench.edit(|trial| {
                let entry = trial.entry(field);
                if trial.kind(field) == kind && !entry.preset {
                    trial.enter(field, Entry::typed(entry.text, unit));
                }
            });
        }
        self.leave();
        state.settings.update(|settings| settings.units.choose(kind, unit));
    }
}

/// What words need, with the trial's recipe; follows every change of the trial.
pub fn with_bench<T>(state: State, act: impl FnOnce(&BenchContext<'_>) -> T) -> T {
    let units = state.units.get();
    state.currency.with(|currency| {
        state.bench.open.with(|open| {
            let trial = &open.trial;
            let none = SeriesDraft::default();
            act(&BenchContext {
                plain: Context { units: &units, draft: &trial.draft, currency },
                sheet: &trial.sheet,
                batch: None,
                recovered: None,
                series: trial.series.as_ref().unwrap_or(&none),
                boards: &trial.boards,
                requirements: &trial.requirements,
            })
        })
    })
}
