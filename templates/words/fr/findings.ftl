# Constats et points : faits, preuves, états.

circuit-named = { $circuit ->
    [none] L’installation
   *[other] Circuit { $circuit }
}
finding-kind = Nature
finding-evidence = Preuve
finding-size = Taille
finding-cause = Cause
finding-repair = Réparation
finding-proof = Recontrôle
evidence-grade = { $grade } : { $meaning }
proof-look = { $time }, { $method } : { $result }
proof-test = essai { $name } : { $verdict }
proof-search = recherche { $name }
size-none = non déterminée
size-estimated = { $size }, estimée
size-how = { $measured ->
    [yes] mesurée
   *[no] estimée
}{ $by ->
    [none] { "" }
   *[other] { " " }({ $by })
}{ $pressure ->
    [none] { "" }
   *[other] { " " }à { $pressure }
}
everything-registered = tout ce qui est répertorié

point-holds = tient depuis { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
point-not-reached = non atteint
point-still-leaking = fuit toujours, constaté il y a { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
point-leaking-again = fuit de nouveau au même endroit : { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} après une réparation par { $by ->
    [none] nous
    [others] d’autres
   *[other] { $by }
} ; a fui { $times } fois
point-repaired-holding = réparé, tient depuis { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}{ $section-only ->
    [yes] , par un essai de son tronçon seulement
   *[no] { "" }
}
point-not-retested = réparé, non recontrôlé depuis { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
point-replaced = pièce remplacée le { $day }
point-replaced-holding = pièce remplacée le { $day } ; rien décelé depuis{ $section-only ->
    [yes] , par un essai de son tronçon seulement
   *[no] { "" }
}
point-replaced-not-looked-at = pièce remplacée le { $day } ; non contrôlée depuis
point-left-open = laissé ouvert{ $suspect ->
    [yes] { " " }comme soupçon
   *[no] { "" }
} depuis { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}{ $looked ->
    [yes]  ; rien n’y a été décelé cette fois
   *[no] { "" }
}

leaked-points = Points qui ont fui
leaked-point = Point
leaked-when = Fuites
leaked-repairs-held = Tenue des réparations
leaked-at-this-visit = À cette visite
leaked-note = Une réparation est comptée comme tenant jusqu’à ce que la fuite soit retrouvée, donc au plus ce temps-là. Une pièce remplacée recommence son compte.
leaked-on = { $day } ({ $repair ->
    [none] non réparé
    [others] réparé par d’autres
    [replaced] pièce remplacée
    [temporary] réparé provisoirement
   *[done] réparé
}{ $old ->
    [yes] , ancienne pièce
   *[no] { "" }
})
days-held = { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}

leaks-explain = Les fuites trouvées{ $circuit ->
    [none] { "" }
   *[other] { " " }dans le circuit { $circuit }
} expliquent { $least ->
    [none] au plus { $most }
   *[other] entre { $least } et { $most }
} de la perte de { $lost }.
leaks-explain-all = Les fuites trouvées{ $circuit ->
    [none] { "" }
   *[other] { " " }dans le circuit { $circuit }
} peuvent expliquer toute la perte de { $lost }{ $least ->
    [none] { "" }
   *[other] , et en expliquent au moins { $least }
}.
leaks-explain-others-remain = Les fuites trouvées{ $circuit ->
    [none] { "" }
   *[other] { " " }dans le circuit { $circuit }
} expliquent { $least ->
    [none] au plus { $most }
   *[other] entre { $least } et { $most }
} de la perte de { $lost } : il en reste d’autres, ou l’une d’elles était plus grande auparavant.
leaks-explain-more-than-lost = Aux tailles mesurées, les fuites trouvées{ $circuit ->
    [none] { "" }
   *[other] { " " }dans le circuit { $circuit }
} auraient laissé échapper { $least ->
    [none] au plus { $most }
   *[other] entre { $least } et { $most }
}, plus que la perte de { $lost } : elles n’ont pas fui autant tout le temps.
leaks-not-sized = Les fuites trouvées n’ont pas toutes été mesurées : la part de la perte qu’elles expliquent n’est pas connue.
