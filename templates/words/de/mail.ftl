# Die E-Mail und die Ausgaben.

mail-caution = Achtung: { $caution } { $because }
mail-leaking-again = Wieder undicht
mail-still-leaking = Noch immer undicht vorgefunden
mail-waiting = Wenn nichts geschieht
mail-still-open = Noch offen
mail-next = Termine
mail-attached = Der Bericht liegt bei.

foot-issue = Ausgabe { $issue }
foot-changed-since = nicht ausgegeben, geändert seit Ausgabe { $issue }
revision-replaces = Ausgabe { $issue } vom { $day }
change-outcome = Ergebnis: { $now } (vorher: { $before })
change-finding-added = Befund neu: { $finding }, { $now }.
change-finding = Befund { $finding }: { $now } (vorher: { $before }).
change-finding-taken-out = Befund gestrichen: { $finding }.
change-figure-added = { $title }: { $now } (vorher nicht angegeben).
change-figure = { $title }: { $now } (vorher: { $before }).
change-figure-taken-out = { $title }: nicht mehr angegeben.
change-notes = Geänderte Notizen: { $files }.
