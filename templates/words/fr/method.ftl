# Méthode, limites, relevés, locaux, le circuit dessiné.

checked-air = fluide dans l’air : { $amount }
checked-oxygen = oxygène : { $amount }
checked-ventilated = ventilé
checked-not-ventilated = non ventilé
checked-locked-off = consigné
checked-not-locked-off = non consigné
checked-ignition = sources d’inflammation : { $sources }
room-machinery = { CAPITAL($room) } (salle des machines) : les limites des locaux occupés ne s’appliquent pas ; la réglementation locale demande en règle générale une ventilation et un détecteur de gaz.
room-size-wanted = { CAPITAL($room) } : le { $refrigerant } est inflammable ou toxique et peut atteindre ce local occupé, dont la taille n’est pas notée. On ne sait pas si la limite serait dépassée.
room-size-not-noted = { CAPITAL($room) } (local occupé) : sa taille n’est pas notée, sa limite n’est donc pas vérifiée.
room-concentration = { $circuit ->
    [none] { CAPITAL($room) } (local occupé) : si toute la charge de l’installation sortait et se mélangeait uniformément, l’air contiendrait { $concentration } de { $refrigerant }.
   *[other] { CAPITAL($room) } (local occupé) : si toute la charge du circuit « { $circuit } » sortait et se mélangeait uniformément, l’air contiendrait { $concentration } de { $refrigerant }.
}
room-no-limit = Aucune limite lue dans sa source n’est connue ici pour ce fluide, aucune n’est donc comparée : à vérifier dans la réglementation locale.
room-limit = { $above ->
    [yes] C’est au-dessus de la limite de { $limit } ({ $source }). Sortir en cas d’alarme ; détection, ventilation ou charge plus petite : la réglementation locale en décide.
   *[no] Ce n’est pas au-dessus de la limite de { $limit } ({ $source }).
}
room-quarter = { $above ->
    [yes] C’est au-dessus du quart de la limite inférieure d’inflammabilité, { $limit }.
   *[no] Ce n’est pas au-dessus du quart de la limite inférieure d’inflammabilité, { $limit }.
}
room-equipped = { $has ->
    [both] D’après les notes, ventilation : { $ventilation } ; détecteur de gaz : { $detector }.
    [ventilation] D’après les notes, ventilation : { $ventilation }.
   *[detector] D’après les notes, détecteur de gaz : { $detector }.
}
safety-class = Le { $refrigerant } est de la classe de sécurité { $class }.
safety-can-suffocate = Il n’est pas inflammable, mais il peut asphyxier, d’abord dans les endroits bas.
safety-can-burn = Il peut brûler : éloigner les sources d’inflammation, ventiler, et employer des outils et des détecteurs prévus pour lui.
safety-is-toxic = Il est toxique : quitter le local en cas d’alarme et n’y entrer qu’avec une protection respiratoire.
search-title = Recherches
search-plant = état de l’installation : { $state }
search-background = air ambiant : { $background }
head-for = Durée
head-method = Méthode
head-where = Endroit
head-conditions = Conditions de recherche
limit-not-all-visible = La recherche n’a pas porté sur toutes les parties visibles et accessibles.
limit-of-search = Une recherche montre ce que sa méthode pouvait trouver aux endroits atteints, à la pression de cette heure-là ; une fuite plus petite, ou intermittente, a pu ne pas se montrer.
limit-of-tests = Un essai de pression ou de tenue au vide ne fait que borner la taille d’une fuite éventuelle, pour la partie essayée et la durée de l’essai ; il n’indique pas d’endroit et ne remplace pas un contrôle d’étanchéité.
work-title = Élément par élément
work-brazed = { $work } (brasé sous balayage d’azote)
head-part = Élément
head-work = Travail
used-attendance = { $from } à { $to }
used-last-checked = dernière vérification ou dernier étalonnage le { $day }
used-on-day = { $day } : { $said }
used-detector-responded = { $leak ->
    [none] a réagi à une fuite étalon à { $clock }
   *[other] a réagi à { $clock } à la fuite étalon ({ $leak })
}
used-detector-silent = { $leak ->
    [none] n’a pas réagi à une fuite étalon à { $clock }
   *[other] n’a pas réagi à { $clock } à la fuite étalon ({ $leak })
}
reading-title = Relevés de l’installation en marche
reading-head = Relevé
reading-suction-pressure = Pression d’aspiration
reading-suction-temperature = Température d’aspiration
reading-discharge-pressure = Pression de refoulement
reading-discharge-temperature = Température de refoulement
reading-liquid-pressure = Pression du liquide
reading-liquid-temperature = Température du liquide
reading-air-on-condenser = Température d’air à l’entrée du condenseur
reading-receiver-level = Niveau du réservoir de liquide
reading-compressor-current = Intensité du compresseur
reading-superheat = Surchauffe
reading-subcooling = Sous-refroidissement
reading-warm-side = Côté chaud
reading-above-critical = au-dessus du point critique : pas de sous-refroidissement
reading-sight-glass = Voyant
reading-remark = Remarque
part-compressor = compresseur
part-discharge-line = conduite de refoulement
part-condenser = condenseur
part-receiver = réservoir de liquide
part-drier = déshydrateur
part-sight-glass = voyant
part-solenoid-valve = électrovanne
part-liquid-line = conduite de liquide
part-expansion-device = détendeur
part-evaporator = évaporateur
part-suction-line = conduite d’aspiration
schematic-caption = { $circuit ->
    [none] L’installation, sans échelle et sans tous ses éléments ; traits pleins : côté haute pression, traits interrompus : côté basse pression. Les numéros sont ceux des points.
   *[other] Circuit { $circuit }, sans échelle et sans tous ses éléments ; traits pleins : côté haute pression, traits interrompus : côté basse pression. Les numéros sont ceux des points.
}
schematic-not-drawn = { $evaporators ->
    [one] Un évaporateur de plus n’est pas dessiné.
   *[other] { CAPITAL(SPELLED($evaporators)) } évaporateurs de plus ne sont pas dessinés.
}
schematic-points-not-drawn = { $count ->
    [one] Un point n’est pas dessiné ici : { $numbers }.
   *[other] Points non dessinés ici : { $numbers }.
}
schematic-loop = { $circuit ->
    [none] L’installation en boucle : { $parts }.
   *[other] Circuit { $circuit } en boucle : { $parts }.
}
schematic-point = Point { $number } ({ $part }) : { $state }.
