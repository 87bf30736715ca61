# Was der Vergleich sagt: Namen, Antworten, Unsicherheit, und was mitgenommen wird.

# Was verglichen wird
comparison-output-dryer-load = Auslastung Trockner
    .note = Anteil an der Grenze
comparison-output-blender-load = Auslastung Beleimmischer
    .note = Anteil an der Grenze
comparison-output-press-load = Auslastung Presse
    .note = Anteil an der Grenze
comparison-output-line-speed-load = Auslastung Band­geschwindigkeit
    .note = Anteil an der höchsten Bandgeschwindigkeit
comparison-output-cost = Kosten
    .note = für Faser und Flüssigkeiten, je Volumen Platte
comparison-output-binder-on-fibre = Bindemittel auf Faser
    .note = Feststoff aller Bindemittel auf atro Faser
comparison-output-liquid-flow = Alle Flüssigkeiten
    .note = wie geliefert, nach Masse
comparison-output-liquid-water = Wasser in Flüssigkeiten
    .note = mitgeliefert und zum Verdünnen
comparison-output-dryer-water = Mehr Wasser im Trockner
    .note = aus der Faser zu entfernen, bis kein Wasser dosiert wird; negativ: darf bleiben
comparison-output-dryer-heat = Wärme für mehr Wasser im Trockner
    .note = ab 20 °C, ohne Verluste des Trockners
comparison-output-fibre-at-limit = Faser am Engpass
    .note = atro, sobald die erste Maschine an ihrer Grenze ist
comparison-output-volume-at-limit = Platte am Engpass
    .note = geschliffen und besäumt, sobald die erste Maschine an ihrer Grenze ist
comparison-output-cost-per-year = Kosten im Jahr
    .note = bei diesem Strom, für die Stunden im Jahr

# Was den Betrieb mit einem Rezept verhindert
comparison-obstacle-not-allowed = außerhalb der zulässigen Werte
comparison-obstacle-no-balance = keine Bilanz: Dosen oder Verluste zu hoch
comparison-obstacle-too-wet = zu feucht
comparison-obstacle-fibre-supply = über Trocknerleistung
comparison-obstacle-blender = über Leistung des Beleimmischers
comparison-obstacle-press = unter dem kleinsten Pressfaktor
comparison-obstacle-line-speed = über der höchsten Bandgeschwindigkeit
comparison-obstacle-press-adds-water = Platte feuchter als die Matte
comparison-obstacle-mat-thinner = Matte dünner als die Platte
comparison-obstacle-press-factor = Pressfaktor unüblich
comparison-obstacle-mat-moisture = Mattenfeuchte unüblich
comparison-obstacle-input = eine Eingabe unüblich
comparison-limited = { $system }: { $obstacle } von { $from } bis { $to }.

# Worin sich Systeme unterscheiden, und was fehlt
comparison-differs = { $input }: nicht überall gleich. { $values }.
comparison-differing-feed-way = Faserstrom nach
comparison-differing-water-way = Wasserdosis nach
comparison-differing-sprayed-faces = Sprühwasser auf
comparison-blank = leer
comparison-not-same-fibre = Die Faser ist nicht dieselbe. Für einen gerechten Vergleich die Faser der Referenz verwenden.
comparison-not-same-board = Die Platte ist nicht dieselbe. Für einen gerechten Vergleich die Platte der Referenz verwenden.
comparison-not-same-line = Die Linie ist nicht dieselbe. Für einen gerechten Vergleich die Linie der Referenz verwenden.
comparison-not-same-system = Gehört zum System und darf sich unterscheiden; die Wirkung auf die Ergebnisse kommt dann nicht von den Flüssigkeiten.
comparison-too-few = Weniger als { $fewest } Systeme sind ausgewählt.
    .fix = Ein Rezept oder ein Bindemittelsystem hinzufügen.
comparison-too-many = Mehr als { $most } Systeme sind ausgewählt.
    .fix = Alle bis auf { $most } entfernen.
comparison-no-reference = Die Referenz wurde gelöscht.
    .fix = Eine andere Referenz auswählen.
