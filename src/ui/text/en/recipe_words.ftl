# Names of fields, figures, things and choices of a recipe.

# Fields
field-fibre-flow-belt = Fibre flow, belt scale reading, wet
    .hint = With its moisture, as the belt scale shows it.
field-fibre-flow-oven-dry = Fibre flow, oven-dry
    .hint = Into the blender, without its moisture.
field-wanted-line-speed = Target line speed
    .hint = The fibre flow follows from it.
field-wanted-press-factor = Target press factor
    .hint = Pressing time per pressed thickness; the fibre flow follows from it.
field-fibre-moisture = Fibre moisture
    .hint = Of the dried fibre as it enters the blender.
field-fibre-price = Fibre price, oven-dry
    .hint = Per oven-dry mass.
field-mat-moisture = Target mat moisture
    .hint = At the former; the water dose follows from it.
field-drying-loss = Moisture loss, blender to former
    .hint = In points d.b.
field-water-on-fibre = Water dose, water on oven-dry fibre
    .hint = kg of water per 100 kg oven-dry fibre.
field-water-flow = Water dose, flow
field-board-density = Board density
    .hint = Finished board at its board moisture (EN 323).
field-board-moisture = Board moisture
    .hint = At which the density is meant.
field-thickness = Finished thickness
    .hint = After sanding.
field-sand-top = Sanded off, top face
field-sand-bottom = Sanded off, bottom face
field-surface-ratio = Relative density, sanded-off layers
    .hint = Their density over the board mean; 1 if unknown.
field-mat-width = Mat width, trimmed
    .hint = As it enters the press.
field-spread-width = Spread width
    .hint = Width that the former spreads; trimmed edges return.
field-press-length = Press length, heated
field-reject = Sifter reject, share of the furnish
field-area-yield = Area yield
    .hint = Finished area per pressed area, after edges and crosscuts.
field-exit-moisture = Board moisture leaving the press
    .hint = Leave blank to use the board moisture; the press water follows from it.
field-mat-bulk-density = Bulk density of the loose mat, wet
    .hint = Gives the mat height.
field-mat-temperature = Mat temperature before the press
field-surface-spray = Face water
    .hint = Per area of each sprayed face.
field-shift-hours = Hours of a shift
field-fibre-supply = Dryer capacity, oven-dry fibre
    .hint = Leave blank for no limit.
field-blender-capacity = Blender capacity, oven-dry
    .hint = Furnish; leave blank for no limit.
field-least-press-factor = Minimum press factor
    .hint = Lowest that cures; leave blank for no limit.
field-steam-limit = Mat moisture limit of the press
    .hint = Leave blank to use the typical range.
field-top-line-speed = Maximum line speed
    .hint = Of former and press; leave blank for no limit.

# Fields of a liquid
field-liquid-solids = Solids as delivered, by mass
    .hint = By the supplier's own method; 100 % for neat pMDI.
field-liquid-density = Density as delivered
field-liquid-spray-solids = Spray solids after thinning, by mass
    .hint = Leave blank if sprayed as delivered.
field-liquid-price = Price as delivered
    .hint = Leave blank to leave it out of the cost.
field-dose-solids-on-fibre = Dose, solids on oven-dry fibre
    .hint = kg of solids per 100 kg oven-dry fibre.
field-dose-solids-on-liquid = Dose, solids on the other liquid's solids
    .hint = kg of solids per 100 kg solids of the base.
field-dose-liquid-on-fibre = Dose, liquid as delivered on oven-dry fibre
    .hint = kg of liquid per 100 kg oven-dry fibre.
field-dose-liquid-per-board = Dose, liquid as delivered per volume of finished board
field-dose-liquid-on-faces = Dose, liquid as delivered per area of face
    .hint = Per sprayed face.

