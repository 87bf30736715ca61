# What several pages say.

common-save = Save
common-print = Print
common-export = Export
common-undo = Undo
common-redo = Redo
common-close = Close
common-more = More
common-show = Show
common-source = Source

# A page whose part of the program arrives after the start.
common-page-arrives = Loading…
common-page-missing = This page did not load. Your entries are kept. Check the network connection, then try again.
common-try-again = Try again

# Severity
common-error = Error
common-warning = Warning
common-note = Note
common-warnings = Warnings
common-no-warnings = No warnings
common-all-warnings = All { $count }
# Read out when there is no result.
common-announce-error = Error, no new result. { $error }

# Boxes
common-required = Required
common-optional = Optional
common-typical = typical value
# A value filled in that assumes nothing, such as no sanding.
common-no-allowance = no allowance
common-read-as = read as { $amount }
common-use = Use { $entry }
# The basis of a moisture beside a number.
common-dry-basis = % db
common-wet-basis = % wb
common-unit-of = Unit of { $name }

# Workings
common-in-full = More digits
common-formula = Formula
common-numbers = With numbers

# Settings
common-settings = Settings
common-moisture-shown = Moisture of results
common-on-dry-basis = Dry basis, water per oven-dry mass
common-on-wet-basis = Wet basis, water per total mass

# Units whose symbols are words
unit-percent-dry-basis = % dry basis
unit-percent-wet-basis = % wet basis
unit-turn-per-minute = rpm
unit-kilogram-per-hour-per-hertz = kg/h per Hz
unit-pound-per-hour-per-hertz = lb/h per Hz
unit-kilogram-per-hour-per-turn = kg/h per rpm
unit-pound-per-hour-per-turn = lb/h per rpm
unit-per-year = /year

# The language
common-language = Language (loads the page again)
common-language-browser = As the browser
common-language-missing = “{ $language }” did not load, so Haulm speaks English.
    .fix = Reload the page once there is a network.

# Nouns within a sentence: "small" or "large", as the language writes their first letter. It is not shown.
common-nouns = small
