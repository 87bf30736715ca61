//! Revisions, releases, and what is asked before a save.

use crate::ui::text::{Message, VersionWords};

fn by(done: &str, author: &str, date: &str) -> String {
    if author.is_empty() { format!("{done}, {date}") } else { format!("{done} by {author}, {date}") }
}

pub(super) const VERSIONS: VersionWords = VersionWords {
    revision: |number| format!("Revision {number}"),
    twin: |revision, author, at| {
        if author.is_empty() { format!("{revision} ({at})") } else { format!("{revision} ({author}, {at})") }
    },
    released_by: |author, date| by("released", author, date),
    withdrawn_by: |author, date| by("release withdrawn", author, date),
    release: "Release for the line",
    withdraw: "Withdraw release",
    released: |revision, name| format!("{revision} of “{name}” is released for the line."),
    withdrawn: |revision, name| format!("Release of “{name}”, {revision}, withdrawn."),
    behind: |newer, shown| Message {
        what: format!("{newer} was saved after {shown}."),
        fix: format!("This page still shows {shown}."),
    },
    open: |revision| format!("Open {revision}"),
    ask_behind: |newer, shown| Message {
        what: format!("Not saved: {newer} was saved after {shown}, which this page started from."),
        fix: "Saving on top keeps that revision in the history, but not what it changed.".to_owned(),
    },
    ask_binders: |before, now| Message {
        what: format!("Not saved: the binder is now {now}, not {before}."),
        fix: "Save it as a new recipe, or as the next revision of this one.".to_owned(),
    },
    save_as_new: "Save as new recipe",
    saved_as_new: |name| format!("“{name}” saved as a new recipe."),
    save_on_top: |revision| format!("Save on top of {revision}"),
    save_next: "Save as next revision",
    compare: |revision| format!("Compare with {revision}"),
    show_differences: "Show differences",
    compare_one: "Compare",
    compare_other: "with",
    on_page: "On this page",
    replaced: |role| format!("{role}, replaced"),
};
