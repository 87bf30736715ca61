//! The mill's line, and the changeover under way, as they are kept.

use crate::domain::Draft;
use crate::domain::line::{DeliveryEntries, LineBook, TankId};
use crate::record::document::Document;
use crate::record::id::RecipeId;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

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
    /// The steps that were marked as done, each by its key, with the time: milliseconds since 1970-01-01 00:00 UTC.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub done: BTreeMap<String, u64>,
}

/// A delivery that was accepted.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AcceptedDelivery {
    /// Its number, by which two tabs' lists are merged.
    pub id: u32,
    /// When, milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// The liquid's name.
    pub liquid: String,
    /// Into which tank; `None` for a liquid without one.
    #[serde(default)]
    pub tank: Option<TankId>,
    /// The tank's name then.
    #[serde(default)]
    pub tank_name: String,
    /// What its certificate said.
    pub certificate: DeliveryEntries,
    /// The batch that it named.
    #[serde(default)]
    pub batch: String,
}

/// So many accepted deliveries are kept, the newest.
pub const MOST_DELIVERIES: usize = 200;

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
    /// The deliveries that were accepted, the oldest first.
    pub deliveries: Vec<AcceptedDelivery>,
    /// Whether it is the line of the example still, and none of a mill's own.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub example: bool,
}

impl LineRecord {
    /// Enters a delivery that was accepted into the list of them, and clears its certificate for the next one.
    pub fn note_delivery(&mut self, at: u64, liquid: String, tank: Option<TankId>) {
        let blank = LineBook::default();
        let tank_name = tank.and_then(|id| self.book.tank(id)).map(|tank| tank.name.clone()).unwrap_or_default();
        let certificate = std::mem::replace(&mut self.book.delivery, blank.delivery);
        let batch = std::mem::take(&mut self.book.delivered_batch).trim().to_owned();
        let id = self.deliveries.iter().map(|delivery| delivery.id).max().map_or(1, |most| most.saturating_add(1));
        self.deliveries.push(AcceptedDelivery { id, at, liquid, tank, tank_name, certificate, batch });
        let excess = self.deliveries.len().saturating_sub(MOST_DELIVERIES);
        self.deliveries.drain(..excess);
    }

    /// The batch that came into a tank last.
    #[must_use]
    pub fn last_batch(&self, tank: TankId) -> Option<&str> {
        let into = self.deliveries.iter().rfind(|delivery| delivery.tank == Some(tank));
        into.map(|delivery| delivery.batch.as_str()).filter(|batch| !batch.is_empty())
    }
}
