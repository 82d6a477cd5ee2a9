# Verfahren, Grenzen, Betriebswerte, Räume, der gezeichnete Kreislauf.

checked-air = Kältemittel in der Luft { $amount }
checked-oxygen = Sauerstoff { $amount }
checked-ventilated = belüftet
checked-not-ventilated = nicht belüftet
checked-locked-off = gegen Wiedereinschalten gesichert
checked-not-locked-off = nicht gegen Wiedereinschalten gesichert
checked-ignition = Zündquellen: { $sources }
room-machinery = { CAPITAL($room) } (Maschinenraum): Die Grenzwerte für Personen-Aufenthaltsbereiche gelten nicht; die örtlichen Vorschriften verlangen in der Regel Lüftung und ein Gaswarngerät.
room-size-wanted = { CAPITAL($room) }: { $refrigerant } ist brennbar oder giftig und kann in diesen Personen-Aufenthaltsbereich gelangen, dessen Größe nicht notiert ist. Ob der Grenzwert überschritten würde, ist nicht bekannt.
room-size-not-noted = { CAPITAL($room) } (Personen-Aufenthaltsbereich): Die Größe ist nicht notiert, der Grenzwert darum nicht geprüft.
room-concentration = { $circuit ->
    [none] { CAPITAL($room) } (Personen-Aufenthaltsbereich): Träte die ganze Füllung der Anlage aus und mischte sich gleichmäßig, enthielte die Luft { $concentration } { $refrigerant }.
   *[other] { CAPITAL($room) } (Personen-Aufenthaltsbereich): Träte die ganze Füllung von Kreislauf { $circuit } aus und mischte sich gleichmäßig, enthielte die Luft { $concentration } { $refrigerant }.
}
room-no-limit = Für dieses Kältemittel liegt kein Grenzwert vor, der in seiner Quelle gelesen wurde; darum wird keiner verglichen. Nach den örtlichen Vorschriften prüfen.
room-limit = { $above ->
    [yes] Das liegt über dem Grenzwert von { $limit }; Quelle: { $source }. Bei Alarm den Raum verlassen; über Gaswarnung, Lüftung oder eine kleinere Füllmenge entscheiden die örtlichen Vorschriften.
   *[no] Das liegt nicht über dem Grenzwert von { $limit }; Quelle: { $source }.
}
room-quarter = { $above ->
    [yes] Es liegt über einem Viertel der unteren Explosionsgrenze, { $limit }.
   *[no] Es liegt nicht über einem Viertel der unteren Explosionsgrenze, { $limit }.
}
room-equipped = { $has ->
    [both] Laut Notizen Lüftung: { $ventilation }; Gaswarngerät: { $detector }.
    [ventilation] Laut Notizen Lüftung: { $ventilation }.
   *[detector] Laut Notizen Gaswarngerät: { $detector }.
}
safety-class = { $refrigerant } gehört zur Sicherheitsklasse { $class }.
safety-can-suffocate = Es ist nicht brennbar, kann aber zum Ersticken führen, zuerst an tief gelegenen Stellen.
safety-can-burn = Es kann brennen: Zündquellen fernhalten, lüften und nur Werkzeuge und Lecksuchgeräte verwenden, die dafür zugelassen sind.
safety-is-toxic = Es ist giftig: bei Alarm den Raum verlassen und nur mit Atemschutz betreten.
search-title = Lecksuchen
search-plant = Anlage { $state }
search-background = Hintergrund: { $background }
head-for = Dauer
head-method = Verfahren
head-where = Wo
head-conditions = Bedingungen
limit-not-all-visible = Es wurden nicht alle sichtbaren und zugänglichen Teile abgesucht.
limit-of-search = Eine Suche zeigt, was ihr Verfahren an den erreichten Stellen beim Druck jener Stunde finden konnte; ein kleineres Leck oder eines, das kommt und geht, hat sich vielleicht nicht gezeigt.
limit-of-tests = Eine Druck- oder Vakuumprüfung sagt nur, wie groß ein Leck im geprüften Teil während der Prüfung höchstens sein konnte; sie zeigt keinen Ort und ersetzt keine Dichtheitskontrolle.
work-title = Teil für Teil
work-brazed = { $work } (unter Stickstoffspülung hartgelötet)
head-part = Teil
head-work = Arbeit
used-attendance = { $from } bis { $to } Uhr
used-last-checked = zuletzt geprüft oder kalibriert am { $day }
used-on-day = { $day }: { $said }
used-detector-responded = { $leak ->
    [none] sprach um { $clock } Uhr auf ein Prüfleck an
   *[other] sprach um { $clock } Uhr auf das Prüfleck an ({ $leak })
}
used-detector-silent = { $leak ->
    [none] sprach um { $clock } Uhr auf ein Prüfleck nicht an
   *[other] sprach um { $clock } Uhr auf das Prüfleck nicht an ({ $leak })
}
reading-title = Messwerte der laufenden Anlage
reading-head = Messwert
reading-suction-pressure = Saugdruck
reading-suction-temperature = Sauggastemperatur
reading-discharge-pressure = Verdichtungsenddruck
reading-discharge-temperature = Druckgastemperatur
reading-liquid-pressure = Flüssigkeitsdruck
reading-liquid-temperature = Flüssigkeitstemperatur
reading-air-on-condenser = Lufteintrittstemperatur am Verflüssiger
reading-receiver-level = Füllstand im Sammler
reading-compressor-current = Stromaufnahme des Verdichters
reading-superheat = Überhitzung
reading-subcooling = Unterkühlung
reading-warm-side = Warme Seite
reading-above-critical = über dem kritischen Punkt: keine Unterkühlung
reading-sight-glass = Schauglas
reading-remark = Bemerkung
part-compressor = Verdichter
part-discharge-line = Druckleitung
part-condenser = Verflüssiger
part-receiver = Sammler
part-drier = Filtertrockner
part-sight-glass = Schauglas
part-solenoid-valve = Magnetventil
part-liquid-line = Flüssigkeitsleitung
part-expansion-device = Expansionsorgan
part-evaporator = Verdampfer
part-suction-line = Saugleitung
schematic-caption = { $circuit ->
    [none] Die Anlage, nicht maßstäblich und nicht mit allen Teilen; durchgezogen: Hochdruckseite, gestrichelt: Niederdruckseite. Die Nummern sind die der Stellen.
   *[other] Kreislauf { $circuit }, nicht maßstäblich und nicht mit allen Teilen; durchgezogen: Hochdruckseite, gestrichelt: Niederdruckseite. Die Nummern sind die der Stellen.
}
schematic-not-drawn = { $evaporators ->
    [one] Ein weiterer Verdampfer ist nicht gezeichnet.
   *[other] { CAPITAL(SPELLED($evaporators)) } weitere Verdampfer sind nicht gezeichnet.
}
schematic-points-not-drawn = { $count ->
    [one] Eine Stelle ist hier nicht gezeichnet: { $numbers }.
   *[other] Hier nicht gezeichnete Stellen: { $numbers }.
}
schematic-loop = { $circuit ->
    [none] Die Anlage im Umlauf: { $parts }.
   *[other] Kreislauf { $circuit } im Umlauf: { $parts }.
}
schematic-point = Stelle { $number } ({ $part }): { $state }.
