# Namen, Felder, Größen, Orte und Zeiträume der Linie.

# Die Flüssigkeiten des Rezepts an der Linie
line-name-liquid = Flüssigkeit
line-name-water = Wasser
line-name-face-water = Sprühwasser
line-name-thinning-water = Verdünnungswasser für { $liquid }
line-name-not-in-recipe = nicht in diesem Rezept
line-name-tied-elsewhere = { $name } (nicht in diesem Rezept)

# Pumpen und Tanks
line-name-pump = Pumpe { $number }
line-name-tank = Tank { $number }
line-set-cannot = geht nicht

# Orte
line-place-part = { $place }, { $part }
line-place-catch-test = { $pump }, Auslitern
line-place-catch = { $pump }, Probe { $number }
line-place-line = Linie

# Wo die neuen beleimten Fasern ankommen
line-stop-blender = Beleimmischer
line-stop-former = Streumaschine
line-stop-press-in = Presse, Einlauf
line-stop-press-out = Presse, Auslauf
line-stop-saw = Säge

# Wo eine Einstellung liegt
line-range-within = im geprüften Bereich
line-range-below-tested = unter dem geprüften Bereich
line-range-above-tested = über dem geprüften Bereich
line-range-below-limit = unter der kleinsten zulässigen Einstellung
line-range-above-limit = über der größten zulässigen Einstellung

# Woher ein Durchfluss stammt
line-source-read = abgelesen
line-source-inferred = aus der Einstellung berechnet
line-source-assumed = nicht abgelesen, wie Soll angenommen

# Auswahl bei Pumpe, Tank und Einstelltabelle
line-setting-percent = Prozent der vollen Einstellung
line-setting-hertz = Frequenz des Antriebs, Hz
line-setting-rpm = Drehzahl der Welle, U/min
line-metering-volume = Volumen: Massenstrom folgt der Dichte
line-metering-mass = Masse: Massenstrom folgt der Dichte nicht
line-model-intercept = Gerade mit Achsenabschnitt
line-model-origin = Gerade durch den Ursprung
line-r-squared-centred = R², um den Mittelwert
line-r-squared-uncentred = R², um null (Gerade durch den Ursprung)
line-tank-level = Füllstand, Anteil am vollen Tank
line-tank-volume = Volumen
line-tank-mass = Masse
line-rows-belt = Ablesung der Bandwaage, feuchte Faser
line-rows-oven-dry = Faserstrom, atro

# Felder einer Pumpe
line-field-least-setting = Kleinste zulässige Einstellung
    .hint = Leer: keine Grenze.
line-field-most-setting = Größte zulässige Einstellung
    .hint = Leer: keine Grenze.
line-field-share = Anteil am Durchfluss der Flüssigkeit
    .hint = 100 %, wenn nicht mehrere Pumpen sie fördern.
line-field-nozzles = Anzahl der Düsen
    .hint = Leer: Düsen bleiben außer Betracht.
line-field-nozzle-least = Kleinster Durchfluss einer Düse
    .hint = Darunter zerstäubt die Düse schlecht.
line-field-nozzle-most = Größter Durchfluss einer Düse
line-field-pipe-volume = Leitung vom Ventil zu den Düsen, Volumen
    .hint = Leer: bleibt bei der Umstellung außer Betracht.
line-field-setting-step = Schrittweite der Einstellung
    .hint = Leer lassen für die übliche.
line-field-present-setting = Jetzige Einstellung
    .hint = Wie der Antrieb sie jetzt zeigt.
line-field-reading-volume = Ablesung des Durchflussmessers, nach Volumen
    .hint = Leer: nicht abgelesen.
line-field-reading-mass = Ablesung des Durchflussmessers, nach Masse
    .hint = Leer: nicht abgelesen.

# Felder des Ausliterns
line-field-catch-density = Dichte der aufgefangenen Flüssigkeit
    .hint = Wird mit dem Auslitern gespeichert.
line-field-catch-temperature = Temperatur der aufgefangenen Flüssigkeit
    .hint = Nur zur Dokumentation; freiwillig.
