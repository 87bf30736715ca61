# Namen, Felder, Werte und Aussagen des Labors.

# Felder des Wägezettels
bench-field-mat-length = Mattenlänge
    .hint = Der Form oder des Streurahmens.
bench-field-mat-width = Mattenbreite
    .hint = Der Form oder des Streurahmens.
bench-field-boards = Platten
    .hint = Aus allen Ansätzen zusammen.
bench-field-finished-thickness = Fertigdicke
    .hint = Nach dem Schleifen. Leer: die des Rezepts; dessen Schleifzugabe kommt hinzu.
bench-field-pressed-thickness = Pressdicke
    .hint = Wie sie die Presse verlässt, ungeschliffen.
bench-field-board-density = Rohdichte
    .hint = Bei der Plattenfeuchte (EN 323). Leer lassen für den Wert des Rezepts.
bench-field-board-moisture = Plattenfeuchte
    .hint = Für sie gilt die Rohdichte. Leer lassen für den Wert des Rezepts.
bench-field-fibre-moisture = Faserfeuchte
    .hint = Der Faser im Labor. Leer lassen für den Wert des Rezepts.
bench-field-mat-moisture = Mattenfeuchte, Soll
    .hint = Vor der Presse. Leer: wie das Rezept sein Wasser dosiert.
bench-field-drying-loss = Feuchteverlust bis zur Presse
    .hint = Punkte atro, verloren zwischen Beleimmischer und Presse. Leer lassen für 0; der Verlust der Linie gilt hier nicht.
bench-field-overage-moist = Mehreinwaage, Anteil der feuchten Masse
    .hint = Eingewogen über das hinaus, was die Platten brauchen.
bench-field-overage-oven-dry = Mehreinwaage, Anteil der atro Masse
    .hint = Feucht zugegeben, über das hinaus, was die Platten brauchen.
bench-field-wall-loss = Wandverlust, Anteil jeder Flüssigkeit
    .hint = Von allem, was gesprüht wird, auch vom Wasser; wird zusätzlich eingewogen.
bench-field-capacity = Fassungsvermögen, feucht
    .hint = Leer lassen, wenn keine Grenze gilt.
bench-field-fibre-step = Teilung der Waage für Faser
    .hint = Leer lassen, wenn nicht gerundet wird.
bench-field-liquid-step = Teilung der Waage für Flüssiges
    .hint = Leer lassen, wenn nicht gerundet wird.
bench-field-fibre-minimum = Mindesteinwaage Faser
    .hint = Leer lassen, wenn keine Grenze gilt.
bench-field-liquid-minimum = Mindesteinwaage Flüssigkeit
    .hint = Leer lassen, wenn keine Grenze gilt.
bench-field-tolerance = Toleranz nach oben
    .hint = Leer lassen für eine Teilung der Waage.
bench-field-press-factor = Pressfaktor
    .hint = Presszeit je Pressdicke. Leer: der von der Linie des Rezepts.
bench-field-spray-volume = Sprühstrom nach Volumen
    .hint = Der Pumpe. Leer lassen, wenn keine Sprühzeit gefragt ist.
bench-field-spray-mass = Sprühstrom nach Masse
    .hint = Aufgefangen und gewogen. Leer lassen, wenn keine Sprühzeit gefragt ist.

# Felder der Rückwaage
bench-field-recovered-mass = Rückwaage, feucht
    .hint = Aus dem Beleimmischer, vor dem Streuen.
bench-field-recovered-moisture = Feuchte der beleimten Fasern
    .hint = Gemessen, etwa mit einer Feuchtewaage.

# Felder einer Versuchsreihe
bench-field-replicates = Wiederholungen
bench-field-seed = Startzahl der Reihenfolge
bench-field-margin = Zuschlag auf das Material
bench-field-factor = Faktor
bench-field-level = Stufe

# Felder einer Platte
bench-field-board-laid = Eingestreute Masse, feucht
    .hint = Von der Waage ablesen. Leer lassen für die Masse des Wägezettels.
bench-field-board-mass = Plattenmasse
    .hint = Die ganze Platte.
bench-field-board-length = Plattenlänge
bench-field-board-width = Plattenbreite
bench-field-board-thickness = Plattendicke
    .hint = An mehreren Stellen; ihr Mittelwert zählt.
bench-field-board-own-moisture = Plattenfeuchte
    .hint = Wenn kein Prüfkörper gedarrt wurde.

# Felder eines Prüfkörpers
bench-field-piece-position = Position
    .hint = Von einer Kante aus; ergibt das Profil. Leer lassen, wenn kein Profil gefragt ist.
bench-field-piece-mass = Masse
    .hint = Zugeschnitten und klimatisiert.
