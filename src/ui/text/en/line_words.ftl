# Names, fields, figures, places and periods of the line.

# The recipe's liquids at the line
line-name-liquid = Liquid
line-name-water = Water
line-name-face-water = Face water
line-name-thinning-water = Thinning water of { $liquid }
line-name-not-in-recipe = not in this recipe
line-name-tied-elsewhere = { $name } (not in this recipe)

# Pumps and tanks
line-name-pump = Pump { $number }
line-name-tank = Tank { $number }
line-set-cannot = cannot

# Places
line-place-part = { $place }, { $part }
line-place-catch-test = { $pump }, catch test
line-place-catch = { $pump }, catch { $number }
line-place-line = Line

# Where the new furnish arrives
line-stop-blender = Blender
line-stop-former = Former
line-stop-press-in = Press, in
line-stop-press-out = Press, out
line-stop-saw = Saw

# Where a setting lies
line-range-within = within what was tested
line-range-below-tested = below what was tested
line-range-above-tested = above what was tested
line-range-below-limit = below the lowest setting allowed
line-range-above-limit = above the highest setting allowed

# Where a flow comes from
line-source-read = read
line-source-inferred = inferred from the setting
line-source-assumed = not read, assumed at its target

# Choices of a pump, a tank and a settings table
line-setting-percent = Percent of full setting
line-setting-hertz = Frequency of the drive, Hz
line-setting-rpm = Shaft speed, rpm
line-metering-volume = Volume: mass flow follows the density
line-metering-mass = Mass: mass flow does not follow the density
line-model-intercept = Line with intercept
line-model-origin = Line through the origin
line-r-squared-centred = R², about the mean
line-r-squared-uncentred = R², about zero (line through the origin)
line-tank-level = Level, share of the full tank
line-tank-volume = Volume
line-tank-mass = Mass
line-rows-belt = Belt scale reading, wet fibre
line-rows-oven-dry = Oven-dry fibre flow

# Fields of a pump
line-field-least-setting = Lowest setting allowed
    .hint = Leave blank for no limit.
line-field-most-setting = Highest setting allowed
    .hint = Leave blank for no limit.
line-field-share = Share of the liquid's flow
    .hint = 100 % unless several pumps deliver it.
line-field-nozzles = Number of nozzles
    .hint = Leave blank to leave nozzles out.
line-field-nozzle-least = Minimum flow of one nozzle
    .hint = Below it the spray breaks up badly.
line-field-nozzle-most = Maximum flow of one nozzle
line-field-pipe-volume = Pipe from valve to nozzles, volume
    .hint = Leave blank to leave it out of the changeover.
line-field-setting-step = Step of the setting
    .hint = Leave blank for the usual one.
line-field-present-setting = Present setting
    .hint = As the drive shows it now.
line-field-reading-volume = Flow meter reading, by volume
    .hint = Leave blank if not read.
line-field-reading-mass = Flow meter reading, by mass
    .hint = Leave blank if not read.

# Fields of a catch test
line-field-catch-density = Density of the liquid caught
    .hint = Saved with the test.
line-field-catch-temperature = Temperature of the liquid caught
    .hint = For the record; optional.
line-field-catch-setting = Setting
    .hint = As the drive shows it.
line-field-catch-time = Time
    .hint = How long was caught.
line-field-catch-mass = Gross mass
    .hint = Vessel and liquid, or the liquid alone.
line-field-catch-tare = Tare
    .hint = Leave blank if tared.

# Fields of a tank
line-field-tank-capacity = Capacity
line-field-tank-heel = Heel
    .hint = What stays below the outlet.
line-field-tank-level = Level now, share of the full tank
line-field-tank-volume = Content now, by volume
    .hint = Heel included.
line-field-tank-mass = Content now, by mass
    .hint = Heel included.
line-field-lead-time = Lead time
    .hint = From order to delivery; leave blank for no reminder.

# Fields of the transport times
line-field-blender-to-former = From blender to former
    .hint = Bunker included, when it runs as usual.
