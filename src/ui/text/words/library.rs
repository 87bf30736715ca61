//! The library: how much of it, files that are not read, and work that is not saved.

use super::record::{kilobytes, unsaved};
use crate::record::StoreError;
use crate::record::store::library::SaveError;
use crate::ui::text::Message;
use crate::{t, told};

/// So many records.
#[must_use]
pub fn records(count: usize) -> String {
    t!("record-count", count = count, number = grouped(count))
}

/// With a narrow space between groups of three digits, as numbers are shown elsewhere.
fn grouped(count: usize) -> String {
    let digits = count.to_string();
    if digits.len() < 5 {
        return digits;
    }
    let (head, tail) = digits.split_at(digits.len() - 3);
    format!("{head}\u{202f}{tail}")
}

/// What came of a library file: how many records are new, were known, and cannot be read.
#[must_use]
pub fn merged(added: usize, known: usize, refused: usize) -> String {
    let (added, known) = (records(added), records(known));
    if refused == 0 {
        t!("record-library-merged", added = added, known = known)
    } else {
        t!("record-library-merged-partly", added = added, known = known, refused = records(refused))
    }
}

/// What work is called that is set aside; it may have no name.
#[must_use]
pub fn unsaved_work(time: &str, name: &str) -> String {
    if name.is_empty() {
        t!("record-unsaved-work", time = time)
    } else {
        t!("record-unsaved-work-on", time = time, name = name)
    }
}

/// Why what is typed is only in the browser's database.
#[must_use]
pub fn only_in_database(why: &SaveError) -> Message {
    let what = match why {
        SaveError::Store(StoreError::Full) => t!("record-local-storage-full"),
        SaveError::Store(StoreError::Blocked) => t!("record-local-storage-blocked"),
        why => unsaved(why).what,
    };
    Message { what, fix: t!("record-only-in-database-fix") }
}

/// A file is larger than what is read; both in bytes.
#[must_use]
pub fn file_too_large(size: u64, limit: u64) -> Message {
    told!("record-file-too-large", size = kilobytes(size), limit = kilobytes(limit))
}

/// The browser could not read a file; why, in its own words if it said so.
#[must_use]
pub fn file_unreadable(why: &str) -> Message {
    if why.is_empty() { told!("record-file-unreadable") } else { told!("record-file-unreadable-says", why = why) }
}
