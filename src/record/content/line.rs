//! The mill's line, and the changeover under way, as they are kept.

use crate::domain::Draft;
use crate::domain::line::LineBook;
use crate::record::document::Document;
use crate::record::id::RecipeId;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// The line. A catch test of six rows has 2 000 bytes.
pub const LINE: Document<LineRecord> = Document::new("haulm/line", "line", 1, 2_000_000);

/// One end of a changeover. The whole recipe is included, so that the timeline does without the library.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct End {
    /// The recipe's name.
    pub name: String,
    /// What was typed.
    pub draft: Draft,
}

/// A changeover that was planned, and perhaps started.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PlannedChangeover {
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
    pub planned: Option<PlannedChangeover>,
    /// Saved recipes that a new delivery is not entered into, though they use its liquid.
    pub delivery_not_for: BTreeSet<RecipeId>,
    /// Whether it is the line of the example still, and none of a mill's own.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub example: bool,
}
