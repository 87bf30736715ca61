# Der Rahmen um alle Seiten, und was mehrere Seiten über ein Rezept sagen.

frame-app = Haulm
frame-skip-to-content = Zum Inhalt
frame-pages = Seiten

# Eine neuere Version wartet
frame-newer = Eine neuere Version von Haulm ist da. Alle Eingaben bleiben erhalten.
frame-use-newer = Neuere Version verwenden
frame-not-now = Nicht jetzt

# Suchen
frame-find = Suchen
frame-find-hint = Ein Rezept, eine Seite oder ein Feld
frame-nothing-found = Nichts mit diesem Namen

# Optionen
frame-units = Einheiten
frame-decimal-mark = Dezimalzeichen
frame-decimal-point = Punkt, 1.5
frame-decimal-comma = Komma, 1,5
frame-currency = Währung
frame-initials = Ihr Kürzel für alles Gespeicherte
frame-theme = Hell oder dunkel
frame-theme-system = Wie das Gerät
frame-theme-light = Hell
frame-theme-dark = Dunkel

# Speichern
frame-saved = Gespeichert
frame-saved-at = Gespeichert { $saved }
frame-nothing-to-save = Schon gespeichert, nichts geändert
frame-save-to-file = Rezept in eine Datei speichern
frame-unsaved-changes = ungespeicherte Änderungen
frame-cancel = Abbrechen
frame-copy-of = Kopie von { $name }

# Wo es keinen Wert gibt
frame-no-figure = –

# Unter den Sicherheitshinweisen
frame-caution-rule = Örtliche Vorschriften, das Sicherheitsdatenblatt und zugelassene Fachleute entscheiden.

# Ein Rezept
frame-link-code = QR-Code des Links
frame-most-liquids = Ein Rezept hat höchstens { $most } Flüssigkeiten. Es wurde nichts hinzugefügt.
frame-example-name = Beispiel: Weizenstroh, pMDI, 15 mm
frame-example-note = Erfundene Daten eines erfundenen Werks.

# Was in zwei Ständen verschieden gewählt ist
frame-choice-feed-way = Faserstrom vorgegeben durch
frame-choice-sprayed-faces = Sprühwasser auf
frame-choice-water-way = Wasserdosis bestimmt durch
frame-choice-furnish = Rohstoff
frame-choice-board-kind = Plattentyp
frame-choice-liquid-name = Name
frame-choice-liquid-role = Funktion
frame-choice-liquid-substance = Stoff
frame-choice-dose-way = Bezug der Dosis
frame-choice-liquid-source = Quelle der Werte
