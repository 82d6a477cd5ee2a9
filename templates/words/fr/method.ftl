# Méthode, limites, relevés, locaux, le circuit dessiné.
