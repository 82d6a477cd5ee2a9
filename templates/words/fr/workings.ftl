# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
assumed = supposé : { $reason }
result-of = résultat de
half-width = demi-largeur de l’intervalle