comparison-unpriced = { $system }: keine Kosten, weil Preise fehlen: { $prices }.
    .fix = Diese Preise unter „Preise der Flüssigkeiten“ oder im Rezept eingeben.

# Eine Eingabe, nach der aufgelöst wird
comparison-answer-one = { $input }: { $value } ergibt { $wanted } für „{ $figure }“.
comparison-answer-several = { $input }: Jeder der Werte { $values } ergibt { $wanted } für „{ $figure }“.
comparison-answer-range = { $input }: Jeder Wert von { $from } bis { $to } ergibt { $wanted } für „{ $figure }“.
comparison-answer-nearest = { $input }: Kein zulässiger Wert ergibt { $wanted } für „{ $figure }“. Am nächsten liegt { $nearest }, bei { $value }.
comparison-answer-nearest-range = { $input }: Kein zulässiger Wert ergibt { $wanted } für „{ $figure }“. Am nächsten liegt { $nearest }, von { $from } bis { $to }.
comparison-answer-independent = { $input }: „{ $figure }“ hängt davon nicht ab und bleibt bei { $value }.
comparison-fix-unreachable = Einen erreichbaren Wert eingeben oder zuerst eine andere Eingabe ändern.
comparison-fix-independent = Eine Eingabe auswählen, von der dieses Ergebnis abhängt.
comparison-found-linear = Das Ergebnis ist linear in dieser Eingabe, die Antwort also exakt.
comparison-found-search = Gefunden durch Absuchen aller zulässigen Werte.
comparison-not-used = { $input }: In diesem Rezept nicht verwendet.
    .fix = Eine Eingabe auswählen, die das Rezept verwendet.
comparison-not-given = { $figure }: Ergibt sich aus diesem Rezept nicht.
    .fix = Eingeben, was dafür nötig ist, etwa eine Breite, eine Länge oder alle Preise, oder ein anderes Ergebnis auswählen.
comparison-not-wanted = { $figure }: Der Sollwert ist keine Zahl.
    .fix = Den Sollwert eingeben.

# Maschinengrenzen, die eine Antwort überschreitet
comparison-beyond = { $count ->
    [one] Über einer Grenze
   *[other] Über Grenzen
} bei { $value }: { $limits }.
comparison-within-limits = Innerhalb aller Grenzen: { $value }.
comparison-exceeded-fibre-supply = Faser { $asked }; der Trockner liefert { $limit }
comparison-exceeded-blender = beleimte Faser { $asked }; der Beleimmischer schafft { $limit }
comparison-exceeded-press = Pressfaktor { $asked }; die Presse braucht mindestens { $limit }
comparison-exceeded-line-speed = Bandgeschwindigkeit { $asked }; die Linie läuft höchstens { $limit }

# Der Preis, bei dem zwei Systeme gleich viel kosten
comparison-price-at = { $price }: Bei { $value } kosten beide je Volumen Platte gleich viel, { $first } und { $second }.
comparison-price-dearer-at-zero = { $price }: Selbst beim Preis null kostet { $dear } um { $more } mehr als { $cheap }.
comparison-price-always = { $price }: Bei jedem Preis kosten { $first } und { $second } gleich viel.
comparison-price-never = { $price }: Bei jedem Preis kostet { $dear } um { $more } mehr als { $cheap }.
comparison-price-moves-in-both = Der Preis ändert sich in beiden Systemen, { $first } und { $second }.
comparison-price-moves-and-stays = Der Preis ändert sich nur in { $first }; in { $second } bleibt er bei { $value }.
comparison-price-moves-in-first = Der Preis ändert sich nur in { $first }; in { $second } kommt dieser Stoff nicht vor.
comparison-price-beyond = { $system } liegt über einer Grenze: { $limit }.
comparison-not-a-price = Das ist kein Preis des ersten Systems.
    .fix = Den Preis seiner Faser oder einer Flüssigkeit auswählen.
comparison-no-balance = Ein System hat kein Ergebnis.
    .fix = Zuerst die Fehler in seinem Rezept beheben.
comparison-prices-missing = Preise fehlen. { $prices }.
    .fix = Diese Preise eingeben.

