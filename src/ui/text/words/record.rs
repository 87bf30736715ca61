//! Files and the browser's store: why a text is not taken, why something was not saved.

use crate::record::refusal::{DEEPEST, TextPosition};
use crate::record::store::library::{SaveError, Unread};
use crate::record::{Refusal, StoreError};
use crate::ui::text::{Carrier, Message};

fn message(what: impl Into<String>, fix: impl Into<String>) -> Message {
    Message { what: what.into(), fix: fix.into() }
}

fn at(place: TextPosition) -> String {
    format!("line {}, byte {}", place.line, place.column)
}

/// Bytes in kB, rounded up: nobody needs them finer.
fn kilobytes(bytes: usize) -> String {
    format!("{}\u{a0}kB", bytes.div_ceil(1_000))
}

pub(super) fn refusal(refusal: &Refusal, carrier: Carrier) -> Message {
    let subject = match carrier {
        Carrier::File => "The file",
        Carrier::Link => "The link",
        Carrier::Record => "The stored record",
    };
    let keep = match carrier {
        Carrier::File | Carrier::Link => "Nothing on the page or in the library was changed.",
        Carrier::Record => "It is kept as it is; save it to a file before anything else.",
    };
    let (what, fix) = match refusal {
        Refusal::TooLarge { bytes, limit } => (
            format!("{subject} has {}; at most {} are read.", kilobytes(*bytes), kilobytes(*limit)),
            "Check that it is a recipe: one with a dozen liquids has about 6\u{a0}kB.".to_owned(),
        ),
        Refusal::TooDeep { at: place } => (
            format!("{subject} nests brackets more than {DEEPEST} deep, at {}.", at(*place)),
            "No recipe does. Check where it comes from.".to_owned(),
        ),
        Refusal::TooMany { key, count, limit } => (
            format!("{subject} has {count} {key}; at most {limit} are read."),
            "Check where it comes from: no mill runs so many.".to_owned(),
        ),
        Refusal::TooLong { key, length, limit } => (
            format!("The text of “{key}” has {length} characters; at most {limit} are read."),
            "Shorten it in a text editor, and try once more.".to_owned(),
        ),
        Refusal::Empty => {
            (format!("{subject} is empty."), "Select a copy that was written to its end, if there is one.".to_owned())
        }
        Refusal::NotJson { at: place, cut_short: true } => (
            format!("{subject} breaks off at {}.", at(*place)),
            "Its end is missing. Select a complete copy, if there is one.".to_owned(),
        ),
        Refusal::NotJson { at: place, cut_short: false } => (
            format!("{subject} is no JSON text from {} on.", at(*place)),
            "Select an unchanged copy, or fix it there in a text editor.".to_owned(),
        ),
        Refusal::Foreign => (
            format!("{subject} is not from Haulm: it lacks the key \"haulm\"."),
            "Choose a file that Haulm saved.".to_owned(),
        ),
        Refusal::OtherKind { kind } => (
            format!("{subject} is from Haulm, but holds “{kind}”, which this page does not open."),
            "Choose a file of the kind that this page opens.".to_owned(),
        ),
        Refusal::Newer { version, known } => (
            format!("{subject} has format {version}; this Haulm knows formats up to {known}."),
            "Load the page again to get the newest Haulm, and then try once more.".to_owned(),
        ),
        Refusal::NoVersion => {
            (format!("{subject} has no format version."), "Select a copy that was not changed.".to_owned())
        }
        Refusal::DuplicateKey { key } => (
            format!("{subject} has the key “{key}” twice."),
            "Delete the wrong one of the two in a text editor, or select a copy that was not changed.".to_owned(),
        ),
        Refusal::Damaged { at: place, before, .. } => (
            format!("{subject} is damaged at {}, after “{before}”.", at(*place)),
            "A key is missing there, or is there twice, or has a value that Haulm does not know. Select a copy that \
             was not changed, or correct it in a text editor."
                .to_owned(),
        ),
        Refusal::Altered { found } => (
            format!("{subject} was changed after it was saved: its text now belongs to the name {found}."),
            "Take an older revision, or the copy in a file.".to_owned(),
        ),
    };
    message(what, format!("{fix} {keep}"))
}

pub(super) fn unread(why: &Unread) -> Message {
    match why {
        Unread::Refused(why) => refusal(why, Carrier::Record),
        Unread::BadKey => message(
            "The stored record has a key that names no record.",
            "Another program may have written it. It is kept as it is.",
        ),
        Unread::Store(why) => store(why),
    }
}

pub(super) fn store(error: &StoreError) -> Message {
    match error {
        StoreError::Full => message(
            "The browser has no room left for Haulm.",
            "Your work is still on the page: save it to a file now. Then make room, by clearing what other pages of \
             this address keep, or by starting afresh from a copy of the library.",
        ),
        StoreError::Blocked => message(
            "The browser does not let Haulm keep anything.",
            "Your work is still on the page: save it to a file now. A private window or a setting of the browser may \
             be the cause.",
        ),
        StoreError::Silent => message(
            "The browser's database does not answer. Nothing since then is saved.",
            "Your work is still on the page: export it to a file now. Closing other tabs of Haulm may help.",
        ),
        StoreError::Other(own) => message(
            format!("The browser did not save it: “{own}”."),
            "Your work is still on the page: save it to a file now, then load the page again.",
        ),
    }
}

pub(super) fn unsaved(error: &SaveError) -> Message {
    match error {
        SaveError::Store(why) => store(why),
        SaveError::NotKept => message(
            "The browser saved it, but read back something else.",
            "Your work is still on the page: save it to a file now.",
        ),
        SaveError::Occupied { key } => message(
            format!("An unreadable record has this one’s place, “{key}”. It is not overwritten."),
            "Save both to files: this work from the page, that record from the library.",
        ),
        SaveError::Unknown => message(
            "The record is no longer in the library.",
            "Another tab may have changed it. Your work is still on the page: save it as a new recipe.",
        ),
        SaveError::NoJson(own) => message(
            format!("The recipe cannot be saved: “{own}”."),
            "Note the numbers on the page, and tell whoever looks after Haulm for you.",
        ),
    }
}
