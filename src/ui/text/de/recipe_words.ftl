# Namen von Feldern, Größen, Dingen und Wahlmöglichkeiten eines Rezepts.

# Felder
field-fibre-flow-belt = Faserstrom, Bandwaage, feucht
    .hint = Mit Feuchte, wie die Bandwaage ihn anzeigt.
field-fibre-flow-oven-dry = Faserstrom, atro
    .hint = In den Beleimmischer, ohne Feuchte.
field-wanted-line-speed = Bandgeschwindigkeit, Soll
    .hint = Daraus folgt der Faserstrom.
field-wanted-press-factor = Pressfaktor, Soll
    .hint = Presszeit je Pressdicke; daraus folgt der Faserstrom.
field-fibre-moisture = Faserfeuchte
    .hint = Der getrockneten Faser am Eintritt in den Beleimmischer.
field-fibre-price = Faserpreis, atro
    .hint = Je atro Masse.
field-mat-moisture = Mattenfeuchte, Soll
    .hint = An der Streumaschine; daraus folgt die Wasserdosis.
field-drying-loss = Feuchteverlust bis Streumaschine
    .hint = In Punkten atro.
field-water-on-fibre = Wasserdosis, Wasser auf atro Faser
    .hint = kg Wasser je 100 kg atro Faser.
field-water-flow = Wasserdosis, Durchfluss
field-board-density = Rohdichte
    .hint = Fertige Platte bei ihrer Plattenfeuchte (EN 323).
field-board-moisture = Plattenfeuchte
    .hint = Auf die sich die Rohdichte bezieht.
field-thickness = Fertigdicke
    .hint = Nach dem Schleifen.
field-sand-top = Schleifzugabe, Oberseite
field-sand-bottom = Schleifzugabe, Unterseite
field-surface-ratio = Relative Rohdichte, abgeschliffene Schichten
    .hint = Ihre Rohdichte durch das Plattenmittel; 1, wenn unbekannt.
field-mat-width = Mattenbreite, besäumt
    .hint = Am Eintritt in die Presse.
field-spread-width = Streubreite
    .hint = Wie die Streumaschine streut; der Rand dazwischen läuft zurück.
field-press-length = Pressenlänge, beheizt
field-reject = Sichterausschuss, Anteil der beleimten Faser
field-area-yield = Flächenausbeute
    .hint = Fertige Fläche je gepresster Fläche, nach Säumlingen und Querabschnitten.
field-exit-moisture = Plattenfeuchte am Pressenaustritt
    .hint = Leer lassen, wenn wie die Plattenfeuchte; daraus folgt das Wasser aus der Presse.
field-mat-bulk-density = Schüttdichte der losen Matte, feucht
    .hint = Ergibt die Mattenhöhe.
field-mat-temperature = Mattentemperatur vor der Presse
field-surface-spray = Sprühwasser
    .hint = Je Fläche jeder besprühten Seite.
field-shift-hours = Stunden je Schicht
field-fibre-supply = Leistung des Trockners, atro Faser
    .hint = Leer: keine Grenze.
field-blender-capacity = Leistung des Beleimmischers, atro
    .hint = Beleimte Faser; leer: keine Grenze.
field-least-press-factor = Kleinster Pressfaktor, der aushärtet
    .hint = Leer: keine Grenze.
field-steam-limit = Grenze der Presse für die Mattenfeuchte
    .hint = Leer lassen für den üblichen Bereich.
field-top-line-speed = Höchste Bandgeschwindigkeit
    .hint = Von Streumaschine und Presse; leer: keine Grenze.

# Felder einer Flüssigkeit
field-liquid-solids = Feststoffgehalt wie geliefert, nach Masse
    .hint = Nach dem Verfahren des Lieferanten; 100 % bei reinem pMDI.
field-liquid-density = Dichte wie geliefert
field-liquid-spray-solids = Feststoffgehalt verdünnt, nach Masse
    .hint = Leer: gesprüht wie geliefert.
field-liquid-price = Preis wie geliefert
    .hint = Leer: nicht in den Kosten.
