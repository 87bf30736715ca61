# Hilfe. In einer Liste ist jede Zeile ein Punkt; in einer Liste von Begriffen ist jede Zeile `Begriff — Bedeutung`.

help-title = Hilfe
help-contents = Auf dieser Seite

help-tour = Rundgang mit dem Beispiel
help-tour-steps =
    Seite Rezept öffnen. Beim ersten Start steht dort das Beispiel: ein erfundenes Werk mit Weizenstroh, pMDI und Wachs.
    Ablesen, was zu dosieren ist: Bei jeder Flüssigkeit steht links die Dosis und rechts der Durchfluss.
    Die Faserfeuchte ändern. Alle Werte folgen sofort; feuchtere Faser bekommt weniger Wasser.
    Dort 25 eingeben. Die beleimte Faser ist jetzt zu feucht: Die Wasserdosis ist null, und die Warnung nennt Abhilfe. Die Eingabe rückgängig machen.
    Einen beliebigen berechneten Wert wählen. Darunter öffnet sich seine Formel mit den Zahlen und der Quelle.
    Seite Bibliothek öffnen, Reiter Bindemittelsysteme, und ein anderes System im Rezept verwenden. Auch das lässt sich rückgängig machen.
    Dem Rezept einen Namen geben und es speichern. Es ist jetzt in der Bibliothek, und jedes Speichern bleibt dort als Stand erhalten.
    Seite Linie öffnen. Die Einstellung jeder Pumpe folgt aus ihrem Auslitern und dem offenen Rezept.
    Seite Labor öffnen für eine Versuchsplatte nach diesem Rezept; Seite Vergleich, um es neben anderen Systemen zu sehen.

help-numbers = Zahlen eingeben
help-numbers-rules =
    Punkt und Komma gelten beide als Dezimalzeichen. Leerzeichen gliedern Ziffern: 12 500.
    Hinter der Zahl kann eine Einheit stehen; sie wird umgerechnet: 4 t/h, 2,5 US gal/min.
    Lässt sich eine Zahl auf zwei Arten lesen, etwa 1,234, wird nachgefragt und nie geraten.
    Auch bei einem Prozentwert, der als Bruchteil eingegeben ist, 0,65 für 65 %, wird nachgefragt.
    Eine Einheit, die unmittelbar nach einer Zahl gewählt wird, gilt für diese Zahl. Sonst bleibt die Größe gleich und wird umgerechnet.
    Eine aus einer Tabellenkalkulation kopierte Spalte füllt das Feld, in das sie eingefügt wird, und die Felder darunter.

help-bases = Zwei Bezüge der Feuchte
help-bases-text = Bezogen auf atro (% atro) heißt: Wasser je atro Masse; so ergibt es die Darrprobe im Labor (EN 322). Bezogen auf feucht (% feucht) heißt: Wasser je Gesamtmasse; so zeigen es viele Messgeräte an. 20 % atro sind 16,7 % feucht. Unter jeder Feuchte steht auch der Wert mit dem anderen Bezug.

help-cautions = Sicherheitshinweise
help-cautions-text = Nur allgemein formuliert. Maßgebend sind örtliche Vorschriften, das Sicherheitsdatenblatt und zugelassene Fachleute.

help-data = Wo die Daten sind
help-data-rules =
    In diesem Browser, auf diesem Gerät und sonst nirgends. Nichts wird gesendet: Es gibt kein Konto und keinen Server.
    Was auf einer Seite steht, wird schon beim Eintippen gespeichert und ist nach Neuladen oder Absturz wieder da.
    Jedes Speichern ergibt einen Stand, der sich nie mehr ändert, mit Nummer, Kürzel und Notiz zur Änderung. Zwei beliebige lassen sich vergleichen; ein älterer lässt sich wiederherstellen.
    Zwei Stände, die unabhängig voneinander entstanden sind, bleiben nebeneinander, bis sie zusammengeführt werden. Kein Speichern ersetzt ungefragt einen neueren Stand.
    Eine Freigabe sagt, wer welchen Stand wann freigegeben hat. Sie gilt, bis sie zurückgezogen wird, auch wenn später Neues gespeichert wird.
    Alles lässt sich in eine Datei exportieren und mit der Bibliothek eines anderen Browsers zusammenführen. Nichts wird überschrieben.
    Mehrere Personen können eine Bibliotheksdatei auf einem gemeinsamen Laufwerk nutzen, wenn der Browser einer Seite erlaubt, in eine Datei zu schreiben.
    Ein Rezept lässt sich auch als Link oder QR-Code teilen: Es steckt im Link selbst, hinter dem #.
    Nach dem ersten Besuch öffnet sich die App auch ohne Netz. Eine neuere Version wartet, bis sie gewählt wird.
    Ein Datensatz, der nicht lesbar ist, wird in der Bibliothek aufgeführt und bleibt, wie er ist.
    Ein Browser kann löschen, was er speichert. Die Bibliothek regelmäßig sichern.
    Auf einem gemeinsam genutzten Gerät sehen alle, die diesen Browser verwenden, dieselbe Bibliothek.

