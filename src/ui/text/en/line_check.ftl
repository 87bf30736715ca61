# The tab Line check.

check-read-at = Read at
check-save = Save to log
check-reading = Reading
check-target = Target
check-actual = Actual
check-deviation = Deviation
check-strip = −tol │ +tol
check-tolerance = Tolerance
check-status = Status
check-reconciled = Reconciled
check-half-interval = ± 95 %
check-now = Now
check-new-setting = New setting
check-by-mass = By mass
check-by-volume = By volume
check-points = points
check-oven-dry = OD
check-of-tolerance = { $deviation }, tolerance { $tolerance }
check-pasted = { $count ->
    [one] One number pasted
   *[other] { $count } numbers pasted
}

# Status and new setting
check-ok = OK
check-ok-by-setting = OK, by setting
check-low = low
check-high = high
check-not-read = not read
check-keep = keep
check-keep-former = former: keep
check-former = former { $change }
check-or-former = instead of former
check-stop = stop
check-catch-test-first = catch test first
check-cannot = cannot
check-enter-now = enter “Now” first
check-readings-first = check readings first
check-cautions = Cautions

# The warning slot
check-nothing-read = Enter belt scale and fibre moisture.
check-all-within = { $read } of { $read } readings within tolerance.
check-outside = { $out } of { $read } out of tolerance: { $which }.
check-out-of = { $out } of { $read } out
check-of-pump = { $pump }: { $action }
check-computed-outside = Computed, out of tolerance: { $which }.

# Folds
check-reconciliation = Data reconciliation
check-nothing-reconciled = nothing read yet
check-test = { $count } readings against the mass balances: χ² { $chi }, limit { $limit }
check-test-without = without suspect readings { $chi }, limit { $limit }
check-unchecked = not cross-checked: { $which }
check-as-read = As read
check-misfit = Misfit in σ
check-used = used
check-left-out = ⚠ suspect, left out
check-doubted = ⚠ suspect
check-not-checked = not cross-checked
check-computed = Doses and corrections
check-tolerances = Tolerances and uncertainties
check-tolerances-note = doses ± { $dose } %, moistures ± { $moisture } points, mat weight ± { $mat } %, line speed ± { $speed } %
check-uncertainties = Uncertainties
check-uncertainties-hint = Uncertainties are standard; leave blank for the usual instrument.

# The log
check-log = Log of checks
check-log-empty = No checks logged yet.
check-nothing-to-save = Nothing to save: enter belt scale and fibre moisture first.
check-saved = Check saved to the log
check-not-saved = not saved
check-by = By
check-out = Out
check-remark = Remark
check-all = All { $count } checks
check-fewer = Fewer checks
check-entry = Check of { $time }
check-within = Everything that was read was within its tolerance.
check-were-outside = Out of tolerance: { $which }.
check-strike-out = Strike out
check-restore = Restore
check-struck-out = Struck out: not in the control limits.
check-struck = Check struck out
check-restored = Check restored
check-export-log = Export log (CSV)
check-export = Export check
check-flow-of = { $pump }, flow
check-dose-of = Dose, { $liquid }
check-charted = Figure charted
check-chart-needs = Control limits need two checks.
check-chart-name = Control chart, { $name }: { $count } checks, the last one { $last }; outside the limits: { $outside }
check-key-tolerance = tolerance ± { $tolerance }
check-key-limits = control limits from the first { $count } checks
check-upper-limit = upper limit { $value }
check-mean = mean { $value }
check-lower-limit = lower limit { $value }
check-outside-limits = { $count } outside the control limits: find out what was different then.
check-unsettled-limits = Limits from fewer than { $count } checks still move a good deal.
check-chart-source = Limits: mean ± 2.66 mean moving ranges, the chart for individuals of ISO 7870-2 (factor unverified).

# The period balance
check-no-period = No period started yet.
check-since = since { $time }
check-period-hint = Enter dips, deliveries and totals of one shift or one week, all of the same hours.
check-start-period = Start period
check-period-started = New period started. The last dips are its first ones.
check-period-incomplete = Enter all required values to see the balance.
check-material = Material
check-unaccounted = Unaccounted for
check-unaccounted-hint = Liquids: what left the tanks less the flow meter total. Fibre: belt scale and liquids less the raw boards.
check-fibre-oven-dry = Fibre, oven-dry
check-beyond-chance = beyond chance
check-within-chance = within chance