field-dose-solids-on-fibre = Dosis, Feststoff auf atro Faser
    .hint = kg Feststoff je 100 kg atro Faser.
field-dose-solids-on-liquid = Dosis, Feststoff auf Feststoff der anderen Flüssigkeit
    .hint = kg Feststoff je 100 kg Feststoff der Basis.
field-dose-liquid-on-fibre = Dosis, Flüssigkeit wie geliefert auf atro Faser
    .hint = kg Flüssigkeit je 100 kg atro Faser.
field-dose-liquid-per-board = Dosis, Flüssigkeit wie geliefert je Volumen fertiger Platte
field-dose-liquid-on-faces = Dosis, Flüssigkeit wie geliefert je Fläche einer Seite
    .hint = Je besprühter Seite.

# Felder einer Flüssigkeit mit vollem Namen
field-liquid-solids-of = Feststoffgehalt von { $name }, wie geliefert
field-liquid-density-of = Dichte von { $name }
field-liquid-spray-solids-of = Feststoffgehalt, verdünnt, von { $name }
field-liquid-price-of = Preis von { $name }
field-dose-solids-on-fibre-of = Dosis von { $name }, Feststoff auf atro Faser
field-dose-solids-on-liquid-of = Dosis von { $name }, Feststoff auf Feststoff der anderen Flüssigkeit
field-dose-liquid-on-fibre-of = Dosis von { $name }, Flüssigkeit wie geliefert auf atro Faser
field-dose-liquid-per-board-of = Dosis von { $name }, Flüssigkeit wie geliefert je Volumen fertiger Platte
field-dose-liquid-on-faces-of = Dosis von { $name }, Flüssigkeit wie geliefert je Fläche einer Seite

# Größen
figure-fibre = Faser
    .note = atro
figure-fibre-wet = Faser auf der Bandwaage
    .note = mit Feuchte
figure-fibre-water = Wasser mit der Faser
    .note = Wasser
figure-solids = Beleimte Faser, Feststoff
    .note = atro: Faser und aller aufgesprühte Feststoff
figure-furnish-per-fibre = Beleimte Faser je Faser
    .note = atro beleimte Faser je atro Faser
figure-water-needed = Wasserbedarf
    .note = Wasser, für die Soll-Mattenfeuchte
figure-water-on-hand = Wasser vor der Dosierung
    .note = Wasser, mit Faser, Flüssigkeiten und Verdünnung
figure-water-dose = Wasserdosis
    .note = Wasser, nach Masse
figure-water-dose-volume = Wasserdosis, Volumen
    .note = Wasser bei 20 °C
figure-water-dose-on-fibre = Wasserdosis auf Faser
    .note = Wasser, auf atro Faser
figure-water-excess = Wasserüberschuss
    .note = Wasser über dem Bedarf
figure-fibre-moisture-for-no-water = Faserfeuchte für Wasserdosis null
    .note = Wasser je atro Faser
figure-blender-moisture = Feuchte nach dem Beleimmischer
    .note = Wasser je atro beleimter Faser
figure-mat-moisture = Mattenfeuchte an der Streumaschine
    .note = Wasser je atro Matte
figure-furnish-wet = Beleimte Faser aus dem Mischer
    .note = mit Feuchte
figure-mat-wet = Mattengewicht, feucht
    .note = mit Feuchte, an der Streumaschine
figure-mat-oven-dry = Mattengewicht, atro
    .note = atro
figure-mat-fibre = Faser in der Matte
    .note = atro
figure-mat-water = Wasser in der Matte
    .note = Wasser
figure-mat-running = Mattengewicht je Meter
    .note = mit Feuchte, über die besäumte Breite
figure-mat-height = Mattenhöhe
    .note = lose, an der Streumaschine
figure-compaction = Verdichtung
    .note = Mattenhöhe je Pressdicke
figure-reject = Sichterausschuss
    .note = atro
figure-net-solids = Beleimte Faser zur Presse
    .note = atro
