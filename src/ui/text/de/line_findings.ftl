# Befunde, Urteile und Gründe an der Linie.

# Auslitern. Vor jedem Befund steht sein Ort mit Doppelpunkt.
line-finding-catch-incomplete = unvollständig, zählt daher noch nicht.
    .fix = Einstellung, Zeit und Bruttomasse eingeben.
line-finding-settings-not-increasing = unter { $before }, der Einstellung der Probe davor.
    .fix = Auf Schreibfehler prüfen. Wurden die Proben in dieser Reihenfolge genommen, so lassen: Die Gerade bleibt dieselbe.
line-finding-negative-mass = um { $by } weniger als das leere Gefäß.
    .fix = Beide Massen und ihre Einheiten prüfen. Das Gefäß leer lassen, wenn die Waage mit ihm auf null gestellt wurde.
line-finding-few-catches = erst { $count } der { $least } Proben, die ein gültiges Auslitern braucht.
    .fix = Mindestens { $least } Proben bei mindestens zwei Einstellungen nehmen, verteilt über jene, bei denen die Linie läuft.
line-finding-one-setting = alle Proben bei einer Einstellung, daher lässt sich keine Gerade anpassen.
    .fix = Mindestens bei einer zweiten Einstellung auslitern, weit weg von der ersten.
line-finding-flow-not-increasing = Mehr Einstellung ergibt nicht mehr Durchfluss.
    .fix = Die Proben auf Schreibfehler prüfen, die Pumpe auf eine verstopfte Leitung oder Luft.
line-finding-suspect = weit weg von der Geraden durch die anderen Proben: das { $times }-Fache ihrer Streuung; mehr als das { $limit }-Fache ist selten.
    .fix = Sie zählt weiterhin. Auf Schreibfehler prüfen, nochmals auslitern oder ausschließen.
line-finding-not-calibrated = kein gültiges Auslitern, daher ist keine Einstellung bekannt.
    .fix = Auslitern, mindestens drei Proben.
line-finding-faulty-test = Das Auslitern ist noch nicht verwendbar.
    .fix = Beheben, was beim Auslitern markiert ist: eine Dichte, eine Probe oder zu wenige Proben.

# Pumpen und Düsen
line-finding-not-whole = keine ganze Zahl.
    .fix = Anzahl der Düsen eingeben, etwa 8.
line-finding-limits-crossed = nicht über der kleinsten Einstellung.
    .fix = Eine größte Einstellung über der kleinsten eingeben.
line-finding-window-crossed = nicht über dem kleinsten Durchfluss einer Düse.
    .fix = Einen größten Durchfluss über dem kleinsten eingeben.
line-finding-nozzles-incomplete = fehlt, daher lassen sich die Düsen nicht berechnen.
    .fix = Anzahl, kleinsten und größten Durchfluss der Düsen eingeben oder alle drei leer lassen.
line-finding-same-name = zwei Pumpen dieses Namens.
    .fix = Eine umbenennen, damit an der Linie niemand sie verwechselt.
line-finding-shares = Die Pumpen dieser Flüssigkeit fördern zusammen { $sum } ihres Durchflusses.
    .fix = Anteile eingeben, die zusammen 100 % ergeben.
line-finding-no-pumps = noch keine Pumpen.
    .fix = Für jede Flüssigkeit und für das Wasser eine Pumpe anlegen und jede auslitern.
line-finding-no-pump = im Rezept dosiert, aber ohne Pumpe.
    .fix = Eine Pumpe dafür anlegen oder zuordnen. Pumpen erkennen Flüssigkeiten an ihren Namen.
line-finding-not-in-recipe = Was sie fördert, ist nicht in diesem Rezept.
    .fix = Ausgeschaltet lassen oder einer Flüssigkeit des Rezepts zuordnen, die hier anders heißt.
line-finding-nozzles-too-few = Sind alle Düsen offen, sprüht jede { $each }, mehr als ihre { $most }.
    .fix = Mehr oder größere Düsen einbauen oder den Durchfluss senken.
line-finding-nozzles-too-many = Eine einzige offene Düse sprüht { $each }, weniger als ihre { $least }.
    .fix = Kleinere Düsen verwenden oder einige schließen.
