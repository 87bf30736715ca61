# Sicherheitshinweise und Grenzwerte für Exposition und Emission.

# Sicherheitshinweise: worum es geht, was geschehen kann und was zu tun ist
caution-steam = Dampfdruck
    .text = Die Matte ist feuchter als ihr üblicher Bereich. Dampf, der nicht entweichen kann, kann die Platte beim Austritt aus der Presse bersten lassen. Vom Pressenauslauf fernbleiben, und vor dem Fahren die Faser trocknen oder das Wasser verringern.
caution-isocyanate = Isocyanat
    .text = pMDI und andere Isocyanate können Atemwege und Haut sensibilisieren, und das lebenslang. Dampf, Nebel und Spritzer von Menschen fernhalten. Kein Wasser in Zuleitungen und Fässer gelangen lassen. Einen Behälter, in den Wasser gelangt ist, niemals dicht verschließen: Es bildet sich Kohlendioxid, und der Druck kann den Behälter bersten lassen.
caution-isocyanate-tank = Isocyanattanks
    .text = pMDI-Tanks unter trockener Luft oder Stickstoff halten. Feuchte Luft bildet im Tank Krusten und Kohlendioxid, und die Krusten verstopfen Filter und Düsen.
caution-emulsion = Emulgiertes Isocyanat
    .text = Mit Wasser emulgiertes pMDI ist kurzlebig: Es reagiert in der Leitung, gibt Kohlendioxid ab und wird fest. Nur an der Düse emulgieren, und Mischer und Düsen bei jedem Halt spülen.
caution-isocyanate-catch = Auslitern eines Isocyanats
    .text = In ein trockenes, offenes Gefäß auffangen. Atemschutz, Augenschutz und Handschuhe tragen und das Neutralisationsmittel griffbereit halten. Das Aufgefangene offen neutralisieren; niemals dicht verschließen.
caution-release-agent = Trennmittel
    .text = Isocyanate haften an heißem Metall. Mattenseiten, Bänder und Pressplatten brauchen ein Trennmittel, sonst klebt die Matte daran fest; dieses Rezept nennt keines.
caution-formaldehyde = Formaldehyd
    .text = Das Harz gibt beim Lagern, Sprühen und Pressen Formaldehyd ab, und die Platte ebenso. An der Quelle absaugen. Eine Emissionsklasse wird durch Prüfung nachgewiesen, nicht durch dieses Programm.
caution-press-vapour = Dämpfe der Heißpresse
    .text = Eine Heißpresse gibt Wasserdampf mit Formaldehyd, Isocyanat oder anderen Dämpfen des Bindemittels ab. Unter Absaugung pressen, und beim Öffnen der Presse außerhalb der Schwaden bleiben. Für Dämpfe, für die hier kein Grenzwert steht, den örtlichen Grenzwert beachten.
caution-bench-spray = Sprühen im Labor
    .text = Sprühnebel wird leichter eingeatmet als eine Flüssigkeit. In einem geschlossenen Mischer oder unter Absaugung sprühen, bei Isocyanaten Atemschutz tragen, und vor dem Öffnen warten, bis sich der Nebel gesetzt hat.
caution-alkaline = Stark alkalisch
    .text = PF-Harz ist stark alkalisch und verätzt Haut und Augen. Augen- und Handschutz tragen, und eine Augendusche in Reichweite halten.
caution-ammonia = Ammoniak
    .text = Ein Ammoniumsalz setzt mit alkalischem PF-Harz Ammoniak frei, das Augen und Atemwege verätzt. Die beiden niemals in einem Tank, Abfluss oder Mischer zusammenbringen, der nicht abgesaugt wird. Für Ammoniak den örtlichen Grenzwert beachten.
caution-acid-cure = Säurehärtung
    .text = Ein Härtersalz lässt Harz aushärten. Ein gemischter Ansatz hat eine Topfzeit, die umso kürzer ist, je wärmer er ist, und gibt beim Aushärten Wärme ab. Nur so viel mischen, wie in dieser Zeit versprüht wird, und Härter niemals in einen Harztank zurückgießen.
caution-oxidiser = Oxidationsmittel
    .text = Ammoniumnitrat ist ein Oxidationsmittel und brandfördernd. Kristalle und Verschüttetes von Stroh, Staub, Wachs und anderem Brennbaren fernhalten, und keine Lösung darauf eintrocknen lassen.
