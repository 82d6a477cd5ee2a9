# Kältemittelbilanz und Leckraten.

account-net = { $circuit ->
    [none] Saldo
   *[other] Saldo, Kreislauf { $circuit }
}
account-loss-per-year = { $circuit ->
    [none] Verlust pro Jahr
   *[other] Verlust pro Jahr, Kreislauf { $circuit }
}
account-missing = { $circuit ->
    [none] Insgesamt gefehlt
   *[other] Insgesamt gefehlt, Kreislauf { $circuit }
}
account-at-least = { $least ->
    [yes] mindestens { $figure }
   *[no] { $figure }
}
account-recovered = { $circuit ->
    [none] { $refrigerant } zurückgewonnen
   *[other] { $refrigerant } zurückgewonnen, Kreislauf { $circuit }
}
account-less-than-full = { $circuit ->
    [none] Zur vollen Füllmenge fehlten
   *[other] Zur vollen Füllmenge fehlten, Kreislauf { $circuit }
}
account-recovered-co2e = { $circuit ->
    [none] CO₂-Äquivalent des Zurückgewonnenen
   *[other] CO₂-Äquivalent des Zurückgewonnenen, Kreislauf { $circuit }
}
account-of-full-charge = { $least ->
    [yes] mindestens { $share }
   *[no] { $share }
} der vollen Füllmenge{ $since ->
    [none] { "" }
   *[other] , wenn alles seit dem { $since } verloren ging
}
account-charged-to = { $movement }, { $full ->
    [yes] { $to }
   *[no] nicht bis voll
}
account-sum = Saldo
account-movements = { $circuit ->
    [none] Bewegungen
   *[other] Kreislauf { $circuit }
}
account-signs = Eingefülltes zählt positiv, Entnommenes negativ. Was zurückgewonnen und wieder eingefüllt wurde, ist kein Verlust.
account-nothing-moved = Es wurde kein Kältemittel bewegt.
account-recovered-before = früher zurückgewonnen
account-cylinders = Flaschen
account-gross = Bruttogewichte (Flasche mit Kältemittel).
account-circuit = { $circuit ->
    [none] Die Anlage
   *[other] Kreislauf { $circuit }
}
account-earlier-record = frühere Aufzeichnung
account-this-book = dieses Anlagenbuch
account-added-before = Früher nachgefülltes Kältemittel (eingefüllt minus zurückgewonnen)
account-added-note = Was bei der Arbeit verloren ging, ist darin enthalten; im Saldo eines Einsatzes ist es abgezogen. Ein Wechsel des Kältemittels zählt nicht.
account-complete-since = Erst seit dem { $day } vollständig.
head-when = Wann
head-movement = Bewegung
head-why = Anlass
head-cylinder = Flasche
head-mass = Masse, { $unit }
head-refrigerant = Kältemittel
head-origin-or-destination = Herkunft oder Verbleib
head-before = Vorher, { $unit }
head-after = Nachher, { $unit }
head-circuit = Kreislauf
head-from-record = Quelle
head-added = Nachgefüllt, { $unit }