# Ein Bereich einer Eingabe
comparison-range-not-used = Das Rezept verwendet diese Eingabe nicht.
    .fix = Eine andere Eingabe auswählen.
comparison-range-not-readable = Ein Ende des Bereichs ist nicht gültig.
    .fix = Berichtigen, oder für den Startwert leer lassen.
comparison-range-equal = Beide Enden des Bereichs sind gleich.
    .fix = Zwei verschiedene Werte eingeben.
comparison-range-reversed = Der Bereich ist verkehrt: „Von“ liegt über „Bis“.
    .fix = Die beiden Werte tauschen.

# Was ein ± bedeutet
comparison-form-standard = Standardunsicherheit
    .hint = Eine Standardabweichung, wie sie aus einem Zertifikat oder wiederholten Ablesungen kommt.
comparison-form-half-width = Feste Grenzen
    .hint = Jeder Wert dazwischen ist gleich wahrscheinlich: geteilt durch √3.
comparison-form-interval = 95-%-Bereich
    .hint = Enthält den Wert 19 von 20 Mal: geteilt durch 1,96.

# Messgeräte
comparison-instrument-belt-scale = Bandwaage
comparison-instrument-moisture-meter = Feuchtemesser
comparison-instrument-flow-meter = Durchflussmesser
comparison-instrument-solids-test = Feststoffprobe
comparison-instrument-density-meter = Dichtemesser
comparison-instrument-board-test = Plattenprüfung
comparison-instrument-thickness-gauge = Dickenmesser
comparison-instrument-tape-measure = Maßband
comparison-instrument-speed-meter = Tachometer
comparison-instrument-thermometer = Thermometer
comparison-instrument-price = Preis
comparison-instrument-estimate = Schätzung

# Quellen der Unsicherheit
comparison-source = { $instrument }: { $input }
comparison-source-of-all = { $instrument }: { $input } (alle Systeme)
comparison-source-of = { $instrument }: { $input } ({ $systems })
comparison-nothing-uncertain = Keine Eingabe hat ein ±, oder kein Ergebnis ist ausgewählt.
    .fix = Für mindestens eine Eingabe ein ± eingeben und ein Ergebnis auswählen.
comparison-no-system = Ein System wurde gelöscht.
    .fix = Die Systeme neu auswählen.
comparison-uncertain-not-used = { $system } verwendet eine Eingabe nicht, die ein ± hat: { $input }.
    .fix = Ihr ± leeren.
comparison-uncertain-not-given = { $system } gibt dieses Ergebnis nicht: { $figure }.
    .fix = Eingeben, was dafür nötig ist, etwa eine Breite, eine Länge oder alle Preise, oder ein anderes auswählen.
# Anstelle eines Namens, der nicht bekannt ist.
comparison-some-system = Ein System
comparison-some-input = eine Eingabe

# Ob beide Verfahren übereinstimmen: wenige Wörter für eine Tabelle
comparison-agree = stimmen überein
comparison-differ = weichen ab: { $why }
comparison-few-noisy = zu wenige Ziehungen für eine Aussage, um wie viel
comparison-few-bound = bei { $share } % der Ziehungen am Anschlag
comparison-few-left-out = { $count ->
    [one] eine Ziehung ausgelassen
   *[other] { $count } Ziehungen ausgelassen
}
comparison-few-curved = nicht linear in den Eingaben
comparison-few-limits = eine Quelle mit festen Grenzen überwiegt
comparison-few-degrees = wenige Freiheitsgrade

# Warum beide Verfahren abweichen
comparison-why-bound = Bei bis zu { $share } % der Ziehungen liegt ein Ergebnis am Anschlag, etwa eine Wasserdosis von null: Die Verteilung ist einseitig.
comparison-why-left-out = { $count ->
    [one] Eine Ziehung wurde ausgelassen: Eine Eingabe darin lag außerhalb der zulässigen Werte.
   *[other] { $count } Ziehungen wurden ausgelassen: Eine Eingabe darin lag außerhalb der zulässigen Werte.
}
comparison-why-curved = Über einen so weiten Bereich ändert sich das Ergebnis nicht linear mit den Eingaben; die erste Ordnung nimmt eine Gerade an.
comparison-why-limits = Eine Quelle mit festen Grenzen überwiegt die anderen, und ihre Werte sind bis dorthin gleich wahrscheinlich; die erste Ordnung nimmt eine Normalverteilung an.
comparison-why-degrees = Wenige Freiheitsgrade: Die beiden Verfahren behandeln sie verschieden, und keines ist das bessere.

