# Die Seite Rezept.

recipe-title = Rezept
recipe-name = Name
recipe-untitled = Rezept ohne Namen
recipe-name-missing = Der Name fehlt. Einen Namen eingeben, etwa „Stroh 15 mm, pMDI“.
recipe-example = Beispieldaten eines erfundenen Werks
recipe-not-saved = Noch nicht gespeichert
recipe-new = Neues Rezept
recipe-new-opened = Neues Rezept geöffnet

# Teilen
recipe-share = Teilen
recipe-link = Link zu diesem Rezept
recipe-link-hint = Der Link enthält das ganze Rezept. Er geht an keinen Server.
recipe-no-link = Dieser Browser kann keinen Link erzeugen. Stattdessen das Rezept exportieren.
recipe-copy-link = Link kopieren
recipe-link-copied = Link kopiert
recipe-link-not-copied = Der Browser lässt das Kopieren nicht zu. Den Link markieren und von Hand kopieren.

# Eingaben
recipe-inputs = Eingaben
recipe-more-inputs = Weitere Eingaben
recipe-fibre = Faser
recipe-board = Platte
recipe-mat-and-press = Matte und Presse
recipe-feed-way = Faserstrom vorgegeben durch
recipe-flow-oven-dry = Faserstrom, atro
recipe-belt-scale = Bandwaage, feucht
recipe-from-line-speed = Aus Bandgeschwindigkeit
recipe-from-press-factor = Aus Pressfaktor
recipe-laboratory = Keiner (Labor)
recipe-moisture = Feuchte
recipe-target-moisture = Sollfeuchte
recipe-density = Dichte
recipe-thickness = Dicke
recipe-sanding-top = Schliff oben
recipe-sanding-bottom = Schliff unten
recipe-width = Breite
recipe-press-length = Pressen­länge
recipe-furnish = Rohstoff
recipe-board-kind = Plattentyp

recipe-sprayed-faces = Sprühwasser auf
recipe-standard-climate = Plattenfeuchte: Vollholz bei 20 °C, 65 % ({ $moisture })

# Dosierung
recipe-dosing = Dosierung
recipe-dose = Dosis
recipe-basis = Bezug
recipe-basis-of = { $name }: Bezug der Dosis
recipe-solids = Feststoff
recipe-liquid-density = Dichte der Flüssigkeiten
recipe-per-board = Platte
recipe-details = Details
recipe-details-of = { $name }: Details
recipe-total = Summe
recipe-no-result = Noch kein Ergebnis
recipe-old-result = Altes Ergebnis
recipe-no-liquids = Noch keine Flüssigkeiten. Eine Flüssigkeit oder ein Bindemittelsystem hinzufügen.
recipe-add-liquid = + Flüssigkeit
recipe-add-system = + Bindemittelsystem
recipe-system-added = { $name } hinzugefügt
recipe-pasted = { $count ->
    [one] Eine Zahl eingefügt
   *[other] { $count } Zahlen eingefügt
}
recipe-solids-on-fibre = Feststoff auf atro Faser
recipe-liquid-on-fibre = Flüssigkeit auf atro Faser
recipe-liquid-per-board = Flüssigkeit je Plattenvolumen
recipe-solids-on-liquid = Feststoff auf Feststoff von { $name }
recipe-on-both-faces = Flüssigkeit je Mattenseite
recipe-on-top-face = Flüssigkeit, Matte oben
recipe-on-bottom-face = Flüssigkeit, Matte unten
recipe-on-od-fibre = auf atro Faser
recipe-solids-on-missing = Feststoff auf gelöschte Flüssigkeit
recipe-water = Wasser
recipe-water-way = Wasserdosis vorgegeben durch
recipe-water-to-mat-moisture = auf Soll-Mattenfeuchte
recipe-water-on-fibre = Wasser auf atro Faser
recipe-water-flow = fester Durchfluss
recipe-water-none = kein Wasser
recipe-none-too-wet = entfällt: zu feucht

# Details einer Flüssigkeit
recipe-material = Stoff
recipe-function = Funktion
recipe-liquid-name = Name
recipe-liquid-source = Quelle der Werte
recipe-move-up = Nach oben
recipe-move-down = Nach unten
recipe-delete-liquid = Flüssigkeit löschen
recipe-liquid-deleted = „{ $name }“ gelöscht

# Wichtigste Größen
recipe-key-figures = Matte und Linie
recipe-mat = Matte
recipe-mat-weight = Mattengewicht, feucht
recipe-oven-dry = atro
recipe-linear = je Meter
recipe-line-speed = Band­geschwindigkeit
recipe-press-factor = Pressfaktor
recipe-press-time = Presszeit
recipe-output = Plattenausstoß
recipe-bottleneck = Auslastung · Engpass: { $machine }
recipe-no-limits = Auslastung: keine Grenzen eingegeben

# Zum Aufklappen
recipe-more-results = Weitere Ergebnisse
recipe-all-results = Alle Ergebnisse
recipe-all-results-note = jede Größe, nach Station
recipe-water-balance = Wasserbilanz
recipe-water-balance-note = { $dosed } dosiert, { $vapour } in der Presse verdampft
recipe-cost = Kosten
recipe-no-prices = keine Preise eingegeben
recipe-no-price = kein Preis
recipe-mass-balance = Kontrolle der Massenbilanz
recipe-closes = geht an jeder Station auf
recipe-does-not-close = geht nicht auf: { $station }
recipe-mass-in = Zugang
recipe-mass-out = Abgang
recipe-difference = Differenz
recipe-cautions = Sicherheitshinweise
recipe-notes = Notizen
recipe-note = Notiz
recipe-tags = Schlagwörter
recipe-tags-hint = Durch Kommas getrennt
recipe-change-note = Notiz zum nächsten Speichern
