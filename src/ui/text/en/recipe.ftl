# The Recipe page.

recipe-title = Recipe
recipe-name = Name
recipe-untitled = Recipe without a name
recipe-name-missing = The name is blank. Enter one, such as “Straw 15 mm, pMDI”.
recipe-example = Example data of an invented mill
recipe-not-saved = Not saved yet
recipe-new = New recipe
recipe-new-opened = New recipe opened

# Share
recipe-share = Share
recipe-link = Link to this recipe
recipe-link-hint = The link holds the whole recipe. It is sent to no server.
recipe-no-link = This browser cannot make a link. Export the recipe instead.
recipe-copy-link = Copy link
recipe-link-copied = Link copied
recipe-link-not-copied = The browser does not let the app copy. Select the link and copy it.

# Inputs
recipe-inputs = Inputs
recipe-more-inputs = More inputs
recipe-fibre = Fibre
recipe-board = Board
recipe-mat-and-press = Mat and press
recipe-feed-way = Fibre flow set by
recipe-flow-oven-dry = Flow, oven-dry
recipe-belt-scale = Belt scale, wet
recipe-from-line-speed = From line speed
recipe-from-press-factor = From press factor
recipe-laboratory = None (laboratory)
recipe-moisture = Moisture
recipe-target-moisture = Target moisture
recipe-density = Density
recipe-thickness = Thickness
recipe-sanding-top = Sanding, top
recipe-sanding-bottom = Sanding, bottom
recipe-width = Width
recipe-press-length = Press length
recipe-furnish = Furnish
recipe-board-kind = Board type

recipe-sprayed-faces = Face water on
recipe-standard-climate = Board moisture: solid wood at 20 °C, 65 % ({ $moisture })

# Dosing
recipe-dosing = Dosing
recipe-dose = Dose
recipe-basis = Basis
recipe-basis-of = { $name }: basis of the dose
recipe-solids = Solids
recipe-liquid-density = Density of liquids
recipe-per-board = of board
recipe-details = Details
recipe-details-of = { $name }: details
recipe-total = Total
recipe-no-result = No result yet
recipe-old-result = Old result
recipe-no-liquids = No liquids yet. Add a liquid or a binder system.
recipe-add-liquid = Add liquid
recipe-add-system = Add binder system
recipe-system-added = { $name } added
recipe-pasted = { $count ->
    [one] One number pasted
   *[other] { $count } numbers pasted
}
recipe-solids-on-fibre = solids on OD fibre
recipe-liquid-on-fibre = liquid on OD fibre
recipe-liquid-per-board = liquid per board volume
recipe-solids-on-liquid = solids on { $name } solids
recipe-on-both-faces = liquid on each mat face
recipe-on-top-face = liquid on top mat face
recipe-on-bottom-face = liquid on bottom mat face
recipe-on-od-fibre = on OD fibre
recipe-solids-on-missing = solids on a liquid that was deleted
recipe-water = Water
recipe-water-way = Water dose set by
recipe-water-to-mat-moisture = to target mat moisture
recipe-water-on-fibre = water on OD fibre
recipe-water-flow = fixed flow
recipe-water-none = no water
recipe-none-too-wet = none: too wet

# Details of a liquid
recipe-material = Material
recipe-function = Function
recipe-liquid-name = Name
recipe-liquid-source = Source of the values
recipe-move-up = Move up
recipe-move-down = Move down
recipe-delete-liquid = Delete liquid
recipe-liquid-deleted = “{ $name }” deleted

# Key figures
recipe-key-figures = Mat and line
recipe-mat = Mat
recipe-mat-weight = Mat weight, wet
recipe-oven-dry = oven-dry
recipe-linear = linear
recipe-line-speed = Line speed
recipe-press-factor = press factor
recipe-press-time = press time
recipe-output = Board output
recipe-bottleneck = Capacity used · bottleneck: { $machine }
recipe-no-limits = Capacity: no limits entered

# Folds
recipe-more-results = More results
recipe-all-results = All results
recipe-all-results-note = every figure by station
recipe-water-balance = Water balance
recipe-water-balance-note = { $dosed } dosed, { $vapour } driven out in the press
recipe-cost = Cost
recipe-no-prices = no prices entered
recipe-no-price = no price
recipe-mass-balance = Mass balance check
recipe-closes = closes at every station
recipe-does-not-close = does not close: { $station }
recipe-mass-in = In
recipe-mass-out = Out
recipe-difference = Difference
recipe-cautions = Cautions
recipe-notes = Notes
recipe-note = Note
recipe-tags = Tags
recipe-tags-hint = Separated by commas
recipe-change-note = Change note for the next save