line-field-catch-setting = Einstellung
    .hint = Wie der Antrieb sie zeigt.
line-field-catch-time = Zeit
    .hint = Wie lange aufgefangen wurde.
line-field-catch-mass = Bruttomasse
    .hint = Gefäß mit Flüssigkeit oder die Flüssigkeit allein.
line-field-catch-tare = Tara
    .hint = Leer lassen, wenn tariert.

# Felder eines Tanks
line-field-tank-capacity = Volumen des vollen Tanks
line-field-tank-heel = Nicht abpumpbares Volumen
    .hint = Was unter dem Auslauf bleibt.
line-field-tank-level = Füllstand jetzt, Anteil am vollen Tank
line-field-tank-volume = Inhalt jetzt, nach Volumen
    .hint = Mit dem, was sich nicht abpumpen lässt.
line-field-tank-mass = Inhalt jetzt, nach Masse
    .hint = Mit dem, was sich nicht abpumpen lässt.
line-field-lead-time = Lieferzeit
    .hint = Von Bestellung bis Lieferung; leer: keine Erinnerung.

# Felder der Laufzeiten
line-field-blender-to-former = Vom Beleimmischer zur Streumaschine
    .hint = Mit Bunker, bei üblichem Betrieb.
line-field-former-to-press = Von der Streumaschine zur Presse
line-field-press-to-saw = Vom Pressenauslauf zur Säge
line-field-mixing = Durchmischungszeit
    .hint = Alt mit Neu bis zur Streumaschine; ergibt Übergangsplatten.
line-field-step-gap = Zeit zwischen zwei Schritten
    .hint = So lange dauert es, die nächsten Pumpen einzustellen.

# Felder der Toleranzen
line-field-tolerance-dose = Toleranz der Dosen, relativ
line-field-tolerance-moisture = Toleranz der Feuchten, Punkte atro
line-field-tolerance-mat-weight = Toleranz des Mattengewichts, relativ
line-field-tolerance-density = Toleranz der Rohdichte, relativ
line-field-tolerance-belt-scale = Toleranz der Bandwaage, relativ
line-field-tolerance-line-speed = Toleranz der Bandgeschwindigkeit, relativ
line-field-tolerance-mat-width = Toleranz der Mattenbreite, relativ
line-field-tolerance-thickness = Toleranz der Plattendicke, relativ
line-field-tolerance-board-moisture = Toleranz der Plattenfeuchte, Punkte atro

# Felder der Unsicherheiten
line-field-uncertainty-belt-scale = Unsicherheit der Bandwaage
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-moisture = Unsicherheit der Feuchten, Punkte atro
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-flow-meter = Unsicherheit der Durchflussmesser
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-solids = Unsicherheit der Feststoffgehalte, Punkte
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-line-speed = Unsicherheit der Bandgeschwindigkeit
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-mat-sample = Unsicherheit der Mattenprobe
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-board-mass = Unsicherheit der Plattenmasse
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-thickness = Unsicherheit der Dicke
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.
line-field-uncertainty-mat-width = Unsicherheit der Mattenbreite
    .hint = Standardunsicherheit; leer lassen für das übliche Messgerät.

# Felder der Linienprüfung
line-field-run-belt = Ablesung der Bandwaage, feuchte Faser
    .hint = Samt ihrer Feuchte, wie die Bandwaage sie zeigt.
line-field-run-moisture = Feuchte dieser Faser
line-field-run-line-speed = Bandgeschwindigkeit
    .hint = Wie die Presse sie zeigt.
line-field-run-mat-width = Besäumte Mattenbreite
    .hint = Leer lassen für den Wert des Rezepts.
line-field-run-board-area = Rohplatte, Fläche
    .hint = Der ganzen Platte oder des gewogenen Stücks.
line-field-run-board-mass = Rohplatte, Masse
    .hint = Wie sie aus der Presse kommt.
line-field-run-board-thickness = Rohplatte, Dicke
    .hint = Vor dem Schleifen.
line-field-run-board-moisture = Rohplatte, Feuchte
line-field-run-sample-area = Mattenprobe, Fläche
    .hint = Vor der Presse ausgeschnitten.
