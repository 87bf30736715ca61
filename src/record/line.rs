//! The mill's line, and the changeover under way, as they are kept.

use super::refusal::{self, HEAD, Refusal};
use super::sealed::{Extra, Headed};
use super::shelf::{SaveError, Shelf, Unread};
use super::store::Store;
use crate::domain::Draft;
use crate::domain::line::LineBook;
use serde::{Deserialize, Serialize};

/// The format version of the line.
const VERSION: u32 = 1;
/// The key `haulm` of its text.
const KIND: &str = "line";
/// The longest text that is read, in bytes. A catch test of six rows has 2 000.
const LARGEST: usize = 2_000_000;
/// Where it is kept.
pub const LINE: &str = "haulm/line";

/// One end of a changeover. The recipe stands here whole, so that the timeline does without the shelf.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct End {
    /// The recipe's name.
    pub name: String,
    /// What was typed.
    pub draft: Draft,
}

/// A changeover that was planned, and perhaps started.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Planned {
    /// From this recipe.
    pub from: End,
    /// To this one.
    pub to: End,
    /// When it was started, milliseconds since 1970-01-01 00:00 UTC.
    #[serde(default)]
    pub started: Option<u64>,
}

/// Everything typed about the line, kept after every change so that a reload loses nothing.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct LineRecord {
    /// Pumps, tanks, times, tolerances, readings.
    pub book: LineBook,
    /// The changeover.
    pub planned: Option<Planned>,
    /// Whether it is the line of the example still, and none of a mill's own.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub example: bool,
    /// Keys that this app does not know.
    #[serde(flatten)]
    pub extra: Extra,
}

impl LineRecord {
    /// Its text in the store, and as a file.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        Headed::new(KIND, VERSION, self).text()
    }

    /// Reads a stored text or a file.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let mut record: Self = refusal::read(text, LARGEST, KIND, VERSION)?;
        record.extra.retain(|key, _| !HEAD.contains(&key.as_str()));
        Ok(record)
    }
}

impl<S: Store> Shelf<S> {
    /// The line as it was kept; an empty one when none was.
    ///
    /// # Errors
    /// When it is there and cannot be read.
    pub fn line(&self) -> Result<LineRecord, Unread> {
        match self.store().read(LINE).map_err(Unread::Store)? {
            Some(text) => LineRecord::read(&text).map_err(Unread::Refused),
            None => Ok(LineRecord::default()),
        }
    }

    /// Keeps the line in place of what was there. What was there and cannot be read is set aside first.
    ///
    /// # Errors
    /// When it is not in the store.
    pub fn keep_line(&self, line: &LineRecord) -> Result<(), SaveError> {
        self.overwrite(LINE, &line.text()?, |text| LineRecord::read(text).is_ok())
    }
}
