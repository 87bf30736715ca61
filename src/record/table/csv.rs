//! Tables of separated values (RFC 4180), for any spreadsheet or script: the one way that any table leaves as text.
//!
//! A byte-order mark tells spreadsheets that the file is UTF-8. What separates the cells follows from the decimal mark: a
//! semicolon where a comma marks decimals. Lines end in CR LF.

use super::Table;
use crate::quantity::format::DecimalMark;
use crate::quantity::number::is_blank;
use ::csv::{QuoteStyle, Terminator, Writer, WriterBuilder};

/// UTF-8's byte-order mark.
const BYTE_ORDER_MARK: &str = "\u{feff}";

/// One cell of a table of separated values.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum CsvCell {
    /// Nothing.
    Blank,
    /// A text, always in quotation marks.
    Text(String),
    /// A number with a decimal point, never in quotation marks.
    Number(String),
}

impl CsvCell {
    /// A text; anyone may have typed it.
    pub(crate) fn text(text: impl Into<String>) -> Self {
        Self::Text(text.into())
    }

    /// A number with a decimal point, as we wrote it. Anything else that a record has in its place is a text.
    pub(crate) fn number(written: &str) -> Self {
        if written.is_empty() {
            Self::Blank
        } else if written.parse().is_ok_and(f64::is_finite) {
            Self::Number(written.to_owned())
        } else {
            Self::text(written)
        }
    }

    /// A whole number, or nothing.
    pub(crate) fn whole(number: Option<impl Into<u64>>) -> Self {
        number.map_or(Self::Blank, |number| Self::Number(number.into().to_string()))
    }
}

/// A table that is being written.
pub(crate) struct Csv {
    writer: Writer<Vec<u8>>,
    mark: DecimalMark,
}

impl Csv {
    /// A table without rows, for readers who write decimals with `mark`.
    pub(crate) fn new(mark: DecimalMark) -> Self {
        let separator = match mark {
            DecimalMark::Point => b',',
            DecimalMark::Comma => b';',
        };
        let writer = WriterBuilder::new()
            .delimiter(separator)
            .terminator(Terminator::CRLF)
            // The quotation marks come from `quoted`: a number with a decimal comma is none to the crate, which would quote it,
            // and a text such as "12" is one, which it would not.
            .quote_style(QuoteStyle::Never)
            .flexible(true)
            .from_writer(BYTE_ORDER_MARK.into());
        Self { writer, mark }
    }

    /// Writes a row.
    pub(crate) fn row(&mut self, cells: impl IntoIterator<Item = CsvCell>) {
        let cells = cells.into_iter().map(|cell| match (cell, self.mark) {
            (CsvCell::Blank, _) => String::new(),
            (CsvCell::Text(text), _) => quoted(&text),
            (CsvCell::Number(number), DecimalMark::Point) => number,
            (CsvCell::Number(number), DecimalMark::Comma) => number.replace('.', ","),
        });
        // Memory takes every byte and a flexible table every length of row: there is no way to fail.
        let _ = self.writer.write_record(cells.collect::<Vec<_>>());
    }

    /// The table as text.
    pub(crate) fn finish(self) -> String {
        let bytes = self.writer.into_inner().unwrap_or_default();
        String::from_utf8(bytes).unwrap_or_default()
    }
}

/// A text in quotation marks. One that a spreadsheet would run as a formula has an apostrophe in front: the name of a recipe must not
/// compute anything on another machine.
fn quoted(text: &str) -> String {
    let guard = if is_formula(text) { "'" } else { "" };
    format!("\"{guard}{}\"", text.replace('"', "\"\""))
}

/// Whether a spreadsheet may take it for a formula: some skip what is blank in front, and some know the full-width signs.
fn is_formula(text: &str) -> bool {
    text.starts_with(['\t', '\r'])
        || text.trim_start_matches(is_blank).starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠'])
}

/// The table as separated values. Numbers are in full, formulas are what they come to.
#[must_use]
pub fn to_csv(table: &Table, mark: DecimalMark) -> String {
    let mut csv = Csv::new(mark);
    for row in &table.rows {
        csv.row(row.iter().map(|cell| match cell {
            super::Cell::Text(words) | super::Cell::Heading(words) => CsvCell::text(words),
            super::Cell::Number { value, .. } | super::Cell::Formula { value, .. } if value.is_finite() => {
                CsvCell::number(&value.to_string())
            }
            super::Cell::Empty | super::Cell::Number { .. } | super::Cell::Formula { .. } => CsvCell::Blank,
        }));
    }
    csv.finish()
}