bench-field-piece-mass-optional = Masse
    .hint = Leer lassen, wenn nicht gewogen.
bench-field-piece-dry = Darrmasse
    .hint = Bei 103 °C bis zur Massekonstanz getrocknet. Leer lassen, wenn nicht getrocknet.
bench-field-piece-length = Länge
bench-field-piece-width = Breite
bench-field-piece-thickness = Dicke
bench-field-piece-thickness-for-density = Dicke
    .hint = Für die Rohdichte des Prüfkörpers.
bench-field-piece-span = Stützweite
    .hint = Zwischen den Auflagern; üblich ist die 20-fache Dicke.
bench-field-piece-whole-length = Prüfkörperlänge
    .hint = Für die Rohdichte des Prüfkörpers.
bench-field-piece-load = Höchstkraft
bench-field-piece-slope = Steigung Kraft über Durchbiegung
    .hint = Zwischen 10 und 40 % der Höchstkraft. Leer lassen, wenn kein E-Modul gefragt ist.
bench-field-piece-before = Dicke vorher
    .hint = Vor der Wasserlagerung.
bench-field-piece-after = Dicke nach 24 h
bench-field-piece-after-two = Dicke nach 2 h
    .hint = Leer lassen, wenn nicht gemessen.
bench-field-piece-mass-before = Masse vorher
    .hint = Leer lassen, wenn nicht gewogen.
bench-field-piece-mass-after = Masse nach 24 h
    .hint = Leer lassen, wenn nicht gewogen.

# Werte des Wägezettels
bench-figure-mat-area = Mattenfläche
bench-figure-mat-oven-dry = Matte, atro
    .note = atro, eine Matte
bench-figure-mat-moist = Beleimte Faser je Matte, feucht
    .note = mit ihrer Feuchte
bench-figure-raw-board = Rohplatte, erwartet
    .note = bei Plattenfeuchte, vor dem Schleifen
bench-figure-finished-board = Fertigplatte, erwartet
    .note = bei Plattenfeuchte, Kanten nicht besäumt
bench-figure-fibre-factor = Mehreinwaage auf die Faser
    .note = Faktor
bench-figure-liquid-factor = Mehreinwaage auf Flüssigkeiten
    .note = Faktor
bench-figure-batch = Ansatz
    .note = alles, was auf einmal in den Beleimmischer kommt
bench-figure-stops = Distanzleisten
    .note = Pressdicke
bench-figure-press-time = Presszeit
bench-figure-spray-time = Sprühzeit eines Ansatzes
    .note = alle Flüssigkeiten nacheinander
bench-figure-actual-moisture = Mattenfeuchte, Ist
    .note = Wasser je atro Masse der beleimten Fasern, aus den gerundeten Massen

# Werte einer Zeile des Wägezettels
bench-figure-line-mass = Exakte Masse
    .note = ein Ansatz
bench-figure-line-rounded = Einwaage
    .note = ein Ansatz, auf die Waage gerundet
bench-figure-line-volume = Volumen
    .note = der Einwaage
bench-figure-line-spray-time = Sprühzeit
    .note = mit dem Wasser zum Verdünnen
bench-figure-line-target = Solldosis
    .note = Feststoff auf atro Faser
bench-figure-line-actual = Istdosis
    .note = Feststoff auf atro Faser, aus den gerundeten Massen
bench-figure-line-deviation = Abweichung der Dosis
    .note = Anteil der Solldosis

# Werte von Platten
bench-figure-whole-density = Rohdichte der ganzen Platte
    .note = bei vorhandener Feuchte
bench-figure-density = Rohdichte
    .note = bei vorhandener Feuchte
bench-figure-moisture = Feuchte
    .note = Wasser je atro Masse
bench-figure-oven-dry-density = Rohdichte, atro
    .note = atro Masse je gemessenem Volumen
bench-figure-bending-strength = Biegefestigkeit
bench-figure-bending-modulus = Biege-E-Modul
    .note = scheinbar: der Schub ist enthalten
bench-figure-internal-bond = Querzugfestigkeit
bench-figure-swelling = Dickenquellung
    .note = Anteil der Dicke vorher
bench-figure-half-width = ± des Mittelwerts
    .note = Vertrauensbereich 95 %, aus den Mittelwerten der Platten
bench-figure-lower = Unteres 95-%-Quantil
    .note = aus den Mittelwerten der Platten (EN 326-1, ungeprüft)
bench-figure-upper = Oberes 95-%-Quantil
    .note = aus den Mittelwerten der Platten (EN 326-1, ungeprüft)
bench-figure-correction = Korrektur der nächsten Matte
    .note = Faktor auf ihre Masse; die Dicke wird nicht korrigiert

