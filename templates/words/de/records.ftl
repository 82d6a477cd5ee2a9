# Die Aufzeichnungen für die Behörde: Einleitung, Typenschild, Angaben und Ereignisse.

records-kind = Aufzeichnungen
records-title = Aufzeichnungen: { $system }, Stand { $day }
records-present = Eine vorhandene Angabe wurde aufgeschrieben; ob sie zutrifft und ausreicht, beurteilen ihr Verfasser und die prüfende Stelle.
records-files = Dateipfade beginnen im Stammverzeichnis des Anlagenbuchs, jeweils mit der Zeile. Die Notizen sind diesem Dokument als Daten beigefügt, ohne die vertraulichen Teile.
records-none-in-force = Für diesen Standort ist kein am { $day } geltendes Regelwerk genannt, so dass keine Angabe verlangt ist. Was die Notizen sagen, steht dennoch unten.
records-undecided = Ob die am { $day } an diesem Standort geltenden Regeln für diese Anlage gelten, ist nicht entschieden; deshalb sind hier keine verlangten Angaben aufgeführt. Was die Notizen enthalten, steht unten.
records-not-covered = Diese Anlage fällt unter keines der am { $day } an diesem Standort geltenden Regelwerke, so dass keine Angabe verlangt ist. Was die Notizen sagen, steht dennoch unten.
records-all-there = Zu jeder Angabe, die die am { $day } geltenden Regeln verlangen, liegt ein Eintrag vor. Ob Fristen eingehalten wurden, sagt dies nicht.
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
record-leaks-found = { $day }, { $method }, { $leaks ->
    [0] nichts gefunden
    [one] 1 Leck gefunden
   *[other] { $leaks } Lecks gefunden
}
record-cylinder = Flasche { $cylinder }
record-destroyed = { $moved }, davon { $share } vernichtet
record-recovered-before = früher in diese Flasche zurückgewonnen
record-moved = { $mass }, { $day }
record-of-gas = { $refrigerant ->
    [none] { $mass }
   *[other] { $mass } { $refrigerant }
}
record-at = { $day }, { $clock } Uhr
record-part = { $part }: { $work }
record-proof = { $at }, { $what }
record-and-then = { $first }; { $next }
record-pressure-test = Druckprüfung { $test }: { $verdict }
record-vacuum-test = Vakuumprüfung { $test }, { $limit ->
    [met] Grenzwert eingehalten
    [not-met] Grenzwert nicht eingehalten
   *[other] Grenzwert nicht entschieden
}
record-looked-again = am { $day } erneut geprüft
record-rate = { $rate } ({ $method })

# Ereignisse.
head-mass-or-result = Masse oder Ergebnis
head-noted-at = Notiert in
event-earlier = { $what }, frühere Aufzeichnung
event-by = durch { $by }
event-visit = Einsatz: { $purpose }
event-changed = von { $from } auf { $to } umgestellt
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
event-not-reached = nicht erreicht: { $place } ({ $reason })
event-leak-found = Leck gefunden
event-suspicion = Verdacht
event-defect = Mangel, kein Leck
event-repair = Reparatur
event-look = { $method }{ $with ->
    [none] { "" }
   *[other] { " " }{ $with }
}: { $result }
event-check = Kontrolle der Reparatur
event-check-again = Kontrolle einer früheren Reparatur
