# Die Aufzeichnungen für die Behörde: Einleitung, Typenschild, Angaben und Ereignisse.

records-kind = Aufzeichnungen
records-title = Aufzeichnungen: { $system }, Stand { $day }
records-present = Eine vorhandene Angabe wurde aufgeschrieben; ob sie zutrifft und ausreicht, beurteilen ihr Verfasser und die prüfende Stelle.
records-files = Dateipfade beginnen im Stammverzeichnis des Anlagenbuchs, jeweils mit der Zeile. Die Notizen sind diesem Dokument als Daten beigefügt, ohne die vertraulichen Teile.
records-none-in-force = Für diesen Standort ist kein am { $day } geltendes Regelwerk genannt, so dass keine Angabe verlangt ist. Was die Notizen sagen, steht dennoch unten.
records-undecided = Die am { $day } an diesem Standort geltenden Regeln entscheiden nicht, ob diese Anlage darunter fällt, so dass hier keine Angabe verlangt ist. Was die Notizen sagen, steht dennoch unten.
records-not-covered = Diese Anlage fällt unter keines der am { $day } an diesem Standort geltenden Regelwerke, so dass keine Angabe verlangt ist. Was die Notizen sagen, steht dennoch unten.
records-all-there = Jede Angabe, die die am { $day } geltenden Regeln verlangen, ist aufgezeichnet.
records-missing = Es fehlen { $missing } von { $fields } Angaben, die die am { $day } geltenden Regeln verlangen.
records-fields = Verlangte Angaben: { $fields }; fehlend: { $missing }.
records-kept = Aufzeichnungen werden mindestens { $years } Jahre aufbewahrt ({ $source }).
records-of-system = Die Anlage
records-of-visit = { $days }, { $purpose }
plant-telephone = Telefon
plant-serial-number = Seriennummer
plant-year-of-making = Baujahr
plant-hermetic-label = Als hermetisch geschlossen gekennzeichnet
plant-detection-system = Leckage-Erkennungssystem
answer-yes = ja
answer-no = nein

# Was aufgezeichnet ist.
record-circuit = { $circuit ->
    [none] die Anlage
   *[other] Kreislauf { $circuit }
}
record-due-by = fällig bis { $day }
record-plan-made = Plan erstellt am { $day }
record-reported = gemeldet am { $day }
record-leaks-found = { $method }, { $leaks ->
    [0] nichts gefunden
    [one] 1 Leck gefunden
   *[other] { $leaks } Lecks gefunden
}
record-cylinder = Flasche { $cylinder }
record-destroyed = { $moved }, davon { $share } vernichtet
record-recovered-before = früher in diese Flasche zurückgewonnen
record-moved = { $mass } am { $day }
record-rate = { $rate } ({ $method })

# Ereignisse.
head-mass-or-result = Masse oder Ergebnis
head-noted-at = Notiert in
event-earlier = { $what }, frühere Aufzeichnung
event-by = durch { $by }
event-visit = Einsatz: { $purpose }
event-moved = { $kind }, { $why }
event-with-cylinder = { $mass }, Flasche { $cylinder }
event-pressure-test = Druckprüfung { $test }
event-vacuum-test = Vakuumprüfung { $test }
event-tested = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
}, Abschnitt { $section }
event-inspection = Dichtheitskontrolle, alles Sichtbare und Zugängliche
event-search-in-part = Lecksuche, nicht an allem Sichtbaren und Zugänglichen
event-search = Lecksuche
event-leak-found = Leck gefunden
event-repair = Reparatur
event-look = { $method }: { $result }
event-named-proof = Prüfung oder Suche { $name }
event-check = Kontrolle der Reparatur
