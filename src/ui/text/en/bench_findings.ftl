# What is found at the bench, and how to fix it.

# The place, then what was found there
bench-finding-at = { $place }: { $what }

# Weigh sheet
bench-finding-not-whole = not a whole number.
    .fix = Enter a whole number, such as 2.
bench-finding-recipe-unsolved = the recipe cannot be computed with these bench entries, so there is nothing to weigh out.
    .fix = Fix what is marked on the Recipe page, or open another recipe.
bench-finding-out-of-range = the figures became too large or too small to compute with.
    .fix = Check mat size, number of boards and doses for a slip in the decimal mark or the unit.
bench-finding-too-wet = the furnish is too wet. A batch holds { $excess } more water than the target mat moisture needs; no water is weighed out, and the mat comes out at { $mat }.
    .fix = Dry the fibre to { $fibre }, at which no water is in excess; or use liquids with more solids, lower the doses, or accept a higher mat moisture.
# No fibre would be dry enough.
bench-finding-too-wet-by-liquids = the furnish is too wet. A batch holds { $excess } more water than the target mat moisture needs; no water is weighed out, and the mat comes out at { $mat }.
    .fix = No fibre is dry enough: the liquids alone bring more water than is needed. Use liquids with more solids, thin them less, lower their doses, or accept a higher mat moisture.
bench-finding-split = the blender does not take all at once: { $batches } equal batches, boards per batch: { $boards }.
    .fix = Weigh out and blend one batch after another.
bench-finding-split-in-parts = the blender does not take all at once: { $batches } equal batches, boards per batch: { $boards }.
    .fix = A batch does not make whole boards. Mix the batches before forming, or change the number of boards.
bench-finding-too-many-batches = so small that it would take more than a hundred batches; all together weigh { $whole }.
    .fix = Check the capacity and its unit, or make fewer boards.
bench-finding-rounding-shifts = the rounded masses give a dose of { $actual }, not { $target }.
    .fix = Weigh on a balance with a finer step, or make a larger batch.

# Too little for the balance, by what can be done: more boards, thinning, both, neither
bench-finding-below-minimum = { $mass } is below the { $minimum } that this balance weighs sensibly.
    .fix = Use a balance with a finer step, or a blender for a larger batch.
bench-finding-below-minimum-fibre = { $mass } is below the { $minimum } that this balance weighs sensibly.
    .fix = Make more boards, or take a balance with a finer step.
bench-finding-below-minimum-boards = { $mass } is below the { $minimum } that this balance weighs sensibly.
    .fix = Weigh out for { $boards } boards in the same number of batches; or take a balance with a finer step.
bench-finding-below-minimum-thin = { $mass } is below the { $minimum } that this balance weighs sensibly.
    .fix = Thin it to { $solids } solids with part of the water, and weigh the thinned liquid; or take a balance with a finer step.
bench-finding-below-minimum-boards-or-thin = { $mass } is below the { $minimum } that this balance weighs sensibly.
    .fix = Weigh out for { $boards } boards in the same number of batches, or thin it to { $solids } solids with part of the water, and weigh the thinned liquid; or take a balance with a finer step.

# Weighing
bench-finding-weighed-over-dose = { $more } over the plan.
    .fix = If it is in the blender, add to the other lines what the sheet shows, or accept the dose as it is, { $dose }. If not, take the excess back.
bench-finding-weighed-over-mass = { $more } over the plan.
    .fix = If it is in the blender, add to the other lines what the sheet shows, or accept the mass as it is. If not, take the excess back.
bench-finding-over-capacity = with what was weighed the batch comes to { $mass }; the blender takes { $capacity }.
    .fix = Take back what is not in the blender yet, or blend in two parts.
bench-finding-slip-meant = { $planned } planned, { $entered } entered.
    .fix = Did you mean { $meant }? Nothing is corrected by it until you confirm it.
bench-finding-slip-swapped = { $planned } planned, { $entered } entered.
    .fix = It fits { $other }. Were the two swapped? Nothing is corrected by it until you confirm it.
bench-finding-slip-far-off = { $planned } planned, { $entered } entered.
    .fix = Is the entry correct? Nothing is corrected by it until you confirm it.
bench-finding-recovered-too-much = { $recovered } of solids recovered, { $weighed } weighed in.
    .fix = Check the recovered mass, its tare and the furnish moisture.

# Boards and test pieces
bench-finding-unlikely-density = the density comes to { $density }; boards have 100 to 1 500 kg/m³.
    .fix = Check mass, length, width and thickness, and their units. The target is not compared until then.
bench-finding-load-in-kilonewton = the load is far too small for a board.
    .fix = Was it read in kN? Did you mean { $meant }?
bench-finding-span-in-centimetre = the span is shorter than four times the thickness.
    .fix = Was it measured in cm? Did you mean { $meant }?
bench-finding-span-off-standard = EN 310 asks for { $span } at this thickness.
    .fix = Set the supports to it: 20 times the thickness, 100 to 1 000 mm. At another span results do not compare.
bench-finding-negative-swelling = thinner after soaking than before.
    .fix = Check whether the two thicknesses were swapped.
bench-finding-dry-above-moist = heavier oven-dry than wet.
    .fix = Check both masses for a slip, and whether two pieces were taken for each other.
bench-finding-uneven-profile = the density there is { $deviation } off the mean of the board, more than { $spread } ({ $standard }, unverified).
    .fix = Spread the mat more evenly. Weigh the furnish into the frame field by field.

# Targets and requirements
bench-finding-off-target = the boards come to { $density } at the target board moisture; the target is { $target }.
    .fix = Use the furnish mass shown for the next mat. Correct the thickness at the stops, not with furnish.
bench-finding-too-few-boards = one board shows no scatter, so no quantile can be compared with the requirement.
    .fix = Test at least two boards; five give a far better estimate.
bench-finding-misses-requirement = { $tail ->
    [upper] the upper 95 % quantile is { $value }; { $required } is required.
   *[lower] the lower 95 % quantile is { $value }; { $required } is required.
}
    .fix = Change the mean, or find what scatters between the boards.

# Factors and levels
bench-finding-no-factors = nothing is varied yet.
    .fix = Add a factor with at least two levels.
bench-finding-same-factor = the factor is there twice.
    .fix = Remove one, and add its levels to the other.
bench-finding-levels-alike = two to six different levels are needed.
    .fix = Enter levels far enough apart to show in the boards.
bench-finding-factor-unnamed = the factor has no name.
    .fix = Enter one, such as “Press temperature”.
bench-finding-level-blank = nothing entered.
    .fix = Enter the level, or remove it.
bench-finding-level-not-a-number = “{ $typed }” is not a number.
    .fix = Enter a number in the unit of the factor. Clear the unit for levels in words.
bench-finding-factor-missing = the liquid that it doses is not in the recipe.
    .fix = Select a liquid of the recipe, or remove the factor.
bench-finding-dose-beside-system = the dose of one liquid cannot be varied while whole binder systems are exchanged.
    .fix = Make each dose a binder system of its own, or remove one of the two factors.
bench-finding-too-many-factors = more than the { $most } factors that a series holds.
    .fix = Vary the most promising ones first.

# Design and runs of a series
bench-finding-too-many-runs = { $runs } runs are more than the { $most } that a series holds.
    .fix = Take fewer levels, factors or replicates, or a fraction of two levels.
bench-finding-fraction-needs-two-levels = a fraction is made of factors with two levels each.
    .fix = Leave two levels to each factor, or make all combinations.
bench-finding-no-such-fraction = the published table has no such fraction of { $factors } factors.
    .fix = Select one that is offered, or make all combinations.
bench-finding-blocks-do-not-fit = these blocks would hide a main effect.
    .fix = Use fewer blocks, one block per replicate, or two levels for every factor.
bench-finding-resolution-three = in this fraction main effects are aliased with two-factor interactions.
    .fix = Good for sorting out what matters. Use a larger fraction to be sure of an effect.
bench-finding-resolution-four = in this fraction two-factor interactions are aliased with each other.
    .fix = Main effects are clear of them. Use a larger fraction if interactions matter.
bench-finding-block-hides-interaction = a two-factor interaction is confounded with the blocks.
    .fix = Take fewer blocks if it matters.
bench-finding-made-runs-stay = { $made ->
    [one] 1 of { $all } runs is made and stays as it is.
   *[other] { $made } of { $all } runs are made and stay as they are.
}
    .fix = A new run order, another number of replicates or another factor moves only { $open ->
        [one] the run not made yet
       *[other] the { $open } runs not made yet
    }.
bench-finding-runs-outside-design = { $count ->
    [one] one run was made at levels that are not in the plan any more.
   *[other] { $count } runs were made at levels that are not in the plan any more.
}
    .fix = Their boards keep their levels and results, and are left out of the effects. Undo the change to include them.
bench-finding-run-unsolved = run { $run } cannot be computed.
    .fix = Fix what is marked on its weigh sheet, or change the levels.

# Effects
bench-finding-runs-missing = { $count ->
    [one] one run without a result, left out of the effects.
   *[other] { $count } runs without a result, left out of the effects.
}
    .fix = Enter the results of its boards. With runs missing the effects are less sure and not told as cleanly apart.
bench-finding-boards-without-run = { $count ->
    [one] one result of a run that is not in the series, left out.
   *[other] { $count } results of runs that are not in the series, left out.
}
    .fix = Give each board the number of its run.
bench-finding-too-few-results = too few results to compute an effect.
    .fix = Enter the results of more runs; every combination once at least.
bench-finding-no-variation = all results are alike, so there is nothing to explain.
    .fix = Check the entries, or measure more finely.
bench-finding-no-freedom = the model leaves no degrees of freedom, so significance is not tested.
    .fix = Add replicates, or select main effects only.

# What belongs nowhere else
bench-finding-other = there is something to look at.
    .fix = Check the entries.
