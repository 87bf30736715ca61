//! What is typed where solutions and glues are made up, kept from visit to visit.

use super::refusal::{self, Refusal};
use super::sealed::Headed;
use crate::domain::mixing::MixDraft;
use serde::{Deserialize, Serialize};

/// The format version.
const VERSION: u32 = 1;
/// The key `haulm` of the text.
const KIND: &str = "mix";
/// The longest text that is read, in bytes.
const LARGEST: usize = 100_000;

/// [`MixDraft`] as it is stored.
#[derive(Serialize, Deserialize)]
struct Stored<T> {
    #[serde(default)]
    mix: T,
}

/// The text in the store.
///
/// # Errors
/// When it has no JSON form. None lacks one.
pub fn text(mix: &MixDraft) -> Result<String, serde_json::Error> {
    Headed::new(KIND, VERSION, &Stored { mix }).text()
}

/// Reads a stored text.
///
/// # Errors
/// Every [`Refusal`] but [`Altered`](Refusal::Altered).
pub fn read(text: &str) -> Result<MixDraft, Refusal> {
    refusal::read(text, LARGEST, KIND, VERSION).map(|stored: Stored<MixDraft>| stored.mix)
}
