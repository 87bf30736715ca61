# The Compare page.

compare-title = Compare
compare-tabs = Compare
compare-tab-table = Table
compare-tab-solve = Solve & break-even
compare-sweep = Sensitivity
compare-map = Operating map
compare-uncertainty = Uncertainty
compare-report = Report
compare-count = { $count } systems
compare-no-printer = This browser cannot print.
compare-export-csv = Export as CSV
compare-export-xlsx = Export as XLSX
compare-export-svg = Export as SVG
compare-export-png = Export as PNG
compare-exported = “{ $name }” exported.
compare-not-exported = The browser did not save the file. Export it in another format. The browser's message: { $why }
compare-file = comparison

# Systems
compare-open-recipe = { $name } (open recipe)
compare-library = Library: { $name }
compare-own-system = Own system: { $name }
compare-open-changed = Another recipe is open now. The comparison keeps the saved revision that it was made with.
compare-system = System
compare-add-system = Add system…
compare-add = Add
compare-remove = Remove: { $system }
compare-removed = “{ $system }” removed
compare-no-more = Six systems is the maximum. Remove one to add another.
compare-find = Find by name
compare-none-found = No other name contains this text.
compare-offered = { $shown } of { $all } recipes are listed. Enter a part of the name to find others.
compare-reference = Reference
compare-is-reference = · reference
compare-is-open = · open recipe
compare-no-result = no result
compare-conditions = Same fibre, board and line for all: { $values }
compare-own-conditions-hold = Each recipe has its own fibre, board and line.
compare-own-conditions = Recipes keep their own fibre, board and line
compare-oven-dry = { $flow } OD
compare-and = { $first } and { $last }
compare-figure-of = { $figure }, { $system }

# The table
compare-key-figures = Key figures
compare-result = Result
compare-unit = Unit
compare-on-one-axis = one scale per row
compare-group-water = Water
compare-group-press = Press and output
compare-group-cost = Cost
compare-water-dose = Water dose
compare-water-excess = Water in excess
compare-over-target = over target mat moisture
compare-fibre-moisture-for-none = Fibre moisture at zero water dose
compare-fibre-now = fibre now { $now } (long tick)
compare-board-output = Board output
compare-press-factor = Press factor
compare-typical-range = typical { $low } to { $high } (shaded)
compare-press-vapour = Water driven out in the press
compare-cost = Cost, fibre and liquids
compare-cost-with-agent = Cost, release agent included
compare-agent-used-by = used by { $systems }
compare-agent-unused = no system needs one
compare-agent-required = required
compare-more-than-reference = difference to the reference
compare-not-drawn = Not drawn: a price is missing.
compare-mark-too-wet = too wet
compare-mark-high = high
compare-mark-low = low
compare-mark-over = over limit: { $machine }
compare-prices-missing = Prices missing for a cost:
compare-price-of = { $liquid } price
compare-fibre-price-missing = Enter the fibre price in the recipe
compare-more = More results
compare-equal = Equal for all
compare-equal-note = { $count ->
    [one] one row: { $first }
   *[other] { $count } rows: { $first }, …
}
compare-all-results = All results
compare-all-results-note = { $count } rows, with percentages
compare-bottleneck = Bottleneck
compare-hours = Hours a year
compare-differing = Inputs that differ
compare-differing-note = liquids, doses, prices
compare-same = Fibre, board and line are the same for all.
compare-prices = Prices of liquids
compare-prices-hint = For this comparison only. A liquid of the open recipe starts from its price there.
compare-economy = Economy
compare-economy-note = energy, freight, changeovers, margin
compare-emission = Emission sheet
compare-emission-note = molar ratio, formaldehyde in air, limits by market

# The verdict
compare-verdict = Verdict
compare-at = at { $moisture }
compare-verdict-cheapest = { $system } is the cheapest that can run{ $at }.
compare-verdict-cheapest-priced = { $system } is the cheapest with a price that can run{ $at }.
compare-verdict-only = Only { $system } can run{ $at }.
compare-verdict-none = No system can run{ $at }.
compare-verdict-no-cost = { $systems } can run{ $at }; { $count ->
    [one] its cost is not known.
   *[other] their costs are not known.
}
compare-verdict-unpriced = Cost of { $systems }: prices missing.
compare-verdict-agent = Release agent of { $systems }: no price yet.
compare-other-cost = { $system } { $can ->
    [yes] costs
   *[no] would cost
} { $cost } { $way ->
    [less] less
   *[more] more
} than { $best }
compare-other-same = { $system } costs the same as { $best }.
compare-other-output = and { $can ->
    [yes] makes
   *[no] make
} { $output } { $way ->
    [less] less
   *[more] more
}
compare-other-way-out = from fibre at { $moisture } or drier
compare-other-cannot = but cannot run

# Solve and break-even
compare-solve = Solve for an input
compare-input = Input
compare-target = Target
compare-target-missing = Enter a valid target value to see the answer.
compare-solve-question = Solve for an input, { $system }: { $input } → { $figure }
compare-break-even = Break-even price
compare-break-even-question = Break-even price, { $first } and { $second }: { $price }
compare-break-even-itself = Select two different systems.
compare-price = Price
compare-compared-with = Compared with
compare-moves = Price changes in
compare-moves-in-both = Both systems
compare-moves-in-first = The first system alone

