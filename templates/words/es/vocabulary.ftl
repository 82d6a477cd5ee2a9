# Palabras de las notas que salen en la página, según su inglés.
