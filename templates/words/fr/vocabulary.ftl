# Mots des notes qui paraissent sur la page, d’après leur anglais.