# Fields of a liquid by their full names
field-liquid-solids-of = Solids of { $name }, as delivered
field-liquid-density-of = Density of { $name }
field-liquid-spray-solids-of = Spray solids of { $name }
field-liquid-price-of = Price of { $name }
field-dose-solids-on-fibre-of = Dose of { $name }, solids on oven-dry fibre
field-dose-solids-on-liquid-of = Dose of { $name }, solids on the other liquid's solids
field-dose-liquid-on-fibre-of = Dose of { $name }, liquid as delivered on oven-dry fibre
field-dose-liquid-per-board-of = Dose of { $name }, liquid as delivered per volume of finished board
field-dose-liquid-on-faces-of = Dose of { $name }, liquid as delivered per area of face

# Figures
figure-fibre = Fibre
    .note = oven-dry
figure-fibre-wet = Fibre on the belt scale
    .note = with its moisture
figure-fibre-water = Water with the fibre
    .note = water
figure-solids = Furnish solids
    .note = oven-dry: fibre and all solids sprayed on it
figure-furnish-per-fibre = Furnish per fibre
    .note = oven-dry furnish per oven-dry fibre
figure-water-needed = Water needed
    .note = water, for the target mat moisture
figure-water-on-hand = Water before dosing
    .note = water, with fibre, liquids and thinning
figure-water-dose = Water dose
    .note = water, by mass
figure-water-dose-volume = Water dose by volume
    .note = water at 20 °C
figure-water-dose-on-fibre = Water dose on fibre
    .note = water, on oven-dry fibre
figure-water-excess = Water in excess
    .note = water above what is needed
figure-fibre-moisture-for-no-water = Fibre moisture at zero water dose
    .note = water per oven-dry fibre
figure-blender-moisture = Furnish moisture after the blender
    .note = water per oven-dry furnish
figure-mat-moisture = Mat moisture at the former
    .note = water per oven-dry mat
figure-furnish-wet = Furnish out of the blender
    .note = with its moisture
figure-mat-wet = Mat weight, wet
    .note = with its moisture, at the former
figure-mat-oven-dry = Mat weight, oven-dry
    .note = oven-dry
figure-mat-fibre = Fibre in the mat
    .note = oven-dry
figure-mat-water = Water in the mat
    .note = water
figure-mat-running = Linear mat weight
    .note = with its moisture, over the trimmed width
figure-mat-height = Mat height
    .note = loose, at the former
figure-compaction = Compaction
    .note = mat height per pressed thickness
figure-reject = Sifter reject
    .note = oven-dry
figure-net-solids = Furnish to the press
    .note = oven-dry
figure-transport-vapour = Water lost, blender to former
    .note = water
figure-trim = Mat trim, returned
    .note = oven-dry
figure-line-speed = Line speed
figure-pressed-thickness = Pressed thickness
    .note = before sanding
figure-press-time = Pressing time
    .note = press length over line speed
figure-press-factor = Press factor
    .note = per pressed thickness
figure-surface-spray = Face water
    .note = water, all sprayed faces
figure-surface-spray-volume = Face water by volume
    .note = water at 20 °C, all sprayed faces
figure-press-vapour = Water driven out in the press
    .note = water
figure-heat-per-water = Heat per mass of water driven out
    .note = to warm and evaporate it at 101.325 kPa
figure-press-heat = Heat for water driven out in the press
    .note = without losses of the press
figure-raw-board = Raw board weight
    .note = at board moisture, before sanding
figure-finished-area = Finished area
    .note = sanded and cut
figure-finished-volume = Finished volume
    .note = sanded and cut
figure-finished-mass = Finished board
    .note = at board moisture
figure-sander-dust = Sander dust
    .note = oven-dry
figure-offcuts = Edges and crosscuts
    .note = oven-dry
figure-fibre-per-volume = Fibre per volume of board
    .note = oven-dry fibre, finished board
figure-fibre-per-area = Fibre per area of board
    .note = oven-dry fibre, finished board
figure-fibre-per-board-mass = Fibre per mass of board
    .note = oven-dry fibre, board at board moisture
figure-fibre-per-shift = Fibre per shift
    .note = oven-dry
figure-water-per-volume = Water per volume of board
    .note = dosed and thinning water, finished board
figure-fibre-cost = Cost of fibre
    .note = per volume of finished board