line-field-run-sample-mass = Mattenprobe, Masse
    .hint = Feucht, wie ausgeschnitten.
line-field-run-sample-moisture = Mattenprobe, Feuchte
    .hint = Leer: folgt aus den Strömen.

# Felder der Pumpeneinstellungen und der Einstelltabelle
line-field-belt-now = Bandwaage
    .hint = Leer lassen für den Wert des Rezepts.
line-field-moisture-now = Faserfeuchte
    .hint = Leer lassen für den Wert des Rezepts.
line-field-belt-from = Kleinste Ablesung der Bandwaage, feuchte Faser
line-field-belt-to = Größte Ablesung der Bandwaage, feuchte Faser
line-field-fibre-from = Kleinster Faserstrom, atro
line-field-fibre-to = Größter Faserstrom, atro
line-field-flow-step = Schritt von Zeile zu Zeile
line-field-moisture-from = Kleinste Faserfeuchte
line-field-moisture-to = Größte Faserfeuchte
line-field-moisture-step = Schritt von Spalte zu Spalte, Punkte atro

# Felder einer Lieferung
line-field-delivery-solids = Feststoff laut Zertifikat, nach Masse
    .hint = Leer: wie bisher.
line-field-delivery-density = Dichte laut Zertifikat
    .hint = Leer: wie bisher.
line-field-delivery-amount = Gelieferte Masse
    .hint = Leer lassen bei leerem Tank.
line-field-delivery-measured-at = Temperatur dieser Dichte
line-field-delivery-pumped-at = Temperatur an der Pumpe
    .hint = Leer: die Dichte gilt wie gemessen.
line-field-delivery-expansion = Wärmeausdehnung, nach Volumen
    .hint = Der Flüssigkeit, aus ihrem Datenblatt; bei vielen Harzen etwa 0,06 %/K, ungeprüft.

# Felder der Bilanz eines Zeitraums
line-field-period-belt-total = Summe der Bandwaage, feucht
    .hint = Ende minus Anfang.
line-field-period-fibre-moisture = Mittlere Faserfeuchte
line-field-period-boards = Gezählte Rohplatten
line-field-period-board-mass = Mittlere Masse der Rohplatten
    .hint = Wie sie aus der Presse kommen.
line-field-period-board-moisture = Mittlere Feuchte der Rohplatten
line-field-period-reject = Ausschuss des Sichters
    .hint = Anteil der beleimten Fasern.
line-field-period-dip = Unsicherheit einer Peilung
    .hint = Standardunsicherheit, nach Volumen.
line-field-period-delivery = Unsicherheit einer Lieferung
    .hint = Standardunsicherheit, relativ.
line-field-period-start = Peilung am Anfang
    .hint = Alle Tanks der Flüssigkeit zusammen.
line-field-period-delivered = Geliefert
    .hint = Laut Brückenwaage.
line-field-period-end = Peilung am Ende
    .hint = Alle Tanks der Flüssigkeit zusammen.
line-field-period-metered = Summe des Durchflussmessers
    .hint = Liter mal Dichte, wenn er Volumen misst.
line-field-period-density = Dichte
line-field-period-solids = Feststoffgehalt

# Größen des Ausliterns
line-figure-caught-net = Aufgefangene Nettomasse
    .note = ohne das Gefäß
line-figure-caught-flow = Durchfluss der Probe
    .note = nach Masse
line-figure-caught-residual = Residuum
    .note = Durchfluss über der Geraden
line-figure-slope-percent = Steigung der Geraden
    .note = je volle Einstellung, 100 %
line-figure-slope-hertz = Steigung der Geraden
    .note = je Hz
line-figure-slope-rpm = Steigung der Geraden
    .note = je Umdrehung pro Minute
line-figure-intercept = Achsenabschnitt der Geraden
    .note = Durchfluss bei Einstellung null
line-figure-residual-sd = Streuung um die Gerade
    .note = Standardabweichung der Residuen
line-figure-mean-flow = Mittlerer Durchfluss der Proben
line-figure-mean-setting = Mittlere Einstellung der Proben
line-figure-student-t = Student-t
    .note = 95 %, zweiseitig, für die Freiheitsgrade der Geraden
