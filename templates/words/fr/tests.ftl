# Essais de pression et de vide : verdicts, raisons, graphiques, calculs.
