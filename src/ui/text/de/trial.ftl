# Versuchsreihe, Platten und Effekte eines Versuchs.

trial-series = Versuchsreihe
trial-boards = Platten
trial-effects = Effekte
trial-run = Lauf
trial-runs = Läufe
trial-run-n = Lauf { $number }
trial-board = Platte
trial-board-n = Platte { $name }
trial-piece = Prüfkörper
trial-piece-n = Prüfkörper { $number }
trial-note = Notiz
trial-of = von { $count }
trial-mean = Mittelwert
trial-mean-sd = Mittelwert · Std.-Abw. { $deviation }
trial-sd = Std.-Abw.
trial-property = Eigenschaft
trial-pasted = { $count ->
    [one] Eine Zahl eingefügt
   *[other] { $count } Zahlen eingefügt
}

# Spalten
trial-laid = Eingestreut, feucht
trial-laid-hint = Leer: Masse des Wägezettels
trial-mass = Masse
trial-length = Länge
trial-width = Breite
trial-thickness = Dicke
trial-thickness-points = { $count ->
    [one] Dicke an einem Punkt
   *[other] Dicke an { $count } Punkten
}
trial-moisture = Feuchte
trial-piece-length = Prüfkörperlänge
trial-position = Position
trial-oven-dry = Darrmasse
trial-span = Stützweite
trial-load = Höchstkraft
trial-slope = Steigung
trial-before = Vorher
trial-after = Nach 24 h
trial-after-two = Nach 2 h
trial-mass-before = Masse vorher
trial-mass-after = Masse nach 24 h
trial-density = Rohdichte
trial-density-oven-dry = Rohdichte atro
trial-strength = Festigkeit
trial-modulus = E-Modul
trial-target = Soll
trial-deviation = Abwei­chung
trial-limit = Grenze { $limit }
trial-internal-bond = Querzug
trial-bending = Biegung
trial-swelling = Quellung
trial-swelling-day = Quellung, 24 h
trial-density-pieces = Rohdichte und Feuchte
trial-volume = Volumen

# Platten
trial-no-boards = Noch keine Platten. Die erste hinzufügen, wenn sie aus der Presse kommt.
trial-no-run = Ohne Lauf
trial-boards-named = Platten: { $names }
trial-add-board = + Platte
trial-add-board-a-run = + Platte für jeden Lauf
trial-details-of-board = Einzelheiten zu Platte { $name }
trial-board-label = Bezeichnung
trial-surface = Oberfläche
trial-unsanded = Ungeschliffen
trial-sanded = Geschliffen
trial-add-point = Dickenmesspunkt hinzufügen
trial-remove-board = Platte entfernen
trial-board-removed = Platte entfernt
trial-not-tested = nicht geprüft
trial-high = zu hoch
trial-low = zu niedrig
trial-board-off-target = { $board }: Rohdichte { $deviation } % gegenüber dem Soll, davon durch Dicke { $thickness }, durch Masse { $mass }, durch Feuchte { $moisture }.
trial-density-of-target = { $density }, Soll { $target }
trial-test-pieces = Prüfkörper, { $board }
trial-test = Prüfung
trial-paste-hint = Spalte aus einer Tabellenkalkulation in ein beliebiges Feld einfügen: Sie füllt die Felder darunter.
trial-all-columns = Alle Spalten
trial-remove-piece = − Letzter Prüfkörper
trial-piece-removed = Prüfkörper entfernt
trial-density-profile = Rohdichte: Prüfkörper und Verteilung
trial-no-density-pieces = { $board }: keine Prüfkörper eingegeben
trial-density-pieces-of = { $board }: { $count ->
    [one] ein Prüfkörper
   *[other] { $count } Prüfkörper
}
trial-profile = Rohdichte über die Platte
trial-off-mean = Abw. vom Mittel

