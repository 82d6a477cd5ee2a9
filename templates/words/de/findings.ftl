# Befunde und Stellen: Angaben, Nachweise, Stand.

circuit-named = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
}
finding-where = Ort
finding-kind = Art
finding-evidence = Beleg
finding-size = Größe
finding-cause = Ursache
finding-repair = Reparatur
finding-proof = Nachkontrolle
evidence-grade = { $grade }: { $meaning }
proof-look = { $time }, { $method }: { $result }
proof-test = Prüfung { $name }: { $verdict }{ $coarse ->
    [yes] { " " }(gröber als dieses Leck)
   *[no] { "" }
}
proof-search = Suche { $name }
size-none = nicht bestimmt
size-estimated = { $size }, geschätzt
size-how = { $measured ->
    [yes] gemessen
   *[no] geschätzt
}{ $by ->
    [none] { "" }
   *[other] { " " }({ $by })
}{ $pressure ->
    [none] { "" }
   *[other] { " " }bei { $pressure }
}
everything-registered = alle erfassten Stellen

point-holds = hält seit { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}
point-not-reached = nicht erreicht
point-suspect-not-reached = Verdacht, nicht erreicht
point-still-leaking = war noch immer undicht, { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
} nach dem Fund
point-leaking-again = wieder undicht an derselben Stelle: { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
} nach einer Reparatur durch { $by ->
    [none] uns
    [others] andere
   *[other] { $by }
}; { SPELLED($times) }mal undicht gewesen
point-repaired-holding = repariert, hält seit { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}{ $section-only ->
    [yes] , nur nach einer Prüfung des Abschnitts
   *[no] { "" }
}
point-not-retested = repariert, seit { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
} nicht nachkontrolliert
point-replaced = am { $day } ersetzt
point-replaced-holding = am { $day } ersetzt; seitdem nichts gefunden{ $section-only ->
    [yes] , nur nach einer Prüfung des Abschnitts
   *[no] { "" }
}
point-replaced-not-looked-at = am { $day } ersetzt; seitdem nicht kontrolliert
point-left-open = { $suspect ->
    [yes] Verdacht noch nicht geklärt
   *[no] noch nicht repariert
}, seit { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}{ $looked ->
    [yes] ; jetzt zeigte sich dort kein Anzeichen eines Lecks
   *[no] { "" }
}

leaked-points = Stellen, die undicht waren
leaked-point = Stelle
leaked-when = Undicht
leaked-repairs-held = Reparaturen hielten
leaked-at-this-visit = Bei diesem Einsatz
leaked-note = Gezählt ist bis zu dem Tag, an dem das Leck wieder gefunden wurde: So lange hielt die Reparatur höchstens. Bei einem ersetzten Teil beginnt die Zählung neu.
leaked-on = { $day } ({ $repair ->
    [none] nicht repariert
    [others] von anderen repariert
    [replaced] Teil ersetzt
    [temporary] vorläufig repariert
   *[done] { $repaired ->
        [none] repariert
       *[other] repariert am { $repaired }
    }
}{ $old ->
    [yes] , altes Teil
   *[no] { "" }
})
days-held = { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}

leaks-explain = Die { $circuit ->
    [none] gefundenen
   *[other] in Kreislauf { $circuit } gefundenen
} Lecks erklären { $least ->
    [none] höchstens { $most }
   *[other] zwischen { $least } und { $most }
} der verlorenen { $lost }.
leaks-explain-all = Die { $circuit ->
    [none] gefundenen
   *[other] in Kreislauf { $circuit } gefundenen
} Lecks können die verlorenen { $lost } ganz erklären{ $least ->
    [none] { "" }
   *[other] , mindestens aber { $least } davon
}.
leaks-explain-others-remain = Die { $circuit ->
    [none] gefundenen
   *[other] in Kreislauf { $circuit } gefundenen
} Lecks erklären { $least ->
    [none] höchstens { $most }
   *[other] zwischen { $least } und { $most }
} der verlorenen { $lost }: es bleiben andere Lecks, oder eines von ihnen war früher größer.
leaks-explain-more-than-lost = Bei den gemessenen Größen wären aus den { $circuit ->
    [none] gefundenen
   *[other] in Kreislauf { $circuit } gefundenen
} Lecks { $least ->
    [none] höchstens { $most }
   *[other] zwischen { $least } und { $most }
} entwichen, mehr als die verlorenen { $lost }: sie waren nicht die ganze Zeit so stark undicht.
leaks-not-sized = { $leaks ->
    [one] Das gefundene Leck wurde nicht gemessen: Wie viel des Verlusts es erklärt, ist nicht bekannt.
   *[other] Nicht jedes gefundene Leck wurde gemessen: Wie viel des Verlusts die Lecks erklären, ist nicht bekannt.
}
