# Changeover.

change-plan-title = Changeover plan
change-from = From recipe
change-to = To recipe
change-choose = Select recipe
change-as-open = { $name } (as open)
change-plan = Plan changeover
change-choose-both = Select both recipes first.
change-none = No changeover planned.
change-hint = Water is reduced first and raised last, so that the mat is never wetter in between than in either recipe.
change-start = Start now
change-not-started = Mark as not started
change-discard = Discard plan
change-discarded = Plan discarded
change-unsolved = One of the two recipes has no result. Fix it on the Recipe page and plan again.
change-running = Running since { $time }.
change-before-start = Not started. Times count from the start.
change-done-of = { $done } of { $count } steps done.
change-never-above = Mat moisture never above { $moisture }.

# Figures
change-next = Next
change-next-is = Next: { $what }
change-with = with { $others }
change-all-done = All done
change-time-unknown = time unknown
change-new-at-saw = New recipe at the saw
change-transition-board = Transition board
change-mat-length = { $length } of mat
change-lasts = { $time } of production
change-at-saw-from = at the saw from { $time }
change-after = + { $time } min
change-in = in { $time } min
change-due = { $time } min late
change-there = arrived

# Steps
change-steps = Steps
change-nothing = Both recipes run at the same settings.
change-number = #
change-when = When
change-what = What
change-old = Old
change-new = New
change-mat-moisture = Mat moisture
change-why = Why
change-done = Done
change-done-step = Done, step { $number }: { $what }
change-belt-reads = Belt scale then reads { $flow }.
change-cannot = cannot deliver this: { $status }
change-pipe = { $needs } Pipe { $volume }.
change-pipe-time = { $needs } Pipe { $volume }, { $time }.
change-oven-dry = oven-dry { $from } → { $to }
change-with-furnish = with the new furnish at the former
change-press-gap = Press gap
change-press-factor = pressed thickness, or the stops; press factor { $from } → { $to }
change-press-temperature = Press temperature
change-for-binder = Set it for the new binder, as its data sheet and the mill's own record say.
change-saw = Saw
change-transition-from = transition boards from
change-first-board = first board of the new recipe
change-stack-apart = stack them apart
change-measure-first = weigh it and measure its thickness

# Drawing and arrivals
change-axis = Changeover over time
change-drawing = Changeover over time at the stations: old recipe, transition board, new recipe. The table of arrivals has the times.
change-old-recipe = old recipe
change-new-recipe = new recipe
change-numbers-key = numbers: steps
change-arrivals = Arrivals
change-saw-note = transition boards at the saw from { $from }
change-station = Station
change-transition-begins = transition begins
change-cautions = Cautions of the new recipe

# Transport times
change-transport = Transport times
change-blender-former = Blender to former
change-former-press = Former to press
change-press-saw = Press to saw
change-mixing = Mixing
change-step-gap = Between steps
