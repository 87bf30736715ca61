# The Line page.

line-title = Line
line-tabs = Line
line-tab-settings = Pump settings
line-tab-check = Line check
line-tab-pumps = Pumps & catch tests
line-tab-tanks = Tanks & deliveries
line-tab-changeover = Changeover
line-period-balance = Period balance
line-recipe = { $name } · { $revision }
line-example = Example data.
line-example-hint = This line belongs to an invented mill.
line-start-blank = Start with a blank line
line-own-figures = Mark as own data
line-blanked = Line cleared
line-no-printer = This browser cannot print.

# What holds for every tab
line-old-recipe = The recipe has an error, so these figures are old. Fix it on the Recipe page.
line-not-released = Not what was released. { $released }. Open that revision in the library, or release this one.

# Pump settings
line-conditions = Belt scale and fibre moisture
line-belt-scale = Belt scale, wet
line-fibre-moisture = Fibre moisture
line-belt-target = target { $target }
line-belt-moved = Belt target moved from { $from } to { $to }.
line-as-recipe = as in the recipe
line-recipe-has = recipe { $value }
line-entered-at = Entered at { $time }.
line-clear-conditions = Clear
line-conditions-cleared = Belt scale and fibre moisture cleared
line-fibre-oven-dry = Fibre, oven-dry
line-mat = Mat
line-mat-weight = Mat weight, wet
line-oven-dry = oven-dry
line-speed = Line speed
line-press-factor = press factor
line-pump = Pump
line-pump-liquid = Pump, liquid
line-set-to = Set to
line-interval = 95 % interval
line-tested = tested
line-allowed = allowed
line-range = Tested, allowed
line-by-mass = Flow by mass
line-by-volume = Flow by volume
line-nozzles = Nozzles × flow
line-catch-test = Catch test
line-none = none
line-days-ago = { $days ->
    [0] today
    [one] yesterday
   *[other] { $days } days ago
}
line-drift = drift { $change }
line-drifted = { $pump }: flow changed by { $change } since { $date }, beyond its scatter. Repeat the catch test.
line-drift-certain = Flow changed by { $change } since { $date }, beyond the scatter of the catches.
line-drift-uncertain = Flow changed by { $change } since { $date }, within the scatter of the catches.
line-drift-unknown = Flow changed by { $change } since { $date }. Too few catches to compare this with their scatter.
line-no-flow-then = no flow then
line-beyond = { $needed } of { $limit }
line-delivers = Delivers { $flow } at { $setting }, { $short } short.
line-details-of = { $name }: details
line-setting-is = The setting is { $status }.
line-spray = Through the nozzles, with thinning water
line-to-catch-tests = Show catch tests
line-tested-range = tested { $from } to { $to }
line-lowest-allowed = allowed from { $limit }
line-highest-allowed = allowed up to { $limit }
line-setting-lies = set to { $setting }, { $status }
line-no-settings = No settings yet.
line-no-new-settings = Error, no new settings.
line-no-pumps = No pumps yet.
line-add-pumps = Add pumps
line-ratios = Ratios, fibre range, prediction interval

# Settings table
line-settings-table = Settings table
line-table-range = { $low } to { $high }, { $dry } to { $wet }
line-columns-are = Columns: fibre moisture, { $unit }
line-present-point = present point
line-above-tested = above tested: catch test first
line-below-tested = below tested: catch test first
line-cell-cannot = cannot: outside allowed settings
line-cell-above-limit = cannot: above allowed
line-cell-below-limit = cannot: below allowed
line-cell-too-wet = furnish too wet
line-no-balance = no balance
line-no-setting = no setting
line-off = off
line-print-table = Print settings table
line-change-range = Change range
line-table-rows = Rows
