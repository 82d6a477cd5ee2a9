# Die erste Seite: Kopf, Ergebnis, Angaben, Offenes, Termine.

visit = Einsatz
the-contractor = Der Fachbetrieb
certificate-of-firm = Zertifikat { $number }
certificate-of-person = Zertifikat { $number }
certificate-with-category = Zertifikat { $number }, Kategorie { $category }
signs-for-contractor = Für den Fachbetrieb
signs-for-operator = Für den Betreiber entgegengenommen
class-flammable = { $class }, brennbar
class-not-flammable = { $class }, nicht brennbar
plant-operator = Betreiber
plant-address = Anschrift
plant-category = Art der Anlage
plant-in-service-since = In Betrieb seit
plant-complaint = Gemeldete Störung
plant-air-outside = Außentemperatur
plant-left = Zustand bei Übergabe
plant-back-in-normal-operation = Wieder im Normalbetrieb

outcome-repaired-proved = { $leaks ->
    [one] Ein Leck gefunden und repariert; der Reparaturerfolg ist nachgewiesen.
   *[other] { CAPITAL(SPELLED($leaks)) } Lecks gefunden und repariert; der Erfolg aller Reparaturen ist nachgewiesen.
}
outcome-repaired-not-proved = { $leaks ->
    [one] Ein Leck gefunden und repariert; der Reparaturerfolg ist nicht nachgewiesen.
   *[other] { CAPITAL(SPELLED($leaks)) } Lecks gefunden und repariert; der Erfolg ist { $proved ->
        [0] bei keiner Reparatur
        [one] bei einer Reparatur
       *[other] bei { SPELLED($proved) } Reparaturen
    } nachgewiesen.
}
outcome-partly-repaired = { CAPITAL(SPELLED($leaks)) } Lecks gefunden, { $repaired ->
    [one] eines
   *[other] { SPELLED($repaired) }
} repariert; der Rest steht noch aus.
outcome-left-open = { $leaks ->
    [one] Ein Leck gefunden; es ist noch nicht repariert.
   *[other] { CAPITAL(SPELLED($leaks)) } Lecks gefunden; sie sind noch nicht repariert.
}
outcome-suspects-only = Ein Leck wird vermutet; geortet wurde es nicht.
outcome-suspects-remain = { $suspects ->
    [one] Eine verdächtige Stelle bleibt zu klären.
   *[other] Einige verdächtige Stellen bleiben zu klären.
}
outcome-not-found-loss-stands = Es ist Kältemittel verloren gegangen; das Leck wurde nicht gefunden.
outcome-nothing-found = Gesucht; an den abgesuchten Stellen wurde nichts gefunden.
outcome-repair-verified = { $repairs ->
    [one] Die frühere Reparatur wurde nachkontrolliert; dort zeigte sich kein Anzeichen eines Lecks.
   *[other] { CAPITAL(SPELLED($repairs)) } frühere Reparaturen wurden nachkontrolliert; dort zeigte sich kein Anzeichen eines Lecks.
}
outcome-gas-added = Kältemittel wurde nachgefüllt; das Leck wurde weder gesucht noch repariert.
outcome-changed-from-to = Die Anlage wurde von { $old } auf { $new } umgestellt.
outcome-changed = Die Anlage wurde auf ein anderes Kältemittel umgestellt.
outcome-other = { $purpose } durchgeführt.

