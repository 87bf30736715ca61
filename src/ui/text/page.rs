//! The plain texts of the pages: titles, buttons, empty states. Each key says what its text is for.
#![allow(missing_docs, reason = "each key says what its text is for; the English text shows it")]

use super::Message;
use crate::record::store::library::SaveError;

/// The library.
#[derive(Debug, Clone, Copy)]
pub struct LibraryPage {
    pub differences: &'static str,
    pub no_difference: &'static str,
    pub no_revision: &'static str,
    pub figures_differ: &'static str,
    pub figures_same: &'static str,
    pub there: &'static str,
    pub not_there: &'static str,
    pub take_older: &'static str,
    pub make_one: &'static str,
    pub made_one: fn(&str) -> String,
    pub save_library: &'static str,
    pub library_name: &'static str,
    pub library_given: fn(usize, &str) -> String,
    pub merged: fn(usize, usize, usize) -> String,
    pub no_link: &'static str,
    pub no_link_fix: &'static str,
    pub opened_link: fn(&str) -> String,
    pub draft_unread: &'static str,
    pub settings_unread: &'static str,
    pub new_name: &'static str,
    pub removed_mark: &'static str,
    pub unsaved_work: fn(&str, &str) -> String,
    pub line_opened: fn(&str) -> String,
    pub line_deleted: fn(&str) -> String,
    pub draft_only_in_database: fn(&SaveError) -> Message,
    pub opened: fn(&str) -> String,
    pub opened_over: fn(&str, &str) -> String,
    pub removed: fn(&str) -> String,
    pub renamed: fn(&str, &str) -> String,
    pub duplicated: fn(&str) -> String,
    pub restored: fn(&str) -> String,
    pub returned: fn(&str) -> String,
    pub given_out: fn(&str) -> String,
    pub imported: fn(&str) -> String,
    pub already_there: fn(&str) -> String,
    pub file_too_large: fn(u64, u64) -> Message,
    pub file_unreadable: fn(&str) -> Message,
    pub missing: fn(usize) -> String,
    pub shared_ask: &'static str,
    pub shared_same: fn(&str, usize, usize, usize) -> String,
    pub shared_foreign: fn(usize) -> Message,
    pub shared_restless: &'static str,
    pub shared_restless_fix: &'static str,
    pub shared_gone: &'static str,
    pub shared_denied: &'static str,
    pub shared_fix: &'static str,
    pub fill_again: &'static str,
    pub filled_again: fn(usize) -> String,
}

/// After a fault of the program.
#[derive(Debug, Clone, Copy)]
pub struct Rescue {
    pub title: &'static str,
    pub reading: &'static str,
    pub saved: fn(usize, &str) -> String,
    pub again: &'static str,
}

/// The binder systems.
#[derive(Debug, Clone, Copy)]
pub struct SystemsPage {
    pub saved: fn(&str) -> String,
    pub replaced: fn(&str) -> String,
    pub renamed: fn(&str, &str) -> String,
    pub removed: fn(&str) -> String,
}
