# Noms et sources des méthodes de calcul, d’après leur anglais.

# Essai de pression par deux lectures.

phrase-pressure-expected-at-the-end-corrected-for-temperature = Pression attendue à la fin, corrigée de la température
phrase-p-p-z-t-z-t-absolute-pressure-and-kelvin = p₂' = p₁ × (Z₂ × T₂) ÷ (Z₁ × T₁), pression absolue et kelvins
phrase-real-gas-at-constant-volume-z-of-nitrogen-from-the-table-made-wit = gaz réel à volume constant ; Z de l’azote d’après la table faite avec CoolProp 8.0.0
phrase-compressibility-of-nitrogen-coolprop-8-0-0 = compressibilité de l’azote, CoolProp 8.0.0
phrase-pressure-lost-beyond-what-temperature-explains = Pression perdue au-delà de ce que la température explique
phrase-uncorrelated-inputs-jcgm-100-2008-5-1-a-reading-s-step-as-step-12 = grandeurs d’entrée non corrélées, JCGM 100:2008 5.1 ; l’échelon d’une lecture pris comme échelon/√12, F.2.2.1 ; facteur d’élargissement 2
phrase-in-simulated-tests-the-interval-built-with-it-held-the-true-leak-i = dans des essais simulés, l’intervalle ainsi formé contenait la vraie fuite dans 85 à 100 % des cas ; non mesuré sur cette installation
phrase-standard-atmosphere-for-want-of-a-barometer-or-an-altitude = atmosphère normale, faute de baromètre ou d’altitude
phrase-the-air-pressure-may-have-changed-by-5-hpa-between-the-readings = la pression de l’air a pu varier de 5 hPa entre les lectures

# Essai de pression par un enregistrement.

phrase-pressure-lost-beyond-what-temperature-explains-fitted-over-the-wh = Pression perdue au-delà de ce que la température explique, ajustée sur tout l’enregistrement
phrase-p-zt-zt-p-d-t-t-end-c-dt-dt-c-t-t-by-least-squares-d-u-u-fit-u-sh = p = [ZT ÷ (ZT)₀] × (P₀ − D × t ÷ t_end) + c₁ × dT/dt + c₂ × (T − T̄) par moindres carrés ;  Δ = D ;  u²(Δ) = u_fit² + u_share² + u_step² + u²(air) ;  U = 3u
phrase-least-squares-with-the-share-and-the-lag-held-near-1-and-0-real-g = moindres carrés, la part et le retard tenus près de 1 et de 0 ; gaz réel à volume constant, Z de l’azote d’après la table faite avec CoolProp 8.0.0 ; variance multipliée par l’autocorrélation intégrée ; l’échelon d’une lecture pris comme échelon/√12, JCGM 100:2008 F.2.2.1 ; facteur d’élargissement 3, d’après des enregistrements simulés
phrase-in-simulated-logs-the-interval-built-with-it-held-the-true-leak-i = dans des enregistrements simulés, l’intervalle ainsi formé contenait la vraie fuite dans 87 à 100 % des cas ; non mesuré sur cette installation
phrase-the-log = l’enregistrement
phrase-averages-over-equal-times-288-in-the-log-at-most = moyennes sur des durées égales, 288 au plus dans l’enregistrement
phrase-mean-of-the-temperatures-read = moyenne des températures relevées
phrase-standard-deviation-of-the-means-about-the-fit = écart type des moyennes autour de l’ajustement
phrase-integrated-autocorrelation-so-many-means-in-a-row-say-the-same = autocorrélation intégrée : tant de moyennes de suite disent la même chose
phrase-holds-c-gas-follows-all-of-a-change-of-temperature-to-within-this = tient c₂ : le gaz suit toute une variation de température, à ceci près
phrase-holds-c-gas-is-not-behind-the-thermometer-to-within-this = tient c₁ : le gaz n’est pas en retard sur le thermomètre, à ceci près
phrase-fitted-from-c-and-c = ajusté, d’après c₂ et c₁

# La fuite d’un essai de pression.

