# Der Reiter Linienprüfung.

check-read-at = Abgelesen
check-save = Protokollieren
check-reading = Ablesung
check-target = Soll
check-actual = Ist
check-deviation = Abwei­chung
check-strip = −Tol. │ +Tol.
check-tolerance = Toleranz
check-status = Status
check-reconciled = Ausgeglichen
check-half-interval = ± 95 %
check-now = Jetzt
check-new-setting = Neue Einstellung
check-by-mass = Nach Masse
check-by-volume = Nach Volumen
check-points = Punkte
check-oven-dry = atro
check-of-tolerance = { $deviation }, Toleranz { $tolerance }
check-pasted = { $count ->
    [one] Eine Zahl eingefügt
   *[other] { $count } Zahlen eingefügt
}

# Status und neue Einstellung
check-ok = i. O.
check-ok-by-setting = i. O. nach Einst.
check-low = niedrig
check-high = hoch
check-not-read = fehlt
check-keep = lassen
check-keep-former = Streu­maschine: lassen
check-former = Streu­maschine { $change }
check-or-former = statt Streu­maschine
check-stop = abstellen
check-catch-test-first = erst auslitern
check-cannot = geht nicht
check-enter-now = erst „Jetzt“ eingeben
check-readings-first = erst Ablesung prüfen
check-cautions = Sicherheitshinweise

# Die Warnungen
check-nothing-read = Bandwaage und Faserfeuchte eingeben.
check-all-within = { $read } von { $read } Ablesungen innerhalb der Toleranz.
check-outside = { $out } von { $read } außerhalb der Toleranz: { $which }.
check-out-of = { $out } von { $read } außerhalb
check-of-pump = { $pump }: { $action }
check-computed-outside = Berechnet, außerhalb der Toleranz: { $which }.

# Zum Aufklappen
check-reconciliation = Ausgleichung der Ablesungen
check-nothing-reconciled = noch nichts abgelesen
check-test = { $count } Ablesungen gegen die Massenbilanzen: χ² { $chi }, Grenze { $limit }
check-test-without = ohne die verdächtigen { $chi }, Grenze { $limit }
check-unchecked = nicht gegengeprüft: { $which }
check-as-read = Abgelesen
check-misfit = Abweichung in σ
check-used = verwendet
check-left-out = ⚠ verdächtig, weggelassen
check-doubted = ⚠ verdächtig
check-not-checked = nicht gegengeprüft
check-computed = Dosierungen und Korrekturen
check-tolerances = Toleranzen und Unsicherheiten
check-tolerances-note = Dosis ± { $dose } %, Feuchte ± { $moisture } Punkte, Mattengewicht ± { $mat } %, Bandgeschwindigkeit ± { $speed } %
check-uncertainties = Unsicherheiten
check-uncertainties-hint = Gemeint sind Standardunsicherheiten; leer lassen für das übliche Messgerät.

# Das Protokoll
check-log = Prüfprotokoll
check-log-empty = Noch keine Prüfung im Protokoll.
check-nothing-to-save = Nichts zu speichern. Zuerst Bandwaage und Faserfeuchte eingeben.
check-saved = Prüfung im Protokoll gespeichert
check-not-saved = nicht gespeichert
check-by = Von
check-out = Außer­halb
check-remark = Bemerkung
check-all = Alle { $count } Prüfungen
check-fewer = Weniger Prüfungen
check-entry = Prüfung { $time }
check-within = Alles Abgelesene lag innerhalb seiner Toleranz.
check-were-outside = Außerhalb der Toleranz: { $which }.
check-strike-out = Streichen
check-restore = Wiederherstellen
check-struck-out = Gestrichen: zählt nicht für die Eingriffsgrenzen.
check-struck = Prüfung gestrichen
check-restored = Prüfung wiederhergestellt
check-export-log = Protokoll exportieren (CSV)
check-export = Prüfung exportieren
check-flow-of = { $pump }, Durchfluss
check-dose-of = Dosis, { $liquid }
check-charted = Größe in der Regelkarte
check-chart-needs = Für Eingriffsgrenzen sind zwei Prüfungen nötig.
check-chart-name = Regelkarte, { $name }: { $count } Prüfungen, die letzte { $last }; außerhalb der Grenzen: { $outside }
check-key-tolerance = Toleranz ± { $tolerance }
check-key-limits = Eingriffsgrenzen aus den ersten { $count } Prüfungen
check-upper-limit = obere Grenze { $value }
check-mean = Mittelwert { $value }
check-lower-limit = untere Grenze { $value }
check-outside-limits = { $count } außerhalb der Eingriffsgrenzen: klären, was damals anders war.
check-unsettled-limits = Grenzen aus weniger als { $count } Prüfungen verschieben sich noch deutlich.
check-chart-source = Grenzen: Mittelwert ± 2,66 mittlere gleitende Spannweiten, die Einzelwertkarte der ISO 7870-2 (Faktor ungeprüft).

# Die Zeitraumbilanz
check-no-period = Noch kein Zeitraum begonnen.
check-since = seit { $time }
check-period-hint = Peilungen, Lieferungen und Summen einer Schicht oder einer Woche eingeben, alle für dieselben Stunden.
check-start-period = Zeitraum beginnen
check-period-started = Neuer Zeitraum begonnen. Die letzten Peilungen sind die neuen Anfangswerte.
check-period-incomplete = Alle erforderlichen Werte eingeben, dann erscheint die Bilanz.
check-material = Stoff
check-unaccounted = Bilanzlücke
check-unaccounted-hint = Flüssigkeiten: Abgang aus den Tanks minus Summe des Durchflussmessers. Faser: Bandwaage und Flüssigkeiten minus Rohplatten.
check-fibre-oven-dry = Faser, atro
check-beyond-chance = mehr als Zufall
check-within-chance = kann Zufall sein
