# Series, boards and effects of a trial.

trial-series = Series
trial-boards = Boards
trial-effects = Effects
trial-run = Run
trial-runs = Runs
trial-run-n = Run { $number }
trial-board = Board
trial-board-n = Board { $name }
trial-piece = Piece
trial-piece-n = piece { $number }
trial-note = Note
trial-of = of { $count }
trial-mean = Mean
trial-mean-sd = Mean · SD { $deviation }
trial-sd = SD
trial-property = Property
trial-pasted = { $count ->
    [one] One number pasted
   *[other] { $count } numbers pasted
}

# Columns
trial-laid = Furnish laid, wet
trial-laid-hint = Leave blank for the sheet’s mass
trial-mass = Mass
trial-length = Length
trial-width = Width
trial-thickness = Thickness
trial-thickness-points = Thickness at { $count } points
trial-moisture = Moisture
trial-piece-length = Piece length
trial-position = Position
trial-oven-dry = Oven-dry
trial-span = Span
trial-load = Load
trial-slope = Slope
trial-before = Before
trial-after = After
trial-after-two = After 2 h
trial-mass-before = Mass before
trial-mass-after = Mass after
trial-density = Density
trial-density-oven-dry = Oven-dry density
trial-strength = Strength
trial-modulus = Modulus
trial-target = Target
trial-deviation = Deviation
trial-limit = limit { $limit }
trial-internal-bond = Internal bond
trial-bending = Bending
trial-swelling = Swelling
trial-swelling-day = Swelling, 24 h
trial-density-pieces = Density and moisture
trial-volume = Volume

# Boards
trial-no-boards = No boards yet. Add the first one when it comes out of the press.
trial-no-run = No run
trial-boards-named = boards { $names }
trial-add-board = + Board
trial-add-board-a-run = + Board for every run
trial-details-of-board = Details of board { $name }
trial-board-label = Board label
trial-surface = Board surface
trial-unsanded = Unsanded
trial-sanded = Sanded
trial-add-point = Add thickness point
trial-remove-board = Remove board
trial-board-removed = Board removed
trial-not-tested = not tested
trial-high = high
trial-low = low
trial-board-off-target = { $board }: density { $deviation } % off its target, of which thickness { $thickness }, mass { $mass }, moisture { $moisture }.
trial-density-of-target = { $density } of { $target }
trial-test-pieces = Test pieces, { $board }
trial-test = Test
trial-paste-hint = Paste a column from a spreadsheet into any box: it fills down.
trial-all-columns = All columns
trial-remove-piece = − Last piece
trial-piece-removed = Test piece removed
trial-density-profile = Density pieces and profile
trial-no-density-pieces = { $board }: no pieces entered
trial-density-pieces-of = { $board }: { $count ->
    [one] one piece
   *[other] { $count } pieces
}
trial-profile = Density over the board
trial-off-mean = Deviation from mean

# Results
trial-by-run = Results per run
trial-by-combination = Results per combination
trial-results-by = Results per run or combination
trial-not-pooled = Boards with different targets are not pooled.
trial-combination = Combination
trial-statistics = Intervals and quantiles
trial-statistics-note = 95 %, from the means of boards
trial-interval-of-mean = Interval of mean
trial-quantile = 95 % quantile
trial-lower = lower
trial-upper = upper
trial-next-mat = Next mat
trial-target-density = Target density
trial-density-made = Actual density
trial-density-made-note = Actual density is at the target board moisture.
trial-from-mass = From mass
trial-from-thickness = From thickness
trial-from-moisture = From moisture
trial-correction = Correction
trial-correction-note = The correction is a factor on the furnish; thickness is not corrected with furnish.
trial-furnish-next-mat = Furnish, next mat
trial-as-planned = Furnish laid was not recorded; the mass of the weigh sheet is used.
trial-as-if-moist = Board moisture was not measured; the target moisture is assumed.
trial-requirements = Required values
trial-requirements-hint = Compared with the 95 % quantile of each combination. Leave blank for no requirement.
trial-requirements-replaced = Required values replaced
trial-required-count = { $count ->
    [0] none entered
    [one] one entered
   *[other] { $count } entered
}
trial-required-by = Standard or customer
trial-start-from = Start from
trial-select-standard = Select standard
trial-unverified = Typical values are unverified. Check them against the standard.

# What a number put into a working is
trial-mean-of-boards = mean of the boards
trial-sd-of-boards = standard deviation between boards
trial-student = Student’s t
trial-root-of-count = square root of the number of boards
trial-target-thickness = target thickness
trial-thickness-made = mean thickness of the boards

