# What goes on paper.

paper-printed = Printed { $time } · Haulm { $version }
paper-errors = { $count ->
    [one] 1 error
   *[other] { $count } errors
}
paper-warnings = { $count ->
    [one] 1 warning
   *[other] { $count } warnings
}
paper-results = Results:
paper-code = QR code of this recipe
paper-code-late = The code was not ready. Print again to have it.
paper-code-opens = Holds and opens this recipe

# Signatures
paper-released-by = Released by
paper-operator = Line operator
paper-date = Date
paper-date-time = Date, time
paper-set-by = Set by
paper-checked-by = Checked by
paper-read-by = Read by
paper-changed-by = Changed by
paper-weighed-by = Weighed by

# Doses
paper-liquid = Liquid
paper-on = on
paper-solids = solids { $solids }
paper-thinning = thinning water { $flow }
paper-press-factor = Press factor
paper-output = output
paper-at-moisture = at { $moisture } fibre

# Inputs
paper-inputs-typed = Inputs, entered
paper-inputs-entered = Inputs, as entered
paper-typical = Typical values, not confirmed
paper-no-allowance = No allowance:
paper-more-typed = Also entered:
paper-blank = blank

# Not valid
paper-not-valid = NOT VALID
paper-cannot-be-computed = This cannot be computed.
paper-do-not-run = Do not run. Do not use figures from an older sheet.
paper-input = Input
paper-entered = Entered
paper-fix = Error and fix
paper-no-signature = No signature. A sheet that is not valid is not released.
paper-last-valid = Saved last: { $revision }. Open it in the library.
paper-nothing = Nothing to print
paper-no-pumps-sheet = Catch tests have no sheet. Print the pump settings: they name the date and the tested range of each catch test.
paper-no-readings = No line check yet. Enter belt scale and moisture on the Line check tab.
paper-no-plan = No changeover planned. Plan one on the Changeover tab.
paper-end-not-valid = One of the two recipes has an error. Fix it on the Recipe page and plan the changeover again.
paper-no-tanks = No tanks yet. Add one on the Tanks tab.

# Pump settings
paper-only-at-belt = Only at belt scale, wet
paper-and-moisture = and fibre moisture
paper-cannot = Cannot: { $beyond }
paper-nozzles = Nozzles { $count } × { $flow }
paper-with-thinning = { $flow } with thinning water
paper-interval = 95 % interval { $interval }
paper-catch-test = Catch test { $date }
paper-no-catch-test = No catch test
paper-drift = Drift { $change } since { $date }
paper-drift-within = Drift { $change } since { $date }, within scatter
paper-drift-unknown = Drift { $change } since { $date }, too few catches
paper-bar-key = Bar: box = tested, line = allowed, mark = this setting.

# Settings table
paper-present-point = Present point, { $flow } at { $moisture }
paper-untested = Outside tested settings: catch test first
paper-outside-allowed = Cannot: outside allowed settings
paper-tested-on = { $pump }: tested { $range }, { $date }

paper-belt-wet = Belt scale, wet
paper-oven-dry = Fibre, oven-dry

# Line check
paper-read-at = read { $time }
paper-figure = Figure
paper-target = Target
paper-actual = Actual
paper-deviation = Deviation
paper-tolerance = Tolerance
paper-status = Status
paper-within = OK
paper-outside = out
paper-not-read = not read
paper-set-now = Setting now
paper-do = New setting
paper-former = Former: change the mat weight by { $change }.
paper-former-or-speed = Former: change the mat weight by { $change }, or the line speed from { $now } to { $then }.
paper-readings = Readings:

# Changeover
paper-started = Started { $time }
paper-not-started = Not started: times count from the start
paper-when = When
paper-what = Step
paper-done = Done
paper-arrivals = New furnish arrives
paper-station = Station
paper-begins = From
paper-complete = Complete
paper-mat-then = Mat moisture then { $moisture }.
paper-transition-board = Transition board:

# Tanks
paper-tanks = Tanks
paper-tank = Tank
paper-capacity = capacity { $volume }
paper-in-tank = In the tank
paper-usable = Usable
paper-use-now = Use now
paper-runs-empty = Runs empty
paper-order-by = Order by
paper-still-fits = Still fits
paper-per-shift = { $mass } a shift
paper-overdue = Overdue by { $time }
paper-tank-unknown = Content not known, or its liquid is not in this recipe.
paper-at-rate = At the use of this recipe, from when each tank was read.

# Cautions, each in one line
paper-caution-steam = Mat too wet: steam can burst the board. Stand clear of the outfeed.
paper-caution-isocyanate = Isocyanate: no mist, no skin contact. Never seal it in with water.
paper-caution-isocyanate-tank = Isocyanate tanks: keep under dry air or nitrogen.
paper-caution-emulsion = Emulsified isocyanate: at the nozzle only. Flush at every stop.
paper-caution-isocyanate-catch = Catching isocyanate: dry open vessel, respirator, goggles, gloves.
paper-caution-release-agent = Isocyanate sticks to hot metal: apply a release agent first.
paper-caution-formaldehyde = Formaldehyde: extract it at resin tanks, blender and press.
paper-caution-press-vapour = Hot-press vapour: press under extraction, stay out of the plume.
paper-caution-bench-spray = Spray in a closed blender or under extraction.
paper-caution-alkaline = PF resin burns skin and eyes: wear eye and hand protection.
paper-caution-ammonia = Ammonium salt in PF resin gives off ammonia: never mix them.
paper-caution-acid-cure = Glue with hardener has a pot life and heats up: mix no more than you spray.
paper-caution-oxidiser = Ammonium nitrate is an oxidiser: keep it off straw, dust and wax.
paper-caution-corrosion = Ammonium chloride corrodes steel and copper: check for attack.
paper-caution-cooling = Salt cools the water: check that all is dissolved.
paper-caution-dust = Straw and wood dust can explode: extract it, never blow it about.
paper-caution-damp-bales = Damp bales heat up and can catch fire: store them apart.
paper-caution-high-pressure = High-pressure spray goes through skin: never point it at anyone.
paper-caution-press = The press crushes and burns: hands out of the gap.
paper-caution-catch-test = Catch test: isolate and depressurise before and after.
paper-caution-advice = Haulm advises. Interlocks, local codes and safety data sheets decide.

# Bench
paper-trial-untitled = Trial without a name
paper-weigh-sheet = Weigh sheet
paper-batch = Batch { $batch } of { $batches }
paper-add-in-order = Add in this order
paper-target-mass = Target, { $unit }
paper-actual-mass = Actual, { $unit }
paper-spray-time = Spray, min:s
paper-time = Time
paper-batch-total = Batch
paper-mat = Mat
paper-furnish-for-mat = Furnish for one mat, wet
paper-furnish-laid = Furnish laid, { $unit }
paper-mat-moisture = Moisture, % db
paper-mat-height = Height, mm
paper-press = Press
paper-stops = Stops
paper-press-time = Press time
paper-press-time-actual = Press time, actual, min:s
paper-plate-temperature = Plates, °C
paper-board = Board
paper-raw-board = Raw board, expected
paper-board-mass = Mass, { $unit }
paper-board-thickness = Thickness, mm
paper-remarks = Remarks
paper-series-plan = Series plan
paper-no-series = The trial has no series.
paper-planned-by = Planned by
paper-trial-report = Trial report
paper-no-boards = No board has results yet.
paper-by-combination = Results by combination
paper-by-run = Results by run
paper-reported-by = Reported by
paper-deviation-between = SD between boards

# Mixing card
paper-mixing-card = Mixing card
paper-salt = Salt, dry and pure crystals
paper-by-mass = { $share } by mass
