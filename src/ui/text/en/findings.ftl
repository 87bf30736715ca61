# Findings: what happened, naming the place first, and how to fix it.

# One entry. “Anywhere” is for a place without a box.
finding-missing = { $place }: still empty.
    .fix = Enter a number, such as { $example }.
finding-missing-anywhere = { $place }: still empty.
    .fix = Enter a number.
finding-unreadable-anywhere = { $place }: the entry is not a number.
    .fix = Enter digits only.
finding-not-a-number = { $place }: “{ $typed }” is not a number.
    .fix = Enter digits with one decimal mark, such as { $number }. A unit may follow, such as { $example }.
finding-two-decimal-marks = { $place }: “{ $typed }” has two decimal marks.
    .fix = Enter it with one, such as { $number }. Spaces group digits.
finding-ambiguous = { $place }: “{ $typed }” can be read as { $decimal } or as { $grouped }.
    .fix = Enter { $decimal_typed } or { $grouped_typed }.
finding-unknown-unit = { $place }: “{ $typed }” does not end in a known unit.
finding-other-unit = { $place }: “{ $typed }” is in { $unit }, which measures { $measured }. This box holds { $wanted }.
finding-enter-number-alone = Enter the number alone, such as { $number }.
finding-enter-with-unit = Enter the number alone, or with one of these behind it: { $units }.
finding-too-large = { $place }: “{ $typed }” is too large to compute with.
finding-not-allowed = { $place }: “{ $typed }” is { $value }, which is not possible.
finding-not-allowed-anywhere = { $place }: { $value } is not possible.
finding-did-you-mean = Did you mean { $meant }? { $enter }
finding-likely-fraction = { $place }: { $value } is very low; did you mean { $meant }?
    .fix = Enter { $meant }, or leave it if { $value } is right.

# What a box may hold
finding-enter-exactly = Enter a value of exactly { $value }.
finding-enter-from-to = Enter a value from { $least } to { $most }.
finding-enter-from-to-below = Enter a value from { $least } to below { $most }.
finding-enter-above-to = Enter a value above { $least } and up to { $most }.
finding-enter-above-to-below = Enter a value above { $least } and below { $most }.

# What is usual
finding-range = { $low } to { $high }
finding-not-usual = { $place }: { $value } is { $side ->
    [above] above
   *[below] below
} the usual { $range } ({ $source }).
    .fix = Check the entry. If it is right for this mill, leave it: you know the mill.
finding-press-factor-above = { $place }: the press factor comes to { $value }, above the usual { $range } ({ $source }).
    .fix = Run the line faster, or leave it if the long press time is intended.
finding-press-factor-below = { $place }: the press factor comes to { $value }, below the usual { $range } ({ $source }).
    .fix = The board may not cure in that time. Check fibre flow, mat width and press length, and try it out with care.

# Liquids
finding-a-liquid = A liquid
finding-isocyanate = { $place }: with { $solids } solids the other { $rest } would be water, which reacts with an isocyanate.
    .fix = Enter 100 %. NCO content and purity on the certificate are not solids content. For an emulsion made at the nozzle, enter its spray solids.
finding-spray-thicker = { $place }: above the solids as delivered, { $solids }. Water can only thin a liquid.
    .fix = Enter a smaller value, or leave the box blank to spray it as delivered.
finding-base-loop = { $place }: dosed on itself, by way of other liquids.
    .fix = Dose one liquid of the loop on oven-dry fibre.
finding-base-missing = { $place }: dosed on the solids of a liquid that is not in this recipe.
    .fix = Select another base for the dose, or add the liquid it was dosed on.
finding-base-on-faces = { $place }: its base is sprayed on the faces of the mat, not into the furnish.
    .fix = Select another base for the dose.
finding-too-many-liquids = { $place }: one liquid more than the { $most } that a recipe holds.
    .fix = Remove a liquid.
finding-doses-fill-board = { $place }: the doses per volume of board, or per area of face, add up to { $share } of the oven-dry board, which leaves no room for fibre.
    .fix = Lower the doses, or check their unit.
finding-no-hardener = { $place }: a UF or MUF resin, and no hardener beside it.
    .fix = Add the hardener, unless the resin comes with one mixed in.
finding-hardener-not-on-binder = { $place }: a hardener that is not dosed on the solids of a binder.
    .fix = If its dose is a share of resin solids, as is usual, select the binder as the base.
finding-no-binder = { $place }: no binder among the liquids.
    .fix = Insert a binder system, or add a liquid with the role of binder.
finding-same-name = { $place }: two liquids of this name.
    .fix = Rename one, so that nobody at the line takes one for the other.

# Fibre, mat and press
finding-needs-fibre-flow = { $place }: the recipe has no fibre flow for it.
    .fix = Select a water dose on oven-dry fibre or to a mat moisture, or enter a fibre flow.
finding-spread-narrower = { $place }: smaller than the trimmed mat width, { $width }.
    .fix = The mat is cut from what the former spreads: enter a spread width at least as large, or leave it blank.
finding-needed-for-feed = { $place }: still empty, and the fibre flow cannot be found without it.
    .fix = Enter it, such as { $example }, or fix the fibre flow in another way.
finding-dries-below-zero = { $place }: more than the furnish holds. It leaves the blender with a moisture of { $moisture }.
    .fix = Enter a smaller loss, or bring more water into the blender.
finding-out-of-range = { $place }: the figures became too large or too small to compute with.
    .fix = Check this entry and the doses for a slip in the decimal mark or the unit.
finding-press-adds-water = { $place }: the board would leave the press moister than the mat goes in.
    .fix = Check the mat moisture against the board moisture leaving the press; a hot press dries.
finding-mat-thinner-than-board = { $place }: the loose mat would be thinner than the board pressed from it.
    .fix = Check the bulk density of the loose mat: a loose mat is far lighter than board.

# Too wet
finding-too-wet = { $place }: the furnish is too wet. It holds { $excess } more water than the target mat moisture needs; no water is dosed, and the mat comes out at { $mat }.
finding-excess-on-fibre = { $excess } (of oven-dry fibre)
finding-dry-the-fibre = Dry the fibre to { $fibre }, at which the water dose is exactly zero; or use liquids with more solids, lower the doses, or accept a higher mat moisture.
finding-no-fibre-dry-enough = No fibre is dry enough: the liquids alone bring more water than is needed. Use liquids with more solids, thin them less, lower their doses, or accept a higher mat moisture.

# Over the limit of a machine
finding-over-fibre-supply = { $place }: the fibre flow is { $used } of what the dryer supplies.
finding-over-blender = { $place }: the furnish is { $used } of what the blender takes.
finding-over-press = { $place }: the press is at { $used } of its limit; the press factor is below its minimum.
finding-over-line-speed = { $place }: the line speed is { $used } of its maximum.
finding-lower-fibre-flow = Lower the fibre flow to { $fibre } oven-dry at most, or check the limit.
