# Essais de pression et de vide: verdicts, raisons, graphiques, calculs.

# Titres et données d’un essai.

pressure-test-heading = Essai de pression { $test } : { $part }
vacuum-test-heading = Essai de tenue au vide { $test } : { $part }
test-part-whole = { $circuit ->
    [none] tout le circuit
   *[other] tout le circuit « { $circuit } »
}
test-part-section = { $about ->
    [none] tronçon { $section }
   *[other] { $about } (tronçon { $section })
}{ $circuit ->
    [none] {""}
   *[other] {" "}du circuit « { $circuit } »
}
test-reading = { $pressure }{ $temperature ->
    [none] {""}
   *[other] , { $temperature }
} ({ $moment })
test-gas = Gaz d’essai
test-start = Début
test-end = Fin
test-held = Tenue
test-highest-allowable = Pression maximale admissible (PS)
test-gauge = Instrument
test-limit-asked = Limite demandée
test-isolated = Isolé
test-watched = Observé
test-warmest-pipe = Tube le plus chaud
test-leak-limit = Limite de fuite

# Résultats d’un essai.

result-expected = Pression attendue à la fin
result-lost = Perte hors effet de la température
result-mean-leak = Fuite moyenne
result-largest-leak = Fuite maximale restée possible
result-as-nitrogen = En azote
result-smallest-shown = Plus petite fuite décelable
result-mean-rise = Remontée moyenne, fuite et humidité ensemble
result-late-rise = Remontée du dernier tiers
result-smallest-leak = Plus petite fuite possible
result-as-air = En air entrant
result-water = Maximum pour l’eau seule

# Graphiques.

chart-pressure-gauge = Pression (relative)
chart-pressure-absolute = Pression (absolue)
chart-time-since-start = Temps depuis le début
chart-time-since-isolation = Temps depuis l’isolement
chart-measured = mesuré
chart-corrected = ramené à la température initiale
chart-alt-corrected = Ramenée à la température du début : de { $first } à { $last }.
chart-late-slope = pente du dernier tiers
chart-largest-leak = fuite maximale restée possible, à elle seule
chart-limit = { $by ->
    [none] limite, { $limit }
    [maker] limite du fabricant, { $limit }
   *[other] limite ({ $by }), { $limit }
}
chart-alt = { $name } ({ $time }) : de { $first } au début à { $last } à la fin{ $limit ->
    [none] {""}
   *[other]  ; { $limit }
}.

# Bilan d’incertitude d’un essai de pression.

budget-title = Bilan d’incertitude de la perte de pression
budget-contribution = Composante
budget-standard-uncertainty = Incertitude-type, { $unit }
budget-share = Part de la variance
budget-from = Origine
budget-together = Total
budget-root = racine de la somme des carrés
budget-gauge-start = Manomètre au début
budget-gauge-end = Manomètre à la fin
budget-thermometer = Thermomètre, 0,3 K au début et à la fin
budget-lag = Gaz en retard sur le tube, 0,7 K au début et à la fin
budget-not-followed = 10 % de l’écart de température non suivis
budget-air = Variation de la pression de l’air, 5 hPa au plus
budget-scatter = Dispersion autour de l’ajustement, avec son autocorrélation
budget-share-followed = Part de l’échauffement que le gaz a suivie, selon l’ajustement
budget-step = Échelon du manomètre
help-temperature = La température représente { $share } de la variance : pour montrer de plus petites fuites, enregistrer une journée entière à une température plus stable{ $finer ->
    [little]  ; un manomètre plus fin apporterait peu
   *[some] {""}
}.
help-scatter = Ce que l’ajustement de l’enregistrement laisse inexpliqué représente { $share } de la variance : pour montrer de plus petites fuites, mettre à l’ombre le tube et le thermomètre et ne pas toucher aux portes ni aux ventilateurs{ $finer ->
    [little]  ; un manomètre plus fin apporterait peu
   *[some] {""}
}.
help-gauge = Le manomètre représente { $share } de la variance : pour montrer de plus petites fuites, prendre un manomètre plus fin, ou prolonger la tenue.
help-air = La pression de l’air représente { $share } de la variance : pour montrer de plus petites fuites, lire un baromètre au début et à la fin, ou mesurer en absolu{ $finer ->
    [little]  ; un manomètre plus fin apporterait peu
   *[some] {""}
}.

# Ce que montre un essai de pression, en une phrase et en quelques mots.

