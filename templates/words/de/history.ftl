# Die Historie einer Anlage oder eines Standorts: Einleitung, Tabellen, Diagramme und Zeichen.

history-kind = Historie
history-title = Historie: { $name }, Stand { $day }
as-at = Stand { $day }
history-site-lead = { $cures ->
    [yes] { $systems ->
        [one] Eine Anlage dieses Standorts: zuerst, was dauerhaft instand gesetzt werden muss, dann ihr Kapitel.
       *[other] { CAPITAL(SPELLED($systems)) } Anlagen dieses Standorts: zuerst, was dauerhaft instand gesetzt werden muss, dann ein Kapitel für jede.
    }
   *[no] { $systems ->
        [one] Eine Anlage dieses Standorts mit ihrem Kapitel.
       *[other] { CAPITAL(SPELLED($systems)) } Anlagen dieses Standorts, jede mit einem Kapitel.
    }
}
history-nothing-came-back = Nach diesen Notizen war kein Teil, das jetzt eingebaut ist, mehr als einmal undicht, und keines ist nach dem letzten Stand noch undicht.
history-absence = Wo nichts aufgezeichnet ist, kann dennoch ein Leck gewesen sein: Ein Jahr ohne Eintrag ist eines, von dem nichts notiert ist, nicht eines ohne Leck.
history-looked-at = Eine Stelle, die ohne Anzeichen kontrolliert wurde, zeigte bei diesem Einsatz und mit dessen Verfahren nichts; ein kleineres Leck kann vorhanden gewesen sein.
history-visits = { $visits ->
    [one] Ein Einsatz in diesem Anlagenbuch und die früheren Aufzeichnungen darin.
   *[other] { CAPITAL(SPELLED($visits)) } Einsätze in diesem Anlagenbuch und die früheren Aufzeichnungen darin.
}
history-complete-since = { $circuit ->
    [none] Die Kältemittelbilanz ist erst seit dem { $day } vollständig.
   *[other] Kreislauf { $circuit }: Die Kältemittelbilanz ist erst seit dem { $day } vollständig.
}
history-complete-unknown = { $circuit ->
    [none] Die Notizen nennen keinen Tag, von dem an die Kältemittelbilanz vollständig ist.
   *[other] Kreislauf { $circuit }: Die Notizen nennen keinen Tag, von dem an die Kältemittelbilanz vollständig ist.
}
history-points-note = { $cures ->
    [yes] Zuerst stehen die Stellen, die dauerhaft instand gesetzt werden müssen.{ " " }
   *[no] { "" }
}Gezählt sind die Lecks des Teils, das jetzt eingebaut ist; mit einem neuen Teil beginnt die Zählung neu. Die Tage zählen von jeder Reparatur bis zu dem Tag, an dem das Leck dort wieder gefunden wurde; bei einer Reparatur, die hält, bis zur letzten Kontrolle.
history-cures-note = Eine Stelle muss dauerhaft instand gesetzt werden, wenn das jetzt eingebaute Teil mehr als einmal undicht war oder sein Leck nicht oder nur vorläufig repariert wurde.
history-systems-note = Verloren ist, was bei Einsätzen in diesem Anlagenbuch fehlte, in allen Jahren.
history-earlier-note = Übernommen aus Aufzeichnungen aus der Zeit vor diesem Anlagenbuch oder von anderen.
point-not-looked-at-then = beim letzten Einsatz nicht kontrolliert

# Spaltenköpfe.
head-leaks = Lecks
head-repairs-held = Reparaturen hielten, Tage
head-last-looked-at = Zuletzt kontrolliert
head-state = Stand
head-system = Anlage
head-visits = Einsätze
head-points-leaked = Undichte Stellen
head-lost-co2e = Verloren, t CO₂e
head-last-visit = Letzter Einsatz
head-its-outcome = Sein Ergebnis
head-what = Was
head-moved = Masse
head-by = Durch
head-told-by = Quelle
head-visit = Einsatz
head-purpose = Anlass
head-outcome = Ergebnis
head-year = Jahr
head-charged = Eingefüllt, { $unit }
head-charged-by-others = Von anderen eingefüllt, { $unit }
head-recovered = Zurückgewonnen, { $unit }
head-recovered-by-others = Von anderen zurückgewonnen, { $unit }
head-leaked = Entwichen, { $unit }
head-rate = Rate
head-against-trigger = Vergleich mit der Auslöseschwelle
head-tested = Was geprüft wurde
head-not-larger = Größtes noch mögliches Leck
not-known = nicht bekannt