line-finding-nozzles-between = { $open ->
    [one] Mit 1 offenen Düse sprüht jede zu viel, mit { $more } zu wenig.
   *[other] Mit { $open } offenen Düsen sprüht jede zu viel, mit { $more } zu wenig.
}
    .fix = Düsen mit weiterem Bereich verwenden oder den Durchfluss etwas ändern.

# Eine Pumpe, die nicht kann, was das Rezept verlangt
line-reach-setting = Der Durchfluss verlangt die Einstellung { $setting }, { $status }.
line-reach-below-zero = Der Durchfluss liegt unter dem, was sie bei Einstellung null fördert.
line-reach-serves = Sie reicht für Faserströme von { $least } bis { $most }, atro.
line-reach-several = Eines davon hilft. { $all }
line-reach-test-to = Bis { $setting } auslitern, damit die Einstellung im geprüften Bereich liegt.
line-reach-solids = Die Flüssigkeit mit { $solids } Feststoff verwenden.
line-reach-other-pump = Eine Pumpe verwenden, die { $flow } deutlich innerhalb ihrer Einstellungen fördert.
line-reach-fibre-most = Höchstens { $flow } Faser fahren, atro.
line-reach-fibre-least = Mindestens { $flow } Faser fahren, atro.
line-reach-no-help = Auslitern oder eine andere Pumpe verwenden.

# Das Rezept und die Einstelltabelle
line-finding-entry = Dieser Eintrag ist nicht verwendbar.
    .fix = Neu eingeben.
line-finding-no-recipe = Das offene Rezept lässt sich nicht berechnen, daher ist nichts einzustellen.
    .fix = Beheben, was die Seite Rezept markiert, oder ein anderes Rezept öffnen.
line-finding-no-fibre-flow = Das Rezept hat keinen Faserstrom.
    .fix = Auf der Seite Rezept wählen, wie der Faserstrom festgelegt ist.
line-finding-other-recipe = Bandwaage und Faserfeuchte wurden bei „{ $recipe }“ eingegeben.
    .fix = Neu messen oder löschen.
line-finding-no-balance = Das Rezept lässt sich bei dieser Bandwaage und Faserfeuchte nicht berechnen.
    .fix = Beide Einträge prüfen oder löschen.
line-finding-range-crossed = unter dem ersten Wert.
    .fix = Einen letzten Wert über dem ersten eingeben.
line-finding-too-many-steps = ergibt mehr als die { $most }, die eine Einstelltabelle fasst.
    .fix = Einen größeren Schritt eingeben.

# Tanks und Lieferungen
line-finding-above-tank = mehr als das Fassungsvermögen von { $tank }, { $most }.
    .fix = Masse und Einheit prüfen, ebenso das Volumen des Tanks.
line-finding-over-full = enthält mehr, als hineinpasst.
    .fix = Inhalt, Einheit und Volumen des Tanks prüfen.
line-finding-tank-empty = Nichts darin lässt sich abpumpen.
    .fix = Füllen oder den eingegebenen Inhalt prüfen.
line-finding-heel-too-large = so groß wie der ganze Tank.
    .fix = Das Volumen unter dem Auslauf eingeben, kleiner als der Tank.
line-finding-order-overdue = Bestellung überfällig seit { $by }.
    .fix = Jetzt bestellen. { $lower }
line-finding-delivery-late = wird { $by } vor der Lieferung leer.
    .fix = { $lower }
line-lower-use-to = Damit es reicht, höchstens { $flow } verbrauchen.
line-lower-use = Verbrauch senken, bis die Lieferung kommt.
line-finding-no-expansion = noch leer, daher gilt die Dichte wie gemessen.
    .fix = Die Ausdehnung aus dem Datenblatt eingeben oder die Dichte bei der Temperatur der Pumpe.
line-finding-nothing-delivered = Nichts vom Zertifikat ist eingegeben.
    .fix = Feststoffgehalt oder Dichte daraus eingeben, um zu sehen, was sich ändert.
line-finding-no-liquid = Die Flüssigkeit der Lieferung ist nicht gewählt oder nicht in diesem Rezept.
    .fix = Eine Flüssigkeit des Rezepts wählen.

# Ablesungen und Umstellung
line-finding-stale-readings = Diese Ablesungen stammen von „{ $recipe }“, vor der Umstellung.
    .fix = Die Linie beim jetzt laufenden Rezept neu ablesen.
line-finding-sample-incomplete = fehlt, daher ist die Mattenprobe nicht verwendbar.
    .fix = Fläche und Masse der Mattenprobe eingeben oder sie löschen.
