//! What the parts of the weigh sheet share beside the app's state.

use super::boxes::SheetBox;
use crate::domain::Entry;
use crate::domain::trial::weigh_sheet::progress::{LineProgress, LineStatus, next_line, progress};
use crate::domain::trial::{LineId, WeighFigure};
use crate::quantity::{Dimension, Kind, Unit};
use crate::ui::page::bench::desk::Desk;
use leptos::prelude::*;
use std::time::Duration;

/// A number is taken as typed to its end when no key came for so long.
const PAUSE: Duration = Duration::from_millis(800);

/// What the parts of the weigh sheet share.
#[derive(Clone, Copy)]
pub struct WeighContext {
    /// All that follows from the trial.
    pub desk: Desk,
    /// How far each line of the batch is.
    pub lines: Memo<Vec<LineProgress>>,
    /// The box that is being typed into: nothing is said about it before a pause.
    pub typing: RwSignal<Option<SheetBox>>,
    /// The box that was typed into last, while its unit may still be to come.
    pub typed_last: RwSignal<Option<SheetBox>>,
    /// The figure whose working is open.
    pub open_figure: RwSignal<Option<WeighFigure>>,
    /// The line whose box has the focus.
    pub focused: RwSignal<Option<LineId>>,
}

impl WeighContext {
    /// All that follows from the trial on the page.
    pub fn new(desk: Desk) -> Self {
        let bench = desk.state.bench;
        let lines = Memo::new(move |_| {
            let (run, batch) = bench.place();
            desk.made
                .with(|made| {
                    let sheet = made.sheet.as_ref()?;
                    desk.weighing.with(|weighing| {
                        let typed = bench.open.with(|open| open.trial.batch(run, batch).cloned()).unwrap_or_default();
                        Some(progress(sheet, weighing.as_ref()?, &typed))
                    })
                })
                .unwrap_or_default()
        });
        let typing = RwSignal::new(None);
        let mut settle = debounce(PAUSE, move |()| typing.set(None));
        Effect::new(move |_| {
            bench.open.track();
            settle(());
        });
        Self {
            desk,
            lines,
            typing,
            typed_last: RwSignal::new(None),
            open_figure: RwSignal::new(None),
            focused: RwSignal::new(None),
        }
    }

    /// The line being weighed: that of the focused box while it needs something, else the first one that does.
    pub fn active(self) -> Option<LineId> {
        self.lines.with(|lines| {
            let needs = |id: &LineId| lines.iter().any(|own| own.line.id == *id && own.status == LineStatus::ToAdd);
            self.focused.get().filter(needs).or_else(|| next_line(lines))
        })
    }

    /// The line whose question or choice is below the rows where they have no room for it: the first question, else the last
    /// choice.
    pub fn asking(self) -> Option<LineId> {
        self.lines.with(|lines| {
            let typing = self.typing.get();
            let rest = || lines.iter().filter(|own| typing != Some(SheetBox::Weighed(own.line.id)));
            let asked = rest().find(|own| matches!(own.status, LineStatus::Asked(_)));
            let over = || rest().rfind(|own| matches!(own.status, LineStatus::Over { .. }));
            asked.or_else(over).map(|own| own.line.id)
        })
    }

    /// Enters a text as it is being typed.
    pub fn type_into(self, which: SheetBox, text: &str, unit: Unit) {
        self.typed_last.set(Some(which));
        self.typing.set(Some(which));
        which.put(self.desk.state, Entry::typed(text, unit));
    }

    /// A box was left.
    pub fn leave(self) {
        if self.typing.get_untracked().is_some() {
            self.typing.set(None);
        }
    }

    /// Chooses the unit of one box, or of all of a kind where `which` is none. A number that was just typed keeps its digits: the
    /// unit is what was still to be said.
    pub fn choose_unit(self, which: Option<SheetBox>, kind: Kind, unit: Unit) {
        let state = self.desk.state;
        let last = self.typed_last.get_untracked().filter(|last| which.map_or(last.kind() == kind, |own| own == *last));
        if let Some(last) = last {
            let entry = untrack(|| last.entry(state));
            if !entry.preset {
                last.put(state, Entry::typed(entry.text, unit));
            }
            self.typed_last.set(None);
        }
        state.settings.update(|settings| match which.filter(|_| kind.dimension() == Dimension::Moisture) {
            Some(own) => drop(settings.bases.insert(own.key(), unit)),
            None => settings.units.choose(kind, unit),
        });
    }
}
