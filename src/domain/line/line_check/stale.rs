//! Readings that are not of what runs.

use crate::domain::line::book::LineBook;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::recipe::finding::Grade;

/// Says so where the readings are of another recipe, or from before the changeover that started at `changed`,
/// milliseconds since 1970-01-01 00:00 UTC.
#[must_use]
pub fn stale(book: &LineBook, recipe: &str, changed: Option<u64>) -> Option<LineFinding> {
    let read = book.read_on.as_ref()?;
    let stale = read.recipe != recipe || changed.is_some_and(|changed| changed > read.at);
    stale.then(|| {
        let what = LineFindingKind::StaleReadings { recipe: read.recipe.clone() };
        LineFinding::new(Grade::Unusual, LinePlace::Line, what)
    })
}
