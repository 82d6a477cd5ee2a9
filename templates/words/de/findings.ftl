# Befunde und Stellen: Angaben, Nachweise, Stand.