line-field-former-to-press = From former to press
line-field-press-to-saw = From press exit to saw
line-field-mixing = Mixing time
    .hint = Old with new furnish, up to the former; gives transition boards.
line-field-step-gap = Time between steps
    .hint = Needed to set the next pumps.

# Fields of the tolerances
line-field-tolerance-dose = Tolerance of doses, relative
line-field-tolerance-moisture = Tolerance of moistures, dry-basis points
line-field-tolerance-mat-weight = Tolerance of the mat weight, relative
line-field-tolerance-density = Tolerance of the board density, relative
line-field-tolerance-belt-scale = Tolerance of the belt scale, relative
line-field-tolerance-line-speed = Tolerance of the line speed, relative
line-field-tolerance-mat-width = Tolerance of the mat width, relative
line-field-tolerance-thickness = Tolerance of the board thickness, relative
line-field-tolerance-board-moisture = Tolerance of the board moisture, dry-basis points

# Fields of the uncertainties
line-field-uncertainty-belt-scale = Uncertainty of the belt scale
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-moisture = Uncertainty of moistures, dry-basis points
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-flow-meter = Uncertainty of flow meters
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-solids = Uncertainty of solids contents, points
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-line-speed = Uncertainty of the line speed
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-mat-sample = Uncertainty of the mat sample
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-board-mass = Uncertainty of the board mass
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-thickness = Uncertainty of the thickness
    .hint = Standard; leave blank for the usual instrument.
line-field-uncertainty-mat-width = Uncertainty of the mat width
    .hint = Standard; leave blank for the usual instrument.

# Fields of the line check
line-field-run-belt = Belt scale reading, wet fibre
    .hint = With its moisture, as the belt scale shows it.
line-field-run-moisture = Moisture of that fibre
line-field-run-line-speed = Line speed
    .hint = As the press shows it.
line-field-run-mat-width = Trimmed mat width
    .hint = Leave blank for the recipe's.
line-field-run-board-area = Raw board, area
    .hint = Of the whole board, or of the piece weighed.
line-field-run-board-mass = Raw board, mass
    .hint = As it leaves the press.
line-field-run-board-thickness = Raw board, thickness
    .hint = Before sanding.
line-field-run-board-moisture = Raw board, moisture
line-field-run-sample-area = Mat sample, area
    .hint = Cut before the press.
line-field-run-sample-mass = Mat sample, mass
    .hint = Wet, as cut.
line-field-run-sample-moisture = Mat sample, moisture
    .hint = Leave blank to compute it from the flows.

# Fields of the pump settings and the settings table
line-field-belt-now = Belt scale
    .hint = Leave blank for the recipe's.
line-field-moisture-now = Fibre moisture
    .hint = Leave blank for the recipe's.
line-field-belt-from = Lowest belt scale reading, wet fibre
line-field-belt-to = Highest belt scale reading, wet fibre
line-field-fibre-from = Lowest fibre flow, oven-dry
line-field-fibre-to = Highest fibre flow, oven-dry
line-field-flow-step = Step from row to row
line-field-moisture-from = Lowest fibre moisture
line-field-moisture-to = Highest fibre moisture
line-field-moisture-step = Step from column to column, dry-basis points

# Fields of a delivery
line-field-delivery-solids = Solids on the certificate, by mass
    .hint = Leave blank if unchanged.
line-field-delivery-density = Density on the certificate
    .hint = Leave blank if unchanged.
line-field-delivery-amount = Mass delivered
    .hint = Leave blank for an empty tank.
line-field-delivery-measured-at = Temperature of that density
line-field-delivery-pumped-at = Temperature at the pump
    .hint = Leave blank to use the density as measured.
line-field-delivery-expansion = Thermal expansion, by volume
    .hint = Of the liquid, from its data sheet; for many resins near 0.06 %/K, unverified.

# Fields of the period balance
line-field-period-belt-total = Belt scale total, wet
    .hint = End less start.
