# Befunde: was geschehen ist, die Stelle zuerst, und wie es zu beheben ist.

# Eine Eingabe. „Anywhere“ gilt für eine Stelle ohne Feld.
finding-missing = { $place }: noch leer.
    .fix = Eine Zahl eingeben, etwa { $example }.
finding-missing-anywhere = { $place }: noch leer.
    .fix = Eine Zahl eingeben.
finding-unreadable-anywhere = { $place }: Die Eingabe ist keine Zahl.
    .fix = Nur Ziffern eingeben.
finding-not-a-number = { $place }: „{ $typed }“ ist keine Zahl.
    .fix = Ziffern mit einem Dezimalzeichen eingeben, etwa { $number }. Eine Einheit darf folgen, etwa { $example }.
finding-two-decimal-marks = { $place }: „{ $typed }“ hat zwei Dezimalzeichen.
    .fix = Mit einem eingeben, etwa { $number }. Ziffern werden mit Leerzeichen gruppiert.
finding-ambiguous = { $place }: „{ $typed }“ kann { $decimal } oder { $grouped } heißen.
    .fix = { $decimal_typed } oder { $grouped_typed } eingeben.
finding-unknown-unit = { $place }: „{ $typed }“ endet mit etwas, das hier nicht als Einheit bekannt ist.
finding-other-unit = { $place }: „{ $typed }“ steht in { $unit }, einer Einheit für: { $measured }. Dieses Feld braucht: { $wanted }.
finding-enter-number-alone = Die Zahl allein eingeben, etwa { $number }.
finding-enter-with-unit = Die Zahl allein eingeben oder mit einer dieser Einheiten dahinter: { $units }.
finding-too-large = { $place }: „{ $typed }“ ist zu groß zum Rechnen.
finding-not-allowed = { $place }: „{ $typed }“ heißt { $value }; das ist nicht möglich.
finding-not-allowed-anywhere = { $place }: { $value } ist nicht möglich.
finding-did-you-mean = Ist { $meant } gemeint? { $enter }
finding-likely-fraction = { $place }: { $value } ist sehr wenig; ist { $meant } gemeint?
    .fix = { $meant } eingeben, oder so lassen, wenn { $value } stimmt.

# Was ein Feld halten darf
finding-enter-exactly = Genau { $value } eingeben.
finding-enter-from-to = Einen Wert von { $least } bis { $most } eingeben.
finding-enter-from-to-below = Einen Wert von { $least } bis unter { $most } eingeben.
finding-enter-above-to = Einen Wert über { $least } und bis { $most } eingeben.
finding-enter-above-to-below = Einen Wert über { $least } und unter { $most } eingeben.

# Was üblich ist
finding-range = { $low } bis { $high }
finding-not-usual = { $place }: { $value } liegt { $side ->
    [above] über
   *[below] unter
} dem üblichen Bereich { $range } ({ $source }).
    .fix = Die Eingabe prüfen. Wenn sie für dieses Werk stimmt, so lassen: Sie kennen das Werk.
finding-press-factor-above = { $place }: Der Pressfaktor ergibt sich zu { $value }, über dem üblichen Bereich { $range } ({ $source }).
    .fix = Die Linie könnte schneller laufen, oder die Platte wird länger gepresst als üblich. So lassen, wenn es so gemeint ist.
finding-press-factor-below = { $place }: Der Pressfaktor ergibt sich zu { $value }, unter dem üblichen Bereich { $range } ({ $source }).
    .fix = Die Platte härtet in dieser Zeit möglicherweise nicht aus. Faserstrom, Mattenbreite und Pressenlänge prüfen, und vorsichtig erproben.

# Flüssigkeiten
finding-a-liquid = Eine Flüssigkeit
finding-isocyanate = { $place }: Bei { $solids } Feststoff wären die übrigen { $rest } Wasser, das mit einem Isocyanat reagiert.
    .fix = 100 % eingeben. NCO-Gehalt und Reinheit im Zertifikat sind nicht der Feststoffgehalt. Für eine Emulsion, die an der Düse entsteht, ihren Feststoffgehalt verdünnt eingeben.
finding-spray-thicker = { $place }: über dem Feststoffgehalt wie geliefert, { $solids }. Wasser kann eine Flüssigkeit nur verdünnen.
    .fix = Einen kleineren Wert eingeben, oder leer lassen, um wie geliefert zu sprühen.
finding-base-loop = { $place }: führt über die Flüssigkeiten, auf die dosiert wird, auf sich selbst zurück.
    .fix = Eine Flüssigkeit der Schleife auf atro Faser dosieren.
finding-base-missing = { $place }: bezieht sich auf den Feststoff einer Flüssigkeit, die nicht in diesem Rezept ist.
    .fix = Eine andere Basis für die Dosis wählen, oder die Flüssigkeit hinzufügen, auf die dosiert wurde.
