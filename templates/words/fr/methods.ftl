# Noms et sources des méthodes de calcul, d’après leur anglais.

# Essai de pression par deux lectures.

phrase-pressure-expected-at-the-end-corrected-for-temperature = Pression attendue à la fin, corrigée de la température
phrase-p-p-z-t-z-t-absolute-pressure-and-kelvin = p₂' = p₁ × (Z₂ × T₂) ÷ (Z₁ × T₁), pression absolue et kelvins
phrase-real-gas-at-constant-volume-z-of-nitrogen-from-the-table-made-wit = gaz réel à volume constant ; Z de l’azote d’après la table faite avec CoolProp 8.0.0
phrase-compressibility-of-nitrogen-coolprop-8-0-0 = compressibilité de l’azote, CoolProp 8.0.0
phrase-pressure-lost-beyond-what-temperature-explains = Pression perdue au-delà de ce que la température explique
phrase-uncorrelated-inputs-jcgm-100-2008-5-1-a-reading-s-step-as-step-12 = grandeurs d’entrée non corrélées, JCGM 100:2008 5.1 ; l’échelon d’une lecture pris comme échelon/√12, F.2.2.1 ; facteur d’élargissement 2
phrase-simulated-tests-with-these-values-were-covered-in-85-to-100-of-ru = avec ces valeurs, 85 à 100 % des essais simulés étaient couverts ; non mesuré sur cette installation
phrase-standard-atmosphere-for-want-of-a-barometer-or-an-altitude = atmosphère normale, faute de baromètre ou d’altitude
phrase-the-air-pressure-may-have-changed-by-5-hpa-between-the-readings = la pression de l’air a pu varier de 5 hPa entre les lectures

# Essai de pression par un enregistrement.

phrase-pressure-lost-beyond-what-temperature-explains-fitted-over-the-wh = Pression perdue au-delà de ce que la température explique, ajustée sur tout l’enregistrement
phrase-p-zt-zt-p-d-t-t-end-c-dt-dt-c-t-t-by-least-squares-d-u-u-fit-u-sh = p = [ZT ÷ (ZT)₀] × (P₀ − D × t ÷ t_end) + c₁ × dT/dt + c₂ × (T − T̄) par moindres carrés ;  Δ = D ;  u²(Δ) = u_fit² + u_share² + u_step² + u²(air) ;  U = 3u
phrase-least-squares-with-the-share-and-the-lag-held-near-1-and-0-real-g = moindres carrés, la part et le retard tenus près de 1 et de 0 ; gaz réel à volume constant, Z de l’azote d’après la table faite avec CoolProp 8.0.0 ; variance multipliée par l’autocorrélation intégrée ; l’échelon d’une lecture pris comme échelon/√12, JCGM 100:2008 F.2.2.1 ; facteur d’élargissement 3, d’après des enregistrements simulés
phrase-simulated-logs-with-these-values-were-covered-in-87-to-100-of-run = avec ces valeurs, 87 à 100 % des enregistrements simulés étaient couverts ; non mesuré sur cette installation
phrase-the-log = l’enregistrement
phrase-averages-over-equal-times-288-in-the-log-at-most = moyennes sur des durées égales, 288 au plus dans l’enregistrement
phrase-standard-deviation-of-the-means-about-the-fit = écart type des moyennes autour de l’ajustement
phrase-integrated-autocorrelation-so-many-means-in-a-row-say-the-same = autocorrélation intégrée : tant de moyennes de suite disent la même chose
phrase-holds-c-gas-follows-all-of-a-change-of-temperature-to-within-this = tient c₂ : le gaz suit toute une variation de température, à ceci près
phrase-holds-c-gas-is-not-behind-the-thermometer-to-within-this = tient c₁ : le gaz n’est pas en retard sur le thermomètre, à ceci près
phrase-fitted-from-c-and-c = ajusté, d’après c₂ et c₁

# La fuite d’un essai de pression.

phrase-mean-leak-over-the-test = Fuite moyenne pendant l’essai
phrase-constant-volume-gas-at-the-temperature-of-the-test-pressure-chang = volume constant ; gaz à la température de l’essai (du domaine de la méthode par variation de pression de l’EN 13184)
phrase-largest-leak-that-this-test-leaves-possible = Plus grande fuite que cet essai laisse possible
phrase-upper-end-of-the-interval-of-the-leak-coverage-factor-2-for-two-r = extrémité supérieure de l’intervalle de la fuite ; facteur d’élargissement 2 pour deux lectures, 3 pour un enregistrement ajusté
phrase-smallest-leak-that-this-test-could-have-shown = Plus petite fuite que cet essai aurait pu montrer
phrase-a-loss-that-differs-from-none-at-the-95-level-normal-distribution = une perte qui diffère d’une perte nulle au niveau de 95 %, loi normale ; u(Δ) d’après le bilan de l’essai lui-même

# Tailles de fuite en masse.