line-field-period-fibre-moisture = Mean fibre moisture
line-field-period-boards = Raw boards counted
line-field-period-board-mass = Mean raw-board mass
    .hint = As it leaves the press.
line-field-period-board-moisture = Mean raw-board moisture
line-field-period-reject = Sifter reject
    .hint = Share of the furnish.
line-field-period-dip = Uncertainty of a dip
    .hint = Standard, by volume.
line-field-period-delivery = Uncertainty of a delivery
    .hint = Standard, relative.
line-field-period-start = Start dip
    .hint = All its tanks together.
line-field-period-delivered = Delivered
    .hint = By the weighbridge.
line-field-period-end = End dip
    .hint = All its tanks together.
line-field-period-metered = Flow meter total
    .hint = Litres times density where it meters volume.
line-field-period-density = Density
line-field-period-solids = Solids content

# Figures of a catch test
line-figure-caught-net = Net mass caught
    .note = without the vessel
line-figure-caught-flow = Flow of the catch
    .note = by mass
line-figure-caught-residual = Residual
    .note = flow above the fitted line
line-figure-slope-percent = Slope of the line
    .note = per full setting, 100 %
line-figure-slope-hertz = Slope of the line
    .note = per Hz
line-figure-slope-rpm = Slope of the line
    .note = per turn a minute
line-figure-intercept = Intercept of the line
    .note = flow at a setting of zero
line-figure-residual-sd = Scatter about the line
    .note = residual standard deviation
line-figure-mean-flow = Mean flow of the catches
line-figure-mean-setting = Mean setting of the catches
line-figure-student-t = Student's t
    .note = 95 %, two-sided, of the line's degrees of freedom
line-figure-leverage = Distance of the setting from the catches
    .note = leverage
line-figure-prediction = Prediction interval, ±
    .note = 95 %, one catch at the setting

# Figures of the pump settings
line-figure-wanted = Target flow
    .note = by mass, as delivered
line-figure-wanted-volume = Target flow by volume
    .note = as delivered
line-figure-setting = Setting
    .note = by the last catch test
line-figure-spray = Through the nozzles
    .note = by volume, with thinning water
line-figure-open-nozzles = Nozzles to open
line-figure-nozzle-flow = Flow of one nozzle
    .note = by volume
line-figure-per-fibre = Ratio by mass
    .note = as delivered, per wet fibre on the belt scale
line-figure-volume-per-fibre = Ratio by volume
    .note = as delivered, per wet fibre on the belt scale
line-figure-least-flow = Flow at the lowest usable setting
    .note = by mass
line-figure-most-flow = Flow at the highest usable setting
    .note = by mass
line-figure-least-fibre = Smallest fibre flow it serves
    .note = oven-dry
line-figure-most-fibre = Largest fibre flow it serves
    .note = oven-dry
line-figure-flow-then = Flow by the earlier catch test
    .note = at this setting and density
line-figure-flow-now = Flow by the last catch test
    .note = at this setting and density
line-figure-drift = Drift
    .note = last catch test against the earlier one

# Figures of the line check
line-figure-run-fibre = Actual fibre flow
    .note = oven-dry
line-figure-run-flow = Actual flow
    .note = as delivered
line-figure-run-solids = Actual solids flow
    .note = oven-dry
line-figure-run-dose = Actual dose
    .note = solids on oven-dry fibre
line-figure-recipe-dose = Target dose
    .note = solids on oven-dry fibre
line-figure-dose-deviation = Deviation of the dose
    .note = relative
line-figure-run-water = Actual water flow
    .note = with liquids, thinning and dose
line-figure-run-furnish = Actual furnish flow
    .note = oven-dry
line-figure-run-furnish-moisture = Actual furnish moisture
    .note = water per oven-dry furnish, from the flows
line-figure-run-mat-moisture = Actual mat moisture
    .note = water per oven-dry mat, from the flows
line-figure-sample-moisture = Moisture of the sample
    .note = water per oven-dry mat