hold-nothing-larger = Aucune fuite supérieure à { $size } n’a été mise en évidence.
hold-nothing-larger-short = Aucune fuite décelée au-dessus de { $size }
hold-leak = Il s’est perdu plus de pression que la température et les lectures ne l’expliquent : il y a une fuite.
hold-leak-short = De la pression s’est perdue
hold-inconclusive = L’essai ne tranche pas.
hold-inconclusive-short = Non tranché
hold-no-size = La pression a tenu dans son incertitude ; sans le volume, la taille d’une fuite ne peut être donnée.
hold-no-size-short = Pression tenue ; aucune taille ne peut être donnée
hold-strength = Essai de résistance : il ne dit rien des petites fuites.
hold-strength-short = Essai de résistance seulement

# Pourquoi un essai de pression ne tranche pas, et de quoi trancher.

hold-reason-no-temperature = La température n’a pas été relevée à la fois au début et à la fin, si bien qu’une variation de pression ne se distingue pas d’un échauffement ou d’un refroidissement. Pour trancher : lire la température du tube avec chaque pression, ou l’enregistrer.
hold-reason-nitrogen-only = La correction de température n’est faite que pour l’azote.
hold-reason-outside-table = Les lectures sont hors de la table de l’azote (0,5 à 60 bar absolus, −40 à 70 °C).
hold-reason-log-short = L’enregistrement dure moins de 23 heures : seules sa première et sa dernière ligne sont calculées, les lignes entre elles sont tracées.
hold-reason-log-unfit = L’enregistrement a trop peu de lignes, ou des lignes hors de la table de l’azote, pour un ajustement : seules sa première et sa dernière ligne sont calculées.
hold-reason-unsteady = L’essai a duré moins de 23 heures et ses températures de début et de fin diffèrent de plus de 2 K : le retard du gaz sur le tube peut dépasser ce qu’une fuite montrerait.
hold-settle-unsteady = Pour trancher : relire quand le tube est à moins de 2 K de sa température de début, ou enregistrer pression et température pendant 23 heures ou plus.
hold-reason-rose = La pression a monté plus que les lectures ne l’expliquent ; vérifier où est posé le thermomètre, et si une vanne a laissé entrer du gaz.
hold-reason-no-volume = Le volume essayé n’est pas noté, si bien que la taille d’une fuite ne peut être donnée ; l’ajouter au registre ou à l’essai.
hold-reason-coarse = Ce qu’il aurait pu montrer est plus grossier que la limite demandée. Pour trancher : tenir plus longtemps, à une température plus stable, ou essayer un tronçon plus petit.
hold-reason-near = La perte est trop proche de la limite demandée pour décider dans un sens ou dans l’autre. Pour trancher : refaire l’essai plus longtemps, ou passer les raccords au produit moussant ou au détecteur.

# Calculs d’un essai de pression: titres et remarques.

hold-expected-title = Pression attendue à la fin de l’essai
hold-change-title = Pression perdue au-delà de ce que la température explique
hold-leak-title = Fuite moyenne pendant l’essai
hold-limit-title = Plus grande fuite que cet essai laisse possible
hold-smallest-title = Plus petite fuite que cet essai aurait pu montrer
hold-limit-mass-title = La même fuite en masse d’azote à la pression de l’essai
hold-note-hydrogen = Cinq pour cent d’hydrogène dans l’azote ne sont pas comptés dans Z.
hold-note-gauge-cancels = Une erreur constante du manomètre s’annule, les deux lectures étant du même manomètre.
hold-note-smaller = Cet essai ne peut distinguer une fuite plus petite d’une fuite nulle.
hold-note-gaps = L’enregistrement a des trous de plus d’une heure ; ce qui s’y est passé ne se voit pas.
hold-note-temperature-still = La température n’a guère bougé, si bien que l’enregistrement ne dit pas comment le gaz la suit ; on admet qu’il la suit.

# Si la limite d’un essai de tenue au vide a été respectée.

vacuum-limit-met = La pression est restée sous { $limit } pendant { $within }{ $by ->
    [none] {""}
    [maker] {" "}(limite du fabricant)
   *[other] {" "}(limite selon { $by })
} : limite respectée.
vacuum-limit-not-met = La pression n’est pas restée sous { $limit } pendant { $within }{ $by ->
    [none] {""}
    [maker] {" "}(limite du fabricant)
   *[other] {" "}(limite selon { $by })
} : limite non respectée.
vacuum-limit-too-short = Observé pendant { $watched } seulement ; la durée demandée est de { $within }{ $by ->
    [none] {""}
    [maker] {" "}(limite du fabricant)
   *[other] {" "}(limite selon { $by })
}.
vacuum-no-limit = Aucune limite de pression n’est notée.

