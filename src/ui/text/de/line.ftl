# Die Seite Linie.

line-title = Linie
line-tabs = Linie
line-tab-settings = Pumpeneinstellungen
line-tab-check = Linienprüfung
line-tab-pumps = Pumpen & Auslitern
line-tab-tanks = Tanks & Lieferungen
line-tab-changeover = Umstellung
line-period-balance = Zeitraumbilanz
line-recipe = { $name } · { $revision }
line-example = Beispieldaten.
line-example-hint = Von einem erfundenen Werk.
line-start-blank = Linie neu anlegen
line-own-figures = Als eigene Daten führen
line-blanked = Daten der Linie gelöscht
line-no-printer = Dieser Browser kann nicht drucken.

# Was auf jedem Reiter gilt
line-old-recipe = Das Rezept hat einen Fehler, daher sind diese Zahlen veraltet. Den Fehler auf der Seite Rezept beheben.
line-not-released = Das ist nicht der freigegebene Stand. { $released }. Diesen in der Bibliothek öffnen oder den hier geöffneten freigeben.

# Pumpeneinstellungen
line-conditions = Bandwaage und Faserfeuchte
line-belt-scale = Bandwaage, feucht
line-fibre-moisture = Faserfeuchte
line-belt-target = Soll { $target }
line-belt-moved = Sollwert der Bandwaage: jetzt { $to } statt { $from }.
line-as-recipe = wie im Rezept
line-recipe-has = Rezept { $value }
line-entered-at = Eingegeben: { $time }.
line-clear-conditions = Löschen
line-conditions-cleared = Eingaben für Bandwaage und Faserfeuchte gelöscht
line-fibre-oven-dry = Faser, atro
line-mat = Matte
line-mat-weight = Mattengewicht, feucht
line-oven-dry = atro
line-speed = Band­geschwindigkeit
line-press-factor = Pressfaktor
line-pump = Pumpe
line-pump-liquid = Pumpe, Flüssigkeit
line-set-to = Einstellen auf
line-interval = 95-%-Bereich
line-tested = geprüft
line-allowed = zulässig
line-range = Geprüft, zulässig
line-by-mass = Massenstrom
line-by-volume = Volumenstrom
line-nozzles = Düsen × Durchfluss
line-catch-test = Auslitern
line-none = fehlt
line-days-ago = { $days ->
    [0] heute
    [one] gestern
   *[other] vor { $days } Tagen
}
line-drift = Drift { $change }
line-drifted = { $pump }: Durchfluss seit { $date } um { $change } verändert, mehr als seine Streuung. Auslitern wiederholen.
line-drift-certain = Änderung des Durchflusses seit { $date }: { $change }, mehr als die Streuung der Proben.
line-drift-uncertain = Änderung des Durchflusses seit { $date }: { $change }, innerhalb der Streuung der Proben.
line-drift-unknown = Änderung des Durchflusses seit { $date }: { $change }. Zu wenige Proben für einen Vergleich mit der Streuung.
line-no-flow-then = damals kein Durchfluss
line-beyond = { $needed } (Grenze { $limit })
line-delivers = Fördert { $flow } bei { $setting }, { $short } zu wenig.
line-details-of = { $name }: Details
line-setting-is = Einstellung: { $status }.
line-spray = Durch die Düsen, mit Verdünnungswasser
line-to-catch-tests = Auslitern anzeigen
line-tested-range = geprüft { $from } bis { $to }
line-lowest-allowed = zulässig ab { $limit }
line-highest-allowed = zulässig bis { $limit }
line-setting-lies = Einstellung { $setting }, { $status }
line-no-settings = Noch keine Einstellungen.
line-no-new-settings = Fehler, keine neuen Einstellungen.
line-no-pumps = Noch keine Pumpen.
line-add-pumps = Pumpen anlegen
line-ratios = Verhältnisse, Faserbereich, Vorhersagebereich

# Einstelltabelle
line-settings-table = Einstelltabelle
line-table-range = { $low } bis { $high }, { $dry } bis { $wet }
line-columns-are = Spalten: Faserfeuchte, { $unit }
line-present-point = Betriebspunkt
line-above-tested = über dem geprüften Bereich: erst auslitern
line-below-tested = unter dem geprüften Bereich: erst auslitern
line-cell-cannot = geht nicht: Einstellung nicht zulässig
line-cell-above-limit = geht nicht: über der Grenze
line-cell-below-limit = geht nicht: unter der Grenze
line-cell-too-wet = beleimte Faser zu feucht
line-no-balance = keine Bilanz
line-no-setting = keine Einstellung
line-off = aus
line-print-table = Einstelltabelle drucken
line-change-range = Bereich ändern
line-table-rows = Zeilen