line-figure-run-mat = Actual mat weight
    .note = oven-dry, of the sample
line-figure-run-density = Board density to expect
    .note = at board moisture, from the mat weight
line-figure-correction-target = Target flow at this fibre flow
    .note = as delivered
line-figure-correction-factor = Correction of the pump
    .note = target flow per actual flow
line-figure-former-factor = Correction of the former
    .note = target mat weight per actual mat weight

# Figures of a tank
line-figure-content = Content
    .note = by volume, heel included
line-figure-usable = Usable
    .note = by volume
line-figure-usable-mass = Usable
    .note = by mass
line-figure-rate = Use now
    .note = by mass
line-figure-lasts = Lasts
    .note = at today's use
line-figure-per-shift = Use per shift
    .note = by mass
line-figure-fits = Delivery that still fits
    .note = by volume
line-figure-density-pumped = Density at the pump
line-figure-density-measured = Density as measured

# Figures of a changeover and of the control chart
line-figure-between-time = Transition time
line-figure-between-area = Transition board, area
    .note = finished
line-figure-between-volume = Transition board, volume
    .note = finished
line-figure-chart-mean = Mean
    .note = of the deviations
line-figure-moving-range = Mean moving range
    .note = of the deviations
line-figure-low-limit = Lower control limit
    .note = mean − 2.66 mean moving ranges
line-figure-high-limit = Upper control limit
    .note = mean + 2.66 mean moving ranges

# Figures compared with the recipe
line-check-dose = Dose
    .note = solids on oven-dry fibre
line-check-water = Water dose
    .note = water on oven-dry fibre
line-check-furnish-moisture = Furnish moisture
    .note = water per oven-dry furnish, from the flows
line-check-mat-moisture = Mat moisture
    .note = water per oven-dry mat, at the former
line-check-mat-weight = Mat weight
    .note = oven-dry
line-check-density-expected = Board density to expect
    .note = at board moisture
line-check-belt-scale = Belt scale
    .note = wet
line-check-fibre-moisture = Fibre moisture
line-check-flow = Flow
line-check-line-speed = Line speed
line-check-mat-width = Mat width
    .note = trimmed
line-check-raw-density = Board density
    .note = raw
line-check-thickness = Board thickness
    .note = raw
line-check-board-moisture = Board moisture
    .note = raw

# Differences of moistures and of shares
line-points-dry-basis = points d.b.
line-points-wet-basis = points w.b.
line-points = points

# Quantities of the balances
line-quantity-belt-scale = Belt scale
line-quantity-fibre-moisture = Fibre moisture
line-quantity-fibre = Fibre flow, oven-dry
line-quantity-furnish = Furnish, oven-dry
line-quantity-drying-loss = Moisture loss from blender to former
line-quantity-line-speed = Line speed
line-quantity-mat-width = Mat width
line-quantity-mat-weight = Mat weight, wet
line-quantity-mat-moisture = Mat moisture
line-quantity-board-area-mass = Raw-board mass per area
line-quantity-board-moisture = Raw-board moisture
line-quantity-thickness = Raw-board thickness
line-quantity-density = Raw-board density
line-quantity-flow = Flow of { $liquid }
line-quantity-meter = Flow meter of { $name }
line-quantity-catch-line = Catch-test line of { $pump }
line-quantity-solids = Solids content of { $liquid }
line-quantity-liquid-density = Density of { $liquid }

# Quantities of a period
line-period-board-mass = Raw-board mass
line-period-start = Start dip of { $liquid }
line-period-delivery = Delivery of { $liquid }
line-period-end = End dip of { $liquid }

# Records and deliveries
line-unread = The Line page starts with the example. What cannot be read stays stored; see “Set aside” in the library.
line-delivery-remark = New delivery
line-delivery-accepted = { $count ->
    [0] Delivery accepted.
    [one] Delivery accepted. 1 saved recipe has a new revision.
   *[other] Delivery accepted. { $count } saved recipes have a new revision each.
}
line-delivery-undone = Delivery undone.
