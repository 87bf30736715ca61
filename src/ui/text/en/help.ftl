# Help. In a list each line is an item; in a list of terms each line is `term — meaning`.

help-title = Help
help-contents = On this page

help-tour = Tour with the example
help-tour-steps =
    Open Recipe. On first start it shows the example: an invented mill with wheat straw, pMDI and wax.
    Read what to dose: each liquid has its dose on the left and its flow on the right.
    Change the fibre moisture. Every figure follows at once; wetter fibre needs less water.
    Enter 25 there. The furnish is now too wet: the water dose is zero, and the warning says what helps. Undo it.
    Select any figure. Its formula opens below with the numbers and the source.
    Open Library, tab Binder systems, and use another system in the recipe. This can be undone too.
    Name the recipe and save it. It is now in the library, and each save stays there as a revision.
    Open Line. Each pump’s setting follows from its catch test and the open recipe.
    Open Bench for a trial board of this recipe, and Compare to see it beside other systems.

help-numbers = Entering numbers
help-numbers-rules =
    Point and comma both mark decimals. Spaces group digits: 12 500.
    A unit may follow the number and is converted: 4 t/h, 2.5 US gal/min.
    If a number can be read in two ways, such as 1,234, Haulm asks and never guesses.
    A percentage entered as a fraction, 0.65 for 65 %, is asked about too.
    A unit chosen right after a number belongs to that number. Otherwise the quantity stays and is converted.
    A column copied from a spreadsheet fills the boxes below the one it is pasted into.

help-bases = Moisture on two bases
help-bases-text = Dry basis (% db) is water per oven-dry mass, as a laboratory oven gives it (EN 322). Wet basis (% wb) is water per total mass, as many meters show it. 20 % db is 16.7 % wb. The other basis is shown below each moisture.

help-cautions = Cautions
help-cautions-text = General wording only. Local codes, the safety data sheet and licensed practice decide.

help-data = Where your data is
help-data-rules =
    In this browser, on this device, and nowhere else. Nothing is sent: there is no account and no server.
    What is on a page is stored as you type and is there after a reload or a crash.
    Each save is a revision that never changes, with a number, your initials and your change note. Any two can be compared; an older one can be restored.
    Two revisions made apart from each other stay side by side until they are merged. A save never replaces a newer revision without asking.
    A release says who released which revision and when. It stays until it is withdrawn, whatever is saved later.
    Everything can be exported to one file and merged with another browser’s library. Nothing is overwritten.
    Several people can share one library file on a shared drive, if the browser allows a page to write to a file.
    A recipe can also be shared as a link or a QR code: the recipe is in the link itself, behind the #.
    After the first visit the app opens without a network. A newer version waits until you choose it.
    A record that cannot be read is listed in the library and left as it is.
    A browser may clear what it stores. Back up the library regularly.
    On a shared device, everybody who uses this browser sees the same library.

help-scope = What Haulm computes
help-scope-does =
    Doses on dried fibre: each liquid by mass and by volume, and the water.
    The mat: its weight, wet and oven-dry, and its composition.
    The line: line speed, press time, press factor and bottleneck.
    Losses, consumption and cost, per board volume, area, mass and shift.
    The mass balance at every station, solids and water apart.
    Solutions from crystals and premixed glue.
    On the line: pump settings, line check, tanks and changeovers.
    On the bench: weigh sheets for trial boards, series and their effects.
    Binder systems side by side, with the uncertainty of each figure.
help-scope-not = What it does not do
help-scope-does-not =
    It controls nothing. Interlocks and the line’s own limits stay in charge.
    It proves no emission class. That takes a test.
    It does not know your resin. The supplier’s certificate wins over every typical value.
    It uses heat and drying as you enter them; it does not model dryer, blender or press.

help-keys = Keys
help-keys-list =
    Tab — next box or button
    Enter — next box; in a table the box below
    / or Ctrl+K — find a page, a station, a field or a recipe
    Ctrl+S — save the recipe
    Ctrl+Z — undo on the open page, outside a box
    Ctrl+Y — redo on the open page, outside a box
    Esc — close what was opened, cancel renaming

