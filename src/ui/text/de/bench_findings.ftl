# Was im Labor gefunden wird, und wie man es behebt.

# Der Ort, dann was dort gefunden wurde
bench-finding-at = { $place }: { $what }

# Wägezettel
bench-finding-not-whole = keine ganze Zahl.
    .fix = Eine ganze Zahl eingeben, etwa 2.
bench-finding-recipe-unsolved = Das Rezept lässt sich so, wie es hier angesetzt wird, nicht berechnen; es gibt nichts einzuwiegen.
    .fix = Beheben, worauf die Seite Rezept hinweist, oder ein anderes Rezept öffnen.
bench-finding-out-of-range = Die Werte sind zum Rechnen zu groß oder zu klein geworden.
    .fix = Mattengröße, Anzahl der Platten und Dosen auf falsches Dezimalzeichen und falsche Einheit prüfen.
bench-finding-too-wet = Die beleimten Fasern sind zu feucht. Ein Ansatz enthält { $excess } mehr Wasser, als die Soll-Mattenfeuchte braucht; es wird kein Wasser eingewogen, und die Matte kommt auf { $mat }.
    .fix = Faser auf { $fibre } trocknen, dann ist kein Wasser zu viel; oder Flüssigkeiten mit mehr Feststoff, kleinere Dosen oder eine höhere Mattenfeuchte wählen.
# Keine Faser wäre trocken genug.
bench-finding-too-wet-by-liquids = Die beleimten Fasern sind zu feucht. Ein Ansatz enthält { $excess } mehr Wasser, als die Soll-Mattenfeuchte braucht; es wird kein Wasser eingewogen, und die Matte kommt auf { $mat }.
    .fix = Keine Faser ist trocken genug: Schon die Flüssigkeiten bringen mehr Wasser als nötig. Flüssigkeiten mit mehr Feststoff nehmen, sie weniger verdünnen, ihre Dosen senken oder eine höhere Mattenfeuchte hinnehmen.
bench-finding-split = Der Beleimmischer fasst nicht alles auf einmal: { $batches } gleiche Ansätze, Platten je Ansatz: { $boards }.
    .fix = Einen Ansatz nach dem anderen einwiegen und beleimen.
bench-finding-split-in-parts = Der Beleimmischer fasst nicht alles auf einmal: { $batches } gleiche Ansätze, Platten je Ansatz: { $boards }.
    .fix = Ein Ansatz ergibt keine ganzen Platten. Die Ansätze vor dem Streuen mischen oder die Anzahl der Platten ändern.
bench-finding-too-many-batches = so klein, dass mehr als hundert Ansätze nötig wären; alles zusammen wiegt { $whole }.
    .fix = Fassungsvermögen und Einheit prüfen oder weniger Platten machen.
bench-finding-rounding-shifts = Die gerundeten Massen ergeben eine Dosis von { $actual }, nicht { $target }.
    .fix = Auf einer feineren Waage wiegen oder einen größeren Ansatz machen.

# Zu wenig für die Waage, nach dem, was hilft: mehr Platten, Verdünnen, beides, keines
bench-finding-below-minimum = { $mass } liegt unter { $minimum }, der sinnvollen Mindesteinwaage dieser Waage.
    .fix = Eine feinere Waage nehmen oder einen Beleimmischer für größere Ansätze.
bench-finding-below-minimum-fibre = { $mass } liegt unter { $minimum }, der sinnvollen Mindesteinwaage dieser Waage.
    .fix = Mehr Platten machen oder eine feinere Waage nehmen.
bench-finding-below-minimum-boards = { $mass } liegt unter { $minimum }, der sinnvollen Mindesteinwaage dieser Waage.
    .fix = Für { $boards } Platten in gleich vielen Ansätzen einwiegen; oder eine feinere Waage nehmen.
bench-finding-below-minimum-thin = { $mass } liegt unter { $minimum }, der sinnvollen Mindesteinwaage dieser Waage.
    .fix = Mit einem Teil des Wassers auf { $solids } Feststoff verdünnen und das Verdünnte einwiegen; oder eine feinere Waage nehmen.
bench-finding-below-minimum-boards-or-thin = { $mass } liegt unter { $minimum }, der sinnvollen Mindesteinwaage dieser Waage.
    .fix = Für { $boards } Platten in gleich vielen Ansätzen einwiegen, oder mit einem Teil des Wassers auf { $solids } Feststoff verdünnen und das Verdünnte einwiegen; oder eine feinere Waage nehmen.

# Wägen
bench-finding-weighed-over-dose = { $more } über dem Plan.
    .fix = Wenn es im Beleimmischer ist: in den anderen Zeilen zugeben, was der Wägezettel zeigt, oder die Dosis so hinnehmen, { $dose }. Wenn nicht: den Überschuss zurücknehmen.