phrase-mean-leak-over-the-test = Fuite moyenne pendant l’essai
phrase-constant-volume-gas-at-the-temperature-of-the-test-pressure-chang = volume constant ; gaz à la température de l’essai (du domaine de la méthode par variation de pression de l’EN 13184)
phrase-largest-leak-that-this-test-leaves-possible = Plus grande fuite que cet essai laisse possible
phrase-upper-end-of-the-interval-of-the-leak-coverage-factor-2-for-two-r = extrémité supérieure de l’intervalle de la fuite ; facteur d’élargissement 2 pour deux lectures, 3 pour un enregistrement ajusté
phrase-smallest-leak-that-this-test-could-have-shown = Plus petite fuite que cet essai aurait pu montrer
phrase-a-loss-that-differs-from-none-at-the-95-level-normal-distribution = une perte qui diffère d’une perte nulle au niveau de 95 %, loi normale ; u(Δ) d’après le bilan de l’essai lui-même

# Tailles de fuite en masse.

phrase-leak-size-as-mass = Taille de fuite en masse
phrase-mass-rate-q-m-r-t = débit massique = Q × M ÷ (R × T)
phrase-ideal-gas-law-r-8-314462618-j-mol-k-codata-2018 = loi des gaz parfaits ; R = 8,314462618 J/(mol K), CODATA 2018
phrase-molar-mass-of-n-28-0134-g-mol-from-memory-as-coolprop-8-0-0-uses-i = masse molaire de N₂, 28,0134 g/mol (de mémoire, telle que l’emploie CoolProp 8.0.0)
phrase-molar-mass-of-dry-air-28-966-g-mol-from-memory = masse molaire de l’air sec, 28,966 g/mol (de mémoire)

# Essai de tenue au vide.

phrase-mean-rise-of-the-vacuum-as-a-throughput = Remontée moyenne du vide, en flux
phrase-rate-of-rise-at-constant-volume-40-cfr-1065-644-in-form-moisture-a = vitesse de remontée à volume constant, dans la forme de 40 CFR 1065.644 ; l’humidité et le dégazage y sont compris
phrase-rise-of-a-part-of-the-log-as-a-throughput = Remontée d’une partie de l’enregistrement, en flux
phrase-q-v-p-t-p-along-the-straight-line-fitted-to-the-rows-u-v-u-p-t-p-u = Q = V × Δp ÷ t, Δp le long de la droite ajustée aux lignes ;  U² = (V × U(Δp) ÷ t)² + (Δp × U(V) ÷ t)²
phrase-least-squares-standard-error-times-the-memory-of-the-noise-studen = moindres carrés ; erreur type multipliée par la mémoire du bruit, t de Student à 99 %, et l’échelon de l’instrument ; grandeurs d’entrée non corrélées, JCGM 100:2008 5.1
phrase-largest-leak-that-this-rise-leaves-possible = Plus grande fuite que cette remontée laisse possible
phrase-gas-given-off-by-moisture-walls-and-oil-only-adds-to-the-rise-so-t = le gaz dégagé par l’humidité, les parois et l’huile ne fait qu’ajouter à la remontée, si bien qu’une fuite constante n’est pas plus grande que la remontée du dernier tiers ; sur des remontées simulées, cela s’est vérifié dans 97 % des cas au moins
phrase-smallest-leak-that-this-straight-rise-can-be-if-it-is-one = Plus petite fuite que cette remontée en ligne droite puisse être, si c’en est une
phrase-q-low-the-lower-of-q-all-u-q-all-and-q-late-u-q-late = Q_low = le plus petit de Q_all − U(Q_all) et Q_late − U(Q_late)
phrase-the-whole-rise-and-its-last-third-must-both-bear-it = la remontée entière et son dernier tiers doivent tous deux la porter
phrase-20-c-for-want-of-a-temperature = 20 °C, faute d’une température
phrase-vapour-pressure-of-water-at-the-warmest-part = Pression de vapeur de l’eau à l’endroit le plus chaud
phrase-p-water-saturation-pressure-of-water-ice-below-0-c-at-t = p_water = pression de saturation de l’eau (de la glace sous 0 °C) à T
phrase-iapws-sr1-86-1992-over-liquid-iapws-r14-08-2011-over-ice = IAPWS SR1-86(1992) au-dessus du liquide, IAPWS R14-08(2011) au-dessus de la glace

# La limite d’un essai en service.

