//! A line check as a file of its own: the recipe and everything entered about the line, for scripts and for checks from
//! outside.

use crate::domain::Draft;
use crate::domain::line::LineBook;
use crate::record::content::sealed::{Extra, Headed};
use crate::record::limits;
use crate::record::refusal::{HEAD, Refusal};
use serde::{Deserialize, Serialize};

/// The format version that is written.
const VERSION: u32 = 1;
/// The largest file that is read, in bytes.
pub const LARGEST: usize = 2_000_000;
/// The key `haulm` of the file.
pub const KIND: &str = "line_check";

/// What a line check is computed from. Every number is text as typed, beside its unit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct LineCheckFile {
    /// The version of the app that wrote it.
    #[serde(default)]
    pub app: String,
    /// The recipe's name.
    #[serde(default)]
    pub name: String,
    /// When it was exported, milliseconds since 1970-01-01 00:00 UTC.
    #[serde(default)]
    pub at: u64,
    /// The recipe.
    pub recipe: Draft,
    /// Pumps with their catch tests, tolerances, uncertainties and readings.
    pub line: LineBook,
    /// Keys that this app does not know.
    #[serde(flatten)]
    pub extra: Extra,
}

impl LineCheckFile {
    /// The file of a recipe and a line.
    #[must_use]
    pub fn new(name: String, at: u64, recipe: Draft, line: LineBook) -> Self {
        Self { app: env!("CARGO_PKG_VERSION").to_owned(), name, at, recipe, line, extra: Extra::new() }
    }

    /// Its text.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        Ok(serde_json::to_string_pretty(&Headed::new(KIND, VERSION, self))? + "\n")
    }

    /// Reads the text of a file.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let mut file: Self = limits::read_limited(text, LARGEST, KIND, VERSION)?;
        file.extra.retain(|key, _| !HEAD.contains(&key.as_str()));
        Ok(file)
    }
}
