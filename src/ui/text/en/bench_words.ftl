# Names, boxes, figures and sayings of the bench.

# Boxes of the weigh sheet
bench-field-mat-length = Mat length
    .hint = Of the mould or forming frame.
bench-field-mat-width = Mat width
    .hint = Of the mould or forming frame.
bench-field-boards = Boards
    .hint = From all batches together.
bench-field-finished-thickness = Finished thickness
    .hint = After sanding. Leave blank for the recipe's; its sanding is added.
bench-field-pressed-thickness = Pressed thickness
    .hint = As it leaves the press, not sanded.
bench-field-board-density = Board density
    .hint = At the board moisture (EN 323). Leave blank for the recipe’s value.
bench-field-board-moisture = Board moisture
    .hint = At which the density is meant. Leave blank for the recipe’s value.
bench-field-fibre-moisture = Fibre moisture
    .hint = Of the fibre on the bench. Leave blank for the recipe’s value.
bench-field-mat-moisture = Target mat moisture
    .hint = Before the press. Leave blank to dose water as the recipe does.
bench-field-drying-loss = Moisture loss, blender to press
    .hint = Points d.b. lost between blender and press. Leave blank for 0; the line’s loss is not used.
bench-field-overage-moist = Overage, share of the wet mass
    .hint = Weighed out beyond what the boards need.
bench-field-overage-oven-dry = Overage, share of the oven-dry mass
    .hint = Added wet, beyond what the boards need.
bench-field-wall-loss = Left on the walls, share of each liquid
    .hint = Of everything sprayed, water too; weighed out on top.
bench-field-capacity = Blender capacity, wet
    .hint = Leave blank for no limit.
bench-field-fibre-step = Step of the fibre's balance
    .hint = Leave blank for no rounding.
bench-field-liquid-step = Step of the liquids' balance
    .hint = Leave blank for no rounding.
bench-field-fibre-minimum = Minimum weighable fibre
    .hint = Leave blank for no limit.
bench-field-liquid-minimum = Minimum weighable liquid
    .hint = Leave blank for no limit.
bench-field-tolerance = Overshoot tolerance
    .hint = Leave blank for one balance step.
bench-field-press-factor = Press factor
    .hint = Pressing time per pressed thickness. Leave blank for that of the recipe's line.
bench-field-spray-volume = Spray flow by volume
    .hint = Of the pump. Leave blank for no spray time.
bench-field-spray-mass = Spray flow by mass
    .hint = Caught and weighed. Leave blank for no spray time.

# Boxes of the furnish recovered
bench-field-recovered-mass = Furnish recovered, wet
    .hint = Out of the blender, before forming.
bench-field-recovered-moisture = Furnish moisture
    .hint = Measured, such as on a moisture balance.

# Boxes of a series
bench-field-replicates = Replicates
bench-field-seed = Seed of the run order
bench-field-margin = Margin on the material
bench-field-factor = Factor
bench-field-level = Level

# Boxes of a board
bench-field-board-laid = Furnish laid, wet
    .hint = Read off the balance. Leave blank for the sheet’s mass.
bench-field-board-mass = Board mass
    .hint = The whole board.
bench-field-board-length = Board length
bench-field-board-width = Board width
bench-field-board-thickness = Board thickness
    .hint = At several points; their mean counts.
bench-field-board-own-moisture = Board moisture
    .hint = Where no piece was dried.

# Boxes of a test piece
bench-field-piece-position = Position
    .hint = From one edge; gives the profile. Leave blank for no profile.
bench-field-piece-mass = Mass
    .hint = As cut and conditioned.
bench-field-piece-mass-optional = Mass
    .hint = Leave blank if not weighed.
bench-field-piece-dry = Mass, oven-dry
    .hint = Dried at 103 °C to constant mass. Leave blank if not dried.
bench-field-piece-length = Length
bench-field-piece-width = Width
bench-field-piece-thickness = Thickness
bench-field-piece-thickness-for-density = Thickness
    .hint = For the density of the piece.
bench-field-piece-span = Span
    .hint = Between the supports; 20 times the thickness is usual.
bench-field-piece-whole-length = Piece length
    .hint = For the density of the piece.
bench-field-piece-load = Maximum load
bench-field-piece-slope = Slope of load over deflection
    .hint = Between 10 and 40 % of the maximum load. Leave blank for no modulus.
bench-field-piece-before = Thickness before
    .hint = Before soaking.
bench-field-piece-after = Thickness after 24 h
bench-field-piece-after-two = Thickness after 2 h
    .hint = Leave blank if not measured.
bench-field-piece-mass-before = Mass before
    .hint = Leave blank if not weighed.
bench-field-piece-mass-after = Mass after 24 h
    .hint = Leave blank if not weighed.

# Figures of the weigh sheet
bench-figure-mat-area = Mat area
bench-figure-mat-oven-dry = Mat, oven-dry
    .note = oven-dry, one mat
bench-figure-mat-moist = Furnish for one mat, wet
    .note = blended, with its moisture
