# Was auf Papier steht.

paper-printed = Gedruckt { $time } · Haulm { $version }
paper-errors = { $count ->
    [one] 1 Fehler
   *[other] { $count } Fehler
}
paper-warnings = { $count ->
    [one] 1 Warnung
   *[other] { $count } Warnungen
}
paper-results = Ergebnisse:
paper-code = QR-Code dieses Rezepts
paper-code-late = Der QR-Code war noch nicht fertig. Noch einmal drucken, dann ist er dabei.
paper-code-opens = Enthält und öffnet dieses Rezept

# Unterschriften
paper-released-by = Freigegeben von
paper-operator = Anlagenfahrer
paper-date = Datum
paper-date-time = Datum, Uhrzeit
paper-set-by = Eingestellt von
paper-checked-by = Geprüft von
paper-read-by = Abgelesen von
paper-changed-by = Umgestellt von
paper-weighed-by = Gewogen von

# Dosen
paper-liquid = Flüssigkeit
paper-on = Bezug
paper-solids = Feststoff { $solids }
paper-thinning = Verdünnungswasser { $flow }
paper-press-factor = Pressfaktor
paper-output = Ausstoß
paper-at-moisture = bei Faserfeuchte { $moisture }

# Eingaben
paper-inputs-typed = Eingegebene Werte
paper-inputs-entered = Eingaben, wie eingegeben
paper-typical = Richtwerte, nicht bestätigt
paper-no-allowance = Nicht berücksichtigt:
paper-more-typed = Außerdem eingegeben:
paper-blank = leer

# Nicht gültig
paper-not-valid = UNGÜLTIG
paper-cannot-be-computed = Das lässt sich nicht berechnen.
paper-do-not-run = Nicht fahren. Keine Werte von einem älteren Blatt verwenden.
paper-input = Eingabe
paper-entered = Eingegeben
paper-fix = Fehler und Abhilfe
paper-no-signature = Keine Unterschrift. Ein ungültiges Blatt wird nicht freigegeben.
paper-last-valid = Zuletzt gespeichert: { $revision }. In der Bibliothek öffnen.
paper-nothing = Nichts zu drucken
paper-no-pumps-sheet = Für das Auslitern gibt es kein Blatt. Pumpeneinstellungen drucken: Dort stehen Datum und geprüfter Bereich jeder ausgeliterten Pumpe.
paper-no-readings = Noch keine Linienprüfung. Bandwaage und Feuchte im Reiter Linienprüfung eingeben.
paper-no-plan = Keine Umstellung geplant. Im Reiter Umstellung planen.
paper-end-not-valid = Eines der beiden Rezepte hat einen Fehler. Auf der Seite Rezept beheben und die Umstellung neu planen.
paper-no-tanks = Noch keine Tanks. Im Reiter Tanks einen anlegen.

# Pumpeneinstellungen
paper-only-at-belt = Nur bei Bandwaage, feucht
paper-and-moisture = und Faserfeuchte
paper-cannot = Geht nicht: { $beyond }
paper-nozzles = Düsen { $count } × { $flow }
paper-with-thinning = { $flow } mit Verdünnungswasser
paper-interval = 95-%-Bereich { $interval }
paper-catch-test = Ausgelitert { $date }
paper-no-catch-test = Nicht ausgelitert
paper-drift = Drift { $change } seit { $date }
paper-drift-within = Drift { $change } seit { $date }, innerhalb der Streuung
paper-drift-unknown = Drift { $change } seit { $date }, zu wenige Proben
paper-bar-key = Balken: Kasten geprüft, Linie zulässig, Marke diese Einstellung.

# Einstelltabelle
paper-present-point = Jetziger Betriebspunkt, { $flow } bei { $moisture }
paper-untested = Außerhalb der geprüften Einstellungen: zuerst auslitern
paper-outside-allowed = Geht nicht: außerhalb des Zulässigen
paper-tested-on = { $pump }: geprüft { $range }, { $date }

paper-belt-wet = Bandwaage, feucht
paper-oven-dry = Faser, atro

# Linienprüfung
paper-read-at = abgelesen { $time }
paper-figure = Größe
paper-target = Soll
paper-actual = Ist
paper-deviation = Abweichung
paper-tolerance = Toleranz
paper-status = Status
paper-within = i. O.
paper-outside = außerhalb
paper-not-read = nicht abgelesen
paper-set-now = Jetzige Einstellung
paper-do = Neue Einstellung
paper-former = Streumaschine: Mattengewicht um { $change } ändern.
paper-former-or-speed = Streumaschine: Mattengewicht um { $change } ändern oder Bandgeschwindigkeit von { $now } auf { $then }.
paper-readings = Ablesungen:

# Umstellung
paper-started = Begonnen { $time }
paper-not-started = Nicht begonnen: Zeiten zählen ab Beginn
paper-when = Zeit
paper-what = Schritt
paper-done = Erledigt
paper-arrivals = Neue beleimte Fasern kommen an
paper-station = Station
paper-begins = Ab
paper-complete = Vollständig
paper-mat-then = Mattenfeuchte dann { $moisture }.
paper-transition-board = Übergangsplatte:

