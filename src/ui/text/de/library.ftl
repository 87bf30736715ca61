# Die Seite Bibliothek.

library-title = Bibliothek
library-tabs = Bibliothek
library-recipes = Rezepte
library-systems = Bindemittelsysteme
library-trials = Versuche
library-recipe-count = { $count ->
    [one] 1 Rezept
   *[other] { $count } Rezepte
}
library-system-count = { $count ->
    [one] 1 Bindemittelsystem
   *[other] { $count } Bindemittelsysteme
}
library-trial-count = { $count ->
    [one] 1 Versuch
   *[other] { $count } Versuche
}
library-import = Importieren
library-export-list = Liste exportieren (CSV)
library-link = Geteilter Link
library-open-link = Link öffnen

# Warnungen
library-some-unreadable = { $count ->
    [one] Ein Datensatz ist nicht lesbar. Er bleibt unverändert gespeichert.
   *[other] { $count } Datensätze sind nicht lesbar. Sie bleiben unverändert gespeichert.
}
library-some-aside = { $count ->
    [one] Ein Text war nicht lesbar und wurde beiseitegelegt.
   *[other] { $count } Texte waren nicht lesbar und wurden beiseitegelegt.
}
library-conflict-of = „{ $name }“ hat mehrere Fassungen. Vor der Verwendung zusammenführen.
library-backup-old = Letzte Sicherung vor { $days } Tagen.

# Rezepte
library-empty = Noch nichts gespeichert.
library-empty-hint = Gespeicherte Rezepte stehen hier. Sie bleiben in diesem Browser.
library-filter = Rezepte filtern
library-filter-hint = Name, Notiz, Schlagwort, Flüssigkeit, Kürzel, Rohdichte, Dicke
library-show = Anzeigen
library-all = Alle
library-released = Freigegeben
library-found = { $found } gefunden · { $recipes }
library-none-match = Kein Rezept gefunden
library-more = Mehr anzeigen, noch { $count }
library-name = Name
library-binder = Bindemittel
library-thickness = Dicke
library-density = Rohdichte
library-saved = Gespeichert
library-by = Von
library-revision = Stand
library-on-page = auf der Seite Rezept
library-unsaved = , ungespeicherte Änderungen
library-versions = { $count } Fassungen
library-several-versions = Fassungen
library-versions-hint = Sie wurden unabhängig voneinander gespeichert. Eine öffnen oder die letzten zwei zusammenführen.
library-merge = Zusammen­führen…
library-merge-of = Zusammenführen: { $name }
library-open = Öffnen
library-open-of = Öffnen: { $name }
library-more-of = Mehr: { $name }
library-rename = Umbenennen
library-new-name = Neuer Name
library-save-name = Namen speichern
library-name-missing = Der Name fehlt. Einen eingeben oder abbrechen.
library-cancel = Abbrechen
library-duplicate = Duplizieren
library-delete = Löschen
library-history = Verlauf
library-restore = Diesen Stand wiederherstellen
library-deleted = Gelöschte Rezepte
library-deleted-recipes = Gelöschte Rezepte ({ $count })
library-restore-deleted = Wiederherstellen

# Neben den Rezepten
library-lines = Beiseitegelegte Linien
library-lines-hint = Nicht gespeicherte Liniendaten, die ein Import ersetzt hat. Mit der Linie öffnet sich auch ihr Rezept.
library-unreadable = Nicht lesbare Datensätze
library-unreadable-hint = Jeder bleibt unverändert gespeichert. Zuallererst den Text exportieren.
library-aside = Beiseitegelegt
library-aside-hint = Nicht lesbare Datensätze. Sie wurden unverändert hierher verschoben, als an ihrer Stelle gespeichert wurde.
library-key = Schlüssel
library-export-text = Text exportieren

# Felder am Rand
library-data = Sicherung und Speicher
library-backup = Sicherung
library-last-backup = Letzte
library-no-backup = noch keine
library-days-ago = { $days ->
    [0] heute
    [one] gestern
   *[other] vor { $days } Tagen
}
library-changed-since = Seither geändert
library-back-up = Jetzt sichern
library-backup-hint = Eine Datei mit allem. Beim Importieren wird sie mit dem Bestand zusammengeführt; nichts wird überschrieben.
library-shared = Gemeinsame Bibliothek
library-shared-hint = Eine Datei auf einem gemeinsamen Laufwerk für mehrere Personen: Was andere speichern, kommt hier an; was hier gespeichert wird, geht an die anderen.
library-use-file = Datei verwenden
library-new-file = Neue Datei anlegen
library-sync = Abgleichen
library-disconnect = Trennen
library-storage = Speicher
library-used = Belegt
library-used-of = { $used } von { $most }
library-persist = Vor dem Löschen schützen
library-persisted = Der Browser behält diese Daten, auch wenn der Speicherplatz knapp wird.
library-not-persisted = Der Browser kann diese Daten löschen, wenn der Speicherplatz knapp wird. Regelmäßig sichern.
library-storage-hint = Nur in diesem Browser. Wer die Websitedaten löscht, löscht auch diese Daten; Sicherungen bleiben.

# Bindemittelsysteme
library-systems-hint = Richtwerte für den Anfang. Das Zertifikat des Lieferanten geht vor.
library-liquids = Flüssigkeiten und Dosierung
library-own = Eigene Systeme
library-typical = Übliche Systeme
library-no-own = Noch keine. Die Flüssigkeiten des Rezepts als eigenes System speichern.
library-use = Verwenden
library-use-of = Verwenden im Rezept: { $name }
library-add = Hinzufügen
library-add-of = Hinzufügen zum Rezept: { $name }
library-system-used = Das Rezept hat jetzt die Flüssigkeiten von „{ $name }“.
library-system-added = Flüssigkeiten von „{ $name }“ zum Rezept hinzugefügt.
library-edit-hint = Zum Ändern: im Rezept verwenden, dort ändern und hier unter demselben Namen speichern.
library-liquid = Flüssigkeit
library-dose = Dosis
library-solids = Feststoffgehalt
library-liquid-density = Dichte
library-thinned-to = verdünnt auf { $solids }
library-no-source = keine Quelle
library-save-system-heading = Flüssigkeiten des Rezepts speichern
library-save-system = Als eigenes System speichern
library-save-system-hint = Ein System gleichen Namens wird ersetzt; das lässt sich rückgängig machen.
library-system-name = Name des Systems
library-system-source = Quelle der Werte
library-system-name-missing = Der Name des Systems fehlt. Einen eingeben, etwa „UF, Winter“.
library-no-liquids = Das Rezept hat keine Flüssigkeiten zum Speichern. Zuerst dort welche hinzufügen.

# Versuche
library-no-trials = Noch keine Versuche.
library-to-bench = Zum Labor
library-recipe = Rezept
library-boards = Platten
