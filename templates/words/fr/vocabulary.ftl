# Mots des notes qui paraissent sur la page, d’après leur anglais.
phrase-repaired-proved = réparé, prouvé
phrase-found-and-repaired = trouvé et réparé
phrase-found-left-open = trouvé, laissé ouvert
phrase-not-found-loss-stands = non trouvé, la perte demeure
phrase-nothing-found = rien trouvé
phrase-repair-verified = réparation vérifiée
phrase-gas-added-not-repaired = fluide ajouté, non réparé
phrase-retrofitted = converti
