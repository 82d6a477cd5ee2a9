# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } día
   *[other] { $days } días
}
assumed = supuesto: { $reason }
result-of = resultado de
half-width = semianchura del intervalo