line-figure-leverage = Abstand der Einstellung von den Proben
    .note = Hebelwert
line-figure-prediction = Vorhersagebereich, ±
    .note = 95 %, eine Probe bei der Einstellung

# Größen der Pumpeneinstellungen
line-figure-wanted = Verlangter Durchfluss
    .note = nach Masse, wie geliefert
line-figure-wanted-volume = Verlangter Durchfluss, Volumen
    .note = wie geliefert
line-figure-setting = Einstellung
    .note = nach dem letzten Auslitern
line-figure-spray = Durch die Düsen
    .note = nach Volumen, mit Verdünnungswasser
line-figure-open-nozzles = Zu öffnende Düsen
line-figure-nozzle-flow = Durchfluss einer Düse
    .note = nach Volumen
line-figure-per-fibre = Verhältnis nach Masse
    .note = wie geliefert, je feuchte Faser auf der Bandwaage
line-figure-volume-per-fibre = Verhältnis nach Volumen
    .note = wie geliefert, je feuchte Faser auf der Bandwaage
line-figure-least-flow = Durchfluss bei kleinster nutzbarer Einstellung
    .note = nach Masse
line-figure-most-flow = Durchfluss bei größter nutzbarer Einstellung
    .note = nach Masse
line-figure-least-fibre = Kleinster Faserstrom der Pumpe
    .note = atro
line-figure-most-fibre = Größter Faserstrom der Pumpe
    .note = atro
line-figure-flow-then = Durchfluss nach dem früheren Auslitern
    .note = bei dieser Einstellung und Dichte
line-figure-flow-now = Durchfluss nach dem letzten Auslitern
    .note = bei dieser Einstellung und Dichte
line-figure-drift = Drift
    .note = letztes Auslitern gegen das frühere

# Größen der Linienprüfung
line-figure-run-fibre = Faserstrom jetzt
    .note = atro
line-figure-run-flow = Durchfluss jetzt
    .note = wie geliefert
line-figure-run-solids = Feststoff jetzt
    .note = atro
line-figure-run-dose = Aufgebrachte Dosis
    .note = Feststoff auf atro Faser
line-figure-recipe-dose = Dosis des Rezepts
    .note = Feststoff auf atro Faser
line-figure-dose-deviation = Abweichung der Dosis
    .note = relativ
line-figure-run-water = Wassereintrag jetzt
    .note = mit Flüssigkeiten, Verdünnung und Dosis
line-figure-run-furnish = Feststoff der beleimten Fasern jetzt
    .note = atro
line-figure-run-furnish-moisture = Feuchte der beleimten Fasern jetzt
    .note = Wasser je atro beleimte Faser, aus den Strömen
line-figure-run-mat-moisture = Mattenfeuchte jetzt
    .note = Wasser je atro Matte, aus den Strömen
line-figure-sample-moisture = Feuchte der Mattenprobe
    .note = Wasser je atro Matte
line-figure-run-mat = Mattengewicht jetzt
    .note = atro, der Mattenprobe
line-figure-run-density = Zu erwartende Rohdichte
    .note = bei Plattenfeuchte, aus dem Mattengewicht
line-figure-correction-target = Verlangter Durchfluss bei dieser Faser
    .note = wie geliefert
line-figure-correction-factor = Korrektur der Pumpe
    .note = verlangter Durchfluss durch jetzigen
line-figure-former-factor = Korrektur der Streumaschine
    .note = verlangtes Mattengewicht durch jetziges

# Größen eines Tanks
line-figure-content = Inhalt
    .note = nach Volumen, mit dem, was sich nicht abpumpen lässt
line-figure-usable = Nutzbar
    .note = nach Volumen
line-figure-usable-mass = Nutzbar
    .note = nach Masse
line-figure-rate = Verbrauch jetzt
    .note = nach Masse
line-figure-lasts = Reicht
    .note = beim heutigen Verbrauch
line-figure-per-shift = Verbrauch je Schicht
    .note = nach Masse
line-figure-fits = Lieferung, die noch passt
    .note = nach Volumen
