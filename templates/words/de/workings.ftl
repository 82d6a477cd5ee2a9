# Der Anhang der Rechengänge, und was sie sagen.

days = { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}
assumed = angenommen: { $reason }
result-of = Ergebnis von
half-width = ± ist die halbe Breite des Intervalls
workings-of-account = Kältemittelbilanz
workings-of-circuit = Kältemittelbilanz, Kreislauf { $id }
workings-of-pressure-test = Druckprüfung { $id }
workings-of-vacuum-test = Vakuumprüfung { $id }
workings-of-readings = Betriebswerte
workings-of-room = Der Raum und seine Grenzwerte
days-from-to = { $from } bis { $to } Tage
origin-gwp = { $set }: { $shares }
origin-saturation = { $refrigerant }: aus { $source }
title-net-addition = { $circuit ->
    [none] Nachgefüllt im Saldo
   *[other] Nachgefüllt im Saldo, Kreislauf { $circuit }
}
title-full-charge-co2e = { $circuit ->
    [none] CO₂-Äquivalent der vollen Füllmenge
   *[other] CO₂-Äquivalent der vollen Füllmenge, Kreislauf { $circuit }
}
title-loss-co2e = { $circuit ->
    [none] CO₂-Äquivalent des Verlusts
   *[other] CO₂-Äquivalent des Verlusts, Kreislauf { $circuit }
}
title-lost-in-year = { $circuit ->
    [none] Nachgefüllt im Jahr { $year }, in Prozent der vollen Füllmenge
   *[other] Nachgefüllt im Jahr { $year }, in Prozent der vollen Füllmenge, Kreislauf { $circuit }
}
title-missing = { $circuit ->
    [none] Insgesamt gefehlt
   *[other] Insgesamt gefehlt, Kreislauf { $circuit }
}
title-missing-co2e = { $circuit ->
    [none] CO₂-Äquivalent dessen, was insgesamt fehlte
   *[other] CO₂-Äquivalent dessen, was insgesamt fehlte, Kreislauf { $circuit }
}
title-recovered = { $circuit ->
    [none] Zurückgewonnen für die Umstellung
   *[other] Zurückgewonnen für die Umstellung, Kreislauf { $circuit }
}
title-less-than-full = { $circuit ->
    [none] Zur vollen Füllmenge fehlten
   *[other] Zur vollen Füllmenge fehlten, Kreislauf { $circuit }
}
title-recovered-co2e = { $circuit ->
    [none] CO₂-Äquivalent des Zurückgewonnenen
   *[other] CO₂-Äquivalent des Zurückgewonnenen, Kreislauf { $circuit }
}
title-loss-per-year = { $circuit ->
    [none] Verlust pro Jahr
   *[other] Verlust pro Jahr, Kreislauf { $circuit }
}
title-leak-rate = { $circuit ->
    [none] Leckrate nach { $rules }
   *[other] Leckrate nach { $rules }, Kreislauf { $circuit }
}
title-leaks-explained = { $circuit ->
    [none] Was die gefundenen Lecks vom Verlust erklären
   *[other] Was die gefundenen Lecks vom Verlust erklären, Kreislauf { $circuit }
}
title-room-concentration = Konzentration im Raum { $room }
title-quarter-flammable-limit = Ein Viertel der unteren Explosionsgrenze von { $refrigerant }
note-apart-from-loss = Bewegungen für Inbetriebnahme, Saison, Umstellung oder Außerbetriebnahme sind in dieser Summe; in der Leckrate zählen sie nicht als Verlust.
note-uncertainty-written = Eine mit ± geschriebene Unsicherheit gilt mit dem Erweiterungsfaktor 2.
note-scale-not-known = Die Genauigkeit einer Waage ist nicht notiert, oder es ist keine Waage genannt: Für ihre Ablesungen steckt nur die halbe letzte Stelle in der Unsicherheit.
note-not-weighed = Die Unsicherheit einer Masse, die nicht vorher und nachher gewogen wurde, ist nicht bekannt.
note-from-installation = Vor diesem Verlust ist keine Füllung notiert: Die Tage zählen ab der Inbetriebnahme, bei der die volle Füllmenge eingewogen wurde. Wurde dazwischen Kältemittel nachgefüllt und nicht notiert, ging mehr verloren als hier angegeben.
note-first-calculation = Erste Berechnung nach dieser Vorschrift: Was nachgefüllt wurde, zählt als Verlust von 365 Tagen, unabhängig vom Kalender.
note-annualized-at-most = Es vergingen { $days } Tage, und die Vorschrift zählt höchstens 365: Was nachgefüllt wurde, zählt als Verlust eines Jahres.
note-annualized = { $days ->
    [one] Ginge der Verlust so weiter wie an diesem { $days } Tag, ginge dieser Anteil der vollen Füllmenge in einem Jahr verloren. Wann darin der Verlust geschah, sagt das nicht.
   *[other] Ginge der Verlust so weiter wie in diesen { $days } Tagen, ginge dieser Anteil der vollen Füllmenge in einem Jahr verloren. Wann darin der Verlust geschah, sagt das nicht.
}
note-window = { $since ->
    [verification] Das Zeitfenster sind die Tage, seit eine zweite Nachprüfung alle festgestellten Lecks als repariert zeigte. Es ist nicht auf ein Jahr hochgerechnet.
    [rule] Das Zeitfenster sind die Tage seit dem ersten Tag der Vorschrift. Es ist nicht auf ein Jahr hochgerechnet.
   *[year] Das Zeitfenster sind die letzten 365 Tage. Es ist nicht auf ein Jahr hochgerechnet.
}
note-not-to-full = Der Kreislauf wurde nicht bis zur vollen Füllmenge gefüllt, so dass mehr verloren gegangen sein kann.
note-not-known-full-before = Ob der Kreislauf nach dem vorigen Nachfüllen voll war, ist nicht bekannt.
note-loss-over-days = { $days ->
    [one] Verlust an { $days } Tag, auf 365 umgerechnet.
   *[other] Verlust in { $days } Tagen, auf 365 umgerechnet.
}
note-destroyed = Was abgeblasen und zu mindestens 98 % vernichtet wurde, zählt nicht (40 CFR 82.157(k)).
note-beyond-season = Für die Saison wurde mehr eingefüllt, als in den 12 Monaten davor dafür entnommen worden war. Die Definition der saisonalen Abweichung nach ihrem Wortlaut (40 CFR 82.152) deckt das nicht; was darüber hinaus eingefüllt wurde, zählt hier.
note-full-charge-as-noted = Die volle Füllmenge ist genommen, wie sie notiert ist: Die Unsicherheit ist nur die der Wägungen.
note-volumes-summed = V ist die Summe der aufgeführten Volumen.
note-year-not-complete = Nicht jede Bewegung dieses Jahres steht in diesem Anlagenbuch.
note-leak-may-have-begun = Ein Leck kann zu jeder Zeit seit der Füllung vor dem Verlust begonnen haben, wenn es nicht früher gesehen wurde. Dass es die gemessene Größe behielt, ist angenommen.
note-loss-not-known-well = Der Verlust ist nicht genau genug bekannt, um zu sagen, ob andere Lecks bleiben: Dazu muss am Anfang und am Ende des Zeitraums nach Gewicht voll gefüllt worden sein.
note-gwp-from-memory = Ein GWP in dieser Summe ist aus dem Gedächtnis: vor Gebrauch nachprüfen.
note-gwp-left-out = Ein Bestandteil ohne gelisteten GWP ist weggelassen, wie 40 CFR 84.64(c) es sagt.
note-resolution = Die Unsicherheit folgt aus der letzten notierten Stelle oder der ±-Angabe; Abweichungen von Manometer und Thermometer sind nicht enthalten.
note-glide = Bei diesem Druck siedet { $refrigerant } mit einem Temperaturgleit von { $glide } K: Die Überhitzung zählt ab dem Taupunkt, die Unterkühlung ab dem Siedepunkt.
