# Die erste Seite: Kopf, Ergebnis, Angaben, Offenes, Termine.

visit = Besuch
the-contractor = Der Fachbetrieb
certificate-of-firm = Zertifikat { $number }
certificate-of-person = Zertifikat { $number }
certificate-with-category = Zertifikat { $number }, Kategorie { $category }
signs-for-contractor = Für den Fachbetrieb
signs-for-operator = Erhalten für den Betreiber
class-flammable = { $class }, brennbar
class-not-flammable = { $class }, nicht brennbar
plant-operator = Betreiber
plant-address = Anschrift
plant-category = Art der Anlage
plant-in-service-since = In Betrieb seit
plant-complaint = Beanstandung
plant-air-outside = Außenluft
plant-left = Hinterlassen
plant-back-in-normal-operation = Wieder im Normalbetrieb

outcome-repaired-proved = { $leaks ->
    [one] Ein Leck gefunden und repariert, die Reparatur nachgewiesen.
   *[other] { $leaks } Lecks gefunden und repariert, alle Reparaturen nachgewiesen.
}
outcome-repaired-not-proved = { $leaks ->
    [one] Ein Leck gefunden und repariert; die Reparatur ist nicht nachgewiesen.
   *[other] { $leaks } Lecks gefunden und repariert; { $proved ->
        [0] keine der Reparaturen ist nachgewiesen
        [one] eine der Reparaturen ist nachgewiesen
       *[other] { $proved } der Reparaturen sind nachgewiesen
    }.
}
outcome-partly-repaired = { $leaks } Lecks gefunden, { $repaired ->
    [one] eines
   *[other] { $repaired }
} repariert; der Rest ist offen.
outcome-left-open = { $leaks ->
    [one] Ein Leck gefunden und offen gelassen.
   *[other] { $leaks } Lecks gefunden und offen gelassen.
}
outcome-suspects-only = Ein Leck wird vermutet; geortet wurde es nicht.
outcome-suspects-remain = { $suspects ->
    [one] Eine verdächtige Stelle bleibt.
   *[other] Einige verdächtige Stellen bleiben.
}
outcome-not-found-loss-stands = Kältemittel war verloren gegangen; das Leck dazu wurde nicht gefunden.
outcome-nothing-found = Gesucht; wo die Suche hinreichte, wurde nichts gefunden.
outcome-repair-verified = { $repairs ->
    [one] Die frühere Reparatur wurde nachkontrolliert; dort zeigte sich nichts.
   *[other] { $repairs } frühere Reparaturen wurden nachkontrolliert; dort zeigte sich nichts.
}
outcome-gas-added = Kältemittel wurde nachgefüllt; das Leck wurde weder gesucht noch repariert.
outcome-changed-from-to = Die Anlage wurde von { $old } auf { $new } umgestellt.
outcome-changed = Die Anlage wurde auf ein anderes Kältemittel umgestellt.
outcome-other = { $purpose } durchgeführt.

place-says = { $place }: { $what }
because-holding = { $place } war schon { $times }-mal undicht; die letzte Reparatur hält nun seit { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}.
because-lost-since = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
} hatte { $mass } Kältemittel seit dem { $day } verloren.
because-missing-since = In { $circuit ->
    [none] der Anlage
   *[other] Kreislauf { $circuit }
} fehlten { $mass } Kältemittel; zuletzt gefüllt wurde am { $day }, ob vollständig, ist nicht bekannt.
because-lost = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
} hatte { $mass } Kältemittel verloren.
because-left-open = Nicht repariert: { $place }. { $answer }
because-over-trigger = Die Leckrate { $circuit ->
    [none] der Anlage
   *[other] von Kreislauf { $circuit }
} lag über der gesetzlichen Schwelle von { $trigger } %; { $repaired ->
    [yes] repariert wurde bei diesem Besuch, innerhalb der Frist.
   *[no] die Reparatur ist bis zum { $by } fällig.
}
because-no-leak-check = Als die gesetzlich verlangte Dichtheitskontrolle zählt das nicht, weil nicht alle sichtbaren und zugänglichen Teile abgesucht wurden.
because-not-reached = { $places ->
    [one] Eine Stelle war nicht erreichbar und ist noch abzusuchen.
   *[other] { $places } Stellen waren nicht erreichbar und sind noch abzusuchen.
}

