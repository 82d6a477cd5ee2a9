# Kältemittelbilanz und Leckraten.

account-net = { $circuit ->
    [none] Saldo
   *[other] Saldo, Kreislauf { $circuit }
}
account-loss-per-year = { $circuit ->
    [none] Verlust pro Jahr
   *[other] Verlust pro Jahr, Kreislauf { $circuit }
}
account-of-full-charge = { $share } der vollen Füllmenge
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
account-added-before = Früher nachgefülltes Kältemittel, Saldo jedes Einsatzes
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
