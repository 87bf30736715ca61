//! What is typed where solutions and glues are made up, kept from visit to visit.

use super::refusal::{self, Refusal};
use super::shape::{self, fields};
use crate::domain::mix::MixDraft;

/// The format version.
const VERSION: u32 = 1;
/// The key `haulm` of the text.
const KIND: &str = "mix";
/// The longest text that is read, in bytes.
const LARGEST: usize = 100_000;

/// [`MixDraft`] as it is stored.
#[derive(Clone)]
struct Stored {
    haulm: String,
    version: u32,
    mix: MixDraft,
}

fields!(Stored { Must haulm, Must version, May mix });

/// The text in the store.
///
/// # Errors
/// When it has no JSON form. None lacks one.
pub fn text(mix: &MixDraft) -> Result<String, serde_json::Error> {
    let stored = Stored { haulm: KIND.to_owned(), version: VERSION, mix: mix.clone() };
    Ok(shape::value(&stored).to_string())
}

/// Reads a stored text.
///
/// # Errors
/// Every [`Refusal`] but [`Altered`](Refusal::Altered).
pub fn read(text: &str) -> Result<MixDraft, Refusal> {
    refusal::read(text, LARGEST, KIND, VERSION, |_, text| shape::read(text)).map(|stored: Stored| stored.mix)
}
