# Hallazgos y puntos: datos, pruebas, estados.
