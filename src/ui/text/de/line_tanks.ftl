# Tanks und Lieferungen.

tank-tanks = Tanks
tank-tank-liquid = Tank, Flüssigkeit
tank-level = Füllstand
tank-read-at = Abgelesen
tank-heel = Restmenge
tank-capacity = Fassungs­vermögen
tank-lead-time = Lieferzeit
tank-usable = Nutzbar
tank-use = Verbrauch
tank-per-shift = Je Schicht
tank-free = Frei
tank-runs-empty = Leer in
tank-order-by = Bestellen bis
tank-add = Tank hinzufügen
tank-none = Noch keine Tanks.
tank-pasted = { $count ->
    [one] 1 Wert eingefügt
   *[other] { $count } Werte eingefügt
}
tank-left = noch { $time }
tank-lasts = { $name } reicht noch { $time }.
tank-today = heute { $time }
tank-tomorrow = morgen { $time }
tank-yesterday = gestern { $time }
tank-in = in { $time }
tank-was = fällig { $time }
tank-overdue = Überfällig seit { $time }
tank-ordered = Bestellt
tank-comes = kommt { $time }
tank-comes-late = Kommt { $time } zu spät
tank-mark-ordered = Als bestellt markieren
tank-not-ordered = Als nicht bestellt markieren
tank-name = Name
tank-holds = Flüssigkeit
tank-read-by = Abgelesen als
tank-no-state = Fassungsvermögen und Füllstand eingeben und die Flüssigkeit im Rezept verwenden.
tank-remove = Tank entfernen
tank-removed = Tank entfernt
tank-bar = Füllstand { $level }, Restmenge { $heel }
tank-first-empty = { $name } leer

# Lieferung
delivery-title = Lieferung
delivery-into = Wohin
delivery-choose = Tank oder Flüssigkeit wählen
delivery-tank = { $tank } · { $liquid }
delivery-no-tank = { $liquid }, kein Tank
delivery-none = Keine Lieferung eingegeben. Wählen, wohin sie kommt, dann ihr Zertifikat eingeben.
delivery-accept = Lieferung annehmen
delivery-quantity = Größe
delivery-in-tank = Im Tank
delivery-certificate = Zertifikat
delivery-blend = Mischung
delivery-effect = Wirkung
delivery-effects = Wirkung der Lieferung
delivery-mass = Masse
delivery-volume = Volumen
delivery-solids = Feststoff­gehalt
delivery-density = Dichte
delivery-measured-at = Dichte gemessen bei
delivery-pumped-at = Gepumpt bei
delivery-expansion = Ausdehnung
delivery-batch = Charge
delivery-as-before = wie bisher
delivery-fits = passt, { $volume } frei
delivery-too-much = { $volume } zu viel
delivery-unsolved = Mit dieser Lieferung hat das Rezept kein Ergebnis.
delivery-nothing-moves = Keine Einstellung ändert sich.
delivery-new-setting = { $pump }, neue Einstellung
delivery-was = bisher { $setting }
delivery-flow = { $from } → { $to }
delivery-reaches = Die Mischung erreicht die Düsen nach { $time }.
delivery-hint = Bis zur Annahme der Lieferung ändert sich nichts. Die Mischung setzt einen gerührten Tank und ideales Mischen voraus.
delivery-figures = Größen, die sich ändern
delivery-count = { $count }
delivery-figure = Größe
delivery-before = Vorher
delivery-after = Nachher
delivery-recipes = Gespeicherte Rezepte mit dieser Flüssigkeit
delivery-recipe = Rezept
delivery-flow-head = Durchfluss
delivery-settings-head = Einstellungen
delivery-recipes-hint = Jedes gewählte Rezept bekommt einen neuen Stand.
delivery-no-recipes = Kein gespeichertes Rezept verwendet diese Flüssigkeit.

# Angenommene Lieferungen
delivery-earlier = Frühere Lieferungen
delivery-no-earlier = Noch keine Lieferungen.
delivery-accepted-at = Angenommen
delivery-liquid = Flüssigkeit
delivery-tank-head = Tank