# Series
trial-no-series = No series planned. A series is boards that differ on purpose, made in random order.
trial-plan-series = Plan series
trial-remove-series = Remove series
trial-series-removed = Series removed
trial-progress = Progress
trial-next = Next
trial-batch-of = batch { $batch } of { $batches }
trial-all-weighed = All runs made
# Where an error keeps every run from being made.
trial-none-possible = No run can be made yet
trial-boards-pressed = Boards pressed
trial-boards-tested = Boards tested
trial-design = Design
trial-design-fraction = { $notation }, resolution { $resolution }
trial-all-combinations = All { $count } combinations
trial-all-replicated = All { $count } combinations, { $replicates } times each
trial-some-combinations = { $count } of { $all } combinations, { $generators }
trial-factors = Factors
trial-factor = Factor
trial-factor-n = Factor { $letter }
trial-details-of-factor = Details of factor { $letter }
trial-add-factor = + Factor
trial-remove-factor = Remove factor
trial-factor-name = Factor name
trial-factor-unit = Unit of the levels
trial-factor-unit-hint = Leave blank for levels in words
trial-unit-basis = Unit, basis
trial-on-fibre = on OD fibre
trial-liquid-on-fibre = liquid on OD fibre
trial-on-solids-of = on solids of { $name }
trial-low-level = Low
trial-high-level = High
trial-level = Level
trial-level-n = Level { $number }
trial-levels = Levels
trial-add-level = Add level
trial-remove-level = Remove last level
trial-as-recipe = The recipe’s own liquids
trial-select-system = Select system
trial-plan = Plan
trial-combinations = Combinations
trial-boards-a-run = Boards a run
trial-blocks = Blocks
trial-block = Block
trial-replicates = Replicates
trial-replicate = Replicate
trial-fixed-runs = { $fixed ->
    [one] One run is made: its levels are fixed.
   *[other] { $fixed } runs are made: their levels are fixed.
} { $open ->
    [0] No run is left to move.
   *[other] A changed plan moves only the { $open } not made yet.
}
trial-in-order = in order of making
trial-run-order = Run order
trial-fixed = fixed
trial-planned = planned
trial-weighed = Weighed
trial-batches = batches
trial-pressed = Pressed
trial-tested = Tested
trial-part-of = { $part } of { $all }
trial-done = { $part } of { $all } ✓
trial-weigh-sheet = Weigh sheet
trial-weigh-sheet-of = Weigh sheet, { $run }
trial-boards-of = Boards, { $run }
trial-aliases = Aliases
trial-generators = Generators
trial-defining-relation = Defining relation
trial-effect = Effect
trial-same-column = Aliased with
trial-no-aliases = none up to third order
trial-random-order = Random order
trial-seed = Seed
trial-seed-hint = Same seed, same order
trial-seed-and-order = seed { $seed } · standard order { $order }
trial-standard-order = Standard order
trial-draw-order = Draw new run order
trial-redraw = Draw order
trial-keep-order = Keep order
trial-material = Material for the series
trial-material-name = Material
trial-margin = Margin
trial-margin-hint = Added to all sheets

# Effects
trial-no-effects = No effects yet. Plan a series, assign each board its run, and enter its readings.
trial-model = Model
trial-runs-and-boards = { $runs } runs, { $boards } boards; each run counts once, with the mean of its boards
trial-term = Term
trial-change = Change
trial-interaction = interaction
trial-limit-95 = 95 % limit
trial-effect-and-limits = Effect and its 95 % limits, { $unit }
trial-effect-told = { $name }: { $effect }, 95 % limits { $low } to { $high }
trial-at-five = At 5 %
trial-significant = significant
trial-not-significant = not significant
trial-untested = not tested
trial-mean-low = Mean at low
trial-mean-high = Mean at high
trial-explained = Explained by the model
trial-residual-sd = Residual SD of a run
trial-freedom-count = { $count ->
    [one] one degree of freedom
   *[other] { $count } degrees of freedom
}
trial-mean-of-runs = Mean of all runs
trial-smallest-effect = Smallest significant effect
trial-more-replicates = more replicates narrow the limits
trial-anova = ANOVA
trial-freedom = Degrees of freedom
trial-squares = Sum of squares
trial-mean-square = Mean square
trial-share = Share
trial-residual = Residual
trial-total = Total
trial-level-means = Level means
trial-level-count = { $count } levels
trial-above-mean = Deviation from mean
trial-readings = Readings used
trial-readings-head = Readings
trial-readings-note = { $runs } runs, { $readings } readings