figure-transport-vapour = Wasserverlust unterwegs
    .note = Wasser, vom Beleimmischer zur Streumaschine
figure-trim = Mattenbesäumung, Rücklauf
    .note = atro
figure-line-speed = Bandgeschwindigkeit
figure-pressed-thickness = Pressdicke
    .note = vor dem Schleifen
figure-press-time = Presszeit
    .note = Pressenlänge durch Bandgeschwindigkeit
figure-press-factor = Pressfaktor
    .note = je Pressdicke
figure-surface-spray = Sprühwasser
    .note = Wasser, alle besprühten Seiten
figure-surface-spray-volume = Sprühwasser, Volumen
    .note = Wasser bei 20 °C, alle besprühten Seiten
figure-press-vapour = In der Presse verdampftes Wasser
    .note = Wasser
figure-heat-per-water = Wärme je Masse verdampften Wassers
    .note = zum Erwärmen und Verdampfen bei 101,325 kPa
figure-press-heat = Wärme für das in der Presse verdampfte Wasser
    .note = ohne Verluste der Presse
figure-raw-board = Gewicht der Rohplatte
    .note = bei Plattenfeuchte, vor dem Schleifen
figure-finished-area = Fertige Fläche
    .note = geschliffen und zugeschnitten
figure-finished-volume = Fertiges Volumen
    .note = geschliffen und zugeschnitten
figure-finished-mass = Fertige Platte
    .note = bei Plattenfeuchte
figure-sander-dust = Schleifstaub
    .note = atro
figure-offcuts = Säumlinge und Querabschnitte
    .note = atro
figure-fibre-per-volume = Faser je Plattenvolumen
    .note = atro Faser, fertige Platte
figure-fibre-per-area = Faser je Plattenfläche
    .note = atro Faser, fertige Platte
figure-fibre-per-board-mass = Faser je Plattenmasse
    .note = atro Faser, Platte bei Plattenfeuchte
figure-fibre-per-shift = Faser je Schicht
    .note = atro
figure-water-per-volume = Wasser je Plattenvolumen
    .note = dosiertes und Verdünnungswasser, fertige Platte
figure-fibre-cost = Faserkosten
    .note = je Volumen fertiger Platte
figure-cost = Kosten von allem mit Preis
    .note = je Volumen fertiger Platte
figure-used-note = genutzter Anteil der Grenze

# Größen einer Flüssigkeit
figure-liquid-solids = Feststoff
    .note = atro
figure-liquid-liquid = Massenstrom
    .note = wie geliefert
figure-liquid-volume = Volumenstrom
    .note = wie geliefert
figure-liquid-water = Mitgebrachtes Wasser
    .note = Wasser
figure-liquid-thinning = Verdünnungswasser
    .note = Wasser
figure-liquid-spray = Durch die Düsen
    .note = verdünnt, nach Masse
figure-liquid-share = Anteil der beleimten Faser
    .note = Feststoff an allem Feststoff
figure-liquid-solids-on-fibre = Feststoff auf Faser
    .note = Feststoff auf atro Faser
figure-liquid-liquid-on-fibre = Flüssigkeit auf Faser
    .note = wie geliefert, auf atro Faser
figure-liquid-thinning-on-fibre = Verdünnungswasser auf Faser
    .note = Wasser, auf atro Faser
figure-liquid-in-mat = In der Matte
    .note = atro
figure-liquid-per-volume = Je Plattenvolumen
    .note = wie geliefert, fertige Platte
figure-liquid-per-area = Je Plattenfläche
    .note = wie geliefert, fertige Platte
figure-liquid-per-board-mass = Je Plattenmasse
    .note = wie geliefert, Platte bei Plattenfeuchte
figure-liquid-per-shift = Je Schicht, Masse
    .note = wie geliefert
figure-liquid-volume-per-shift = Je Schicht, Volumen
    .note = wie geliefert
figure-liquid-cost = Kosten
    .note = je Volumen fertiger Platte

