//! The library.

use crate::record::StoreError;
use crate::record::store::library::SaveError;
use crate::ui::text::{LibraryPage, Message, Rescue};

/// With a narrow space between groups of three digits, as numbers are shown elsewhere.
fn grouped(count: usize) -> String {
    let digits = count.to_string();
    if digits.len() < 5 {
        return digits;
    }
    let (head, tail) = digits.split_at(digits.len() - 3);
    format!("{head}\u{202f}{tail}")
}

pub(super) const LIBRARY: LibraryPage = LibraryPage {
    differences: "Different inputs",
    no_difference: "No inputs differ.",
    no_revision: "One of the two revisions cannot be read.",
    figures_differ: "Effect on doses and mat",
    figures_same: "Doses and mat weight are the same.",
    there: "in the recipe",
    not_there: "not in the recipe",
    take_older: "Use older",
    make_one: "Merge",
    made_one: |name| format!("“{name}” merged. Both revisions stay in its history."),
    save_library: "Export everything",
    library_name: "haulm-library",
    library_given: |count, file| format!("{} exported to {file}.", records(count)),
    merged: |added, known, refused| {
        let refused = if refused == 0 {
            String::new()
        } else {
            format!(" {} of the file cannot be read and were left out.", records(refused))
        };
        format!("{} added, {} already here.{refused} Nothing was overwritten.", records(added), records(known))
    },
    no_link: "This link holds no recipe, or part of it is missing.",
    no_link_fix: "Copy the whole link and try again.",
    opened_link: |name| format!("“{name}” opened from the link, not saved yet."),
    draft_unread: "What was on the page before cannot be read. It is stored, and listed in the library under “Set aside” once you type.",
    settings_unread: "Your settings cannot be read; the usual ones apply. They are stored, and listed in the library under “Set aside” once you change one.",
    new_name: "New name",
    removed_mark: "deleted",
    unsaved_work: |at, name| format!("Unsaved work, {at}{}{name}", if name.is_empty() { "" } else { ": " }),
    line_opened: |name| format!("“{name}” is open. Unsaved work is in the library."),
    line_deleted: |name| format!("“{name}” deleted."),
    draft_only_in_database: |why| {
        Message {
        what: match why {
            SaveError::Store(StoreError::Full) => "Local storage is full.".to_owned(),
            SaveError::Store(StoreError::Blocked) => "Local storage is blocked.".to_owned(),
            why => super::record::unsaved(why).what,
        },
        fix: "What is typed goes to the browser's database; what was typed in the last second before a reload may be lost. \
               Make room by clearing what other pages of this address keep."
            .to_owned(),
    }
    },
    opened: |name| format!("“{name}” opened."),
    opened_over: |name, before| format!("“{name}” opened. “{before}” was not saved; Undo brings it back."),
    removed: |name| format!("“{name}” deleted."),
    renamed: |from, to| format!("“{from}” renamed “{to}”."),
    duplicated: |name| format!("“{name}” saved."),
    restored: |name| format!("Older revision of “{name}” restored."),
    returned: |name| format!("“{name}” restored."),
    given_out: |file| format!("Exported to {file}."),
    imported: |name| format!("“{name}” imported."),
    already_there: |name| format!("“{name}” is in the library already, unchanged. Nothing was added."),
    file_too_large,
    file_unreadable,
    missing: |count| {
        format!(
            "{} that this tab knows are gone from the browser's storage, perhaps cleared in another tab.",
            records(count)
        )
    },
    shared_ask: "The browser asks before it opens the file again: select Sync.",
    shared_same: |at, count, came, went| format!("Synced {at}: {}; {came} received, {went} sent.", records(count)),
    shared_foreign: |count| {
        Message {
        what: format!("{} of the file cannot be read here. The file was left as it is.", records(count)),
        fix:
            "What could be read is in the library. Use the version of Haulm that wrote the file, or choose another file."
                .to_owned(),
    }
    },
    shared_restless: "Others keep writing to the file.",
    shared_restless_fix: "Everything is in this library. Select Sync in a moment.",
    shared_gone: "The file is not where it was.",
    shared_denied: "The browser was not allowed to open the file.",
    shared_fix: "Everything is in this library. Check the drive and select Sync, or choose the file again.",
    fill_again: "Restore them",
    filled_again: |count| format!("{} restored.", records(count)),
};

pub(super) const RESCUE: Rescue = Rescue {
    title: "Haulm has stopped",
    reading: "Reading saved data…",
    saved: |count, file| format!("{} and the open pages exported to {file}.", records(count)),
    again: "Start again",
};

fn records(count: usize) -> String {
    if count == 1 { "1 record".to_owned() } else { format!("{} records", grouped(count)) }
}

fn file_too_large(bytes: u64, limit: u64) -> Message {
    let kilobytes = |bytes: u64| format!("{}\u{a0}kB", bytes.div_ceil(1_000));
    Message {
        what: format!("The file has {}; at most {} are read.", kilobytes(bytes), kilobytes(limit)),
        fix: "Check that it is a recipe or a library of Haulm: a recipe with a dozen liquids has about 6\u{a0}kB. Nothing was changed."
            .to_owned(),
    }
}

fn file_unreadable(own: &str) -> Message {
    let own = if own.is_empty() { String::new() } else { format!(" It says: “{own}”.") };
    Message {
        what: format!("The browser could not read the file.{own}"),
        fix: "Check that it is still there and that you may read it. Nothing was changed.".to_owned(),
    }
}
