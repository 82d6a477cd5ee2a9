# Constats et points : faits, preuves, états.

circuit-named = { $circuit ->
    [none] L’installation
   *[other] Circuit { $circuit }
}
finding-where = Endroit
finding-kind = Nature
finding-evidence = Preuve
finding-size = Taille
finding-cause = Cause
finding-repair = Réparation
finding-proof = Recontrôle
evidence-grade = { $grade } : { $meaning }
proof-look = { $time }, { $method } : { $result }
proof-test = essai { $name } : { $verdict }{ $coarse ->
    [yes] { " " }(plus grossier que cette fuite)
   *[no] { "" }
}
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
point-suspect-not-reached = suspect, non atteint
point-still-leaking = fuyait encore, { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} après la première constatation
point-leaking-again = a fui de nouveau au même endroit : { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} après une réparation par { $by ->
    [none] nous
    [others] d’autres
   *[other] { $by }
} ; a fui { SPELLED($times) } fois en tout
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
point-left-open = laissé { $suspect ->
    [yes] à l’état de soupçon
   *[no] sans réparation
} depuis { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}{ $looked ->
    [yes]  ; rien n’y a été décelé cette fois
   *[no] { "" }
}

leaked-points = Points qui ont fui
leaked-point = Point
leaked-when = Fuites
leaked-repairs-held = Tenue des réparations
leaked-at-this-visit = À cette visite
leaked-note = Durée maximale : la réparation est supposée avoir tenu jusqu’au jour où la fuite a été retrouvée. Pour une pièce remplacée, le compte repart de zéro.
leaked-on = { $day } ({ $repair ->
    [none] non réparé
    [others] réparé par d’autres
    [replaced] pièce remplacée
    [temporary] réparé provisoirement
   *[done] { $repaired ->
        [none] réparé
       *[other] réparé le { $repaired }
    }
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
   *[other] { " " }dans le circuit « { $circuit } »
} expliquent { $least ->
    [none] au plus { $most }
   *[other] entre { $least } et { $most }
} de la perte de { $lost }.
leaks-explain-all = Les fuites trouvées{ $circuit ->
    [none] { "" }
   *[other] { " " }dans le circuit « { $circuit } »
} peuvent expliquer toute la perte de { $lost }{ $least ->
    [none] { "" }
   *[other] , et en expliquent au moins { $least }
}.
leaks-explain-others-remain = Les fuites trouvées{ $circuit ->
    [none] { "" }
   *[other] { " " }dans le circuit « { $circuit } »
} expliquent { $least ->
    [none] au plus { $most }
   *[other] entre { $least } et { $most }
} de la perte de { $lost } : il en reste d’autres, ou l’une d’elles était plus grande auparavant.
leaks-explain-more-than-lost = Aux tailles mesurées, les fuites trouvées{ $circuit ->
    [none] { "" }
   *[other] { " " }dans le circuit « { $circuit } »
} auraient laissé échapper { $least ->
    [none] au plus { $most }
   *[other] entre { $least } et { $most }
}, plus que la perte de { $lost } : elles n’ont pas fui autant tout le temps.
leaks-not-sized = { $leaks ->
    [one] La fuite trouvée n’a pas été mesurée : la part de la perte qu’elle explique n’est pas connue.
   *[other] Les fuites trouvées n’ont pas toutes été mesurées : la part de la perte qu’elles expliquent n’est pas connue.
}