# Ce que montre un essai de tenue au vide sur une fuite, et de quoi trancher.

vacuum-nothing-larger = Aucune fuite supérieure à { $upper } n’a été mise en évidence.
vacuum-nothing-larger-above-hold = Aucune fuite supérieure à { $upper } n’a été mise en évidence, mais le vide n’a pas tenu : humidité, gaz sorti de l’huile, ou vide pas assez poussé.
vacuum-leak = La pression monte en ligne droite, comme le fait l’air qui entre : entre { $lower } et { $upper }.
vacuum-moisture = { $upper ->
    [none] La remontée se stabilise, comme le font l’humidité et le gaz sorti de l’huile ; sans le volume, la taille d’une fuite ne peut être donnée. Sécher et recommencer.
   *[other] La remontée se stabilise, comme le font l’humidité et le gaz sorti de l’huile ; une fuite allant jusqu’à { $upper } peut s’y cacher. Sécher et recommencer.
}
vacuum-levels-above-water = { $upper ->
    [none] La remontée se stabilise au-dessus de ce que l’eau peut atteindre à cette température : pas l’eau seule, mais du fluide frigorigène sorti de l’huile, ou de l’air.
   *[other] La remontée se stabilise au-dessus de ce que l’eau peut atteindre à cette température : pas l’eau seule, mais du fluide frigorigène sorti de l’huile, ou de l’air ; une fuite allant jusqu’à { $upper } peut s’y cacher.
}
vacuum-bending = L’essai ne tranche pas : la pression monte de plus en plus lentement, et le gaz dégagé ne se distingue pas d’une fuite allant jusqu’à { $upper }.
vacuum-uneven = L’essai ne tranche pas : la pression monte tantôt plus vite, tantôt moins vite, ce que ne fait pas une fuite constante ; jusqu’à { $upper } reste possible.
vacuum-coarse = L’essai ne tranche pas : jusqu’à { $upper } reste possible, plus que la limite demandée.
vacuum-no-size = La remontée ne se stabilise pas ; sans le volume, la taille d’une fuite ne peut être donnée.
vacuum-acceptance-only = L’essai ne permet pas d’en dire plus sur une éventuelle fuite.
vacuum-settle-second-fact = Une remontée à elle seule ne prouve pas une fuite. Pour trancher : faire un essai de pression à l’azote et au produit moussant, ou pomper une heure de plus et refaire la remontée ; si le dernier tiers monte aussi vite, c’est de l’air qui entre, s’il monte moins vite, c’est du gaz dégagé.
vacuum-settle-dry = Pour trancher : casser le vide à l’azote sec, changer le déshydrateur, tirer de nouveau au vide jusqu’à ce qu’il tienne, et refaire la remontée. Une installation humide cache une fuite : ceci ne vaut donc pas constat d’étanchéité.
vacuum-settle-above-water = Pour trancher : tirer de nouveau au vide, l’huile chaude, refaire la remontée, et éprouver les raccords sous pression à l’azote et au produit moussant.
vacuum-settle-uneven = Pour trancher : tirer de nouveau au vide, laisser vannes, flexibles et température en l’état, et refaire la remontée. Un essai de pression à l’azote montre une fuite qui va et vient si elle est ouverte à ce moment-là.
vacuum-settle-coarse = Pour trancher : prolonger la remontée, prendre un instrument plus fin ou une partie plus petite du circuit ; ou faire un essai de pression à l’azote et au produit moussant.
vacuum-settle-no-size = Pour trancher : noter le volume essayé, ou éprouver les raccords sous pression à l’azote et au produit moussant.
vacuum-no-place = Un essai de tenue au vide ne montre pas où est une fuite.

# Pourquoi un essai de tenue au vide ne montre pas davantage.