# Tanks
paper-tanks = Tanks
paper-tank = Tank
paper-capacity = fasst { $volume }
paper-in-tank = Im Tank
paper-usable = Nutzbar
paper-use-now = Verbrauch jetzt
paper-runs-empty = Leer um
paper-order-by = Bestellen bis
paper-still-fits = Passt noch
paper-per-shift = { $mass } je Schicht
paper-overdue = Überfällig seit { $time }
paper-tank-unknown = Inhalt nicht bekannt, oder die Flüssigkeit kommt in diesem Rezept nicht vor.
paper-at-rate = Beim Verbrauch dieses Rezepts, ab der Ablesung jedes Tanks.

# Sicherheitshinweise, jeder in einer Zeile
paper-caution-steam = Matte zu feucht: Dampf kann die Platte sprengen. Nicht am Auslauf stehen.
paper-caution-isocyanate = Isocyanat: kein Nebel, kein Hautkontakt. Nie zusammen mit Wasser verschließen.
paper-caution-isocyanate-tank = Isocyanattanks: unter trockener Luft oder Stickstoff halten.
paper-caution-emulsion = Isocyanat nur an der Düse emulgieren. Bei jedem Stillstand spülen.
paper-caution-isocyanate-catch = Isocyanat auslitern: trockenes offenes Gefäß, Atemschutz, Korbbrille, Handschuhe.
paper-caution-release-agent = Isocyanat klebt an heißem Metall: zuerst Trennmittel auftragen.
paper-caution-formaldehyde = Formaldehyd: an Harztanks, Beleimmischer und Presse absaugen.
paper-caution-press-vapour = Dämpfe der Heißpresse: unter Absaugung pressen, der Dampfwolke fernbleiben.
paper-caution-bench-spray = Im geschlossenen Beleimmischer oder unter Absaugung sprühen.
paper-caution-alkaline = PF-Harz verätzt Haut und Augen: Augen- und Handschutz tragen.
paper-caution-ammonia = Ammoniumsalz in PF-Harz setzt Ammoniak frei: niemals mischen.
paper-caution-acid-cure = Leimflotte mit Härter: Topfzeit, erwärmt sich. Nur den Bedarf ansetzen.
paper-caution-oxidiser = Ammoniumnitrat ist brandfördernd: von Stroh, Staub und Wachs fernhalten.
paper-caution-corrosion = Ammoniumchlorid greift Stahl und Kupfer an: auf Korrosion prüfen.
paper-caution-cooling = Salz kühlt das Wasser ab: prüfen, ob alles gelöst ist.
paper-caution-dust = Stroh- und Holzstaub kann explodieren: absaugen, niemals mit Luft aufwirbeln.
paper-caution-damp-bales = Feuchte Ballen erhitzen sich und können in Brand geraten: getrennt lagern.
paper-caution-high-pressure = Hochdruckstrahl dringt durch die Haut: niemals auf Menschen richten.
paper-caution-press = Die Presse quetscht und verbrennt: Hände aus dem Pressspalt heraushalten.
paper-caution-catch-test = Auslitern: vorher und nachher absperren und drucklos machen.
paper-caution-advice = Haulm berät. Verriegelungen, örtliche Vorschriften, Sicherheitsdatenblätter entscheiden.

# Labor
paper-trial-untitled = Versuch ohne Namen
paper-weigh-sheet = Wägezettel
paper-batch = Ansatz { $batch } von { $batches }
paper-add-in-order = In dieser Reihenfolge zugeben
paper-target-mass = Soll, { $unit }
paper-actual-mass = Ist, { $unit }
paper-spray-time = Sprühen, min:s
paper-time = Uhrzeit
paper-batch-total = Ansatz
paper-mat = Matte
paper-furnish-for-mat = Beleimte Faser je Matte, feucht
paper-furnish-laid = Eingestreute Masse, { $unit }
paper-mat-moisture = Feuchte, % atro
paper-mat-height = Höhe, mm
paper-press = Presse
paper-stops = Distanzleisten
paper-press-time = Presszeit
paper-press-time-actual = Presszeit, Ist, min:s
paper-plate-temperature = Pressplatten, °C
paper-board = Platte
paper-raw-board = Rohplatte, erwartet
paper-board-mass = Masse, { $unit }
paper-board-thickness = Dicke, mm
paper-remarks = Bemerkungen
paper-series-plan = Plan der Versuchsreihe
paper-no-series = Der Versuch hat keine Versuchsreihe.
paper-planned-by = Geplant von
paper-trial-report = Versuchsbericht
paper-no-boards = Noch keine Platte hat Ergebnisse.
paper-by-combination = Ergebnisse je Kombination
paper-by-run = Ergebnisse je Lauf
paper-reported-by = Erstellt von
paper-deviation-between = Std.-Abw. zwischen Platten

# Ansetzkarte
paper-mixing-card = Ansetzkarte
paper-salt = Salz, trockene und reine Kristalle
paper-by-mass = { $share } nach Masse
