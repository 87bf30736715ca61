# What the comparison says: names, answers, uncertainty, and what is taken away.

# What is compared
comparison-output-dryer-load = Dryer load
    .note = share of its limit
comparison-output-blender-load = Blender load
    .note = share of its limit
comparison-output-press-load = Press load
    .note = share of its limit
comparison-output-line-speed-load = Line speed load
    .note = share of the maximum line speed
comparison-output-cost = Cost
    .note = of fibre and liquids, per volume of board
comparison-output-binder-on-fibre = Binder on fibre
    .note = solids of all binders on oven-dry fibre
comparison-output-liquid-flow = All liquids
    .note = as delivered, by mass
comparison-output-liquid-water = Water with the liquids
    .note = delivered with them, and for thinning
comparison-output-dryer-water = Extra water for the dryer
    .note = to remove beyond now for a zero water dose; below zero: to leave in
comparison-output-dryer-heat = Dryer heat for that water
    .note = from 20 °C, without dryer losses
comparison-output-fibre-at-limit = Fibre at the bottleneck
    .note = oven-dry, with the first machine at its limit
comparison-output-volume-at-limit = Board at the bottleneck
    .note = sanded and cut, with the first machine at its limit
comparison-output-cost-per-year = Cost per year
    .note = at this flow, for the hours a year

# What prevents running a recipe
comparison-obstacle-not-allowed = outside the allowed values
comparison-obstacle-no-balance = no balance: doses or losses too high
comparison-obstacle-too-wet = furnish too wet
comparison-obstacle-fibre-supply = more fibre than the dryer gives
comparison-obstacle-blender = more furnish than the blender takes
comparison-obstacle-press = below the minimum press factor
comparison-obstacle-line-speed = above the maximum line speed
comparison-obstacle-press-adds-water = board moister than the mat
comparison-obstacle-mat-thinner = mat thinner than the board
comparison-obstacle-press-factor = press factor outside the typical range
comparison-obstacle-mat-moisture = mat moisture outside the typical range
comparison-obstacle-input = an input outside its typical range
comparison-limited = { $system }: { $obstacle } from { $from } to { $to }.

# What differs between systems, and what is missing
comparison-differs = { $input } differs. { $values }.
comparison-differing-feed-way = Fibre flow set by
comparison-differing-water-way = Water dose set by
comparison-differing-sprayed-faces = Face water on
comparison-blank = blank
comparison-not-same-fibre = The fibre is not the same. Use the reference's fibre for a fair comparison.
comparison-not-same-board = The board is not the same. Use the reference's board for a fair comparison.
comparison-not-same-line = The line is not the same. Use the reference's line for a fair comparison.
comparison-not-same-system = It belongs to the system and may differ; its effect on the figures is not due to the liquids.
comparison-too-few = Fewer than { $fewest } systems are selected.
    .fix = Add a recipe or a binder system.
comparison-too-many = More than { $most } systems are selected.
    .fix = Remove all but { $most }.
comparison-no-reference = The reference was deleted.
    .fix = Select another reference.
comparison-unpriced = { $system }: no cost, because prices are missing: { $prices }.
    .fix = Enter these prices under “Prices of liquids”, or in the recipe.

# An input that is solved for
comparison-answer-one = { $input }: { $value } gives { $wanted } for { $figure }.
comparison-answer-several = { $input }: each of { $values } gives { $wanted } for { $figure }.
comparison-answer-range = { $input }: every value from { $from } to { $to } gives { $wanted } for { $figure }.
comparison-answer-nearest = { $input }: no allowed value gives { $wanted } for { $figure }. The nearest is { $nearest }, at { $value }.
comparison-answer-nearest-range = { $input }: no allowed value gives { $wanted } for { $figure }. The nearest is { $nearest }, from { $from } to { $to }.
comparison-answer-independent = { $input }: { $figure } does not depend on it and stays at { $value }.
comparison-fix-unreachable = Enter a value that can be reached, or change another input first.
comparison-fix-independent = Select an input that this figure depends on.
comparison-found-linear = The figure is linear in this input, so the answer is exact.
comparison-found-search = Found by a search through all allowed values.
comparison-not-used = { $input }: this recipe does not use it.
    .fix = Select an input that the recipe uses.
comparison-not-given = { $figure }: this recipe does not give it.
    .fix = Enter what it needs, such as a width, a length or all prices, or select another figure.
comparison-not-wanted = { $figure }: the target value is not a number.
    .fix = Enter the target value.

# Machine limits that an answer exceeds
comparison-beyond = Beyond { $count ->
    [one] a limit
   *[other] limits
} at { $value }: { $limits }.
comparison-within-limits = Within all limits: { $value }.
comparison-exceeded-fibre-supply = fibre { $asked }; the dryer gives { $limit }
comparison-exceeded-blender = furnish { $asked }; the blender takes { $limit }
comparison-exceeded-press = press factor { $asked }; the press needs at least { $limit }
comparison-exceeded-line-speed = line speed { $asked }; the line runs { $limit } at most

# The price at which two systems cost the same
comparison-price-at = { $price }: at { $value } both cost the same per volume of board, { $first } and { $second }.
comparison-price-dearer-at-zero = { $price }: even at a price of zero, { $dear } costs { $more } more than { $cheap }.
comparison-price-always = { $price }: at any price, { $first } and { $second } cost the same.
comparison-price-never = { $price }: at any price, { $dear } costs { $more } more than { $cheap }.
comparison-price-moves-in-both = The price moves in both systems, { $first } and { $second }.
comparison-price-moves-and-stays = The price moves in { $first } alone; { $second } keeps { $value }.
comparison-price-moves-in-first = The price moves in { $first } alone; { $second } does not use this material.
comparison-price-beyond = { $system } is beyond a limit: { $limit }.
comparison-not-a-price = This is not a price of the first system.
    .fix = Select the price of its fibre or of a liquid.
comparison-no-balance = A system has no result.
    .fix = Fix the errors of its recipe first.
comparison-prices-missing = Prices are missing. { $prices }.
    .fix = Enter these prices.

# A range of an input
comparison-range-not-used = The recipe does not use this input.
    .fix = Select another input.
comparison-range-not-readable = An end of the range is not valid.
    .fix = Fix it, or leave it blank for the start value.
comparison-range-equal = Both ends of the range are the same.
    .fix = Enter two different values.
comparison-range-reversed = The range is reversed: “From” is above “To”.
    .fix = Swap the two values.

# What a ± means
comparison-form-standard = Standard uncertainty
    .hint = One standard deviation, as a certificate or repeated readings give it.
comparison-form-half-width = Limits
    .hint = Every value within is equally likely: divided by √3.
comparison-form-interval = 95 % interval
    .hint = Holds the value 19 times out of 20: divided by 1.96.

# Instruments
comparison-instrument-belt-scale = Belt scale
comparison-instrument-moisture-meter = Moisture meter
comparison-instrument-flow-meter = Flow meter
comparison-instrument-solids-test = Solids test
comparison-instrument-density-meter = Density meter
comparison-instrument-board-test = Board test
comparison-instrument-thickness-gauge = Thickness gauge
comparison-instrument-tape-measure = Tape measure
comparison-instrument-speed-meter = Speed meter
comparison-instrument-thermometer = Thermometer
comparison-instrument-price = Price
comparison-instrument-estimate = Estimate

# Sources of uncertainty
comparison-source = { $instrument }: { $input }
comparison-source-of-all = { $instrument }: { $input } (all systems)
comparison-source-of = { $instrument }: { $input } ({ $systems })
comparison-nothing-uncertain = No input has a ±, or no figure is selected.
    .fix = Enter a ± for at least one input, and select a figure.
comparison-no-system = A system was deleted.
    .fix = Select the systems again.