place-says = { $place }: { $what }
because-holding = { $place } war schon { SPELLED($times) }mal undicht; die letzte Reparatur hält nun seit { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}.
because-lost-since = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
} hatte { $least ->
    [yes] mindestens { $mass }
   *[no] { $mass }
} Kältemittel seit dem { $day } verloren.
because-missing-since = In { $circuit ->
    [none] der Anlage
   *[other] Kreislauf { $circuit }
} fehlten { $least ->
    [yes] mindestens { $mass }
   *[no] { $mass }
} Kältemittel. Vor diesem Verlust wurde am { $day } gefüllt; ob die Anlage danach voll war, ist nicht bekannt.
because-lost = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
} hatte { $least ->
    [yes] mindestens { $mass }
   *[no] { $mass }
} Kältemittel verloren.
because-left-open = Nicht repariert: { $place }. { $answer }
because-over-trigger = Die Leckrate { $circuit ->
    [none] der Anlage
   *[other] von Kreislauf { $circuit }
} lag über der gesetzlichen Schwelle von { $trigger } %; { $repaired ->
    [yes] repariert wurde bei diesem Einsatz, innerhalb der Frist.
   *[no] die Reparatur ist bis zum { $by } fällig.
}
because-no-leak-check = Als die gesetzlich verlangte Dichtheitskontrolle zählt das nicht, weil nicht alle sichtbaren und zugänglichen Teile abgesucht wurden.
because-put-back = Nachgefüllt wurde in Teilen: { $parts }.
put-back-on = { $mass } am { $day }
because-more-partial = Es kann mehr gefehlt haben: Es wurde nicht bis voll gefüllt.
because-more-not-noted = Es kann mehr gefehlt haben: Ob bis voll gefüllt wurde, ist nicht notiert.
because-more-not-complete = Es kann mehr verloren gegangen sein: In diesem Anlagenbuch steht nicht jede Füllung seit jenem Tag.
because-not-reached = { $places ->
    [one] Eine Stelle war nicht erreichbar und ist noch abzusuchen.
   *[other] { CAPITAL(SPELLED($places)) } Stellen waren nicht erreichbar und sind noch abzusuchen.
}

# Was im Satz fett steht: es wird in den folgenden Satz eingesetzt.
leaked-times = war { SPELLED($times) }mal undicht
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
    [yes] { $since ->
        [none] Beim bisherigen Verlust
       *[other] Ging alles seit dem { $since } verloren, so
    } würden weiter { $least ->
        [yes] mindestens
       *[no] etwa
    } { $mass } im Jahr aus { $circuit ->
        [none] der Anlage
       *[other] Kreislauf { $circuit }
    } entweichen{ $co2e ->
        [none] { "" }
       *[other] { " " }({ $co2e })
    }, und die Anlage verlöre dabei an Leistung.
   *[no] { $since ->
        [none] Beim bisherigen Verlust
       *[other] Ging alles seit dem { $since } verloren, so
    } würden, sobald die Anlage wieder läuft, weiter { $least ->
        [yes] mindestens
       *[no] etwa
    } { $mass } im Jahr aus { $circuit ->
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
fact-earlier-repairs-checked = { $repairs ->
    [one] Eine nachkontrolliert: kein Anzeichen eines Lecks
   *[other] { CAPITAL(SPELLED($repairs)) } nachkontrolliert: kein Anzeichen eines Lecks
}
fact-repaired-places = { $places ->
    [one] Reparierte Stelle
   *[other] { CAPITAL(SPELLED($places)) } reparierte Stellen
}
fact-not-checked-again = Nicht mit Lecksuchgerät oder Schaummittel nachkontrolliert
fact-checked-again = Nachkontrolliert: kein Anzeichen eines Lecks
fact-all-checked-again = Alle nachkontrolliert: kein Anzeichen eines Lecks
fact-some-checked-again = { $checked } von { $repaired } nachkontrolliert: kein Anzeichen eines Lecks
fact-detector-proved = am Prüfleck { $leak } erprobt
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
fact-nitrogen-a-day = { $mass } Stickstoff pro Tag
fact-air-a-day = { $mass } Luft pro Tag
fact-whole-under-vacuum = ganzer Kreislauf unter Vakuum: kein Leck über { $rate } gezeigt
fact-air-came-in = Luft ist eingedrungen
fact-vacuum-test = { $duration } lang unter Vakuum
fact-none-added = Nichts nachgefüllt
fact-charged = { $mass } eingefüllt
fact-taken-out = { $mass } { $refrigerant } zurückgewonnen{ $missing ->
    [none] { "" }
   *[other] ; { $missing } hatten gefehlt
}
fact-after-retrofit = nach der Umstellung des Kältemittels
fact-refrigerant = Kältemittel
fact-lost = { $least ->
    [yes] Mindestens { $mass } verloren gegangen
   *[no] { $mass } verloren gegangen
}
fact-put-back = { $mass } nachgefüllt
fact-missing-in-all = insgesamt fehlten { $least ->
    [yes] mindestens { $mass }
   *[no] { $mass }
}{ $co2e ->
    [none] { "" }
   *[other] , { $co2e }
}
head-line-circuit = Kreislauf { $circuit }: { $parts }
