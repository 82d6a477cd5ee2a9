# Mots des notes qui paraissent sur la page, d’après leur anglais.

# But de la visite, raison d’un mouvement.
phrase-leak-search-and-repair = recherche de fuites et réparation
phrase-leak-search = recherche de fuites
phrase-repair = réparation
phrase-periodic-leak-check = contrôle d’étanchéité périodique
phrase-verification = contrôle après réparation
phrase-emergency-call = dépannage d’urgence
phrase-commissioning = mise en service
phrase-retrofit = changement de fluide frigorigène
phrase-service = entretien
phrase-decommissioning = mise hors service
phrase-installation = première charge
phrase-recharge = recharge
phrase-top-up = appoint
phrase-leak = fuite
phrase-seasonal = saisonnier

# État de l’installation au départ.
phrase-running = en marche
phrase-off = à l’arrêt
phrase-isolated = isolé
phrase-empty = vide
phrase-standing = à l’arrêt, chargée
phrase-emptied = vidangée
phrase-under-nitrogen = sous azote

# Le résultat selon le technicien.
phrase-found-and-repaired = trouvé et réparé
phrase-found-left-open = trouvé, laissé sans réparation
phrase-not-found-loss-stands = non trouvé, la perte reste inexpliquée
phrase-nothing-found = rien trouvé
phrase-repair-verified = réparation recontrôlée
phrase-gas-added-not-repaired = appoint fait, non réparé
phrase-retrofitted = fluide changé

# Le résultat selon les preuves.
phrase-every-leak-found-was-repaired-and-proved = chaque fuite trouvée a été réparée, chaque réparation vérifiée
phrase-repaired-but-no-proof-after-the-repair-is-noted = réparé, mais aucune vérification après la réparation n’est notée
phrase-repaired-but-what-was-looked-at-after-the-repair-does-not-prove-i = réparé, mais le recontrôle fait ensuite ne suffit pas à confirmer la réparation
phrase-some-leaks-were-repaired-others-are-open = des fuites ont été réparées, d’autres restent à réparer
phrase-leaks-were-found-and-left-open = fuite trouvée, laissée sans réparation
phrase-there-are-suspicions-that-were-not-cleared = il reste des soupçons non levés
phrase-refrigerant-had-been-lost-and-its-leak-was-not-found = du fluide manquait, la fuite n’a pas été trouvée
phrase-searched-nothing-found = recherche faite, rien trouvé
phrase-earlier-repairs-were-looked-at-again-nothing-was-shown-there = des réparations antérieures ont été recontrôlées, rien n’y a été décelé
phrase-refrigerant-was-added-no-search-and-no-repair-are-noted = du fluide a été ajouté, ni recherche ni réparation ne sont notées
phrase-changed-to-another-refrigerant = passé à un autre fluide frigorigène
phrase-no-search-no-leak-and-no-proof-are-noted = ni recherche, ni fuite, ni vérification ne sont notées
phrase-no-proof-after-the-last-repair-bears-it-or-a-test-after-it-lost-p = aucune vérification après la dernière réparation ne l’appuie, ou un essai ultérieur a perdu de la pression
phrase-no-repair-is-noted-here-or-earlier = aucune réparation n’est notée, ici ou plus tôt

# Constats et leur état.
phrase-suspect = suspect
phrase-defect = défaut
phrase-repaired-earlier-holding = réparé auparavant, tient
phrase-repaired-proved = réparé, vérifié
phrase-repaired-not-proved = réparé, reste à confirmer
phrase-temporary-repair = réparation provisoire
phrase-temporary = provisoire
phrase-open = laissé sans réparation
phrase-left-open = laissé sans réparation
phrase-suspect-cleared = soupçon levé
phrase-new = nouveau
phrase-still-leaking = fuyait encore
phrase-leaking-again-at-the-same-place = a fui de nouveau au même endroit
phrase-repaired-holding = réparé, tient
phrase-repaired-not-re-tested = réparé, non recontrôlé
phrase-nothing-shown = rien n’a été décelé
phrase-not-looked-at = non examiné à cette visite
phrase-taken-out = déposé
phrase-others = d’autres

# Degré de preuve d’une fuite.
phrase-presumed = présumé
phrase-located = localisé
phrase-confirmed = confirmé
phrase-evident = évident
phrase-indirect-signs-only = signes indirects seulement
phrase-found-by-one-direct-method = trouvé par une méthode directe
phrase-found-by-two-independent-direct-methods = trouvé par deux méthodes directes indépendantes
phrase-a-break-or-a-jet-was-seen-heard-or-felt = une rupture ou un jet a été vu, entendu ou senti