comparison-uncertain-not-used = { $system } does not use this input, which has a ±: { $input }.
    .fix = Clear its ±.
comparison-uncertain-not-given = { $system } does not give this figure: { $figure }.
    .fix = Enter what the figure needs, such as a width, a length or all prices, or select another.
# In place of a name that is not known.
comparison-some-system = A system
comparison-some-input = an input

# Whether both methods agree: a few words for a table
comparison-agree = agree
comparison-differ = differ: { $why }
comparison-few-noisy = too few draws to say by how much
comparison-few-bound = at its bound in { $share } % of the draws
comparison-few-left-out = { $count ->
    [one] one draw left out
   *[other] { $count } draws left out
}
comparison-few-curved = not in proportion to its inputs
comparison-few-limits = one source with fixed limits outweighs
comparison-few-degrees = few degrees of freedom

# Why both methods differ
comparison-why-bound = In up to { $share } % of the draws a figure is at its bound, such as a water dose of zero: its distribution is one-sided.
comparison-why-left-out = { $count ->
    [one] One draw was left out: an input in it was outside its allowed values.
   *[other] { $count } draws were left out: an input in them was outside its allowed values.
}
comparison-why-curved = Over so wide a range the figure does not change in proportion to its inputs; first order takes it for a straight line.
comparison-why-limits = One source with fixed limits outweighs the others, and its values are all alike up to them; first order takes the result for a normal distribution.
comparison-why-degrees = Few degrees of freedom: the two methods treat them in different ways, and neither is the better.

# Sheets that are taken away, and their headings
comparison-sheet-side-by-side = Side by side
comparison-sheet-sensitivity = Sensitivity
comparison-sheet-assumptions = Assumptions
comparison-sheet-uncertainty = Uncertainty
comparison-sheet-shares = Shares of the variance
comparison-sheet-sources = Sources of uncertainty
comparison-sheet-economy = Economy
comparison-sheet-limits = Limits
comparison-sheet-answers = Answers
comparison-sheet-emission = Emission sheet
comparison-head-figure = Figure
comparison-head-input = Input
comparison-head-unit = Unit
comparison-head-value = Value
comparison-head-more-than-reference = Difference to the reference: { $system }
comparison-head-standard = Standard uncertainty, first order
comparison-head-freedom = Degrees of freedom
comparison-head-factor = Coverage factor
comparison-head-expanded = Expanded uncertainty, 95 %
comparison-head-standard-drawn = Standard uncertainty, Monte Carlo
comparison-head-low = 95 % interval from, Monte Carlo
comparison-head-high = 95 % interval to, Monte Carlo
comparison-head-both = Both methods
comparison-head-draws = Draws
comparison-head-seed = Seed
comparison-head-source = Source of uncertainty
comparison-head-share = Share of the variance, %
comparison-head-system = System
comparison-head-limited-by = Limited by
comparison-head-asked = Asked for
comparison-head-limit = Limit
comparison-head-question = Question
comparison-head-answer = Answer
comparison-head-from = From
comparison-head-to = To
comparison-head-origin = Source
comparison-exact = exact
comparison-no-result = no result
comparison-missing-price = missing price: { $price }

# The economy of a change
comparison-economy-hint = Energy, freight, changeovers and capacity beside the materials. A blank price leaves its part out of all systems.
comparison-economy-dryer-energy-price = Dryer energy price, per MWh
comparison-economy-dryer-efficiency = Dryer efficiency
    .hint = Heat into the water per energy bought
comparison-economy-press-energy-price = Press energy price, per MWh
comparison-economy-press-efficiency = Press efficiency
    .hint = Heat into the water per energy bought
comparison-economy-freight-price = Freight, as delivered
    .hint = Average of all liquids
comparison-economy-changeover-scrap = Scrap per changeover, m³
comparison-economy-changeovers = Changeovers a year
    .hint = Those that the change adds