line-finding-assumed = nicht abgelesen; Lauf wie im Rezept angenommen.
    .fix = Durchfluss oder Einstellung eingeben, um die tatsächliche Dosis zu sehen.
line-finding-no-transport = noch leer, die Ankunft dahinter ist nicht bekannt.
    .fix = Einmal messen, mit markierten beleimten Fasern oder über die Geschwindigkeit der Förderer.
line-finding-no-press-time = Die Zeit durch die Presse ist nicht bekannt.
    .fix = Mattenbreite und Pressenlänge im Rezept eingeben.
line-finding-nothing-changes = Beide Rezepte verlangen von jeder Pumpe dasselbe.
    .fix = Ein anderes Rezept als Ziel der Umstellung wählen.
line-finding-wet-between = Zwischen zwei Schritten liegt die Matte bei { $moisture }, feuchter, als beide Rezepte verlangen.
    .fix = Vorher das Wasser senken und die Presse auf Dampf beobachten.

# Was mit einer Pumpe zu tun ist
line-action-set = Auf { $setting } einstellen.
line-action-set-untested = Auf { $setting } einstellen, { $status }.
line-action-keep = Keine Änderung.
line-action-stop = Abstellen: Das Rezept braucht nichts davon.
line-action-catch-test-first = Zuerst auslitern: Der Durchflussmesser zeigt { $metered }, die Gerade aus dem Auslitern ergibt { $by_line } bei dieser Einstellung.
line-action-no-catch-test = Zuerst auslitern: kein gültiges Auslitern vorhanden.
line-action-cannot = Kann { $flow } nicht fördern: { $status }.
line-action-enter-setting = Jetzige Einstellung eingeben: Von ihr geht die neue aus.
line-action-not-read = Nicht abgelesen. Durchflussmesser und Einstellung eingeben.
line-action-distrusted = Zuerst auslitern: Die Ablesungen widersprechen den anderen.
line-action-unsettled = Zuerst klären, welche Ablesung falsch ist.

# Warum ein Schritt an seiner Stelle steht
line-why-drier-fibre-first = Trockenere Faser zuerst: Der Trockner braucht am längsten, und trockenere Faser kann die Matte nicht zu feucht machen.
line-why-less-water-first = Weniger Wasser zuerst: Eine zu feuchte Matte kann beim Verlassen der Presse platzen. Bei einer trockeneren ist das weniger wahrscheinlich, doch eine ungenügend ausgehärtete Mittellage kann am Auslauf aufgehen.
line-why-release-first = Trennmittel zuerst einschalten, vor dem Bindemittel, das an der Presse kleben würde.
line-why-together = Faser und Bindemittel im selben Augenblick: Zwei Bindemittel zugleich bringen das Wasser beider, gar keines lässt die Platte ungebunden.
line-why-release-last = Trennmittel erst nach dem Bindemittel abschalten, das kleben würde.
line-why-more-water-last = Mehr Wasser zuletzt: Nur die neuen beleimten Fasern vertragen es.
line-why-moister-fibre-last = Feuchtere Faser zuletzt: Nur die neuen beleimten Fasern vertragen ihr Wasser.

# Was sich in einem Schritt ändert
line-change-fibre-moisture = Faserfeuchte: von { $from } auf { $to }
line-change-fibre = Faserstrom: von { $from } auf { $to } atro; die Bandwaage zeigt dann { $belt }
line-change-pump = { $pump }: { $from } → { $to }
line-change-pump-untested = { $pump }: { $from } → { $to }, { $status }
line-change-pump-cannot = { $pump }: { $from } → { $to }, was sie nicht fördern kann: { $status }
line-change-mat-weight = Mattengewicht, feucht: von { $from } auf { $to }
line-change-line-speed = Bandgeschwindigkeit: von { $from } auf { $to }
line-change-press-gap = Pressspalt oder Distanzleisten, für eine Pressdicke: von { $from } auf { $to }
line-change-press-temperature = Presstemperatur: für das neue Bindemittel einstellen, wie sein Datenblatt und die eigenen Aufzeichnungen des Werks es angeben