figure-cost = Cost of priced materials
    .note = per volume of finished board
figure-used-note = share of its limit in use

# Figures of a liquid
figure-liquid-solids = Solids
    .note = oven-dry
figure-liquid-liquid = Flow by mass
    .note = as delivered
figure-liquid-volume = Flow by volume
    .note = as delivered
figure-liquid-water = Water it brings
    .note = water
figure-liquid-thinning = Thinning water
    .note = water
figure-liquid-spray = Through the nozzles
    .note = thinned, by mass
figure-liquid-share = Share of the furnish
    .note = solids of all solids
figure-liquid-solids-on-fibre = Solids on fibre
    .note = solids on oven-dry fibre
figure-liquid-liquid-on-fibre = Liquid on fibre
    .note = as delivered, on oven-dry fibre
figure-liquid-thinning-on-fibre = Thinning water on fibre
    .note = water, on oven-dry fibre
figure-liquid-in-mat = In the mat
    .note = oven-dry
figure-liquid-per-volume = Per volume of board
    .note = as delivered, finished board
figure-liquid-per-area = Per area of board
    .note = as delivered, finished board
figure-liquid-per-board-mass = Per mass of board
    .note = as delivered, board at board moisture
figure-liquid-per-shift = Per shift by mass
    .note = as delivered
figure-liquid-volume-per-shift = Per shift by volume
    .note = as delivered
figure-liquid-cost = Cost
    .note = per volume of finished board

# Fibre flow at the limit of a machine
figure-fibre-at-limit-fibre-supply = Fibre flow at dryer limit
figure-fibre-at-limit-blender = Fibre flow at blender limit
figure-fibre-at-limit-press = Fibre flow at press limit
figure-fibre-at-limit-line-speed = Fibre flow at maximum line speed
figure-fibre-at-limit-note = oven-dry fibre at its limit

# How grave a finding is
name-grade-stop = Cannot be computed
name-grade-unusual = Outside the usual
name-grade-note = Note

# Where a usual window comes from
name-source-unverified-of = unverified; { $of }
name-source-mill = this mill's own limit
name-source-from-memory = unverified
name-source-common-practice = trade practice

# Stations of the line
name-station-fibre = Fibre
name-station-blender = Blender
name-station-mat = Mat
name-station-press = Press
name-station-board = Board

# What a liquid is for
name-role-binder = Binder
name-role-hardener = Hardener
name-role-wax = Wax
name-role-scavenger = Formaldehyde scavenger
name-role-release-agent = Release agent
name-role-other = Other liquid

# What a liquid is made of
name-substance-uf = UF resin
name-substance-muf = MUF resin
name-substance-pf = PF resin
name-substance-pmdi = pMDI
name-substance-soy = Soy adhesive
name-substance-tannin = Tannin adhesive
name-substance-wax-emulsion = Wax emulsion
name-substance-ammonium-sulfate = Ammonium sulfate solution
name-substance-ammonium-chloride = Ammonium chloride solution
name-substance-ammonium-nitrate = Ammonium nitrate solution
name-substance-urea = Urea solution
name-substance-other = Something else

# Machines that may limit the line
name-machine-fibre-supply = Fibre supply
name-machine-blender = Blender
name-machine-press = Press
name-machine-line-speed = Line speed

# What the furnish is made of
name-furnish-straw = Straw
name-furnish-wood = Wood
name-furnish-mixed = Straw and wood

# Kinds of board
name-board-kind-fibreboard = Fibreboard (EN 622-1, EN 622-5)
name-board-kind-particleboard = Particleboard (EN 312)
name-board-kind-other = Other

# Ways to fix the fibre flow
name-feed-way-oven-dry = Oven-dry fibre flow
name-feed-way-belt = Belt scale reading, wet fibre
name-feed-way-line-speed = From a line speed
name-feed-way-press-factor = From a press factor
name-feed-way-none = None (laboratory)

# Faces of the mat
name-faces-both = Both faces
name-faces-top = Top face
name-faces-bottom = Bottom face

