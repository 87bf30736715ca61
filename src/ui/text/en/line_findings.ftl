# Findings, verdicts and reasons at the line.

# Catch tests. The place is before each finding, with a colon.
line-finding-catch-incomplete = incomplete, so it does not count yet.
    .fix = Enter setting, time and gross mass.
line-finding-settings-not-increasing = below { $before }, the setting of the catch before.
    .fix = Check for a slip. If the catches were made in this order, leave it: the fit is the same.
line-finding-negative-mass = less than the empty vessel, by { $by }.
    .fix = Check both masses and their units. Leave the vessel blank when the scale was set to zero with it.
line-finding-few-catches = { $count } of the { $least } catches that a valid test needs.
    .fix = Make { $least } catches or more at two settings at least, spread over those that the line runs at.
line-finding-one-setting = all catches are at one setting, so no line can be fitted.
    .fix = Catch at a second setting at least, far from the first.
line-finding-flow-not-increasing = more setting does not give more flow.
    .fix = Check the catches for a slip, and the pump for a blocked line or air.
line-finding-suspect = far off the line fitted through the other catches: { $times } times their scatter; more than { $limit } is rare.
    .fix = It still counts. Check it for a slip, catch again, or exclude it.
line-finding-not-calibrated = no catch test that counts, so no setting is known.
    .fix = Run a catch test, three catches at least.
line-finding-faulty-test = its catch test cannot be used yet.
    .fix = Fix what is marked in the test: a density, a catch, or too few catches.

# Pumps and nozzles
line-finding-not-whole = not a whole number.
    .fix = Enter the count of nozzles, such as 8.
line-finding-limits-crossed = not above the lowest setting.
    .fix = Enter a highest setting above the lowest one.
line-finding-window-crossed = not above the minimum flow of a nozzle.
    .fix = Enter a maximum flow above the minimum.
line-finding-nozzles-incomplete = missing, so the nozzles cannot be computed.
    .fix = Enter number, minimum and maximum flow of the nozzles, or leave all three blank.
line-finding-same-name = two pumps of this name.
    .fix = Rename one, so that nobody at the line mixes them up.
line-finding-shares = the pumps of this liquid deliver { $sum } of its flow together.
    .fix = Enter shares that add up to 100 %.
line-finding-no-pumps = no pumps yet.
    .fix = Add a pump for each liquid and for the water, and run a catch test on each.
line-finding-no-pump = the recipe doses it, and no pump delivers it.
    .fix = Add a pump for it, or assign one to it. Pumps know liquids by their names.
line-finding-not-in-recipe = what it delivers is not in this recipe.
    .fix = Leave it off, or assign it to a liquid of the recipe that has another name here.
line-finding-nozzles-too-few = with all nozzles open each sprays { $each }, above its { $most }.
    .fix = Fit more nozzles or larger ones, or lower the flow.
line-finding-nozzles-too-many = a single open nozzle sprays { $each }, below its { $least }.
    .fix = Use smaller nozzles, or close some of them.
line-finding-nozzles-between = with { $open } open each nozzle sprays too much, with { $more } too little.
    .fix = Use nozzles with a wider range, or change the flow a little.

# A pump that cannot do what the recipe wants
line-reach-setting = the flow takes a setting of { $setting }, { $status }.
line-reach-below-zero = the flow is below what it gives at a setting of zero.
line-reach-serves = It serves fibre flows from { $least } to { $most }, oven-dry.
line-reach-several = One of these helps. { $all }
line-reach-test-to = Run catch tests as far as { $setting }, so that it lies within what was tested.
line-reach-solids = Use the liquid with { $solids } solids.
line-reach-other-pump = Use a pump that delivers { $flow } well within its settings.
line-reach-fibre-most = Run at most { $flow } of fibre, oven-dry.
line-reach-fibre-least = Run at least { $flow } of fibre, oven-dry.
line-reach-no-help = Run a catch test, or use another pump.

# The recipe and the settings table
line-finding-entry = this entry cannot be used.
    .fix = Enter it again.
line-finding-no-recipe = the open recipe cannot be computed, so there is nothing to set.
    .fix = Fix what the recipe page marks, or open another recipe.
