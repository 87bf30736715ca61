# Stände, Dateien, die Bibliothek und was aufbewahrt wird: was davon gesagt wird.

# Stände
record-revision = Stand { $number }
# Bei zwei Ständen mit einer Nummer sagen Kürzel und Zeit, welcher es ist.
record-twin = { $revision } ({ $author }, { $time })
record-twin-unsigned = { $revision } ({ $time })
record-released-by = freigegeben von { $author }, { $date }
record-released-on = freigegeben, { $date }
record-withdrawn-by = Freigabe zurückgezogen von { $author }, { $date }
record-withdrawn-on = Freigabe zurückgezogen, { $date }
record-release = Für die Linie freigeben
record-withdraw = Freigabe zurückziehen
record-released = { $revision } von „{ $name }“ ist für die Linie freigegeben.
record-withdrawn = Freigabe von „{ $name }“, { $revision }, zurückgezogen.
record-behind = { $newer } wurde nach { $shown } gespeichert.
    .fix = Diese Seite zeigt noch { $shown }.
record-open-revision = { $revision } öffnen
record-compare-revision = Mit { $revision } vergleichen
record-show-differences = Unterschiede zeigen
record-compare-one = Vergleich von
record-compare-other = mit
record-on-page = Auf dieser Seite

# Was vor dem Speichern gefragt wird
record-ask-behind = Nicht gespeichert: { $newer } wurde nach { $shown } gespeichert, und diese Seite geht von { $shown } aus.
    .fix = Darüber zu speichern behält jenen Stand im Verlauf, aber nicht, was er geändert hat.
record-ask-binders = Nicht gespeichert: Das Bindemittel ist jetzt { $now }, nicht { $before }.
    .fix = Als neues Rezept speichern oder als nächsten Stand dieses Rezepts.
record-save-as-new = Als neues Rezept speichern
record-saved-as-new = „{ $name }“ als neues Rezept gespeichert.
record-save-on-top = Über { $revision } speichern
record-save-next = Nächsten Stand speichern

# Zwei Stände nebeneinander
record-differences = Verschiedene Eingaben
record-no-difference = Keine Eingabe ist verschieden.
record-no-revision = Einer der beiden Stände ist nicht lesbar.
record-figures-differ = Wirkung auf Dosen und Matte
record-figures-same = Dosen und Mattengewicht sind gleich.
record-replaced = { $role }, ersetzt
record-in-recipe = im Rezept
record-not-in-recipe = nicht im Rezept
record-new-name = Neuer Name
record-deleted-mark = gelöscht
record-take-older = Älteres nehmen
record-take-older-of = Älteres nehmen: { $input }
record-merge-heads = Zusammen­führen
record-heads-merged = „{ $name }“ zusammengeführt. Beide Stände bleiben im Verlauf.

# Was mit einem Rezept getan wurde
record-opened = „{ $name }“ geöffnet.
record-opened-over = „{ $name }“ geöffnet. „{ $before }“ war nicht gespeichert; „Rückgängig“ holt es zurück.
record-opened-link = „{ $name }“ aus dem Link geöffnet, noch nicht gespeichert.
record-no-link = Dieser Link enthält kein Rezept, oder ein Teil davon fehlt.
    .fix = Den ganzen Link kopieren und erneut versuchen.
record-deleted = „{ $name }“ gelöscht.
record-renamed = „{ $before }“ in „{ $name }“ umbenannt.
record-duplicated = „{ $name }“ gespeichert.
record-revision-restored = Älteren Stand von „{ $name }“ wiederhergestellt.
record-restored = „{ $name }“ wiederhergestellt.
record-imported = „{ $name }“ importiert.
record-already-there = „{ $name }“ ist schon unverändert in der Bibliothek. Nichts wurde hinzugefügt.
record-exported = Nach { $file } exportiert.
record-unsaved-work = Nicht gespeichert, { $time }
record-unsaved-work-on = Nicht gespeichert, { $time }: { $name }
record-line-opened = „{ $name }“ ist geöffnet. Was nicht gespeichert war, ist in der Bibliothek.
record-line-deleted = „{ $name }“ gelöscht.

# Die ganze Bibliothek
record-count = { $count ->
    [one] 1 Datensatz
   *[other] { $number } Datensätze
}
record-export-library = Alles exportieren
# Der Name einer Datei ohne Endung.
record-library-file = haulm-bibliothek
record-library-exported = { $records } nach { $file } exportiert.
record-library-merged = { $added } hinzugefügt, { $known } schon hier. Nichts wurde überschrieben.
record-library-merged-partly = { $added } hinzugefügt, { $known } schon hier. Nicht lesbar und daher ausgelassen: { $refused } der Datei. Nichts wurde überschrieben.

# Die gemeinsame Bibliotheksdatei
record-shared-ask = Der Browser fragt, bevor er die Datei wieder öffnet: „Abgleichen“ wählen.
record-shared-same = Abgeglichen { $time }: { $records }; { $came } erhalten, { $went } gesendet.
record-shared-foreign = Hier nicht lesbar: { $records } der Datei. Die Datei blieb, wie sie ist.
    .fix = Was lesbar war, ist in der Bibliothek. Die Fassung von Haulm verwenden, die die Datei geschrieben hat, oder eine andere Datei wählen.
record-shared-restless = Andere schreiben fortwährend in die Datei.
    .fix = Alles ist in dieser Bibliothek. Gleich noch einmal „Abgleichen“ wählen.
record-shared-gone = Die Datei ist nicht mehr dort, wo sie war.
record-shared-denied = Der Browser durfte die Datei nicht öffnen.
record-shared-fix = Alles ist in dieser Bibliothek. Das Laufwerk prüfen und „Abgleichen“ wählen, oder die Datei neu wählen.

# Was der Browser verloren hat
record-missing = Nicht mehr im Speicher des Browsers, vielleicht in einem anderen Tab gelöscht: { $records }, in diesem Tab noch vorhanden.
record-write-back = Wiederherstellen
record-written-back = { $records } wiederhergestellt.

# Nach einem Fehler des Programms
record-rescue-title = Haulm ist stehen geblieben
record-rescue-reading = Gespeicherte Daten werden gelesen …
record-rescue-exported = { $records } und die offenen Seiten nach { $file } exportiert.
record-rescue-again = Neu starten

# Beim Start
record-draft-unread = Was zuvor auf der Seite stand, ist nicht lesbar. Es bleibt gespeichert; siehe „Beiseitegelegt“ in der Bibliothek.
record-settings-unread = Die Optionen sind nicht lesbar; es gelten die üblichen. Sie bleiben gespeichert und stehen in der Bibliothek unter „Beiseitegelegt“, sobald eine geändert wird.

# Ein Text, der nicht angenommen wird. Wie er heißt:
record-the-file = Die Datei
record-the-link = Der Link
record-the-record = Der gespeicherte Datensatz
# Wo darin der Fehler ist.
record-place = Zeile { $line }, Byte { $byte }
# Was daraus wurde.
record-nothing-changed = Auf der Seite und in der Bibliothek wurde nichts geändert.
record-kept-as-is = Der Datensatz bleibt, wie er ist; vor allem anderen in einer Datei sichern.
record-too-large = { $subject } hat { $size }; gelesen werden höchstens { $limit }.
    .fix = Prüfen, ob es ein Rezept ist: Eines mit einem Dutzend Flüssigkeiten hat etwa 6 kB.
record-too-deep = { $subject } schachtelt Klammern tiefer als { $deepest }, bei { $place }.
    .fix = Eine von Haulm gespeicherte Datei wählen.
record-too-many = { $subject } hat { $count } Einträge in „{ $key }“; gelesen werden höchstens { $limit }.
    .fix = Eine von Haulm gespeicherte Datei wählen.
record-too-long = Der Text von „{ $key }“ hat { $length } Zeichen; gelesen werden höchstens { $limit }.
    .fix = Den Text in einem Texteditor kürzen und erneut versuchen.
record-empty = { $subject } ist leer.
    .fix = Eine bis zum Ende geschriebene Kopie auswählen, wenn es eine gibt.
record-breaks-off = { $subject } bricht bei { $place } ab.
    .fix = Das Ende fehlt. Eine vollständige Kopie auswählen, wenn es eine gibt.
record-no-json = { $subject } ist ab { $place } kein JSON-Text.
    .fix = Eine unveränderte Kopie auswählen oder die Stelle in einem Texteditor berichtigen.
record-foreign = { $subject } ist nicht von Haulm: Der Schlüssel "haulm" fehlt.
    .fix = Eine Datei wählen, die Haulm gespeichert hat.
record-other-kind = { $subject } ist von Haulm, enthält aber „{ $kind }“; das öffnet diese Seite nicht.
    .fix = Eine Datei der Art wählen, die diese Seite öffnet.
