//! Files and the browser's store: why a text is not taken, why something was not saved.

use crate::record::refusal::{DEEPEST, TextPosition};
use crate::record::store::library::{SaveError, Unread};
use crate::record::{Refusal, StoreError};
use crate::ui::text::{Carrier, Message};
use crate::{label, t, told};

fn at(place: TextPosition) -> String {
    t!("record-place", line = place.line, byte = place.column)
}

/// Bytes in kB, rounded up: nobody needs them finer.
pub(super) fn kilobytes(bytes: u64) -> String {
    format!("{}\u{a0}kB", bytes.div_ceil(1_000))
}

/// Why a text is not taken, and where in it the trouble is.
#[must_use]
pub fn refusal(refusal: &Refusal, carrier: Carrier) -> Message {
    let subject = match carrier {
        Carrier::File => label!("record-the-file"),
        Carrier::Link => label!("record-the-link"),
        Carrier::Record => label!("record-the-record"),
    };
    let kept = match carrier {
        Carrier::File | Carrier::Link => label!("record-nothing-changed"),
        Carrier::Record => label!("record-kept-as-is"),
    };
    let Message { what, fix } = match refusal {
        Refusal::TooLarge { bytes, limit } => {
            let (size, limit) = (kilobytes(*bytes as u64), kilobytes(*limit as u64));
            told!("record-too-large", subject = subject, size = size, limit = limit)
        }
        Refusal::TooDeep { at: place } => {
            told!("record-too-deep", subject = subject, deepest = DEEPEST, place = at(*place))
        }
        Refusal::TooMany { key, count, limit } => {
            told!("record-too-many", subject = subject, count = count, key = key, limit = limit)
        }
        Refusal::TooLong { key, length, limit } => {
            told!("record-too-long", key = key, length = length, limit = limit)
        }
        Refusal::Empty => told!("record-empty", subject = subject),
        Refusal::NotJson { at: place, cut_short: true } => {
            told!("record-breaks-off", subject = subject, place = at(*place))
        }
        Refusal::NotJson { at: place, cut_short: false } => {
            told!("record-no-json", subject = subject, place = at(*place))
        }
        Refusal::Foreign => told!("record-foreign", subject = subject),
        Refusal::OtherKind { kind } => told!("record-other-kind", subject = subject, kind = kind),
        // A file may say any version: as text it is not rounded.
        Refusal::Newer { version, known } => {
            told!("record-newer", subject = subject, version = version.to_string(), known = known)
        }
        Refusal::NoVersion => told!("record-no-version", subject = subject),
        Refusal::DuplicateKey { key } => told!("record-duplicate-key", subject = subject, key = key),
        Refusal::Damaged { at: place, before, .. } => {
            told!("record-damaged", subject = subject, place = at(*place), before = before)
        }
        Refusal::Altered { found } => told!("record-altered", subject = subject, found = found.to_string()),
    };
    Message { what, fix: format!("{fix} {kept}") }
}

/// Why a stored record is not shown.
#[must_use]
pub fn unread(why: &Unread) -> Message {
    match why {
        Unread::Refused(why) => refusal(why, Carrier::Record),
        Unread::BadKey => told!("record-bad-key"),
        Unread::Store(why) => store(why),
    }
}

/// Why the store did not do what it was asked.
#[must_use]
pub fn store(error: &StoreError) -> Message {
    match error {
        StoreError::Full => told!("record-store-full"),
        StoreError::Blocked => told!("record-store-blocked"),
        StoreError::Silent => told!("record-store-silent"),
        StoreError::Other(own) => told!("record-store-other", why = own),
    }
}

/// Why something was not saved.
#[must_use]
pub fn unsaved(error: &SaveError) -> Message {
    match error {
        SaveError::Store(why) => store(why),
        SaveError::NotKept => told!("record-not-kept"),
        SaveError::Occupied { key } => told!("record-occupied", key = key),
        SaveError::Unknown => told!("record-unknown"),
        SaveError::NoJson(own) => told!("record-not-written", why = own),
    }
}
