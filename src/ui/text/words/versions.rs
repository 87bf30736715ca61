//! Revisions and releases: by whom and when. Initials may be left blank.

use crate::t;

/// One of two revisions with one number: initials, date and time tell which.
#[must_use]
pub fn twin(revision: &str, author: &str, time: &str) -> String {
    if author.is_empty() {
        t!("record-twin-unsigned", revision = revision, time = time)
    } else {
        t!("record-twin", revision = revision, author = author, time = time)
    }
}

/// Who released a revision, and when.
#[must_use]
pub fn released_by(author: &str, date: &str) -> String {
    if author.is_empty() {
        t!("record-released-on", date = date)
    } else {
        t!("record-released-by", author = author, date = date)
    }
}

/// Who withdrew the release of a revision, and when.
#[must_use]
pub fn withdrawn_by(author: &str, date: &str) -> String {
    if author.is_empty() {
        t!("record-withdrawn-on", date = date)
    } else {
        t!("record-withdrawn-by", author = author, date = date)
    }
}
