# Palabras de las normas, según su inglés.