# Ways to fix the water dose
name-water-way-to-mat-moisture = To a mat moisture
name-water-way-on-fibre = Fixed, on oven-dry fibre
name-water-way-flow = Fixed flow
name-water-way-none = No water dosed

# Ways to enter a dose
name-dose-way-solids-on-fibre = Solids on oven-dry fibre
name-dose-way-liquid-on-fibre = Liquid as delivered on oven-dry fibre
name-dose-way-liquid-per-board = Liquid as delivered per volume of finished board
name-dose-way-liquid-on-both-faces = Liquid as delivered on each of both mat faces
name-dose-way-liquid-on-top-face = Liquid as delivered on the top mat face
name-dose-way-liquid-on-bottom-face = Liquid as delivered on the bottom mat face
name-dose-way-solids-on-liquid = Solids on the solids of { $name }
name-dose-way-solids-on-missing = Solids on the solids of a liquid that is not there

# Systems of units
name-system-metric = Metric
name-system-us = US customary

# What is dissolved in water
name-solute-ammonium-sulfate = Ammonium sulfate
name-solute-ammonium-chloride = Ammonium chloride
name-solute-ammonium-nitrate = Ammonium nitrate
name-solute-urea = Urea

# What a unit measures, in a sentence
name-dimension-mass = mass
name-dimension-mass-flow = mass per time
name-dimension-volume = volume
name-dimension-volume-flow = volume per time
name-dimension-density = mass per volume
name-dimension-areal-mass = mass per area
name-dimension-linear-mass = mass per length
name-dimension-length = length
name-dimension-area = area
name-dimension-area-flow = area per time
name-dimension-speed = speed
name-dimension-time = time
name-dimension-slowness = time per thickness
name-dimension-temperature = temperature
name-dimension-specific-energy = heat per mass
name-dimension-heat-flow = heat per time
name-dimension-fraction = a share
name-dimension-moisture = moisture
name-dimension-force = force
name-dimension-stress = force per area
name-dimension-stiffness = force per length
name-dimension-frequency = frequency
name-dimension-rotation = shaft speed
name-dimension-flow-per-frequency = mass per time and frequency
name-dimension-flow-per-rotation = mass per time and shaft speed
name-dimension-specific-volume = volume per mass
name-dimension-expansion = expansion per temperature
name-dimension-price = money per mass
name-dimension-cost = money per volume of board
name-dimension-year-cost = money per year
name-dimension-number = a bare number

# Numbers from tables
name-constant-water-density = Density of water at 20 °C
name-constant-sensible-heat = Heat to warm the water from the mat's temperature to boiling
name-constant-latent-heat = Heat to evaporate water at 101.325 kPa
name-constant-dryer-heat = Heat to warm water from 20 °C and to evaporate it at 101.325 kPa
name-constant-hours-per-year = Hours per year, as chosen

# What a formula rests on
name-ground-entered = as entered
name-ground-mass-balance = mass in equals mass out
name-ground-definition = by definition

# Binder systems of the starting library
name-binder-system-uf = UF
    .note = Urea-formaldehyde resin with hardener, urea as scavenger, and wax.
name-binder-system-muf = MUF
    .note = Melamine-urea-formaldehyde resin with hardener and wax.
name-binder-system-pf = PF
    .note = Phenol-formaldehyde resin and wax. It cures by heat and brings much water: dry the fibre well.
name-binder-system-pmdi = pMDI, neat
    .note = pMDI as delivered, and wax. It brings no water.
name-binder-system-pmdi-emulsified = pMDI, emulsified at the nozzle
    .note = pMDI thinned with water just before it is sprayed, and wax.
name-binder-system-soy = Soy-based
    .note = Soy adhesive and wax. It brings much water: dry the fibre well.
name-binder-system-tannin = Tannin-based
    .note = Tannin adhesive, hexamine as hardener, and wax. It brings much water.
name-binder-system-uf-pmdi = Hybrid, UF and pMDI
    .note = UF resin with hardener, some pMDI beside it, and wax.
