# Mots des règlements, d’après leur anglais.
