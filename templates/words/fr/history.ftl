# L’historique d’une installation ou d’un site : introduction, tableaux, diagrammes et repères.

history-kind = Historique
history-title = Historique : { $name }, au { $day }
as-at = au { $day }
history-site-lead = { $cures ->
    [yes] { $systems ->
        [one] Une installation de ce site : d’abord ce qui demande une réparation durable, puis son chapitre.
       *[other] { CAPITAL(SPELLED($systems)) } installations de ce site : d’abord ce qui demande une réparation durable, puis un chapitre pour chacune.
    }
   *[no] { $systems ->
        [one] Une installation de ce site, et son chapitre.
       *[other] { CAPITAL(SPELLED($systems)) } installations de ce site, avec un chapitre pour chacune.
    }
}
history-nothing-came-back = D’après ces notes, aucune pièce en place n’a fui plus d’une fois, et aucune fuite connue n’est restée sans réparation à la dernière visite.
history-absence = L’absence d’inscription n’est pas l’absence de fuite : une année sans inscription est une année dont rien n’est noté, non une année sans fuite.
history-looked-at = À un endroit contrôlé sans indice, rien n’a été décelé lors de cette visite, avec la méthode de cette visite ; une fuite plus petite a pu s’y trouver.
history-visits = { $visits ->
    [one] Une visite de ce carnet, et les inscriptions antérieures qu’il contient.
   *[other] { CAPITAL(SPELLED($visits)) } visites de ce carnet, et les inscriptions antérieures qu’il contient.
}
history-complete-since = { $circuit ->
    [none] Le bilan du fluide n’est complet que depuis le { $day }.
   *[other] Circuit { $circuit } : le bilan du fluide n’est complet que depuis le { $day }.
}
history-complete-unknown = { $circuit ->
    [none] Les notes ne donnent pas le jour à partir duquel le bilan du fluide est complet.
   *[other] Circuit { $circuit } : les notes ne donnent pas le jour à partir duquel le bilan du fluide est complet.
}
history-points-note = { $cures ->
    [yes] Les points qui demandent une réparation durable viennent d’abord.{ " " }
   *[no] { "" }
}Les fuites sont celles de la pièce en place ; avec une pièce neuve, le compte repart de zéro. Les jours vont de chaque réparation au jour où la fuite y a été retrouvée ; pour une réparation qui tient, jusqu’au dernier contrôle.
history-cures-note = Un endroit demande une réparation durable si la pièce en place a fui plus d’une fois, ou si sa fuite n’a pas été réparée, ou ne l’a été que provisoirement.
history-systems-note = Perdu : ce que les visites de ce carnet ont trouvé manquant, toutes années réunies.
history-earlier-note = Repris d’inscriptions antérieures à ce carnet ou faites par d’autres.
point-not-looked-at-then = non examiné lors de la dernière visite

# Têtes de colonnes.
head-leaks = Fuites
head-repairs-held = Tenue des réparations, jours
head-last-looked-at = Dernier contrôle
head-state = État à la dernière visite
head-system = Installation
head-visits = Visites
head-points-leaked = Points qui ont fui
head-lost-co2e = Perdu, t CO₂e
head-last-visit = Dernière visite
head-its-outcome = Son résultat
head-what = Quoi
head-moved = Masse
head-by = Par
head-told-by = Source
head-visit = Visite
head-purpose = Objet
head-outcome = Résultat
head-year = Année
head-charged = Chargé, { $unit }
head-charged-by-others = Chargé par d’autres, { $unit }
head-recovered = Récupéré, { $unit }
head-recovered-by-others = Récupéré par d’autres, { $unit }
head-leaked = Perdu par fuite, { $unit }
head-rate = Taux
head-against-trigger = Par rapport au seuil
head-tested = Ce qui a été essayé
head-not-larger = Fuite maximale restée possible
not-known = non connu

# Diagrammes et leurs tableaux.
chart-last-eight = Les huit derniers ; tous figurent dans le tableau.
refrigerant-by-year = { $circuit ->
    [none] Fluide frigorigène par année
   *[other] Fluide frigorigène par année, circuit { $circuit }
}
refrigerant-in = Fluide frigorigène, { $unit }
refrigerant-caption = Plein : chargé. Rayé : chargé par d’autres ou d’après des inscriptions antérieures. Blanc : récupéré. Tireté : récupéré par d’autres.
refrigerant-alt = Barres du fluide frigorigène chargé et récupéré chaque année ; les chiffres figurent dans le tableau ci-dessous.
refrigerant-note = Perdu par fuite : ce que les interventions ont dû ajouter parce que cela manquait, déduction faite de ce qu’elles ont récupéré ; ce qui a été perdu pendant les travaux n’y est pas et ne figure dans aucune colonne. * les mouvements de l’année ne sont pas tous connus.
refrigerant-missing-at-change = Au changement de fluide en { $year }, { $missing } de la charge complète de { $full } manquaient ; cela ne figure dans aucune colonne.
co2e-by-year = { $circuit ->
    [none] Équivalent CO₂ perdu par année
   *[other] Équivalent CO₂ perdu par année, circuit { $circuit }
}
co2e-in = Équivalent CO₂ perdu, t
co2e-alt = Barres de l’équivalent CO₂ perdu chaque année ; les chiffres figurent dans le tableau ci-dessous.
co2e-note = Compté dans l’année où le manque a été constaté.
rate-in = % de la charge complète
rate-trigger = seuil, { $trigger } %
rate-over = au-dessus de { $trigger } %
rate-not-over = pas au-dessus de { $trigger } %
rate-alt = { $trigger ->
    [none] Barres du taux à chaque appoint ; les chiffres figurent dans le tableau ci-dessous.
   *[other] Barres du taux à chaque appoint, avec le seuil de { $trigger } % en ligne ; les chiffres figurent dans le tableau ci-dessous.
}
rate-without-category = La catégorie de l’installation n’est pas notée, de sorte qu’un seuil ne peut être nommé.
rate-without-rule = Ce qui manquait, ramené à un an comme dans le rapport de la visite : là où la charge n’a pas été complétée, ou si l’on ne sait pas qu’elle était complète avant, le chiffre ne vaut que comme ce rapport le dit. La réglementation ne fixe pas de seuil pour lui.
test-limits = Essais de pression : plus grande fuite encore possible
test-limits-in = Fuite maximale restée possible, { $unit }
test-limits-alt = Barres de la fuite maximale que chaque essai de pression laissait possible ; les chiffres figurent dans le tableau ci-dessous.
test-limits-note = Les essais d’un même jour se suivent de gauche à droite dans l’ordre de ce tableau.
test-limit-of = { $circuit ->
    [none] { "" }
   *[other] circuit { $circuit },{ " " }
}{ $section ->
    [none] tous les tronçons
   *[other] tronçon { $section }
}, essai { $test }

# Les points au fil du temps, en mots.
mark-once = { $day } : { $told }
mark-times = { $first } à { $last } : { $told }, { SPELLED($times) } fois
mark-told-by = { $told }, { $by }
