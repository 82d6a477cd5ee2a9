# Noms et sources des méthodes de calcul, d’après leur anglais.
