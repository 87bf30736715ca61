# The Bench page.

bench-title = Bench
bench-weigh-sheet = Weigh sheet
bench-series = Series
bench-boards-made = Boards
bench-effects = Effects

# Head
bench-name = Trial name
bench-untitled = Trial without a name
bench-of-recipe = Recipe: { $recipe }
bench-unsaved-recipe = { $name }, not saved
bench-save = Save trial
bench-new = New trial
bench-not-saved = Not saved yet
bench-saved-at = Saved at { $time }
bench-unsaved-changes = Unsaved changes
bench-export-trial = Export trial (JSON)
bench-export-boards = Export boards (CSV)
bench-export-results = Export results (CSV)
bench-export-readings = Export readings (CSV)
bench-export-sheets = Export weigh sheets (CSV)
bench-recipe-kept = The recipe has changed since this trial began. The trial keeps its own.
bench-use-recipe = Use current recipe
bench-recipe-used = Current recipe used
bench-example = Example data.
bench-example-hint = Mat, blender and spray belong to an invented laboratory.
bench-start-blank = Start with a blank sheet
bench-blanked = Weigh sheet cleared

# Inputs
bench-inputs = Mat, board and press
bench-mat = Mat
bench-length = Length
bench-width = Width
bench-boards = Boards
bench-board = Board
bench-thickness = Thickness
bench-pressed-thickness = Pressed thickness
bench-thickness-way = Thickness entered
bench-density = Density
bench-moisture = Moisture
bench-moistures = Moistures
bench-fibre = Fibre
bench-press = Press
bench-press-factor = Press factor
bench-recipe = recipe
bench-recipe-has = recipe { $value }
bench-changed = changed
bench-reset = Reset
bench-reset-of = { $name }: reset to the recipe’s value

# Run and batch
bench-run = Run
bench-run-of = { $run } of { $count }
bench-run-number = run { $run }
bench-base-sheet = Base sheet
bench-batch = Batch
bench-batch-of = Batch { $batch } of { $count }
bench-clear-batch = Clear batch { $batch }
bench-batch-cleared = Weighed masses cleared
bench-enter-hint = Enter goes to the next row

# Table
bench-fill-in = Enter mat length and width to see the weigh sheet.
bench-line = Material
bench-target = Target
bench-volume = Volume
bench-spray = Spray
bench-minutes = min:s
bench-actual = ACTUAL
bench-actual-of = { $name }, actual
bench-to-add = To add
bench-dose-given = Dose given
bench-target-dose = Target dose
bench-to-mat-moisture = to mat moisture { $moisture }
bench-done = done
bench-check = check
bench-slip = { $planned } planned, { $entered } entered: did you mean { $meant }?
bench-swapped = { $planned } planned, { $entered } entered. It fits { $other }: were the two swapped?
bench-far-off = { $planned } planned, { $entered } entered: is this correct?
bench-keep = Keep { $mass }
bench-swap = Swap the two
bench-over = { $mass } over
bench-scale-rest = Scale the rest, × { $factor }
bench-scale-all = Scale all others, × { $factor }
bench-keep-targets = Keep targets
bench-accept-dose = Accept { $dose }
bench-batch-now = { $mass } at × { $factor }
bench-blender-takes = blender takes { $mass }
bench-complete = All weighed. Mat moisture:
bench-rounded-note = The exact mass, rounded to the balance’s step.
bench-next = Next: { $name } { $mass }

# Results
bench-results = Results
bench-furnish-one-mat = Furnish for one mat, wet
bench-mat-weight = { $wet } wet · { $dry } oven-dry
bench-stops = Stops
bench-no-sanding = no sanding allowance
bench-sanding = sanding allowance { $thickness }
bench-press-time = Press time
bench-no-press-factor = no press factor
bench-board-untrimmed = Board, untrimmed
bench-board-at = at { $moisture }, { $density }
bench-more = More of the weigh sheet
bench-all-results = All results
bench-all-results-note = exact masses, doses as rounded, overage factors
bench-rounding = Rounding to the balance
bench-cautions = Cautions

# Lab setup
bench-lab-setup = Lab setup
bench-note-balances = balances { $fibre } and { $liquids }
bench-note-blender = blender { $mass } wet
bench-note-overage = overage { $share }
bench-note-wall-loss = wall loss { $share }
bench-note-spray = spray { $flow }
bench-note-all-trials = same for all trials
bench-blender = Blender and overage
bench-capacity = Blender capacity, wet
bench-overage = Overage
bench-overage-of = Overage is a share of
bench-overage-on = Overage on
bench-wall-loss = Left on the walls
bench-drying-loss = Moisture loss to press, points
bench-no-limit = blank: no limit
bench-no-loss = blank: no loss
bench-spray-way = Spray flow known by
bench-spray-flow = Spray flow
bench-no-spray-time = blank: no spray time
bench-water-place = Water is sprayed
bench-balances = Balances
bench-fibre-step = Step, fibre
bench-liquid-step = Step, liquids
bench-fibre-minimum = Minimum, fibre
bench-liquid-minimum = Minimum, liquids
bench-no-rounding = blank: no rounding
bench-tolerance = Overshoot tolerance
bench-one-step = blank: one balance step

# Furnish recovered
bench-recovered = Furnish recovered
bench-recovered-note = true blending loss, mass for one mat
bench-blending-loss = Blending loss, oven-dry
bench-mass-to-lay = Furnish for one mat, at its moisture

# Saved trials
bench-notes = Notes
bench-note = Note
bench-trials = Saved trials
bench-trials-saved = { $count ->
    [0] none yet
    [one] one
   *[other] { $count }
}
bench-no-trials = No saved trials yet.
bench-recipe-head = Recipe
bench-saved-head = Saved
bench-open = Open
bench-open-named = Open { $name }
bench-delete = Delete
bench-delete-named = Delete { $name }
bench-import = Import trial
bench-unreadable = Records of trials that cannot be read; they stay as they are:
