# La situation de l’installation selon les règles en vigueur, et ce qu’elles demandent.

because = { $rule }, { $source }
because-own-date = date fixée par le technicien ; { $rule }, { $source }
check-every = { $source } : tous les { $months } mois
inspections-until = { $source } : { $quarterly ->
    [yes] tous les trois mois, jusqu’à quatre trimestres de suite sans dépassement du seuil
   *[no] puis chaque année, jusqu’à ce que le taux de fuite soit resté un an au niveau du seuil ou en dessous
}
not-before-hours = pas avant { $hours } h de marche
report-loss = Déclarer la perte de { $percent } % de la charge en { $year }
class-with-50-lb = { $class } avec 50 lb ou plus (82.157(a))
legal-coverage = { $count ->
    [0] L’installation : { $standing ->
        [covered] concernée
        [undecided] non tranché
       *[other] non concernée
    }
    [1] Circuit { $circuits } : { $standing ->
        [covered] concerné
        [undecided] non tranché
       *[other] non concerné
    }
   *[other] Circuits { $circuits } : { $standing ->
        [covered] concernés
        [undecided] non tranché
       *[other] non concernés
    }
} ; { $why }.
legal-charge = Charge { $charge }{ $count ->
    [0] .
    [1] .
   *[other] { " " }par circuit.
}
legal-rate-own-way = La règle compte à sa manière, avec ses propres jours et avec ce qui s’est perdu pendant le travail ; ce taux peut donc différer de la perte par an du bilan.
legal-rate-without-category = { $circuit ->
    [none] L’installation
   *[other] Circuit { $circuit }
} : taux de fuite de { $rate } ; aucune catégorie n’est notée, aucun seuil ne peut donc être nommé.
legal-rate-not-over = { $circuit ->
    [none] L’installation
   *[other] Circuit { $circuit }
} : taux de fuite de { $rate } ({ $method ->
    [annualizing] méthode d’annualisation
   *[rolling] méthode de la moyenne mobile
}) ; seuil de { $trigger } % pour la catégorie { $category } : non dépassé.
legal-rate-over = { $circuit ->
    [none] L’installation
   *[other] Circuit { $circuit }
} : taux de fuite de { $rate } ({ $method ->
    [annualizing] méthode d’annualisation
   *[rolling] méthode de la moyenne mobile
}) ; seuil de { $trigger } % pour la catégorie { $category } : dépassé, ce qui demande la réparation dans les { $days } jours suivant l’appoint, ou { $shutdown } jours en cas d’arrêt d’un procédé industriel ({ $source }) ; { $extensions }.
legal-check-every = Contrôle d’étanchéité tous les { $months } mois.
legal-detection-there = Un système de détection des fuites est obligatoire et présent ; il est contrôlé tous les 12 mois.
legal-detection-missing = Un système de détection des fuites est obligatoire ; aucun n’est noté.
legal-automatic-detection = Un système automatique de détection des fuites est demandé si l’installation a été mise en service en 2017 ou après : { $source }, à vérifier.
legal-duty-done = { $when ->
    [since] { $what }, en suspens depuis le { $by } : fait le { $day }.
    [late] { $what }, au plus tard le { $by } : fait en retard, le { $day }.
   *[in-time] { $what }, au plus tard le { $by } : fait le { $day }.
}
legal-records-kept = Les registres sont conservés { $years } ans ({ $source }).
next-none = D’après ces notes, aucune échéance légale n’est établie ; convenez d’une date avec l’entreprise.
next-open-since = en suspens depuis le { $day }
next-was-due = était à faire au plus tard le { $day }
next-by = au plus tard le { $day }
next-what = { $count ->
    [0] { $what }
    [1] { $what } (circuit { $circuits })
   *[other] { $what } (circuits { $circuits })
}
next-searched-in-part = Une recherche a eu lieu depuis mais, d’après les notes, pas sur toutes les parties visibles et accessibles, comme l’exige un contrôle d’étanchéité
covered-84-not-said = 15 lb ou plus d’une substance réglementée, ou d’un substitut de PRP supérieur à 53 (84.106(a)) ; la climatisation résidentielle et commerciale légère est exclue, et les notes ne disent pas si c’en est une
