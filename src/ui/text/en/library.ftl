# The Library page.

library-title = Library
library-tabs = Library
library-recipes = Recipes
library-systems = Binder systems
library-trials = Trials
library-recipe-count = { $count ->
    [one] 1 recipe
   *[other] { $count } recipes
}
library-system-count = { $count ->
    [one] 1 binder system
   *[other] { $count } binder systems
}
library-trial-count = { $count ->
    [one] 1 trial
   *[other] { $count } trials
}
library-import = Import
library-export-list = Export list (CSV)
library-link = Share link
library-open-link = Open link

# Warnings
library-some-unreadable = { $count ->
    [one] One record cannot be read. It is stored as it is.
   *[other] { $count } records cannot be read. They are stored as they are.
}
library-some-aside = { $count ->
    [one] One text could not be read and was set aside.
   *[other] { $count } texts could not be read and were set aside.
}
library-conflict-of = “{ $name }” has several versions. Merge them before it is used.
library-backup-old = Last backup { $days } days ago.

# Recipes
library-empty = Nothing saved yet.
library-empty-hint = Saved recipes are listed here. They stay in this browser.
library-filter = Filter recipes
library-filter-hint = Name, note, tag, liquid, initials, density, thickness
library-show = Show
library-all = All
library-released = Released
library-found = { $found } of { $recipes }
library-none-match = No recipe matches
library-more = Show more, { $count } left
library-name = Name
library-binder = Binder
library-thickness = Thickness
library-density = Density
library-saved = Saved
library-by = By
library-revision = Revision
library-on-page = on the Recipe page
library-unsaved = , unsaved changes
library-versions = { $count } versions
library-several-versions = Versions
library-versions-hint = Each was saved without the other. Open one, or merge the latest two.
library-merge = Merge…
library-merge-of = Merge { $name }
library-open = Open
library-open-of = Open { $name }
library-more-of = More for { $name }
library-rename = Rename
library-new-name = New name
library-save-name = Save name
library-name-missing = Name is blank. Enter one, or cancel.
library-cancel = Cancel
library-duplicate = Duplicate
library-delete = Delete
library-history = History
library-restore = Restore this revision
library-deleted = Deleted recipes
library-deleted-recipes = Deleted recipes ({ $count })
library-restore-deleted = Restore

# Beside the recipes
library-lines = Lines set aside
library-lines-hint = Unsaved line data that an import replaced. Opening one also opens its recipe.
library-unreadable = Records that cannot be read
library-unreadable-hint = Each is stored as it is. Export its text before anything else.
library-aside = Set aside
library-aside-hint = Records that could not be read. They were moved here, unchanged, when something was saved in their place.
library-key = Key
library-export-text = Export text

# Panels
library-data = Backup and storage
library-backup = Backup
library-last-backup = Last
library-no-backup = none yet
library-days-ago = { $days ->
    [0] today
    [one] yesterday
   *[other] { $days } days ago
}
library-changed-since = Changed since
library-back-up = Back up now
library-backup-hint = One file with everything. Import merges it; nothing is overwritten.
library-shared = Shared library
library-shared-hint = One file on a shared drive for several people: what others save comes in, what you save goes out.
library-use-file = Use library file
library-new-file = New library file
library-sync = Sync
library-disconnect = Disconnect
library-storage = Storage
library-used = Used
library-used-of = { $used } of { $most }
library-persist = Protect from clearing
library-persisted = The browser keeps this data when space is short.
library-not-persisted = The browser may clear this data when space is short. Back it up regularly.
library-storage-hint = In this browser only. Clearing site data deletes it; backups stay.

# Binder systems
library-systems-hint = Typical values to start from. The supplier’s certificate wins.
library-liquids = Liquids and doses
library-own = Own systems
library-typical = Typical systems
library-no-own = None yet. Save the recipe’s liquids as one.
library-use = Use
library-use-of = Use in the recipe: { $name }
library-add = Add
library-add-of = Add to the recipe: { $name }
library-system-used = The recipe now has the liquids of “{ $name }”.
library-system-added = Liquids of “{ $name }” added to the recipe.
library-edit-hint = To change it: use it in the recipe, change it there, and save it here under the same name.
library-liquid = Liquid
library-dose = Dose
library-solids = Solids content
library-liquid-density = Density
library-thinned-to = thinned to { $solids }
library-no-source = no source
library-save-system-heading = Save the recipe’s liquids
library-save-system = Save as own system
library-save-system-hint = A system of the same name is replaced; this can be undone.
library-system-name = System name
library-system-source = Source of the values
library-system-name-missing = System name is blank. Enter one, such as “UF, winter”.
library-no-liquids = The recipe has no liquids to save. Add some there first.

# Trials
library-no-trials = No trials yet.
library-to-bench = Go to Bench
library-recipe = Recipe
library-boards = Boards
