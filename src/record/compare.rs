//! What is chosen and typed where systems are compared, kept from visit to visit.

use super::refusal::{self, Refusal};
use super::sealed::Headed;
use super::shelf::{SaveError, Shelf, Unread};
use super::store::Store;
use crate::domain::compare::draft::CompareDraft;
use serde::{Deserialize, Serialize};

/// The key in the store.
pub const COMPARE: &str = "haulm/compare";
/// The format version.
const VERSION: u32 = 1;
/// The key `haulm` of the text.
const KIND: &str = "compare";
/// The longest text that is read, in bytes.
const LARGEST: usize = 400_000;

/// [`CompareDraft`] as it is stored.
#[derive(Serialize, Deserialize)]
struct Stored<T> {
    #[serde(default)]
    compare: T,
}

/// The text in the store.
///
/// # Errors
/// When it has no JSON form. None lacks one.
pub fn text(compare: &CompareDraft) -> Result<String, serde_json::Error> {
    Headed::new(KIND, VERSION, &Stored { compare }).text()
}

/// Reads a stored text.
///
/// # Errors
/// Every [`Refusal`] but [`Altered`](Refusal::Altered).
pub fn read(text: &str) -> Result<CompareDraft, Refusal> {
    refusal::read(text, LARGEST, KIND, VERSION).map(|stored: Stored<CompareDraft>| stored.compare)
}

impl<S: Store> Shelf<S> {
    /// What was chosen and typed where systems are compared; nothing where there is nothing.
    ///
    /// # Errors
    /// When it cannot be read.
    pub fn compare(&self) -> Result<CompareDraft, Unread> {
        match self.store().read(COMPARE).map_err(Unread::Store)? {
            Some(text) => read(&text).map_err(Unread::Refused),
            None => Ok(CompareDraft::default()),
        }
    }

    /// Keeps it in place of what was there. What was there and cannot be read is set aside first.
    ///
    /// # Errors
    /// When it is not in the store.
    pub fn keep_compare(&self, typed: &CompareDraft) -> Result<(), SaveError> {
        self.overwrite(COMPARE, &text(typed)?, |text| read(text).is_ok())
    }
}