# Blätter, die mitgenommen werden, und ihre Köpfe
comparison-sheet-side-by-side = Nebeneinander
comparison-sheet-sensitivity = Empfindlichkeit
comparison-sheet-assumptions = Annahmen
comparison-sheet-uncertainty = Unsicherheit
comparison-sheet-shares = Varianzanteile
comparison-sheet-sources = Quellen der Unsicherheit
comparison-sheet-economy = Wirtschaftlichkeit
comparison-sheet-limits = Grenzen
comparison-sheet-answers = Antworten
comparison-sheet-emission = Emissionsblatt
comparison-head-figure = Ergebnis
comparison-head-input = Eingabe
comparison-head-unit = Einheit
comparison-head-value = Wert
comparison-head-more-than-reference = Differenz zur Referenz: { $system }
comparison-head-standard = Standardunsicherheit, erste Ordnung
comparison-head-freedom = Freiheitsgrade
comparison-head-factor = Erweiterungsfaktor
comparison-head-expanded = Erweiterte Unsicherheit, 95 %
comparison-head-standard-drawn = Standardunsicherheit, Monte Carlo
comparison-head-low = 95-%-Bereich von, Monte Carlo
comparison-head-high = 95-%-Bereich bis, Monte Carlo
comparison-head-both = Beide Verfahren
comparison-head-draws = Ziehungen
comparison-head-seed = Startzahl
comparison-head-source = Quelle der Unsicherheit
comparison-head-share = Varianzanteil, %
comparison-head-system = System
comparison-head-limited-by = Begrenzt durch
comparison-head-asked = Verlangt
comparison-head-limit = Grenze
comparison-head-question = Frage
comparison-head-answer = Antwort
comparison-head-from = Von
comparison-head-to = Bis
comparison-head-origin = Quelle
comparison-exact = exakt
comparison-no-result = kein Ergebnis
comparison-missing-price = Preis fehlt: { $price }

# Die Wirtschaftlichkeit einer Umstellung
comparison-economy-hint = Energie, Fracht, Umstellungen und Leistung neben den Stoffen. Ein leerer Preis lässt seinen Teil in allen Systemen weg.
comparison-economy-dryer-energy-price = Energiepreis Trockner, je MWh
comparison-economy-dryer-efficiency = Wirkungsgrad Trockner
    .hint = Wärme je gekaufter Energie
comparison-economy-press-energy-price = Energiepreis Presse, je MWh
comparison-economy-press-efficiency = Wirkungsgrad Presse
    .hint = Wärme je gekaufter Energie
comparison-economy-freight-price = Fracht, wie geliefert
    .hint = Mittel aller Flüssigkeiten
comparison-economy-changeover-scrap = Ausschuss je Umstellung, m³
comparison-economy-changeovers = Umstellungen im Jahr
    .hint = Durch die Änderung
comparison-economy-selling-price = Verkaufspreis
comparison-economy-release-agent-price = Trennmittel, je m² Platte
    .hint = Leer lassen, wenn keines
comparison-economy-materials = Faser und Flüssigkeiten
comparison-economy-dryer-energy = Trocknerenergie, gegen jetzt
comparison-economy-press-energy = Pressenenergie
comparison-economy-release-agent = Trennmittel
comparison-economy-freight = Fracht der Flüssigkeiten
comparison-economy-freight-per-solids = Fracht je kg Feststoff im Bindemittel
comparison-economy-total = Gesamtkosten
comparison-economy-margin = Marge
comparison-economy-margin-per-press-hour = Marge je Pressenstunde, am Engpass
comparison-economy-volume-per-year = Platte im Jahr, bei diesem Strom
comparison-economy-capacity-per-year = Platte im Jahr, am Engpass
comparison-economy-more-cost = Änderung: Gesamtkosten
comparison-economy-scrap = Änderung: Ausschuss der Umstellungen
comparison-economy-scrap-cost = Änderung: Kosten dieses Ausschusses
comparison-economy-more-capacity = Änderung: Leistung am Engpass
comparison-economy-more-margin = Änderung: Marge, nach Ausschuss

