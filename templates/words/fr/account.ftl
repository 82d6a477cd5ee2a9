# Le bilan du fluide et les taux de fuite.

account-net = { $circuit ->
    [none] Solde
   *[other] Solde, circuit { $circuit }
}
account-loss-per-year = { $circuit ->
    [none] Perte par an
   *[other] Perte par an, circuit { $circuit }
}
account-of-full-charge = { $share } de la charge complète
account-sum = solde
account-movements = { $circuit ->
    [none] Mouvements
   *[other] Circuit { $circuit }
}
account-signs = Entrées en positif, sorties en négatif. Le fluide récupéré puis rechargé ne compte pas comme perte.
account-nothing-moved = Aucun mouvement de fluide frigorigène.
account-recovered-before = récupéré auparavant
account-cylinders = Bouteilles
account-gross = Pesées brutes (bouteille et fluide).
account-circuit = { $circuit ->
    [none] L’installation
   *[other] Circuit { $circuit }
}
account-earlier-record = document antérieur
account-this-book = ce carnet
account-added-before = Fluide ajouté auparavant, solde de chaque intervention
account-complete-since = Complet seulement depuis le { $day }.
head-when = Date
head-movement = Mouvement
head-why = Motif
head-cylinder = Bouteille
head-mass = Masse, { $unit }
head-refrigerant = Fluide
head-origin-or-destination = Origine ou destination
head-before = Avant, { $unit }
head-after = Après, { $unit }
head-circuit = Circuit
head-from-record = Source
head-added = Ajouté, { $unit }