# Was eine Leitung braucht
line-pipe-fills = Die Leitung füllt sich, bevor etwas gesprüht wird.
line-pipe-flush = Die Leitung mit dem spülen, was das Sicherheitsdatenblatt der Flüssigkeit erlaubt, damit nichts darin aushärtet. Niemals Wasser bei einem Isocyanat.
line-pipe-displaces = Was in der Leitung ist, muss zuerst heraus.

# Eine zweifelhafte Ablesung: „Bandwaage um 5 % zu niedrig abgelesen“
line-doubt-reads = { $side ->
    [high] { $quantity } um { $size } zu hoch abgelesen
   *[low] { $quantity } um { $size } zu niedrig abgelesen
}
line-doubt-is = { $side ->
    [high] { $quantity } um { $size } zu hoch
   *[low] { $quantity } um { $size } zu niedrig
}
line-doubt-or = { $first } oder { $next }
line-doubt-either = entweder { $readings }
line-doubt-and = { $first }; und { $next }

# Wie man sich einer Ablesung vergewissert
line-remedy-belt-scale = Nullpunkt und Kalibrierung der Bandwaage prüfen.
line-remedy-fibre-moisture = Eine Faserprobe im Ofen trocknen.
line-remedy-drying-loss = Die Feuchte nach dem Beleimmischer und an der Streumaschine messen.
line-remedy-line-speed = Die Zeit einer Marke auf der Matte über eine gemessene Länge stoppen.
line-remedy-mat-width = Die besäumte Mattenbreite messen.
line-remedy-mat-weight = Eine weitere Mattenprobe ausschneiden und wiegen.
line-remedy-mat-moisture = Eine Mattenprobe im Ofen trocknen.
line-remedy-board = Eine weitere Rohplatte messen und wiegen.
line-remedy-board-moisture = Eine Plattenprobe im Ofen trocknen.
line-remedy-thickness = Die Rohplatte mit dem Messschieber messen.
line-remedy-flow = Den Durchfluss von { $liquid } messen.
line-remedy-pump = { $pump } auslitern.
line-remedy-solids = Den Feststoffgehalt von { $liquid } bestimmen.
line-remedy-liquid-density = Die Dichte von { $liquid } messen.
line-remedy-boards = Rohplatten neu zählen und wiegen.
line-remedy-metered = Die Pumpe für { $liquid } auslitern und Peilungen und Lieferungen prüfen.
line-remedy-delivered = Die Wiegescheine von { $liquid } prüfen.
line-remedy-dip = Die Tanks von { $liquid } neu peilen.

# Was die Ablesungen zusammen sagen
line-verdict-nothing-checked = Nichts prüft diese Ablesungen.
    .fix = Einstellungen der Pumpen, Bandgeschwindigkeit und eine Mattenprobe ergänzen.
line-verdict-all-checked = Alle Ablesungen stimmen innerhalb ihrer Unsicherheiten überein.
    .fix = Jede Ablesung wird von anderen geprüft.
line-verdict-agree = Alle Ablesungen stimmen innerhalb ihrer Unsicherheiten überein.
    .fix = Nicht gegengeprüft: { $unchecked }.
line-verdict-unexplained = Die Ablesungen widersprechen einander, und keine einzelne erklärt es.
    .fix = Alles zu einem Zeitpunkt neu ablesen und Feststoffgehalte und Mattenbreite des Rezepts prüfen.
line-verdict-distrust = { $doubts }: { $left_out ->
        [several] Ohne diese Ablesungen stimmt alles Übrige überein.
        [one-of] Ohne eine dieser Ablesungen stimmt alles Übrige überein.
       *[it] Ohne diese Ablesung stimmt alles Übrige überein.
    }
    .fix = { $remedies }
line-verdict-period-unexplained = Die Ablesungen des Zeitraums widersprechen einander, und keine einzelne erklärt es.
    .fix = Prüfen, ob alle Summen und Peilungen von denselben Stunden sind.
line-verdict-period-agrees = Alle Ablesungen des Zeitraums stimmen innerhalb ihrer Unsicherheiten überein.
    .fix = Kein Messgerät driftet.
line-split-density = Rohdichte der Rohplatte { $density } gegen Soll: Flächengewicht { $mass }, Dicke { $thickness }, Feuchte { $moisture }.
    .fix = Zuerst korrigieren: { $largest ->
        [mass] Streumaschine oder Bandgeschwindigkeit.
        [thickness] Pressspalt.
        [moisture] Trocknung.
       *[none] nichts.
    }
