# Was mehrere Seiten sagen.

common-save = Speichern
common-print = Drucken
common-export = Exportieren
common-undo = Rückgängig
common-redo = Wiederholen
common-close = Schließen
common-more = Mehr
common-show = Zeigen
common-source = Quelle

# Eine Seite, deren Teil des Programms nach dem Start eintrifft.
common-page-arrives = Wird geladen …
common-page-missing = Diese Seite wurde nicht geladen. Alle Eingaben sind erhalten. Netzverbindung prüfen, dann erneut versuchen.
common-try-again = Erneut versuchen

# Wie schwer etwas wiegt
common-error = Fehler
common-warning = Warnung
common-note = Hinweis
common-warnings = Warnungen
common-no-warnings = Keine Warnungen
common-all-warnings = Alle { $count }
# Vorgelesen, wenn es kein Ergebnis gibt.
common-announce-error = Fehler, kein neues Ergebnis. { $error }

# Felder
common-required = Erforderlich
common-optional = Freiwillig
common-typical = Richtwert
# Ein vorgegebener Wert, der nichts annimmt, etwa kein Schleifen.
common-no-allowance = nicht berücksichtigt
common-read-as = gelesen als { $amount }
common-use = { $entry } übernehmen
# Worauf sich eine Feuchte bezieht, neben einer Zahl.
common-dry-basis = % atro
common-wet-basis = % feucht
common-unit-of = Einheit: { $name }

# Rechenwege
common-in-full = Mehr Stellen
common-formula = Formel
common-numbers = Mit Zahlen

# Optionen
common-settings = Optionen
common-moisture-shown = Feuchte der Ergebnisse
common-on-dry-basis = Bezogen auf atro, Wasser je atro Masse
common-on-wet-basis = Bezogen auf feucht, Wasser je Gesamtmasse

# Einheiten, deren Zeichen Wörter sind
unit-percent-dry-basis = % atro
unit-percent-wet-basis = % feucht
unit-turn-per-minute = U/min
unit-kilogram-per-hour-per-hertz = kg/h je Hz
unit-pound-per-hour-per-hertz = lb/h je Hz
unit-kilogram-per-hour-per-turn = kg/h je U/min
unit-pound-per-hour-per-turn = lb/h je U/min
unit-per-year = /Jahr

# Die Sprache
common-language = Sprache (lädt die Seite neu)
common-language-browser = Wie der Browser
common-language-missing = Die Texte für „{ $language }“ wurden nicht geladen, daher erscheint Haulm auf Englisch.
    .fix = Die Seite neu laden, sobald ein Netz da ist.

# Nouns within a sentence: "small" or "large", as the language writes their first letter. It is not shown.
common-nouns = large