# Ergebnisse
trial-by-run = Ergebnisse je Lauf
trial-by-combination = Ergebnisse je Kombination
trial-results-by = Ergebnisse je Lauf oder Kombination
trial-not-pooled = Platten mit verschiedenen Sollwerten werden nicht zusammengefasst.
trial-combination = Kombination
trial-statistics = Vertrauensbereiche und Quantile
trial-statistics-note = 95 %, aus den Mittelwerten der Platten
trial-interval-of-mean = Vertrauens­bereich
trial-quantile = 95-%-Quantil
trial-lower = unteres
trial-upper = oberes
trial-next-mat = Nächste Matte
trial-target-density = Soll-Rohdichte
trial-density-made = Ist-Rohdichte
trial-density-made-note = Die Ist-Rohdichte gilt bei der Soll-Plattenfeuchte.
trial-from-mass = Aus Masse
trial-from-thickness = Aus Dicke
trial-from-moisture = Aus Feuchte
trial-correction = Korrektur
trial-correction-note = Die Korrektur ist ein Faktor auf die eingestreute Masse; Abweichungen der Dicke werden nicht über die Masse korrigiert.
trial-furnish-next-mat = Masse, nächste Matte
trial-as-planned = Die eingestreute Masse wurde nicht erfasst; gerechnet wird mit der Masse des Wägezettels.
trial-as-if-moist = Die Plattenfeuchte wurde nicht gemessen; gerechnet wird mit der Soll-Plattenfeuchte.
trial-requirements = Anforderungen
trial-requirements-hint = Werden mit dem 95-%-Quantil jeder Kombination verglichen. Leer lassen, wenn nichts gefordert ist.
trial-requirements-replaced = Anforderungen ersetzt
trial-required-count = { $count ->
    [0] keine eingegeben
    [one] eine eingegeben
   *[other] { $count } eingegeben
}
trial-required-by = Norm oder Kunde
trial-start-from = Werte aus
trial-select-standard = Norm wählen
trial-unverified = Die Richtwerte sind ungeprüft. Mit der Norm vergleichen.

# Was eine Zahl ist, die in einen Rechenweg eingeht
trial-mean-of-boards = Mittelwert der Platten
trial-sd-of-boards = Standardabweichung zwischen den Platten
trial-student = Student-t
trial-root-of-count = Quadratwurzel aus der Anzahl der Platten
trial-target-thickness = Solldicke
trial-thickness-made = mittlere Dicke der Platten

# Versuchsreihe
trial-no-series = Keine Versuchsreihe geplant. Die Platten einer Versuchsreihe unterscheiden sich gezielt und werden in zufälliger Reihenfolge hergestellt.
trial-plan-series = Versuchsreihe planen
trial-remove-series = Versuchsreihe entfernen
trial-series-removed = Versuchsreihe entfernt
trial-progress = Fortschritt
trial-next = Als Nächstes
trial-batch-of = Ansatz { $batch } von { $batches }
trial-all-weighed = Alle Läufe hergestellt
# Wo ein Fehler jeden Lauf verhindert.
trial-none-possible = Noch kein Lauf möglich
trial-boards-pressed = Platten gepresst
trial-boards-tested = Platten geprüft
trial-design = Versuchsplan
trial-design-fraction = { $notation }, Auflösung { $resolution }
trial-all-combinations = Alle { $count } Kombinationen
trial-all-replicated = Alle { $count } Kombinationen, je { $replicates }-mal
trial-some-combinations = { $count } von { $all } Kombinationen, { $generators }
trial-factors = Faktoren
trial-factor = Faktor
trial-factor-n = Faktor { $letter }
trial-details-of-factor = Einzelheiten zu Faktor { $letter }
trial-add-factor = + Faktor
trial-remove-factor = Faktor entfernen
trial-factor-name = Name des Faktors
trial-factor-unit = Einheit der Stufen
trial-factor-unit-hint = Leer lassen für Stufen in Worten
trial-unit-basis = Einheit, Bezug
trial-on-fibre = auf atro Faser
trial-liquid-on-fibre = Flüssigkeit auf atro Faser
trial-on-solids-of = auf Feststoff von { $name }
trial-low-level = Niedrig
trial-high-level = Hoch
trial-level = Stufe
trial-level-n = Stufe { $number }
trial-levels = Stufen
trial-add-level = Stufe hinzufügen
trial-remove-level = Letzte Stufe entfernen
trial-as-recipe = Flüssigkeiten des Rezepts
trial-select-system = System wählen
trial-plan = Plan
trial-combinations = Kombinationen
trial-boards-a-run = Platten je Lauf
trial-blocks = Blöcke
trial-block = Block
trial-replicates = Wiederholungen
trial-replicate = Wiederholung
trial-fixed-runs = { $fixed ->
    [one] Ein Lauf ist hergestellt: Seine Stufen stehen fest.
   *[other] { $fixed } Läufe sind hergestellt: Ihre Stufen stehen fest.
} { $open ->
    [0] Kein Lauf lässt sich mehr verschieben.
    [one] Ein geänderter Plan verschiebt nur den einen noch nicht hergestellten.
   *[other] Ein geänderter Plan verschiebt nur die { $open } noch nicht hergestellten.
}
trial-in-order = in Reihenfolge der Herstellung
trial-run-order = Reihenfolge der Läufe
trial-fixed = fest
trial-planned = geplant
trial-weighed = Gewogen
trial-batches = Ansätze
trial-pressed = Gepresst
trial-tested = Geprüft
trial-part-of = { $part } von { $all }
trial-done = { $part } von { $all } ✓
trial-weigh-sheet = Wägezettel
trial-weigh-sheet-of = Wägezettel, { $run }
trial-boards-of = Platten, { $run }
trial-aliases = Vermengungen
trial-generators = Generatoren
trial-defining-relation = Definierende Beziehung
trial-effect = Effekt
trial-same-column = Vermengt mit
trial-no-aliases = keine bis zur dritten Ordnung
trial-random-order = Zufallsfolge
trial-seed = Startzahl
trial-seed-hint = Gleiche Zahl, gleiche Folge
trial-seed-and-order = Startzahl { $seed } · Standardfolge { $order }
trial-standard-order = Standardfolge
trial-draw-order = Neue Reihenfolge auslosen
trial-redraw = Auslosen
trial-keep-order = Reihenfolge behalten
trial-material = Material für die Versuchsreihe
trial-material-name = Material
trial-margin = Zuschlag
trial-margin-hint = Auf die Summe aller Zettel