caution-corrosion = Korrosion
    .text = Ammoniumchlorid greift Stahl an, auch nichtrostenden, und Kupferlegierungen. Tanks, Pumpen und Presse auf Angriff prüfen.
caution-cooling = Abkühlung beim Lösen
    .text = Harnstoff, Ammoniumchlorid und Ammoniumnitrat kühlen das Wasser beim Lösen stark ab. Salz kann wieder ausfallen und die Leitung verstopfen. Warmes Wasser nehmen, rühren, und prüfen, dass bei der tiefsten Temperatur alles gelöst ist.
caution-dust = Stroh- und Holzstaub
    .text = Staub von Stroh und Holz kann explodieren. Strohstaub trägt außerdem Schimmel und Kieselsäure, die der Lunge schaden. Absaugen, Atemschutz tragen, wo Staub fliegt, und ihn niemals kehren oder abblasen. Sprüh- und Förderanlagen unterliegen den Explosionsschutzregeln des Werks. Für Staub den örtlichen Grenzwert beachten.
caution-damp-bales = Feuchte Ballen
    .text = Feuchte Strohballen erwärmen sich von selbst und können noch Tage später Feuer fangen. Feuchte und Temperatur bei der Anlieferung messen, und feuchte Ballen getrennt lagern.
caution-high-pressure = Hochdruck-Sprühstrahl
    .text = Ein Sprühstrahl unter hohem Druck geht durch die Haut und spritzt die Flüssigkeit ein. Niemals eine Düse auf jemanden richten oder ein Leck mit der Hand ertasten. Eine Einspritzverletzung gehört sofort ins Krankenhaus, auch wenn sie klein aussieht.
caution-press = Heißpresse
    .text = Die Presse quetscht und verbrennt. Hände aus dem Spalt halten, Schutzeinrichtungen und Not-Halt benutzen, und niemanden darin arbeiten lassen, bevor die Presse gegen Wiedereinschalten gesichert und kalt ist.
caution-catch-test = Auslitern
    .text = Die Leitung absperren und drucklos machen, bevor sie geöffnet wird. Den Probeschlauch anschließen, in einem belüfteten Gefäß sichern und erst dann die Pumpe laufen lassen. Vor dem Abnehmen wieder absperren und drucklos machen. Augen- und Handschutz tragen.
caution-advice = Nur Empfehlung
    .text = Haulm berät. Es steuert nicht: Verriegelungen und die eigenen Grenzen der Linie bleiben maßgebend.

# Ein Grenzwert mit seiner Vorschrift
caution-limit = { $subject }, { $region } ({ $regulation }): { $values }. Den aktuellen örtlichen Grenzwert prüfen.
caution-limit-training = Verwendung von Diisocyanaten, { $region } ({ $regulation }): Alle Verwender müssen vor der Verwendung geschult werden. Den aktuellen örtlichen Grenzwert prüfen.

# Wovon ein Grenzwert ist
caution-limit-diisocyanates = Diisocyanate in der Luft, als NCO
caution-limit-mdi = MDI in der Luft
caution-limit-formaldehyde-at-work = Formaldehyd in der Luft
caution-limit-formaldehyde-released = Formaldehydabgabe der Platte

# Wo er gilt
caution-limit-eu = EU
caution-limit-us = USA

# Ein Wert eines Grenzwerts
caution-limit-value = { $measure } { $limit }
caution-limit-value-from = { $measure } { $limit } ab { $day }
caution-limit-value-until = { $measure } { $limit } bis { $day }
caution-limit-value-after = { $measure } { $limit } nach dem { $day }
# Der Wert, und derselbe in einer zweiten Einheit.
caution-limit-both-units = { $limit } ({ $also })

# Als was oder woran ein Wert gemessen wird
caution-limit-shift = Mittelwert über 8 h
caution-limit-short-term = Kurzzeitwert
caution-limit-ceiling = Höchstwert zu jeder Zeit
caution-limit-articles = Erzeugnisse auf Holzbasis und Möbel
caution-limit-particleboard = Spanplatte
caution-limit-mdf = MDF
caution-limit-thin-mdf = dünne MDF
caution-limit-hardwood-plywood = Laubholz-Sperrholz

# Ein Tag; der Monat ist seine Nummer
caution-limit-day = { $day }. { $month ->
    [1] Januar
    [2] Februar
    [3] März
    [4] April
    [5] Mai
    [6] Juni
    [7] Juli
    [8] August
    [9] September
    [10] Oktober
    [11] November
   *[12] Dezember
} { $year }
