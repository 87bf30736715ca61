//! Comma-separated text (RFC 4180).
//!
//! Own code: a quotation mark doubled is all there is to it, and the `csv` crate adds 3.4 kB (brotli).

use super::{Cell, Table};
use crate::quantity::format::DecimalMark;
use std::fmt::Write as _;

/// What stands between two cells.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Separator {
    /// A comma, with a decimal point.
    #[default]
    Comma,
    /// A semicolon, with a decimal comma: what spreadsheets expect where a comma marks decimals.
    Semicolon,
}

impl From<DecimalMark> for Separator {
    fn from(mark: DecimalMark) -> Self {
        match mark {
            DecimalMark::Point => Self::Comma,
            DecimalMark::Comma => Self::Semicolon,
        }
    }
}

/// The table as text, lines ended by carriage return and line feed. A byte order mark in front tells
/// spreadsheets that it is UTF-8. Numbers are in full, formulas are what they come to.
///
/// A text that a spreadsheet would take for a formula has an apostrophe put before it: a recipe's name
/// must not compute anything on another machine.
#[must_use]
pub fn to_csv(table: &Table, separator: Separator) -> String {
    let between = match separator {
        Separator::Comma => ',',
        Separator::Semicolon => ';',
    };
    let mut text = String::from('\u{feff}');
    for row in &table.rows {
        for (at, cell) in row.iter().enumerate() {
            if at > 0 {
                text.push(between);
            }
            match cell {
                Cell::Empty => {}
                Cell::Text(words) | Cell::Heading(words) => put(&mut text, words, between),
                Cell::Number { value, .. } | Cell::Formula { value, .. } if value.is_finite() => {
                    let number = value.to_string();
                    match separator {
                        Separator::Comma => text.push_str(&number),
                        Separator::Semicolon => text.push_str(&number.replace('.', ",")),
                    }
                }
                Cell::Number { .. } | Cell::Formula { .. } => {}
            }
        }
        text.push_str("\r\n");
    }
    text
}

fn put(text: &mut String, words: &str, between: char) {
    let formula = words.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let guard = if formula { "'" } else { "" };
    if words.contains([between, '"', '\n', '\r']) {
        let _ = write!(text, "\"{guard}{}\"", words.replace('"', "\"\""));
    } else {
        let _ = write!(text, "{guard}{words}");
    }
}
