# Die Seite Vergleich.

compare-title = Vergleich
compare-tabs = Vergleich
compare-tab-table = Tabelle
compare-tab-solve = Rückrechnung & Gleichstand
compare-sweep = Empfindlichkeit
compare-map = Betriebskarte
compare-uncertainty = Unsicherheit
compare-report = Bericht
compare-count = { $count } Systeme
compare-no-printer = Dieser Browser kann nicht drucken.
compare-export-csv = Als CSV exportieren
compare-export-xlsx = Als XLSX exportieren
compare-export-svg = Als SVG exportieren
compare-export-png = Als PNG exportieren
compare-exported = „{ $name }“ exportiert.
compare-not-exported = Der Browser hat die Datei nicht gespeichert. In einem anderen Format exportieren. Meldung des Browsers: { $why }
compare-file = Vergleich

# Systeme
compare-open-recipe = { $name } (offenes Rezept)
compare-library = Bibliothek: { $name }
compare-own-system = Eigenes System: { $name }
compare-open-changed = Jetzt ist ein anderes Rezept offen. Der Vergleich behält den gespeicherten Stand, mit dem er angelegt wurde.
compare-system = System
compare-add-system = System hinzufügen…
compare-add = Hinzufügen
compare-remove = Entfernen: { $system }
compare-removed = „{ $system }“ entfernt
compare-no-more = Mehr als sechs Systeme sind nicht möglich. Für ein weiteres zuerst eines entfernen.
compare-find = Nach Namen suchen
compare-none-found = Kein anderer Name enthält diesen Text.
compare-offered = { $shown } von { $all } Rezepten stehen in der Liste. Für andere einen Teil des Namens eingeben.
compare-reference = Referenz
compare-is-reference = · Referenz
compare-is-open = · offenes Rezept
compare-no-result = kein Ergebnis
compare-conditions = Faser, Platte und Linie sind für alle gleich: { $values }
compare-own-conditions-hold = Jedes Rezept hat seine eigene Faser, Platte und Linie.
compare-own-conditions = Rezepte behalten ihre eigene Faser, Platte und Linie
compare-oven-dry = { $flow } atro
compare-and = { $first } und { $last }
compare-figure-of = { $figure }, { $system }

# Die Tabelle
compare-key-figures = Kennzahlen
compare-result = Ergebnis
compare-unit = Einheit
compare-on-one-axis = eine Skala je Zeile
compare-group-water = Wasser
compare-group-press = Presse und Ausstoß
compare-group-cost = Kosten
compare-water-dose = Wasserdosis
compare-water-excess = Wasserüberschuss
compare-over-target = über dem Soll der Mattenfeuchte
compare-fibre-moisture-for-none = Faserfeuchte bei Wasserdosis null
compare-fibre-now = Faser jetzt { $now } (langer Strich)
compare-board-output = Plattenausstoß
compare-press-factor = Pressfaktor
compare-typical-range = üblich { $low } bis { $high } (schattiert)
compare-press-vapour = In der Presse ausgetriebenes Wasser
compare-cost = Kosten: Faser, Flüssigkeiten
compare-cost-with-agent = Kosten mit Trennmittel
compare-agent-used-by = verwendet bei { $systems }
compare-agent-unused = kein System braucht eines
compare-agent-required = nötig
compare-more-than-reference = Differenz zur Referenz
compare-not-drawn = Nicht gezeichnet: Ein Preis fehlt.
compare-mark-too-wet = zu feucht
compare-mark-high = hoch
compare-mark-low = niedrig
compare-mark-over = über der Grenze: { $machine }
compare-prices-missing = Für die Kosten fehlen Preise:
compare-price-of = Preis: { $liquid }
compare-fibre-price-missing = Faserpreis im Rezept eingeben
compare-more = Weitere Ergebnisse
compare-equal = Für alle gleich
compare-equal-note = { $count ->
    [one] eine Zeile: { $first }
   *[other] { $count } Zeilen: { $first }, …
}
compare-all-results = Alle Ergebnisse
compare-all-results-note = { $count } Zeilen, mit Prozentwerten
compare-bottleneck = Engpass
compare-hours = Stunden im Jahr
compare-differing = Abweichende Eingaben
compare-differing-note = Flüssigkeiten, Dosierung, Preise
compare-same = Faser, Platte und Linie sind für alle gleich.
compare-prices = Preise der Flüssigkeiten
compare-prices-hint = Nur für diesen Vergleich. Für eine Flüssigkeit des offenen Rezepts gilt zunächst der Preis aus dem Rezept.
compare-economy = Wirtschaftlichkeit
compare-economy-note = Energie, Fracht, Umstellungen, Marge
compare-emission = Emissionsblatt
compare-emission-note = Molverhältnis, Formaldehyd in der Luft, Grenzwerte je Markt

# Das Fazit
compare-verdict = Fazit
compare-at = bei { $moisture } Faserfeuchte
compare-verdict-cheapest = { $system } ist das günstigste System, das{ $at } fahrbar ist.
compare-verdict-cheapest-priced = Von den Systemen mit Preis ist { $system } das günstigste, das{ $at } fahrbar ist.
compare-verdict-only = Nur { $system } ist{ $at } fahrbar.
compare-verdict-none = Kein System ist{ $at } fahrbar.
compare-verdict-no-cost = { $count ->
    [one] { $systems } ist{ $at } fahrbar; die Kosten sind nicht bekannt.
   *[other] { $systems } sind{ $at } fahrbar; die Kosten sind nicht bekannt.
}
compare-verdict-unpriced = Kosten von { $systems }: Preise fehlen.
compare-verdict-agent = Trennmittel bei { $systems }: noch kein Preis.
compare-other-cost = { $can ->
    [yes] { $system } kostet { $cost } { $way ->
        [less] weniger
       *[more] mehr
    } als { $best }
   *[no] { $system } würde { $cost } { $way ->
        [less] weniger
       *[more] mehr
    } kosten als { $best }
}
compare-other-same = { $system } kostet gleich viel wie { $best }.
compare-other-output = { $can ->
    [yes] und erzeugt { $output } { $way ->
        [less] weniger
       *[more] mehr
    }
   *[no] und { $output } { $way ->
        [less] weniger
       *[more] mehr
    } erzeugen
}
compare-other-way-out = fahrbar bei höchstens { $moisture } Faserfeuchte
compare-other-cannot = ist aber nicht fahrbar

# Rückrechnung und Gleichstand
compare-solve = Rückrechnung
compare-input = Eingabe
compare-target = Sollwert
compare-target-missing = Für eine Antwort einen gültigen Sollwert eingeben.
compare-solve-question = Rückrechnung, { $system }: { $input } → { $figure }
compare-break-even = Gleichstandspreis
compare-break-even-question = Gleichstandspreis, { $first } und { $second }: { $price }
compare-break-even-itself = Zwei verschiedene Systeme wählen.
compare-price = Preis
compare-compared-with = Verglichen mit
compare-moves = Preis ändert sich
compare-moves-in-both = In beiden Systemen
compare-moves-in-first = Nur im ersten System

# Empfindlichkeit
compare-from = Von
compare-to = Bis
compare-over = { $figure } über { $input }
compare-present = jetzt { $value }
compare-below-zero = ⚠ Zu feucht: kein Wasser dosiert
compare-slope = { $system }: Ist „{ $input }“ um { $step } höher, ändert sich „{ $figure }“ um { $change }.
compare-too-wet-with = { $at } mit { $system }
compare-too-wet-from = Oberhalb dieser Werte ist kein Wasser mehr zu dosieren: { $edges }.
compare-level = { $system } verwendet diese Eingabe nicht: Die Kurve ist waagrecht.
compare-no-drawing = Kein System liefert dieses Ergebnis in diesem Bereich. Ein anderes Ergebnis oder einen anderen Bereich wählen.
compare-values = Werte
compare-values-note = 11 Zeilen, alle Systeme
compare-ranked = Eingaben nach Effekt
compare-ranked-note = für je 1 % mehr, Referenz
compare-effect = Änderung für 1 % mehr: { $figure }

# Betriebskarte
compare-across = Waagrecht
compare-up = Senkrecht
compare-map-up = { $up } · Linien: { $figure }
compare-map-now = Rezept { $across }, { $up }
compare-feasible = Fahrbar
compare-cannot-run = Nicht fahrbar
compare-outside-typical = Außerhalb eines üblichen Bereichs
compare-inside = { $system } liegt im fahrbaren Bereich.
compare-outside = ⚠ { $system } liegt außerhalb des fahrbaren Bereichs: { $limits }.
compare-advice = Prüfen: { $advice }.
compare-nearest = Nächster fahrbarer Punkt auf einer Achse: { $across } bei { $up }.
compare-no-nearest = Auf keiner der beiden Achsen liegt in dieser Karte ein fahrbarer Punkt.
compare-on-map = In dieser Karte: { $limits }.
compare-no-map = Zwei verschiedene Eingaben wählen und ein Ergebnis, das das System in deren Bereichen liefert.
compare-map-values-note = jeder achte Punkt
compare-region = Fahrbarer Bereich
compare-region-note = Entlang jeder Achse der Karte; die andere Eingabe wie im Rezept.
compare-from-to = { $from } bis { $to }
compare-none = nirgends

# Unsicherheit
compare-draws = Ziehungen
compare-seed = Startzahl
compare-run = Monte Carlo starten
compare-cancel = Abbrechen
compare-drawing = Ziehungen laufen, { $percent } %
compare-cancelled = Abgebrochen. Die Tabelle ist unverändert.
compare-draws-old = Seit den Ziehungen hat sich eine Eingabe geändert. Monte Carlo neu starten.
compare-not-drawn-yet = Noch keine Ziehungen: nur erste Ordnung.
compare-drawn = { $draws } Ziehungen mit Startzahl { $seed }, { $took } ms.
compare-choose-results = Ergebnisse wählen…
compare-value = Wert
compare-expanded = ± 95 %
compare-first-order = Erste Ordnung
compare-monte-carlo = Monte Carlo
compare-use = Verwenden
compare-difference-of = { $figure }, Differenz
compare-exact = exakt
compare-at-bound = bei { $share } % der Ziehungen am Anschlag
compare-use-either = beide gleichwertig
compare-use-drawn = Monte Carlo: { $why }
compare-use-more-draws = mehr Ziehungen nötig
compare-why-bound = Ergebnis am Anschlag
compare-why-left-out = Ziehungen ausgelassen
compare-why-curved = nicht linear in den Eingaben
compare-why-limits = feste Grenzen überwiegen
compare-why-few-degrees = wenige Freiheitsgrade
compare-show-budget = { $figure }, { $name }: Budget anzeigen
compare-sure-difference = { $figure }: { $name } ist { $value } { $width }. { $sure ->
    [yes] Das ist mehr als die Unsicherheit.
   *[no] Das liegt innerhalb der Unsicherheit.
}
compare-surer-than-either = Die Differenz ist sicherer als jeder der beiden Werte: Für beide Systeme messen dieselben Geräte.
compare-budget = Unsicherheitsbudget
compare-budget-of = Budget: { $figure }, { $name }
compare-improve = Zuerst verbessern: { $source }, { $share } % der Varianz. Mit halber Unsicherheit dort gilt für das Ergebnis ± { $halved } statt ± { $now }.
compare-source = Quelle
compare-share = Varianz­anteil
compare-share-percent = Varianzanteil, %
compare-other-sources = { $count ->
    [one] 1 weitere Quelle
   *[other] { $count } weitere Quellen
}
compare-combined = Zusammen
compare-budget-detail = Standardunsicherheit { $standard }, { $freedom } Freiheitsgrade, Erweiterungsfaktor { $factor } für 95 %.
compare-working = Rechenweg anzeigen
compare-combined-source = JCGM 100:2008, Gleichung 10; Intervalle nach deren Anhang G und nach JCGM 101:2008, 7.7.
compare-sources = Quellen der Unsicherheit
compare-sources-hint = Kursiv: Richtwert. Das Zertifikat des Messgeräts geht vor. Für einen exakten Wert ± leer lassen.
compare-instrument = Herkunft
compare-plus-minus-is = Bedeutung von ±
compare-plus-minus-of = { $input }: ±
compare-plus-minus-is-of = { $input }: Bedeutung von ±
compare-freedom = Freiheitsgrade
compare-freedom-of = { $input }: Freiheitsgrade
compare-share-of = Anteil, { $figure }, %
compare-of-value = { $form }, % vom Wert
compare-percent-of-value = % vom Wert
compare-points = Punkte
compare-points-dry = Punkte atro
compare-points-wet = Punkte feucht
compare-used = verwendet
compare-not-used = nicht verwendet
compare-add-source = Eingabe hinzufügen

# Bericht
compare-report-hint = Wie gedruckt: zuerst die Zusammenfassung, dann Diagramme, Unsicherheit, Eingaben und Quellen.
compare-report-title = Vergleich: { $names }
compare-made = Gedruckt { $time } · Haulm { $version }
compare-drawings = Diagramme
compare-answers = Antworten
compare-limits = Grenzen
compare-sources-of-values = Quellen
compare-no-source = keine Quelle
compare-method-heat = Wärme des Wassers: IAPWS-95.
compare-method-uncertainty = Unsicherheit: JCGM 100:2008 (erste Ordnung) und JCGM 101:2008 (Monte Carlo).
compare-method-start-values = Die Startwerte sind Richtwerte; das Zertifikat des Lieferanten und die Messgeräte des Werks gehen vor.