bench-figure-raw-board = Raw board expected
    .note = at board moisture, before sanding
bench-figure-finished-board = Finished board expected
    .note = at board moisture, edges not trimmed
bench-figure-fibre-factor = Overage on the fibre
    .note = factor
bench-figure-liquid-factor = Overage on the liquids
    .note = factor
bench-figure-batch = Batch
    .note = all that goes into the blender at once
bench-figure-stops = Stops
    .note = pressed thickness
bench-figure-press-time = Pressing time
bench-figure-spray-time = Spray time of a batch
    .note = all liquids one after another
bench-figure-actual-moisture = Actual mat moisture
    .note = water per oven-dry furnish, by the rounded masses

# Figures of a line of the weigh sheet
bench-figure-line-mass = Exact mass
    .note = one batch
bench-figure-line-rounded = Mass to weigh
    .note = one batch, rounded to the balance
bench-figure-line-volume = Volume
    .note = of the mass to weigh
bench-figure-line-spray-time = Spray time
    .note = with the water that thins it
bench-figure-line-target = Target dose
    .note = solids on oven-dry fibre
bench-figure-line-actual = Actual dose
    .note = solids on oven-dry fibre, by the rounded masses
bench-figure-line-deviation = Deviation of the dose
    .note = share of the target dose

# Figures of boards
bench-figure-whole-density = Density of the whole board
    .note = at its moisture
bench-figure-density = Density
    .note = at its moisture
bench-figure-moisture = Moisture
    .note = water per oven-dry mass
bench-figure-oven-dry-density = Oven-dry density
    .note = oven-dry mass per volume as measured
bench-figure-bending-strength = Bending strength
bench-figure-bending-modulus = Modulus of elasticity in bending
    .note = apparent: shear is in it
bench-figure-internal-bond = Internal bond
bench-figure-swelling = Thickness swelling
    .note = share of the thickness before
bench-figure-half-width = ± of the mean
    .note = 95 % interval, from the means of boards
bench-figure-lower = Lower 95 % quantile
    .note = from the means of boards (EN 326-1, unverified)
bench-figure-upper = Upper 95 % quantile
    .note = from the means of boards (EN 326-1, unverified)
bench-figure-correction = Correction of the next mat
    .note = factor on its mass; thickness is not corrected

# Properties, and the standard of each
bench-property-density = Density
    .note = at its moisture (EN 323)
bench-property-oven-dry-density = Oven-dry density
    .note = oven-dry mass per volume as measured (EN 323)
bench-property-moisture = Moisture
    .note = water per oven-dry mass (EN 322)
bench-property-thickness = Thickness
    .note = EN 324-1
bench-property-bending-strength = Bending strength
    .note = EN 310
bench-property-bending-modulus = Modulus of elasticity in bending
    .note = EN 310
bench-property-internal-bond = Internal bond
    .note = EN 319
bench-property-swelling = Thickness swelling, 24 h
    .note = share of the thickness before (EN 317)
bench-property-swelling-two = Thickness swelling, 2 h
    .note = share of the thickness before (EN 317)
bench-property-absorption = Water absorption, 24 h
    .note = share of the mass before (ASTM D1037)

# Where a number in a working comes from
bench-origin-field = entered on the weigh sheet
bench-origin-figure = from the weigh sheet
bench-origin-recipe-field = from the recipe, unless entered on the weigh sheet
bench-origin-recipe-figure = from the recipe, with the entries of the weigh sheet
bench-origin-batches = number of batches

# Lines and materials
bench-name-liquid = Liquid
bench-name-fibre = Fibre, wet
bench-name-water = Water
bench-name-thinning = Water to thin { $liquid }
bench-name-liquid-of-system = { $liquid }, of { $system }

# Factors, their levels and terms
bench-name-dose = Dose of { $liquid }
bench-name-board-density = Board density
bench-name-mat-moisture = Mat moisture
bench-name-press-factor = Press factor
bench-name-system = Binder system
bench-name-other-factor = Other factor
bench-name-nameless-system = a system without a name
bench-name-blocks = Blocks

# Places of findings
bench-place-missing-factor = A factor
bench-place-factor = Factor { $letter }, { $name }
bench-place-level = { $factor }, level { $number }
bench-place-board = Board { $board }, { $field }
bench-place-point = Board { $board }, point { $number }, { $field }
bench-place-density-piece = Board { $board }, density piece { $number }, { $field }
bench-place-bending-piece = Board { $board }, bending piece { $number }, { $field }
bench-place-bond-piece = Board { $board }, bond piece { $number }, { $field }
bench-place-swelling-piece = Board { $board }, swelling piece { $number }, { $field }