# Sensitivity
compare-from = From
compare-to = To
compare-over = { $figure } over { $input }
compare-present = now { $value }
compare-below-zero = ⚠ Too wet: no water dosed
compare-slope = { $step } more { $input } changes the { $figure } by { $change } with { $system }.
compare-too-wet-with = { $at } with { $system }
compare-too-wet-from = No water is left to dose above { $edges }.
compare-level = { $system } does not use this input: its line is level.
compare-no-drawing = No system gives this figure over this range. Select another figure or range.
compare-values = Values
compare-values-note = 11 rows, all systems
compare-ranked = Inputs ranked by effect
compare-ranked-note = for 1 % more of each, reference
compare-effect = Change of { $figure }, for 1 % more

# Operating map
compare-across = Across
compare-up = Up
compare-map-up = { $up } · lines: { $figure }
compare-map-now = recipe { $across }, { $up }
compare-feasible = Feasible
compare-cannot-run = Cannot run
compare-outside-typical = Outside a typical range
compare-inside = { $system } lies inside its feasible region.
compare-outside = ⚠ { $system } lies outside its feasible region: { $limits }.
compare-advice = Check: { $advice }.
compare-nearest = Nearest feasible point on an axis: { $across } at { $up }.
compare-no-nearest = No feasible point on either axis within this map.
compare-on-map = On this map: { $limits }.
compare-no-map = Select two different inputs, and a figure that the system gives over their ranges.
compare-map-values-note = every eighth point
compare-region = Feasible region
compare-region-note = Along each axis of the map, the other input as in the recipe.
compare-from-to = { $from } to { $to }
compare-none = none

# Uncertainty
compare-draws = Draws
compare-seed = Seed
compare-run = Run Monte Carlo
compare-cancel = Cancel
compare-drawing = Drawing, { $percent } %
compare-cancelled = Cancelled. The table is unchanged.
compare-draws-old = An input changed since the draws. Run Monte Carlo again.
compare-not-drawn-yet = No draws yet: first order alone.
compare-drawn = { $draws } draws from seed { $seed }, { $took } ms.
compare-choose-results = Select results…
compare-value = Value
compare-expanded = ± 95 %
compare-first-order = First order
compare-monte-carlo = Monte Carlo
compare-use = Use
compare-difference-of = { $figure } difference
compare-exact = exact
compare-at-bound = at its bound in { $share } % of draws
compare-use-either = either
compare-use-drawn = Monte Carlo: { $why }
compare-use-more-draws = more draws needed
compare-why-bound = held at its bound
compare-why-left-out = draws left out
compare-why-curved = not in proportion to inputs
compare-why-limits = limits dominate
compare-why-few-degrees = few degrees of freedom
compare-show-budget = { $figure }, { $name }: show its budget
compare-sure-difference = { $figure }: { $name } is { $value } { $width }. { $sure ->
    [yes] That is more than the uncertainty.
   *[no] That is within the uncertainty.
}
compare-surer-than-either = The difference is more certain than either figure: the same instruments serve both systems.
compare-budget = Uncertainty budget
compare-budget-of = Budget: { $figure }, { $name }
compare-improve = Improve first: { $source }, { $share } % of the variance. Halved, the result is ± { $halved } instead of ± { $now }.
compare-source = Source
compare-share = Share of variance
compare-share-percent = Share of variance, %
compare-other-sources = { $count ->
    [one] 1 other source
   *[other] { $count } other sources
}
compare-combined = Combined
compare-budget-detail = Standard uncertainty { $standard }, { $freedom } degrees of freedom, coverage factor { $factor } for 95 %.
compare-working = Show working
compare-combined-source = JCGM 100:2008, equation 10; intervals by its annex G, and by JCGM 101:2008, 7.7.
compare-sources = Sources of uncertainty
compare-sources-hint = Italic: typical value. The instrument's certificate wins. Leave ± blank for exact.
compare-instrument = From
compare-plus-minus-is = Meaning of ±
compare-plus-minus-of = ± of { $input }
compare-plus-minus-is-of = Meaning of ± for { $input }
compare-freedom = Degrees of freedom
compare-freedom-of = Degrees of freedom of { $input }
compare-share-of = Share, { $figure }, %
compare-of-value = { $form }, % of value
compare-percent-of-value = % of value
compare-points = points
compare-points-dry = points d.b.
compare-points-wet = points w.b.
compare-used = used
compare-not-used = not used
compare-add-source = Add input

# Report
compare-report-hint = As it is printed: the summary first, then drawings, uncertainty, inputs and sources.
compare-report-title = Comparison: { $names }
compare-made = Printed { $time } · Haulm { $version }
compare-drawings = Drawings
compare-answers = Answers
compare-limits = Limits
compare-sources-of-values = Sources
compare-no-source = no source
compare-method-heat = Heat of water: IAPWS-95.
compare-method-uncertainty = Uncertainty: JCGM 100:2008 (first order) and JCGM 101:2008 (Monte Carlo).
compare-method-start-values = Start values are typical; the supplier's certificate and the mill's own instruments win.