bench-finding-weighed-over-mass = { $more } über dem Plan.
    .fix = Wenn es im Beleimmischer ist: in den anderen Zeilen zugeben, was der Wägezettel zeigt, oder die Masse so hinnehmen. Wenn nicht: den Überschuss zurücknehmen.
bench-finding-over-capacity = Mit dem, was gewogen wurde, kommt der Ansatz auf { $mass }; der Beleimmischer fasst { $capacity }.
    .fix = Zurücknehmen, was noch nicht im Beleimmischer ist, oder in zwei Teilen beleimen.
bench-finding-slip-meant = { $planned } geplant, { $entered } eingegeben.
    .fix = Waren { $meant } gemeint? Ohne Bestätigung wird daran nichts korrigiert.
bench-finding-slip-swapped = { $planned } geplant, { $entered } eingegeben.
    .fix = Es passt zu { $other }. Wurden die beiden vertauscht? Ohne Bestätigung wird daran nichts korrigiert.
bench-finding-slip-far-off = { $planned } geplant, { $entered } eingegeben.
    .fix = Stimmt die Eingabe? Ohne Bestätigung wird daran nichts korrigiert.
bench-finding-recovered-too-much = { $recovered } Feststoff in der Rückwaage, { $weighed } eingewogen.
    .fix = Rückwaage, ihre Tara und die Feuchte der beleimten Fasern prüfen.

# Platten und Prüfkörper
bench-finding-unlikely-density = Die Rohdichte ergibt { $density }; Platten haben 100 bis 1500 kg/m³.
    .fix = Masse, Länge, Breite und Dicke samt Einheiten prüfen. Bis dahin wird nicht mit dem Soll verglichen.
bench-finding-load-in-kilonewton = Die Kraft ist für eine Platte viel zu klein.
    .fix = In kN abgelesen? Waren { $meant } gemeint?
bench-finding-span-in-centimetre = Die Stützweite ist kürzer als die vierfache Dicke.
    .fix = In cm gemessen? Waren { $meant } gemeint?
bench-finding-span-off-standard = EN 310 verlangt bei dieser Dicke { $span }.
    .fix = Auflager darauf einstellen: 20-fache Dicke, 100 bis 1000 mm. Mit anderer Stützweite sind Ergebnisse nicht vergleichbar.
bench-finding-negative-swelling = nach der Wasserlagerung dünner als vorher.
    .fix = Prüfen, ob die beiden Dicken vertauscht wurden.
bench-finding-dry-above-moist = Die Darrmasse ist größer als die feuchte Masse.
    .fix = Beide Massen auf Tippfehler prüfen, und ob zwei Prüfkörper verwechselt wurden.
bench-finding-uneven-profile = Die Rohdichte weicht dort um { $deviation } vom Mittelwert der Platte ab, mehr als { $spread } ({ $standard }, ungeprüft).
    .fix = Matte gleichmäßiger streuen. Die beleimten Fasern feldweise in den Streurahmen einwiegen.

# Sollwerte und Anforderungen
bench-finding-off-target = Die Platten kommen bei Soll-Plattenfeuchte auf { $density }; Soll ist { $target }.
    .fix = Die Masse einstreuen, die für die nächste Matte gezeigt wird. Die Dicke an den Distanzleisten korrigieren, nicht mit der Masse.
bench-finding-too-few-boards = Eine Platte allein streut nicht; es gibt kein Quantil, das sich mit der Anforderung vergleichen lässt.
    .fix = Mindestens zwei Platten prüfen; fünf sagen viel mehr.
bench-finding-misses-requirement = { $tail ->
    [upper] Das obere 95-%-Quantil ist { $value }; gefordert: { $required }.
   *[lower] Das untere 95-%-Quantil ist { $value }; gefordert: { $required }.
}
    .fix = Den Mittelwert ändern oder finden, was zwischen den Platten streut.

# Faktoren und Stufen
bench-finding-no-factors = Noch wird nichts variiert.
    .fix = Einen Faktor mit mindestens zwei Stufen hinzufügen.
bench-finding-same-factor = doppelt vorhanden.
    .fix = Einen entfernen und seine Stufen dem anderen geben.
bench-finding-levels-alike = Es braucht zwei bis sechs Stufen, alle verschieden.
    .fix = Stufen so weit auseinander eingeben, dass sie sich an den Platten zeigen.
bench-finding-factor-unnamed = Der Faktor hat keinen Namen.
    .fix = Einen eingeben, etwa „Presstemperatur“.
bench-finding-level-blank = nichts eingegeben.
    .fix = Die Stufe eingeben oder entfernen.
bench-finding-level-not-a-number = „{ $typed }“ ist keine Zahl.
    .fix = Eine Zahl in der Einheit des Faktors eingeben. Für Stufen in Worten die Einheit leeren.
bench-finding-factor-missing = Die Flüssigkeit, die er dosiert, ist nicht im Rezept.
    .fix = Eine Flüssigkeit des Rezepts wählen oder den Faktor entfernen.
