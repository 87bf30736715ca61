//! The state of the line: what was typed about it, and what is shown.

use crate::browser::clock;
use crate::domain::line::{CheckedLine, LineBook, LineField, check_line, example_line};
use crate::domain::recipe::example::example;
use crate::record::{CheckId, CheckRecord, LineRecord};
use crate::ui::signal::{Memo, RwSignal, memo};
use std::collections::BTreeSet;

/// A part of the page. One is shown at a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineSection {
    /// What every pump has to be set to.
    Sheet,
    /// Pumps and their catch tests.
    Pumps,
    /// Settings over fibre flows and moistures.
    Card,
    /// What really runs.
    Running,
    /// Tanks.
    Tanks,
    /// From one recipe to another.
    Change,
    /// A new delivery of a liquid.
    Delivery,
}

impl LineSection {
    /// All of them, in the order of the page.
    pub const ALL: &'static [LineSection] =
        &[Self::Sheet, Self::Pumps, Self::Card, Self::Running, Self::Tanks, Self::Change, Self::Delivery];

    /// Where a field is entered.
    #[must_use]
    pub const fn of(field: LineField) -> Self {
        use crate::domain::line::PumpField;
        match field {
            LineField::Pump(_, PumpField::Reading | PumpField::PresentSetting)
            | LineField::Running(_)
            | LineField::Uncertainty(_)
            | LineField::Tolerance(_) => Self::Running,
            LineField::Pump(..) | LineField::Calibration(..) | LineField::Row(..) => Self::Pumps,
            LineField::Tank(..) => Self::Tanks,
            LineField::Transport(_) => Self::Change,
            LineField::Table(_) => Self::Card,
            LineField::Delivery(_) => Self::Delivery,
        }
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
    /// The figure whose working is open; blank while none is.
    pub open: RwSignal<String>,
    /// The log of checks, the oldest first.
    pub log: RwSignal<Vec<CheckRecord>>,
    /// Those of them that were struck out.
    pub struck: RwSignal<BTreeSet<CheckId>>,
    /// The time, milliseconds since 1970, while the page is shown.
    pub now: RwSignal<u64>,
}

impl LineState {
    /// The signals of a line.
    #[must_use]
    pub fn new(record: LineRecord) -> Self {
        let record = RwSignal::new(record);
        Self {
            record,
            checked: memo(move || record.with(|record| check_line(&record.book))),
            section: RwSignal::new(0),
            open: RwSignal::new(String::new()),
            log: RwSignal::new(Vec::new()),
            struck: RwSignal::new(BTreeSet::new()),
            now: RwSignal::new(clock::now()),
        }
    }

    /// Something of what was typed; follows it.
    pub fn book<T>(&self, act: impl FnOnce(&LineBook) -> T) -> T {
        self.record.with(|record| act(&record.book))
    }

    /// Changes what was typed.
    pub fn edit(&self, change: impl FnOnce(&mut LineBook)) {
        self.record.update(|record| change(&mut record.book));
    }

    /// Shows a section.
    pub fn show(&self, section: LineSection) {
        self.section.set(LineSection::ALL.iter().position(|other| *other == section).unwrap_or(0));
    }
}

/// The line of the example.
#[must_use]
pub fn example_line_record() -> LineRecord {
    LineRecord { book: example_line(&example()), example: true, ..LineRecord::default() }
}