help-ranges = Typical ranges
help-ranges-text = Outside a range Haulm warns and computes all the same: you know the mill. “Unverified” means that nobody has compared the value with a published source.
help-ranges-search = Search quantity, liquid or source
help-ranges-found = { $found } of { $all } ranges
help-quantity = Quantity
help-of = Of
help-typical-range = Typical range
help-line-and-board = Line and board
help-only-binder = as the only binder
help-beside-binder = beside another binder

help-glossary = Glossary
help-terms-general = On every page
help-terms-general-list =
    Target — what is to be reached
    Actual — what was read or measured
    Minimum, Maximum — the lowest and the highest value that is accepted or allowed
    Typical range — where values usually are; outside it there is a warning
    Typical value — a value filled in by the app, until you enter your own
    Required, Optional — whether a box has to be filled in
    Leave blank to … — what holds while the box is blank
    Inputs, Results — what is entered, and what is computed from it
    Error — no result, or a result that does not hold
    Warning — a hazard, a limit or an unusual value; the text says which
    Note — worth knowing, nothing to fix
    Wet — with its water
    Oven-dry (OD) — without any water
    Solids content — solids of a liquid by mass, as on the certificate
    Library — saved recipes, binder systems and trials
    Revision — one save of a recipe, numbered within the recipe
    Release — the mark of the revision that the line is to run
    Export, Import — write to a file, read from a file
    Share link — a link that holds the whole recipe
    Exclude — leave a reading out of the fit without deleting it
    Mixing — making up solutions and glue
help-terms-board = Recipe
help-terms-board-list =
    Dose — liquid or solids per fibre, or per board
    Mat composition — what the mat consists of: fibre, solids and water
    Linear mat weight — mat mass per metre of line
    Press time — how long a point of the mat is in the press
    Press factor — press time per millimetre of board thickness
    Maximum line speed — the speed that the drive or the mill allows
    Dryer capacity — the most fibre that the dryer supplies
    Blender capacity — the most furnish that the blender takes
    Bottleneck — the machine that limits the line
    Moisture loss (blender to former) — water that leaves between blender and former
    Sanding allowance — thickness that sanding removes from a face
    Trim — the edges of the mat that are cut off
    Mass balance check — solids and water in and out of every station, apart
help-terms-line = Line
help-terms-line-list =
    Pump settings — what to set each pump to, now
    Settings table — the settings over a range of belt scale and moisture
    Line check — readings of the running line beside their targets
    Catch test — a pump’s flow measured by catching and weighing
    Catch — one row of a catch test: setting, time, gross, tare, net, flow
    Correction — what is added to a setting so that the flow meets its target
    Prediction interval — where a single new catch lies with 95 % probability
    Confidence interval — where the true mean lies with 95 % confidence
    Capacity — the largest volume of a tank
    Heel — the volume that cannot be pumped out
    Runs empty — when the tank is down to its heel
    Lead time — from order to delivery
    Order by — when to order so that the tank does not run empty
    Overdue by — how long ago that was
    Transition board — a board made between two recipes, to neither of them
help-terms-bench = Bench
help-terms-bench-list =
    Weigh sheet — the masses of one batch, to be weighed and entered
    Overage — more than the mat takes, for losses
    Batch — what goes into the blender at once
    Run — one combination of levels in a series
    Aliases — effects that the plan cannot separate
    No significant effect on … — too small to tell from the scatter
help-terms-compare = Compare
help-terms-compare-list =
    Break-even price — the price at which two systems cost the same
    Sensitivity — results while one input changes over a range
    Operating map — results while two inputs change
    Uncertainty budget — how much each input adds to the uncertainty of a result
    95 % quantile — 95 % of all draws are below it

help-symbols = Letters in the formulas
help-symbols-text = A liquid’s letters carry its place in the recipe as their index: m₁ belongs to the first liquid.
help-inputs = Inputs
help-results = Results
help-of-liquid = { $name }, of a liquid

help-sources = Sources
help-sources-text = Formulas are mass balances and definitions. Units follow NIST SP 811, water IAPWS-95, densities of solutions the CRC Handbook, molar masses IUPAC. Typical values name their source, or say that they are unverified or trade practice. The supplier’s certificate and the mill’s own measurements win over all of them.

help-about = About
help-version = Haulm version { $version }. Haulm computes everything in this browser and sends nothing.