# Das Emissionsblatt
comparison-emission-caution = Eine Prüfung entscheidet: Kein Wert hier sagt eine Emission voraus. Den geltenden örtlichen Grenzwert nachsehen.
comparison-emission-formaldehyde-per-urea = F/U des Harzes, mol/mol
    .hint = Aus dem Datenblatt des Harzes
comparison-emission-melamine-per-urea = Melamin je Harnstoff, mol/mol
    .hint = Leer lassen bei Harnstoffharz
comparison-emission-resin-solids = Feststoff im Harz
comparison-emission-added-urea = Harnstoff zugesetzt
    .hint = Leer lassen, wenn keiner
comparison-emission-target-ratio = Soll F/(NH₂)₂, mol/mol
comparison-emission-by-volume = Formaldehyd in Luft, ppm
    .hint = Nach Volumen; ergibt mg/m³
comparison-emission-by-mass = Formaldehyd in Luft, mg/m³
    .hint = Nach Masse; ergibt ppm
comparison-emission-air-temperature = Lufttemperatur
comparison-emission-perforator = Perforatorwert, mg/100 g
    .hint = Je 100 g atro Platte
comparison-emission-board-moisture = Plattenfeuchte bei der Prüfung
comparison-emission-ratio = F/U der Mischung
comparison-emission-amino-ratio = F/(NH₂)₂ der Mischung
comparison-emission-urea = Harnstoff für das Sollverhältnis
comparison-emission-concentration = Formaldehyd in Luft
comparison-emission-perforator-at-reference = Perforatorwert bei 6,5 % Plattenfeuchte
comparison-emission-structure = Stöchiometrie; von nur Methylol bis nur Methylen
comparison-emission-perforator-source = Jann und Deppe (1990), Beiwerte ungeprüft; über 6,5 % kann der Wert zu niedrig sein
comparison-emission-limit = Grenzwert: { $market }, { $article }
comparison-emission-valid-from = { $regulation }, ab { $date }

# Was an einer Eingabe im Emissionsblatt nicht stimmt
comparison-emission-ratio-out-of-range = F/U muss über 0 und höchstens 100 sein.
    .fix = F/U berichtigen.
comparison-emission-melamine-out-of-range = Melamin je Harnstoff muss von 0 bis 100 sein.
    .fix = Ein Verhältnis in diesem Bereich eingeben, bei Harnstoffharz leer lassen.
comparison-emission-no-resin = Es gibt kein Harz.
    .fix = Seinen Feststoff eingeben.
comparison-emission-not-reachable = Das Sollverhältnis liegt über dem des Harzes: Harnstoff senkt es nur.
    .fix = Ein kleineres Verhältnis eingeben.
comparison-emission-temperature-out-of-range = Die Lufttemperatur muss von −50 °C bis 100 °C sein.
    .fix = Die Temperatur berichtigen.
comparison-emission-value-out-of-range = Der Wert muss 0 oder mehr sein.
    .fix = Den Wert berichtigen.
comparison-emission-moisture-out-of-range = Die Umrechnung gilt für Plattenfeuchten von { $least } % bis { $most } %.
    .fix = Die Platte klimatisieren und erneut prüfen.

# Märkte, und wofür ihre Grenzwerte gelten
comparison-market-european-union = Europäische Union
comparison-market-united-states = Vereinigte Staaten
comparison-article-wood-based = Holzwerkstoffe und Möbel
comparison-article-particleboard = Spanplatte
comparison-article-mdf = MDF
comparison-article-thin-mdf = dünne MDF
comparison-article-hardwood-plywood = Laubholzsperrholz
comparison-article-workplace-shift = Luft am Arbeitsplatz, 8 h
comparison-article-workplace-short = Luft am Arbeitsplatz, 15 min
