# La situation de l’installation selon les règles en vigueur, et ce qu’elles demandent.