help-scope = Was Haulm berechnet
help-scope-does =
    Die Dosierung auf getrocknete Faser: jede Flüssigkeit nach Masse und nach Volumen, und das Wasser.
    Die Matte: ihr Gewicht, feucht und atro, und ihre Zusammensetzung.
    Die Linie: Bandgeschwindigkeit, Presszeit, Pressfaktor und Engpass.
    Verluste, Verbrauch und Kosten, je Volumen, Fläche und Masse der Platten und je Schicht.
    Die Massenbilanz an jeder Station, Feststoff und Wasser getrennt.
    Lösungen aus Kristallen und vorgemischte Leimflotte.
    An der Linie: Pumpeneinstellungen, Linienprüfung, Tanks und Umstellungen.
    Im Labor: Wägezettel für Versuchsplatten, Versuchsreihen und ihre Effekte.
    Bindemittelsysteme nebeneinander, mit der Unsicherheit jedes Werts.
help-scope-not = Was Haulm nicht leistet
help-scope-does-not =
    Haulm steuert nichts. Die Verriegelungen und die eigenen Grenzen der Linie bleiben wirksam und gehen vor.
    Haulm weist keine Emissionsklasse nach. Dafür ist eine Prüfung nötig.
    Haulm kennt das eingesetzte Harz nicht. Das Zertifikat des Lieferanten geht jedem Richtwert vor.
    Wärme und Trocknung gelten, wie sie eingegeben sind; Trockner, Beleimmischer und Presse werden nicht modelliert.

help-keys = Tasten
help-keys-list =
    Tab — nächstes Feld oder nächste Schaltfläche
    Enter — nächstes Feld; in einer Tabelle das Feld darunter
    / oder Strg+K — Seite, Station, Feld oder Rezept suchen
    Strg+S — Rezept speichern
    Strg+Z — auf der offenen Seite rückgängig machen, außerhalb eines Felds
    Strg+Y — auf der offenen Seite wiederholen, außerhalb eines Felds
    Esc — Geöffnetes schließen, Umbenennen abbrechen

help-ranges = Übliche Bereiche
help-ranges-text = Außerhalb eines Bereichs warnt Haulm und rechnet trotzdem weiter: Sie kennen Ihr Werk. „Ungeprüft“ heißt, dass niemand den Wert mit einer veröffentlichten Quelle verglichen hat.
help-ranges-search = Größe, Flüssigkeit oder Quelle suchen
help-ranges-found = { $found } von { $all } Bereichen
help-quantity = Größe
help-of = Gilt für
help-typical-range = Üblicher Bereich
help-line-and-board = Linie und Platte
help-only-binder = als einziges Bindemittel
help-beside-binder = neben einem anderen Bindemittel

help-glossary = Begriffe
help-terms-general = Auf jeder Seite
help-terms-general-list =
    Soll — was erreicht werden soll
    Ist — was abgelesen oder gemessen wurde
    Minimum, Maximum — der kleinste und der größte Wert, der angenommen wird oder zulässig ist
    Üblicher Bereich — wo die Werte in der Regel liegen; außerhalb erscheint eine Warnung
    Richtwert — ein Wert, den die App einsetzt, bis ein eigener eingegeben wird
    Erforderlich, Freiwillig — ob ein Feld ausgefüllt werden muss
    Leer lassen … — was gilt, solange das Feld leer ist
    Eingaben, Ergebnisse — was eingegeben wird, und was daraus berechnet wird
    Fehler — kein Ergebnis, oder ein Ergebnis, das nicht gilt
    Warnung — eine Gefahr, ein Grenzwert oder ein unüblicher Wert; der Text sagt, welches davon
    Hinweis — gut zu wissen, nichts zu beheben
    Feucht — mit dem enthaltenen Wasser
    Atro — ganz ohne Wasser
    Feststoffgehalt — Massenanteil des Feststoffs in einer Flüssigkeit, wie im Zertifikat
    Bibliothek — gespeicherte Rezepte, Bindemittelsysteme und Versuche
    Stand — ein gespeicherter Zustand eines Rezepts, je Rezept nummeriert
    Freigabe — kennzeichnet den Stand, den die Linie fahren soll
    Exportieren, Importieren — in eine Datei schreiben, aus einer Datei lesen
    Geteilter Link — ein Link, der das ganze Rezept enthält
    Ausschließen — eine Ablesung bei der Auswertung weglassen, ohne sie zu löschen
    Ansetzen — Lösungen und Leimflotte herstellen
