//! Words about the revisions of a recipe: the same on every page, on paper and in notices.
#![allow(missing_docs, reason = "each key says what its text is for; the English text shows it")]

use super::Message;

/// Revisions, releases, and what is asked before a save.
#[derive(Debug, Clone, Copy)]
pub struct VersionWords {
    pub revision: fn(u32) -> String,
    /// Of two revisions with one number: initials, date and time tell which.
    pub twin: fn(revision: &str, author: &str, at: &str) -> String,
    pub released_by: fn(author: &str, date: &str) -> String,
    pub withdrawn_by: fn(author: &str, date: &str) -> String,
    pub release: &'static str,
    pub withdraw: &'static str,
    pub released: fn(revision: &str, name: &str) -> String,
    pub withdrawn: fn(revision: &str, name: &str) -> String,
    /// The page shows an older revision than there is.
    pub behind: fn(newer: &str, shown: &str) -> Message,
    pub open: fn(revision: &str) -> String,
    /// A save would put an older revision over a newer one.
    pub ask_behind: fn(newer: &str, shown: &str) -> Message,
    /// A save would make another recipe of the one that is open.
    pub ask_binders: fn(before: &str, now: &str) -> Message,
    pub save_as_new: &'static str,
    pub saved_as_new: fn(name: &str) -> String,
    pub save_on_top: fn(revision: &str) -> String,
    pub save_next: &'static str,
    pub compare: fn(revision: &str) -> String,
    pub show_differences: &'static str,
    pub compare_one: &'static str,
    pub compare_other: &'static str,
    pub on_page: &'static str,
    pub replaced: fn(role: &str) -> String,
}
