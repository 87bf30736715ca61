//! The invented mill, ready to run.

use haulm::domain::line::{CheckedLine, LineBook, LineField, PumpSettings, check_line, example_line, pump_settings};
use haulm::domain::recipe::draft::{Draft, Entry};
use haulm::domain::{Case, example, work_out};
use haulm::quantity::Unit;

/// The example recipe, solved, with its line.
#[derive(Debug)]
pub struct Mill {
    pub draft: Draft,
    pub case: Case,
    pub book: LineBook,
}

impl Mill {
    pub fn new() -> Self {
        let draft = example();
        let book = example_line(&draft);
        Self { case: work_out(&draft).case.unwrap(), draft, book }
    }

    pub fn line(&self) -> CheckedLine {
        check_line(&self.book)
    }

    pub fn sheet(&self) -> PumpSettings {
        pump_settings(&self.draft, &self.case, &self.line())
    }

    pub fn put(&mut self, field: LineField, text: &str, unit: Unit) {
        *self.book.entry_mut(field).expect("the field is there") = Entry::typed(text, unit);
    }
}