help-terms-board = Rezept
help-terms-board-list =
    Dosis — Flüssigkeit oder Feststoff je Faser oder je Platte
    Matten­zusammensetzung — woraus die Matte besteht: Faser, Feststoff und Wasser
    Mattengewicht je Meter — Masse der Matte je laufenden Meter
    Presszeit — wie lange eine Stelle der Matte in der Presse ist
    Pressfaktor — Presszeit je Millimeter Plattendicke
    Maximale Band­geschwindigkeit — die Geschwindigkeit, die der Antrieb oder das Werk zulässt
    Leistung des Trockners — so viel Faser liefert der Trockner höchstens
    Leistung des Beleimmischers — so viel beleimte Faser nimmt der Beleimmischer höchstens auf
    Engpass — die Maschine, die die Linie begrenzt
    Feuchteverlust (Beleimmischer bis Streumaschine) — Wasser, das zwischen Beleimmischer und Streumaschine entweicht
    Schleifzugabe — die Dicke, die das Schleifen von einer Seite abträgt
    Besäumung — die Ränder der Matte, die abgeschnitten werden
    Kontrolle der Massenbilanz — Feststoff und Wasser, die in jede Station gehen und herauskommen, getrennt
help-terms-line = Linie
help-terms-line-list =
    Pumpen­einstellungen — worauf jede Pumpe jetzt einzustellen ist
    Einstelltabelle — die Einstellungen über einen Bereich von Bandwaage und Feuchte
    Linienprüfung — Ablesungen der laufenden Linie neben ihrem Soll
    Auslitern — Messung des Durchflusses einer Pumpe durch Auffangen und Wägen
    Probe — eine Zeile beim Auslitern: Einstellung, Zeit, Brutto, Tara, Netto, Durchfluss
    Korrektur — was zu einer Einstellung dazukommt, damit ihr Durchfluss das Soll trifft
    Vorhersagebereich — wo eine einzelne neue Probe mit 95 % Wahrscheinlichkeit liegt
    Vertrauensbereich — wo der wahre Mittelwert bei einem Vertrauensniveau von 95 % liegt
    Fassungsvermögen — das größte Volumen eines Tanks
    Restmenge — das Volumen, das nicht abgepumpt werden kann
    Leer um — wann im Tank nur noch die Restmenge ist
    Lieferzeit — von der Bestellung bis zur Lieferung
    Bestellen bis — wann zu bestellen ist, damit der Tank nicht leer wird
    Überfällig seit — wie lange dieser Zeitpunkt vorbei ist
    Übergangsplatte — eine Platte, die zwischen zwei Rezepten entsteht und keinem von beiden entspricht
help-terms-bench = Labor
help-terms-bench-list =
    Wägezettel — die Massen eines Ansatzes, zum Einwägen und Eintragen
    Mehreinwaage — was über den Bedarf der Matte hinaus eingewogen wird, für Verluste
    Ansatz — was auf einmal in den Beleimmischer kommt
    Lauf — eine Kombination von Stufen in einer Versuchsreihe
    Vermengungen — Effekte, die der Versuchsplan nicht trennen kann
    Kein signifikanter Effekt auf … — ein Effekt, der kleiner ist, als die Streuung erkennen lässt
help-terms-compare = Vergleich
help-terms-compare-list =
    Gleichstandspreis — der Preis, bei dem zwei Systeme gleich viel kosten
    Empfindlichkeit — Ergebnisse, während sich eine Eingabe über einen Bereich ändert
    Betriebskarte — Ergebnisse, während sich zwei Eingaben ändern
    Unsicherheits­budget — wie viel jede Eingabe zur Unsicherheit eines Ergebnisses beiträgt
    95-%-Quantil — 95 % aller Ziehungen liegen darunter

help-symbols = Formelzeichen
help-symbols-text = Bei einer Flüssigkeit steht ihr Platz im Rezept als Index: m₁ gehört zur ersten Flüssigkeit.
help-inputs = Eingaben
help-results = Ergebnisse
help-of-liquid = Flüssigkeit: { $name }

help-sources = Quellen
help-sources-text = Die Formeln sind Massenbilanzen und Definitionen. Einheiten nach NIST SP 811, Wasser nach IAPWS-95, Dichten von Lösungen nach dem CRC Handbook, Molmassen nach IUPAC. Richtwerte nennen ihre Quelle oder sagen, dass sie ungeprüft oder Praxis im Werk sind. Das Zertifikat des Lieferanten und die eigenen Messungen des Werks gehen ihnen allen vor.

help-about = Über Haulm
help-version = Haulm Version { $version }. Haulm berechnet alles in diesem Browser und sendet nichts.
