//! Why a text is not taken, and where in it the trouble is. The words for it are in `ui::text`.

use super::shape::{self, fields};
use serde_json::Value;
use serde_json::error::Category;

/// How deep brackets may nest. Our own records need eight.
pub const DEEPEST: usize = 48;

/// A place in a text, both from 1, as a text editor counts; the column is in bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Place {
    /// Line, from 1.
    pub line: usize,
    /// Byte within the line, from 1.
    pub column: usize,
}

impl Place {
    fn of(error: &serde_json::Error) -> Self {
        Self { line: error.line().max(1), column: error.column().max(1) }
    }
}

/// Why a file or a stored record is not taken. Whatever was refused is left as it was.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Refusal {
    /// Longer than what is read at all; nothing of it was looked at.
    TooLarge {
        /// Its length in bytes.
        bytes: usize,
        /// The largest length that is read.
        limit: usize,
    },
    /// Brackets nest deeper than [`DEEPEST`].
    TooDeep {
        /// The bracket that is one too many.
        at: Place,
    },
    /// Not JSON, or JSON that breaks off.
    NotJson {
        /// Where it stops being JSON.
        at: Place,
        /// Whether it is sound up to its end, and just ends too early.
        cut_short: bool,
    },
    /// JSON, but not from Haulm: it lacks the `"haulm"` key.
    Foreign,
    /// From Haulm, but of another kind than was asked for.
    OtherKind {
        /// The kind that it says it is, at most 40 characters of it.
        kind: String,
    },
    /// Of a later format than this app knows.
    Newer {
        /// The format version that it says it has.
        version: u64,
        /// The newest one known here.
        known: u32,
    },
    /// From Haulm and of a known version, but a part is missing or has a value that cannot be.
    Damaged {
        /// Where reading stopped.
        at: Place,
        /// What was wrong there: a technical remark, English.
        what: String,
    },
    /// Sound by itself, but not what its name stands for: it was changed after it was saved.
    Altered {
        /// The name that its text really gives.
        found: super::id::Id,
    },
}

/// What every text of ours begins to say about itself.
struct Head {
    haulm: Value,
    version: Value,
}

fields!(Head { May haulm, May version });

/// Reads `text` as a `kind` of format `version` at most, and says why not.
///
/// `read` is told the version, from 1 up, and picks the type that was written then; it turns what an
/// older one wrote into what is written now.
///
/// # Errors
/// Every [`Refusal`] but [`Altered`](Refusal::Altered).
pub fn read<T>(
    text: &str,
    limit: usize,
    kind: &str,
    known: u32,
    read: impl FnOnce(u32, &str) -> serde_json::Result<T>,
) -> Result<T, Refusal> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let version = version(text, limit, kind, known)?;
    read(version, text).map_err(|error| damaged(&error))
}

/// The version of a text, if it is a `kind`, and not of a later version than is known.
fn version(text: &str, limit: usize, kind: &str, known: u32) -> Result<u32, Refusal> {
    bounded(text, limit)?;
    let head: Head = shape::read(text).map_err(|error| match error.classify() {
        // JSON, but no object, or one that names itself twice.
        Category::Data => Refusal::Foreign,
        Category::Eof => Refusal::NotJson { at: Place::of(&error), cut_short: true },
        Category::Syntax | Category::Io => Refusal::NotJson { at: Place::of(&error), cut_short: false },
    })?;
    if head.haulm.is_null() {
        return Err(Refusal::Foreign);
    }
    let found = head.haulm.as_str().unwrap_or_default();
    if found != kind {
        return Err(Refusal::OtherKind { kind: found.chars().take(40).collect() });
    }
    let version = head.version.as_u64().unwrap_or(0);
    match u32::try_from(version) {
        Ok(version @ 1..) if version <= known => Ok(version),
        Ok(0) => Err(Refusal::Damaged { at: Place { line: 1, column: 1 }, what: "no format version".to_owned() }),
        _ => Err(Refusal::Newer { version, known }),
    }
}

/// The keys and values of a text that was read before; none of any other.
#[must_use]
pub fn fields(text: &str) -> serde_json::Map<String, Value> {
    match shape::read(text.strip_prefix('\u{feff}').unwrap_or(text)) {
        Ok(Value::Object(fields)) => fields,
        _ => serde_json::Map::new(),
    }
}

fn damaged(error: &serde_json::Error) -> Refusal {
    let full = error.to_string();
    // serde_json puts the place behind the remark; it has a field of its own here.
    let what = full.split(" at line ").next().unwrap_or_default().to_owned();
    Refusal::Damaged { at: Place::of(error), what }
}

/// Refuses what is too long or nests too deep, in one pass and before anything is built from it.
fn bounded(text: &str, limit: usize) -> Result<(), Refusal> {
    if text.len() > limit {
        return Err(Refusal::TooLarge { bytes: text.len(), limit });
    }
    let (mut depth, mut in_string, mut escaped) = (0_usize, false, false);
    let mut at = Place { line: 1, column: 0 };
    for byte in text.bytes() {
        at.column += 1;
        match byte {
            _ if escaped => escaped = false,
            b'\\' if in_string => escaped = true,
            b'"' => in_string = !in_string,
            b'[' | b'{' if !in_string => {
                depth += 1;
                if depth > DEEPEST {
                    return Err(Refusal::TooDeep { at });
                }
            }
            b']' | b'}' if !in_string => depth = depth.saturating_sub(1),
            b'\n' => at = Place { line: at.line + 1, column: 0 },
            _ => {}
        }
    }
    Ok(())
}
