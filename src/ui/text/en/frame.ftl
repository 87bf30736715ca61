# The frame around all pages, and what several pages say of a recipe.

frame-app = Haulm
frame-skip-to-content = Skip to the content
frame-pages = Pages

# A newer version of the app waits
frame-newer = A newer version of Haulm is here. What you typed is kept.
frame-use-newer = Use the newer version
frame-not-now = Not now

# Find
frame-find = Find
frame-find-hint = A recipe, a page or a field
frame-nothing-found = No match

# Settings
frame-units = Units
frame-decimal-mark = Decimal mark shown
frame-decimal-point = Point, 1.5
frame-decimal-comma = Comma, 1,5
frame-currency = Currency
frame-initials = Your initials, put on what you save
frame-theme = Light or dark
frame-theme-system = As the device
frame-theme-light = Light
frame-theme-dark = Dark

# Saving
frame-saved = Saved
frame-saved-at = Saved at { $saved }
frame-nothing-to-save = Saved already, nothing has changed
frame-save-to-file = Save the recipe to a file
frame-unsaved-changes = unsaved changes
frame-cancel = Cancel
frame-copy-of = Copy of { $name }

# Where there is no figure
frame-no-figure = –

# Below cautions
frame-caution-rule = Local codes, the safety data sheet and licensed practice decide.

# A recipe
frame-link-code = QR code of the link
frame-most-liquids = A recipe has at most { $most } liquids. Nothing was added.
frame-example-name = Example: wheat straw, pMDI, 15 mm
frame-example-note = Invented data of an invented mill.

# What was chosen differently in two revisions
frame-choice-feed-way = Fibre flow set by
frame-choice-sprayed-faces = Face water on
frame-choice-water-way = Water dose set by
frame-choice-furnish = Furnish
frame-choice-board-kind = Board type
frame-choice-liquid-name = Name
frame-choice-liquid-role = Function
frame-choice-liquid-substance = Material
frame-choice-dose-way = Basis of the dose
frame-choice-liquid-source = Source of the values
