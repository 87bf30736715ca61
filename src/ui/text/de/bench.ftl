# Die Seite Labor.

bench-title = Labor
bench-weigh-sheet = Wägezettel
bench-series = Versuchsreihe
bench-boards-made = Platten
bench-effects = Effekte

# Kopf
bench-name = Versuchsname
bench-untitled = Versuch ohne Namen
bench-of-recipe = Rezept: { $recipe }
bench-unsaved-recipe = { $name }, nicht gespeichert
bench-save = Versuch speichern
bench-new = Neuer Versuch
bench-not-saved = Noch nicht gespeichert
bench-saved-at = Gespeichert: { $time }
bench-unsaved-changes = Ungespeicherte Änderungen
bench-export-trial = Versuch exportieren (JSON)
bench-export-boards = Platten exportieren (CSV)
bench-export-results = Ergebnisse exportieren (CSV)
bench-export-readings = Messwerte exportieren (CSV)
bench-export-sheets = Wägezettel exportieren (CSV)
bench-recipe-kept = Das Rezept wurde seit Beginn dieses Versuchs geändert. Der Versuch rechnet mit seinem eigenen weiter.
bench-use-recipe = Aktuelles Rezept übernehmen
bench-recipe-used = Aktuelles Rezept übernommen
bench-example = Beispieldaten.
bench-example-hint = Matte, Beleimmischer und Sprühstrom stammen aus einem erfundenen Labor.
bench-start-blank = Mit leerem Zettel beginnen
bench-blanked = Wägezettel geleert

# Eingaben
bench-inputs = Matte, Platte und Presse
bench-mat = Matte
bench-length = Länge
bench-width = Breite
bench-boards = Platten
bench-board = Platte
bench-thickness = Dicke
bench-pressed-thickness = Pressdicke
bench-thickness-way = Eingegebene Dicke
bench-density = Rohdichte
bench-moisture = Feuchte
bench-moistures = Feuchten
bench-fibre = Faser
bench-press = Presse
bench-press-factor = Pressfaktor
bench-recipe = aus Rezept
bench-recipe-has = Rezept { $value }
bench-changed = geändert
bench-reset = Zurücksetzen
bench-reset-of = { $name }: auf den Wert des Rezepts zurücksetzen

# Lauf und Ansatz
bench-run = Lauf
bench-run-of = { $run } von { $count }
bench-run-number = Lauf { $run }
bench-base-sheet = Grundzettel
bench-batch = Ansatz
bench-batch-of = Ansatz { $batch } von { $count }
bench-clear-batch = Ansatz { $batch }: Istwerte löschen
bench-batch-cleared = Istwerte gelöscht
bench-enter-hint = Enter: zur nächsten Zeile

# Tabelle
bench-fill-in = Länge und Breite der Matte eingeben, dann erscheint der Wägezettel.
bench-line = Material
bench-target = Soll
bench-volume = Volumen
bench-spray = Sprühen
bench-minutes = min:s
bench-actual = IST
bench-actual-of = { $name }, Ist
bench-to-add = Zugeben
bench-dose-given = Istdosis
bench-target-dose = Solldosis
bench-to-mat-moisture = auf Mattenfeuchte { $moisture }
bench-done = fertig
bench-check = prüfen
bench-slip = { $planned } geplant, { $entered } eingegeben: { $meant } gemeint?
bench-swapped = { $planned } geplant, { $entered } eingegeben. Das passt zu „{ $other }“: beide vertauscht?
bench-far-off = { $planned } geplant, { $entered } eingegeben: Stimmt das?
bench-keep = { $mass } behalten
bench-swap = Beide tauschen
bench-over = { $mass } zu viel
bench-scale-rest = Rest anpassen, × { $factor }
bench-scale-all = Alle anderen anpassen, × { $factor }
bench-keep-targets = Sollwerte behalten
bench-accept-dose = { $dose } akzeptieren
bench-batch-now = { $mass } bei × { $factor }
bench-blender-takes = Beleimmischer fasst { $mass }
bench-complete = Alles gewogen. Mattenfeuchte:
bench-rounded-note = Die exakte Masse, auf die Teilung der Waage gerundet.
bench-next = Weiter: { $name } { $mass }

# Ergebnisse
bench-results = Ergebnisse
bench-furnish-one-mat = Beleimte Faser je Matte, feucht
bench-mat-weight = { $wet } feucht · { $dry } atro
bench-stops = Distanzleisten
bench-no-sanding = keine Schleifzugabe
bench-sanding = Schleifzugabe { $thickness }
bench-press-time = Presszeit
bench-no-press-factor = kein Pressfaktor
bench-board-untrimmed = Platte, unbesäumt
bench-board-at = bei { $moisture }, { $density }
bench-more = Weiteres zum Wägezettel
bench-all-results = Alle Ergebnisse
bench-all-results-note = exakte Massen, Dosen nach Rundung, Faktoren der Mehreinwaage
bench-rounding = Rundung auf die Teilung der Waage
bench-cautions = Sicherheitshinweise

# Laboreinrichtung
bench-lab-setup = Laboreinrichtung
bench-note-balances = Waagen { $fibre } und { $liquids }
bench-note-blender = Beleimmischer { $mass } feucht
bench-note-overage = Mehreinwaage { $share }
bench-note-wall-loss = Wandverlust { $share }
bench-note-spray = Sprühstrom { $flow }
bench-note-all-trials = für alle Versuche gleich
bench-blender = Beleimmischer und Mehreinwaage
bench-capacity = Fassungs­vermögen, feucht
bench-overage = Mehreinwaage
bench-overage-of = Mehreinwaage bezogen auf
bench-overage-on = Mehreinwaage gilt für
bench-wall-loss = Wandverlust
bench-drying-loss = Feuchteverlust bis Presse, Punkte
bench-no-limit = leer: keine Grenze
bench-no-loss = leer: kein Verlust
bench-spray-way = Angabe des Sprühstroms
bench-spray-flow = Sprühstrom
bench-no-spray-time = leer: keine Sprühzeit
bench-water-place = Wasser sprühen
bench-balances = Waagen
bench-fibre-step = Teilung, Faser
bench-liquid-step = Teilung, Flüssigkeiten
bench-fibre-minimum = Minimum, Faser
bench-liquid-minimum = Minimum, Flüssigkeiten
bench-no-rounding = leer: keine Rundung
bench-tolerance = Toleranz nach oben
bench-one-step = leer: eine Teilung

# Rückwaage der beleimten Faser
bench-recovered = Rückwaage, beleimte Faser
bench-recovered-note = tatsächlicher Beleimverlust, Masse für eine Matte
bench-blending-loss = Beleimverlust, atro
bench-mass-to-lay = Beleimte Faser je Matte, bei gemessener Feuchte

# Gespeicherte Versuche
bench-notes = Notizen
bench-note = Notiz
bench-trials = Gespeicherte Versuche
bench-trials-saved = { $count ->
    [0] noch keine
    [one] einer
   *[other] { $count }
}
bench-no-trials = Noch keine Versuche gespeichert.
bench-recipe-head = Rezept
bench-saved-head = Gespeichert
bench-open = Öffnen
bench-open-named = „{ $name }“ öffnen
bench-delete = Löschen
bench-delete-named = „{ $name }“ löschen
bench-import = Versuch importieren
bench-unreadable = Nicht lesbare Datensätze von Versuchen; sie bleiben, wie sie sind:
