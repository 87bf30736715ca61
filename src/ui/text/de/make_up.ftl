# Lösungen und Leimflotten: warum eine nicht angesetzt werden kann.

# Lösungen
make-up-amount = Gewünschte Menge: { $given } lässt sich nicht ansetzen.
    .fix = Eine Menge über null eingeben, die in einen Tank passt, etwa { $example }.
make-up-concentration = Konzentration: { $given } kann nicht sein.
    .fix = Salz je Lösung nach Masse eingeben, über 0 und unter 100 %, etwa 20 %.
make-up-density = Gemessene Dichte: { $given } kann nicht sein.
    .fix = Eine Dichte über null eingeben, oder leer lassen, um die der Tabelle zu nehmen.
make-up-temperature = Tiefste Temperatur: Wie viel sich bei { $given } löst, ist hier nicht bekannt.
    .fix = Eine Temperatur von { $least } bis { $most } eingeben.
make-up-saturation = Konzentration: { $solute } löst sich bei { $temperature } nicht bis { $given }, sondern höchstens bis { $largest }.
    .fix = Schwächer ansetzen, mit Abstand zu { $largest }, oder Tank und Rohre wärmer halten. Die Löslichkeit ist ungeprüft: im Becherglas ausprobieren.
make-up-no-table = Gewünschte Menge: Ein Volumen braucht die Dichte, und für { $solute } gibt es keine Tabelle.
    .fix = Die Lösung nach Masse ansetzen, oder ihre Dichte messen und eingeben.
make-up-outside-table = Gewünschte Menge: Ein Volumen braucht die Dichte, und die Tabelle für { $solute } endet bei { $most }, unter { $given }.
    .fix = Die Lösung nach Masse ansetzen, oder ihre Dichte messen und eingeben.

# Leimflotten
# Ein Teil ohne Namen.
make-up-part = Teil { $number }
make-up-isocyanate-with-water = Leimflotte: Ein Isocyanat und eine Flüssigkeit mit Wasser dürfen nicht in denselben Tank. Sie reagieren, das Gas baut Druck auf, und die Mischung wird fest.
    .fix = Das Isocyanat aus dem Tank nehmen und an der Düse emulgieren.
make-up-nothing-to-mix = Leimflotte: Es gibt nichts zu mischen.
    .fix = Mindestens einem Teil einen Anteil über null geben, etwa 100 Teile Harz.
make-up-too-many-parts = Leimflotte: { $given } Teile sind mehr als die { $most }, die eine Mischung haben kann.
    .fix = Teile entfernen.
make-up-part-share = { $part }: { $given } Masseteile können nicht sein.
    .fix = Null oder mehr eingeben, etwa 100.
make-up-part-solids = { $part }: Ein Feststoffgehalt von { $given } kann nicht sein.
    .fix = Feststoffgehalt von 0 bis 100 % nach Masse eingeben; Wasser hat 0 %.
make-up-part-density = { $part }: Eine Dichte von { $given } kann nicht sein.
    .fix = Eine Dichte über null eingeben, etwa { $example }.
make-up-parts-differ = Leimflotte: Die Teile sind zu verschieden groß, um die Mischung zu berechnen.
    .fix = Die Anteile auf einen Fehler im Dezimalzeichen oder in der Einheit prüfen.