# Eigenschaften, und die Norm einer jeden
bench-property-density = Rohdichte
    .note = bei vorhandener Feuchte, EN 323
bench-property-oven-dry-density = Rohdichte, atro
    .note = atro Masse je gemessenem Volumen (EN 323)
bench-property-moisture = Feuchte
    .note = Wasser je atro Masse (EN 322)
bench-property-thickness = Dicke
    .note = EN 324-1
bench-property-bending-strength = Biegefestigkeit
    .note = EN 310
bench-property-bending-modulus = Biege-E-Modul
    .note = EN 310
bench-property-internal-bond = Querzugfestigkeit
    .note = EN 319
bench-property-swelling = Dickenquellung 24 h
    .note = Anteil der Dicke vorher (EN 317)
bench-property-swelling-two = Dickenquellung 2 h
    .note = Anteil der Dicke vorher (EN 317)
bench-property-absorption = Wasseraufnahme 24 h
    .note = Anteil der Masse vorher (ASTM D1037)

# Woher eine Zahl im Rechenweg kommt
bench-origin-field = auf dem Wägezettel eingegeben
bench-origin-figure = vom Wägezettel
bench-origin-recipe-field = aus dem Rezept, sofern nicht auf dem Wägezettel eingegeben
bench-origin-recipe-figure = aus dem Rezept, mit den Werten des Wägezettels
bench-origin-batches = Anzahl der Ansätze

# Zeilen und Material
bench-name-liquid = Flüssigkeit
bench-name-fibre = Faser, feucht
bench-name-water = Wasser
bench-name-thinning = Wasser zum Verdünnen: { $liquid }
bench-name-liquid-of-system = { $liquid }, aus { $system }

# Faktoren, ihre Stufen und Terme
bench-name-dose = Dosis { $liquid }
bench-name-board-density = Rohdichte
bench-name-mat-moisture = Mattenfeuchte
bench-name-press-factor = Pressfaktor
bench-name-system = Bindemittelsystem
bench-name-other-factor = Anderer Faktor
bench-name-nameless-system = ein System ohne Namen
bench-name-blocks = Blöcke

# Orte von Befunden
bench-place-missing-factor = Ein Faktor
bench-place-factor = Faktor { $letter }, { $name }
bench-place-level = { $factor }, Stufe { $number }
bench-place-board = Platte { $board }, { $field }
bench-place-point = Platte { $board }, Stelle { $number }, { $field }
bench-place-density-piece = Platte { $board }, Prüfkörper { $number } für Rohdichte, { $field }
bench-place-bending-piece = Platte { $board }, Prüfkörper { $number } für Biegung, { $field }
bench-place-bond-piece = Platte { $board }, Prüfkörper { $number } für Querzug, { $field }
bench-place-swelling-piece = Platte { $board }, Prüfkörper { $number } für Quellung, { $field }

# Auswahl
bench-choice-thickness-finished = Fertig geschliffen
bench-choice-thickness-pressed = Ungeschliffen
bench-choice-overage-of-moist = Anteil der feuchten Masse
bench-choice-overage-of-oven-dry = Anteil der atro Masse, feucht zugegeben
bench-choice-overage-on-furnish = Alles: Verlust nach dem Beleimen
bench-choice-overage-on-fibre = Nur die Faser: Verlust vor dem Beleimen
bench-choice-water-last = Wasser nach den Flüssigkeiten
bench-choice-water-first = Wasser vor den Flüssigkeiten
bench-choice-spray-volume = Nach Volumen
bench-choice-spray-mass = Nach Masse
bench-choice-design-full = Alle Kombinationen
bench-choice-design-fraction = 1/{ $part } davon, { $notation }, { $runs } Läufe
# Ein Teilplan, den keine Tabelle hat.
bench-choice-design-no-fraction = 1/{ $part } davon
bench-choice-blocks-none = Keine Blöcke
bench-choice-blocks-replicate = Ein Block je Wiederholung
bench-choice-blocks-halves = Zwei Blöcke je Wiederholung
bench-choice-blocks-quarters = Vier Blöcke je Wiederholung
bench-choice-model-pairs = Haupteffekte und Paare
bench-choice-model-mains = Nur Haupteffekte

# Sätze von Anforderungen
bench-requirements-particleboard-interior = { $standard }, P2, über 13 bis 20 mm
bench-requirements-fibreboard-dry = { $standard }, MDF, über 12 bis 19 mm
bench-requirements-particleboard-ansi = { $standard }, Spanplatte
bench-requirements-fibreboard-ansi = { $standard }, MDF

bench-board-count = { $count ->
    [one] 1 Platte
   *[other] { $count } Platten
}

