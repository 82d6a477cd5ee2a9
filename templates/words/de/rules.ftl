# Wo die Anlage nach den geltenden Regeln steht, und was sie verlangen.

because = { $rule }, { $source }
because-own-date = vom Techniker gesetzter Termin; { $rule }, { $source }
check-every = { $source }: alle { $months } Monate
inspections-until = { $source }: { $quarterly ->
    [yes] alle drei Monate, bis vier Quartale nacheinander nicht über der Schwelle liegen
   *[no] dann jährlich, bis die Leckrate ein Jahr lang nicht über der Schwelle lag
}
not-before-hours = nicht vor { $hours } Betriebsstunden
report-loss = Den Verlust von { $percent } % der Füllmenge im Jahr { $year } melden
class-with-50-lb = { $class } mit 50 lb oder mehr (82.157(a))
legal-coverage = { $count ->
    [0] { $standing ->
        [covered] Die Anlage fällt unter diese Vorschrift;
        [undecided] Ob die Anlage unter diese Vorschrift fällt, ist nicht entschieden:
       *[other] Die Anlage fällt nicht unter diese Vorschrift;
    }
    [1] { $standing ->
        [covered] Kreislauf { $circuits } fällt unter diese Vorschrift;
        [undecided] Ob Kreislauf { $circuits } unter diese Vorschrift fällt, ist nicht entschieden:
       *[other] Kreislauf { $circuits } fällt nicht unter diese Vorschrift;
    }
   *[other] { $standing ->
        [covered] Die Kreisläufe { $circuits } fallen unter diese Vorschrift;
        [undecided] Ob die Kreisläufe { $circuits } unter diese Vorschrift fallen, ist nicht entschieden:
       *[other] Die Kreisläufe { $circuits } fallen nicht unter diese Vorschrift;
    }
} { $why }.
legal-charge = Füllmenge { $count ->
    [0] { $charge }.
    [1] { $charge }.
   *[other] je { $charge }.
}
legal-rate-own-way = Die Vorschrift zählt auf ihre Weise, mit eigenen Tagen und mit dem, was bei der Arbeit verloren ging; das kann vom Verlust pro Jahr in der Kältemittelbilanz abweichen.
legal-rate-without-category = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
}: Leckrate { $rate }; es ist keine Art der Anlage notiert, so dass keine Auslöseschwelle genannt werden kann.
legal-rate-not-over = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
}: { $method ->
    [annualizing] Leckrate, auf ein Jahr hochgerechnet (annualizing method)
   *[rolling] Leckrate, gleitender Durchschnitt (rolling average method)
}: { $rate }; Auslöseschwelle { $trigger } % für { $category }: nicht überschritten.
legal-rate-over = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
}: { $method ->
    [annualizing] Leckrate, auf ein Jahr hochgerechnet (annualizing method)
   *[rolling] Leckrate, gleitender Durchschnitt (rolling average method)
}: { $rate }; Auslöseschwelle { $trigger } % für { $category }: überschritten; verlangt wird die Reparatur binnen { $days } Tagen nach dem Nachfüllen, oder binnen { $shutdown } Tagen bei Stillsetzung eines industriellen Prozesses ({ $source }); { $extensions }.
legal-check-every = Dichtheitskontrolle alle { $months } Monate.
legal-detection-there = Ein Leckage-Erkennungssystem ist Pflicht und vorhanden; es wird alle 12 Monate geprüft.
legal-detection-missing = Ein Leckage-Erkennungssystem ist Pflicht; keines ist notiert.
legal-automatic-detection = Ein selbsttätiges Leckage-Erkennungssystem wird verlangt, wenn die Anlage 2017 oder später in Betrieb ging: { $source }, nachprüfen.
legal-duty-done = { $when ->
    [since] { $what }, offen seit dem { $by }: am { $day } erledigt.
    [late] { $what }, fällig bis zum { $by }: verspätet erledigt, am { $day }.
   *[in-time] { $what }, fällig bis zum { $by }: am { $day } erledigt.
}
legal-records-kept = Aufzeichnungen sind { $years } Jahre aufzubewahren ({ $source }).
next-none = Aus den Notizen ergibt sich kein vorgeschriebener Termin; vereinbaren Sie einen mit dem Fachbetrieb.
next-open-since = offen seit { $day }
next-was-due = war bis { $day } fällig
next-by = bis { $day }
next-what = { $count ->
    [0] { $what }
    [1] { $what } (Kreislauf { $circuits })
   *[other] { $what } (Kreisläufe { $circuits })
}
next-searched-in-part = Seither gesucht, laut Notizen aber nicht an allen sichtbaren und zugänglichen Teilen, wie es eine Dichtheitskontrolle verlangt
covered-84-not-said = 15 lb oder mehr eines geregelten Stoffes oder eines Ersatzstoffes mit GWP über 53 (84.106(a)); Klimaanlagen für Wohnungen und leichtes Gewerbe sind ausgenommen, und die Notizen sagen nicht, ob dies eine ist
