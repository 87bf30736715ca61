//! A table to take away: as separated values, or as a spreadsheet file.
//!
//! Words and units are put in by who makes the table; here it is cells.

/// Separated values.
pub(crate) mod csv;
/// Spreadsheet files.
mod xlsx;
/// Files in one file.
mod zip;

pub use csv::to_csv;
pub use xlsx::to_xlsx;

/// One cell.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    /// Nothing.
    Empty,
    /// A text.
    Text(String),
    /// A text that heads a column or a row.
    Heading(String),
    /// A number in the unit that its heading names, shown with so many decimals; kept in full.
    Number {
        /// The number. What is not finite is an empty cell.
        value: f64,
        /// Decimals shown, at most 9.
        decimals: u8,
    },
    /// A number that a spreadsheet works out anew, such as a difference to a reference.
    Formula {
        /// The formula without its equals sign, in the spreadsheet's English form: `B3-$C3`.
        formula: String,
        /// What it comes to.
        value: f64,
        /// Decimals shown, at most 9.
        decimals: u8,
    },
}

impl Cell {
    /// A text.
    #[must_use]
    pub fn text(text: impl Into<String>) -> Self {
        Self::Text(text.into())
    }

    /// A text that heads a column or a row, without the places where a page may break a long word.
    #[must_use]
    pub fn heading(text: impl Into<String>) -> Self {
        Self::Heading(text.into().replace('\u{ad}', ""))
    }
}

/// A table: one sheet.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Table {
    /// Its name, on the sheet's tab.
    pub name: String,
    /// Rows of cells; they need not be of one length.
    pub rows: Vec<Vec<Cell>>,
    /// How many rows at the top stay in view.
    pub frozen: usize,
}

/// How a spreadsheet names a cell: column and row from 0, `A1` for the first. For formulas.
#[must_use]
pub fn cell_name(column: usize, row: usize) -> String {
    let mut letters = Vec::new();
    let mut left = column + 1;
    while left > 0 {
        letters.push(char::from(b'A' + ((left - 1) % 26) as u8));
        left = (left - 1) / 26;
    }
    let letters: String = letters.iter().rev().collect();
    format!("{letters}{}", row + 1)
}
