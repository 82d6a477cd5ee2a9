# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}
assumed = angenommen: { $reason }
result-of = Ergebnis von
half-width = halbe Breite des Intervalls
workings-of-account = Kältemittelbilanz
workings-of-circuit = Kältemittelbilanz, Kreislauf { $id }
workings-of-pressure-test = Druckprüfung { $id }
workings-of-vacuum-test = Vakuumprüfung { $id }
workings-of-readings = Betriebswerte
workings-of-room = Der Raum und seine Grenzwerte
