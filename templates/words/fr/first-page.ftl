# La première page : en-tête, résultat, faits, points ouverts, échéances.

visit = Visite
the-contractor = L’entreprise
certificate-of-firm = certificat { $number }
certificate-of-person = certificat { $number }
certificate-with-category = certificat { $number }, catégorie { $category }
signs-for-contractor = Pour l’entreprise
signs-for-operator = Reçu pour l’exploitant
class-flammable = { $class }, inflammable
class-not-flammable = { $class }, non inflammable
plant-operator = Exploitant
plant-address = Adresse
plant-category = Catégorie
plant-in-service-since = En service depuis
plant-complaint = Problème signalé
plant-air-outside = Température extérieure
plant-left = État au départ
plant-back-in-normal-operation = Retour à la marche normale

outcome-repaired-proved = { $leaks ->
    [one] Une fuite trouvée et réparée ; la réparation a été vérifiée.
   *[other] { CAPITAL(SPELLED($leaks)) } fuites trouvées et réparées ; chaque réparation a été vérifiée.
}
outcome-repaired-not-proved = { $leaks ->
    [one] Une fuite trouvée et réparée ; la réparation reste à confirmer.
   *[other] { CAPITAL(SPELLED($leaks)) } fuites trouvées et réparées ; { $proved ->
        [0] aucune réparation n’est encore confirmée
        [one] une seule réparation est confirmée
       *[other] { SPELLED($proved) } réparations sont confirmées
    }.
}
outcome-partly-repaired = { CAPITAL(SPELLED($leaks)) } fuites trouvées, { $repaired ->
    [one] une réparée
   *[other] { SPELLED($repaired) } réparées
} ; le reste est à réparer.
outcome-left-open = { $leaks ->
    [one] Une fuite trouvée, laissée sans réparation.
   *[other] { CAPITAL(SPELLED($leaks)) } fuites trouvées, laissées sans réparation.
}
outcome-suspects-only = Une fuite est soupçonnée ; elle n’a pas été localisée.
outcome-suspects-remain = { $suspects ->
    [one] Il reste un point suspect.
   *[other] Il reste des points suspects.
}
outcome-not-found-loss-stands = Du fluide frigorigène manquait ; la fuite n’a pas été trouvée.
outcome-nothing-found = Recherche effectuée ; rien n’a été trouvé aux endroits contrôlés.
outcome-repair-verified = { $repairs ->
    [one] La réparation antérieure a été recontrôlée ; rien n’y a été décelé.
   *[other] { CAPITAL(SPELLED($repairs)) } réparations antérieures ont été recontrôlées ; rien n’y a été décelé.
}
outcome-gas-added = Du fluide frigorigène a été ajouté ; la fuite n’a été ni recherchée ni réparée.
outcome-changed-from-to = L’installation est passée du { $old } au { $new }.
outcome-changed = L’installation est passée à un autre fluide frigorigène.
outcome-other = { $purpose } : travail effectué.

place-says = { $place } : { $what }
because-holding = { $place } a déjà fui { SPELLED($times) } fois ; la dernière réparation tient depuis { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}.
because-lost-since = Depuis le { $day }, { $circuit ->
    [none] l’installation
   *[other] le circuit « { $circuit } »
} avait perdu { $least ->
    [yes] au moins { $mass }
   *[no] { $mass }
} de fluide frigorigène.
because-missing-since = Il manquait { $least ->
    [yes] au moins { $mass }
   *[no] { $mass }
} de fluide frigorigène dans { $circuit ->
    [none] l’installation
   *[other] le circuit « { $circuit } »
}. La charge qui précède cette perte date du { $day } ; on ne sait pas si l’installation était pleine alors.
because-lost = { $circuit ->
    [none] L’installation
   *[other] Le circuit « { $circuit } »
} avait perdu { $least ->
    [yes] au moins { $mass }
   *[no] { $mass }
} de fluide frigorigène.
because-left-open = Non réparé : { $place }. { $answer }
because-over-trigger = Le taux de fuite { $circuit ->
    [none] de l’installation
   *[other] du circuit « { $circuit } »
} a dépassé le seuil légal de { $trigger } % ; { $repaired ->
    [yes] la réparation a été faite lors de cette visite, dans le délai permis.
   *[no] la réparation est à faire au plus tard le { $by }.
}
because-no-leak-check = Cette visite ne vaut pas contrôle d’étanchéité au sens de la loi, car les parties visibles et accessibles n’ont pas toutes été contrôlées.
because-put-back = L’appoint a été fait en plusieurs fois : { $parts }.
put-back-on = { $mass } le { $day }
because-more-partial = Il a pu en manquer davantage : la charge n’a pas été complétée.
because-more-not-noted = Il a pu en manquer davantage : il n’est pas noté si la charge a été complétée.
because-more-not-complete = La perte a pu être plus grande : ce carnet ne connaît pas toutes les charges faites depuis.
because-not-reached = { $places ->
    [one] Un endroit n’a pu être atteint et reste à contrôler.
   *[other] { CAPITAL(SPELLED($places)) } endroits n’ont pu être atteints et restent à contrôler.
}

