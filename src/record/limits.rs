//! How much a text may hold, checked when a file, a link or a draft is read: what is shown is drawn, and
//! nobody draws five hundred liquids.

use super::refusal::{self, Refusal};
use crate::domain::recipe::input::MOST_LIQUIDS;
use crate::domain::trial::series::draft::{MAX_FACTORS, MAX_LEVELS, MAX_RUNS};
use serde::de::DeserializeOwned;
use serde_json::Value;

/// The longest name, in characters.
pub const LONGEST_NAME: usize = 200;
/// The longest note, in characters.
pub const LONGEST_NOTE: usize = 10_000;
/// The longest of all other texts, in characters: what is typed into a box for a number, say.
pub const LONGEST_TEXT: usize = 1_000;

/// The longest list under each key.
const LISTS: [(&str, usize); 14] = [
    ("liquids", MOST_LIQUIDS),
    ("tags", 50),
    ("pumps", 50),
    ("tanks", 50),
    ("calibrations", 200),
    ("rows", 200),
    ("boards", MAX_RUNS),
    ("pieces", 200),
    ("factors", MAX_FACTORS),
    ("levels", MAX_LEVELS),
    ("weighed", MAX_RUNS * 20),
    ("systems", 6),
    ("tank", 3 * MOST_LIQUIDS),
    ("figures", 200),
];

/// A name that was made longer, such as by "copy of", cut to what is read again.
#[must_use]
pub fn clipped_name(name: &str) -> String {
    name.chars().take(LONGEST_NAME).collect()
}

/// Reads what is shown on a page: as [`read`](refusal::read), and within the limits.
///
/// # Errors
/// As [`read`](refusal::read), and as [`check`].
pub fn read_limited<T: DeserializeOwned>(text: &str, limit: usize, kind: &str, known: u32) -> Result<T, Refusal> {
    let content = refusal::read(text, limit, kind, known)?;
    check(&Value::Object(refusal::fields(text)))?;
    Ok(content)
}

/// Checks every list and every text of a document.
///
/// # Errors
/// [`Refusal::TooMany`] or [`Refusal::TooLong`] for the first one that is over its limit.
pub fn check(document: &Value) -> Result<(), Refusal> {
    part("", document)
}

fn part(key: &str, value: &Value) -> Result<(), Refusal> {
    match value {
        Value::String(text) => {
            let limit = match key {
                "name" => LONGEST_NAME,
                "note" | "remark" | "source" => LONGEST_NOTE,
                _ => LONGEST_TEXT,
            };
            let length = text.chars().count();
            if length > limit { Err(Refusal::TooLong { key: key.to_owned(), length, limit }) } else { Ok(()) }
        }
        Value::Array(items) => {
            let most = LISTS.iter().find(|(known, _)| *known == key).map_or(usize::MAX, |(_, most)| *most);
            if items.len() > most {
                return Err(Refusal::TooMany { key: key.to_owned(), count: items.len(), limit: most });
            }
            items.iter().try_for_each(|item| part(key, item))
        }
        Value::Object(fields) => fields.iter().try_for_each(|(key, value)| part(key, value)),
        Value::Null | Value::Bool(_) | Value::Number(_) => Ok(()),
    }
}
