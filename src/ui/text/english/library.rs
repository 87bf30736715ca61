//! The library.

use crate::record::StoreError;
use crate::record::store::library::SaveError;
use crate::ui::text::{LibraryPage, Message, Rescue};

fn recipes(count: usize) -> String {
    if count == 1 { "1 recipe".to_owned() } else { format!("{} recipes", grouped(count)) }
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

fn megabytes(bytes: usize) -> String {
    let tenths = bytes.div_ceil(100_000);
    format!("{}.{}\u{a0}MB", tenths / 10, tenths % 10)
}

/// Rounded down: it is a promise.
fn gigabytes(bytes: u64) -> String {
    let tenths = bytes / 100_000_000;
    format!("{}.{}\u{a0}GB", tenths / 10, tenths % 10)
}

pub(super) const LIBRARY: LibraryPage = LibraryPage {
    side_by_side: "See them side by side",
    differences: "What was typed differently",
    no_difference: "Nothing that was typed differs.",
    no_revision: "One of the two can no longer be read.",
    figures_differ: "What that does",
    figures_same: "No dose and no mat weight differs.",
    there: "in the recipe",
    not_there: "not in the recipe",
    take_older: "Take the older",
    make_one: "Make them one",
    made_one: |name| format!("«{name}» is one again. Both revisions stay in its history."),
    save_library: "Save everything to a file",
    library_name: "haulm-library",
    library_given: |count, file| format!("{} saved to the file {file}.", records(count)),
    merged: |added, known, refused| {
        let refused = if refused == 0 {
            String::new()
        } else {
            format!(" {} of the file cannot be read and were left out.", records(refused))
        };
        format!("{} added, {} here already.{refused} Nothing was overwritten.", records(added), records(known))
    },
    paste_link: "Link to a recipe",
    open_link: "Open the link",
    no_link: "There is no recipe in this link, or it was cut off on the way.",
    no_link_fix: "Ask for it again, and copy the whole of it.",
    opened_link: |name| format!("«{name}» from the link is open, and not saved yet. Undo brings back what was here."),
    title: "Library",
    empty: "Nothing saved yet",
    empty_hint: "Saved recipes are listed here. They stay in this browser.",
    search: "Search names, notes, tags, liquids, remarks, density, thickness",
    none_match: "No recipe matches",
    sort: "Sort",
    newest: "Newest first",
    oldest: "Oldest first",
    by_name: "By name",
    by_name_backwards: "By name, backwards",
    open: "Open",
    put_back: "Put back",
    history: "History",
    restore: "Take this revision up again",
    unreadable: "Stored, but cannot be read",
    unreadable_hint: "Each is kept as it is. Save its text to a file before anything else.",
    aside: "Set aside",
    aside_hint: "These could not be read and had to make room. They are kept as they were.",
    save_text: "Save its text to a file",
    key: "Key",
    last_copy: "Something last went to a file on",
    never_copied: "Nothing has gone to a file from here yet.",
    copy_hint: "A browser may clear what it stores. What you saved to a file, it does not touch.",
    choose_file: "Take in a file",
    persist: "Ask the browser to keep this",
    persisted: "The browser has promised to keep this.",
    not_persisted: "The browser gave no promise. Save everything to a file now and then.",
    draft_unread: "What was on the page before cannot be read. It is kept, and stands in the library under «Set aside» once you type.",
    settings_unread: "Your settings cannot be read; the usual ones hold. They are kept, and stand in the library under «Set aside» once you change one.",
    on_page: "on the recipe page",
    versions: "Several versions stand side by side",
    versions_hint: "Each was saved without the other. Open the one to go on with.",
    new_name: "New name",
    name_missing: "The name is still empty. Type one, or cancel.",
    removed_ones: "Removed recipes",
    removed_mark: "removed",
    files: "Files and room",
    saved_on: "saved",
    kept: recipes,
    found: |found, of| format!("{} of {}", grouped(found), recipes(of)),
    more: |left| format!("Show more, {} left", grouped(left)),
    room: |bytes| format!("The library takes {}.", megabytes(bytes)),
    room_given: |bytes| format!("The browser gives Haulm up to about {}.", gigabytes(bytes)),
    room_usual: "The browser's store mostly ends at 5\u{a0}MB.",
    unsaved_work: |at, name| format!("Unsaved work, {at}{}{name}", if name.is_empty() { "" } else { ": " }),
    lines: "Lines",
    lines_hint: "Unsaved line data that an import replaced. Opening one also opens its recipe.",
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
    opened: |name| format!("«{name}» is open."),
    opened_over: |name, before| format!("«{name}» is open. «{before}» was not saved; Undo brings it back."),
    removed: |name| format!("«{name}» is out of the library."),
    renamed: |from, to| format!("«{from}» is now called «{to}»."),
    duplicated: |name| format!("«{name}» is in the library."),
    restored: |name| format!("The older revision of «{name}» is taken up again."),
    returned: |name| format!("«{name}» is back in the library."),
    given_out: |file| format!("Saved to the file {file}."),
    imported: |name| format!("«{name}» was taken in from the file and is in the library."),
    already_there: |name| format!("«{name}» in the file is in the library already, unchanged. Nothing was added."),
    file_too_large,
    file_unreadable,
    missing: |count| {
        format!(
            "{} that this tab knows are gone from the browser's store, perhaps cleared in another tab.",
            records(count)
        )
    },
    save_list: "Save this list as a table (CSV)",
    shared_hint: "On a shared drive: choose a file once, and this library and the file stay the same. What others saved comes in, what \
                  you save goes out.",
    take_up_file: "Take up a library file",
    begin_file: "Begin a library file",
    level_now: "Level now",
    let_go: "Let go of it",
    shared_ask: "The browser wants to ask before it opens the file again: press «Level now».",
    shared_same: |at, count, came, went| {
        format!("Level with this library at {at}: {}; {came} came in, {went} went out.", records(count))
    },
    shared_foreign: |count| {
        Message {
        what: format!("{} of the file cannot be read here. The file was left as it is.", records(count)),
        fix:
            "What could be read is in the library. Use the version of Haulm that wrote the file, or choose another file."
                .to_owned(),
    }
    },
    shared_restless: "Others write to the file again and again.",
    shared_restless_fix: "Everything is in this library. Press «Level now» in a moment.",
    shared_gone: "The file is not where it was.",
    shared_denied: "The browser was not allowed to open the file.",
    shared_fix: "Everything is in this library. See that the drive is there and press «Level now», or choose the file again.",
    fill_again: "Write them back",
    filled_again: |count| format!("{} written back.", records(count)),
};

pub(super) const RESCUE: Rescue = Rescue {
    title: "Haulm has stopped",
    reading: "Reading everything that is saved…",
    saved: |count, file| format!("{} and the open pages saved to the file {file}.", records(count)),
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
    let own = if own.is_empty() { String::new() } else { format!(" It says: «{own}».") };
    Message {
        what: format!("The browser could not read the file.{own}"),
        fix: "Check that it is still there and that you may read it. Nothing was changed.".to_owned(),
    }
}
