# Tanks & deliveries.

tank-tanks = Tanks
tank-tank-liquid = Tank, liquid
tank-level = Level
tank-read-at = Read at
tank-heel = Heel
tank-capacity = Capacity
tank-lead-time = Lead time
tank-usable = Usable
tank-use = Use
tank-per-shift = Per shift
tank-free = Free
tank-runs-empty = Runs empty in
tank-order-by = Order by
tank-add = Add tank
tank-none = No tanks yet.
tank-pasted = { $count ->
    [one] 1 value pasted
   *[other] { $count } values pasted
}
tank-left = { $time } left
tank-lasts = { $name } lasts { $time }.
tank-today = today { $time }
tank-tomorrow = tomorrow { $time }
tank-yesterday = yesterday { $time }
tank-in = in { $time }
tank-was = was { $time }
tank-overdue = Overdue by { $time }
tank-ordered = Ordered
tank-comes = comes { $time }
tank-comes-late = Comes { $time } too late
tank-mark-ordered = Mark as ordered
tank-not-ordered = Mark as not ordered
tank-name = Name
tank-holds = Liquid
tank-read-by = Read by
tank-no-state = Enter capacity and level, and use its liquid in the recipe.
tank-remove = Remove tank
tank-removed = Tank removed
tank-bar = level { $level }, heel { $heel }
tank-first-empty = { $name } empty

# Delivery
delivery-title = Delivery
delivery-into = Into
delivery-choose = Select tank or liquid
delivery-tank = { $tank } · { $liquid }
delivery-no-tank = { $liquid }, no tank
delivery-none = No delivery entered. Select where it goes to enter its certificate.
delivery-accept = Accept delivery
delivery-quantity = Quantity
delivery-in-tank = In the tank
delivery-certificate = Certificate
delivery-blend = Blend
delivery-effect = Effect
delivery-effects = Effect of the delivery
delivery-mass = Mass
delivery-volume = Volume
delivery-solids = Solids content
delivery-density = Density
delivery-measured-at = Density measured at
delivery-pumped-at = Pumped at
delivery-expansion = Expansion
delivery-batch = Batch
delivery-as-before = as before
delivery-fits = fits, { $volume } free
delivery-too-much = { $volume } too much
delivery-unsolved = With this delivery the recipe has no result.
delivery-nothing-moves = No setting changes.
delivery-new-setting = { $pump }, new setting
delivery-was = was { $setting }
delivery-flow = { $from } → { $to }
delivery-reaches = The blend reaches the nozzles after { $time }.
delivery-hint = Nothing changes before the delivery is accepted. The blend assumes a stirred tank and ideal mixing.
delivery-figures = Figures that change
delivery-count = { $count }
delivery-figure = Figure
delivery-before = Before
delivery-after = After
delivery-recipes = Saved recipes that use it
delivery-recipe = Recipe
delivery-flow-head = Flow
delivery-settings-head = Settings
delivery-recipes-hint = Each selected recipe gets a new revision.
delivery-no-recipes = No saved recipe uses this liquid.

# Accepted deliveries
delivery-earlier = Earlier deliveries
delivery-no-earlier = No deliveries yet.
delivery-accepted-at = Accepted
delivery-liquid = Liquid
delivery-tank-head = Tank
