# Cautions and limits of exposure and emission.

# Cautions: what each is about, what can happen and what to do
caution-steam = Steam pressure
    .text = The mat is wetter than its typical range. Steam that cannot leave can burst the board as it leaves the press. Stand clear of the outfeed, and dry the fibre or lower the water before you run.
caution-isocyanate = Isocyanate
    .text = pMDI and other isocyanates can sensitise airways and skin, for life. Keep vapour, mist and splashes away from people. Keep water out of feed lines and drums. Never seal a container that water got into: it makes carbon dioxide, and the pressure can burst it.
caution-isocyanate-tank = Isocyanate tanks
    .text = Keep pMDI tanks under dry air or nitrogen. Moist air makes crust and carbon dioxide in the tank, and the crust blocks filters and nozzles.
caution-emulsion = Emulsified isocyanate
    .text = pMDI emulsified with water is short-lived: it reacts in the pipe, gives off carbon dioxide and sets. Emulsify at the nozzle only, and flush mixer and nozzles at every stop.
caution-isocyanate-catch = Catch test of an isocyanate
    .text = Catch into a dry, open vessel. Wear a respirator, eye protection and gloves, and have the neutraliser at hand. Neutralise what you caught in the open; never seal it in.
caution-release-agent = Release agent
    .text = Isocyanates stick to hot metal. Faces, belts and platens need a release agent, or the mat bonds to them; this recipe names none.
caution-formaldehyde = Formaldehyde
    .text = The resin gives off formaldehyde when it is stored, sprayed and pressed, and so does the board. Extract it at its source. An emission class is proved by testing, not by this tool.
caution-press-vapour = Hot-press vapour
    .text = A hot press gives off steam with formaldehyde, isocyanate or other vapours of the binder. Press under extraction, and stay out of the plume when the press opens. For vapours without a limit here see the local limit.
caution-bench-spray = Spraying at the bench
    .text = A spray is breathed in more easily than a liquid. Spray in a closed blender or under extraction, wear a respirator for isocyanates, and let the mist settle before you open.
caution-alkaline = Strongly alkaline
    .text = PF resin is strongly alkaline and burns skin and eyes. Wear eye and hand protection, and keep an eye wash within reach.
caution-ammonia = Ammonia
    .text = An ammonium salt with alkaline PF resin gives off ammonia, which burns eyes and airways. Never mix the two in a tank, drain or blender that is not extracted. For ammonia see the local limit.
caution-acid-cure = Acid cure
    .text = A hardener salt makes resin cure. A mixed batch has a pot life, shorter the warmer it is, and gives off heat as it sets. Mix only what is sprayed within it, and never pour hardener back into a resin tank.
caution-oxidiser = Oxidiser
    .text = Ammonium nitrate is an oxidiser. Keep crystals and spills away from straw, dust, wax and other fuel, and let no solution dry up on them.
caution-corrosion = Corrosion
    .text = Ammonium chloride corrodes steel, stainless steel included, and copper alloys. Check tanks, pumps and press for attack.
caution-cooling = Cooling as it dissolves
    .text = Urea, ammonium chloride and ammonium nitrate cool the water strongly as they dissolve. Salt may drop out again and block the pipe. Use warm water, stir, and check that all is dissolved at the coldest temperature.
caution-dust = Straw and wood dust
    .text = Dust of straw and wood can explode. Straw dust also carries mould and silica that harm the lungs. Extract it, wear a respirator where it is in the air, and never sweep it or blow it about. Spraying and conveying systems are under the mill's explosion-protection rules. For dust see the local limit.
caution-damp-bales = Damp bales
    .text = Damp straw bales heat up by themselves and can catch fire days later. Measure moisture and temperature on delivery, and store damp bales apart.
caution-high-pressure = High-pressure spray
    .text = A spray under high pressure goes through skin and injects the liquid. Never point a nozzle at anyone or feel for a leak by hand. An injection wound needs a hospital at once, even if it looks small.
caution-press = Hot press
    .text = The press crushes and burns. Keep hands out of the gap, use the guards and the stop, and let no one work in it before it is locked out and cold.
caution-catch-test = Catch test
    .text = Isolate and depressurise the line before you open it. Fit the sampling hose, secure it in a vented vessel, and only then let the pump run. Isolate and depressurise again before you take it off. Wear eye and hand protection.
caution-advice = Advice only
    .text = Haulm advises. It does not control: interlocks and the line's own limits stay in charge.

# A limit with its regulation
caution-limit = { $subject }, { $region } ({ $regulation }): { $values }. Check the current local limit.
caution-limit-training = Use of diisocyanates, { $region } ({ $regulation }): all users must be trained before they use them. Check the current local limit.

# What a limit is of
caution-limit-diisocyanates = Diisocyanates in air, as NCO
caution-limit-mdi = MDI in air
caution-limit-formaldehyde-at-work = Formaldehyde in air
caution-limit-formaldehyde-released = Formaldehyde released by board

# Where it applies
caution-limit-eu = EU
caution-limit-us = US

# One value of a limit
caution-limit-value = { $measure } { $limit }
caution-limit-value-from = { $measure } { $limit } from { $day }
caution-limit-value-until = { $measure } { $limit } until { $day }
caution-limit-value-after = { $measure } { $limit } after { $day }
# The value and the same in a second unit.
caution-limit-both-units = { $limit } ({ $also })

# What a value is measured as, or on
caution-limit-shift = 8 h mean
caution-limit-short-term = short-term
caution-limit-ceiling = ceiling
caution-limit-articles = wood-based articles and furniture
caution-limit-particleboard = particleboard
caution-limit-mdf = MDF
caution-limit-thin-mdf = thin MDF
caution-limit-hardwood-plywood = hardwood plywood

# A day; the month is its number
caution-limit-day = { $day } { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
} { $year }