# Faserstrom an der Grenze einer Maschine
figure-fibre-at-limit-fibre-supply = Faserstrom an der Grenze der Faserversorgung
figure-fibre-at-limit-blender = Faserstrom an der Grenze des Beleimmischers
figure-fibre-at-limit-press = Faserstrom an der Grenze der Presse
figure-fibre-at-limit-line-speed = Faserstrom bei höchster Bandgeschwindigkeit
figure-fibre-at-limit-note = atro Faser an dieser Grenze

# Wie schwer ein Befund wiegt
name-grade-stop = Nicht berechenbar
name-grade-unusual = Außerhalb des Üblichen
name-grade-note = Hinweis

# Woher ein üblicher Bereich kommt
name-source-unverified-of = ungeprüft; { $of }
name-source-mill = eigene Grenze dieses Werks
name-source-from-memory = ungeprüft
name-source-common-practice = Praxis im Werk

# Stationen der Linie
name-station-fibre = Faser
name-station-blender = Beleim­mischer
name-station-mat = Matte
name-station-press = Presse
name-station-board = Platte

# Wozu eine Flüssigkeit dient
name-role-binder = Bindemittel
name-role-hardener = Härter
name-role-wax = Wachs
name-role-scavenger = Formaldehydfänger
name-role-release-agent = Trennmittel
name-role-other = Andere Flüssigkeit

# Woraus eine Flüssigkeit besteht
name-substance-uf = UF-Harz
name-substance-muf = MUF-Harz
name-substance-pf = PF-Harz
name-substance-pmdi = pMDI
name-substance-soy = Sojaklebstoff
name-substance-tannin = Tanninklebstoff
name-substance-wax-emulsion = Wachsemulsion
name-substance-ammonium-sulfate = Ammoniumsulfatlösung
name-substance-ammonium-chloride = Ammonium­chlorid­lösung
name-substance-ammonium-nitrate = Ammoniumnitratlösung
name-substance-urea = Harnstofflösung
name-substance-other = Etwas anderes

# Maschinen, die die Linie begrenzen können
name-machine-fibre-supply = Faserversorgung
name-machine-blender = Beleim­mischer
name-machine-press = Presse
name-machine-line-speed = Bandgeschwindigkeit

# Woraus die Faser ist
name-furnish-straw = Stroh
name-furnish-wood = Holz
name-furnish-mixed = Stroh und Holz

# Plattentypen
name-board-kind-fibreboard = Faserplatte (EN 622-1, EN 622-5)
name-board-kind-particleboard = Spanplatte (EN 312)
name-board-kind-other = Andere

# Wodurch der Faserstrom bestimmt ist
name-feed-way-oven-dry = Faserstrom, atro
name-feed-way-belt = Bandwaage, feuchte Faser
name-feed-way-line-speed = Aus Bandgeschwindigkeit
name-feed-way-press-factor = Aus Pressfaktor
name-feed-way-none = Keiner (Labor)

# Seiten der Matte
name-faces-both = Beide Seiten
name-faces-top = Oberseite
name-faces-bottom = Unterseite

# Wodurch die Wasserdosis bestimmt ist
name-water-way-to-mat-moisture = Auf Mattenfeuchte
name-water-way-on-fibre = Fest, auf atro Faser
name-water-way-flow = Fester Durchfluss
name-water-way-none = Keine Wasserdosis

# Wie eine Dosis gemeint ist
name-dose-way-solids-on-fibre = Feststoff auf atro Faser
name-dose-way-liquid-on-fibre = Flüssigkeit wie geliefert auf atro Faser
name-dose-way-liquid-per-board = Flüssigkeit wie geliefert je Volumen fertiger Platte
name-dose-way-liquid-on-both-faces = Flüssigkeit wie geliefert auf jede der beiden Mattenseiten
name-dose-way-liquid-on-top-face = Flüssigkeit wie geliefert auf die Oberseite der Matte
name-dose-way-liquid-on-bottom-face = Flüssigkeit wie geliefert auf die Unterseite der Matte
name-dose-way-solids-on-liquid = Feststoff auf Feststoff von { $name }
name-dose-way-solids-on-missing = Feststoff auf Feststoff einer fehlenden Flüssigkeit