phrase-leak-size-as-mass = Taille de fuite en masse
phrase-mass-rate-q-m-r-t = débit massique = Q × M ÷ (R × T)
phrase-ideal-gas-law-r-8-314462618-j-mol-k-codata-2018 = loi des gaz parfaits ; R = 8,314462618 J/(mol K), CODATA 2018
phrase-molar-mass-of-n-28-0134-g-mol-from-memory-as-coolprop-8-0-0-uses-i = masse molaire de N₂, 28,0134 g/mol (de mémoire, telle que l’emploie CoolProp 8.0.0)
phrase-molar-mass-of-dry-air-28-966-g-mol-from-memory = masse molaire de l’air sec, 28,966 g/mol (de mémoire)

# Essai de vide.

phrase-mean-rise-of-the-vacuum-as-a-throughput = Remontée moyenne du vide, en flux
phrase-rate-of-rise-at-constant-volume-40-cfr-1065-644-in-form-moisture-a = vitesse de remontée à volume constant, dans la forme de 40 CFR 1065.644 ; l’humidité et le dégazage y sont compris
phrase-rise-of-a-part-of-the-log-as-a-throughput = Remontée d’une partie de l’enregistrement, en flux
phrase-q-v-p-t-p-along-the-straight-line-fitted-to-the-rows-u-v-u-p-t-p-u = Q = V × Δp ÷ t, Δp le long de la droite ajustée aux lignes ;  U² = (V × U(Δp) ÷ t)² + (Δp × U(V) ÷ t)²
phrase-least-squares-standard-error-times-the-memory-of-the-noise-studen = moindres carrés ; erreur type multipliée par la mémoire du bruit, t de Student à 99 %, et l’échelon de l’instrument ; grandeurs d’entrée non corrélées, JCGM 100:2008 5.1
phrase-largest-leak-that-this-rise-leaves-possible = Plus grande fuite que cette remontée laisse possible
phrase-gas-given-off-by-moisture-walls-and-oil-only-adds-to-the-rise-so-t = le gaz dégagé par l’humidité, les parois et l’huile ne fait qu’ajouter à la remontée, si bien qu’une fuite constante n’est pas plus grande que la remontée du dernier tiers ; combien de fois cela s’est vérifié sur des remontées simulées figure dans les notes de ce projet pour les développeurs
phrase-smallest-leak-that-this-straight-rise-can-be-if-it-is-one = Plus petite fuite que cette remontée en ligne droite puisse être, si c’en est une
phrase-q-low-the-lower-of-q-all-u-q-all-and-q-late-u-q-late = Q_low = le plus petit de Q_all − U(Q_all) et Q_late − U(Q_late)
phrase-the-whole-rise-and-its-last-third-must-both-bear-it = la remontée entière et son dernier tiers doivent tous deux la porter
phrase-20-c-for-want-of-a-temperature = 20 °C, faute d’une température
phrase-vapour-pressure-of-water-at-the-warmest-part = Pression de vapeur de l’eau à l’endroit le plus chaud
phrase-p-water-saturation-pressure-of-water-ice-below-0-c-at-t = p_water = pression de saturation de l’eau (de la glace sous 0 °C) à T
phrase-iapws-sr1-86-1992-over-liquid-iapws-r14-08-2011-over-ice = IAPWS SR1-86(1992) au-dessus du liquide, IAPWS R14-08(2011) au-dessus de la glace

# La limite d’un essai en service.

phrase-pressure-in-service = Pression en service
phrase-p-s-bubble-pressure-at-t-or-the-highest-that-was-read-where-that-i = p_s = pression de bulle à T, ou la plus haute lue, là où elle est plus haute ; au plus celle de la plaque
phrase-saturation-from-tables-made-with-coolprop-8-0-0 = saturation d’après des tables faites avec CoolProp 8.0.0
phrase-leak-in-service-viscous-flow = Fuite en service, écoulement visqueux
phrase-laminar-flow-of-an-ideal-gas-through-an-unchanged-channel-poiseui = écoulement laminaire d’un gaz parfait dans un canal inchangé (Poiseuille) ; η à 20 °C et 101 325 Pa
phrase-leak-in-service-molecular-flow = Fuite en service, écoulement moléculaire
phrase-free-molecular-flow-through-an-unchanged-channel-knudsen = écoulement moléculaire libre dans un canal inchangé (Knudsen)
phrase-condensing-at-40-c-on-a-warm-day-stands-for-service-on-the-high-s = la condensation à 40 °C par une journée chaude tient lieu de service côté haute pression ; aucune lecture de cette visite n’était plus haute
phrase-standing-still-at-20-c-when-the-low-side-sees-more-than-in-operat = à l’arrêt à 20 °C, où le côté basse pression voit plus qu’en marche ; aucune lecture de cette visite n’était plus haute
phrase-20-c-for-want-of-a-reading = 20 °C, faute d’une lecture
phrase-wilke-s-rule-j-chem-phys-18-1950-517-from-memory-from-the-constit = règle de Wilke (J. Chem. Phys. 18, 1950, 517, de mémoire) d’après les constituants dans CoolProp 8.0.0 : dérivée, à 5 % près de CoolProp pour R-404A, R-407C, R-410A, R-507A
