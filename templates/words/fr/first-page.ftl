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
plant-air-outside = Air extérieur
plant-left = Laissée
plant-back-in-normal-operation = Retour à la marche normale

outcome-repaired-proved = { $leaks ->
    [one] Une fuite trouvée et réparée, réparation prouvée.
   *[other] { $leaks } fuites trouvées et réparées, toutes les réparations prouvées.
}
outcome-repaired-not-proved = { $leaks ->
    [one] Une fuite trouvée et réparée ; la réparation n’est pas prouvée.
   *[other] { $leaks } fuites trouvées et réparées ; { $proved ->
        [0] aucune des réparations n’est prouvée
        [one] une des réparations est prouvée
       *[other] { $proved } des réparations sont prouvées
    }.
}
outcome-partly-repaired = { $leaks } fuites trouvées, { $repaired ->
    [one] une réparée
   *[other] { $repaired } réparées
} ; le reste est ouvert.
outcome-left-open = { $leaks ->
    [one] Une fuite trouvée et laissée ouverte.
   *[other] { $leaks } fuites trouvées et laissées ouvertes.
}
outcome-suspects-only = Une fuite est soupçonnée ; elle n’a pas été localisée.
outcome-suspects-remain = { $suspects ->
    [one] Un point suspect demeure.
   *[other] Des points suspects demeurent.
}
outcome-not-found-loss-stands = Du fluide frigorigène avait été perdu, et sa fuite n’a pas été trouvée.
outcome-nothing-found = Recherche faite ; rien n’a été trouvé là où elle a porté.
outcome-repair-verified = { $repairs ->
    [one] La réparation antérieure a été recontrôlée ; rien n’y a été décelé.
   *[other] { $repairs } réparations antérieures ont été recontrôlées ; rien n’y a été décelé.
}
outcome-gas-added = Du fluide frigorigène a été ajouté ; la fuite n’a été ni recherchée ni réparée.
outcome-changed-from-to = L’installation est passée du { $old } au { $new }.
outcome-changed = L’installation est passée à un autre fluide frigorigène.
outcome-other = { $purpose } : travail effectué.

place-says = { $place } : { $what }
because-holding = { $place } a déjà fui { $times } fois ; la dernière réparation tient depuis { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}.
because-lost-since = Depuis le { $day }, { $circuit ->
    [none] l’installation
   *[other] le circuit { $circuit }
} avait perdu { $mass } de fluide frigorigène.
because-missing-since = Il manquait { $mass } de fluide frigorigène dans { $circuit ->
    [none] l’installation
   *[other] le circuit { $circuit }
} ; la dernière charge date du { $day }, et l’on ne sait pas si elle était complète.
because-lost = { $circuit ->
    [none] L’installation
   *[other] Le circuit { $circuit }
} avait perdu { $mass } de fluide frigorigène.
because-left-open = Non réparé : { $place }. { $answer }
because-over-trigger = Le taux de fuite { $circuit ->
    [none] de l’installation
   *[other] du circuit { $circuit }
} a dépassé le seuil légal de { $trigger } % ; { $repaired ->
    [yes] la réparation a été faite lors de cette visite, dans le délai permis.
   *[no] la réparation est à faire au plus tard le { $by }.
}
because-no-leak-check = Cette visite ne vaut pas contrôle d’étanchéité au sens de la loi, car toutes les parties visibles et accessibles n’ont pas été contrôlées.
because-not-reached = { $places ->
    [one] Un endroit n’a pu être atteint et reste à contrôler.
   *[other] { $places } endroits n’ont pu être atteints et restent à contrôler.
}

# Ce qui est en gras dans la phrase : inséré dans la phrase suivante.
leaked-times = a fui { $times } fois
leaking-again = { $place } { $strong } : { $found }. La dernière réparation{ $by ->
    [none] { "" }
    [others] , faite par d’autres,
   *[other] , faite par { $by },
} a tenu { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} au plus{ $seen ->
    [none] { "" }
   *[other]  ; on l’a vue tenir pour la dernière fois le { $seen }
}.
found-still-leaking = fuyait toujours
still-leaking = { $place } { $strong }, { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} après la première constatation, le { $found } ; aucune réparation n’avait été faite.

open-not-reached = { CAPITAL($place) } : reste à contrôler ({ $reason }).
answer-of = Réponse ({ $by }) : { $answer }
customer = client
waiting-cost = Au rythme constaté jusqu’ici, { $circuit ->
    [none] l’installation
   *[other] le circuit { $circuit }
} continuerait de perdre environ { $mass } par an{ $co2e ->
    [none] { "" }
   *[other] { " " }({ $co2e })
}{ $running ->
    [yes] , et la puissance frigorifique baisse au fur et à mesure.
   *[no] { " " }dès la remise en marche.
}

fact-next = Prochaine échéance
fact-overdue = En retard
fact-then = Ensuite : { $next }
fact-earlier-repairs = Réparations antérieures
fact-earlier-repairs-checked = { $repairs ->
    [one] { $repairs } recontrôlée, rien n’a été décelé
   *[other] { $repairs } recontrôlées, rien n’a été décelé
}
fact-repaired-places = { $places ->
    [one] Point réparé
   *[other] { $places } points réparés
}
fact-not-checked-again = Non recontrôlé au détecteur ni au produit moussant
fact-checked-again = Recontrôlé, rien n’a été décelé
fact-all-checked-again = Tous recontrôlés, rien n’a été décelé
fact-some-checked-again = { $checked } sur { $repaired } recontrôlés, rien n’a été décelé
fact-detector-proved = détecteur éprouvé sur { $leak }
fact-section-tested = Tronçon { $section }, essayé
fact-circuits-tested = { $count ->
    [0] Circuit entier, essayé
    [1] Circuit { $circuits }, essayé
   *[other] Circuits { $circuits }, essayés
}
fact-gas = gaz
fact-test = { $gas } à { $pressure } pendant { $duration }{ $later ->
    [yes]  ; fait avant une réparation ultérieure
   *[no] { "" }
}
fact-coarse-test = essai grossier : il n’exclut pas une fuite de la taille trouvée
fact-nitrogen-a-day = { $mass } d’azote par jour
fact-air-a-day = { $mass } d’air par jour
fact-whole-under-vacuum = circuit entier sous vide{ " " }: rien de plus grand que { $rate }
fact-air-came-in = De l’air est entré
fact-vacuum-test = sous vide pendant { $duration }
fact-none-added = Rien d’ajouté
fact-charged = Chargé : { $mass }
fact-after-retrofit = après le changement de fluide
fact-refrigerant = Fluide frigorigène
fact-lost = Perte de { $mass }
head-line-circuit = circuit { $circuit } : { $parts }