vacuum-reason-above-water = La pression a dépassé ce que l’eau seule peut atteindre à l’endroit le plus chaud : de l’air ou du fluide frigorigène est entré aussi.
vacuum-reason-water-unchecked = Ni le tube le plus chaud ni l’air n’ont été relevés, si bien qu’il n’a pas été vérifié si l’eau peut atteindre cette pression.
vacuum-reason-no-volume = Le volume essayé n’est pas noté, si bien que la taille d’une fuite ne peut être donnée.
vacuum-reason-no-leak-limit = Aucune limite de fuite n’est notée, si bien que la remontée n’est comparée à aucune.
vacuum-reason-inward = Le { $refrigerant } bout sous la pression de l’air dans les parties froides de cette installation, si bien qu’une fuite y aspire de l’air en marche, comme dans cet essai.
vacuum-reason-two-readings = Deux lectures et pas d’enregistrement, si bien que l’essai montre seulement si la limite a été respectée : entre deux lectures, une fuite, l’humidité et le gaz sorti de l’huile font monter la pression de la même façon.
vacuum-reason-moving-temperature = La température a bougé de { $moved }, plus que { $most }, si bien que l’essai montre seulement si la limite a été respectée : une remontée à température variable montre la chaleur et non la fuite.
vacuum-reason-no-temperature = Aucune température n’a été enregistrée : on tient pour acquis qu’elle était stable.
vacuum-reason-short = L’enregistrement dure moins de 20 minutes, si bien que l’essai montre seulement si la limite a été respectée.
vacuum-reason-few-rows = L’enregistrement a moins de 30 lignes, si bien que l’essai montre seulement si la limite a été respectée.
vacuum-reason-uneven = Un tiers de la durée de l’enregistrement a trop peu de lignes, si bien que l’essai montre seulement si la limite a été respectée.
vacuum-reason-not-vacuum = L’enregistrement dépasse un dixième d’atmosphère, où une fuite n’entre plus régulièrement, si bien que l’essai montre seulement si la limite a été respectée.
vacuum-reason-constant = L’instrument a montré la même valeur à chaque ligne, comme un instrument bloqué ou isolé, si bien que l’essai montre seulement si la limite a été respectée.
vacuum-reason-stopped = La remontée s’est arrêtée d’une ligne à l’autre, comme en haut d’échelle d’un instrument, si bien que l’essai montre seulement si la limite a été respectée.
vacuum-reason-fell = La pression a baissé, par la pompe, par refroidissement, par dérive de l’instrument ou dans l’huile, si bien que l’essai montre seulement si la limite a été respectée.

# Calculs d’un essai de tenue au vide: titres et remarques.

vacuum-rise-title = Remontée moyenne du vide
vacuum-late-title = Remontée du dernier tiers, fuite et dégazage ensemble
vacuum-whole-title = Remontée de tout l’enregistrement le long d’une droite
vacuum-mass-title = La même fuite en masse d’air entrant, sur une année de 365 jours
vacuum-note-upper = N’y sont pas : une erreur de l’instrument proportionnelle à sa lecture, une fuite qui va et vient, et le gaz repris par l’huile ou les parois qui refroidissent.
vacuum-note-rise = L’humidité et le dégazage font monter la pression comme une fuite : à l’incertitude du volume et de l’instrument près, qui n’est pas calculée ici, une fuite seule n’est pas plus grande que cela, sauf si l’installation a refroidi pendant l’essai.
water-title = Plus haute pression que l’eau seule peut atteindre
water-note-air = Le tube le plus chaud n’a pas été relevé : pris à la température de l’air.

# Ce que la limite d’un essai signifie en service.

service-note-between = L’écoulement visqueux et l’écoulement moléculaire sont les deux bornes : ce que l’ouverture laisserait sortir se situe entre les deux ; l’essai ne permet pas de dire où.
service-note-molecular-only = L’écoulement visqueux ne peut être calculé, faute de la viscosité de l’un des gaz.
service-note-inwards = Sans dépasser la pression de l’air extérieur : ici, une fuite laisserait entrer de l’air, et non sortir du fluide.
service-pressure-title = Pression du { $refrigerant } en service
service-viscous-title = Cette limite en service, en vapeur de { $refrigerant }, écoulement visqueux
service-molecular-title = Cette limite en service, en vapeur de { $refrigerant }, écoulement moléculaire
service-saturation = saturation du { $refrigerant }, CoolProp 8.0.0
service-note-no-saturation = Aucune pression de saturation n’est connue à 40 °C (à 20 °C côté basse pression), comme au-dessus du point critique : la pression maximale admissible de la plaque tient lieu de pression de service.
service-note-vapour = En vapeur. Une fuite sous le niveau du liquide laisse sortir davantage, ce qui n’est pas calculé ici.
service-note-year = Une année a 365 jours, et la pression est prise égale toute l’année.
molar-mass-of = { $mass } ({ $gas })
viscosity-of = { $viscosity } ({ $gas })
