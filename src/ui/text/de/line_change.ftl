# Umstellung.

change-plan-title = Umstellungsplan
change-from = Von Rezept
change-to = Auf Rezept
change-choose = Rezept wählen
change-as-open = { $name } (wie geöffnet)
change-plan = Umstellung planen
change-choose-both = Zuerst beide Rezepte wählen.
change-none = Keine Umstellung geplant.
change-hint = Wasser wird zuerst verringert und zuletzt erhöht, damit die Matte dazwischen nie feuchter ist als beim feuchteren der beiden Rezepte.
change-start = Jetzt beginnen
change-not-started = Als nicht begonnen markieren
change-discard = Plan verwerfen
change-discarded = Plan verworfen
change-unsolved = Eines der beiden Rezepte hat kein Ergebnis. Auf der Seite Rezept beheben und neu planen.
change-running = Läuft seit { $time }.
change-before-start = Nicht begonnen. Die Zeiten zählen ab Beginn.
change-done-of = { $done } von { $count } Schritten erledigt.
change-never-above = Mattenfeuchte nie über { $moisture }.

# Wichtigste Größen
change-next = Als Nächstes
change-next-is = Als Nächstes: { $what }
change-with = zusammen mit { $others }
change-all-done = Alles erledigt
change-time-unknown = Zeit unbekannt
change-new-at-saw = Neues Rezept an der Säge
change-transition-board = Übergangsplatten
change-mat-length = { $length } Matte
change-lasts = { $time } Produktion
change-at-saw-from = an der Säge ab { $time }
change-after = + { $time } min
change-in = in { $time } min
change-due = seit { $time } min fällig
change-there = angekommen

# Schritte
change-steps = Schritte
change-nothing = Beide Rezepte laufen mit denselben Einstellungen.
change-number = #
change-when = Wann
change-what = Was
change-old = Alt
change-new = Neu
change-mat-moisture = Mattenfeuchte
change-why = Warum
change-done = Erledigt
change-done-step = Erledigt, Schritt { $number }: { $what }
change-belt-reads = Die Bandwaage zeigt dann { $flow }.
change-cannot = das schafft die Pumpe nicht: { $status }
change-pipe = { $needs } Leitungsinhalt { $volume }.
change-pipe-time = { $needs } Leitungsinhalt { $volume }, { $time }.
change-oven-dry = atro { $from } → { $to }
change-with-furnish = sobald die neuen beleimten Fasern an der Streumaschine sind
change-press-gap = Pressspalt
change-press-factor = Pressdicke oder Distanzleisten; Pressfaktor { $from } → { $to }
change-press-temperature = Presstemperatur
change-for-binder = Für das neue Bindemittel einstellen, nach dessen Datenblatt und den eigenen Aufzeichnungen des Werks.
change-saw = Säge
change-transition-from = Beginn der Übergangsplatten
change-first-board = erste Platte des neuen Rezepts
change-stack-apart = getrennt stapeln
change-measure-first = wiegen und Dicke messen

# Diagramm und Ankunft
change-axis = Ablauf der Umstellung
change-drawing = Ablauf der Umstellung an den Stationen: altes Rezept, Übergangsplatten, neues Rezept. Die Zeiten stehen in der Tabelle „Ankunft“.
change-old-recipe = altes Rezept
change-new-recipe = neues Rezept
change-numbers-key = Zahlen: Schritte
change-arrivals = Ankunft
change-saw-note = Übergangsplatten an der Säge ab { $from }
change-station = Station
change-transition-begins = Beginn Übergang
change-cautions = Sicherheitshinweise zum neuen Rezept

# Transportzeiten
change-transport = Transportzeiten
change-blender-former = Mischer → Streumaschine
change-former-press = Streumaschine → Presse
change-press-saw = Presse → Säge
change-mixing = Durchmischen
change-step-gap = Zwischen Schritten