line-figure-density-pumped = Dichte an der Pumpe
line-figure-density-measured = Dichte wie gemessen

# Größen einer Umstellung und der Regelkarte
line-figure-between-time = Übergangszeit
line-figure-between-area = Übergangsplatten, Fläche
    .note = fertig
line-figure-between-volume = Übergangsplatten, Volumen
    .note = fertig
line-figure-chart-mean = Mittelwert
    .note = der Abweichungen
line-figure-moving-range = Mittlere gleitende Spannweite
    .note = der Abweichungen
line-figure-low-limit = Untere Eingriffsgrenze
    .note = Mittelwert − 2,66 mittlere gleitende Spannweiten
line-figure-high-limit = Obere Eingriffsgrenze
    .note = Mittelwert + 2,66 mittlere gleitende Spannweiten

# Größen, die mit dem Rezept verglichen werden
line-check-dose = Dosis
    .note = Feststoff auf atro Faser
line-check-water = Wasserdosis
    .note = Wasser auf atro Faser
line-check-furnish-moisture = Feuchte der beleimten Fasern
    .note = Wasser je atro beleimte Faser, aus den Strömen
line-check-mat-moisture = Matten­feuchte
    .note = Wasser je atro Matte, an der Streumaschine
line-check-mat-weight = Matten­gewicht
    .note = atro
line-check-density-expected = Zu erwartende Rohdichte
    .note = bei Plattenfeuchte
line-check-belt-scale = Band­waage
    .note = feucht
line-check-fibre-moisture = Faser­feuchte
line-check-flow = Durchfluss
line-check-line-speed = Band­geschwin­digkeit
line-check-mat-width = Matten­breite
    .note = besäumt
line-check-raw-density = Rohdichte
    .note = Rohplatte
line-check-thickness = Platten­dicke
    .note = Rohplatte
line-check-board-moisture = Platten­feuchte
    .note = Rohplatte

# Unterschiede von Feuchten und Anteilen
line-points-dry-basis = Punkte atro
line-points-wet-basis = Punkte feucht
line-points = Punkte

# Größen der Bilanzen
line-quantity-belt-scale = Bandwaage
line-quantity-fibre-moisture = Faserfeuchte
line-quantity-fibre = Faserstrom, atro
line-quantity-furnish = Beleimte Fasern, atro
line-quantity-drying-loss = Feuchteverlust vom Beleimmischer zur Streumaschine
line-quantity-line-speed = Bandgeschwindigkeit
line-quantity-mat-width = Mattenbreite
line-quantity-mat-weight = Mattengewicht, feucht
line-quantity-mat-moisture = Mattenfeuchte
line-quantity-board-area-mass = Flächengewicht der Rohplatte
line-quantity-board-moisture = Feuchte der Rohplatte
line-quantity-thickness = Dicke der Rohplatte
line-quantity-density = Rohdichte der Rohplatte
line-quantity-flow = Durchfluss von { $liquid }
line-quantity-meter = Durchflussmesser von { $name }
line-quantity-catch-line = Gerade aus dem Auslitern von { $pump }
line-quantity-solids = Feststoffgehalt von { $liquid }
line-quantity-liquid-density = Dichte von { $liquid }

# Größen eines Zeitraums
line-period-board-mass = Masse der Rohplatten
line-period-start = Peilung am Anfang von { $liquid }
line-period-delivery = Lieferung von { $liquid }
line-period-end = Peilung am Ende von { $liquid }

# Aufzeichnungen und Lieferungen
line-unread = Die Linie beginnt mit dem Beispiel. Was nicht lesbar ist, bleibt gespeichert; siehe „Beiseitegelegt“ in der Bibliothek.
line-delivery-remark = Neue Lieferung
line-delivery-accepted = { $count ->
    [0] Lieferung angenommen.
    [one] Lieferung angenommen. 1 gespeichertes Rezept hat einen neuen Stand.
   *[other] Lieferung angenommen. { $count } gespeicherte Rezepte haben je einen neuen Stand.
}
line-delivery-undone = Lieferung rückgängig gemacht.