# Einheitensysteme
name-system-metric = Metrisch
name-system-us = US-Einheiten

# Was in Wasser gelöst wird
name-solute-ammonium-sulfate = Ammoniumsulfat
name-solute-ammonium-chloride = Ammoniumchlorid
name-solute-ammonium-nitrate = Ammoniumnitrat
name-solute-urea = Harnstoff

# Was eine Einheit misst, in einem Satz
name-dimension-mass = Masse
name-dimension-mass-flow = Masse je Zeit
name-dimension-volume = Volumen
name-dimension-volume-flow = Volumen je Zeit
name-dimension-density = Masse je Volumen
name-dimension-areal-mass = Masse je Fläche
name-dimension-linear-mass = Masse je Länge
name-dimension-length = Länge
name-dimension-area = Fläche
name-dimension-area-flow = Fläche je Zeit
name-dimension-speed = Geschwindigkeit
name-dimension-time = Zeit
name-dimension-slowness = Zeit je Dicke
name-dimension-temperature = Temperatur
name-dimension-specific-energy = Wärme je Masse
name-dimension-heat-flow = Wärme je Zeit
name-dimension-fraction = Anteil
name-dimension-moisture = Feuchte
name-dimension-force = Kraft
name-dimension-stress = Kraft je Fläche
name-dimension-stiffness = Kraft je Länge
name-dimension-frequency = Frequenz
name-dimension-rotation = Drehzahl
name-dimension-flow-per-frequency = Masse je Zeit und Frequenz
name-dimension-flow-per-rotation = Masse je Zeit und Drehzahl
name-dimension-specific-volume = Volumen je Masse
name-dimension-expansion = Ausdehnung je Temperatur
name-dimension-price = Geld je Masse
name-dimension-cost = Geld je Plattenvolumen
name-dimension-year-cost = Geld je Jahr
name-dimension-number = Zahl ohne Einheit

# Zahlen aus Tabellen
name-constant-water-density = Dichte von Wasser bei 20 °C
name-constant-sensible-heat = Wärme, um das Wasser von Mattentemperatur zum Sieden zu bringen
name-constant-latent-heat = Wärme, um Wasser bei 101,325 kPa zu verdampfen
name-constant-dryer-heat = Wärme, um Wasser von 20 °C zu erwärmen und bei 101,325 kPa zu verdampfen
name-constant-hours-per-year = Stunden je Jahr, wie gewählt

# Worauf eine Formel beruht
name-ground-entered = wie eingegeben
name-ground-mass-balance = Masse hinein gleich Masse heraus
name-ground-definition = nach Definition

# Bindemittelsysteme der mitgelieferten Bibliothek
name-binder-system-uf = UF
    .note = Harnstoff-Formaldehyd-Harz mit Härter, Harnstoff als Formaldehydfänger und Wachs.
name-binder-system-muf = MUF
    .note = Melamin-Harnstoff-Formaldehyd-Harz mit Härter und Wachs.
name-binder-system-pf = PF
    .note = Phenol-Formaldehyd-Harz und Wachs. Es härtet durch Wärme aus und bringt viel Wasser mit: Faser gut trocknen.
name-binder-system-pmdi = pMDI, rein
    .note = pMDI wie geliefert und Wachs. Es bringt kein Wasser mit.
name-binder-system-pmdi-emulsified = pMDI, an der Düse emulgiert
    .note = pMDI, unmittelbar vor dem Sprühen mit Wasser verdünnt, und Wachs.
name-binder-system-soy = Auf Sojabasis
    .note = Sojaklebstoff und Wachs. Er bringt viel Wasser mit: Faser gut trocknen.
name-binder-system-tannin = Auf Tanninbasis
    .note = Tanninklebstoff, Hexamin als Härter und Wachs. Er bringt viel Wasser mit.
name-binder-system-uf-pmdi = Hybrid, UF und pMDI
    .note = UF-Harz mit Härter, daneben etwas pMDI, und Wachs.