finding-base-on-faces = { $place }: Die Basis wird auf die Seiten der Matte gesprüht, nicht in die beleimte Faser.
    .fix = Eine andere Basis für die Dosis wählen.
finding-too-many-liquids = { $place }: eine Flüssigkeit mehr als die { $most }, die ein Rezept fasst.
    .fix = Eine Flüssigkeit entfernen.
finding-doses-fill-board = { $place }: Die Dosen je Plattenvolumen oder je Fläche einer Seite ergeben zusammen { $share } der atro Platte; für Faser bleibt kein Platz.
    .fix = Die Dosen senken, oder ihre Einheit prüfen.
finding-no-hardener = { $place }: ein UF- oder MUF-Harz, und kein Härter dazu.
    .fix = Den Härter hinzufügen, außer das Harz wird schon mit Härter geliefert.
finding-hardener-not-on-binder = { $place }: ein Härter, der nicht auf den Feststoff eines Bindemittels dosiert ist.
    .fix = Härterdosen beziehen sich meist auf das Festharz. In diesem Fall das Bindemittel als Basis wählen.
finding-no-binder = { $place }: kein Bindemittel unter den Flüssigkeiten.
    .fix = Ein Bindemittelsystem einfügen, oder eine Flüssigkeit mit der Funktion Bindemittel hinzufügen.
finding-same-name = { $place }: zwei Flüssigkeiten dieses Namens.
    .fix = Eine umbenennen, damit an der Linie niemand sie verwechselt.

# Faser, Matte und Presse
finding-needs-fibre-flow = { $place }: Das Rezept hat dafür keinen Faserstrom.
    .fix = Eine Wasserdosis auf atro Faser oder auf eine Mattenfeuchte wählen, oder einen Faserstrom eingeben.
finding-spread-narrower = { $place }: kleiner als die besäumte Mattenbreite, { $width }.
    .fix = Die Matte wird aus dem geschnitten, was die Streumaschine streut: eine mindestens so große Streubreite eingeben, oder leer lassen.
finding-needed-for-feed = { $place }: noch leer, und ohne diesen Wert ist der Faserstrom nicht bestimmt.
    .fix = Den Wert eingeben, etwa { $example }, oder den Faserstrom anders bestimmen.
finding-dries-below-zero = { $place }: mehr, als die beleimte Faser enthält. Sie verlässt den Beleimmischer mit einer Feuchte von { $moisture }.
    .fix = Einen kleineren Verlust eingeben, oder mehr Wasser in den Beleimmischer bringen.
finding-out-of-range = { $place }: Die Werte wurden zu groß oder zu klein zum Rechnen.
    .fix = Diese Eingabe und die Dosen auf einen Fehler im Dezimalzeichen oder in der Einheit prüfen.
finding-press-adds-water = { $place }: Die Platte käme feuchter aus der Presse, als die Matte hineingeht.
    .fix = Die Mattenfeuchte mit der Plattenfeuchte am Pressenaustritt vergleichen; eine Heißpresse trocknet.
finding-mat-thinner-than-board = { $place }: Die lose Matte wäre dünner als die daraus gepresste Platte.
    .fix = Die Schüttdichte der losen Matte prüfen: Eine lose Matte ist weit leichter als eine Platte.

# Zu nass
finding-too-wet = { $place }: Die beleimte Faser ist zu nass. Sie enthält { $excess } mehr Wasser, als die Soll-Mattenfeuchte braucht; es wird kein Wasser dosiert, und die Matte kommt auf { $mat }.
finding-excess-on-fibre = { $excess } (der atro Faser)
finding-dry-the-fibre = Die Faser auf { $fibre } trocknen, dann ist die Wasserdosis genau null; oder Flüssigkeiten mit mehr Feststoff, kleinere Dosen oder eine höhere Mattenfeuchte nehmen.
finding-no-fibre-dry-enough = Keine Faser ist trocken genug: Die Flüssigkeiten allein bringen mehr Wasser mit, als gebraucht wird. Flüssigkeiten mit mehr Feststoff nehmen, sie weniger verdünnen, ihre Dosen senken oder eine höhere Mattenfeuchte hinnehmen.

# Über der Grenze einer Maschine
finding-over-fibre-supply = { $place }: Der Faserstrom beträgt { $used } dessen, was der Trockner liefert.
finding-over-blender = { $place }: Die beleimte Faser beträgt { $used } dessen, was der Beleimmischer schafft.
finding-over-press = { $place }: Die Presse ist bei { $used } ihrer Grenze; der Pressfaktor liegt unter dem kleinsten, der aushärtet.
finding-over-line-speed = { $place }: Die Bandgeschwindigkeit beträgt { $used } der höchsten.
finding-lower-fibre-flow = Den Faserstrom auf höchstens { $fibre } atro senken, oder die Grenze prüfen.
