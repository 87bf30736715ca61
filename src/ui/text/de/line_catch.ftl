# Pumpen und Auslitern.

catch-pumps = Pumpen
catch-add-pump = + Pumpe
catch-no-pumps = Noch keine Pumpen. Für jede Flüssigkeit und für das Wasser je eine anlegen.
catch-incomplete = unvollständig
catch-drift = Drift
catch-no-test = nicht ausgelitert
catch-more = Früheres Auslitern und Pumpendaten

# Das Auslitern
catch-new-test = Neu auslitern
catch-test-of = Auslitern: { $time }
catch-how = Pumpe bei einer Einstellung laufen lassen, einige Sekunden auffangen, wiegen. Gültig ab drei Proben bei zwei Einstellungen.
catch-density = Dichte
catch-temperature = Temperatur
catch-catches = Proben
catch-catch = Probe
catch-setting = Ein­stellung
catch-time = Zeit
catch-gross = Brutto
catch-tare = Tara
catch-net = Netto
catch-flow = Durchfluss
catch-use = Gilt
catch-use-catch = Probe { $number } verwenden
catch-new = neue Probe
catch-delete-test = Auslitern löschen
catch-test-deleted = Auslitern gelöscht
catch-carried = Zeit, Tara und Dichte gelten für die folgenden Proben weiter. Gültig ab drei Proben. In ein belüftetes Gefäß auffangen; Augen- und Handschutz tragen.
catch-time-and-tare = Zeit { $time }, Tara { $tare }.
catch-show-time-and-tare = Zeit und Tara anzeigen
catch-pasted = { $count ->
    [one] Eine Zahl eingefügt
   *[other] { $count } Zahlen eingefügt
}

# Ausgeschlossene Proben
catch-reason = Ausgeschlossen, weil
catch-delete = Probe löschen
catch-deleted = Probe gelöscht
catch-far-below = { $by } unter der Geraden, das { $times }-Fache der Streuung.
catch-far-above = { $by } über der Geraden, das { $times }-Fache der Streuung.
catch-below = { $by } unter der Geraden.
catch-above = { $by } über der Geraden.

# Was daraus folgt
catch-set-to = Einstellung
catch-set-to-for = Einstellung für { $flow }
catch-no-setting = keine Einstellung
catch-by-test-of = nach dem Auslitern vom { $date }
catch-interval = 95-%-Bereich { $range }
catch-one = einzelne Probe, 95 %
catch-slope = Steigung
catch-per-setting = { $flow } je { $setting }
catch-intercept = Achsenabschnitt
catch-intercept-head = Achsenabschnitt
catch-scatter = Streuung (Std.-Abw.)
catch-no-line = Zwei Proben bei zwei Einstellungen geben eine erste Gerade; gültig ist das Auslitern ab drei.

# Das Diagramm
catch-show-chart = Diagramm anzeigen
catch-hide-chart = Diagramm ausblenden
catch-chart-of = Durchfluss über der Einstellung mit der Geraden durch { $count } Proben; darunter die Residuen mit dem 95-%-Band. { $set }
catch-flow-in = Durchfluss, { $unit }
catch-residual-in = Residuum, { $unit }
catch-setting-in = Einstellung, { $unit }
catch-band = 95-%-Band
catch-test-before = Auslitern vom { $date }
catch-suspect = { $number } weit daneben
catch-excluded = { $number } ausgeschlossen

# Auslitern im Lauf der Zeit
catch-earlier-tests = Früheres Auslitern
catch-earlier-note = { $pump }, Durchfluss bei { $setting }
catch-no-valid-test = Noch kein gültiges Auslitern.
catch-test = Auslitern
catch-by = Von
catch-count-of = { $used } von { $all }
catch-flow-at = { $unit } bei { $setting }
catch-drift-head = Drift
catch-beyond-scatter = mehr als die Streuung

# Pumpendaten
catch-setup = Pumpendaten
catch-pump-name = Name
catch-delivers = Fördert
catch-drive = Skala des Antriebs
catch-metering = Einstellung bestimmt
catch-model = Ausgleichsgerade
catch-delete-pump = Pumpe löschen
catch-pump-deleted = Pumpe gelöscht
catch-cautions = Sicherheitshinweise
