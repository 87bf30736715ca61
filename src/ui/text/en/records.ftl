# Revisions, files, the library and what is kept: what is told of them.

# Revisions
record-revision = Revision { $number }
# Of two revisions with one number, initials and time tell which.
record-twin = { $revision } ({ $author }, { $time })
record-twin-unsigned = { $revision } ({ $time })
record-released-by = released by { $author }, { $date }
record-released-on = released, { $date }
record-withdrawn-by = release withdrawn by { $author }, { $date }
record-withdrawn-on = release withdrawn, { $date }
record-release = Release for the line
record-withdraw = Withdraw release
record-released = { $revision } of “{ $name }” is released for the line.
record-withdrawn = Release of “{ $name }”, { $revision }, withdrawn.
record-behind = { $newer } was saved after { $shown }.
    .fix = This page still shows { $shown }.
record-open-revision = Open { $revision }
record-compare-revision = Compare with { $revision }
record-show-differences = Show differences
record-compare-one = Compare
record-compare-other = with
record-on-page = On this page

# What is asked before a save
record-ask-behind = Not saved: { $newer } was saved after { $shown }, which this page started from.
    .fix = Saving on top keeps that revision in the history, but not what it changed.
record-ask-binders = Not saved: the binder is now { $now }, not { $before }.
    .fix = Save it as a new recipe, or as the next revision of this one.
record-save-as-new = Save as new recipe
record-saved-as-new = “{ $name }” saved as a new recipe.
record-save-on-top = Save on top of { $revision }
record-save-next = Save as next revision

# Two revisions side by side
record-differences = Different inputs
record-no-difference = No inputs differ.
record-no-revision = One of the two revisions cannot be read.
record-figures-differ = Effect on doses and mat
record-figures-same = Doses and mat weight are the same.
record-replaced = { $role }, replaced
record-in-recipe = in the recipe
record-not-in-recipe = not in the recipe
record-new-name = New name
record-deleted-mark = deleted
record-take-older = Use older
record-take-older-of = Use older: { $input }
record-merge-heads = Merge
record-heads-merged = “{ $name }” merged. Both revisions stay in its history.

# What was done with a recipe
record-opened = “{ $name }” opened.
record-opened-over = “{ $name }” opened. “{ $before }” was not saved; Undo brings it back.
record-opened-link = “{ $name }” opened from the link, not saved yet.
record-no-link = This link holds no recipe, or part of it is missing.
    .fix = Copy the whole link and try again.
record-deleted = “{ $name }” deleted.
record-renamed = “{ $before }” renamed “{ $name }”.
record-duplicated = “{ $name }” saved.
record-revision-restored = Older revision of “{ $name }” restored.
record-restored = “{ $name }” restored.
record-imported = “{ $name }” imported.
record-already-there = “{ $name }” is in the library already, unchanged. Nothing was added.
record-exported = Exported to { $file }.
record-unsaved-work = Unsaved work, { $time }
record-unsaved-work-on = Unsaved work, { $time }: { $name }
record-line-opened = “{ $name }” is open. Unsaved work is in the library.
record-line-deleted = “{ $name }” deleted.

# The whole library
record-count = { $count ->
    [one] 1 record
   *[other] { $number } records
}
record-export-library = Export everything
# The name of a file, without its ending.
record-library-file = haulm-library
record-library-exported = { $records } exported to { $file }.
record-library-merged = { $added } added, { $known } already here. Nothing was overwritten.
record-library-merged-partly = { $added } added, { $known } already here. { $refused } of the file cannot be read and were left out. Nothing was overwritten.

# The library file that several share
record-shared-ask = The browser asks before it opens the file again: select Sync.
record-shared-same = Synced { $time }: { $records }; { $came } received, { $went } sent.
record-shared-foreign = { $records } of the file cannot be read here. The file was left as it is.
    .fix = What could be read is in the library. Use the version of Haulm that wrote the file, or choose another file.
record-shared-restless = Others keep writing to the file.
    .fix = Everything is in this library. Select Sync in a moment.
record-shared-gone = The file is not where it was.
record-shared-denied = The browser was not allowed to open the file.
record-shared-fix = Everything is in this library. Check the drive and select Sync, or choose the file again.

# What the browser has lost
record-missing = { $records } that this tab knows are gone from the browser's storage, perhaps cleared in another tab.
record-write-back = Restore them
record-written-back = { $records } restored.

# After a fault of the program
record-rescue-title = Haulm has stopped
record-rescue-reading = Reading saved data…
record-rescue-exported = { $records } and the open pages exported to { $file }.
record-rescue-again = Start again

