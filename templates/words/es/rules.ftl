# Situación de la instalación según las normas vigentes, y lo que piden.