# Was die Effekte sagen. Namen stehen im Satz.
bench-saying-largest = Den größten Effekt auf { $property } hat { $term }.
bench-saying-none = Kein signifikanter Effekt auf { $property }.
bench-saying-none-of = Kein signifikanter Effekt auf { $property }: { $names }.
bench-saying-untested = Diese Läufe lassen keine Freiheitsgrade übrig; die Signifikanz wird daher nicht geprüft.
bench-saying-only-interaction = Nur die Wechselwirkung von Faktoren beeinflusst { $property }.

# Teile des Satzes in Kürze, mit Strichpunkt dazwischen: Der erste nennt die Eigenschaft, die anderen folgen ihm. Das Verb gehört zur
# Eigenschaft und ist bei jeder Anzahl gleich.
bench-saying-raises = { $property } { $count ->
   *[other] steigt
} mit { $names }
bench-saying-lowers = { $property } { $count ->
   *[other] sinkt
} mit { $names }
bench-saying-affects = { $property } ändert sich { $count ->
   *[other] je nach
} { $names }
bench-saying-lowers-it = { $count ->
   *[other] sinkt
} mit { $names }
bench-saying-affects-it = ändert sich { $count ->
   *[other] je nach
} { $names }

# Das Ende einer Aufzählung von Namen
bench-saying-and = { $first } und { $last }
bench-saying-or = { $first } oder { $last }

# Wie viel
bench-saying-effect = { $term }, von { $low } auf { $high }: { $property } { $change ->
    [falls] sinkt
   *[rises] steigt
} um { $size }.
bench-saying-effect-sure = { $term }, von { $low } auf { $high }: { $property } { $change ->
    [falls] sinkt
   *[rises] steigt
} um { $size } (± { $half }, 95 %).
bench-saying-interaction = Signifikante Wechselwirkung: Bei { $other } { $high } ist der Effekt von { $factor } auf { $property } um { $size } { $change ->
    [lower] niedriger
   *[higher] höher
} als bei { $low }.
bench-saying-points = { $number } Punkte
bench-saying-points-dry-basis = { $number } Punkte atro

# Ob eine Anforderung erfüllt ist
bench-verdict-met = { $tail ->
    [upper] { $property }: erfüllt, oberes 95-%-Quantil { $value }, gefordert höchstens { $required }.
   *[lower] { $property }: erfüllt, unteres 95-%-Quantil { $value }, gefordert mindestens { $required }.
}
bench-verdict-not-met = { $tail ->
    [upper] { $property }: nicht erfüllt, oberes 95-%-Quantil { $value }, gefordert höchstens { $required }.
   *[lower] { $property }: nicht erfüllt, unteres 95-%-Quantil { $value }, gefordert mindestens { $required }.
}
bench-verdict-open = { $tail ->
    [upper] { $property }: zu wenige Platten, um zu sagen, ob höchstens { $required } erfüllt ist.
   *[lower] { $property }: zu wenige Platten, um zu sagen, ob mindestens { $required } erfüllt ist.
}
bench-verdict-unverified = { $amount } (ungeprüft)

# Was zusammengefasste Platten gemeinsam haben
bench-group-level = { $factor } { $level }

# Eine Festigkeit bei der Soll-Rohdichte
bench-at-density = { $property } bei Soll-Rohdichte: { $value } ± { $half } (Vertrauensbereich 95 %, { $pieces ->
    [one] 1 Prüfkörper
   *[other] { $pieces } Prüfkörper
}).
bench-at-density-shared = { $property } bei Soll-Rohdichte: { $value } ± { $half } (Vertrauensbereich 95 %, { $pieces ->
    [one] 1 Prüfkörper
   *[other] { $pieces } Prüfkörper
}, eine Steigung für { $groups } Gruppen von Platten).
bench-at-density-outside = Die Soll-Rohdichte liegt außerhalb der geprüften Rohdichten.

# Was eine neue Reihenfolge verschiebt
bench-redraw = { $made ->
    [one] 1 Lauf ist gemacht und behält Nummer und Stufen.
   *[other] { $made } Läufe sind gemacht und behalten Nummern und Stufen.
} Neue Reihenfolge für { $open ->
    [one] den noch offenen Lauf
   *[other] die { $open } noch offenen Läufe
} auslosen?

# Meldungen der Seite
bench-open-unread = Das Labor beginnt mit dem Beispiel. Was nicht lesbar ist, bleibt gespeichert; siehe „Beiseitegelegt“ in der Bibliothek.
bench-new-begun = Neuer Versuch begonnen; der vorige lässt sich hier zurückholen.
bench-trial-saved = Versuch gespeichert
bench-trial-opened = Versuch geöffnet: { $name }
bench-trial-deleted = Versuch gelöscht
bench-trial-restored = Versuch wiederhergestellt