record-newer = { $subject } hat Format { $version }; dieses Haulm kennt Formate bis { $known }.
    .fix = Die Seite neu laden, um das neueste Haulm zu erhalten, und dann erneut versuchen.
record-no-version = { $subject } hat keine Formatversion.
    .fix = Eine unveränderte Kopie auswählen.
record-duplicate-key = { $subject } hat den Schlüssel „{ $key }“ zweimal.
    .fix = Den falschen der beiden in einem Texteditor löschen oder eine unveränderte Kopie auswählen.
record-damaged = { $subject } ist bei { $place } beschädigt, nach „{ $before }“.
    .fix = Dort fehlt ein Schlüssel, steht zweimal oder hat einen Wert, den Haulm nicht kennt. Eine unveränderte Kopie auswählen oder die Stelle in einem Texteditor berichtigen.
record-altered = { $subject } wurde nach dem Speichern geändert: Die Prüfsumme ist jetzt { $found }.
    .fix = Einen älteren Stand wiederherstellen oder eine exportierte Kopie importieren.
record-bad-key = Der gespeicherte Datensatz hat einen Schlüssel, der keinen Datensatz benennt.
    .fix = Vielleicht hat ihn ein anderes Programm geschrieben. Er bleibt, wie er ist.

# Eine Datei, die gar nicht gelesen wird
record-file-too-large = Die Datei hat { $size }; gelesen werden höchstens { $limit }.
    .fix = Prüfen, ob es ein Rezept oder eine Bibliothek von Haulm ist: Ein Rezept mit einem Dutzend Flüssigkeiten hat etwa 6 kB. Nichts wurde geändert.
record-file-unreadable = Der Browser konnte die Datei nicht lesen.
    .fix = Prüfen, ob sie noch da ist und gelesen werden darf. Nichts wurde geändert.
record-file-unreadable-says = Der Browser konnte die Datei nicht lesen. Seine Meldung: „{ $why }“.
    .fix = Prüfen, ob sie noch da ist und gelesen werden darf. Nichts wurde geändert.

# Warum der Browser etwas nicht aufbewahrt
record-store-full = Der Browser hat keinen Platz mehr für Haulm.
    .fix = Die Arbeit ist noch auf der Seite: jetzt in einer Datei sichern. Dann Platz schaffen: löschen, was andere Seiten dieser Adresse aufbewahren, oder mit einer Kopie der Bibliothek neu beginnen.
record-store-blocked = Der Browser lässt Haulm nichts aufbewahren.
    .fix = Die Arbeit ist noch auf der Seite: jetzt in einer Datei sichern. Ein privates Fenster oder eine Einstellung des Browsers kann die Ursache sein.
record-store-silent = Die Datenbank des Browsers antwortet nicht. Seither ist nichts gespeichert.
    .fix = Die Arbeit ist noch auf der Seite: jetzt in eine Datei exportieren. Andere Tabs von Haulm zu schließen kann helfen.
record-store-other = Der Browser hat es nicht gespeichert: „{ $why }“.
    .fix = Die Arbeit ist noch auf der Seite: jetzt in einer Datei sichern, dann die Seite neu laden.
record-local-storage-full = Der lokale Speicher ist voll.
record-local-storage-blocked = Der lokale Speicher ist gesperrt.
record-only-in-database-fix = Eingaben gehen in die Datenbank des Browsers; was in der letzten Sekunde vor einem Neuladen eingegeben wurde, kann verloren gehen. Platz schaffen: löschen, was andere Seiten dieser Adresse aufbewahren.

# Warum etwas nicht gespeichert wurde
record-not-kept = Der Browser hat es gespeichert, aber etwas anderes zurückgelesen.
    .fix = Die Arbeit ist noch auf der Seite: jetzt in einer Datei sichern.
record-occupied = Ein nicht lesbarer Datensatz hat den Platz „{ $key }“, der hierfür nötig ist. Er wird nicht überschrieben.
    .fix = Beides in Dateien sichern: diese Arbeit von der Seite aus, jenen Datensatz von der Bibliothek aus.
record-unknown = Der Datensatz ist nicht mehr in der Bibliothek.
    .fix = Vielleicht hat ein anderer Tab etwas geändert. Die Arbeit ist noch auf der Seite: als neues Rezept speichern.
record-not-written = Das Rezept kann nicht gespeichert werden: „{ $why }“.
    .fix = Die Zahlen auf der Seite notieren und sich an die Person wenden, die Haulm hier betreut.
