//! Reads boxes and puts down what is wrong or unusual with them.

use super::book::LineBook;
use super::field::LineField;
use super::finding::{LineFinding, LineFindingKind, LinePlace};
use super::limit::limit;
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::finding::{Grade, What};
use crate::quantity::Amount;

/// What one box holds, in the base unit of its kind; `None` while blank.
///
/// # Errors
/// What is wrong with the text, or [`What::Missing`] for a blank box that must be filled in.
pub fn read_line_field(book: &LineBook, field: LineField) -> Result<Option<f64>, What> {
    match book.entry(field) {
        Some(entry) => read_entry(entry, book.kind(field), &limit(field, book)),
        None => Ok(None),
    }
}

/// Reads boxes and collects what there is to say.
pub(super) struct Reader<'a> {
    pub(super) book: &'a LineBook,
    pub(super) findings: Vec<LineFinding>,
}

impl<'a> Reader<'a> {
    pub(super) const fn new(book: &'a LineBook) -> Self {
        Self { book, findings: Vec::new() }
    }

    pub(super) fn say(&mut self, grade: Grade, place: LinePlace, what: LineFindingKind) {
        self.findings.push(LineFinding { grade, place, what });
    }

    pub(super) fn stop(&mut self, place: LinePlace, what: LineFindingKind) {
        self.say(Grade::Stop, place, what);
    }

    /// The number of a box, or `None`: then a finding says why, unless it may stay blank.
    pub(super) fn number(&mut self, field: LineField) -> Option<f64> {
        match read_line_field(self.book, field) {
            Ok(None) => None,
            Ok(Some(base)) => {
                let value = Amount::from_base(self.book.kind(field), base);
                if let Some(what) = unusual(value, &limit(field, self.book)) {
                    self.say(Grade::Unusual, LinePlace::Field(field), LineFindingKind::Entry(what));
                }
                Some(base)
            }
            Err(what) => {
                self.stop(LinePlace::Field(field), LineFindingKind::Entry(what));
                None
            }
        }
    }

    /// Whether anything since finding number `from` stands in the way.
    pub(super) fn stopped_since(&self, from: usize) -> bool {
        self.findings.iter().skip(from).any(|finding| finding.grade == Grade::Stop)
    }
}
