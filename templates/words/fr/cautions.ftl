# Avertissements que porte la page : chacun commence en minuscule et finit sans point, ce que la page
# complète. Sous chacun, la raison de son importance ; son anglais est `matters` dans src/caution.

caution-background-hides-leak = on s’est fié à un détecteur dans un air qui contenait déjà du fluide frigorigène
phrase-the-detector-takes-the-gas-in-the-air-for-its-zero-or-alarms-ever = Le détecteur prend le gaz de l’air pour son zéro, ou sonne partout : une petite fuite ne ressort pas.
caution-brazed-without-purge = ce raccord a été brasé sans balayage d’azote
phrase-scale-forms-inside-the-hot-pipe-comes-loose-and-blocks-driers-str = De la calamine se forme dans le tube chaud, se détache et bouche déshydrateurs, filtres et détendeurs.
caution-bubbles-before-detector = { $method ->
    [electronic] la recherche au détecteur électronique
    [tracer] la recherche au gaz traceur
   *[other] la recherche à la lampe haloïde
} est venue après le produit moussant sur « { $finding } »
phrase-solution-closes-small-leaks-for-a-while-and-wets-or-poisons-a-sen = Le produit bouche un moment les petites fuites et mouille ou empoisonne un capteur : son silence ensuite ne montre pas grand-chose, et une alarme peut venir du produit.
caution-certificate-category-wrong = la catégorie { $category } de { $person } ne couvre pas ce travail
phrase-the-law-asks-for-a-certificate-that-covers-the-work-what-was-done = La loi exige un certificat qui couvre le travail : ce qui a été fait sans lui peut ne pas compter.
caution-certificate-expired = le certificat de { $person } avait expiré le { $day }
phrase-work-on-refrigerant-circuits-is-for-certified-people-a-leak-check = Le travail sur les circuits frigorifiques est réservé aux personnes certifiées ; un contrôle d’étanchéité ou une réparation par une personne qui ne l’est pas peut ne pas compter.
caution-certificate-missing = { $person } a travaillé sur le circuit, et le carnet ne contient aucun certificat de cette personne
phrase-work-on-refrigerant-circuits-is-for-certified-people-and-the-reco = Le travail sur les circuits frigorifiques est réservé aux personnes certifiées, et le registre doit nommer leur certificat ; un contrôle d’étanchéité ou une réparation par une personne qui n’en a pas peut ne pas compter.
caution-charged-without-evacuation = { $circuit ->
    [none] l’installation a été chargée
   *[other] le circuit « { $circuit } » a été chargé
} après l’essai « { $test } » sans tirage au vide entre les deux
phrase-test-gas-and-moisture-left-inside-raise-the-pressures-spoil-the-o = Le gaz d’essai et l’humidité laissés à l’intérieur font monter les pressions, abîment l’huile et rendent douteuses la charge et toute mesure de pression ultérieure.
caution-cylinder-does-not-add-up = la bouteille « { $cylinder } » pesait { $mass } de { $than ->
    [more] plus
   *[less] moins
} qu’à sa dernière pesée
phrase-refrigerant-went-into-or-out-of-the-cylinder-that-no-note-tells-o = Du fluide est entré dans la bouteille ou en est sorti sans qu’aucune note le dise, et il manque d’autant au bilan du fluide.
caution-detector-not-proved = { $detector ->
    [none] le détecteur
   *[other] le détecteur « { $detector } »
} n’a pas été éprouvé sur une fuite étalon le { $day }
phrase-a-sensor-that-is-worn-flooded-or-switched-off-is-silent-everywher = Un capteur usé, saturé ou éteint reste muet partout, et ce silence passe pour de l’étanchéité.
caution-drier-not-replaced = le circuit a été ouvert ici, et rien n’est dit de son déshydrateur
phrase-a-drier-that-has-been-open-to-the-air-takes-up-moisture-and-is-so = Un déshydrateur resté ouvert à l’air prend l’humidité et s’épuise vite ; l’eau laissée à l’intérieur forme de l’acide et de la glace au détendeur, et cause de nouvelles fuites.
caution-dye-from-earlier-leak = le colorant sur « { $finding } » peut venir d’une fuite antérieure
phrase-dye-stays-where-it-came-out-and-glows-for-years-this-may-be-the-o = Le colorant reste là où il est sorti et luit pendant des années : ce peut être celui de l’ancienne fuite.
caution-flame-near-flammable = une flamme ({ $method ->
    [halide] lampe haloïde
   *[other] { $method }
}) a été utilisée sur un circuit contenant du { $refrigerant }
phrase-leaking-gas-can-catch-fire-or-explode-at-the-flame = Le gaz qui fuit peut s’enflammer ou exploser à la flamme.
caution-gas-added-leak-not-found = du fluide frigorigène a été ajouté { $circuit ->
    [none] à l’installation
   *[other] au circuit « { $circuit } »
}, et la fuite n’a pas été trouvée
phrase-refrigerant-is-not-used-up-what-was-added-will-leak-too-until-the = Le fluide frigorigène ne se consomme pas : ce qui a été ajouté fuira aussi, tant que la fuite n’est pas trouvée et réparée.
caution-gas-added-without-repair = du fluide a été ajouté dans { $circuit ->
    [none] l’installation
   *[other] le circuit « { $circuit } »
} alors qu’une fuite connue n’est pas réparée
phrase-what-was-added-leaks-out-again-whether-a-rule-sets-a-time-for-the = Ce qui a été ajouté fuit à nouveau. La partie juridique du rapport dit si une règle fixe un délai de réparation.
caution-gas-added-without-search = du fluide a été ajouté dans { $circuit ->
    [none] l’installation
   *[other] le circuit « { $circuit } »
} et la fuite n’a pas été cherchée
phrase-refrigerant-is-not-used-up-what-is-missing-has-leaked-and-what-wa = Le fluide frigorigène ne se consomme pas : ce qui manque a fui, et ce qui a été ajouté suivra. La partie juridique du rapport dit si une règle fixe un délai pour trouver et réparer la fuite.
caution-gauge-beyond-its-range = { $pressure } dépasse l’étendue de mesure du manomètre de l’essai « { $test } »
phrase-beyond-its-range-a-gauge-is-wrong-or-damaged-and-so-is-what-the-t = Au-delà de son étendue de mesure, un manomètre est faux ou s’abîme, et ce que montre l’essai aussi.
caution-hold-at-moving-temperature = une tenue en pression sans température stable est la seule vérification de « { $finding } »
phrase-the-gas-in-the-pipe-follows-its-own-warmth-not-that-of-the-thermo = Le gaz dans le tube suit sa propre chaleur, non celle du thermomètre : sur une tenue courte, un changement de température cache une fuite ou en invente une.
caution-hold-too-coarse-for-leak = l’essai « { $test } » n’aurait pas pu montrer la fuite « { $finding } »
phrase-the-gauge-would-have-stood-still-with-the-leak-as-it-was-before-t = Le manomètre n’aurait pas bougé avec la fuite telle qu’elle était avant la réparation : la tenue ne prouve rien à son sujet.
caution-hydrogen-above-five-percent = l’essai « { $test } » a été fait avec plus de 5 % d’hydrogène
phrase-above-about-5-5-hydrogen-in-nitrogen-the-mixture-can-burn-in-air = Au-dessus d’environ 5,5 % d’hydrogène dans l’azote, le mélange peut brûler dans l’air.
caution-hydrogen-mixed-on-site = le gaz de l’essai « { $test } » a été mélangé sur place
phrase-a-mixture-made-on-site-is-nowhere-the-same-part-of-it-can-hold-mo = Un mélange fait sur place n’est le même nulle part : une partie peut contenir plus d’hydrogène qu’il n’en faut pour brûler dans l’air, et une bouteille d’hydrogène pur est un danger en soi.
caution-instrument-check-overdue = le détecteur « { $detector } » avait été vérifié pour la dernière fois le { $day }, plus de 12 mois auparavant
phrase-a-check-with-it-may-not-count-as-the-leak-check-that-the-rule-ask = Un contrôle fait avec lui peut ne pas compter comme le contrôle d’étanchéité qu’exige la règle, et sa sensibilité n’est pas connue.
caution-low-pressure-search = une recherche au détecteur a été faite à { $pressure } seulement
phrase-a-leak-lets-out-less-the-lower-the-pressure-at-or-below-the-press = Une fuite laisse sortir d’autant moins que la pression est basse ; à la pression de l’air ou au-dessous, rien ne sort.
caution-method-blind-to-refrigerant = { $method ->
    [litmus] le tournesol
   *[other] une lampe haloïde
} ne peut pas montrer le { $refrigerant }
phrase-litmus-turns-with-ammonia-only-and-the-flame-of-the-torch-colours = Le tournesol ne vire qu’à l’ammoniac, et la flamme de la lampe ne se colore qu’au chlore : avec d’autres fluides tous deux ne montrent rien, si grande que soit la fuite.
caution-moisture-read-as-leak = « { $finding } » repose sur une remontée qui se stabilise
phrase-a-leak-goes-on-rising-to-the-pressure-of-the-air-a-rise-that-leve = Avec une fuite, la pression monte jusqu’à celle de l’air. Une remontée qui se stabilise, c’est de l’humidité, ou du gaz sorti de l’huile : chercher une fuite qui n’est pas là coûte une journée, et l’eau reste dedans.
caution-moved-more-than-charge = { $mass } { $kind ->
    [charged] chargés { $circuit ->
        [none] dans l’installation
       *[other] dans le circuit « { $circuit } »
    }
    [recovered] récupérés { $circuit ->
        [none] de l’installation
       *[other] du circuit « { $circuit } »
    }
   *[other] rejetés { $circuit ->
        [none] de l’installation
       *[other] du circuit « { $circuit } »
    }
}, c’est plus que sa charge complète de { $full }
phrase-it-is-most-likely-a-slip-a-decimal-point-lost-pounds-read-as-kilo = C’est très probablement une erreur : une virgule perdue, des livres lues comme des kilogrammes, le poids brut d’une bouteille pris pour le net, ou le mouvement d’un autre circuit. Le bilan et le taux de fuite en dépendent.
caution-no-bubbles-too-soon = un produit moussant observé moins de 20 min est la seule vérification de « { $finding } »
phrase-a-small-leak-may-take-many-minutes-to-raise-a-bubble-a-short-look = Une petite fuite peut mettre bien des minutes à former une bulle ; une brève observation montre seulement que la fuite n’est pas grande.
caution-oil-at-service-valve = l’huile est le seul indice sur « { $finding } »
phrase-drops-from-the-hoses-stay-at-a-service-valve-after-every-service-t = Des gouttes des flexibles restent sur une vanne de service après chaque intervention ; elles n’indiquent pas qu’elle fuit.
caution-outcome-beyond-evidence = le résultat noté, « { $claim } », va au-delà de ce que montrent les notes : { $shown }
phrase-less-was-shown-than-was-claimed-the-report-keeps-to-what-the-note = Il a été montré moins qu’affirmé : le rapport s’en tient à ce que montrent les notes.
caution-oxygen-or-air-used = l’essai « { $test } » a été fait avec { $gas ->
    [oxygen] de l’oxygène
   *[other] de l’air
}
phrase-oxygen-or-compressed-air-and-oil-can-explode-air-also-leaves-mois = L’oxygène ou l’air comprimé avec de l’huile peuvent exploser ; l’air laisse aussi de l’humidité.
caution-pressure-above-plate = l’essai « { $test } » a été fait à { $pressure }, au-dessus des { $plate } de la plaque
phrase-a-part-held-above-the-pressure-it-was-made-for-can-burst-at-once-o = Une pièce tenue au-dessus de la pression pour laquelle elle est faite peut éclater, aussitôt ou plus tard.
caution-pressure-test-as-leak-inspection = un essai de pression ou de tenue au vide tient ici lieu de recherche de fuite
phrase-such-a-test-shows-that-a-circuit-leaks-or-does-not-never-where-it = Un tel essai montre si un circuit fuit ou non, jamais où ; il ne compte pas à lui seul comme contrôle d’étanchéité.
caution-proof-before-repair = « { $finding } » a de nouveau été réparé après sa dernière vérification
phrase-a-test-made-before-the-last-work-at-a-joint-does-not-show-how-the = Un essai fait avant le dernier travail sur un raccord ne montre pas l’état présent du raccord.
caution-proof-coarser-than-leak = la seule vérification de « { $finding } » n’aurait pas pu montrer cette fuite
phrase-the-detector-would-have-been-silent-before-the-repair-as-well-its = Le détecteur serait aussi resté muet avant la réparation ; son silence ne prouve rien.
caution-proved-by-looking = la réparation de « { $finding } » n’a été vérifiée que par un examen visuel
phrase-a-joint-can-leak-for-weeks-before-oil-or-a-low-charge-shows-it-th = Un raccord peut fuir des semaines avant que de l’huile ou un manque de charge le montre ; ne voir aucun indice montre très peu.
caution-recovered-gas-to-another-owner = la bouteille « { $cylinder } » contenait du gaz récupéré sur ce site : { $site }
phrase-used-gas-may-carry-moisture-acid-and-other-gases-from-the-first-p = Un gaz usagé peut porter l’humidité, l’acide et d’autres gaz de la première installation dans la seconde ; certaines lois ne le laissent changer de propriétaire qu’après nettoyage et analyse par un régénérateur.
caution-reference-leak-of-another-kind = le détecteur a été essayé sur du { $tried } et utilisé pour du { $held }
phrase-a-sensor-for-one-kind-of-gas-may-not-answer-to-the-other-at-all-t = Un capteur fait pour une sorte de gaz peut ne pas répondre du tout à l’autre : l’essai montre qu’il fonctionne, non qu’il aurait trouvé cette fuite.
caution-repaired-not-retested = « { $finding } » a été réparé sans nouvel essai
phrase-many-repairs-do-not-hold-at-once-until-it-is-tested-nobody-knows-a = Bien des réparations ne tiennent pas du premier coup ; avant l’essai personne ne le sait, et la perte peut continuer.
caution-rise-at-moving-temperature = une remontée du vide à température variable est la seule vérification de « { $finding } »
phrase-as-a-system-warms-oil-and-walls-give-off-more-gas-as-it-cools-les = Quand une installation se réchauffe, l’huile et les parois dégagent plus de gaz, quand elle refroidit, moins : la remontée montre alors la chaleur et non la fuite.
caution-search-in-moving-air = on s’est fié à un détecteur dans un air en mouvement (« { $word } »)
phrase-moving-air-carries-leaking-gas-away-before-it-reaches-the-sensor-s = L’air en mouvement emporte le gaz avant qu’il atteigne le capteur : le silence montre alors peu.
caution-search-stopped-at-first-leak = une fuite a été trouvée, et la recherche n’a pas porté sur ces points : { $points }{ $more ->
    [0] {""}
    [one] {" "}et { $more } autre
   *[other] {" "}et { $more } autres
}
phrase-one-leak-found-does-not-mean-the-only-leak-the-rest-of-the-loss-m = Une fuite trouvée n’est pas forcément la seule ; le reste de la perte peut venir d’un point que personne n’a regardé.
caution-searched-while-empty = cette recherche a été faite sur l’installation vidée
phrase-without-pressure-inside-nothing-comes-out-of-a-leak-and-silence-s = Sans pression à l’intérieur, rien ne sort d’une fuite, et le silence ne montre rien.
caution-sensitivity-below-rule = le détecteur « { $detector } » ne trouve les fuites qu’à partir de { $leak }
phrase-a-search-with-it-may-not-count-as-the-leak-check-that-the-rule-as = Une recherche faite avec lui peut ne pas compter comme le contrôle d’étanchéité qu’exige la règle : de plus petites fuites restent cachées.
caution-sensor-disturbed = « { $finding } » repose sur un capteur { $sensor ->
    [infrared] infrarouge
    [heated-diode] à diode chauffée
   *[other] à semi-conducteur
} près de « { $word } »
phrase-such-a-sensor-alarms-at-these-things-or-stays-dull-for-a-while-af = Un tel capteur sonne à ces produits, ou reste peu sensible un moment après : l’alarme n’est pas forcément due au fluide.
caution-sign-without-direct-check = « { $finding } » repose sur un seul indice
phrase-a-sign-alone-neither-shows-a-leak-nor-clears-it-and-the-rule-asks = Un indice seul ne montre ni n’écarte une fuite, et la règle exige ensuite une méthode directe.
caution-strength-pressure-without-source = l’essai de résistance « { $test } » a été fait à { $factor } fois la plaque, et aucune note ne dit d’où vient cette valeur
phrase-a-strength-test-that-is-too-low-shows-nothing-beyond-daily-use-on = Un essai de résistance trop bas ne montre rien de plus que l’usage quotidien ; trop haut, il peut forcer ou faire éclater des pièces.
caution-test-coarser-than-limit = l’essai « { $test } » ne peut pas montrer cette limite : un échelon de son manomètre équivaut à une fuite de { $leak }
phrase-a-leak-of-the-limit-would-not-have-moved-the-gauge-by-one-step-th = Une fuite égale à la limite n’aurait pas fait bouger le manomètre d’un échelon : qu’il soit resté immobile ne montre rien sur la limite.
caution-test-gas-with-refrigerant-inside = l’essai « { $test } » a mis du gaz d’essai dans { $circuit ->
    [none] l’installation
   *[other] le circuit « { $circuit } »
} alors qu’il y restait du fluide
phrase-the-mixture-cannot-be-recovered-as-refrigerant-and-goes-to-waste-o = Le mélange ne peut pas être récupéré comme fluide et finit en déchet ou dans l’air ; la pression du liquide s’ajoute, et l’essai ne montre rien.
caution-test-too-short = une remontée du vide de { $minutes } min est la seule vérification de « { $finding } »
phrase-in-so-short-a-time-a-rise-cannot-tell-a-small-leak-from-moisture-o = En si peu de temps une remontée ne distingue pas une petite fuite de l’humidité ou du gaz qui sort de l’huile ; elle montre seulement que la limite d’acceptation a été tenue.
caution-ultrasonic-in-noise = on s’est fié à un détecteur à ultrasons dans le bruit (« { $word } »)
phrase-compressors-fans-and-escaping-steam-or-air-make-the-same-sound-as = Compresseurs, ventilateurs, vapeur ou air qui s’échappe font le même son qu’une fuite : ils en cachent une, ou passent pour une.
caution-vacuum-gauge-too-coarse = le vacuomètre de l’essai « { $test } » ne peut pas lire sa limite
phrase-such-a-gauge-shows-zero-long-before-the-limit-is-reached-that-the = Un tel appareil indique zéro bien avant que la limite soit atteinte : on ne sait pas si elle a été tenue.
caution-vented = du { $refrigerant } a été rejeté volontairement
phrase-letting-such-gas-out-on-purpose-is-forbidden-in-most-countries-an = Rejeter volontairement un tel gaz est interdit dans la plupart des pays et compte comme une émission.
caution-volume-missing = on ne peut rien dire de la limite de fuite de l’essai « { $test } »
phrase-a-change-of-pressure-becomes-a-leak-rate-only-with-the-volume-wit = Une variation de pression ne devient un débit de fuite qu’avec le volume ; sans lui on ne peut rien dire de la limite.
caution-wrong-cylinder = { $kind ->
    [charged] du { $held } a été chargé dans { $circuit ->
        [none] l’installation
       *[other] le circuit « { $circuit } »
    }, qui contient du { $wanted }
   *[recovered] du { $wanted } { $circuit ->
        [none] de l’installation
       *[other] du circuit « { $circuit } »
    } a été récupéré dans une bouteille de { $held }
}
phrase-a-mixture-has-unknown-pressures-and-an-unknown-safety-class-and-s = Un mélange a des pressions inconnues et une classe de sécurité inconnue, et gâte les deux gaz ; souvent il ne peut plus qu’être détruit.

# Ce que montrent les preuves, là où davantage est affirmé.
