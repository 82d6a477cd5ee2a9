# Nombres y fuentes de los métodos de cálculo, según su inglés.