# Méthodes de recherche et d’essai.
phrase-visual = examen visuel
phrase-oil = huile
phrase-ice = glace ou givre
phrase-corrosion = corrosion
phrase-sound = bruit
phrase-parameter = paramètre
phrase-break = rupture
phrase-jet = jet
phrase-electronic = détecteur électronique
phrase-bubbles = produit moussant
phrase-tracer = gaz traceur
phrase-ultrasonic = ultrasons
phrase-dye = traceur fluorescent
phrase-litmus = papier tournesol
phrase-halide = lampe haloïde
phrase-pressure-test = essai de pression
phrase-vacuum-test = essai de tenue au vide
phrase-pressure-test-of-its-section = essai de pression de son tronçon
phrase-vacuum-test-of-its-section = essai de tenue au vide de son tronçon
phrase-tightness = étanchéité
phrase-strength = résistance

# Gaz.
phrase-nitrogen = azote
phrase-5-hydrogen-in-nitrogen = 5 % d’hydrogène dans l’azote
phrase-hydrogen-in-nitrogen-over-5 = plus de 5 % d’hydrogène dans l’azote
phrase-helium = hélium
phrase-carbon-dioxide = dioxyde de carbone
phrase-air = air
phrase-oxygen = oxygène
phrase-refrigerant = fluide frigorigène
phrase-nitrogen-with-refrigerant = azote avec fluide frigorigène

# Mouvements du fluide et de ses bouteilles.
phrase-charged = chargé
phrase-recovered = récupéré
phrase-relief-lifted = échappé par la soupape
phrase-purged = purgé
phrase-vented = rejeté à l’air
phrase-lost-in-service = perdu pendant l’intervention
phrase-weighed = pesé
phrase-cylinder-label = d’après l’étiquette de la bouteille
phrase-estimated = estimé
phrase-full-by-weight = complète, pesée
phrase-full = complète
phrase-full-by-sight-glass = complète, au voyant
phrase-full-by-subcooling = complète, au sous-refroidissement
phrase-partial = partielle
phrase-same-system = même installation
phrase-held = gardé en bouteille
phrase-recycling = recyclage
phrase-reclaim = régénération
phrase-destruction = destruction
phrase-virgin = neuf
phrase-recycled = recyclé
phrase-reclaimed = régénéré
phrase-filled-at-depot = remplie au dépôt
phrase-filled = remplie
phrase-bought = achetée
phrase-returned = rendue
phrase-retested = rééprouvée

# Installations, locaux, inscriptions antérieures.
phrase-commercial-refrigeration = froid commercial
phrase-industrial-process-refrigeration = froid de procédé industriel
phrase-comfort-cooling = climatisation de confort
phrase-refrigerated-transport = transport frigorifique
phrase-heat-pump = pompe à chaleur
phrase-other = autre
phrase-in-use = en service
phrase-standby = en réserve
phrase-mothballed = mise en sommeil
phrase-decommissioned = mise hors service définitive
phrase-leak-found = fuite trouvée
phrase-repaired = réparé
phrase-checked = contrôlé
phrase-verified = recontrôlé
phrase-occupied = local occupé
phrase-machinery-room = salle des machines
phrase-open-air = plein air
phrase-annualizing = annualisation
phrase-rolling-average = moyenne glissante

# Repères au fil du temps.
phrase-found-leaking-again-after-a-repair = fuite retrouvée après une réparation
phrase-found-still-leaking = fuite toujours présente
phrase-repaired-and-noted-as-proved = réparé et noté comme vérifié
phrase-repaired-for-the-time-being-or-shut-off = réparé à titre provisoire, ou isolé
phrase-suspected = soupçonné
phrase-suspicion-cleared = soupçon levé
phrase-looked-at-nothing-shown-ok-3-for-three-visits-together = contrôlé, rien n’a été décelé ; ok×3 : trois visites de suite
phrase-only-a-test-of-its-section-held = seul un essai de son tronçon a tenu
phrase-not-reached = non atteint
phrase-part-replaced-the-count-starts-anew = pièce remplacée, le compte repart de zéro
phrase-part-taken-out = pièce déposée
phrase-by-others-or-from-earlier-records = par d’autres, ou d’après des inscriptions antérieures

# Pourquoi plus de temps est demandé ; oui et non dans les notes.
phrase-industrial-process-shutdown = arrêt d’un procédé industriel
phrase-parts-not-delivered = pièces non livrées
phrase-another-law = une autre loi
phrase-radiological-hazard = danger radiologique
phrase-true = oui
phrase-false = non