line-finding-no-fibre-flow = the recipe has no fibre flow.
    .fix = Select how the fibre flow is fixed on the recipe page.
line-finding-other-recipe = belt scale and fibre moisture were entered on “{ $recipe }”.
    .fix = Measure again, or clear them.
line-finding-no-balance = the recipe cannot be computed at this belt scale and fibre moisture.
    .fix = Check both entries, or clear them.
line-finding-range-crossed = below the first value.
    .fix = Enter a last value above the first one.
line-finding-too-many-steps = gives more than the { $most } that a settings table holds.
    .fix = Enter a larger step.

# Tanks and deliveries
line-finding-above-tank = more than { $tank } holds, { $most }.
    .fix = Check the mass and its unit, and the volume of the tank.
line-finding-over-full = holds more than it can.
    .fix = Check the content, its unit, and the volume of the tank.
line-finding-tank-empty = nothing in it can be pumped out.
    .fix = Fill it, or check the content that was entered.
line-finding-heel-too-large = as large as the whole tank.
    .fix = Enter the volume below the outlet, smaller than the tank.
line-finding-order-overdue = the order is overdue by { $by }.
    .fix = Order now. { $lower }
line-finding-delivery-late = runs empty { $by } before its delivery comes.
    .fix = { $lower }
line-lower-use-to = To last, use at most { $flow }.
line-lower-use = Lower its use until the delivery comes.
line-finding-no-expansion = still empty, so the density is taken as measured.
    .fix = Enter the expansion from the data sheet, or the density at the pump's temperature.
line-finding-nothing-delivered = nothing of the certificate is entered.
    .fix = Enter its solids or its density to see what changes.
line-finding-no-liquid = the liquid of the delivery is not chosen, or not in this recipe.
    .fix = Select a liquid of the recipe.

# Readings and changeover
line-finding-stale-readings = these readings were made on “{ $recipe }”, before the changeover.
    .fix = Read the line again on the recipe that runs now.
line-finding-sample-incomplete = missing, so the sample cannot be used.
    .fix = Enter area and mass of the sample, or clear it.
line-finding-assumed = not read, so it is assumed at its target.
    .fix = Enter its flow or its setting to see the actual dose.
line-finding-no-transport = still empty, and the arrivals behind it are not known.
    .fix = Time it once, with a marked piece of furnish or by the speed of the conveyors.
line-finding-no-press-time = the time through the press is not known.
    .fix = Enter mat width and press length in the recipe.
line-finding-nothing-changes = both recipes need the same flow from every pump.
    .fix = Select another recipe to change to.
line-finding-wet-between = between two steps the mat is at { $moisture }, moister than both recipes want.
    .fix = Lower the water before, and watch the press for steam.

# What to do with a pump
line-action-set = Set to { $setting }.
line-action-set-untested = Set to { $setting }, { $status }.
line-action-keep = No change.
line-action-stop = Stop it: the recipe takes none of it.
line-action-catch-test-first = Catch test first: the flow meter reads { $metered }, the catch-test line gives { $by_line } at this setting.
line-action-no-catch-test = Catch test first: there is none that counts.
line-action-cannot = Cannot deliver { $flow }: { $status }.
line-action-enter-setting = Enter the present setting: the new one starts from it.
line-action-not-read = Not read. Enter flow meter and setting.
line-action-distrusted = Catch test first: its readings disagree with the others.
line-action-unsettled = First find out which reading is wrong.

# Why a step has its place
line-why-drier-fibre-first = Drier fibre first: the dryer takes longest, and drier fibre cannot make the mat too wet.
line-why-less-water-first = Less water first: a mat too wet can burst as it leaves the press. A drier mat is less likely to, though an undercured core can open at the outfeed.
line-why-release-first = Release agent on first, before the binder that would stick to the press.
line-why-together = Fibre and binders at one moment: two binders at once bring the water of both, none at all leaves the board unbound.
line-why-release-last = Release agent off only after the binder that would stick.
line-why-more-water-last = More water last: only the new furnish can take it.
line-why-moister-fibre-last = Moister fibre last: only the new furnish can take its water.