bench-finding-dose-beside-system = Die Dosis einer Flüssigkeit lässt sich nicht variieren, während ganze Bindemittelsysteme getauscht werden.
    .fix = Aus jeder Dosis ein eigenes Bindemittelsystem machen oder einen der beiden Faktoren entfernen.
bench-finding-too-many-factors = mehr als die { $most } Faktoren, die eine Versuchsreihe fasst.
    .fix = Zuerst die aussichtsreichsten variieren.

# Plan und Läufe einer Versuchsreihe
bench-finding-too-many-runs = { $runs } Läufe sind mehr als die { $most }, die eine Versuchsreihe fasst.
    .fix = Weniger Stufen, Faktoren oder Wiederholungen nehmen, oder einen Teilplan mit zwei Stufen.
bench-finding-fraction-needs-two-levels = Ein Teilplan besteht aus Faktoren mit je zwei Stufen.
    .fix = Jedem Faktor zwei Stufen lassen oder alle Kombinationen machen.
bench-finding-no-such-fraction = Die veröffentlichte Tabelle hat keinen solchen Teilplan mit { $factors } Faktoren.
    .fix = Einen der angebotenen wählen oder alle Kombinationen machen.
bench-finding-blocks-do-not-fit = Die Läufe lassen sich so nicht teilen, ohne dass ein Haupteffekt in den Blöcken verloren geht.
    .fix = Weniger Blöcke nehmen, einen Block je Wiederholung oder durchweg zwei Stufen.
bench-finding-resolution-three = In diesem Teilplan sind Haupteffekte mit Zweifaktor-Wechselwirkungen vermengt.
    .fix = Gut, um das Wichtige herauszufinden. Um eines Effekts sicher zu sein, einen größeren Teilplan nehmen.
bench-finding-resolution-four = In diesem Teilplan sind Zweifaktor-Wechselwirkungen miteinander vermengt.
    .fix = Haupteffekte sind frei davon. Wenn Wechselwirkungen wichtig sind, einen größeren Teilplan nehmen.
bench-finding-block-hides-interaction = Eine Zweifaktor-Wechselwirkung ist mit den Blöcken vermengt.
    .fix = Wenn sie wichtig ist, weniger Blöcke nehmen.
bench-finding-made-runs-stay = { $made ->
    [one] 1 von { $all } Läufen ist gemacht und bleibt, wie er ist.
   *[other] { $made } von { $all } Läufen sind gemacht und bleiben, wie sie sind.
}
    .fix = Eine neue Reihenfolge, eine andere Zahl von Wiederholungen oder ein anderer Faktor verschiebt nur { $open ->
        [one] den noch offenen Lauf
       *[other] die { $open } noch offenen Läufe
    }.
bench-finding-runs-outside-design = { $count ->
    [one] Ein Lauf wurde mit Stufen gemacht, die nicht mehr im Plan sind.
   *[other] { $count } Läufe wurden mit Stufen gemacht, die nicht mehr im Plan sind.
}
    .fix = Die zugehörigen Platten behalten Stufen und Ergebnisse und bleiben aus den Effekten heraus. Die Änderung rückgängig machen, um sie einzubeziehen.
bench-finding-run-unsolved = Lauf { $run } lässt sich nicht berechnen.
    .fix = Beheben, worauf sein eigener Wägezettel hinweist, oder die Stufen ändern.

# Effekte
bench-finding-runs-missing = { $count ->
    [one] ein Lauf ohne Ergebnis, in den Effekten nicht enthalten.
   *[other] { $count } Läufe ohne Ergebnis, in den Effekten nicht enthalten.
}
    .fix = Die Ergebnisse der zugehörigen Platten eingeben. Fehlen Läufe, sind die Effekte unsicherer und weniger sauber getrennt.
bench-finding-boards-without-run = { $count ->
    [one] ein Ergebnis eines Laufs, der nicht in der Versuchsreihe ist, ausgelassen.
   *[other] { $count } Ergebnisse von Läufen, die nicht in der Versuchsreihe sind, ausgelassen.
}
    .fix = Jeder Platte die Nummer ihres Laufs geben.
bench-finding-too-few-results = zu wenige Ergebnisse, um einen Effekt zu erkennen.
    .fix = Die Ergebnisse weiterer Läufe eingeben; jede Kombination mindestens einmal.
bench-finding-no-variation = Alle Ergebnisse sind gleich; es gibt nichts zu erklären.
    .fix = Die Einträge prüfen oder feiner messen.
bench-finding-no-freedom = Das Modell lässt keine Freiheitsgrade übrig; die Signifikanz wird nicht geprüft.
    .fix = Wiederholungen hinzufügen oder nur Haupteffekte wählen.

# Was sonst nirgends hingehört
bench-finding-other = Hier ist etwas anzusehen.
    .fix = Die Einträge prüfen.