# Choices
bench-choice-thickness-finished = Finished thickness; sanding is added
bench-choice-thickness-pressed = Pressed, not sanded
bench-choice-overage-of-moist = Share of the wet mass
bench-choice-overage-of-oven-dry = Share of the oven-dry mass, added wet
bench-choice-overage-on-furnish = On everything: furnish is lost after blending
bench-choice-overage-on-fibre = On the fibre alone: it is spilled before blending
bench-choice-water-last = Water after the liquids
bench-choice-water-first = Water before the liquids
bench-choice-spray-volume = By volume
bench-choice-spray-mass = By mass
bench-choice-design-full = All combinations
bench-choice-design-fraction = 1/{ $part } of them, { $notation }, { $runs } runs
# A fraction that no table has.
bench-choice-design-no-fraction = 1/{ $part } of them
bench-choice-blocks-none = No blocks
bench-choice-blocks-replicate = One block per replicate
bench-choice-blocks-halves = Two blocks per replicate
bench-choice-blocks-quarters = Four blocks per replicate
bench-choice-model-pairs = Main effects and pairs
bench-choice-model-mains = Main effects only

# Sets of requirements
bench-requirements-particleboard-interior = { $standard }, P2, over 13 to 20 mm
bench-requirements-fibreboard-dry = { $standard }, MDF, over 12 to 19 mm
bench-requirements-particleboard-ansi = { $standard }, particleboard
bench-requirements-fibreboard-ansi = { $standard }, MDF

bench-board-count = { $count ->
    [one] 1 board
   *[other] { $count } boards
}

# What the effects tell. Names are within a sentence.
bench-saying-largest = { $term } has the largest effect on { $property }.
bench-saying-none = No significant effect on { $property }.
bench-saying-none-of = No significant effect on { $property } of { $names }.
bench-saying-untested = These runs leave no degrees of freedom, so significance is not tested.
bench-saying-only-interaction = Only the interaction of factors affects { $property }.

# Parts of the sentence in brief, a semicolon between them: the first names the property, the others follow it.
bench-saying-raises = { $names } { $count ->
    [one] raises
   *[other] raise
} { $property }
bench-saying-lowers = { $names } { $count ->
    [one] lowers
   *[other] lower
} { $property }
bench-saying-affects = { $names } { $count ->
    [one] affects
   *[other] affect
} { $property }
bench-saying-lowers-it = { $names } { $count ->
    [one] lowers
   *[other] lower
} it
bench-saying-affects-it = { $names } { $count ->
    [one] affects
   *[other] affect
} it

# The end of a list of names
bench-saying-and = { $first } and { $last }
bench-saying-or = { $first } or { $last }

# How much
bench-saying-effect = { $term }, from { $low } to { $high }: { $property } { $change ->
    [falls] falls
   *[rises] rises
} by { $size }.
bench-saying-effect-sure = { $term }, from { $low } to { $high }: { $property } { $change ->
    [falls] falls
   *[rises] rises
} by { $size } (± { $half }, 95 %).
bench-saying-interaction = Significant interaction: the effect of { $factor } on { $property } is { $size } { $change ->
    [lower] lower
   *[higher] higher
} at { $other } { $high } than at { $low }.
bench-saying-points = { $number } points
bench-saying-points-dry-basis = { $number } points d.b.

# Whether a requirement is met
bench-verdict-met = { $tail ->
    [upper] { $property }: met, upper 95 % quantile { $value } where at most { $required } is required.
   *[lower] { $property }: met, lower 95 % quantile { $value } where at least { $required } is required.
}
bench-verdict-not-met = { $tail ->
    [upper] { $property }: not met, upper 95 % quantile { $value } where at most { $required } is required.
   *[lower] { $property }: not met, lower 95 % quantile { $value } where at least { $required } is required.
}
bench-verdict-open = { $tail ->
    [upper] { $property }: too few boards to tell whether at most { $required } is met.
   *[lower] { $property }: too few boards to tell whether at least { $required } is met.
}
bench-verdict-unverified = { $amount } (unverified)

# What boards that are put together have in common
bench-group-level = { $factor } { $level }

# A strength at the target density
bench-at-density = { $property } at target density: { $value } ± { $half } (95 % confidence interval, { $pieces ->
    [one] 1 piece
   *[other] { $pieces } pieces
}).
bench-at-density-shared = { $property } at target density: { $value } ± { $half } (95 % confidence interval, { $pieces ->
    [one] 1 piece
   *[other] { $pieces } pieces
}, one slope for { $groups } groups of boards).
bench-at-density-outside = The target density is outside the densities tested.

# What a new run order moves
bench-redraw = { $made ->
    [one] 1 run is made and keeps its number and levels.
   *[other] { $made } runs are made and keep their numbers and levels.
} Draw a new order for { $open ->
    [one] the run not made yet
   *[other] the { $open } runs not made yet
}?

# Messages of the page
bench-open-unread = The Bench page starts with the example. What cannot be read stays stored; see “Set aside” in the library.
bench-new-begun = New trial begun; the one before can be brought back here.
bench-trial-saved = Trial saved
bench-trial-opened = Trial opened: { $name }
bench-trial-deleted = Trial deleted
bench-trial-restored = Trial restored