# Ce qui est en gras dans la phrase : inséré dans la phrase suivante.
leaked-times = a fui { SPELLED($times) } fois
leaking-again = { $place } { $strong } : { $found }. La dernière réparation{ $by ->
    [none] { "" }
    [others] , faite par d’autres,
   *[other] , faite par { $by },
} a tenu { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} au plus{ $seen ->
    [none] { "" }
   *[other]  ; on l’a vue tenir pour la dernière fois le { $seen }
}.
found-still-leaking = fuyait encore
still-leaking = { $place } { $strong }, { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} après la première constatation ({ $found }) ; aucune réparation n’avait été faite.

open-not-reached = { CAPITAL($place) } : reste à contrôler ({ $reason }).
answer-of = Réponse ({ $by }) : { $answer }
customer = client
waiting-cost = { $since ->
    [none] Au rythme constaté jusqu’ici
   *[other] Si tout a été perdu depuis le { $since }
}, { $circuit ->
    [none] l’installation
   *[other] le circuit « { $circuit } »
} continuerait de perdre { $least ->
    [yes] au moins
   *[no] environ
} { $mass } par an{ $co2e ->
    [none] { "" }
   *[other] { " " }({ $co2e })
}{ $running ->
    [yes] , et la puissance frigorifique baisserait.
   *[no] { " " }dès la remise en marche.
}

fact-next = Prochaine échéance
fact-overdue = En retard
fact-then = Ensuite : { $next }
fact-earlier-repairs = Réparations antérieures
fact-earlier-repairs-checked = { $repairs ->
    [one] Une recontrôlée, rien n’a été décelé
   *[other] { CAPITAL(SPELLED($repairs)) } recontrôlées, rien n’a été décelé
}
fact-repaired-places = { $places ->
    [one] Point réparé
   *[other] { CAPITAL(SPELLED($places)) } points réparés
}
fact-not-checked-again = Non recontrôlé au détecteur ni au produit moussant
fact-checked-again = Recontrôlé, rien n’a été décelé
fact-all-checked-again = Tous recontrôlés, rien n’a été décelé
fact-some-checked-again = { $checked } sur { $repaired } recontrôlés, rien n’a été décelé
fact-detector-proved = détecteur éprouvé sur une fuite étalon ({ $leak })
fact-section-tested = Tronçon { $section }, essayé
fact-circuits-tested = { $count ->
    [0] Circuit entier, essayé
    [1] Circuit { $circuits }, essayé
   *[other] Circuits { $circuits }, essayés
}
fact-gas = gaz
fact-test = { $gas } à { $pressure } pendant { $duration }{ $later ->
    [yes]  ; fait avant la dernière réparation
   *[no] { "" }
}
fact-coarse-test = essai grossier : il n’exclut pas une fuite de la taille trouvée
fact-nitrogen-a-day = { $mass } d’azote par jour
fact-air-a-day = { $mass } d’air par jour
fact-whole-under-vacuum = circuit entier sous vide : aucune fuite décelée au-dessus de { $rate }
fact-air-came-in = De l’air est entré
fact-vacuum-test = sous vide pendant { $duration }
fact-none-added = Rien d’ajouté
fact-charged = Chargé : { $mass }
fact-taken-out = { $mass } de { $refrigerant } récupérés{ $missing ->
    [none] { "" }
   *[other]  ; il manquait { $missing }
}
fact-after-retrofit = après le changement de fluide
fact-refrigerant = Fluide frigorigène
fact-lost = { $least ->
    [yes] Perte d’au moins { $mass }
   *[no] Perte de { $mass }
}
fact-put-back = Appoint de { $mass }
fact-missing-in-all = il manquait en tout { $least ->
    [yes] au moins { $mass }
   *[no] { $mass }
}{ $co2e ->
    [none] { "" }
   *[other] , soit { $co2e }
}
head-line-circuit = circuit { $circuit } : { $parts }