# Effekte
trial-no-effects = Noch keine Effekte. Versuchsreihe planen, jeder Platte ihren Lauf zuordnen und ihre Messwerte eingeben.
trial-model = Modell
trial-runs-and-boards = { $runs ->
    [one] 1 Lauf
   *[other] { $runs } Läufe
}, { $boards ->
    [one] 1 Platte
   *[other] { $boards } Platten
}; jeder Lauf zählt einmal, mit dem Mittelwert seiner Platten
trial-term = Term
trial-change = Änderung
trial-interaction = Wechselwirkung
trial-limit-95 = 95-%-Grenze
trial-effect-and-limits = Effekt und seine 95-%-Grenzen, { $unit }
trial-effect-told = { $name }: { $effect }, 95-%-Grenzen { $low } bis { $high }
trial-at-five = Bei 5 %
trial-significant = signifikant
trial-not-significant = nicht signifikant
trial-untested = nicht getestet
trial-mean-low = Mittelwert, niedrig
trial-mean-high = Mittelwert, hoch
trial-explained = Vom Modell erklärt
trial-residual-sd = Reststreuung eines Laufs
trial-freedom-count = { $count ->
    [one] ein Freiheitsgrad
   *[other] { $count } Freiheitsgrade
}
trial-mean-of-runs = Mittelwert aller Läufe
trial-smallest-effect = Kleinster signifikanter Effekt
trial-more-replicates = mehr Wiederholungen engen die Grenzen ein
trial-anova = Varianzanalyse
trial-freedom = Freiheitsgrade
trial-squares = Quadratsumme
trial-mean-square = Mittleres Quadrat
trial-share = Anteil
trial-residual = Rest
trial-total = Gesamt
trial-level-means = Stufenmittelwerte
trial-level-count = { $count } Stufen
trial-above-mean = Abw. vom Mittel der Stufen
trial-readings = Verwendete Messwerte
trial-readings-head = Messwerte
trial-readings-note = { $runs ->
    [one] 1 Lauf
   *[other] { $runs } Läufe
}, { $readings ->
    [one] 1 Messwert
   *[other] { $readings } Messwerte
}