# Was im Satz fett steht: es wird in den folgenden Satz eingesetzt.
leaked-times = war { $times }-mal undicht
leaking-again = { $place } { $strong }: { $found }. Die letzte Reparatur{ $by ->
    [none] { "" }
    [others] { " " }(durch andere)
   *[other] { " " }({ $by })
} hielt höchstens { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}{ $seen ->
    [none] { "" }
   *[other] ; zuletzt hatte sie am { $seen } gehalten
}.
found-still-leaking = war noch immer undicht
still-leaking = { $place } { $strong }, { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
} nach dem ersten Fund am { $found }; eine Reparatur hatte es nicht gegeben.

open-not-reached = { CAPITAL($place) }: noch abzusuchen ({ $reason }).
answer-of = Antwort ({ $by }): { $answer }
customer = Kunde
waiting-cost = { $running ->
    [yes] Beim bisherigen Verlust würden weiter etwa { $mass } im Jahr aus { $circuit ->
        [none] der Anlage
       *[other] Kreislauf { $circuit }
    } entweichen{ $co2e ->
        [none] { "" }
       *[other] { " " }({ $co2e })
    }, und die Anlage verliert dabei an Leistung.
   *[no] Beim bisherigen Verlust würden, sobald die Anlage wieder läuft, weiter etwa { $mass } im Jahr aus { $circuit ->
        [none] ihr
       *[other] Kreislauf { $circuit }
    } entweichen{ $co2e ->
        [none] { "" }
       *[other] { " " }({ $co2e })
    }.
}

fact-next = Nächster Termin
fact-overdue = Überfällig
fact-then = Danach: { $next }
fact-earlier-repairs = Frühere Reparaturen
fact-earlier-repairs-checked = { $repairs } nachkontrolliert, es zeigte sich nichts
fact-repaired-places = { $places ->
    [one] Reparierte Stelle
   *[other] { $places } reparierte Stellen
}
fact-not-checked-again = Nicht mit Lecksuchgerät oder Schaummittel nachkontrolliert
fact-checked-again = Nachkontrolliert, es zeigte sich nichts
fact-all-checked-again = Alle nachkontrolliert, es zeigte sich nichts
fact-some-checked-again = { $checked } von { $repaired } nachkontrolliert, es zeigte sich nichts
fact-detector-proved = Lecksuchgerät geprüft an { $leak }
fact-section-tested = Abschnitt { $section }, geprüft
fact-circuits-tested = { $count ->
    [0] Ganzer Kreislauf
    [1] Kreislauf { $circuits }
   *[other] Kreisläufe { $circuits }
}, geprüft
fact-gas = Gas
fact-test = { $gas } bei { $pressure }, { $duration } lang{ $later ->
    [yes] ; vor einer späteren Reparatur gemacht
   *[no] { "" }
}
fact-coarse-test = eine grobe Prüfung: sie schließt ein Leck der gefundenen Größe nicht aus
fact-nitrogen-a-day = { $mass } Stickstoff am Tag
fact-air-a-day = { $mass } Luft am Tag
fact-whole-under-vacuum = ganzer Kreislauf unter Vakuum: nichts Größeres als { $rate }
fact-air-came-in = Luft ist eingedrungen
fact-vacuum-test = { $duration } lang unter Vakuum
fact-none-added = Nichts nachgefüllt
fact-charged = { $mass } eingefüllt
fact-after-retrofit = nach der Umstellung des Kältemittels
fact-refrigerant = Kältemittel
fact-lost = { $mass } verloren gegangen
head-line-circuit = Kreislauf { $circuit }: { $parts }
