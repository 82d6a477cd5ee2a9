# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
assumed = supposé : { $reason }
result-of = résultat de
half-width = demi-largeur de l’intervalle
workings-of-account = Bilan de fluide
workings-of-circuit = Bilan de fluide, circuit { $id }
workings-of-pressure-test = Essai de pression { $id }
workings-of-vacuum-test = Essai sous vide { $id }
workings-of-readings = Relevés de fonctionnement
workings-of-room = Le local et ses limites