# At the start
record-draft-unread = What was on the page before cannot be read. It stays stored; see “Set aside” in the library.
record-settings-unread = Your settings cannot be read; the usual ones apply. They are stored, and listed in the library under “Set aside” once you change one.

# A text that is not taken. What it is called:
record-the-file = The file
record-the-link = The link
record-the-record = The stored record
# Where in it the trouble is.
record-place = line { $line }, byte { $byte }
# What became of it.
record-nothing-changed = Nothing on the page or in the library was changed.
record-kept-as-is = It is kept as it is; save it to a file before anything else.
record-too-large = { $subject } has { $size }; at most { $limit } are read.
    .fix = Check that it is a recipe: one with a dozen liquids has about 6 kB.
record-too-deep = { $subject } nests brackets more than { $deepest } deep, at { $place }.
    .fix = Select a file that Haulm saved.
record-too-many = { $subject } has { $count } { $key }; at most { $limit } are read.
    .fix = Select a file that Haulm saved.
record-too-long = The text of “{ $key }” has { $length } characters; at most { $limit } are read.
    .fix = Shorten it in a text editor, and try once more.
record-empty = { $subject } is empty.
    .fix = Select a copy that was written to its end, if there is one.
record-breaks-off = { $subject } breaks off at { $place }.
    .fix = Its end is missing. Select a complete copy, if there is one.
record-no-json = { $subject } is no JSON text from { $place } on.
    .fix = Select an unchanged copy, or fix it there in a text editor.
record-foreign = { $subject } is not from Haulm: it lacks the key "haulm".
    .fix = Choose a file that Haulm saved.
record-other-kind = { $subject } is from Haulm, but holds “{ $kind }”, which this page does not open.
    .fix = Choose a file of the kind that this page opens.
record-newer = { $subject } has format { $version }; this Haulm knows formats up to { $known }.
    .fix = Load the page again to get the newest Haulm, and then try once more.
record-no-version = { $subject } has no format version.
    .fix = Select a copy that was not changed.
record-duplicate-key = { $subject } has the key “{ $key }” twice.
    .fix = Delete the wrong one of the two in a text editor, or select a copy that was not changed.
record-damaged = { $subject } is damaged at { $place }, after “{ $before }”.
    .fix = A key is missing there, or is there twice, or has a value that Haulm does not know. Select a copy that was not changed, or correct it in a text editor.
record-altered = { $subject } was changed after it was saved: its checksum is now { $found }.
    .fix = Restore an older revision, or import an exported copy.
record-bad-key = The stored record has a key that names no record.
    .fix = Another program may have written it. It is kept as it is.

# A file that is not read at all
record-file-too-large = The file has { $size }; at most { $limit } are read.
    .fix = Check that it is a recipe or a library of Haulm: a recipe with a dozen liquids has about 6 kB. Nothing was changed.
record-file-unreadable = The browser could not read the file.
    .fix = Check that it is still there and that you may read it. Nothing was changed.
record-file-unreadable-says = The browser could not read the file. It says: “{ $why }”.
    .fix = Check that it is still there and that you may read it. Nothing was changed.

# Why the browser does not keep something
record-store-full = The browser has no room left for Haulm.
    .fix = Your work is still on the page: save it to a file now. Then make room, by clearing what other pages of this address keep, or by starting afresh from a copy of the library.
record-store-blocked = The browser does not let Haulm keep anything.
    .fix = Your work is still on the page: save it to a file now. A private window or a setting of the browser may be the cause.
record-store-silent = The browser's database does not answer. Nothing since then is saved.
    .fix = Your work is still on the page: export it to a file now. Closing other tabs of Haulm may help.
record-store-other = The browser did not save it: “{ $why }”.
    .fix = Your work is still on the page: save it to a file now, then load the page again.
record-local-storage-full = Local storage is full.
record-local-storage-blocked = Local storage is blocked.
record-only-in-database-fix = Entries go to the browser's database instead; those of the last second before a reload may be lost. Free space by clearing what other pages of this address store.

# Why something was not saved
record-not-kept = The browser saved it wrongly: what was read back differs.
    .fix = Your work is still on the page: save it to a file now.
record-occupied = Not saved: an unreadable record has the same key, “{ $key }”. It is not overwritten.
    .fix = Save both to files: this work from the page, that record from the library.
record-unknown = The record is no longer in the library.
    .fix = Another tab may have changed it. Your work is still on the page: save it as a new recipe.
record-not-written = The recipe cannot be saved: “{ $why }”.
    .fix = Note the numbers on the page, and tell whoever looks after Haulm for you.
