//! Why a text is not taken, and where in it the trouble is. The words for it are in `ui::text`.

use serde::Deserialize;
use serde::de::{DeserializeOwned, Deserializer, IgnoredAny, MapAccess, Visitor};
use serde_json::Value;
use serde_json::error::Category;
use std::collections::BTreeSet;
use std::fmt;

/// How deep brackets may nest. Our own records need eight.
pub const DEEPEST: usize = 48;
/// The keys with which every text of ours says what it is.
pub(super) const HEAD: [&str; 2] = ["haulm", "version"];

/// A place in a text, both from 1, as a text editor counts; the column is in bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TextPosition {
    /// Line, from 1.
    pub line: usize,
    /// Byte within the line, from 1.
    pub column: usize,
}

impl TextPosition {
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
        at: TextPosition,
    },
    /// A list has more items than can be shown.
    TooMany {
        /// Its key.
        key: String,
        /// How many it has.
        count: usize,
        /// The most that are read.
        limit: usize,
    },
    /// A text is longer than can be shown.
    TooLong {
        /// Its key.
        key: String,
        /// Its length in characters.
        length: usize,
        /// The longest that is read.
        limit: usize,
    },
    /// There is nothing in it, or nothing but spaces.
    Empty,
    /// Not JSON, or JSON that breaks off.
    NotJson {
        /// Where it stops being JSON.
        at: TextPosition,
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
    /// From Haulm, but its format version is missing or is no whole number from 1.
    NoVersion,
    /// A key is there more than once, and nobody knows which of its values is meant.
    DuplicateKey {
        /// The key.
        key: String,
    },
    /// From Haulm and of a known version, but a part is missing or has a value that cannot be.
    Damaged {
        /// Where reading stopped.
        at: TextPosition,
        /// The end of what is before that place in its line, at most 40 bytes of it.
        before: String,
        /// What was wrong there, in the words of the JSON reader: for a contributor, not for the page.
        what: String,
    },
    /// Sound by itself, but not what its name stands for: it was changed after it was saved.
    Altered {
        /// The name that its text really gives.
        found: super::id::Id,
    },
}

/// What every text of ours begins to say about itself.
#[derive(Default)]
struct Head {
    haulm: Value,
    version: Value,
    /// A key that is there more than once, known or not: the last one would win, and the others be lost.
    twice: Option<String>,
}

impl<'de> Deserialize<'de> for Head {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(HeadVisitor)
    }
}

struct HeadVisitor;

impl<'de> Visitor<'de> for HeadVisitor {
    type Value = Head;

    fn expecting(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("a file of Haulm")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Head, A::Error> {
        let (mut head, mut keys) = (Head::default(), BTreeSet::new());
        while let Some(key) = map.next_key::<String>()? {
            match key.as_str() {
                "haulm" => head.haulm = map.next_value()?,
                "version" => head.version = map.next_value()?,
                _ => drop(map.next_value::<IgnoredAny>()?),
            }
            if let Some(twice) = keys.replace(key) {
                head.twice.get_or_insert(twice);
            }
        }
        Ok(head)
    }
}

/// Reads `text` as a `kind` of format `known` at most, and says why not.
///
/// # Errors
/// Every [`Refusal`] but [`Altered`](Refusal::Altered).
pub fn read<T: DeserializeOwned>(text: &str, limit: usize, kind: &str, known: u32) -> Result<T, Refusal> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    check_head(text, limit, kind, known)?;
    serde_json::from_str(text).map_err(|error| damaged(text, &error))
}

/// Refuses what is no `kind`, or of a later version than is known.
fn check_head(text: &str, limit: usize, kind: &str, known: u32) -> Result<(), Refusal> {
    bounded(text, limit)?;
    if text.trim().is_empty() {
        return Err(Refusal::Empty);
    }
    let head = if text.trim_start().starts_with('{') {
        serde_json::from_str(text)
    } else {
        // A list would be read as the fields of a struct in their order, which nothing of ours ever wrote.
        serde_json::from_str(text).map(|IgnoredAny| Head::default())
    };
    let head = head.map_err(|error| match error.classify() {
        Category::Data => damaged(text, &error),
        Category::Eof => Refusal::NotJson { at: TextPosition::of(&error), cut_short: true },
        Category::Syntax | Category::Io => Refusal::NotJson { at: TextPosition::of(&error), cut_short: false },
    })?;
    if head.haulm.is_null() {
        return Err(Refusal::Foreign);
    }
    if let Some(key) = head.twice {
        return Err(Refusal::DuplicateKey { key: key.chars().take(40).collect() });
    }
    let found = head.haulm.as_str().unwrap_or_default();
    if found != kind {
        return Err(Refusal::OtherKind { kind: found.chars().take(40).collect() });
    }
    let version = head.version.as_u64().unwrap_or(0);
    match u32::try_from(version) {
        Ok(version @ 1..) if version <= known => Ok(()),
        Ok(0) => Err(Refusal::NoVersion),
        _ => Err(Refusal::Newer { version, known }),
    }
}

/// The keys and values of a text that was read before; none of any other.
#[must_use]
pub fn fields(text: &str) -> serde_json::Map<String, Value> {
    match serde_json::from_str(text.strip_prefix('\u{feff}').unwrap_or(text)) {
        Ok(Value::Object(fields)) => fields,
        _ => serde_json::Map::new(),
    }
}

fn damaged(text: &str, error: &serde_json::Error) -> Refusal {
    let remark = error.to_string();
    // serde_json ends its remark with the place, which has a field of its own here.
    let place = format!(" at line {} column {}", error.line(), error.column());
    let what = remark.strip_suffix(&place).unwrap_or(&remark).to_owned();
    let line = text.lines().nth(error.line().saturating_sub(1)).unwrap_or_default();
    let end = line.floor_char_boundary(error.column());
    let start = line.floor_char_boundary(end.saturating_sub(40));
    let before = line.get(start..end).unwrap_or_default().trim().to_owned();
    Refusal::Damaged { at: TextPosition::of(error), before, what }
}

/// Refuses what is too long or nests too deep, in one pass and before anything is built from it.
fn bounded(text: &str, limit: usize) -> Result<(), Refusal> {
    if text.len() > limit {
        return Err(Refusal::TooLarge { bytes: text.len(), limit });
    }
    let (mut depth, mut in_string, mut escaped) = (0_usize, false, false);
    let mut at = TextPosition { line: 1, column: 0 };
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
            b'\n' => at = TextPosition { line: at.line + 1, column: 0 },
            _ => {}
        }
    }
    Ok(())
}
