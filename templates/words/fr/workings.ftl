# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
assumed = supposé : { $reason }
result-of = résultat de
half-width = ± est la demi-largeur de l’intervalle
workings-of-account = Bilan du fluide
workings-of-circuit = Bilan du fluide, circuit { $id }
workings-of-pressure-test = Essai de pression { $id }
workings-of-vacuum-test = Essai de tenue au vide { $id }
workings-of-readings = Relevés de fonctionnement
workings-of-room = Le local et ses limites
days-from-to = de { $from } à { $to } jours
origin-gwp = { $set } : { $shares }
origin-saturation = { $refrigerant } : d’après { $source }
title-net-addition = { $circuit ->
    [none] Ajout net
   *[other] Ajout net, circuit { $circuit }
}
title-full-charge-co2e = { $circuit ->
    [none] Équivalent CO₂ de la charge complète
   *[other] Équivalent CO₂ de la charge complète, circuit { $circuit }
}
title-loss-co2e = { $circuit ->
    [none] Équivalent CO₂ de ce qui avait été perdu
   *[other] Équivalent CO₂ de ce qui avait été perdu, circuit { $circuit }
}
title-lost-in-year = { $circuit ->
    [none] Ajouté en { $year }, en pour cent de la charge complète
   *[other] Ajouté en { $year }, en pour cent de la charge complète, circuit { $circuit }
}
title-missing = { $circuit ->
    [none] Manque total
   *[other] Manque total, circuit { $circuit }
}
title-missing-co2e = { $circuit ->
    [none] Équivalent CO₂ du manque total
   *[other] Équivalent CO₂ du manque total, circuit { $circuit }
}
title-recovered = { $circuit ->
    [none] Récupéré pour le changement de fluide
   *[other] Récupéré pour le changement de fluide, circuit { $circuit }
}
title-less-than-full = { $circuit ->
    [none] Manque par rapport à la charge complète
   *[other] Manque par rapport à la charge complète, circuit { $circuit }
}
title-recovered-co2e = { $circuit ->
    [none] Équivalent CO₂ du fluide récupéré
   *[other] Équivalent CO₂ du fluide récupéré, circuit { $circuit }
}
title-loss-per-year = { $circuit ->
    [none] Perte par an
   *[other] Perte par an, circuit { $circuit }
}
title-leak-rate = { $circuit ->
    [none] Taux de fuite selon { $rules }
   *[other] Taux de fuite selon { $rules }, circuit { $circuit }
}
title-leaks-explained = { $circuit ->
    [none] Ce que les fuites trouvées expliquent de la perte
   *[other] Ce que les fuites trouvées expliquent de la perte, circuit { $circuit }
}
title-room-concentration = Concentration dans le local { $room }
title-quarter-flammable-limit = Le quart de la limite inférieure d’inflammabilité du { $refrigerant }
note-apart-from-loss = Les mouvements pour la mise en service, la saison, le changement de fluide ou la mise hors service sont dans cette somme ; ils ne comptent pas comme perte dans le taux de fuite.
note-uncertainty-written = Une incertitude écrite avec ± est prise avec un facteur d’élargissement de 2.
note-scale-not-known = La précision d’une balance n’est pas notée, ou aucune balance n’est nommée : pour ses pesées, seul un demi-dernier chiffre entre dans l’incertitude.
note-not-weighed = L’incertitude d’une masse qui n’a pas été pesée avant et après n’est pas connue.
note-from-installation = Aucune charge n’est notée avant cette perte : les jours sont comptés depuis la mise en service, où la charge complète a été pesée. Si du fluide a été ajouté entre-temps sans être noté, la perte est plus grande que celle-ci.
note-first-calculation = Premier calcul sous cette règle : ce qui a été ajouté compte comme la perte de 365 jours, quoi qu’en dise le calendrier.
note-annualized-at-most = { $days } jours se sont écoulés, et la règle en compte 365 au plus : ce qui a été ajouté compte comme la perte d’un an.
note-annualized = { $days ->
    [one] Si la perte continuait comme pendant ce { $days } jour, cette part de la charge complète serait perdue en un an. Cela ne dit pas à quel moment la perte a eu lieu.
   *[other] Si la perte continuait comme pendant ces { $days } jours, cette part de la charge complète serait perdue en un an. Cela ne dit pas à quel moment la perte a eu lieu.
}
note-window = { $since ->
    [verification] La période est celle des jours écoulés depuis que le second essai de vérification a montré toutes les fuites identifiées réparées. Elle n’est pas ramenée à un an.
    [rule] La période est celle des jours écoulés depuis le premier jour de la règle. Elle n’est pas ramenée à un an.
   *[year] La période est celle des 365 derniers jours. Elle n’est pas ramenée à un an.
}
note-not-to-full = Le circuit n’a pas reçu sa charge complète, la perte a donc pu être plus grande.
note-not-known-full-before = On ne sait pas si le circuit était plein après l’ajout précédent.
note-loss-over-days = { $days ->
    [one] Perte sur { $days } jour, ramenée à 365.
   *[other] Perte sur { $days } jours, ramenée à 365.
}
note-destroyed = Ce qui a été purgé et détruit à 98 % ou plus n’est pas compté (40 CFR 82.157(k)).
note-beyond-season = On a chargé pour la saison plus qu’on n’avait retiré pour elle dans les 12 mois précédents. La définition d’une variation saisonnière telle qu’elle est écrite (40 CFR 82.152) ne couvre pas cela ; ce qui a été mis en plus est compté ici.
note-full-charge-as-noted = La charge complète est prise telle qu’elle est notée : l’incertitude n’est que celle des pesées.
note-volumes-summed = V est la somme des volumes indiqués.
note-year-not-complete = Ce carnet ne connaît pas tous les mouvements de cette année.
note-leak-may-have-begun = Une fuite a pu commencer à tout moment depuis la charge qui précède la perte, sauf si elle a été vue plus tôt. Qu’elle ait gardé la taille mesurée est une hypothèse.
note-loss-not-known-well = La perte n’est pas assez bien connue pour dire s’il reste d’autres fuites : il faut une charge complète pesée au début et à la fin.
note-gwp-from-memory = Un PRP (GWP) de cette somme est donné de mémoire : à vérifier avant de s’y fier.
note-gwp-left-out = Un composant sans PRP (GWP) publié est laissé de côté, comme le dit 40 CFR 84.64(c).
note-resolution = L’incertitude est celle des chiffres écrits, ou ce qui suit ± ; la précision du manomètre et du thermomètre n’y est pas.
note-glide = À cette pression, le { $refrigerant } s’évapore avec un glissement de { $glide } K : la surchauffe se compte depuis le point de rosée, le sous-refroidissement depuis le point de bulle.
