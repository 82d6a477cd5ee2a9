# Palabras de las notas que salen en la página, según su inglés.
phrase-repaired-proved = reparado, comprobado
phrase-found-and-repaired = encontrado y reparado
phrase-found-left-open = encontrado, dejado abierto
phrase-not-found-loss-stands = no encontrado, la pérdida sigue
phrase-nothing-found = nada encontrado
phrase-repair-verified = reparación verificada
phrase-gas-added-not-repaired = gas añadido, no reparado
phrase-retrofitted = convertido