# What changes in a step
line-change-fibre-moisture = Fibre moisture: from { $from } to { $to }
line-change-fibre = Fibre flow: from { $from } to { $to } oven-dry; the belt scale then reads { $belt }
line-change-pump = { $pump }: from { $from } to { $to }
line-change-pump-untested = { $pump }: from { $from } to { $to }, { $status }
line-change-pump-cannot = { $pump }: from { $from } to { $to }, which it cannot deliver: { $status }
line-change-mat-weight = Mat weight, wet: from { $from } to { $to }
line-change-line-speed = Line speed: from { $from } to { $to }
line-change-press-gap = Press gap or stops, for a pressed thickness: from { $from } to { $to }
line-change-press-temperature = Press temperature: set it for the new binder, as its data sheet and the mill's own record say

# What a pipe needs
line-pipe-fills = The pipe fills before anything is sprayed.
line-pipe-flush = Flush the pipe with what the liquid's safety data sheet allows, so that nothing cures in it. Never water for an isocyanate.
line-pipe-displaces = What is in the pipe has to leave first.

# A reading in doubt: “the belt scale reads 5 % low”
line-doubt-reads = { $side ->
    [high] the { $quantity } reads { $size } high
   *[low] the { $quantity } reads { $size } low
}
line-doubt-is = { $side ->
    [high] the { $quantity } is { $size } high
   *[low] the { $quantity } is { $size } low
}
line-doubt-or = { $first }, or { $next }
line-doubt-either = either { $readings }
line-doubt-and = { $first }; and { $next }

# How to make sure of a reading
line-remedy-belt-scale = Check the zero and the calibration of the belt scale.
line-remedy-fibre-moisture = Dry a fibre sample in the oven.
line-remedy-drying-loss = Measure the moisture behind the blender and at the former.
line-remedy-line-speed = Time a mark on the mat over a measured length.
line-remedy-mat-width = Measure the trimmed mat width.
line-remedy-mat-weight = Cut and weigh another mat sample.
line-remedy-mat-moisture = Dry a mat sample in the oven.
line-remedy-board = Measure and weigh another raw board.
line-remedy-board-moisture = Dry a board sample in the oven.
line-remedy-thickness = Measure the raw board with a caliper.
line-remedy-flow = Measure the flow of { $liquid }.
line-remedy-pump = Run a catch test on { $pump }.
line-remedy-solids = Test the solids content of { $liquid }.
line-remedy-liquid-density = Measure the density of { $liquid }.
line-remedy-boards = Count and weigh raw boards again.
line-remedy-metered = Run a catch test on the pump of { $liquid }, and check its dips and deliveries.
line-remedy-delivered = Check the weighbridge tickets of { $liquid }.
line-remedy-dip = Dip the tanks of { $liquid } again.

# What the readings say together
line-verdict-nothing-checked = No reading can be cross-checked yet.
    .fix = Add the settings of the pumps, the line speed and a mat sample.
line-verdict-all-checked = All readings agree within their uncertainties.
    .fix = Every reading is cross-checked by others.
line-verdict-agree = All readings agree within their uncertainties.
    .fix = Not cross-checked: { $unchecked }.
line-verdict-unexplained = The readings disagree, and no single one of them explains it.
    .fix = Read everything again at one time, and check solids contents and mat width of the recipe.
line-verdict-distrust = { $doubts }: { $left_out ->
        [several] with these left out everything else agrees.
        [one-of] with one of them left out everything else agrees.
       *[it] with it left out everything else agrees.
    }
    .fix = { $remedies }
line-verdict-period-unexplained = The readings of the period disagree, and no single one of them explains it.
    .fix = Check that all totals and dips are of the same hours.
line-verdict-period-agrees = All readings of the period agree within their uncertainties.
    .fix = No meter drifts.
line-split-density = Raw-board density { $density } from target: mass per area { $mass }, thickness { $thickness }, moisture { $moisture }.
    .fix = Correct first: { $largest ->
        [mass] former or line speed.
        [thickness] press gap.
        [moisture] drying.
       *[none] nothing.
    }