# Diagramme und ihre Tabellen.
chart-last-eight = Die letzten acht; alle stehen in der Tabelle.
refrigerant-by-year = { $circuit ->
    [none] Kältemittel nach Jahren
   *[other] Kältemittel nach Jahren, Kreislauf { $circuit }
}
refrigerant-in = Kältemittel, { $unit }
refrigerant-caption = Volle Säule: eingefüllt. Gestreift: von anderen oder nach früheren Aufzeichnungen eingefüllt. Weiß: zurückgewonnen. Gestrichelt: von anderen zurückgewonnen.
refrigerant-alt = Säulen des in jedem Jahr eingefüllten und zurückgewonnenen Kältemittels; die Zahlen stehen in der Tabelle darunter.
refrigerant-note = Entwichen ist, was bei den Einsätzen nachgefüllt werden musste, weil es fehlte, abzüglich des Zurückgewonnenen; was bei der Arbeit verloren ging, ist nicht darin und steht in keiner Spalte. * nicht jede Bewegung des Jahres ist bekannt.
refrigerant-missing-at-change = Beim Wechsel des Kältemittels { $year } fehlten { $missing } an der Füllmenge von { $full }; sie stehen in keiner Spalte.
co2e-by-year = { $circuit ->
    [none] Verlorenes CO₂-Äquivalent nach Jahren
   *[other] Verlorenes CO₂-Äquivalent nach Jahren, Kreislauf { $circuit }
}
co2e-in = Verlorenes CO₂-Äquivalent, t
co2e-alt = Säulen des in jedem Jahr verlorenen CO₂-Äquivalents; die Zahlen stehen in der Tabelle darunter.
co2e-note = Gezählt in dem Jahr, in dem das Fehlen festgestellt wurde.
rate-in = % der Füllmenge
rate-trigger = Auslöseschwelle, { $trigger } %
rate-over = über { $trigger } %
rate-not-over = nicht über { $trigger } %
rate-alt = { $trigger ->
    [none] Säulen der Rate bei jedem Nachfüllen; die Zahlen stehen in der Tabelle darunter.
   *[other] Säulen der Rate bei jedem Nachfüllen, mit der Auslöseschwelle von { $trigger } % als Linie; die Zahlen stehen in der Tabelle darunter.
}
rate-without-category = Es ist keine Art der Anlage notiert, so dass keine Auslöseschwelle genannt werden kann.
rate-without-rule = Was jeweils fehlte, auf ein Jahr bezogen, wie es der Bericht des Einsatzes rechnet: Wo nicht ganz gefüllt wurde oder nicht bekannt ist, ob die Anlage vorher voll war, gilt die Zahl nur so, wie der Bericht sagt. Keine Regel setzt für sie eine Auslöseschwelle.
test-limits = Druckprüfungen: größtes noch mögliches Leck
test-limits-in = Größtes noch mögliches Leck, { $unit }
test-limits-alt = Säulen des größten Lecks, das nach jeder Druckprüfung noch möglich war; die Zahlen stehen in der Tabelle darunter.
test-limits-note = Prüfungen eines Tages stehen von links nach rechts in der Reihenfolge dieser Tabelle.
test-limit-of = { $circuit ->
    [none] { "" }
   *[other] Kreislauf { $circuit },{ " " }
}{ $section ->
    [none] alle Abschnitte
   *[other] Abschnitt { $section }
}, Prüfung { $test }

# Die Stellen im Lauf der Zeit in Worten.
mark-once = { $day }: { $told }
mark-times = { $first } bis { $last }: { $told }, { SPELLED($times) }mal
mark-told-by = { $told }, { $by }
