//! What is known of the open documents in the store.

use crate::record::content::sealed::Extra;
use crate::record::store::library::SaveError;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// What is known of each document's text in the store.
#[derive(Debug, Default)]
pub struct Documents {
    /// By the document's key.
    pub known: BTreeMap<&'static str, Known>,
    /// Changed, and to be kept after the next paint.
    pub pending: BTreeSet<&'static str>,
    /// Those that the small store did not take.
    pub failing: BTreeMap<&'static str, SaveError>,
}

/// What is known of one document.
#[derive(Debug, Clone)]
pub struct Known {
    /// The last version that this tab and the store had in common.
    pub base: Value,
    /// Counts the versions in the store.
    pub edition: u64,
    /// Keys that this app does not know.
    pub extra: Extra,
    /// The text in the store that says so, where it is known to.
    pub text: Option<String>,
}