phrase-pressure-in-service = Pression en service
phrase-p-s-bubble-pressure-at-t-or-the-highest-that-was-read-where-that-i = p_s = pression de bulle à T, ou la plus haute lue, là où elle est plus haute ; au plus celle de la plaque
phrase-saturation-from-tables-made-with-coolprop-8-0-0 = saturation d’après des tables faites avec CoolProp 8.0.0
phrase-leak-in-service-viscous-flow = Fuite en service, écoulement visqueux
phrase-laminar-flow-of-an-ideal-gas-through-an-unchanged-channel-poiseui = écoulement laminaire d’un gaz parfait dans un canal inchangé (Poiseuille) ; η à 20 °C et 101 325 Pa
phrase-leak-in-service-molecular-flow = Fuite en service, écoulement moléculaire
phrase-free-molecular-flow-through-an-unchanged-channel-knudsen = écoulement moléculaire libre dans un canal inchangé (Knudsen)
phrase-condensing-at-40-c-on-a-warm-day-stands-for-service-on-the-high-s = la condensation à 40 °C par une journée chaude tient lieu de service côté haute pression ; aucune lecture de cette visite n’était plus haute
phrase-standing-still-at-20-c-when-the-low-side-sees-more-than-in-operat = à l’arrêt à 20 °C, où le côté basse pression voit plus qu’en marche ; aucune lecture de cette visite n’était plus haute
phrase-20-c-for-want-of-a-reading = 20 °C, faute d’une lecture
phrase-wilke-s-rule-j-chem-phys-18-1950-517-from-memory-from-the-constit = règle de Wilke (J. Chem. Phys. 18, 1950, 517, de mémoire) d’après les constituants dans CoolProp 8.0.0 : dérivée, à 5 % près de CoolProp pour R-404A, R-407C, R-410A, R-507A

phrase-net-addition-of-a-job = Ajout net d’une intervention
phrase-common-practice-what-was-recovered-and-charged-back-is-not-a-loss = pratique courante : ce qui a été récupéré puis rechargé n’est pas une perte ; incertitude selon JCGM 100:2008 5.1 (précision a de la balance et son échelon pris comme rectangulaires, F.2.2.1), facteur d’élargissement 2
phrase-net-sum-charged-sum-recovered-sum-lost-in-service-purged-or-vente = solde = somme chargée − somme récupérée − somme perdue pendant l’intervention, purgée ou rejetée ;  U = 2u, u² = somme de (a² ÷ 3 + échelon² ÷ 12) sur les pesées
phrase-co-equivalent = Équivalent CO₂
phrase-co-e-mass-gwp = CO₂e = masse × PRP (GWP)
phrase-mass-times-gwp-of-the-set-named-mixtures-by-nominal-mass-fraction = masse fois PRP (GWP) de la série nommée ; mélanges par fractions massiques nominales, règlement (UE) 2024/573 annexe VI et 40 CFR 84.64(b)
phrase-leak-rate-annualizing-method = Taux de fuite, méthode d’annualisation
phrase-rate-100-added-full-charge-shorter-of-days-since-the-last-additio = taux = 100 % × (ajouté ÷ charge complète) ÷ (jours depuis le dernier ajout, 365 au plus, ÷ 365)
phrase-40-cfr-82-152-leak-rate-for-part-84-the-same-by-84-102-from-memor = 40 CFR 82.152, « leak rate » ; pour la partie 84, de même selon 84.102 (de mémoire, à vérifier)
phrase-leak-rate-rolling-average-method = Taux de fuite, méthode de la moyenne mobile
phrase-rate-100-sum-of-additions-in-the-window-full-charge = taux = 100 % × somme des ajouts de la période ÷ charge complète
phrase-loss-per-year-in-percent-of-the-full-charge = Perte par an en pour cent de la charge complète
phrase-rate-100-lost-full-charge-365-days = taux = 100 % × (perdu ÷ charge complète) × 365 ÷ jours
phrase-common-practice-days-counted-from-the-last-addition-a-year-of-365 = pratique courante ; jours comptés depuis le dernier ajout, année de 365 jours
phrase-added-in-a-calendar-year-in-percent-of-the-full-charge = Ajouté en une année civile, en pour cent de la charge complète
phrase-share-100-sum-of-the-year-s-additions-full-charge = part = 100 % × somme des ajouts de l’année ÷ charge complète
phrase-40-cfr-82-157-j-and-84-106-j-125-or-more-in-a-calendar-year-is-to = 40 CFR 82.157(j) et 84.106(j) : 125 % ou plus en une année civile sont à déclarer
phrase-refrigerant-missing-in-all = Fluide manquant en tout
phrase-missing-sum-of-what-each-charge-put-back-up-to-the-one-that-ended = manque = somme de ce que chaque charge a remplacé, jusqu’à celle qui a mis fin à la perte
phrase-an-addition-that-did-not-fill-the-circuit-belongs-to-the-same-los = un ajout qui n’a pas complété la charge appartient à la même perte que le suivant, pratique courante ; de même 40 CFR 82.152, « leak rate », pour plusieurs ajouts dus à une même fuite
phrase-what-the-leaks-found-explain-of-the-loss = Ce que les fuites trouvées expliquent de la perte
phrase-explained-sum-of-leak-size-time-it-leaked-from-the-least-of-both-t = expliqué = somme de taille de fuite × durée de fuite, du moins des deux au plus des deux
phrase-interval-arithmetic-that-a-leak-kept-the-size-it-was-measured-at-i = calcul d’intervalles ; qu’une fuite ait gardé la taille mesurée est une hypothèse
phrase-concentration-in-the-room-if-the-whole-charge-came-out = Concentration dans le local si toute la charge sortait
phrase-refrigerant-recovered-for-a-change-of-refrigerant = Fluide récupéré pour un changement de fluide
phrase-recovered-sum-of-what-went-into-cylinders = récupéré = somme de ce qui est passé en bouteilles
phrase-sum-of-weighings-their-uncertainties-taken-as-uncorrelated-jcgm-1 = somme des pesées ; leurs incertitudes sont tenues pour non corrélées, JCGM 100:2008 5.1
phrase-missing-when-a-circuit-was-emptied = Ce qui manquait quand un circuit a été vidé
phrase-missing-full-charge-recovered-lost-while-working = manque = charge complète − récupéré − perdu pendant le travail
phrase-common-practice-what-stays-in-oil-and-hoses-is-in-it = pratique courante ; ce qui reste dans l’huile et les flexibles y est compris
phrase-c-m-a-h = c = m ÷ (A × h)
phrase-c-m-v = c = m ÷ V
phrase-charge-over-room-volume-as-en-378-1-and-ashrae-15-compare-it-with = charge sur volume du local, comme l’EN 378-1 et l’ASHRAE 15 la comparent à leurs limites ; mélange uniforme, ce que l’air près du sol n’est pas d’abord
phrase-a-quarter-of-the-lower-flammable-limit = Le quart de la limite inférieure d’inflammabilité
phrase-screening-at-25-of-the-lfl-common-practice = seuil de tri à 25 % de la LFL, pratique courante
phrase-superheat-of-the-suction-vapour = Surchauffe de la vapeur aspirée
phrase-t-t-suction-t-dew-p-suction-absolute-pressure = ΔT = T_suction − T_dew(p_suction), pression absolue
phrase-common-practice-dew-temperature-from-the-table-made-with-coolprop = pratique courante ; température de rosée d’après la table établie avec CoolProp 8.0.0
phrase-subcooling-of-the-liquid = Sous-refroidissement du liquide
phrase-t-t-bubble-p-liquid-t-liquid-absolute-pressure = ΔT = T_bubble(p_liquid) − T_liquid, pression absolue
phrase-common-practice-bubble-temperature-from-the-table-made-with-coolp = pratique courante ; température de bulle d’après la table établie avec CoolProp 8.0.0
phrase-standard-atmosphere-iso-2533 = atmosphère normale, ISO 2533
phrase-from = depuis
phrase-ipcc-ar4-100-years = GIEC AR4, 100 ans
phrase-ipcc-ar5-100-years = GIEC AR5, 100 ans
phrase-ipcc-ar6-100-years = GIEC AR6, 100 ans
phrase-en-378-1-values-in-spain-s-real-decreto-552-2019-table-a-unoffici = valeurs de l’EN 378-1 dans le Real Decreto 552/2019 espagnol, tableau A (copie non officielle)
phrase-ashrae-handbook-fundamentals-2021-si-chapter-29-tables-1-to-5-sto = ASHRAE Handbook Fundamentals 2021 (SI), chapitre 29, tableaux 1 à 5 (copie conservée)
phrase-model-mechanical-code-table-1103-1-up-codes-s-refrigeration-syste = code type « mechanical code », tableau 1103.1 (up.codes/s/refrigeration-system-classification)
phrase-new-york-city-mechanical-code-table-1103-1-nacmiaslaw-com-resourc = New York City Mechanical Code, tableau 1103.1 (nacmiaslaw.com/resources/legal-codes/28837)
phrase-from-memory-near-certain-verify-in-the-standard = De mémoire, presque certain, à vérifier dans la norme
phrase-from-memory-probable-verify-in-the-standard = De mémoire, probable, à vérifier dans la norme
phrase-from-memory-doubtful-verify-in-the-standard = De mémoire, douteux, à vérifier dans la norme
