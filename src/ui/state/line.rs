//! The state of the line: what was typed about it, and what is shown.

use crate::browser::clock;
use crate::domain::line::{CheckedLine, LineBook, LineField, PumpId, check_line, example_line};
use crate::domain::recipe::example::example;
use crate::quantity::format::DecimalMark;
use crate::record::content::decimal_mark::with_decimal_mark;
use crate::record::content::line::LINE;
use crate::record::document::step::DocumentStep;
use crate::record::{CheckId, CheckRecord, LineRecord};
use crate::ui::history::History;
use crate::ui::text::{named_line, named_recipe};
use leptos::prelude::*;
use std::collections::BTreeSet;

/// A tab of the page. One is shown at a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineSection {
    /// What every pump has to be set to, now and over belt scale and moisture.
    Sheet,
    /// What really runs, and the balance of a period.
    Running,
    /// Pumps and their catch tests.
    Pumps,
    /// Tanks and deliveries.
    Tanks,
    /// From one recipe to another.
    Change,
}

impl LineSection {
    /// All of them, in the order of the page.
    pub const ALL: &'static [LineSection] = &[Self::Sheet, Self::Running, Self::Pumps, Self::Tanks, Self::Change];

    /// Where a field is entered.
    #[must_use]
    pub const fn of(field: LineField) -> Self {
        use crate::domain::line::PumpField;
        match field {
            LineField::Pump(_, PumpField::Reading | PumpField::PresentSetting)
            | LineField::Running(_)
            | LineField::Uncertainty(_)
            | LineField::Tolerance(_)
            | LineField::Period(_)
            | LineField::PeriodLiquid(..) => Self::Running,
            LineField::Pump(..) | LineField::Calibration(..) | LineField::Row(..) => Self::Pumps,
            LineField::Tank(..) | LineField::Delivery(_) => Self::Tanks,
            LineField::Transport(_) => Self::Change,
            LineField::Table(_) | LineField::Condition(_) => Self::Sheet,
        }
    }

    /// The tab at a place among all of them.
    #[must_use]
    pub fn at(place: usize) -> Self {
        Self::ALL.get(place).copied().unwrap_or(Self::Sheet)
    }
}

/// The signals of the page.
#[derive(Clone, Copy)]
pub struct LineState {
    /// Everything typed about the line.
    pub record: RwSignal<LineRecord>,
    /// The same, checked.
    pub checked: Memo<CheckedLine>,
    /// The section shown, by its place.
    pub section: RwSignal<usize>,
    /// The pump whose catch tests are shown; the first one while none is chosen.
    pub pump: RwSignal<Option<PumpId>>,
    /// The figure whose working is open; blank while none is.
    pub open: RwSignal<String>,
    /// The log of checks, the oldest first.
    pub log: RwSignal<Vec<CheckRecord>>,
    /// Those of them that were struck out.
    pub struck: RwSignal<BTreeSet<CheckId>>,
    /// The time, milliseconds since 1970, while the page is shown.
    pub now: RwSignal<u64>,
    /// The box that was typed into last, while its unit may still be to come.
    pub typed_last: StoredValue<Option<LineField>>,
    history: RwSignal<History<LineRecord, String>>,
}

impl LineState {
    /// The signals of a line.
    #[must_use]
    pub fn new(record: LineRecord) -> Self {
        let record = RwSignal::new(record);
        Self {
            record,
            checked: Memo::new(move |_| record.with(|record| check_line(&record.book))),
            section: RwSignal::new(0),
            pump: RwSignal::new(None),
            open: RwSignal::new(String::new()),
            log: RwSignal::new(Vec::new()),
            struck: RwSignal::new(BTreeSet::new()),
            now: RwSignal::new(clock::now()),
            typed_last: StoredValue::new(None),
            history: RwSignal::new(History::default()),
        }
    }

    /// Something of what was typed; follows it.
    pub fn book<T>(&self, act: impl FnOnce(&LineBook) -> T) -> T {
        self.record.with(|record| act(&record.book))
    }

    /// Changes what was typed, as a step that can be taken back.
    pub fn edit(&self, change: impl FnOnce(&mut LineBook)) {
        self.step(None, |record| change(&mut record.book));
    }

    /// The same while something is typed into one box, which `session` names: all of it is one step.
    pub fn type_into(&self, session: String, change: impl FnOnce(&mut LineBook)) {
        self.step(Some(session), |record| change(&mut record.book));
    }

    /// Changes all that is kept of the line, as a step that can be taken back by itself.
    pub fn change(&self, change: impl FnOnce(&mut LineRecord)) -> DocumentStep<LineRecord> {
        let before = self.record.get_untracked();
        self.step(None, change);
        DocumentStep { before, after: self.record.get_untracked() }
    }

    fn step(&self, session: Option<String>, change: impl FnOnce(&mut LineRecord)) {
        self.history.update(|history| history.before(session, || self.record.get_untracked()));
        self.record.update(change);
    }

    /// Takes one step back and leaves what came after it.
    pub fn take_back(&self, step: &DocumentStep<LineRecord>) {
        let then = step.taken_back(&LINE, &self.record.get_untracked());
        self.step(None, |record| *record = then);
    }

    /// What is typed next is a step of its own.
    pub fn close_step(&self) {
        self.history.update_untracked(History::close);
    }

    /// Takes the last step back.
    pub fn undo(&self) {
        if let Some(before) = self.history.try_update(|history| history.undo(|| self.record.get_untracked())).flatten()
        {
            self.record.set(before);
        }
    }

    /// Goes a step forward again.
    pub fn redo(&self) {
        if let Some(after) = self.history.try_update(|history| history.redo(|| self.record.get_untracked())).flatten() {
            self.record.set(after);
        }
    }

    /// Whether there is a step to take back.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        self.history.with(History::can_undo)
    }

    /// Whether there is a step to go forward to.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        self.history.with(History::can_redo)
    }

    /// Shows the pump with its catch tests.
    pub fn show_pump(&self, pump: PumpId) {
        self.pump.set(Some(pump));
        self.show(LineSection::Pumps);
    }

    /// Shows the section where a field is entered, and its pump.
    pub fn show_field(&self, field: LineField) {
        if let Some(pump) = field.pump() {
            self.pump.set(Some(pump));
        }
        self.show(LineSection::of(field));
    }

    /// Shows a section.
    pub fn show(&self, section: LineSection) {
        self.section.set(LineSection::ALL.iter().position(|other| *other == section).unwrap_or(0));
    }
}

/// The line of the example, its numbers with this decimal mark.
#[must_use]
pub fn example_line_record(mark: DecimalMark) -> LineRecord {
    LineRecord {
        book: with_decimal_mark(named_line(example_line(&named_recipe(example()))), mark),
        example: true,
        ..LineRecord::default()
    }
}
