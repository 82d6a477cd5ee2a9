# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}
assumed = angenommen: { $reason }
result-of = Ergebnis von
half-width = halbe Breite des Intervalls
