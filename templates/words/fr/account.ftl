# Le bilan du fluide et les taux de fuite.

account-net = { $circuit ->
    [none] Solde
   *[other] Solde, circuit { $circuit }
}
account-loss-per-year = { $circuit ->
    [none] Perte par an
   *[other] Perte par an, circuit { $circuit }
}
account-missing = { $circuit ->
    [none] Manque total
   *[other] Manque total, circuit { $circuit }
}
account-at-least = { $least ->
    [yes] au moins { $figure }
   *[no] { $figure }
}
account-recovered = { $circuit ->
    [none] { $refrigerant } récupéré
   *[other] { $refrigerant } récupéré, circuit { $circuit }
}
account-less-than-full = { $circuit ->
    [none] Manque par rapport à la charge complète
   *[other] Manque par rapport à la charge complète, circuit { $circuit }
}
account-recovered-co2e = { $circuit ->
    [none] Équivalent CO₂ du fluide récupéré
   *[other] Équivalent CO₂ du fluide récupéré, circuit { $circuit }
}
account-of-full-charge = { $least ->
    [yes] au moins { $share }
   *[no] { $share }
} de la charge complète{ $since ->
    [none] { "" }
   *[other] , si tout a été perdu depuis le { $since }
}
account-charged-to = { $movement }, { $full ->
    [yes] charge { $to }
   *[no] charge non complétée
}
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
account-added-before = Fluide ajouté auparavant (chargé moins récupéré)
account-added-note = Ce qui s’est perdu pendant le travail y est compris ; le solde d’une intervention l’en déduit. Un changement de fluide n’est pas compté.
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
