# Le registre pour le contrôleur : introduction, plaque, indications et événements.

records-kind = Registre
records-title = Registre : { $system }, au { $day }
records-present = Une indication présente a été écrite ; qu’elle soit exacte et suffisante relève de son auteur et du contrôleur.
records-files = Les fichiers sont nommés depuis la racine du carnet, chacun avec sa ligne. Les notes sont jointes à ce document sous forme de données, sans leurs parties privées.
records-none-in-force = Pour ce site, les règles en vigueur au { $day } ne sont pas nommées, de sorte que rien n’est exigé. Ce que disent les notes figure néanmoins ci-dessous.
records-undecided = Il n’est pas tranché si les règles en vigueur sur ce site au { $day } s’appliquent à cette installation ; aucune indication exigée n’est donc énumérée ici. Ce que contiennent les notes figure ci-dessous.
records-not-covered = Les règles en vigueur sur ce site au { $day } ne concernent pas cette installation, de sorte que rien n’est exigé. Ce que disent les notes figure néanmoins ci-dessous.
records-all-there = Pour chaque indication qu’exigent les règles en vigueur au { $day }, une inscription existe. Cela ne dit pas si les délais ont été respectés.
records-missing = Manquantes : { $missing } sur les { $fields } indications qu’exigent les règles en vigueur au { $day }.
records-fields = Indications exigées : { $fields } ; manquantes : { $missing }.
records-kept = Le registre est conservé au moins { $years } ans ({ $source }).
records-of-system = L’installation
records-of-visit = { $days }, { $purpose }
plant-telephone = Téléphone
plant-serial-number = Numéro de série
plant-year-of-making = Année de fabrication
plant-hermetic-label = Étiqueté hermétiquement scellé
plant-detection-system = Système de détection des fuites
answer-yes = oui
answer-no = non

# Ce qui est inscrit.
record-circuit = { $circuit ->
    [none] l’installation
   *[other] circuit { $circuit }
}
record-due-by = à faire au plus tard le { $day }
record-plan-made = plan établi le { $day }
record-reported = déclaré le { $day }
record-leaks-found = { $day }, { $method }, { $leaks ->
    [0] rien trouvé
    [one] 1 fuite trouvée
   *[other] { $leaks } fuites trouvées
}
record-cylinder = bouteille { $cylinder }
record-destroyed = { $moved }, dont { $share } détruits
record-recovered-before = récupéré auparavant dans cette bouteille
record-moved = { $mass }, { $day }
record-of-gas = { $refrigerant ->
    [none] { $mass }
   *[other] { $mass } de { $refrigerant }
}
record-at = { $day }, { $clock }
record-part = { $part } : { $work }
record-proof = { $at }, { $what }
record-and-then = { $first } ; { $next }
record-pressure-test = essai de pression { $test } : { $verdict }
record-vacuum-test = essai de tenue au vide { $test }, { $limit ->
    [met] limite respectée
    [not-met] limite non respectée
   *[other] limite non tranchée
}
record-looked-again = revérifié le { $day }
record-rate = { $rate } ({ LOWER($method) })

# Événements.
head-mass-or-result = Masse ou résultat
head-noted-at = Noté dans
event-earlier = { $what }, inscription antérieure
event-by = par { $by }
event-visit = visite : { $purpose }
event-changed = passage du { $from } au { $to }
event-moved = { $kind }, { $why }
event-with-cylinder = { $mass }, bouteille { $cylinder }
event-pressure-test = essai de pression { $test }
event-vacuum-test = essai de tenue au vide { $test }
event-tested = { $circuit ->
    [none] L’installation
   *[other] Circuit { $circuit }
}, tronçon { $section }
event-inspection = contrôle d’étanchéité, tout ce qui est visible et accessible
event-search-in-part = recherche partielle
event-search = recherche de fuites
event-not-reached = non atteint : { $place } ({ $reason })
event-leak-found = fuite trouvée
event-suspicion = soupçon
event-defect = défaut, pas une fuite
event-repair = réparation
event-look = { $method }{ $with ->
    [none] { "" }
   *[other] { " " }{ $with }
} : { $result }
event-check = contrôle de la réparation
event-check-again = contrôle d’une réparation antérieure