comparison-economy-selling-price = Selling price
comparison-economy-release-agent-price = Release agent, per m² of board
    .hint = Leave blank if none
comparison-economy-materials = Fibre and liquids
comparison-economy-dryer-energy = Dryer energy, against now
comparison-economy-press-energy = Press energy
comparison-economy-release-agent = Release agent
comparison-economy-freight = Freight of the liquids
comparison-economy-freight-per-solids = Freight per kg of binder solids
comparison-economy-total = Total cost
comparison-economy-margin = Margin
comparison-economy-margin-per-press-hour = Margin per press hour, at the bottleneck
comparison-economy-volume-per-year = Board per year, at this flow
comparison-economy-capacity-per-year = Board per year, at the bottleneck
comparison-economy-more-cost = Change: total cost
comparison-economy-scrap = Change: changeover scrap
comparison-economy-scrap-cost = Change: cost of that scrap
comparison-economy-more-capacity = Change: capacity at the bottleneck
comparison-economy-more-margin = Change: margin, after scrap

# The emission sheet
comparison-emission-caution = A test decides: no figure here predicts an emission. Check the current local limit.
comparison-emission-formaldehyde-per-urea = F/U of the resin, mol/mol
    .hint = From the resin's data sheet
comparison-emission-melamine-per-urea = Melamine per urea, mol/mol
    .hint = Leave blank for a urea resin
comparison-emission-resin-solids = Resin solids
comparison-emission-added-urea = Urea added
    .hint = Leave blank if none
comparison-emission-target-ratio = Target F/(NH₂)₂, mol/mol
comparison-emission-by-volume = Formaldehyde in air, ppm
    .hint = By volume; gives mg/m³
comparison-emission-by-mass = Formaldehyde in air, mg/m³
    .hint = By mass; gives ppm
comparison-emission-air-temperature = Air temperature
comparison-emission-perforator = Perforator value, mg/100 g
    .hint = Per 100 g of oven-dry board
comparison-emission-board-moisture = Board moisture at the test
comparison-emission-ratio = F/U of the mix
comparison-emission-amino-ratio = F/(NH₂)₂ of the mix
comparison-emission-urea = Urea for the target ratio
comparison-emission-concentration = Formaldehyde in air
comparison-emission-perforator-at-reference = Perforator value at 6.5 % board moisture
comparison-emission-structure = Stoichiometry; from all methylol to all methylene
comparison-emission-perforator-source = Jann and Deppe (1990), coefficients unverified; favours a low value above 6.5 %
comparison-emission-limit = Limit: { $market }, { $article }
comparison-emission-valid-from = { $regulation }, from { $date }

# What is wrong with an entry of the emission sheet
comparison-emission-ratio-out-of-range = F/U must be above 0 and at most 100.
    .fix = Fix F/U.
comparison-emission-melamine-out-of-range = Melamine per urea must be from 0 to 100.
    .fix = Fix it.
comparison-emission-no-resin = There is no resin.
    .fix = Enter its solids.
comparison-emission-not-reachable = The target ratio is above that of the resin: urea only lowers it.
    .fix = Enter a lower ratio.
comparison-emission-temperature-out-of-range = The air temperature must be from −50 °C to 100 °C.
    .fix = Fix the temperature.
comparison-emission-value-out-of-range = The value must be 0 or more.
    .fix = Fix the value.
comparison-emission-moisture-out-of-range = The correction holds for board moistures from { $least } % to { $most } %.
    .fix = Condition the board and test again.

# Markets and what their limits are for
comparison-market-european-union = European Union
comparison-market-united-states = United States
comparison-article-wood-based = wood-based articles and furniture
comparison-article-particleboard = particleboard
comparison-article-mdf = MDF
comparison-article-thin-mdf = thin MDF
comparison-article-hardwood-plywood = hardwood plywood
comparison-article-workplace-shift = workplace air, 8 h
comparison-article-workplace-short = workplace air, 15 min
