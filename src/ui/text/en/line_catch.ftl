# Pumps and catch tests.

catch-pumps = Pumps
catch-add-pump = + Pump
catch-no-pumps = No pumps yet. Add one for each liquid and for the water.
catch-incomplete = incomplete
catch-drift = drift
catch-no-test = no catch test
catch-more = Earlier tests and pump setup

# The test
catch-new-test = New catch test
catch-test-of = catch test of { $time }
catch-how = Run the pump at a setting, catch for some seconds, weigh. Three catches at two settings make a valid test.
catch-density = Density
catch-temperature = Temperature
catch-catches = Catches
catch-catch = Catch
catch-setting = Setting
catch-time = Time
catch-gross = Gross
catch-tare = Tare
catch-net = Net
catch-flow = Flow
catch-use = Use
catch-use-catch = Use catch { $number }
catch-new = new catch
catch-delete-test = Delete test
catch-test-deleted = Catch test deleted
catch-carried = Time, tare and density carry down. Three catches or more make a valid test. Catch into a vented vessel; wear eye and hand protection.
catch-time-and-tare = Time { $time }, tare { $tare }.
catch-show-time-and-tare = Show time and tare
catch-pasted = { $count ->
    [one] One number pasted
   *[other] { $count } numbers pasted
}

# Excluded catches
catch-reason = Excluded because
catch-delete = Delete catch
catch-deleted = Catch deleted
catch-far-below = { $by } below the line, { $times } times the scatter.
catch-far-above = { $by } above the line, { $times } times the scatter.
catch-below = { $by } below the line.
catch-above = { $by } above the line.

# What follows
catch-set-to = Set to
catch-set-to-for = Set to, for { $flow }
catch-no-setting = no setting
catch-by-test-of = by the test of { $date }
catch-interval = 95 % interval { $range }
catch-one = one catch, 95 %
catch-slope = Slope
catch-per-setting = { $flow } per { $setting }
catch-intercept = intercept
catch-intercept-head = Intercept
catch-scatter = Scatter, SD
catch-no-line = Two catches at two settings give a first line, three a valid test.

# The drawing
catch-show-chart = Show chart
catch-hide-chart = Hide chart
catch-chart-of = Flow over setting with the line through { $count } catches; below it residuals with the 95 % band. { $set }
catch-flow-in = Flow, { $unit }
catch-residual-in = Residual, { $unit }
catch-setting-in = Setting, { $unit }
catch-band = 95 % band
catch-test-before = test of { $date }
catch-suspect = { $number } far off
catch-excluded = { $number } excluded

# Tests over time
catch-earlier-tests = Earlier tests
catch-earlier-note = of { $pump }, flow at { $setting }
catch-no-valid-test = No valid test yet.
catch-test = Catch test
catch-by = By
catch-count-of = { $used } of { $all }
catch-flow-at = { $unit } at { $setting }
catch-drift-head = Drift
catch-beyond-scatter = beyond the scatter

# Pump setup
catch-setup = Pump setup
catch-pump-name = Name
catch-delivers = Delivers
catch-drive = Setting unit
catch-metering = Setting controls
catch-model = Fitted line
catch-delete-pump = Delete pump
catch-pump-deleted = Pump deleted
catch-cautions = Cautions
